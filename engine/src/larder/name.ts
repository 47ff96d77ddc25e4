// Finding a food by the words a cook writes: "sugar (topping)", "cornmeal, certified gluten-free".

import type { Food } from './food.ts';
import { foods } from './larder.ts';

const MOST_WORDS = 12;

/**
 * The food that a recipe's words mean, or undefined where no name we know stands in them.
 *
 * Brackets are left out, plurals taken as singular, then the longest run of words that is a known
 * name wins, the earlier one where two are as long ("black pepper, thyme, bay" is black pepper).
 *
 * @example foodNamed('canned peaches with juice')?.key → 'peaches-canned-juice'
 */
export function foodNamed(text: string): Food | undefined {
  const words = wordsOf(text).slice(0, MOST_WORDS);
  for (let length = words.length; 0 < length; length--) {
    for (let first = 0; first + length <= words.length; first++) {
      const food = byName.get(words.slice(first, first + length).join(' '));
      if (food !== undefined) return food;
    }
  }
  return undefined;
}

function namesOf(all: readonly Food[]): ReadonlyMap<string, Food> {
  const names = new Map<string, Food>();
  for (const food of all) {
    for (const name of [food.name, food.key.replaceAll('-', ' '), ...food.alsoCalled]) {
      const words = wordsOf(name).join(' ');
      if (!names.has(words)) names.set(words, food);
    }
  }
  return names;
}

export const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replace(/\([^)]*\)/g, ' ')
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()
    .split(' ')
    .filter((word) => word !== '')
    .map(singular);

/** Crude but even-handed: the same rule is used on both sides of the match. */
export const singular = (word: string) =>
  word
    .replace(/ies$/, 'y')
    .replace(/(lea|loa|hal)ves$/, '$1f')
    .replace(/oes$/, 'o')
    .replace(/(ch|sh|x)es$/, '$1')
    .replace(/([^su])s$/, '$1');

const byName: ReadonlyMap<string, Food> = namesOf(foods);

// Is it the same thing in the shop? Tinned and fresh stay apart, and so does what is called free of
// something.

import { foodNamed } from '../larder/name.ts';
import { foodOf } from '../menu/needs.ts';
import type { Ingredient } from '../menu/recipe.ts';
import { shelfOf } from './shelf.ts';

/** Same food, same shelf state, same label; by its words where the larder has several in one row. */
export function foodKeyOf(ingredient: Ingredient): string {
  const { name, food } = ingredient;
  const known = foodOf(ingredient) ?? foodNamed(name);
  return `${wordsFor(name, known?.key ?? food, known?.isSeveral === true)}|${shelfOf(ingredient).keep}`;
}

/** The same for a name that a cook wrote beside a shopping list; how it is kept is not said there. */
export function storeKeyOf(name: string): string {
  const known = foodNamed(name);
  return wordsFor(name, known?.key, known?.isSeveral === true);
}

export const withoutKeep = (key: string) => key.slice(0, key.lastIndexOf('|'));

function wordsFor(name: string, key: string | undefined, isSeveral: boolean): string {
  const free = /[a-z]+[- ]free\b/i.exec(name)?.[0].toLowerCase().replace('-', ' ') ?? '';
  const called = boughtAs(name.toLowerCase())
    .replace(/\(.*?\)/g, '')
    .trim();
  const words = key === undefined || isSeveral ? `${key ?? ''} ${called}` : key;
  return `${words}|${free}`;
}

/** Without what is done to it at camp, or in which part of the dish: "butter, melted", "sugar (fruit)". */
export const boughtAs = (name: string) =>
  name
    .replace(/ \((?:fruit|filling|topping|sauce|glaze|dough)\)$/iu, '')
    .replace(/, (?:melted|soft|softened|beaten|sifted|warm|cold|chilled)$/iu, '')
    .trim();

// What is in a food for someone who can't eat it, after the words on the packet are read.

import type { Allergen } from '../camp/camp.ts';
import type { Food } from './food.ts';
import { foodNamed } from './name.ts';

export interface AllergenWords {
  readonly allergens: readonly Allergen[];
  /** May be there: read the label. */
  readonly checkLabel: readonly Allergen[];
}

/**
 * Allergens of an ingredient: by the nature of the food, less what its words say it is free of.
 *
 * "Certified gluten-free" and "labelled gluten-free" clear a doubt and never a certainty:
 * wheat flour that is called gluten-free is still wheat until another food is named.
 */
export function allergensNamed(
  text: string,
  food: Food | undefined = foodNamed(text),
): AllergenWords {
  const cleared = clearedBy(text);
  return {
    allergens: food?.allergens ?? [],
    checkLabel: (food?.checkLabel ?? []).filter((allergen) => !cleared.includes(allergen)),
  };
}

/** Of a food that nobody knows every one is open, but for what its words say it is free of. */
export function openAllergensOf(text: string): readonly Allergen[] {
  const cleared = clearedBy(text);
  return allAllergens.filter((allergen) => !cleared.includes(allergen));
}

/** Every class of the nine of the United States and the fourteen of the European Union. */
export const allAllergens: readonly Allergen[] = [
  'wheat',
  'gluten',
  'milk',
  'egg',
  'fish',
  'crustacean',
  'mollusc',
  'tree-nut',
  'peanut',
  'soy',
  'sesame',
  'celery',
  'mustard',
  'lupin',
  'sulphite',
];

const FREE_WORDS: readonly (readonly [RegExp, Allergen])[] = [
  [/gluten[- ]free/, 'gluten'],
  [/wheat[- ]free/, 'wheat'],
  [/(milk|dairy)[- ]free/, 'milk'],
  [/egg[- ]free/, 'egg'],
  [/nut[- ]free/, 'tree-nut'],
  [/(peanut|nut)[- ]free/, 'peanut'],
  [/(soy|soya)[- ]free/, 'soy'],
];

function clearedBy(text: string): readonly Allergen[] {
  const words = text.toLowerCase();
  return FREE_WORDS.filter(([free]) => free.test(words)).map(([, allergen]) => allergen);
}

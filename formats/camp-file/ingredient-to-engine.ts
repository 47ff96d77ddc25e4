// One ingredient: its weight, what it does in the dough, and what it can do to someone.

import {
  type Allergen,
  type Food,
  type Grams,
  grams,
  type Ingredient,
  type Notice,
  notice,
} from '#engine';
import { allergensNamed, foodNamed, foodWithKey } from './larder.ts';
import { readNumber } from './number-text.ts';
import { readQuantity, writeQuantity } from './quantity-text.ts';
import { type FileTrouble, type PathStep, trouble } from './trouble.ts';
import type { FileIngredient } from './v1.ts';

interface Where {
  readonly recipe: string;
  readonly path: readonly PathStep[];
}

interface ReadIngredient {
  readonly ingredient: Ingredient;
  readonly notices: readonly Notice[];
  readonly troubles: readonly FileTrouble[];
}

export function ingredientFromFile(written: FileIngredient, where: Where): ReadIngredient {
  const food = written.food === undefined ? foodNamed(written.name) : foodWithKey(written.food);
  const weighed = weightOf(written, food);
  const about = { recipe: where.recipe, ingredient: written.name };
  const notices = [
    ...(food === undefined && written.contains === undefined
      ? [notice('FILE_FOOD_UNKNOWN', 'doubt', about)]
      : []),
    ...(weighed?.isReckoned
      ? [notice('FILE_WEIGHT_RECKONED', 'doubt', about, { massGrams: weighed.mass })]
      : []),
  ];
  return {
    ingredient: {
      name: written.name,
      grams: weighed?.mass ?? grams(0),
      asWritten: written.measure ?? writeQuantity('mass', weighed?.mass ?? 0),
      ...(food === undefined ? {} : { food: food.key }),
      part: written.part ?? food?.part ?? 'other',
      ...allergensOf(written, food),
      ...(written.note === undefined ? {} : { note: written.note }),
    },
    notices,
    troubles: weighed === undefined ? [weightMissing(written, where)] : [],
  };
}

/**
 * What the cook writes is added to what the larder knows: a file can make a food more dangerous,
 * and clear a doubt by a label that was read, but never talk an allergen away.
 */
function allergensOf(written: FileIngredient, food: Food | undefined) {
  const known = allergensNamed(written.name, food);
  const allergens = together(known.allergens, written.contains);
  const cleared = [...allergens, ...(written.labelSaysFree ?? [])];
  return {
    allergens,
    checkLabel: together(known.checkLabel, written.checkLabel).filter(
      (allergen) => !cleared.includes(allergen),
    ),
  };
}

const together = (known: readonly Allergen[], written: readonly Allergen[] = []) => [
  ...new Set([...known, ...written]),
];

interface Weighed {
  readonly mass: Grams;
  /** From a spoon or cup, not from a scale. */
  readonly isReckoned: boolean;
}

function weightOf(written: FileIngredient, food: Food | undefined): Weighed | undefined {
  const scale = readQuantity('mass', written.weight ?? written.measure ?? '');
  if (scale !== undefined) return { mass: grams(scale), isReckoned: false };
  const parts = /^(.*?)\s*(cups?|tbsp|tsp|each|small|medium|large)$/i.exec(written.measure ?? '');
  const amount = readNumber(parts?.[1] ?? '');
  const each = food?.measures[measureNamed(parts?.[2] ?? '')];
  if (amount === undefined || amount <= 0 || each === undefined) return undefined;
  return { mass: grams(amount * each), isReckoned: true };
}

function measureNamed(word: string): keyof Food['measures'] {
  const low = word.toLowerCase();
  if (low.startsWith('cup')) return 'cup';
  return low === 'tbsp' || low === 'tsp' ? low : 'each';
}

function weightMissing(written: FileIngredient, where: Where): FileTrouble {
  return trouble('FILE_WEIGHT_MISSING', [...where.path, 'weight'], {
    found: written.measure,
    wanted: 'a weight such as "450 g"',
  });
}

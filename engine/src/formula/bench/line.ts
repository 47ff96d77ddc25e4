// One ingredient by its key in the larder, as a line of a formula, and the one measure beside its weight.
// Source: sr28 for what a cup or a spoon of it weighs.

import { allergensNamed } from '../../larder/allergens.ts';
import { foodWithKey } from '../../larder/larder.ts';
import { gramsOf, householdMeasure } from '../../larder/measure.ts';
import type { Ingredient } from '../../menu/recipe.ts';
import { cookMeasureText } from '../../quantity/cook-measure.ts';
import { isUnread, readAmount } from '../../quantity/read.ts';
import { type Grams, grams } from '../../quantity/unit.ts';
import type { WeighedIngredient } from '../dough.ts';
import { doubtOf } from './doubt.ts';

/** @throws RangeError — a key that the larder does not hold */
export function lineOf(key: string, mass: number, note?: string): WeighedIngredient {
  const food = foodWithKey(key);
  if (food === undefined) throw new RangeError(`no food ${key} in the larder`);
  const ingredient: Ingredient = {
    name: food.name,
    grams: grams(mass),
    asWritten: measureText(key, mass),
    food: key,
    part: food.part,
    ...allergensNamed(food.name, food),
    ...(note === undefined ? {} : { note }),
  };
  return { ingredient, grams: grams(mass) };
}

/** A line with another weight; the measure that the cook wrote follows it. */
export function withGrams(line: WeighedIngredient, mass: number): WeighedIngredient {
  const { ingredient } = line;
  const asWritten = measureText(ingredient.food, mass, ingredient.asWritten);
  return {
    ingredient: { ...ingredient, grams: grams(mass), asWritten },
    grams: grams(mass),
  };
}

/**
 * The one measure that stands beside a line's weight: the recipe's own words where they weigh the
 * same within the doubt of measuring, else ours.
 */
export function measureOf({ ingredient, grams: mass }: WeighedIngredient): string {
  const own = ingredient.asWritten.trim();
  const written = writtenGrams(ingredient);
  const isSame = written !== undefined && Math.abs(written / mass - 1) <= doubtOf(ingredient);
  return isSame ? own : measureText(ingredient.food, mass, own);
}

/** What the recipe's own cups or spoons weigh by the larder; undefined for weights and pieces. */
export function writtenGrams({ food: key, asWritten }: Ingredient): Grams | undefined {
  const amount = readAmount(asWritten);
  const food = key === undefined ? undefined : foodWithKey(key);
  if (isUnread(amount) || food === undefined) return undefined;
  const { unit, low, high } = amount;
  if (unit !== 'cup' && unit !== 'tbsp' && unit !== 'tsp') return undefined;
  if (/\+|&|\band\b|\bplus\b/i.test(amount.rest)) return undefined; // "1 cup + 2 tbsp": ours says it
  return gramsOf(food, (low + high) / 2, unit);
}

/** As a cook would measure it; its grams where there is no measure for it. */
export function measureText(key: string | undefined, mass: number, asWritten = ''): string {
  const food = key === undefined ? undefined : foodWithKey(key);
  const measure = food === undefined ? undefined : householdMeasure(food, grams(mass), asWritten);
  return measure === undefined ? `${spokenGrams(mass)} g` : cookMeasureText(measure, 'plain');
}

const spokenGrams = (mass: number) => Math.round(mass * 10) / 10;

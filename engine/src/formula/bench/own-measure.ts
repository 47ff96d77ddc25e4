// The one measure that stands beside a line's weight: the recipe's own words, read again, or ours.
// Source: sr28 for what a cup or a spoon of it weighs.

import { foodWithKey } from '../../larder/larder.ts';
import { gramsOf } from '../../larder/measure.ts';
import type { Ingredient } from '../../menu/recipe.ts';
import { isUnread, readAmount } from '../../quantity/read.ts';
import type { Grams } from '../../quantity/unit.ts';
import type { WeighedIngredient } from '../dough.ts';
import { doubtOf } from './doubt.ts';
import { measureText } from './line.ts';

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

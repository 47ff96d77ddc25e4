// From spoons to grams, for one food; the way back is quantity's cookMeasureFor.

import { type Grams, grams } from '../quantity/unit.ts';
import type { Food, Measure } from './food.ts';

/** Grams of an amount in a household measure; undefined where the food is not measured so. */
export function gramsOf(food: Food, amount: number, measure: Measure): Grams | undefined {
  const each = food.measures[measure];
  return each === undefined ? undefined : grams(amount * each);
}

// Between spoons and grams, for one food.

import { type CookMeasure, cookMeasureFor } from '../quantity/cook-measure.ts';
import { type Grams, grams } from '../quantity/unit.ts';
import type { Food, Measure } from './food.ts';

/** Grams of an amount in a household measure; undefined where the food is not measured so. */
export function gramsOf(food: Food, amount: number, measure: Measure): Grams | undefined {
  const each = food.measures[measure];
  return each === undefined ? undefined : grams(amount * each);
}

/** The nearest household measure that can be measured; undefined where the food has none. */
export const measureOf = (food: Food, mass: Grams): CookMeasure | undefined =>
  cookMeasureFor(mass, food.measures);

// Between spoons and grams, for one food.

import type { CookMeasure } from '../quantity/cook-measure.ts';
import { type Grams, grams } from '../quantity/unit.ts';
import type { Food, Measure } from './food.ts';

/** Grams of an amount in a household measure; undefined where the food is not measured so. */
export function gramsOf(food: Food, amount: number, measure: Measure): Grams | undefined {
  const each = food.measures[measure];
  return each === undefined ? undefined : grams(amount * each);
}

/** The nearest honest household measure of this many grams; undefined where there is none. */
export function measureOf(food: Food, mass: Grams): CookMeasure | undefined {
  if (!(0 < mass)) return undefined;
  for (const [measure, least, step] of STEPS) {
    const each = food.measures[measure];
    if (each === undefined || mass / each < least) continue;
    return { amount: Math.max(step, Math.round(mass / each / step) * step), measure };
  }
  return undefined;
}

// Largest measure first; taken from this amount on, in these steps.
const STEPS: readonly (readonly [Measure, number, number])[] = [
  ['each', 0.75, 1],
  ['cup', 0.25, 0.25],
  ['tbsp', 1, 0.5],
  ['tsp', 0.125, 0.125],
];

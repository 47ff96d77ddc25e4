// From spoons to grams, for one food, and back.

import { type CookMeasure, cookMeasureFor } from '../quantity/cook-measure.ts';
import { type Grams, grams } from '../quantity/unit.ts';
import type { Food, FoodPart, Measure } from './food.ts';

/** Grams of an amount in a household measure; undefined where the food is not measured so. */
export function gramsOf(food: Food, amount: number, measure: Measure): Grams | undefined {
  const each = food.measures[measure];
  return each === undefined ? undefined : grams(amount * each);
}

/** Bought whole, so that they are counted unless the recipe measures them cut. */
const WHOLE: readonly FoodPart[] = ['egg', 'fruit', 'vegetable'];
const CUT = /\b(cups?|tbsp|tablespoons?|tsp|teaspoons?)\b|[¼½¾⅓⅔] ?c\b/i;
const WITH_UNIT = /\d\s*[a-z]|[a-z]/i;

/**
 * So much of a food as its cook would measure it: eggs, apples and onions by count, all else by cup
 * and spoon.
 *
 * @param asWritten  the recipe's own measure; cups of chopped onion stay cups
 */
export function householdMeasure(food: Food, mass: Grams, asWritten = ''): CookMeasure | undefined {
  const { each: _each, ...spoons } = food.measures;
  return cookMeasureFor(mass, isCounted(food, asWritten) ? food.measures : spoons, food.eachSize);
}

function isCounted({ part }: Food, asWritten: string): boolean {
  if (part === 'egg') return true;
  if (WHOLE.includes(part)) return !CUT.test(asWritten);
  return asWritten !== '' && !WITH_UNIT.test(asWritten);
}

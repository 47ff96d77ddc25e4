// One ingredient by its key in the larder, as a line of a formula, with a measure beside its weight.
// Source: sr28 for what a cup or a spoon of it weighs.

import { allergensNamed } from '../../larder/allergens.ts';
import { foodWithKey } from '../../larder/larder.ts';
import { householdMeasure } from '../../larder/measure.ts';
import type { Ingredient } from '../../menu/recipe.ts';
import { cookMeasureText } from '../../quantity/cook-measure.ts';
import { grams } from '../../quantity/unit.ts';
import type { WeighedIngredient } from '../dough.ts';

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

/** As a cook would measure it; its grams where there is no measure for it. */
export function measureText(key: string | undefined, mass: number, asWritten = ''): string {
  const food = key === undefined ? undefined : foodWithKey(key);
  const measure = food === undefined ? undefined : householdMeasure(food, grams(mass), asWritten);
  return measure === undefined ? `${spokenGrams(mass)} g` : cookMeasureText(measure, 'plain');
}

const spokenGrams = (mass: number) => Math.round(mass * 10) / 10;

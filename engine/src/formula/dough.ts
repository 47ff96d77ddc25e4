// What a recipe is as a dough: flour as 100 %, true hydration, fat, salt, sugar, leavening.
// Water inside milk, eggs, honey and butter counts as water; the water inside flour does not.

import type { Food, FoodPart } from '../larder/food.ts';
import { foodOf } from '../menu/needs.ts';
import type { Ingredient } from '../menu/recipe.ts';
import { type Grams, grams, ratio } from '../quantity/unit.ts';
import type { FormulaPercentages, Handling } from './formula.ts';

/** One ingredient with the grams that go into this batch. */
export interface WeighedIngredient {
  readonly ingredient: Ingredient;
  readonly grams: Grams;
}

export const isFlour = (ingredient: Ingredient) =>
  ingredient.part === 'flour' || ingredient.part === 'meal';

const NOT_DOUGH: readonly FoodPart[] = [
  'meat',
  'poultry',
  'bean',
  'grain',
  'vegetable',
  'fruit',
  'nut',
  'cheese',
];

/**
 * True for what makes the dough or batter; fruit, nuts and what is marked for the filling are not.
 * Recipes mark it in brackets: "sugar (fruit)".
 */
export const isDough = (ingredient: Ingredient) =>
  !NOT_DOUGH.includes(ingredient.part) && !/\((fruit|filling)\)/i.test(ingredient.name);

export const flourIn = (lines: readonly WeighedIngredient[]): Grams =>
  grams(lines.reduce((sum, each) => sum + (isFlour(each.ingredient) ? each.grams : 0), 0));

/** Shares of flour; undefined where there is none. */
export function percentagesOf(lines: readonly WeighedIngredient[]): FormulaPercentages | undefined {
  const flour = flourIn(lines);
  if (!(0 < flour)) return undefined;
  const dough = lines.filter((each) => isDough(each.ingredient) && !isFlour(each.ingredient));
  const share = (of: (food: Substance) => number, part?: FoodPart) =>
    ratio(
      dough
        .filter((each) => part === undefined || each.ingredient.part === part)
        .reduce((sum, each) => sum + of(substanceOf(each.ingredient)) * each.grams, 0) / flour,
    );
  return {
    hydration: share((food) => food.water),
    fat: share((food) => food.fat),
    salt: share((food) => food.salt),
    sugar: share((food) => food.sugar),
    powder: share(() => 1, 'powder'),
    soda: share(() => 1, 'soda'),
    yeast: share(() => 1, 'yeast'),
  };
}

export type Substance = Pick<Food, 'water' | 'fat' | 'salt' | 'sugar'>;

/**
 * What one gram adds to a dough. Sodium of powder and soda is no salt to the taste or the yeast,
 * and the water in their crystals is bound; tap water counts as all water; a food that we do not
 * know counts by what it is there for.
 */
function substanceOf(ingredient: Ingredient): Substance {
  const { part } = ingredient;
  if (part === 'powder' || part === 'soda') return NOTHING;
  if (part === 'water') return { ...NOTHING, water: ratio(1) };
  return foodOf(ingredient) ?? { ...NOTHING, ...OF_PART[part] };
}

const NOTHING: Substance = { water: ratio(0), fat: ratio(0), salt: ratio(0), sugar: ratio(0) };
const OF_PART: { readonly [part in FoodPart]?: Partial<Substance> } = {
  water: { water: ratio(1) },
  liquid: { water: ratio(0.9) }, // most drinks and milks, sr28
  fat: { fat: ratio(1) },
  salt: { salt: ratio(1) },
  sugar: { sugar: ratio(1) },
  egg: { water: ratio(0.76), fat: ratio(0.1) }, // sr28 NDB 01123
};

/**
 * How a dough of this hydration feels.
 *
 * @source hydrationClasses for 57 and 65 %; 72 and 80 % from memory (grade B and D)
 */
export function handlingFor(hydration: number): Handling {
  if (hydration < 0.575) return 'stiff';
  if (hydration <= 0.65) return 'smooth';
  if (hydration <= 0.72) return 'tacky';
  return hydration <= 0.8 ? 'sticky' : 'pourable';
}

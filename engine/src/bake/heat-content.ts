// How much heat does one kelvin of this food take? From what it is made of.
// Source: sr28 (water in a food), trial-bake-model (specific heats).

import type { Formula, FormulaLine } from '../formula/formula.ts';
import type { FoodPart } from '../larder/food.ts';
import { foodWithKey } from '../larder/larder.ts';

/** Specific heats [J/(g K)]: water; what is not water (trial-bake-model, assumed 1300 J/(kg K)). */
const WATER_SPECIFIC_JOULES = 4.19;
const SOLIDS_SPECIFIC_JOULES = 1.3;

/** Water in one gram where the larder does not know the food: rounded tables, from memory. */
const WATER_SHARE: Readonly<Record<FoodPart, number>> = {
  flour: 0.12,
  meal: 0.11,
  water: 1,
  liquid: 0.92,
  fat: 0.05,
  salt: 0,
  sugar: 0.01,
  egg: 0.76,
  yeast: 0.05,
  powder: 0.05,
  soda: 0,
  acid: 0.9,
  'dry-milk': 0.03,
  meat: 0.68,
  poultry: 0.72,
  bean: 0.6,
  grain: 0.12,
  vegetable: 0.88,
  fruit: 0.85,
  nut: 0.05,
  cheese: 0.4,
  spice: 0.1,
  other: 0.5,
};

/** Share of water in the batch as it goes in; a dough's own where no line tells. */
export function waterShareOf(formula: Formula): number {
  const mass = formula.lines.reduce((sum, line) => sum + line.grams, 0);
  if (!(mass > 0)) return 0.43; // a plain dough (trial-bake-model, dry-basis moisture 0.75)
  const water = formula.lines.reduce((sum, line) => sum + line.grams * waterShareOfLine(line), 0);
  return water / mass;
}

/** By the larder's row where it has one (sr28), else by the part. */
const waterShareOfLine = ({ ingredient }: FormulaLine) =>
  (ingredient.own ?? foodWithKey(ingredient.food ?? ''))?.water ?? WATER_SHARE[ingredient.part];

/** Specific heat of the batch [J/(g K)]: shares of water and the rest. */
export function specificHeatOf(formula: Formula): number {
  const water = waterShareOf(formula);
  return water * WATER_SPECIFIC_JOULES + (1 - water) * SOLIDS_SPECIFIC_JOULES;
}

// What in a dough can be warmed or cooled to bring it to its temperature, and what comes as it is?
// Sources: service cards for yeast in water, 105 to 110 °F (olderServiceCards); heats by what a
// food is made of, from memory (grade D). Weakness: butter that is melted brings heat of its own.

import { fromCelsius, type Grams, grams, type Kelvin } from '../../quantity/unit.ts';
import { isFlour, shareOf, type WeighedIngredient } from '../dough.ts';

export interface DoughLiquid {
  /** Names of what is warmed together; none where eggs are all that is wet. */
  readonly warmed: readonly string[];
  readonly mass: Grams;
  /** Of one gram of it, for one kelvin [J/(g·K)]. */
  readonly heat: number;
  /** Of everything that comes as warm as the flour, without the flour [J/K]. */
  readonly restHeat: number;
  readonly hottest: Kelvin;
  /** Ice can take the place of water, never of milk. */
  readonly water: Grams;
  readonly hasEgg: boolean;
}

/** Milk is warm, never hot, before yeast: cards cool scalded milk to 110 °F; a little room (judged). */
const HOTTEST_MILK = fromCelsius(45);
const HOTTEST_WATER = fromCelsius(54); // yeast dies at 140 °F, yeastHandout; room left (judged)

export function doughLiquid(lines: readonly WeighedIngredient[]): DoughLiquid {
  const wet = lines.filter(
    ({ ingredient: { part }, grams: mass }) => (part === 'water' || part === 'liquid') && 0 < mass,
  );
  const rest = lines.filter((line) => !wet.includes(line) && !isFlour(line.ingredient));
  const mass = massOf(wet);
  const water = massOf(wet.filter(({ ingredient }) => ingredient.part === 'water'));
  return {
    warmed: wet.map(({ ingredient }) => ingredient.name),
    mass,
    heat: 0 < mass ? heatOf(wet) / mass : 0,
    restHeat: heatOf(rest),
    hottest: water < mass ? HOTTEST_MILK : HOTTEST_WATER,
    water,
    hasEgg: lines.some(({ ingredient }) => ingredient.part === 'egg'),
  };
}

const massOf = (lines: readonly WeighedIngredient[]) =>
  grams(lines.reduce((sum, line) => sum + line.grams, 0));

const heatOf = (lines: readonly WeighedIngredient[]) =>
  lines.reduce((sum, line) => sum + heatOfGram(line) * line.grams, 0);

const HEATS = { water: 4.19, fat: 1.9, dry: 1.6 }; // J/(g·K), from memory

function heatOfGram({ ingredient }: WeighedIngredient): number {
  const { water, fat } = shareOf(ingredient);
  return HEATS.water * water + HEATS.fat * fat + HEATS.dry * Math.max(0, 1 - water - fat);
}

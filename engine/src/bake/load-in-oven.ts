// How does the load take up heat? It warms to the local boil, then turns heat into steam.
// Source: oven-network-notes (food coupling fitted to one coal chart, not measured).
// Weak point: one mean temperature; the crust of a bread is hotter and its middle cooler.

import type { Air } from '../camp/camp.ts';
import type { Load, LoadState } from '../coals/load.ts';
import type { Formula } from '../formula/formula.ts';
import { isPot } from '../menu/heat-kind.ts';
import type { OvenLoad } from '../menu/load.ts';
import type { Recipe } from '../menu/recipe.ts';
import { type Kelvin, kelvin, squareMetres, watts } from '../quantity/unit.ts';
import { specificHeatOf, waterShareOf } from './heat-content.ts';
import { type HeatTaken, loadTaking } from './heat-taken.ts';
import { isWetFruit } from './kinds.ts';

/** Most that a bread takes up [W/m2]: fitted together with the coal's power (oven-network-notes). */
const BREAD_MOST_WATTS_PER_SQUARE_METRE = 1500;
/** Heat passage from the oven's inside to a bread [W/(m2 K)] (oven-network-notes). */
const BREAD_PASSAGE = 40;
/**
 * Iron to a pot of liquid, over floor and wetted wall [W/(m2 K)]. A judgement, tuned on nothing:
 * iron a few kelvin above the boil carries a simmer, and the coals, not the passage, set the pace.
 */
const POT_PASSAGE = 100;
/**
 * Oven to wet fruit, over floor and wall that it touches [W/(m2 K)], as to a bread. Tuned on one
 * range, camp-cobbler's 45 to 60 min.
 */
export const FRUIT_PASSAGE = 40;
/**
 * The upper end of what the coal chart's fit allows a load [W/m2]. Wet fruit takes more than that
 * by its baking time; but coals counted for it would be twice any chart's, so the network sees this.
 */
const FRUIT_MOST_WATTS_PER_SQUARE_METRE = 2250;
/** Heat of evaporation [J/g] (oven-network-notes, 2.26e6 J/kg). */
export const STEAM_JOULES_PER_GRAM = 2260;

/** State: mean temperature [K], steam given off [g]. */
const TEMPERATURE = 0;
const STEAM = 1;

/**
 * One load as the oven sees it.
 *
 * A bread takes what the oven offers up to a cap; a pot has no cap but its wetted iron.
 * Heat is never lost: what goes in warms the food or leaves as steam. Food that has given off all
 * its water heats on.
 *
 * @param startKelvin  the load as it goes in; the air where not said [K]
 */
export function loadFor(asked: {
  readonly load: OvenLoad;
  readonly recipe: Recipe;
  readonly formula: Formula;
  readonly air: Air;
  readonly startKelvin?: Kelvin;
  /** How the bake found it to take heat; left out, a bread takes what the coal charts count on. */
  readonly taken?: HeatTaken;
}): Load {
  const { load, recipe, formula, air, taken } = asked;
  if (taken !== undefined && taken.joules.length > 0)
    return loadTaking(taken, { startKelvin: air.temperature, planArea: load.planArea });
  const capacity = Math.max(1, load.mass * specificHeatOf(formula)); // an empty load is still one
  const water = load.mass * waterShareOf(formula);
  const boil = air.boiling;
  const start = Math.min(asked.startKelvin ?? air.temperature, boil);
  const intake = intakeFor(load, recipe);
  return {
    planArea: squareMetres(load.planArea),
    start: [start, 0],
    heatInto: (state, oven) => watts(intake(oven - stateAt(state, TEMPERATURE))),
    after: (state, heat) => warmed({ state, heat, capacity, boil, water }),
    temperature: (state) => kelvin(stateAt(state, TEMPERATURE)),
  };
}

/** Steam that has left so far [g], from a load's state. */
export const steamGramsOf = (state: LoadState) => stateAt(state, STEAM);

function stateAt(state: LoadState, index: number): number {
  const value = state[index];
  if (value === undefined) throw new RangeError(`load state has no number ${index}`);
  return value;
}

/** Watts into a bread from the difference to the oven [K]. */
const breadIntake = (load: OvenLoad) => (differenceKelvin: number) =>
  Math.min(
    BREAD_MOST_WATTS_PER_SQUARE_METRE * load.planArea,
    BREAD_PASSAGE * load.planArea * differenceKelvin,
  );

/** Watts from the difference between oven and load [K]. */
function intakeFor(load: OvenLoad, recipe: Recipe): (differenceKelvin: number) => number {
  if (!isPot(recipe) && !isWetFruit(recipe)) return breadIntake(load);
  const passage = (isPot(recipe) ? POT_PASSAGE : FRUIT_PASSAGE) * wettedAreaOf(load);
  const most = isPot(recipe)
    ? Number.POSITIVE_INFINITY
    : FRUIT_MOST_WATTS_PER_SQUARE_METRE * load.planArea;
  return (differenceKelvin) => Math.min(most, passage * differenceKelvin);
}

/** Floor and wall that the food of a pot touches: a disc and its rim [m2]. */
export function wettedAreaOf(load: OvenLoad): number {
  const diameter = Math.sqrt((4 * load.planArea) / Math.PI);
  return load.planArea + Math.PI * diameter * load.thickness;
}

function warmed(step: {
  readonly state: LoadState;
  readonly heat: number;
  readonly capacity: number;
  readonly boil: number;
  readonly water: number;
}): LoadState {
  const { state, heat, capacity, boil, water } = step;
  const temperature = stateAt(state, TEMPERATURE);
  const steam = stateAt(state, STEAM);
  if (heat <= 0) return [temperature + heat / capacity, steam];
  const toBoil = Math.max(0, (boil - temperature) * capacity);
  if (heat <= toBoil) return [temperature + heat / capacity, steam];
  const spare = heat - toBoil;
  const boiledAway = Math.min(spare / STEAM_JOULES_PER_GRAM, Math.max(0, water - steam));
  const left = spare - boiledAway * STEAM_JOULES_PER_GRAM;
  return [Math.max(temperature, boil) + left / capacity, steam + boiledAway];
}

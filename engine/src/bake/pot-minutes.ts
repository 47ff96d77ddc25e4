// How long does a pot take: to the boil, and at the simmer? The first is a heat balance; for the
// second no formula exists, so the recipe's own time is taken and lengthened for height.

import type { Air } from '../camp/camp.ts';
import type { CurvePoint } from '../coals/coal-plan.ts';
import type { Formula } from '../formula/formula.ts';
import type { OvenLoad } from '../menu/load.ts';
import type { Recipe } from '../menu/recipe.ts';
import { type Kelvin, type Minutes, minutes } from '../quantity/unit.ts';
import { specificHeatOf } from './heat-content.ts';
import { figuresOfKind } from './kinds.ts';
import { wettedAreaOf } from './load-in-oven.ts';

/** What a full set of coals brings through the wetted iron [W/m2]: a judgement, no source. */
const POT_WATTS_PER_SQUARE_METRE = 4500;
/** A stew [J/(g K)]: 0.85 x 4.19 + 0.15 x 1.3. */
const POT_SPECIFIC_JOULES = 3.76;
const SEA_LEVEL_BOIL_KELVIN = 373.12; // if97
const BOIL_AT_5000_FEET_KELVIN = 367.97; // 1524 m, 84 307 Pa (iso2533, if97)

/**
 * Minutes from load in until the pot boils, before coals/ has simulated it.
 *
 * @param formula      what is in it; a stew of 85 % water where not said
 * @param startKelvin  the food as it goes in; the air where not said
 */
export function minutesToBoil(asked: {
  readonly load: OvenLoad;
  readonly formula?: Formula;
  readonly air: Air;
  readonly startKelvin?: Kelvin;
}): Minutes {
  const { load, formula, air } = asked;
  const start = asked.startKelvin ?? air.temperature;
  const specificHeat = formula === undefined ? POT_SPECIFIC_JOULES : specificHeatOf(formula);
  const heatJoules = load.mass * specificHeat * Math.max(0, air.boiling - start);
  const power = POT_WATTS_PER_SQUARE_METRE * wettedAreaOf(load);
  return minutes(power > 0 ? heatJoules / power / 60 : 0);
}

/** The minute of a simulated curve at which the load has come to the boil; undefined if never. */
export function boilMinuteOf(curve: readonly CurvePoint[], boiling: Kelvin): number | undefined {
  const NEAR_KELVIN = 1; // within a kelvin of the boil a pot already simmers
  return curve.find((point) => point.load !== undefined && boiling - NEAR_KELVIN <= point.load)
    ?.minute;
}

/** Minutes at the simmer: the recipe's steps, else its hint, else its kind's; longer at height. */
export function simmerMinutesFor(recipe: Recipe, air: Air): SimmerMinutes {
  const base = recipeMinutes(recipe) ?? figuresOfKind(recipe.kind).simmerMinutes ?? 60;
  return {
    minutes: minutes(base * simmerLengthening(air.boiling)),
    isRecipes: recipeMinutes(recipe) !== undefined,
    isAboveEvidence: air.boiling < BOIL_AT_5000_FEET_KELVIN - 0.05,
  };
}

export interface SimmerMinutes {
  readonly minutes: Minutes;
  /** From the recipe; else common practice for its kind. */
  readonly isRecipes: boolean;
  /** Higher than the one height the rule is published for. */
  readonly isAboveEvidence: boolean;
}

/**
 * A quarter longer at 5,000 ft, in proportion to how much cooler water boils.
 *
 * @source csu-high-altitude: stews and pot roasts may need a quarter more time at 5,000 ft
 */
export const simmerLengthening = (boiling: Kelvin) =>
  1 +
  (0.25 * Math.max(0, SEA_LEVEL_BOIL_KELVIN - boiling)) /
    (SEA_LEVEL_BOIL_KELVIN - BOIL_AT_5000_FEET_KELVIN);

function recipeMinutes(recipe: Recipe): number | undefined {
  const cooked = recipe.steps
    .filter((step) => step.kind === 'cook')
    .reduce((sum, step) => sum + step.minutes, 0);
  if (cooked > 0) return cooked;
  const hint = recipe.target.minutesHint;
  return hint === undefined ? undefined : (hint[0] + hint[1]) / 2;
}

// What does this dish want of its oven? The recipe's own temperature, or its kind's.

import type { Air } from '../camp/camp.ts';
import type { HeatWish } from '../coals/coal-plan.ts';
import { browningMinutes, canStartHot, isPot, risesInOven } from '../menu/heat-kind.ts';
import type { OvenLoad } from '../menu/load.ts';
import type { Recipe } from '../menu/recipe.ts';
import {
  fromCelsius,
  type Kelvin,
  kelvin,
  type Minutes,
  minutes as minutesOf,
} from '../quantity/unit.ts';
import { figuresOfDish, figuresOfKind } from './kinds.ts';
import { minutesToBoil } from './pot-minutes.ts';

/** The iron round a simmering pot stands this much above the boil: a judgement, no source. */
const SIMMER_ABOVE_BOIL_KELVIN = 4;

/** Keeps the food above 140 F (foodsafety-chart) without cooking it on: common practice. */
const KEEP_WARM = fromCelsius(90);

/**
 * What the coals of one load have to do.
 *
 * A pot's minutes are counted from the boil; the way there is added here, from a heat balance.
 *
 * @param minutes  as bake/ gives them in its plan
 */
export function heatWishFor(asked: {
  readonly recipe: Recipe;
  readonly load: OvenLoad;
  readonly minutes: Minutes;
  readonly air: Air;
  /** As the dish pins it; left out, the recipe or its kind decides. */
  readonly preheat?: boolean | undefined;
}): HeatWish {
  const { recipe, minutes, air, preheat } = asked;
  const brownFirst = browningMinutes(recipe);
  return {
    method: recipe.method,
    wanted: wantedOvenFor({ recipe, air }),
    minutes: isPot(recipe) ? withWayToBoil(asked) : minutes,
    preheat: wantsHotOven(recipe, preheat),
    ...(brownFirst > 0 ? { brownFirst } : {}),
  };
}

const withWayToBoil = (asked: {
  readonly load: OvenLoad;
  readonly minutes: Minutes;
  readonly air: Air;
}) => minutesOf(asked.minutes + minutesToBoil(asked));

/** Temperature wanted inside the oven while the load is in; for a simmer just above the boil. */
export function wantedOvenFor(asked: { readonly recipe: Recipe; readonly air: Air }): Kelvin {
  const { recipe, air } = asked;
  if (recipe.method === 'simmer' || recipe.method === 'boil') {
    return kelvin(air.boiling + SIMMER_ABOVE_BOIL_KELVIN);
  }
  if (recipe.method === 'keep-warm') return recipe.target.oven ?? KEEP_WARM;
  return recipe.target.oven ?? fromCelsius(figuresOfDish(recipe).ovenCelsius);
}

/**
 * Is the oven heated before the load goes in? Not for a pot, and not where the dough goes into a
 * cold oven or makes its second rise in it. What the dish pins comes first, then the recipe's own
 * word, then its steps, then its kind.
 */
export function wantsHotOven(recipe: Recipe, pinned?: boolean): boolean {
  if (!canStartHot(recipe)) return false;
  if (pinned !== undefined) return pinned;
  if (recipe.target.coldOven !== undefined) return !recipe.target.coldOven;
  if (recipe.steps.some((step) => COLD_OVEN.test(step.say)) || risesInOven(recipe)) return false;
  return figuresOfKind(recipe.kind).preheat;
}

/** A step that puts the dough into an oven without coals, in the recipe's own words. */
const COLD_OVEN =
  /\bcold (camp )?oven|\bunheated oven|second rise in (the |a |its )?(greased |oiled |lined )*oven/i;

// What bake/ is asked, and what every kind of dish answers.

import type { Air } from '../camp/camp.ts';
import type { CurvePoint, FactorRun } from '../coals/coal-plan.ts';
import type { Formula } from '../formula/formula.ts';
import type { OvenLoad } from '../menu/load.ts';
import type { Recipe } from '../menu/recipe.ts';
import type { Notice } from '../notice/notice.ts';
import type { Kelvin, Metres, Minutes } from '../quantity/unit.ts';
import type { BakePlan, InsidePlan } from './bake-plan.ts';
import type { HeatTaken } from './heat-taken.ts';

export interface BakeRequest {
  readonly load: OvenLoad;
  readonly recipe: Recipe;
  readonly formula: Formula;
  readonly air: Air;
  /** Inside the oven, as wished. Used where there is no curve yet. */
  readonly wanted: Kelvin;
  /** What coals/ simulated; minutes from "coals on". */
  readonly curve?: readonly CurvePoint[];
  /** The same with one factor of the coals moved at a time; they widen the band. */
  readonly factorRuns?: readonly FactorRun[];
  /** The load goes in at this minute of the curve. */
  readonly loadInMinute?: Minutes;
  /** Of the oven: how much of its lid the top sees. Left out, a load that nearly fills it. */
  readonly ovenDiameter?: Metres;
  /** Only the minutes are wanted, for a draft or a band: fewer slices, nothing kept. */
  readonly isRough?: boolean;
  /** What the cook has pinned, counted as in the plan: from load in, for a pot from the boil. */
  readonly pinnedMinutes?: Minutes;
  /** Least core for health, from safety/. */
  readonly leastCore?: Kelvin;
  /** False: nobody can read a core, so the signs stand alone wherever health allows it. */
  readonly hasThermometer?: boolean;
}

/** Minutes until done, with the band that the evidence deserves. */
export interface CookTime {
  readonly minutes: number;
  readonly least: number;
  readonly most: number;
  readonly notices: readonly Notice[];
  /** No heat makes it done sooner than this; left out, the band alone says. */
  readonly soonest?: number;
  readonly inside?: InsidePlan;
  readonly coreReadings?: BakePlan['coreReadings'];
  readonly taken?: HeatTaken;
}

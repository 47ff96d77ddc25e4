// What bake/ is asked, and what every kind of dish answers.

import type { Air } from '../camp/camp.ts';
import type { CurvePoint, FactorRun } from '../coals/coal-plan.ts';
import type { Formula } from '../formula/formula.ts';
import type { OvenLoad } from '../menu/load.ts';
import type { Recipe } from '../menu/recipe.ts';
import type { Notice } from '../notice/notice.ts';
import type { Kelvin, Minutes } from '../quantity/unit.ts';

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
}

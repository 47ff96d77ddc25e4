// How long does this load stay in, and what shows that it is done?

import type { Air } from '../camp/camp.ts';
import type { CurvePoint } from '../coals/coal-plan.ts';
import type { Formula } from '../formula/formula.ts';
import type { OvenLoad } from '../menu/load.ts';
import type { Recipe } from '../menu/recipe.ts';
import type { Notice } from '../notice/notice.ts';
import { type Kelvin, type Minutes, minutes, ratio } from '../quantity/unit.ts';
import type { BakePlan } from './bake-plan.ts';
import { breadTime } from './bread-time.ts';
import { doneTargetFor } from './done-target.ts';
import { figuresOfKind, isBread, isPot } from './kinds.ts';
import { potTime } from './pot-time.ts';
import { roastTime } from './roast-time.ts';

export interface BakeRequest {
  readonly load: OvenLoad;
  readonly recipe: Recipe;
  readonly formula: Formula;
  readonly air: Air;
  /** Inside the oven, as wished. Used where there is no curve yet. */
  readonly wanted: Kelvin;
  /** What coals/ simulated; minutes from "coals on". */
  readonly curve?: readonly CurvePoint[];
  /** The load goes in at this minute of the curve. */
  readonly loadInMinute?: Minutes;
  /** Least core for health, from safety/. */
  readonly leastCore?: Kelvin;
}

/** Minutes until done, with the band that the evidence deserves. */
export interface CookTime {
  readonly minutes: number;
  readonly least: number;
  readonly most: number;
  readonly notices: readonly Notice[];
}

/**
 * Minutes in the oven, the core to reach, the signs, the loss.
 *
 * Bread by thickness and lid; a pot by the recipe's simmer, lengthened for height and counted from
 * the boil; meat and fruit by conduction. The recipe's own minutes for a bread are never used.
 *
 * @notice  see codes.ts
 */
export function bakeFor(asked: BakeRequest): BakePlan {
  const { load, recipe, air } = asked;
  const target = doneTargetFor({
    recipe,
    air,
    ...(asked.leastCore === undefined ? {} : { leastCore: asked.leastCore }),
  });
  const time = timeOf(asked);
  const about = { dish: load.dish, recipe: recipe.id, oven: load.oven };
  return {
    load: load.id,
    minutes: minutes(time.minutes),
    least: minutes(time.least),
    most: minutes(time.most),
    done: target.done,
    loss: ratio(figuresOfKind(recipe.kind).loss),
    notices: [...target.notices, ...time.notices].map((said) => ({ ...said, about })),
  };
}

function timeOf(asked: BakeRequest): CookTime {
  const { recipe } = asked;
  if (recipe.method === 'none' || recipe.method === 'keep-warm' || recipe.kind === 'cold-dish') {
    return { minutes: 0, least: 0, most: 0, notices: [] };
  }
  if (isPot(recipe)) return potTime(asked);
  if (isBread(recipe)) return breadTime(asked);
  return roastTime(asked);
}

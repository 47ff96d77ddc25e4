// Time in hand: what comes from an oven is done some minutes before its serving, as far as it may wait,
// so that a slow bake or rise is still in time. Where not all dishes can have it, those whose time is
// least sure have it first.

import { minutes } from '../quantity/unit.ts';
import type { DishWork, TimetableRequest } from './day-sheet.ts';

/** Minutes in hand by dish. */
export type InHand = ReadonlyMap<string, number>;

/** Where the cook says nothing: fresh bread is no worse for it, and a look too many takes as long. A judgement. */
export const USUAL_IN_HAND = minutes(5);

/** Never more than half of what a dish may wait, or few hands could not take one after the other. */
function inHandOf({ dish, loads, canWait }: DishWork, wished: number): number {
  if (loads.length === 0 || dish.pins.coalsOnAt !== undefined) return 0;
  return Math.floor(Math.max(0, Math.min(wished, canWait / 2)));
}

/**
 * The surest plan found: all dishes with the time in hand, else one after the other as far as a plan
 * is found.
 *
 * @param planned  plans it with these minutes in hand; undefined where no plan in time was found
 */
export function withTimeInHand<Plan>(
  { dishes }: TimetableRequest,
  wished: number,
  planned: (inHand: InHand) => Plan | undefined,
): Plan | undefined {
  const wanted = dishes
    .toSorted((one, other) => doubtOf(other) - doubtOf(one))
    .map((work) => [work.dish.id, inHandOf(work, wished)] as const)
    .filter(([, each]) => each > 0);
  if (wanted.length === 0) return undefined;
  const whole = planned(new Map(wanted));
  if (whole !== undefined || wanted.length === 1) return whole;
  let kept: InHand = new Map();
  let best: Plan | undefined;
  for (const each of wanted.slice(0, MOST_ASKED)) {
    const more = new Map([...kept, each]);
    const found = planned(more);
    if (found === undefined) continue;
    [kept, best] = [more, found];
  }
  return best;
}

/** More dishes than these are not asked one by one. */
const MOST_ASKED = 6;

/** By how much its bake and its rise may be slower than reckoned [min]. */
const doubtOf = ({ loads, rise }: DishWork): number =>
  Math.max(0, ...loads.map(({ bake }) => bake.most - bake.minutes)) +
  (rise === undefined ? 0 : rise.most - rise.first);

// A pot whose cook has said no minutes: in the oven until it has come up, however long that takes.
// Source: the run itself (need.ts, count.ts); how long is waited for is common practice, no source.

import { isRefusal, type OrRefusal, refusal } from '../notice/notice.ts';
import { minutes } from '../quantity/unit.ts';
import type { CoalPlan, CoalRequest } from './coal-plan.ts';
import { layCoals } from './lay-coals.ts';
import { isPotMethod } from './split.ts';

const STEP_MINUTES = 15;
const MOST_MINUTES = 240;

/**
 * As layCoals; a pot that does not boil in the minutes of the wish gets the fewest quarter hours more
 * in which it does. Baked food and a count that is pinned keep their minutes.
 *
 * @refuses  as layCoals; COALS_BOIL_NEVER — not within four hours
 */
export const laidUntilItBoils = (request: CoalRequest): OrRefusal<CoalPlan> => {
  const first = layCoals(request);
  if (!isPotMethod(request.wish.method) || !isLate(request, first)) return first;
  const { pins, oven, loadId, wish } = request;
  if (pins.above !== undefined || pins.below !== undefined) return first;
  for (let stay = wish.minutes + STEP_MINUTES; stay <= MOST_MINUTES; stay += STEP_MINUTES) {
    const laid = layCoals({ ...request, wish: { ...wish, minutes: minutes(stay) } });
    if (!isLate(request, laid)) return laid;
  }
  return refusal(
    'COALS_BOIL_NEVER',
    [`ovens.${oven.id}`, `loads.${loadId}`],
    { oven: oven.id },
    { minutes: MOST_MINUTES, method: wish.method },
  );
};

/** Boils, or shivers, for so long before it comes out. */
const HELD_MINUTES = 10;
const NEAR_KELVIN = 3; // as near as a cook's eye, as in count.ts

const isLate = ({ air, wish }: CoalRequest, laid: OrRefusal<CoalPlan>): boolean => {
  if (isRefusal(laid)) return false;
  if (laid.notices.some(({ code }) => code === 'COALS_BOIL_LATE')) return true;
  const pot = laid.curve[laid.outMinute - HELD_MINUTES]?.load ?? 0;
  return pot < Math.min(air.boiling, wish.wanted) - NEAR_KELVIN;
};

// When is a cobbler done? When its fruit bubbles and steam has set the topping from below.
// Source: camp-cobbler (one range).
// Weak point: one published range and common practice stand behind it.

import { notice } from '../notice/notice.ts';
import type { BakeRequest, CookTime } from './bake-request.ts';
import { specificHeatOf } from './heat-content.ts';
import { FRUIT_PASSAGE, wettedAreaOf } from './load-in-oven.ts';
import { minutesUntil, paceOf } from './pace.ts';

/** From bubbling fruit to a topping that is set: a judgement, held against camp-cobbler. */
const TOPPING_MINUTES = 12;
const BAND = { least: 0.8, most: 1.35 };
const LONGEST_MINUTES = 360;

/** Minutes for fruit under a topping. */
export function cobblerTime(asked: BakeRequest): CookTime {
  const { load, air, formula } = asked;
  const capacity = Math.max(1, load.mass * specificHeatOf(formula));
  const passage = FRUIT_PASSAGE * wettedAreaOf(load);
  const rise = Math.max(0, air.boiling - BUBBLES_BELOW_BOIL_KELVIN - air.temperature);
  const mean = air.temperature + rise / 2;
  const bubbling = minutesUntil(
    paceOf(asked, LONGEST_MINUTES),
    (now) => (Math.max(0, now.oven - mean) * passage * 60) / (capacity * Math.max(1, rise)),
  );
  const found = (bubbling ?? LONGEST_MINUTES) + TOPPING_MINUTES;
  return {
    minutes: found,
    least: found * BAND.least,
    most: found * BAND.most,
    notices: bubbling === undefined ? [notice('BAKE_OVEN_TOO_COOL', 'stop')] : [],
  };
}

/** Fruit bubbles at the iron before all of it boils. */
const BUBBLES_BELOW_BOIL_KELVIN = 3;

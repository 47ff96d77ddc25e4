// When may water go onto the iron, and when a bare hand? An oven that has been emptied cools in the air.
// Source: coals/network.ts run without coals; no measured cooling of such an oven was found.

import { type Kelvin, kelvin, type Metres, type Minutes, minutes } from '../quantity/unit.ts';

/**
 * Minutes in which the hottest iron loses half its heat over the air, lid on: 7 + 43.3 per metre of
 * diameter. Tuned on the network, 8 to 16 inches, from 202 C down to the limits below; it buys a clock that
 * is never sooner than the network (cool-down.test.ts). Slower than `HALF_COOLED_MINUTES`, which is
 * for the first minutes of iron that is to be used again.
 */
const halfTime = (diameter: Metres) => 7 + 43.3 * diameter;

/** Cold water and a bare hand: 48 C, metal that is held ten minutes (iso-13732-1, from memory). */
export const TOUCH_LIMIT = kelvin(321.15);

/** Hot water, never cold: iron under the boil, so that it does not spit (common practice, no source). */
export const hotWaterLimit = (boiling: Kelvin): Kelvin => boiling;

/**
 * Minutes until the iron is at a limit; 0 where it is, undefined where the air is no colder.
 *
 * Doubt: how hot it was when emptied, wind (sooner), coals left on lid or ground (they start the clock anew).
 */
export function coolMinutes(asked: {
  readonly iron: Kelvin;
  readonly air: Kelvin;
  readonly limit: Kelvin;
  readonly diameter: Metres;
}): Minutes | undefined {
  const { iron, air, limit, diameter } = asked;
  if (![iron, air, limit, diameter].every(Number.isFinite)) return undefined;
  if (iron <= limit) return minutes(0);
  if (limit <= air) return undefined;
  return minutes(halfTime(diameter) * Math.log2((iron - air) / (limit - air)));
}

/** Ash and coals are live so long: the longest that was told (fire-departments). */
export const ASH_LIVE_DAYS = 4;
/** Not into a bag before (hearth-ash: burnt out in 48 h, rarely lit again until 72). */
export const ASH_BAG_HOURS = 72;
/** The can stands so far from anything that burns: from memory (nfpa-ash). */
export const ASH_CAN_METRES = 10 * 0.3048;

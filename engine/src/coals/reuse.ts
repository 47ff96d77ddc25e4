// How hot is the iron when the next dish goes in? It cools in the air, lid off.
// Source: network.ts; the same skin as in use, coals brushed off.

import { type Kelvin, kelvin, type Minutes } from '../quantity/unit.ts';

/** An emptied 12 inch oven loses half its heat in about this time; from network.ts, see the test. */
const HALF_COOLED_MINUTES = 12;

/** Iron after standing empty in the air. */
export function ironAfter(rest: {
  readonly iron: Kelvin;
  readonly air: Kelvin;
  readonly minutes: Minutes;
}): Kelvin {
  const left = 0.5 ** (Math.max(0, rest.minutes) / HALF_COOLED_MINUTES);
  return kelvin(rest.air + (rest.iron - rest.air) * left);
}

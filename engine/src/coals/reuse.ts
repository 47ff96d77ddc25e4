// How hot is the iron when the next dish goes in? It cools in the air while it stands empty.
// Source: network.ts, run without coals (coalsOvenModelNotes). Weak spot: one half-time for all
// sizes; the network gives 10 minutes with the lid off and 13 with it on.

import { type Kelvin, kelvin, type Minutes } from '../quantity/unit.ts';

/** An emptied oven loses half its heat in about this time; reuse.test.ts holds it to the network. */
export const HALF_COOLED_MINUTES = 12;

/** Iron after standing empty in the air. */
export function ironAfter(rest: {
  readonly iron: Kelvin;
  readonly air: Kelvin;
  readonly minutes: Minutes;
}): Kelvin {
  const left = 0.5 ** (Math.max(0, rest.minutes) / HALF_COOLED_MINUTES);
  return kelvin(rest.air + (rest.iron - rest.air) * left);
}

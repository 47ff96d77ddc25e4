// Two ovens stacked as the network sees them: what the coals between give each, what shields what.
// Sources: stackBetween, coalsBurnNotes (heat of a coal). Weak spot: nobody has
// measured what coals between two irons give each of them; grade D, so the band is wide.

import type { CoalRequest } from './coal-plan.ts';
import { beliefsFor, believed } from './factors.ts';
import type { OvenBody } from './geometry.ts';
import type { RunSetting } from './run.ts';
import { siteFor } from './site.ts';

export interface StackRequest {
  readonly lower: CoalRequest;
  readonly upper: CoalRequest;
}

/**
 * Delivery of a coal between two ovens, down and up, beside what the network gives a lid coal and a
 * floor coal. 1: each iron gets the side of the coal that faces it, nothing is taken from the other.
 * It has both to give: with what the network takes for each it hands on about half of what it burns
 * at mid-life (coalsBurnNotes; a test adds it up), and hot iron keeps it hotter than open sky does.
 * If it had only one lid's heat to share it would be about a half: two deviations down.
 */
export const BETWEEN_DELIVERY = { likely: 1, spread: 0.25 } as const; // ours, grade D
/** The upper floor keeps the bare lid under it from the sky and is about as hot; ours. */
const SHIELDED_SHARE = 0.9;

export interface Pair<Each> {
  readonly lower: Each;
  readonly upper: Each;
}

export const stackSettings = (
  { lower, upper }: StackRequest,
  delivery: number,
): Pair<RunSetting> => {
  const below = believed(siteFor(lower), beliefsFor(lower));
  // The upper one stands on iron: neither ground nor riser weakens what lies under it.
  const above = believed(siteFor(onIron(upper)), beliefsFor(upper));
  return {
    lower: {
      ...below,
      body: shielded(below.body, above.body),
      strengthAbove: below.strengthAbove * delivery,
    },
    upper: { ...above, strengthBelow: above.strengthBelow * delivery },
  };
};

const onIron = (request: CoalRequest): CoalRequest => ({
  ...request,
  place: { ...request.place, hearth: 'fire-pan' },
  ...(request.conditions ? { conditions: withoutGround(request.conditions) } : {}),
});

const withoutGround = ({ rain, measures }: NonNullable<CoalRequest['conditions']>) => ({
  ...(rain === undefined ? {} : { rain }),
  ...(measures === undefined ? {} : { measures }),
});

/** The lid loses less under a hot floor; as in factors.ts the change is put on the rim. */
const shielded = (body: OvenBody, above: OvenBody): OvenBody => ({
  ...body,
  rimArea: Math.max(0, body.rimArea - SHIELDED_SHARE * BARE_LID_SHARE * above.floorArea),
});

const BARE_LID_SHARE = 0.6; // what about 17 coals leave bare of a 12 inch lid, as in factors.ts

// How much room is there between what a food rests on and the lid?
// Source of the heights: data/in-oven.json; the finger below the lid is common practice, no source.

import type { CampOven } from '../camp/camp.ts';
import { metres } from '../quantity/unit.ts';
import { LEAST_HEADROOM_METRES } from './geometry.ts';
import { contactFigures, type InOven } from './in-oven.ts';

/**
 * Height that a risen top may reach above what it rests on: the oven's depth less rack or meal less a
 * finger below the lid, where the coals above would scorch it. Never negative.
 */
export const roomUnderLid = (oven: CampOven, { contact }: InOven): number =>
  Math.max(0, oven.depth - contactFigures(contact).height - LEAST_HEADROOM_METRES);

/** Risen height over that room; an oven no deeper than its rack and a finger holds nothing. */
export const heightFill = (oven: CampOven, inOven: InOven, risenMetres: number): number =>
  risenMetres / Math.max(1e-6, roomUnderLid(oven, inOven));

/** Thickness, risen height and headroom of what stands on its rack, paper or iron. */
export const heightsIn = (
  oven: CampOven,
  { contact }: InOven,
  { thickness, risen }: { readonly thickness: number; readonly risen: number },
) => ({
  thickness: metres(thickness),
  risenHeight: metres(risen),
  headroom: metres(oven.depth - contactFigures(contact).height - risen),
});

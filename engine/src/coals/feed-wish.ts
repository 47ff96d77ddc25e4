// What feeding an oven needs to know: the heat that its coals must keep up, and for how long.
// Source: ours; the numbers come from need.ts and count.ts.

import type { Room } from './room.ts';
import type { RunSetting } from './run.ts';

/** Coals wanted at mid-life strength; a pot wants more on its way to the boil. */
export interface Need {
  readonly hold: number;
  readonly heatUp: number;
  /** The load has come up when it is this hot; 0 for a bake. */
  readonly upKelvin: number;
}

export interface Counts {
  readonly above: number;
  readonly below: number;
}

export interface FeedWish {
  /** The first set, whole, and as it was before rounding. */
  readonly counts: Counts;
  readonly sized: Counts;
  readonly setting: RunSetting;
  readonly need: Need;
  /** Share of the first set that lies above. */
  readonly shareAbove: number;
  /** The same for what is added once a pot has come up: the method's own share. */
  readonly heldShareAbove: number;
  readonly room: Room;
  readonly stayMinutes: number;
  /** Coals are added with an eye to this; the stay, or longer. 0: none are. */
  readonly tendedMinutes: number;
  /** The load goes in at this minute, and a pot that is browned gets its lid; else 0. */
  readonly loadMinute: number;
  /** An oven that is heated first should be this hot when it is loaded; 0 for a cold start. */
  readonly readyKelvin: number;
  /** Smallest number that can be told: 1, or half a shovel. */
  readonly handful: number;
  /** A pot that is browned first: lid off and coals below only for so long; 0 for all others. */
  readonly brownMinutes: number;
}

/** From here on ash lies thick enough to be cleared first; common practice, no source. */
export const ASHY_MINUTE = 30;

// Coals of several ages told set by set, as the questions at the fire take them.

import type { Minutes } from '../quantity/unit.ts';
import type { LyingCoals } from './fire-state.ts';

/** Coals that were lit together, on the lid and below. */
export interface LyingSet {
  readonly above: number;
  readonly below: number;
  readonly litMinutesAgo: Minutes;
}

/** Sets of several ages as they lie, and how many coals that makes. */
export const coalsLying = (sets: readonly LyingSet[]) => ({
  coals: sets.flatMap(({ above, below, litMinutesAgo }): readonly LyingCoals[] => [
    { place: 'above', pieces: above, litMinutesAgo },
    { place: 'below', pieces: below, litMinutesAgo },
  ]),
  above: sets.reduce((sum, each) => sum + each.above, 0),
  below: sets.reduce((sum, each) => sum + each.below, 0),
});

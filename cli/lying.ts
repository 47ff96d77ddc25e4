// Coals as they lie now, of one age.

import { type LyingCoals, minutes } from '#engine';
import type { FireOptions } from './fire.ts';

export interface StateOptions extends FireOptions {
  readonly above: string;
  readonly below: string;
  readonly minutesIn?: string;
}

export function lyingOf(
  { above, below }: { readonly above: number; readonly below: number },
  litMinutes: number,
): readonly LyingCoals[] {
  const litMinutesAgo = minutes(litMinutes);
  return [
    { place: 'above', pieces: above, litMinutesAgo },
    { place: 'below', pieces: below, litMinutesAgo },
  ];
}

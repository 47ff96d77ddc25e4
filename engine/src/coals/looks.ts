// How old are coals, by what they look like? A cook who did not look at the clock sees glow, ash and
// how small they are; the burn law says when a coal here is that small.
// Sources: coalsBurnNotes (mass left, so width left, of a shrinking piece); which look is which width
// is common practice, no source.

import type { Air, Fuel } from '../camp/camp.ts';
import { type Minutes, minutes } from '../quantity/unit.ts';
import { burnoutMinutes, LAID_AGE_MINUTES, LAID_BURNT } from './burn.ts';
import { fuelPiece } from './fuel.ts';

export const coalLooks = ['glow', 'ash-grey', 'half-size', 'small'] as const;
export type CoalLook = (typeof coalLooks)[number];

/** What a coal of that look shows, as a cook would say it. */
export const COAL_LOOK_WORDS: Readonly<Record<CoalLook, string>> = {
  glow: 'red all over under thin ash, full size',
  'ash-grey': 'thick grey ash, a little smaller',
  'half-size': 'half as wide as they were',
  small: 'small, a third as wide',
};

/** Width beside the unlit piece. */
const WIDTH_LEFT: Readonly<Record<Exclude<CoalLook, 'glow'>, number>> = {
  'ash-grey': 0.8, // half burned, at 30 min in still air (chimneyMinutes)
  'half-size': 0.5,
  small: 1 / 3,
};

/**
 * Minutes since coals of this look were lit, in this wind and at this height.
 *
 * @source  coalsBurnNotes: mass left (1 - t/tb)^1.5, so width left (1 - t/tb)^0.5  (grade D)
 */
export const litMinutesOfLook = (look: CoalLook, { fuel, air }: BurnSpot): Minutes => {
  if (look === 'glow') return minutes(LAID_AGE_MINUTES);
  return litMinutesOfBurnt(1 - WIDTH_LEFT[look] ** 2, { fuel, air });
};

export interface BurnSpot {
  readonly fuel: Fuel;
  readonly air: Pick<Air, 'wind' | 'pressure'>;
}

/** Minutes since coals were lit of which this part of the burning time is over. @source coalsBurnNotes */
export const litMinutesOfBurnt = (burnt: number, { fuel, air }: BurnSpot): Minutes => {
  const burnout = burnoutMinutes(fuelPiece(fuel), {
    windMetresPerSecond: air.wind,
    pressurePascals: air.pressure,
  });
  return minutes(Math.round(LAID_AGE_MINUTES + (burnt - LAID_BURNT) * burnout));
};

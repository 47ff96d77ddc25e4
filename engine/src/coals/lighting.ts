// When are coals ready, how long are they good, and how many chimneys does that take?
// Sources: chimneyMinutes, chimneyAtHeight, coalLife, woodCoalLife.
// Weak spot: one report from height, none from wind; the slope with height is ours.

import type { Fuel, Gear } from '../camp/camp.ts';
import type { Metres, MetresPerSecond, Minutes, Pascals } from '../quantity/unit.ts';
import { minutes } from '../quantity/unit.ts';
import { burnoutMinutes, usefulMinutes } from './burn.ts';
import { fuelPiece } from './fuel.ts';
import { parameter } from './parameters.ts';

const LOWLAND_MINUTES = 20; // chimneyMinutes: 15 … 25 in still mild air
const HIGH_MINUTES = 25; // chimneyAtHeight: full ash at 5500 ft in mild air
const HIGH_METRES = 1676; // 5500 ft
const LEAST_MINUTES = 15; // chimneyMinutes: the shortest that several pages give
const MOST_MINUTES = 60; // chimneyAtHeight: "near an hour" at about 6500 ft, a bad lighting
/** Each m/s takes this share off the wait, a chimney draws better in a breeze; no source. */
const WIND_GAIN = 0.04;

/**
 * Minutes from lighting a chimneyful to coals that have ashed over.
 *
 * @param elevation  height above sea level    [m]   -400 … 4500
 * @param wind       at oven height            [m/s] 0 … 15
 * @source           chimneyMinutes, chimneyAtHeight (grade B); wind: no source (grade D)
 */
export function ashOverMinutes(place: {
  readonly elevation: Metres;
  readonly wind: MetresPerSecond;
}): Minutes {
  const slope = (HIGH_MINUTES - LOWLAND_MINUTES) / HIGH_METRES;
  const still = LOWLAND_MINUTES + slope * Math.max(0, place.elevation);
  const windy = still * (1 - WIND_GAIN * Math.min(5, Math.max(0, place.wind)));
  return minutes(Math.round(Math.min(MOST_MINUTES, Math.max(LEAST_MINUTES, windy))));
}

/**
 * Minutes that a laid coal is worth counting on: until it gives half of what it gave when laid.
 *
 * @source  coalsBurnNotes (derived); published: 45 … 60 min for briquettes, half that for wood
 */
export function coalLifeMinutes(coal: {
  readonly fuel: Fuel;
  readonly wind: MetresPerSecond;
  readonly pressure?: Pascals;
}): Minutes {
  const burnout = burnoutMinutes(fuelPiece(coal.fuel), {
    windMetresPerSecond: coal.wind,
    pressurePascals: coal.pressure ?? parameter('chartPressurePascals'),
  });
  return minutes(Math.round(usefulMinutes(burnout)));
}

/** Whole chimneys to light for a number of coals. */
export const chimneyfuls = (count: number, gear: Pick<Gear, 'chimneyfulCoals'>): number =>
  gear.chimneyfulCoals > 0 ? Math.ceil(count / gear.chimneyfulCoals) : 0;

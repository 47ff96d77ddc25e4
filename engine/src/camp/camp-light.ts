// When is it light at a camp, day by day of its own clock? Only where place, clock and date are said.

import { clockMinutes } from '../quantity/unit.ts';
import type { Camp } from './camp.ts';
import { type Daylight, daylightAt } from './daylight.ts';

const DAY_MINUTES = 1440;

/**
 * First light, sunrise, sunset and dark of the day so many after the camp's date, in minutes of the
 * camp's clock; undefined where the camp does not say enough.
 */
export function campLight({ place, date }: Camp, daysAfter: number): Daylight | undefined {
  const { latitude, longitude, utcOffset } = place;
  const isSaid = latitude !== undefined && longitude !== undefined && utcOffset !== undefined;
  if (!isSaid || !/^\d{4}-\d{2}-\d{2}$/.test(date)) return undefined;
  const { sun, ...events } = daylightAt({ latitude, longitude, date, daysAfter, utcOffset });
  const moved = Object.entries(events).map(
    ([event, at]) => [event, clockMinutes(at + daysAfter * DAY_MINUTES)] as const,
  );
  return { ...Object.fromEntries(moved), sun };
}

// What does rain cost a hot lid? Water that lands on it is warmed and leaves as steam.
// Source: heat balance; that rain cools an oven is common practice, no source, and has no size.
// Weak spot: the share that stays long enough to boil is ours; rain on the coals is not counted.

import type { OvenBody } from './geometry.ts';
import type { Outside } from './network.ts';

/** Heat of water from 0 to 100 °C [J/kgK] and of its steam at 100 °C [J/kg], from memory. */
const WATER_JOULES_PER_KILOGRAM_KELVIN = 4190;
const STEAM_JOULES_PER_KILOGRAM = 2.257e6;
/** Share of the rain on the lid that stays to take the lid's heat; the rest bounces off. Ours. */
const CAUGHT = 0.5;
/** A lid boils rain in full once it is this far above 100 °C, none of it below. Ours. */
const BOILS_FROM_KELVIN = 373.15;
const BOILS_FULL_KELVIN = 393.15;
const SECONDS_PER_HOUR = 3600;

/**
 * Heat that rain takes from the lid [W]. One millimetre an hour is a kilogram on a square metre.
 *
 * A prior: nobody has published by how much rain cools an oven, only that it does. Half of the
 * water that lands is taken to boil off; a hot 12 inch lid then loses some 31 W in each mm/h, that
 * is about one coal's worth.
 *
 * @source  heat of water and steam, from memory; the share is a judgement (grade D)
 */
export const rainWatts = (
  body: Pick<OvenBody, 'lidArea'>,
  outside: Pick<Outside, 'rainMillimetresPerHour' | 'airKelvin'>,
  lidKelvin: number,
): number => {
  const rain = outside.rainMillimetresPerHour;
  if (rain === undefined || rain <= 0) return 0;
  const ramp = (lidKelvin - BOILS_FROM_KELVIN) / (BOILS_FULL_KELVIN - BOILS_FROM_KELVIN);
  const boiling = Math.min(1, Math.max(0, ramp));
  const warming = Math.min(BOILS_FROM_KELVIN, lidKelvin) - outside.airKelvin;
  const perKilogram =
    WATER_JOULES_PER_KILOGRAM_KELVIN * Math.max(0, warming) + boiling * STEAM_JOULES_PER_KILOGRAM;
  return (CAUGHT * rain * body.lidArea * perKilogram) / SECONDS_PER_HOUR;
};

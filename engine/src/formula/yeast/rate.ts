// How fast yeast works at a temperature, over its speed at a chosen one.
// Sources: yeastRate, yeastHandout (grade B) for baker's yeast; gaenzle1998 (grade A) for the wild
// yeast and the lactobacilli of sourdough. Weak spot: baker's yeast below 6.6 °C, judged.

import table from '../../../data/fermentation.json' with { type: 'json' };
import { type Kelvin, toCelsius } from '../../quantity/unit.ts';

export type Leaven = 'yeast' | 'sourdough';

const { bakersYeast, wildYeast, lactobacilli, usualRise } = table;

/**
 * Baker's yeast over its speed at 80 °F; 1 there, twice that 17 °F above, nothing at 34 or 140 °F.
 *
 * @source yeastRate up to 35 °C, yeastHandout for the ends (grade B); 1 … 6.6 °C judged
 */
export function bakersYeastRate(temperature: Kelvin): number {
  const celsius = toCelsius(temperature);
  const { doublingKelvin, lawEndsCelsius, peakEndsCelsius, deadCelsius } = bakersYeast;
  const lawful = Math.min(celsius, lawEndsCelsius);
  const doublings = (lawful - usualRise.celsius) / doublingKelvin;
  const chill = share(celsius, bakersYeast.asleepCelsius, bakersYeast.slowBelowCelsius);
  const heat = 1 - share(celsius, peakEndsCelsius, deadCelsius);
  return 2 ** doublings * chill * heat;
}

/** From 0 at one temperature to 1 at the other. */
const share = (at: number, none: number, all: number) =>
  Math.min(1, Math.max(0, (at - none) / (all - none)));

/** Wild yeast of sourdough over its best, at 28 °C. */
export const wildYeastRate = (temperature: Kelvin): number =>
  alongPoints(wildYeast.points, toCelsius(temperature));

/** Lactobacilli of sourdough over their best, at 32 to 33 °C: they make it sour. */
export const lactobacilliRate = (temperature: Kelvin): number =>
  alongPoints(lactobacilli.points, toCelsius(temperature));

/** Over the speed at 80 °F for baker's yeast, over its best for wild yeast. */
export const leavenRate = (leaven: Leaven, temperature: Kelvin): number =>
  leaven === 'yeast' ? bakersYeastRate(temperature) : wildYeastRate(temperature);

/** Where warmer is no longer faster. */
export const fastestCelsius = (leaven: Leaven): number =>
  leaven === 'yeast' ? bakersYeast.peakEndsCelsius : 28;

/** At and below this it does nothing. */
export const asleepCelsius = (leaven: Leaven): number =>
  leaven === 'yeast' ? bakersYeast.asleepCelsius : wildYeast.points[0]![0]!;

/** Pairs of [°C, rate], rising in °C. */
type Points = readonly (readonly number[])[];

/** Straight in the logarithm of the rate; straight in the rate where one end is nothing. */
function alongPoints(points: Points, celsius: number): number {
  const next = points.findIndex(([at]) => celsius <= at!);
  if (next <= 0) return 0;
  const [from, low] = points[next - 1] as [number, number];
  const [to, high] = points[next] as [number, number];
  const along = (celsius - from) / (to - from);
  if (low === 0 || high === 0) return low + along * (high - low);
  return low * (high / low) ** along;
}

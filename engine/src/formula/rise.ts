// How long a yeast dough takes to double at one temperature: what is told before the day is planned.
// yeast/rise-plan.ts knows the day. Weak spot: flour, salt and handling are not in it, so the
// band is wide; a finger and a mark on the bowl know better. Sources: as yeast/work.ts.

import {
  fromCelsius,
  type Kelvin,
  kelvin,
  type Metres,
  minutes,
  toCelsius,
} from '../quantity/unit.ts';
import type { WeighedIngredient } from './dough.ts';
import type { RiseEstimate } from './formula.ts';
import { pressureRatioAt } from './height.ts';
import { leavenRate } from './yeast/rate.ts';
import { BAND, SECOND_OF_FIRST } from './yeast/rise-plan.ts';
import { leavenIn, workToDouble } from './yeast/work.ts';

const LONGEST_MINUTES = 24 * 60;
/** The doubling law ends here, yeastRate (grade B). */
const HIGHEST_CELSIUS = 35;

/**
 * First and second rise, with a band for the first; undefined where there is no leaven or no flour.
 *
 * @param dough      temperature of the dough in its first rise   [K]   5 … 35 °C
 * @param shaped     the same after shaping; the first's if not said
 * @param elevation                                              [m]
 * @source           yeastRate (grade B), amount and second rise common practice (grade D)
 */
export function riseFor(
  lines: readonly WeighedIngredient[],
  { dough, shaped, elevation }: { dough: Kelvin; shaped?: Kelvin; elevation: Metres },
): RiseEstimate | undefined {
  const found = leavenIn(lines);
  if (found === undefined) return undefined;
  const work = workToDouble(found, pressureRatioAt(elevation));
  const doubling = (at: Kelvin) => Math.min(LONGEST_MINUTES, work / leavenRate(found.leaven, at));
  const first = doubling(dough);
  return {
    dough,
    first: minutes(first),
    second: minutes(doubling(shaped ?? dough) * SECOND_OF_FIRST),
    least: minutes(first * BAND.least),
    most: minutes(first * BAND.most),
  };
}

/** Is the doubling law good at this temperature? */
export const riseRange = (dough: Kelvin): 'cold' | 'good' | 'warm' => {
  const celsius = toCelsius(dough);
  if (celsius < 10) return 'cold';
  return HIGHEST_CELSIUS < celsius ? 'warm' : 'good';
};

/**
 * Dough left to itself cools from its mixing temperature towards the air: half way, on the mean of
 * the rise (judged). In a box it is as warm as the box.
 */
export const doughTemperature = (air: Kelvin, box?: Kelvin): Kelvin =>
  box ?? kelvin((MIXED_DOUGH + air) / 2);

/** A dough as it leaves the cook's hands. */
export const MIXED_DOUGH = fromCelsius(25); // 75 … 78 °F, doughTemperatures (grade B)

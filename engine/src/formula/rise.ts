// How long a yeast dough takes to double where it stands.
// Law: the rate doubles for every 9.4 K (yeastRate), goes with the amount of yeast (judged), and
// its gas fills more room in thin air. Weak spot: flour, salt and handling are not in it, so the
// band is wide; a finger and a mark on the bowl know better.

import { foodOf } from '../menu/needs.ts';
import {
  fromCelsius,
  type Kelvin,
  kelvin,
  type Metres,
  minutes,
  toCelsius,
} from '../quantity/unit.ts';
import { flourIn, type WeighedIngredient } from './dough.ts';
import type { RiseEstimate } from './formula.ts';
import { pressureRatioAt } from './height.ts';

const DOUBLING_KELVIN = 9.4; // 17 °F, Q10 = 2.09, yeastRate (grade B)
/**
 * 1 % of instant yeast doubles a dough in 75 minutes at 80 °F: the common 1.4 % and one hour in a
 * warm room, by this law. Common practice, no source.
 */
const USUAL = { yeastShare: 0.01, celsius: 26.7, minutes: 75 };
const SECOND_OF_FIRST = 0.5; // the second rise is shorter; common practice, no source
const BAND = { least: 0.65, most: 1.6 }; // judged; published "faster" at height: 25 … 50 %
const LOWEST_CELSIUS = 5; // nearly stops at 40 °F, yeastHandout (grade B)
const HIGHEST_CELSIUS = 35; // the doubling law ends here, yeastRate (grade B)
const YEAST_SHARES = { lowest: 0.001, highest: 0.04 };
const LONGEST_MINUTES = 24 * 60;

/**
 * First and second rise, with a band for the first; undefined where there is no yeast or no flour.
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
  const share = instantYeastIn(lines) / flourIn(lines);
  if (!(0 < share) || !Number.isFinite(share)) return undefined;
  const doubling = (at: Kelvin) => doublingMinutes({ yeastShare: share, dough: at, elevation });
  const first = doubling(dough);
  return {
    dough,
    first: minutes(first),
    second: minutes(doubling(shaped ?? dough) * SECOND_OF_FIRST),
    least: minutes(first * BAND.least),
    most: minutes(first * BAND.most),
  };
}

function doublingMinutes(given: { yeastShare: number; dough: Kelvin; elevation: Metres }): number {
  const yeast = clamp(given.yeastShare, YEAST_SHARES.lowest, YEAST_SHARES.highest);
  const celsius = clamp(toCelsius(given.dough), LOWEST_CELSIUS, HIGHEST_CELSIUS);
  const slower = rateDoublings(USUAL.celsius) - rateDoublings(celsius);
  const atSea = USUAL.minutes * (USUAL.yeastShare / yeast) * 2 ** slower; // yeastRate (grade B)
  return Math.min(LONGEST_MINUTES, atSea * pressureRatioAt(given.elevation));
}

const rateDoublings = (celsius: number) => celsius / DOUBLING_KELVIN;

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
  box ?? kelvin((MIXED + air) / 2);

const MIXED = fromCelsius(25); // 75 … 78 °F, doughTemperatures (grade B)

// Instant yeast of the same strength: 0.8 of active dry, 0.36 of fresh (from memory, grade D).
const INSTANT_FOR: Readonly<Record<string, number>> = {
  'active-dry-yeast': 0.8,
  'fresh-yeast': 0.36,
};

const instantYeastIn = (lines: readonly WeighedIngredient[]) =>
  lines
    .filter((each) => each.ingredient.part === 'yeast')
    .reduce(
      (sum, each) => sum + each.grams * (INSTANT_FOR[foodOf(each.ingredient)?.key ?? ''] ?? 1),
      0,
    );

const clamp = (value: number, lowest: number, highest: number) =>
  Math.min(highest, Math.max(lowest, value));

// How long until the middle of a dough is baked? A law fitted to a trial model's rows, which is
// computed, not measured; published times of biscuits, bannock, soda bread and loaves check it.
// Weak points: no sides, the rise is a guess, dough starts at 22 C.

import type { OvenLoad } from '../menu/load.ts';
import { type Kelvin, type Minutes, minutes } from '../quantity/unit.ts';

/** Raw dough [g/m3] (trial-bake-model). */
const DOUGH_GRAMS_PER_CUBIC_METRE = 1.1e6;
/** Nothing is thinner, so that no time is zero or NaN. */
const THINNEST_METRES = 0.0005;
/** Stiff dough without a bubble, about 1.25 g/cm3, over the dough of the law. */
const DENSEST_OVER_DOUGH = 1.15;
const SEA_LEVEL_BOIL_KELVIN = 373.12; // IAPWS-IF97 at 101 325 Pa (if97)
const REFERENCE_OVEN_KELVIN = 488.15; // 215 C, the oven of the fitted rows

export interface DoughBody {
  /** Depth that the dough would have without gas [mm]. */
  readonly rawMillimetres: number;
  /** Height when baked [mm]. */
  readonly risenMillimetres: number;
}

/**
 * Depth without gas by mass over area, so that a proofed dough is taken back to its raw depth; never
 * much more than the depth it is said to lie in, and the baked height.
 */
export function doughBodyOf(load: OvenLoad): DoughBody {
  const byMass = load.mass / (DOUGH_GRAMS_PER_CUBIC_METRE * load.planArea);
  const most = load.thickness * DENSEST_OVER_DOUGH;
  const raw = Math.max(THINNEST_METRES, byMass > 0 ? Math.min(most, byMass) : load.thickness);
  return {
    rawMillimetres: raw * 1000,
    risenMillimetres: Math.max(raw, load.risenHeight, load.thickness) * 1000,
  };
}

/**
 * Minutes in an oven of 215 C until the core stands at 95 C.
 *
 * One law for raw and for proofed dough: depth without gas, and baked height against the doubling
 * that the law was fitted for. Below doubling the exponent of the rise falls from 0.66 at 25 mm to
 * 0.43 at 12 mm, where the surface is the hindrance; above it is 0.73.
 *
 * @valid   raw 12 … 40 mm and risen to 12 … 90 mm computed; used for 6 mm raw … 110 mm risen
 * @source  trial-bake-model (grade D: computed, not measured)
 * @tuned   all three exponents, on five rows with other rises and five of proofed dough; all 19 rows
 *          are met within 4.1 % (validation/bake/trial-model-minutes.json)
 */
export function crumbMinutesFor(body: DoughBody): Minutes {
  const { rawMillimetres, risenMillimetres } = body;
  const doubled = 0.11 * rawMillimetres ** 1.73; // trial-bake-model, time law
  const against = risenMillimetres / rawMillimetres / 2;
  return minutes(doubled * against ** (against > 1 ? 0.73 : lowRiseExponent(rawMillimetres)));
}

const lowRiseExponent = (rawMillimetres: number) =>
  0.43 + (0.66 - 0.43) * Math.min(1, Math.max(0, (rawMillimetres - 12) / (25 - 12)));

/**
 * How fast the middle bakes against an oven of 215 C: 1 there, 0 at 100 C and below.
 *
 * Resistances in series, oven to front and front to middle; the 46 K make 230 C save 7 % against
 * 200 C, within the 6 … 11 % of the trial model. No credit for a lower boiling point: the front is
 * cooler, but starch then takes longer (trial-bake-model, rows at 84 307 and 69 682 Pa).
 */
export function crumbRateAt(oven: Kelvin): number {
  const over = Math.max(0, oven - SEA_LEVEL_BOIL_KELVIN);
  const reference = REFERENCE_OVEN_KELVIN - SEA_LEVEL_BOIL_KELVIN;
  return ((over / (over + INNER_KELVIN)) * (reference + INNER_KELVIN)) / reference;
}

const INNER_KELVIN = 46; // tuned on five pairs of rows at 200 and 230 C

/**
 * Longer at height: starch sets later the cooler the crumb stays.
 *
 * @source trial-bake-model: 8.0, 8.7, 9.0 min to 98 % set at sea level, 5,000 and 10,000 ft
 */
export const heightLengthening = (boiling: Kelvin) =>
  1 + 0.0135 * Math.max(0, SEA_LEVEL_BOIL_KELVIN - boiling);

/**
 * What the sides of a single round give: rates of a slab and of a cylinder add up.
 *
 * The ideal weight of (height / diameter)^2 is 2.34 (heated-cylinder); half of it is taken, because
 * the sides see the wall across air while the floor touches. Without it, soda bread came out up to
 * 30 % slow.
 */
export const sidesHelp = (heightOverDiameter: number) => 1 + 1.2 * heightOverDiameter ** 2;

/** Is the dough within the span that the minutes were ever held against? */
export const isWithinEvidence = (body: DoughBody) =>
  6 <= body.rawMillimetres && body.risenMillimetres <= 110;

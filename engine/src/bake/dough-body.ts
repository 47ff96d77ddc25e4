// How thick is a dough without its gas, how high when baked, and what do its sides help?
// Source: heated-cylinder (sides); the density without gas is that of trial-bake-model.

import type { OvenLoad } from '../menu/load.ts';

/** Raw dough [g/m3] (trial-bake-model). */
const DOUGH_GRAMS_PER_CUBIC_METRE = 1.1e6;
/** Nothing is thinner, so that no time is zero or NaN. */
const THINNEST_METRES = 0.0005;
/** Stiff dough without a bubble, about 1.25 g/cm3, over the dough above. */
const DENSEST_OVER_DOUGH = 1.15;

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
 * What the sides of a single round give: rates of a slab and of a cylinder add up.
 *
 * The ideal weight of (height / diameter)^2 is 2.34 (heated-cylinder); half of it is taken, because
 * the sides see the wall across air while the floor touches.
 */
export const sidesHelp = (heightOverDiameter: number) => 1 + 1.2 * heightOverDiameter ** 2;

/** First root of a ball's second wave 4.493 over a slab's 3.142, squared (textbook). */
export const HALF_BALL = 2.05;

/**
 * What standing free as half an ellipsoid gives, over a slab as high as its middle: for half a ball
 * the above, for a flat mound 1 and 2/pi of height over radius (reckoned). Half of what goes beyond 1
 * is taken, as of the sides above.
 */
export const moundHelp = (heightOverRadius: number) =>
  1 +
  ((2 / Math.PI) * heightOverRadius + (HALF_BALL - 1 - 2 / Math.PI) * heightOverRadius ** 2) / 2;

/** Is the dough within the span that the minutes were ever held against? */
export const isWithinEvidence = (body: DoughBody) =>
  6 <= body.rawMillimetres && body.risenMillimetres <= 110;

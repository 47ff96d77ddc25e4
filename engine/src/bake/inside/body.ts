// What lies in the oven, cut into slices of equal dry mass each, thin at its faces.
// Source: ours. Dry mass stays where it is while water leaves and dough rises, so it counts places.

import { SOLIDS_DENSITY, WATER_DENSITY } from './constants.ts';

/** A wall between two faces; a bar or a ball with one face round it. */
export type Shape = 'slab' | 'cylinder' | 'sphere';

export interface Body {
  readonly shape: Shape;
  /** Thickness of a slab, radius of the others, as it goes in [m]. */
  readonly metres: number;
  /** As it goes in [kg/m3]. */
  readonly density: number;
  /** Water to one of dry [kg/kg]. */
  readonly water: number;
  /** Volume when risen over volume as it goes in. */
  readonly rise: number;
  readonly startKelvin: number;
}

/** A body's state and what the stepper needs beside it; arrays run from bottom to top. */
export interface Slices {
  readonly shape: Shape;
  readonly count: number;
  /** Dry mass [kg], of one square metre of slab, one metre of bar, one ball. */
  readonly dry: Float64Array;
  readonly water: Float64Array;
  readonly kelvin: Float64Array;
  /** Heat counted from dry solids and liquid water at 0 °C [J/kg dry]. */
  readonly heat: Float64Array;
  /** Hottest so far: dough does not sink again. */
  readonly hottest: Float64Array;
  /** Sum of rate times seconds; the share that has set is 1 - exp(-this). */
  readonly set: Float64Array;
  /** Volume to one of dry, raw [m3/kg]. */
  readonly rawVolume: number;
  readonly rise: number;
  readonly startKelvin: number;
}

/**
 * How much thicker each slice is than the one nearer its face: 1.3 for the usual 21, nearer to 1 for
 * more, so that more slices are finer everywhere.
 */
const growthFor = (count: number) => 1.3 ** (20 / (count - 1));

/** The body in slices; an uneven number of them for a slab, so that one holds the middle. */
export function slicesOf(body: Body, count: number): Slices {
  const dryDensity = body.density / (1 + body.water);
  const isSlab = body.shape === 'slab';
  const share = isSlab ? slabShares(count) : roundShares(count);
  const whole = volumeOf(body.shape, body.metres) * dryDensity;
  const dry = share.map((each) => each * whole);
  if (!isSlab) {
    let inner = 0;
    for (let slice = 0; slice < count; slice += 1) {
      const outer = inner + share[slice]!;
      dry[slice] =
        (volumeOf(body.shape, outer * body.metres) - volumeOf(body.shape, inner * body.metres)) *
        dryDensity;
      inner = outer;
    }
  }
  const filled = (value: number) => new Float64Array(count).fill(value);
  return {
    shape: body.shape,
    count,
    dry,
    water: filled(body.water),
    kelvin: filled(body.startKelvin),
    heat: filled(0),
    hottest: filled(body.startKelvin),
    set: filled(0),
    rawVolume: 1 / dryDensity,
    rise: body.rise,
    startKelvin: body.startKelvin,
  };
}

/** Of one square metre, one metre of length, or whole. */
export function volumeOf(shape: Shape, metres: number): number {
  if (shape === 'slab') return metres;
  return shape === 'cylinder' ? Math.PI * metres ** 2 : (4 / 3) * Math.PI * metres ** 3;
}

/** The other way round: how far out this volume reaches. */
export function reachOf(shape: Shape, volume: number): number {
  if (shape === 'slab') return volume;
  return shape === 'cylinder' ? Math.sqrt(volume / Math.PI) : Math.cbrt((0.75 * volume) / Math.PI);
}

/** Area of the shell at this radius, of one metre of length or whole. */
export function shellArea(shape: Shape, metres: number): number {
  if (shape === 'slab') return 1;
  return shape === 'cylinder' ? 2 * Math.PI * metres : 4 * Math.PI * metres ** 2;
}

/** Volume without a pore to one of dry [m3/kg]. */
export const denseVolume = (water: number) => 1 / SOLIDS_DENSITY + water / WATER_DENSITY;

function slabShares(count: number): Float64Array {
  const share = new Float64Array(count);
  const growth = growthFor(count);
  for (let slice = 0; slice < count; slice += 1) {
    share[slice] = growth ** Math.min(slice, count - 1 - slice);
  }
  return scaled(share);
}

/** Thin outside; widths along the radius. */
function roundShares(count: number): Float64Array {
  const share = new Float64Array(count);
  const growth = growthFor(count);
  for (let slice = 0; slice < count; slice += 1) share[slice] = growth ** (count - 1 - slice);
  return scaled(share);
}

function scaled(share: Float64Array): Float64Array {
  const sum = share.reduce((all, each) => all + each, 0);
  return share.map((each) => each / sum);
}

// Everything that changes while a load bakes, in one object: nothing is made in a step.

import type { Slices } from './body.ts';
import { SOLIDS_JOULES, WATER_JOULES, ZERO_KELVIN } from './constants.ts';
import { type Face, shutFace } from './face.ts';
import type { InsidePhysics } from './physics.ts';

/** One face while it bakes. */
export interface FaceState {
  readonly now: Face;
  kelvin: number;
  /** Of the iron that it touches, where that gives way; undefined until the first step. */
  ironKelvin: number | undefined;
  /** Sum of rate times seconds: colour is 52 (1 - exp(-this)) (zanoni1995). */
  browning: number;
  /** Heat that came in through it so far, what steam off its skin took not taken off [J]. */
  joules: number;
  /** Heat flow into the skin at the end of the last step [W]. */
  watts: number;
}

export interface Inside {
  readonly slices: Slices;
  readonly physics: InsidePhysics;
  readonly tuning: Tuning;
  readonly bottom: FaceState;
  readonly top: FaceState;
  /** Steam that left so far, by boiling and off the skin [kg]. */
  steam: number;
  readonly work: Work;
}

/** What was fitted; see tuning.ts. */
export interface Tuning {
  /** Factor on the steam's part of a pore's conductivity. */
  readonly steamInPores: number;
  /** Liquid water through dough [m2/s]. */
  readonly waterDiffusivity: number;
  /** Factor on the likeness of heat and steam in the air at the skin. */
  readonly skinDrying: number;
}

export interface Work {
  /** Rows of a chain; its answer is left in `right`. */
  readonly before: Float64Array;
  readonly middle: Float64Array;
  readonly after: Float64Array;
  readonly right: Float64Array;
  readonly carried: Float64Array;
  /** Heat as the step began, and what each slice gained in the last one [J/kg], [W/kg dry]. */
  readonly start: Float64Array;
  readonly trend: Float64Array;
  /** Temperatures of the heat that is tried, and their slope over heat [K], [K kg/J]. */
  readonly kelvin: Float64Array;
  readonly slope: Float64Array;
  /** Volume to one of dry [m3/kg], edges from the bottom or the middle [m], areas there [m2]. */
  readonly volume: Float64Array;
  readonly edge: Float64Array;
  readonly area: Float64Array;
  /** Between two slices, in the lower one's place [W/K]; water [kg/s]; half a slice of it. */
  readonly between: Float64Array;
  readonly waterBetween: Float64Array;
  readonly waterHalf: Float64Array;
  /** From the first and the last slice to their skins [W/(m2 K)]. */
  readonly half: Float64Array;
  readonly bottom: FaceLaw;
  readonly top: FaceLaw;
}

/** A face as a straight line: watts into its slice = level - slope x the slice's temperature. */
export interface FaceLaw {
  level: number;
  slope: number;
  /** Skin = (half x slice + pull) / whole [K]. */
  half: number;
  pull: number;
  whole: number;
  /** Heat to the skin = heatPull - heatWhole x skin [W]. */
  heatPull: number;
  heatWhole: number;
  /** Steam off the skin = drying + dryingSlope x (skin - dryingAt) [kg/s]; each takes so much heat. */
  drying: number;
  dryingSlope: number;
  dryingAt: number;
  latentJoules: number;
}

/** A body as it goes in. */
export function insideOf(slices: Slices, physics: InsidePhysics, tuning: Tuning): Inside {
  for (let slice = 0; slice < slices.count; slice += 1) {
    const capacity = SOLIDS_JOULES + WATER_JOULES * slices.water[slice]!;
    slices.heat[slice] = capacity * (slices.kelvin[slice]! - ZERO_KELVIN);
  }
  const work = workFor(slices.count);
  const { startKelvin } = slices;
  return {
    slices,
    physics,
    tuning,
    bottom: faceAt(startKelvin),
    top: faceAt(startKelvin),
    steam: 0,
    work,
  };
}

const faceAt = (kelvin: number): FaceState => ({
  now: shutFace(),
  kelvin,
  ironKelvin: undefined,
  browning: 0,
  joules: 0,
  watts: 0,
});

function workFor(count: number): Work {
  const row = (size = count) => new Float64Array(size);
  return {
    before: row(),
    middle: row(),
    after: row(),
    right: row(),
    carried: row(),
    start: row(),
    trend: row(),
    kelvin: row(),
    slope: row(),
    volume: row(),
    edge: row(count + 1),
    area: row(count + 1),
    between: row(),
    waterBetween: row(),
    waterHalf: row(),
    half: row(2),
    bottom: noLaw(),
    top: noLaw(),
  };
}

const noLaw = (): FaceLaw => ({
  level: 0,
  slope: 0,
  half: 0,
  pull: 0,
  whole: 1,
  heatPull: 0,
  heatWhole: 0,
  drying: 0,
  dryingSlope: 0,
  dryingAt: 0,
  latentJoules: 0,
});

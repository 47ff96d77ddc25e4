// One harmonic of the plate as a chain of rings: what flows to the neighbours, and its solution.
// Sources: carslaw1959 ch. 7 (Fourier series on a disc), golub2013 4.3.6 (chains).
// Why not numerics/tridiagonal: one matrix serves hundreds of steps, so its pass is made once here.

import type { Rings } from './rings.ts';

/** A round plate, thin enough to be of one temperature through its thickness, its rim insulated. */
export interface Plate {
  readonly radiusMetres: number;
  /** Conductivity times thickness [W/K]. */
  readonly spreadWattsPerKelvin: number;
  /** Density times heat capacity times thickness [J/m2K]. */
  readonly joulesPerSquareMetreKelvin: number;
  /** Both faces together [W/m2K]. */
  readonly lossWattsPerSquareMetreKelvin: number;
}

/** Heat that a ring loses per kelvin of its own and of its neighbours [W/m2K]. */
export interface Chain {
  readonly before: Float64Array;
  readonly middle: Float64Array;
  readonly after: Float64Array;
}

export const chainOf = (plate: Plate, rings: Rings, harmonic: number): Chain => {
  const { count, width } = rings;
  const [before, middle, after] = [0, 0, 0].map(() => new Float64Array(count)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const spread = plate.spreadWattsPerKelvin / width ** 2;
  for (let ring = 0; ring < count; ring++) {
    const inwards = (spread * ring) / (ring + 0.5);
    const outwards = ring < count - 1 ? (spread * (ring + 1)) / (ring + 0.5) : 0;
    const round = (spread * harmonic ** 2 * roundShare(ring)) / (ring + 0.5);
    before[ring] = -inwards;
    after[ring] = -outwards;
    middle[ring] = inwards + outwards + round + plate.lossWattsPerSquareMetreKelvin;
  }
  return { before, middle, after };
};

// Mean of width/r over a ring; in the innermost, where every harmonic but the first vanishes, at its middle.
const roundShare = (ring: number): number => (ring === 0 ? 2 : Math.log((ring + 1) / ring));

/** The forward pass of a chain, made once for many right sides. */
export interface Passed {
  readonly before: Float64Array;
  readonly carried: Float64Array;
  readonly pivots: Float64Array;
}

/** Of (capacity / seconds + chain), or of the chain alone where no capacity is given. */
export const passed = (chain: Chain, capacityPerSecond = 0): Passed => {
  const { before, middle, after } = chain;
  const carried = new Float64Array(middle.length);
  const pivots = new Float64Array(middle.length);
  for (let ring = 0; ring < middle.length; ring++) {
    const from = ring === 0 ? 0 : before[ring]! * carried[ring - 1]!;
    pivots[ring] = middle[ring]! + capacityPerSecond - from;
    carried[ring] = after[ring]! / pivots[ring]!;
  }
  return { before, carried, pivots };
};

/** Solves in place. */
export const solvePassed = ({ before, carried, pivots }: Passed, right: Float64Array): void => {
  const last = right.length - 1;
  right[0]! /= pivots[0]!;
  for (let ring = 1; ring <= last; ring++)
    right[ring] = (right[ring]! - before[ring]! * right[ring - 1]!) / pivots[ring]!;
  for (let ring = last - 1; ring >= 0; ring--) right[ring]! -= carried[ring]! * right[ring + 1]!;
};

/** What the chain takes from each ring at these temperatures. */
export const lossOf = ({ before, middle, after }: Chain, kelvins: Float64Array): Float64Array => {
  const last = kelvins.length - 1;
  const loss = new Float64Array(kelvins.length);
  for (let ring = 0; ring <= last; ring++) {
    const inner = ring > 0 ? before[ring]! * kelvins[ring - 1]! : 0;
    const outer = ring < last ? after[ring]! * kelvins[ring + 1]! : 0;
    loss[ring] = middle[ring]! * kelvins[ring]! + inner + outer;
  }
  return loss;
};

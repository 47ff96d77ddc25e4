// What does a coal on a round plate heat, harmonic by harmonic? A square patch, two of its sides along
// the radius through it. Exact in angle (its edges cut each circle at known angles).
// Sources: carslaw1959 ch. 7 (Fourier series on a disc); the arcs are plain geometry.

import { type Rings, ringArea } from './rings.ts';

/** One coal, as the plate feels it. */
export interface Patch {
  readonly radiusMetres: number;
  readonly angleRadians: number;
  readonly sideMetres: number;
  readonly watts: number;
}

/** A field on the plate: for each harmonic m the parts with cos(m angle) and sin(m angle), by ring. */
export interface Harmonics {
  readonly along: readonly Float64Array[];
  readonly across: readonly Float64Array[];
}

export const emptyHarmonics = (rings: Rings, highest: number): Harmonics => {
  const empty = () => Array.from({ length: highest + 1 }, () => new Float64Array(rings.count));
  return { along: empty(), across: empty() };
};

/** Circles on which a ring's patch is averaged; squares cut rings aslant. */
const CIRCLES_IN_RING = 8;

/** Parts of this size of the greatest are rounding: a ring of equal coals leaves most harmonics empty. */
const ROUNDING = 1e-13;

/** Flux of all patches [W/m2]; the heat of each patch is kept exactly. */
export const fluxOf = (
  patches: readonly Patch[],
  rings: Rings,
  highest: number,
  shapes: Shapes = new Map(),
): Harmonics => {
  const flux = emptyHarmonics(rings, highest);
  for (const patch of patches) {
    const key = `${patch.radiusMetres} ${patch.sideMetres}`;
    if (!shapes.has(key)) shapes.set(key, shapeOf(patch, rings, highest));
    const shape = shapes.get(key);
    if (shape !== undefined) addPatch(flux, patch, shape);
  }
  clearRounding(flux);
  return flux;
};

/**
 * Shapes met before, for whoever asks again with the same rings and harmonics: coals of one ring have
 * one shape, only their angles differ.
 */
export type Shapes = Map<string, Shape | undefined>;

/** A patch of one watt at angle 0: by harmonic, from its first ring on [W/m2]. */
interface Shape {
  readonly firstRing: number;
  readonly parts: readonly (readonly number[])[];
}

const shapeOf = (patch: Patch, rings: Rings, highest: number): Shape | undefined => {
  const cuts = cutsOf(patch, rings);
  const firstRing = cuts.findIndex((cut) => cut.arcs.length > 0);
  const covered = firstRing < 0 ? [] : cuts.slice(firstRing).filter((cut) => cut.arcs.length > 0);
  const means = covered.map((cut) => meansIn(cut, highest));
  const area = means.reduce(
    (sum, mean, index) => sum + mean[0]! * ringArea(rings, firstRing + index),
    0,
  );
  if (area <= 0) return;
  const parts = Array.from({ length: highest + 1 }, (_, harmonic) =>
    means.map((mean) => mean[harmonic]! / area),
  );
  return { firstRing, parts };
};

const addPatch = (flux: Harmonics, patch: Patch, { firstRing, parts }: Shape): void => {
  for (const [harmonic, shares] of parts.entries()) {
    const cos = patch.watts * Math.cos(harmonic * patch.angleRadians);
    const sin = patch.watts * Math.sin(harmonic * patch.angleRadians);
    const along = flux.along[harmonic]!;
    const across = flux.across[harmonic]!;
    for (const [index, share] of shares.entries()) {
      along[firstRing + index]! += cos * share;
      across[firstRing + index]! += sin * share;
    }
  }
};

const clearRounding = ({ along, across }: Harmonics): void => {
  const noise = ROUNDING * greatestOf(along[0]!);
  for (const values of along) if (greatestOf(values) < noise) values.fill(0);
  for (const values of across) if (greatestOf(values) < noise) values.fill(0);
};

const greatestOf = (values: Float64Array): number => {
  let most = 0;
  for (let ring = 0; ring < values.length; ring++) most = Math.max(most, Math.abs(values[ring]!));
  return most;
};

/** Where the circles of one ring lie under the patch; empty for most rings. */
interface Cut {
  readonly arcs: readonly (Arc & { readonly radius: number })[];
  /** Sum of all radii of the ring, covered or not. */
  readonly radii: number;
}

const cutsOf = (patch: Patch, rings: Rings): readonly Cut[] => {
  const half = patch.sideMetres / 2;
  const farthest = Math.hypot(patch.radiusMetres + half, half);
  return Array.from({ length: rings.count }, (_, ring) => {
    const [inner, outer] = [ring * rings.width, (ring + 1) * rings.width];
    const isClear = outer <= patch.radiusMetres - half || farthest <= inner;
    return isClear ? NO_CUT : cutIn(patch, inner, rings.width);
  });
};

const NO_CUT: Cut = { arcs: [], radii: 1 };

const cutIn = (patch: Patch, inner: number, width: number): Cut => {
  const radii = Array.from(
    { length: CIRCLES_IN_RING },
    (_, circle) => inner + ((circle + 0.5) * width) / CIRCLES_IN_RING,
  );
  return {
    arcs: radii
      .map((radius) => ({ radius, ...arcAt(patch, radius) }))
      .filter(({ from, to }) => to > from),
    radii: radii.reduce((sum, radius) => sum + radius, 0),
  };
};

/** Fourier coefficients in one ring of "1 under the patch", the patch at angle 0. */
const meansIn = ({ arcs, radii }: Cut, highest: number): Float64Array => {
  const means = new Float64Array(highest + 1);
  for (const { from, to, radius } of arcs) {
    const share = radius / (radii * Math.PI);
    means[0]! += share * (to - from);
    // sin(m x) by its recurrence: a sine for each harmonic would be most of the work.
    const [turnTo, turnFrom] = [2 * Math.cos(to), 2 * Math.cos(from)];
    let [sinTo, sinFrom, beforeTo, beforeFrom] = [Math.sin(to), Math.sin(from), 0, 0];
    for (let harmonic = 1; harmonic <= highest; harmonic++) {
      means[harmonic]! += ((2 * share) / harmonic) * (sinTo - sinFrom);
      [sinTo, beforeTo] = [turnTo * sinTo - beforeTo, sinTo];
      [sinFrom, beforeFrom] = [turnFrom * sinFrom - beforeFrom, sinFrom];
    }
  }
  return means;
};

/** Angles, to either side, between which a circle lies under the patch. */
interface Arc {
  readonly from: number;
  readonly to: number;
}

const arcAt = ({ radiusMetres, sideMetres }: Patch, radius: number): Arc => {
  const half = sideMetres / 2;
  const outer = (radiusMetres + half) / radius;
  const inner = (radiusMetres - half) / radius;
  if (inner >= 1) return { from: 0, to: 0 };
  const from = outer < 1 ? Math.acos(outer) : 0;
  const byInner = inner > -1 ? Math.acos(inner) : Math.PI;
  const bySides = half < radius ? Math.asin(half / radius) : Math.PI;
  return { from, to: Math.max(from, Math.min(byInner, bySides)) };
};

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

/** Flux of all patches [W/m2]; the heat of each patch is kept exactly. */
export const fluxOf = (patches: readonly Patch[], rings: Rings, highest: number): Harmonics => {
  const flux = emptyHarmonics(rings, highest);
  for (const patch of patches) addPatch(flux, patch, rings);
  return flux;
};

const addPatch = (flux: Harmonics, patch: Patch, rings: Rings): void => {
  const cuts = cutsOf(patch, rings);
  const shape = flux.along.map((_, harmonic) => cuts.map((cut) => meanIn(cut, harmonic)));
  const covered = shape[0]!.reduce((sum, share, ring) => sum + share * ringArea(rings, ring), 0);
  if (covered <= 0) return;
  const scale = patch.watts / covered;
  for (const [harmonic, shares] of shape.entries()) {
    const cos = scale * Math.cos(harmonic * patch.angleRadians);
    const sin = scale * Math.sin(harmonic * patch.angleRadians);
    for (const [ring, share] of shares.entries()) {
      flux.along[harmonic]![ring]! += cos * share;
      flux.across[harmonic]![ring]! += sin * share;
    }
  }
};

/** Where the circles of one ring lie under the patch; empty for most rings. */
interface Cut {
  readonly arcs: readonly (Arc & { readonly radius: number })[];
  /** Sum of all radii of the ring, covered or not. */
  readonly radii: number;
}

const cutsOf = (patch: Patch, rings: Rings): readonly Cut[] =>
  Array.from({ length: rings.count }, (_, ring) => {
    const radii = Array.from(
      { length: CIRCLES_IN_RING },
      (_, circle) => rings.width * (ring + (circle + 0.5) / CIRCLES_IN_RING),
    );
    return {
      arcs: radii
        .map((radius) => ({ radius, ...arcAt(patch, radius) }))
        .filter(({ from, to }) => to > from),
      radii: radii.reduce((sum, radius) => sum + radius, 0),
    };
  });

/** Fourier coefficient in one ring of "1 under the patch", the patch at angle 0. */
const meanIn = ({ arcs, radii }: Cut, harmonic: number): number =>
  arcs.reduce((sum, arc) => sum + arc.radius * coefficient(arc, harmonic), 0) / radii;

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

const coefficient = ({ from, to }: Arc, harmonic: number): number =>
  harmonic === 0
    ? (to - from) / Math.PI
    : (2 / (Math.PI * harmonic)) * (Math.sin(harmonic * to) - Math.sin(harmonic * from));

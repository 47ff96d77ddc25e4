// How hot is a round plate under its coals, everywhere and at any minute? Each harmonic of the angle is
// a chain of rings of its own; turning plate against coals is a phase of the coals' harmonics.
// Sources: carslaw1959 ch. 7; alexander1977 (SDIRK2).
// Weak spot: one coefficient for the whole plate; radiation and shelter under coals are left out.

import {
  type Chain,
  chainOf,
  lossOf,
  type Passed,
  type Plate,
  passed,
  solvePassed,
} from './chain.ts';
import { emptyHarmonics, fluxOf, type Harmonics, type Patch } from './patch.ts';
import { type Rings, ringsOfPlate } from './rings.ts';

const RINGS = 75;
const HIGHEST = 48; // four waves under each of a dozen coals; what is finer evens out (tests: 0.05 K)
const GAMMA = 1 - Math.SQRT1_2; // alexander1977: L-stable, second order

/** A plate cut up for one length of step. */
export interface PlateSolver {
  readonly plate: Plate;
  readonly rings: Rings;
  readonly stepSeconds: number;
  readonly chains: readonly Chain[];
  readonly steps: readonly Passed[];
  readonly rests: readonly Passed[];
}

export interface PlateHow {
  readonly rings?: number;
  readonly highest?: number;
}

export const plateSolver = (
  plate: Plate,
  how: PlateHow & { readonly stepSeconds: number },
): PlateSolver => plateSolvers(plate, how)(how.stepSeconds);

/** Solvers of one plate for steps of several lengths; each length is factorised once. */
export const plateSolvers = (
  plate: Plate,
  how: PlateHow = {},
): ((stepSeconds: number) => PlateSolver) => {
  const rings = ringsOfPlate(plate.radiusMetres, how.rings ?? RINGS);
  const chains = Array.from({ length: (how.highest ?? HIGHEST) + 1 }, (_, harmonic) =>
    chainOf(plate, rings, harmonic),
  );
  const rests = chains.map((chain) => passed(chain));
  const solvers = new Map<number, PlateSolver>();
  return (stepSeconds) => {
    const known = solvers.get(stepSeconds);
    if (known) return known;
    const rate = plate.joulesPerSquareMetreKelvin / (GAMMA * stepSeconds);
    const steps = chains.map((chain) => passed(chain, rate));
    const solver = { plate, rings, stepSeconds, chains, steps, rests };
    solvers.set(stepSeconds, solver);
    return solver;
  };
};

/** Flux of coals as this solver wants it [W/m2]. */
export const coalsOn = ({ rings, chains }: PlateSolver, patches: readonly Patch[]): Harmonics =>
  fluxOf(patches, rings, chains.length - 1);

/** A plate as warm as the air. Temperatures are kelvins above the air. */
export const coolPlate = ({ rings, chains }: PlateSolver): Harmonics =>
  emptyHarmonics(rings, chains.length - 1);

/** The same pattern, turned anticlockwise seen from above. */
export const turnedBy = ({ along, across }: Harmonics, radians: number): Harmonics => {
  const mixed = (own: Float64Array, other: Float64Array, cos: number, sin: number) => {
    const turned = new Float64Array(own.length);
    for (let ring = 0; ring < own.length; ring++)
      turned[ring] = cos * own[ring]! + sin * other[ring]!;
    return turned;
  };
  const at = (harmonic: number) =>
    [Math.cos(harmonic * radians), Math.sin(harmonic * radians)] as const;
  return {
    along: along.map((own, harmonic) => {
      const [cos, sin] = at(harmonic);
      return mixed(own, across[harmonic]!, cos, -sin);
    }),
    across: across.map((own, harmonic) => {
      const [cos, sin] = at(harmonic);
      return mixed(own, along[harmonic]!, cos, sin);
    }),
  };
};

/** The plate one step later under a flux that stays. */
export const plateLater = (solver: PlateSolver, kelvins: Harmonics, flux: Harmonics): Harmonics => {
  const later = (part: 'along' | 'across') =>
    kelvins[part].map((own, harmonic) => chainLater(solver, harmonic, own, flux[part][harmonic]!));
  return { along: later('along'), across: later('across') };
};

const isEmpty = (values: Float64Array): boolean => {
  for (let ring = 0; ring < values.length; ring++) if (values[ring] !== 0) return false;
  return true;
};

// SDIRK2 of C dT/dt = flux - loss(T): two solves with one matrix.
const chainLater = (
  { plate, stepSeconds, chains, steps }: PlateSolver,
  harmonic: number,
  kelvins: Float64Array,
  flux: Float64Array,
): Float64Array => {
  if (isEmpty(kelvins) && isEmpty(flux)) return kelvins;
  const [chain, step] = [chains[harmonic]!, steps[harmonic]!];
  const rate = plate.joulesPerSquareMetreKelvin / (GAMMA * stepSeconds);
  const size = kelvins.length;
  const first = new Float64Array(size);
  for (let ring = 0; ring < size; ring++) first[ring] = rate * kelvins[ring]! + flux[ring]!;
  solvePassed(step, first);
  const ended = lossOf(chain, first);
  const share = (1 - GAMMA) / GAMMA;
  for (let ring = 0; ring < size; ring++)
    ended[ring] = rate * kelvins[ring]! + flux[ring]! + share * (flux[ring]! - ended[ring]!);
  solvePassed(step, ended);
  return ended;
};

/** Where the plate settles under a flux. */
export const settledPlate = ({ rests }: PlateSolver, flux: Harmonics): Harmonics => {
  const settle = (right: Float64Array, harmonic: number) => {
    if (isEmpty(right)) return right;
    const kelvins = right.slice();
    solvePassed(rests[harmonic]!, kelvins);
    return kelvins;
  };
  return { along: flux.along.map(settle), across: flux.across.map(settle) };
};

/**
 * Mean over a while between two states, the flux constant: what the plate did not keep, it lost, so
 * the mean is where a flux less the rate of keeping would settle. Exact in time.
 */
export const meanBetween = (
  solver: PlateSolver,
  flux: Harmonics,
  span: { readonly start: Harmonics; readonly end: Harmonics; readonly seconds: number },
): Harmonics => {
  const rate = solver.plate.joulesPerSquareMetreKelvin / span.seconds;
  const lost = (part: 'along' | 'across') =>
    flux[part].map((values, harmonic) => {
      const [start, end] = [span.start[part][harmonic]!, span.end[part][harmonic]!];
      const left = values.slice();
      for (let ring = 0; ring < left.length; ring++)
        left[ring]! -= rate * (end[ring]! - start[ring]!);
      return left;
    });
  return settledPlate(solver, { along: lost('along'), across: lost('across') });
};

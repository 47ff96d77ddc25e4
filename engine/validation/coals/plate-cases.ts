// The plate of the plate cases, with our solver: what its tests and the report hold against the series.

import type { Plate } from '../../src/coals/plate/chain.ts';
import type { Harmonics, Patch } from '../../src/coals/plate/patch.ts';
import {
  coalsOn,
  coolPlate,
  type PlateSolver,
  plateLater,
  plateSolver,
  turnedBy,
} from '../../src/coals/plate/plate.ts';
import { circleKelvins, kelvinAt, meanKelvin, spreadOf } from '../../src/coals/plate/reading.ts';
import still from './plate-ring.json' with { type: 'json' };
import turning from './plate-turning.json' with { type: 'json' };

export const STEP_SECONDS = 20;

export const plateOf = ({ plate }: typeof still): Plate => ({
  radiusMetres: plate.radiusMetres,
  spreadWattsPerKelvin: plate.conductivityWattsPerMetreKelvin * plate.thicknessMetres,
  joulesPerSquareMetreKelvin:
    plate.densityKilogramsPerCubicMetre * plate.heatJoulesPerKilogramKelvin * plate.thicknessMetres,
  lossWattsPerSquareMetreKelvin: 2 * plate.coefficientOnEachFaceWattsPerSquareMetreKelvin,
});

export const AIR = still.plate.airCelsius;
export const DEGREE = Math.PI / 180;

export const ringOf = (watts: readonly number[]): readonly Patch[] =>
  watts.map((each, index) => ({
    radiusMetres: still.ring.ringRadiusMetres,
    angleRadians: (2 * Math.PI * index) / watts.length,
    sideMetres: still.ring.sideMetres,
    watts: each,
  }));

export const solver = plateSolver(plateOf(still), { stepSeconds: STEP_SECONDS });
export const equal = coalsOn(
  solver,
  ringOf(Array.from({ length: 12 }, () => still.ring.wattsEach)),
);

export const readings = (kelvins: Harmonics): readonly number[] => {
  const at = (radiusMetres: number, degrees: number) =>
    AIR + kelvinAt(kelvins, solver.rings, { radiusMetres, angleRadians: degrees * DEGREE });
  return [
    at(0, 0),
    ...[0.06, 0.12, 0.15].flatMap((radius) => [at(radius, 0), at(radius, 15)]),
    AIR + meanKelvin(kelvins, solver.rings),
  ];
};

interface Seen {
  readonly kelvins: Harmonics;
  readonly averages: readonly number[];
}

export const CIRCLE = { radiusMetres: 0.12, places: 72 };
export const SEEN_SECONDS = [300, 900, 1800, 3600];

/** An hour, the plate turned a quarter against the coals each period; the circle averaged in time. */
const turned = (period: number): ReadonlyMap<number, Seen> => {
  const coals = coalsOn(solver, ringOf(turning.ring.watts));
  const seen = new Map<number, Seen>();
  let [kelvins, flux] = [coolPlate(solver), coals];
  let before = circleKelvins(kelvins, solver.rings, CIRCLE);
  const sums = before.map(() => 0);
  for (let seconds = 0; seconds < 3600; seconds += STEP_SECONDS) {
    // The plate goes anticlockwise, so the coals go clockwise over it.
    if (period > 0 && seconds % period === 0)
      flux = turnedBy(coals, (-Math.PI / 2) * (seconds / period));
    kelvins = plateLater(solver, kelvins, flux);
    const now = circleKelvins(kelvins, solver.rings, CIRCLE);
    for (const [place, each] of now.entries())
      sums[place]! += ((each + before[place]!) / 2) * STEP_SECONDS;
    before = now;
    const end = seconds + STEP_SECONDS;
    if (SEEN_SECONDS.includes(end))
      seen.set(end, { kelvins, averages: sums.map((sum) => sum / end) });
  }
  return seen;
};

export const runs: ReadonlyMap<number, ReadonlyMap<number, Seen>> = new Map(
  [0, 600, 300].map((period) => [period, turned(period)]),
);

export const firstHarmonic = ({ along, across }: Harmonics, { rings }: PlateSolver): number => {
  const low = Math.round(0.12 / rings.width) - 1;
  const at = (values: Float64Array) => (values[low]! + values[low + 1]!) / 2;
  return Math.hypot(at(along[1]!), at(across[1]!));
};

/** Ours in the order of the columns of the turning case, from the third on. */
export const turnedReadings = (period: number, seconds: number): readonly number[] => {
  const { kelvins, averages } = runs.get(period)!.get(seconds)!;
  const round = circleKelvins(kelvins, solver.rings, CIRCLE);
  return [
    AIR + Math.min(...round),
    AIR + Math.max(...round),
    firstHarmonic(kelvins, solver),
    spreadOf(averages),
    AIR + meanKelvin(kelvins, solver.rings),
    AIR + kelvinAt(kelvins, solver.rings, { radiusMetres: 0, angleRadians: 0 }),
    ...[0, 18, 36, 54].map((place) => AIR + round[place]!),
  ];
};

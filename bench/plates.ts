// A plate under an unequal ring of coals for half an hour, turned a quarter every ten minutes: angular
// harmonics beside a 50 x 240 polar finite-volume solution, implicit and factorised once, to the same
// end time. Both are held against an exact series (validation/coals/plate-turning.json).
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import type { Harmonics } from '../engine/src/coals/plate/patch.ts';
import {
  coalsOn,
  coolPlate,
  plateLater,
  plateSolver,
  turnedBy,
} from '../engine/src/coals/plate/plate.ts';
import { circleKelvins, kelvinAt } from '../engine/src/coals/plate/reading.ts';
import { milliseconds, timed } from './measure.ts';
import { polarVolumes } from './polar-volumes.ts';

const CLOSE_KELVIN = 0.5;
const LEAST_RATIO = 50;
const END_SECONDS = 1800;
const PERIOD_SECONDS = 600;
const SECTORS = 240;
/** The grid and step of the outside run that was within 0.05 K of the series. */
const GRID = { rings: 50, sectors: SECTORS, stepSeconds: 4 };
/** As coarse as 0.5 K allows: what the assertion below checks. */
const CUT = { rings: 40, highest: 28, stepSeconds: 40 };
const RADII = [0.03, 0.06, 0.09, 0.12, 0.149];
const EVERY = 10; // sectors between the places that are compared

interface Case {
  readonly plate: Readonly<Record<string, number>>;
  readonly ring: {
    readonly ringRadiusMetres: number;
    readonly sideMetres: number;
    readonly watts: readonly number[];
  };
  readonly rows: readonly (readonly number[])[];
}

export function platesBench(): void {
  const exact: Case = JSON.parse(
    readFileSync(new URL('../engine/validation/coals/plate-turning.json', import.meta.url), 'utf8'),
  );
  const ours = kept(() => byHarmonics(exact), { runs: 15, warmUp: 5 });
  const theirs = kept(() => byVolumes(exact), { runs: 1, warmUp: 0 });
  const coarse = kept(() => byVolumes(exact, CUT.stepSeconds), { runs: 1, warmUp: 0 });
  const [one, other] = [ours.answer, theirs.answer];
  const apart = worst(one.places, other.places);
  const offSeries = [one, other].map(({ circle }) => worst(circle, wantedCircle(exact)));
  const ratio = theirs.time / ours.time;
  const equalSteps = coarse.time / ours.time;
  process.stdout.write(
    `  harmonics ${milliseconds(ours.time)}, finite volumes ${milliseconds(theirs.time)}: ratio ${ratio.toFixed(0)}\n` +
      `  with our step of ${CUT.stepSeconds} s given to the finite volumes too: ratio ${equalSteps.toFixed(0)}\n` +
      `  farthest apart ${apart.toFixed(3)} K at ${one.places.length} places; off the exact series ${offSeries.map((each) => each.toFixed(3)).join(' and ')} K\n`,
  );
  assert.ok(apart < CLOSE_KELVIN, `within ${CLOSE_KELVIN} K of the finite volumes`);
  for (const off of offSeries)
    assert.ok(off < CLOSE_KELVIN, `within ${CLOSE_KELVIN} K of the series`);
  assert.ok(ratio >= LEAST_RATIO, `at least ${LEAST_RATIO} times faster`);
}

/** Kelvins above the air: at many places, and at the four places of the exact table. */
interface Answer {
  readonly places: readonly number[];
  readonly circle: readonly number[];
}

/** Median time and the last answer. */
function kept(work: () => Answer, how: { readonly runs: number; readonly warmUp: number }) {
  const answers: Answer[] = [];
  const consume = (answer: Answer) => {
    assertWarm(answer);
    answers[0] = answer;
  };
  const { medianMilliseconds } = timed(work, { ...how, consume });
  const [answer] = answers;
  assert.ok(answer);
  return { time: medianMilliseconds, answer };
}

function assertWarm({ places }: Answer): void {
  assert.ok(places.every((each) => 200 < each && each < 450));
}

const worst = (one: readonly number[], other: readonly number[]) =>
  Math.max(...one.map((each, index) => Math.abs(each - (other[index] ?? Number.NaN))));

const given = (plate: Case['plate'], name: string) => {
  const value = plate[name];
  assert.ok(value !== undefined, name);
  return value;
};

function wantedCircle({ plate, rows }: Case): readonly number[] {
  const row = rows.find(
    ([period, seconds]) => period === PERIOD_SECONDS && seconds === END_SECONDS,
  );
  assert.ok(row, 'the exact table has the row');
  return row.slice(-4).map((celsius) => celsius - given(plate, 'airCelsius'));
}

const sheet = (plate: Case['plate']) => ({
  radius: given(plate, 'radiusMetres'),
  conductance: given(plate, 'conductivityWattsPerMetreKelvin') * given(plate, 'thicknessMetres'),
  capacity:
    given(plate, 'densityKilogramsPerCubicMetre') *
    given(plate, 'heatJoulesPerKilogramKelvin') *
    given(plate, 'thicknessMetres'),
  loss: 2 * given(plate, 'coefficientOnEachFaceWattsPerSquareMetreKelvin'),
});

/** Coals as the plate meets them after so many quarter turns of its own. */
const coalsAfter = ({ ring }: Case, quarters: number) =>
  ring.watts.map((watts, index) => ({
    radius: ring.ringRadiusMetres,
    angle: (2 * Math.PI * index) / ring.watts.length - (Math.PI / 2) * quarters,
    side: ring.sideMetres,
    watts,
  }));

function byHarmonics(exact: Case): Answer {
  const { radius, conductance, capacity, loss } = sheet(exact.plate);
  const plate = {
    radiusMetres: radius,
    spreadWattsPerKelvin: conductance,
    joulesPerSquareMetreKelvin: capacity,
    lossWattsPerSquareMetreKelvin: loss,
  };
  const solver = plateSolver(plate, CUT);
  const patches = coalsAfter(exact, 0).map(({ radius, angle, side, watts }) => ({
    radiusMetres: radius,
    angleRadians: angle,
    sideMetres: side,
    watts,
  }));
  const coals = coalsOn(solver, patches);
  let [kelvins, flux]: [Harmonics, Harmonics] = [coolPlate(solver), coals];
  for (let seconds = 0; seconds < END_SECONDS; seconds += CUT.stepSeconds) {
    if (seconds % PERIOD_SECONDS === 0)
      flux = turnedBy(coals, (-Math.PI / 2) * (seconds / PERIOD_SECONDS));
    kelvins = plateLater(solver, kelvins, flux);
  }
  const round = (radiusMetres: number, places: number) =>
    circleKelvins(kelvins, solver.rings, { radiusMetres, places });
  const quarters = [0, 1, 2, 3].map((quarter) =>
    kelvinAt(kelvins, solver.rings, { radiusMetres: 0.12, angleRadians: (quarter * Math.PI) / 2 }),
  );
  return { places: RADII.flatMap((each) => round(each, SECTORS / EVERY)), circle: quarters };
}

function byVolumes(exact: Case, stepSeconds: number = GRID.stepSeconds): Answer {
  const volumes = polarVolumes(sheet(exact.plate), { ...GRID, stepSeconds });
  let kelvins: Float64Array = new Float64Array(GRID.rings * SECTORS);
  for (let period = 0; period < END_SECONDS / PERIOD_SECONDS; period += 1) {
    const heat = volumes.flux(coalsAfter(exact, period));
    kelvins = volumes.softStart(kelvins, heat);
    kelvins = volumes.later(kelvins, heat, PERIOD_SECONDS / stepSeconds - 1);
  }
  const at = (radius: number, sector: number) => volumes.at(kelvins, radius, sector);
  return {
    places: RADII.flatMap((radius) =>
      Array.from({ length: SECTORS / EVERY }, (_, index) => at(radius, index * EVERY)),
    ),
    circle: [0, 1, 2, 3].map((quarter) => at(0.12, (quarter * SECTORS) / 4)),
  };
}

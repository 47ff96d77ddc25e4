// The equations beside handbook numbers and independent solvers: Nusselt numbers, plates that turn, the
// oven network, and whether heat is kept. One row for each printed case.

import type { CoalRequest } from '../../src/coals/coal-plan.ts';
import { layCoals } from '../../src/coals/lay-coals.ts';
import { coolPlate, plateLater, settledPlate } from '../../src/coals/plate/plate.ts';
import { usualLoad } from '../../src/coals/usual-load.ts';
import { isRefusal } from '../../src/notice/notice.ts';
import { fixed, type ReportRow, reportTable, spanRow } from '../table.ts';
import nusselt from './nusselt.json' with { type: 'json' };
import { type Inputs, nusseltOf } from './nusselt-cases.ts';
import scipy from './oven-scipy.json' with { type: 'json' };
import {
  equal,
  readings,
  SEEN_SECONDS,
  STEP_SECONDS,
  solver,
  turnedReadings,
} from './plate-cases.ts';
import still from './plate-ring.json' with { type: 'json' };
import turning from './plate-turning.json' with { type: 'json' };
import { type Change, coalRequest } from './requests.ts';
import { scipyCooks, scipyCourse } from './scipy-cases.ts';

export const heatReport = (): string =>
  [nusseltReport(), plateReport(), networkReport(), energyReport()].join('\n\n');

const nusseltReport = () =>
  reportTable(
    'Nusselt numbers of the oven in still air and in wind',
    (nusselt.rows as unknown as readonly (readonly [string, Inputs, number])[]).map(
      ([what, inputs, published]) =>
        spanRow({
          ...{ what, source: 'bergman2011', least: published, most: published },
          ours: nusseltOf(what, inputs),
          rounding: 1e-4 * published,
          say: fixed(4),
        }),
    ),
  );

/** Half a kelvin: what is asked of the plates. */
const PLATE_KELVIN = 0.5;

/** Of several places the one that is farthest off. */
const worstRow = (
  what: string,
  {
    ours,
    theirs,
    rounding,
  }: { ours: readonly number[]; theirs: readonly number[]; rounding: number },
  source: string,
): ReportRow => {
  const apart = ours.map((each, at) => Math.abs(each - theirs[at]!));
  const worst = apart.indexOf(Math.max(...apart));
  const published = theirs[worst]!;
  return spanRow({
    ...{ what, source, rounding, least: published, most: published, ours: ours[worst]! },
    say: fixed(3),
  });
};

function plateReport(): string {
  const rows: ReportRow[] = [];
  let kelvins = coolPlate(solver);
  let now = 0;
  for (const [until = 0, ...theirs] of still.rows.filter(([time]) => time !== 0)) {
    for (; now < until; now += STEP_SECONDS) kelvins = plateLater(solver, kelvins, equal);
    const ours = readings(kelvins);
    rows.push(
      worstRow(`equal ring, ${until} s`, { ours, theirs, rounding: PLATE_KELVIN }, 'plateTurning'),
    );
  }
  const [, ...settled] = still.rows.find(([time]) => time === 0)!;
  const ours = readings(settledPlate(solver, equal));
  rows.push(
    worstRow(
      'equal ring, settled',
      { ours, theirs: settled, rounding: PLATE_KELVIN },
      'plateTurning',
    ),
  );
  for (const [period, seconds, ...theirs] of turning.rows) {
    if (!SEEN_SECONDS.includes(seconds!)) continue;
    const how = period === 0 ? 'never turned' : `turned every ${period} s`;
    const seen = { ours: turnedReadings(period!, seconds!), theirs, rounding: PLATE_KELVIN };
    rows.push(worstRow(`unequal ring, ${how}, ${seconds} s`, seen, 'plateTurning'));
  }
  return reportTable(
    'A plate under coals, still and turned [°C, K]: the place farthest off',
    rows,
    [
      'Of 8 places a row on the equal ring; of 10 figures on the other: least, most, one-sidedness, spread of',
      'the average, mean, middle and four quarters. Agrees: within 0.5 K.',
    ],
  );
}

const IRON_KELVIN = 0.02;
const LOAD_JOULES = 20;

function networkReport(): string {
  const rows = Object.keys(scipyCooks).flatMap((name) => {
    const { moments } = scipyCourse(name);
    const printed = scipy.rows.filter(([each]) => each === name);
    const at = (pick: 'lid' | 'wall' | 'floor', column: number) =>
      worstRow(
        `${name}: ${pick} [K]`,
        {
          ours: printed.map(([, minute]) => moments[Number(minute)]!.iron[pick]),
          theirs: printed.map((row) => Number(row[column])),
          rounding: IRON_KELVIN,
        },
        'scipy-ivp',
      );
    const load = worstRow(
      `${name}: heat in the load [J]`,
      {
        ours: printed.map(([, minute]) => moments[Number(minute)]!.loadJoules),
        theirs: printed.map((row) => Number(row[5])),
        rounding: LOAD_JOULES,
      },
      'scipy-ivp',
    );
    return [at('lid', 2), at('wall', 3), at('floor', 4), load];
  });
  return reportTable(
    'The oven network beside SciPy over 90 minutes: the minute farthest off',
    rows,
    ['Agrees: within 0.02 K of iron and 20 J of load, at 10 minutes of each run.'],
  );
}

const ENERGY_CASES: readonly (readonly [string, Change])[] = [
  ['12 inch, 350 F, still', {}],
  ['8 inch, 425 F, 3 m/s at the oven', { inches: 8, heatFahrenheit: 425, wind: 3 }],
  ['16 inch, 325 F, frost, 90 min', { inches: 16, heatFahrenheit: 325, airKelvin: 263, stay: 90 }],
  ['12 inch roast at 3000 m', { method: 'roast', pressure: 70_100, stay: 90 }],
  ['12 inch simmer, 2 h', { method: 'simmer', stay: 120 }],
  ['12 inch boil, 75 min', { method: 'boil', stay: 75 }],
  ['12 inch fry', { method: 'fry', heatFahrenheit: 375, stay: 20 }],
  ['12 inch, wood coals', { wood: true, stay: 60 }],
];

/** Given less kept less lost, as a share of what was given: by the first law none. */
const energyReport = () =>
  reportTable(
    'Heat kept: what the balance of a whole run lacks, of all that was given',
    ENERGY_CASES.map(([what, change]) =>
      spanRow({
        ...{ what, source: 'first law', least: 0, most: 0, rounding: 0.1 },
        ours: 100 * errorOf(change),
        say: fixed(5, '%'),
      }),
    ),
  );

function errorOf(change: Change): number {
  const plain = coalRequest(change);
  const { method } = plain.wish;
  const isPot = method === 'simmer' || method === 'boil';
  const request: CoalRequest = {
    ...plain,
    load: usualLoad(plain, method),
    wish: { ...plain.wish, ...(isPot ? { wanted: plain.air.boiling } : {}) },
  };
  const plan = layCoals(request);
  if (isRefusal(plan)) throw new RangeError(plan.code);
  return plan.energy.errorRatio;
}

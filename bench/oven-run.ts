// A 90-minute run of a 12 inch oven, network without plates, beside the same equations in SciPy: its
// LSODA and Radau at the same tolerance. And what layCoals costs in such runs, for 1 to 8 ovens.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { LAID_BURNT } from '../engine/src/coals/burn.ts';
import { layCoals } from '../engine/src/coals/lay-coals.ts';
import { type OvenCourse, ovenCourse } from '../engine/src/coals/oven-course.ts';
import { parameter } from '../engine/src/coals/parameters.ts';
import { minuteLater, type OvenMoment, startMoment, withLoadIn } from '../engine/src/coals/run.ts';
import { siteFor } from '../engine/src/coals/site.ts';
import { isRefusal } from '../engine/src/notice/notice.ts';
import { timed } from './measure.ts';
import {
  benchRequest,
  DOUGH,
  type OvenCase,
  pythonCase,
  type Tolerance,
  wantedMinutes,
} from './oven-case.ts';

const LOAD_IN_MINUTE = 20;
const END_MINUTE = 90;
/** Both sides are asked for this; the answers then agree far inside 0.1 K. */
const TOLERANCE: Tolerance = { relative: 1e-5, absoluteKelvin: 1e-3 };
const AGREES_KELVIN = 0.1;
/** So many times faster than either, in the same run. */
const LEAST_RATIO = 20;
const PYTHON = '/usr/bin/python3';
const RUNS = { runs: 201, warmUp: 200 } as const;

const request = benchRequest();
const setting = siteFor(request);
const coals = [
  { place: 'above', count: 17, burnt: LAID_BURNT },
  { place: 'below', count: 8, burnt: LAID_BURNT },
] as const;
const start = startMoment({ ironKelvin: request.ironAtStart, coals });

export function ovenRunBench(): void {
  const at = wantedMinutes(ovenCase());
  const acts = [{ minute: LOAD_IN_MINUTE, do: 'load-in' }] as const;
  const run = () =>
    ovenCourse({
      setting,
      start,
      acts,
      at,
      relativeTolerance: TOLERANCE.relative,
      absoluteKelvin: TOLERANCE.absoluteKelvin,
    });
  const controlled = timed(run, { ...RUNS, consume: assertWhole });
  const stepped = timed(minuteRun, { ...RUNS, consume: (moments) => assert.ok(moments.length) });
  const course = run();
  const apart = worstApart(course.moments, minuteRun().slice(1));
  assert.ok(apart < AGREES_KELVIN, `minute steps are ${apart} K off`);
  say(
    `90 minutes, error under control (${course.steps} steps, energy and 90 minutes kept): ${micro(controlled.medianMilliseconds)}`,
  );
  say(
    `the planner's minute steps: ${micro(stepped.medianMilliseconds)}, at most ${apart.toFixed(3)} K off`,
  );
  scipyBench([
    { name: 'controlled', moments: course.moments, milliseconds: controlled.medianMilliseconds },
    { name: 'planner', moments: minuteRun().slice(1), milliseconds: stepped.medianMilliseconds },
  ]);
  layCoalsBench();
}

const assertWhole = (course: OvenCourse) => {
  assert.equal(course.status, 'done');
  assert.equal(course.moments.length, END_MINUTE);
};

const minuteRun = (): readonly OvenMoment[] => {
  const moments = [start];
  let moment = start;
  for (let minute = 1; minute <= END_MINUTE; minute += 1) {
    moment = minuteLater(setting, moment);
    if (minute === LOAD_IN_MINUTE) moment = withLoadIn(moment, setting.load);
    moments.push(moment);
  }
  return moments;
};

const worstApart = (one: readonly OvenMoment[], other: readonly OvenMoment[]): number => {
  assert.equal(one.length, other.length);
  const apart = one.flatMap((moment, index) => {
    const beside = other[index]!.iron;
    const { lid, wall, floor } = moment.iron;
    return [lid - beside.lid, wall - beside.wall, floor - beside.floor].map(Math.abs);
  });
  return Math.max(...apart);
};

interface PythonAnswer {
  readonly scipy: string;
  readonly runs: readonly {
    readonly method: string;
    readonly rightHandSide: string;
    readonly milliseconds: number;
    readonly evaluations: number;
    readonly states: readonly (readonly number[])[];
  }[];
}

interface OurRun {
  readonly name: 'controlled' | 'planner';
  readonly moments: readonly OvenMoment[];
  readonly milliseconds: number;
}

const scipyBench = (ours: readonly OurRun[]): void => {
  const answer = askPython();
  if (!answer) {
    say('SciPy is not there, so the comparison did not run and counts as not run.');
    say(
      `Debian: apt-get install python3-scipy (it must answer to ${PYTHON}); nothing is installed here.`,
    );
    return;
  }
  say(
    `SciPy ${answer.scipy} at relative ${TOLERANCE.relative}, absolute ${TOLERANCE.absoluteKelvin} K:`,
  );
  for (const run of answer.runs) {
    const { method, rightHandSide, milliseconds, evaluations } = run;
    const ratios = ours.map((each) => ratioTo(run, each)).join(', ');
    say(
      `  ${method.padEnd(6)}${rightHandSide.padEnd(13)} ${milliseconds.toFixed(1).padStart(6)} ms, ` +
        `${String(evaluations).padStart(4)} evaluations; ${ratios}`,
    );
  }
  say(
    `asserted: the planner's run at least ${LEAST_RATIO} times as fast, right-hand side vectorised.`,
  );
};

/** Asserted for the run that plans are made with, beside a vectorised right-hand side: the aim. */
const ratioTo = (run: PythonAnswer['runs'][number], { name, moments, milliseconds }: OurRun) => {
  const { method, rightHandSide, states } = run;
  const apart = apartFrom(moments, states);
  assert.ok(apart < AGREES_KELVIN, `${method} is ${apart} K off`);
  const times = run.milliseconds / milliseconds;
  if (name === 'planner' && rightHandSide === 'vectorised')
    assert.ok(times >= LEAST_RATIO, `${method} ${rightHandSide} takes only ${times} times ours`);
  return `${name} ${times.toFixed(1)} times, ${apart.toFixed(4)} K apart`;
};

const apartFrom = (
  moments: readonly OvenMoment[],
  states: PythonAnswer['runs'][number]['states'],
): number => {
  assert.equal(states.length, moments.length);
  const apart = moments.flatMap(({ iron }, index) => {
    const [lid = Number.NaN, wall = Number.NaN, floor = Number.NaN] = states[index] ?? [];
    return [iron.lid - lid, iron.wall - wall, iron.floor - floor].map(Math.abs);
  });
  assert.ok(apart.every(Number.isFinite));
  return Math.max(...apart);
};

const askPython = (): PythonAnswer | undefined => {
  const script = fileURLToPath(new URL('./oven-run.py', import.meta.url));
  const input = JSON.stringify(pythonCase(ovenCase(), TOLERANCE, 15));
  const asked = spawnSync(PYTHON, [script], { input, encoding: 'utf8', maxBuffer: 2 ** 26 });
  if (asked.error || /No module named/.test(asked.stderr)) return;
  assert.equal(asked.status, 0, asked.stderr);
  return JSON.parse(asked.stdout) as PythonAnswer;
};

const ovenCase = (): OvenCase => {
  const area = request.load.planArea;
  return {
    body: setting.body,
    outside: setting.outside,
    burnoutMinutes: setting.burnoutMinutes,
    strength: 1,
    above: coals[0].count,
    below: coals[1].count,
    burntWhenLaid: LAID_BURNT,
    ironKelvin: request.ironAtStart,
    loadInMinute: LOAD_IN_MINUTE,
    endMinute: END_MINUTE,
    load: {
      mostWatts: parameter('chartLoadWattsPerSquareMetre') * area,
      wattsPerKelvin: parameter('loadWattsPerSquareMetreKelvin') * area,
      joulesPerKelvin: DOUGH.massGrams * DOUGH.heatCapacityJoulesPerGramKelvin,
      startKelvin: DOUGH.startKelvin,
      boilKelvin: DOUGH.boilKelvin,
    },
  };
};

const AIM_RUNS_FOR_A_DISH = 100;
const OVENS = [1, 2, 4, 8] as const;
const ROUNDS = 15;
const RUNS_IN_ROUND = 20;

/** Taken in turns, round by round, so that a busy machine slows both sides of a ratio alike. */
const layCoalsBench = (): void => {
  for (let warmUp = 0; warmUp < 30; warmUp += 1) layOvens(1);
  const rounds = Array.from({ length: ROUNDS }, () => {
    const one = millisecondsOf(() => {
      for (let run = 0; run < RUNS_IN_ROUND; run += 1) minuteRun();
    });
    return {
      oneRun: one / RUNS_IN_ROUND,
      perOven: OVENS.map((ovens) => millisecondsOf(() => layOvens(ovens)) / ovens),
    };
  });
  const each = OVENS.map((_, index) => median(rounds.map(({ perOven }) => perOven[index]!)));
  const oneRun = Math.min(...rounds.map((round) => round.oneRun));
  const inRuns = Math.min(...rounds.map(({ perOven }) => perOven[0]!)) / oneRun;
  assert.ok(
    inRuns < AIM_RUNS_FOR_A_DISH,
    `layCoals costs ${inRuns.toFixed(0)} runs, wanted under ${AIM_RUNS_FOR_A_DISH}`,
  );
  say(
    `layCoals for one dish: ${each[0]!.toFixed(1)} ms, ${inRuns.toFixed(0)} of the planner's ` +
      `90-minute runs, best against best (aim under ${AIM_RUNS_FOR_A_DISH})`,
  );
  const list = OVENS.map((ovens, index) => `${ovens}: ${each[index]!.toFixed(1)} ms`).join(', ');
  say(`per oven, by number of ovens (linear where it stays): ${list}`);
};

const layOvens = (ovens: number): void => {
  for (let oven = 0; oven < ovens; oven += 1) assert.ok(!isRefusal(layCoals(request)));
};

const millisecondsOf = (work: () => void): number => {
  const began = performance.now();
  work();
  return performance.now() - began;
};

const median = (values: readonly number[]): number =>
  [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;

const say = (line: string) => process.stdout.write(`  ${line}\n`);
const micro = (milliseconds: number) => `${(1000 * milliseconds).toFixed(0)} µs`;

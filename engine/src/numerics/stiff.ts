// How do a few coupled quantities change with time when some of them react a thousand times
// faster than others? Source: sandu1997 (method RODAS3), hairer1996 IV.7-8 (why, step control).
// Weakness: full Jacobian, so meant for up to some thirty unknowns; like every implicit method it
// can hop over a point where the true answer runs off to infinity.

import { type DenseMatrix, factorDense, solveFactored } from './dense.ts';

/** Writes the rates of change of `state` at `time` into `into`. */
export type Rates = (time: number, state: Float64Array, into: Float64Array) => void;

export interface StiffProblem {
  readonly rates: Rates;
  readonly start: ArrayLike<number>;
  readonly from: number;
  readonly to: number;
  /** Times for which the state is wanted, rising, inside from … to; only the end if not given. */
  readonly at?: readonly number[];
  /**
   * Times at which the rates jump. The stepper lands on each, sees the old rates up to it and the
   * new ones from it on: `rates` at exactly a stop must give the new ones.
   */
  readonly stops?: readonly number[];
  readonly relativeTolerance: number;
  readonly absoluteTolerance: number;
  /** Tried steps, refused ones counted. */
  readonly mostSteps: number;
}

export interface StiffSolution {
  /** As asked in `at`; shorter where the stepper had to give up. */
  readonly times: readonly number[];
  readonly states: readonly Float64Array[];
  readonly steps: number;
  readonly status: 'done' | 'too-many-steps' | 'step-too-small';
}

/**
 * The course of a small stiff system, with error control and a bounded number of steps.
 *
 * A linearly implicit four-stage method of order 3 with an embedded order 2, L-stable and stiffly
 * accurate: a fast unknown settles at once instead of ringing, and no iteration can fail to
 * converge. Between steps the state is a cubic through both ends and their slopes.
 *
 * @returns    the state at each wanted time and how it ended
 * @throws     RangeError — times out of order, tolerances not positive, rates that are not finite
 *             at the start
 * @source     sandu1997 table 5 (RODAS3); hairer1996 IV.8 eq. 8.20 ff. (error norm, next step)
 * @accuracy   see stiff.test.ts against validation/numerics/stiff-lumped.json
 */
export function integrateStiff(problem: StiffProblem): StiffSolution {
  checkProblem(problem);
  const run = startRun(problem);
  for (const end of segmentEnds(problem)) {
    run.segmentEnd = end;
    beginSegment(run);
    while (run.time < end) {
      const trouble = advance(run);
      if (trouble) return solution(run, trouble);
    }
  }
  return solution(run, 'done');
}

// --- The method -------------------------------------------------------------------------------

// sandu1997 RODAS3, in the transformed form that needs no product with the Jacobian:
// (I/(hγ) - J) k_i = f(t + α_i h, y + Σ a_ij k_j) + Σ c_ij k_j / h + γ_i h ∂f/∂t
const GAMMA = 1 / 2;
const STAGE_TIMES = [0, 0, 1, 1] as const;
const STAGE_TIME_SLOPES = [1 / 2, 3 / 2, 0, 0] as const;
const STAGE_STATES = [[], [0], [2, 0], [2, 0, 1]] as const;
const STAGE_MIXES = [[], [4], [1, -1], [1, -1, -8 / 3]] as const;
const NEXT_WEIGHTS = [2, 0, 1, 1] as const;
/** The last stage is the difference to the embedded order 2. */
const ERROR_STAGE = 3;
const STAGES = 4;

// Step control, hairer1996 IV.8: safety factor and bounds on the change are customary.
const SAFETY = 0.9;
const MOST_GROWTH = 5;
const MOST_SHRINK = 0.2;
const ERROR_ORDER = 3;
/** Tuned on validation/numerics/stiff-lumped.json, see stiff.test.ts: below it the cubic is sound. */
const MOST_STEP_TIMES_RATE = 300;
const SMALLEST_STEP_SHARE = 1e-13;
/** How near below a stop the old rates are still asked for, as a share of the segment. */
const BEFORE_STOP_SHARE = 1e-12;

interface Run {
  readonly problem: StiffProblem;
  readonly size: number;
  time: number;
  step: number;
  steps: number;
  segmentStart: number;
  segmentEnd: number;
  wantedNext: number;
  /** Largest row sum of the Jacobian: no unknown reacts faster. */
  fastest: number;
  state: Float64Array;
  next: Float64Array;
  slope: Float64Array;
  nextSlope: Float64Array;
  readonly trial: Float64Array;
  readonly timeSlope: Float64Array;
  readonly probe: Float64Array;
  readonly jacobian: DenseMatrix;
  readonly matrix: DenseMatrix;
  readonly rows: Int32Array;
  readonly stages: readonly Float64Array[];
  readonly times: number[];
  readonly states: Float64Array[];
}

function startRun(problem: StiffProblem): Run {
  const size = problem.start.length;
  const vector = () => new Float64Array(size);
  return {
    problem,
    size,
    time: problem.from,
    step: 0,
    steps: 0,
    segmentStart: problem.from,
    segmentEnd: problem.to,
    wantedNext: 0,
    fastest: 0,
    state: Float64Array.from(problem.start),
    next: vector(),
    slope: vector(),
    nextSlope: vector(),
    trial: vector(),
    timeSlope: vector(),
    probe: vector(),
    jacobian: new Float64Array(size * size),
    matrix: new Float64Array(size * size),
    rows: new Int32Array(size),
    stages: Array.from({ length: STAGES }, vector),
    times: [],
    states: [],
  };
}

/** Slopes change at a stop, so every segment starts like a new problem. */
function beginSegment(run: Run): void {
  run.segmentStart = run.time;
  evaluate(run, run.time, run.state, run.slope);
  if (!isAllFinite(run.slope)) throw new RangeError(`rates are not finite at time ${run.time}`);
  collectAtStart(run);
  run.step = firstStep(run);
}

/** One accepted step, however often it has to be tried; the trouble if there is no such step. */
function advance(run: Run): 'too-many-steps' | 'step-too-small' | undefined {
  findJacobian(run);
  const smallest = SMALLEST_STEP_SHARE * Math.max(Math.abs(run.time), run.problem.to - run.time);
  while (run.steps < run.problem.mostSteps) {
    const wish = run.step;
    const step = fitToLandings(run);
    run.steps += 1;
    const error = tryStep(run, step);
    run.step = step * stepChange(error);
    if (error <= 1) {
      run.step = Math.max(run.step, wish); // a landing is no reason to go on in small steps
      accept(run, step);
      return undefined;
    }
    if (run.step < smallest) return 'step-too-small';
  }
  return 'too-many-steps';
}

/** What is left up to a landing is halved rather than leaving a sliver behind. */
function fitToLandings(run: Run): number {
  const left = nextLanding(run) - run.time;
  return run.step >= left * 0.999_999 ? left : Math.min(run.step, left / 2);
}

/**
 * The cubic between steps multiplies the error of an unknown by step times its own rate. Where that
 * gets out of hand the stepper lands on the wanted times instead of going past them.
 */
function nextLanding(run: Run): number {
  const wanted = wantedTimes(run.problem)[run.wantedNext] ?? run.segmentEnd;
  const trustsCubic = run.step * run.fastest <= MOST_STEP_TIMES_RATE;
  return trustsCubic ? run.segmentEnd : Math.min(run.segmentEnd, wanted);
}

function stepChange(error: number): number {
  if (!Number.isFinite(error)) return MOST_SHRINK;
  if (error === 0) return MOST_GROWTH;
  const change = SAFETY * error ** (-1 / ERROR_ORDER); // hairer1996 IV.8
  return Math.min(MOST_GROWTH, Math.max(MOST_SHRINK, change));
}

/** Fills `run.next` and returns the error in units of the tolerance (1 = just allowed). */
function tryStep(run: Run, step: number): number {
  if (!factorStep(run, step)) return Number.POSITIVE_INFINITY;
  for (let stage = 0; stage < STAGES; stage += 1) findStage(run, step, stage);
  combine(run, NEXT_WEIGHTS, run.next);
  return isAllFinite(run.next) ? errorNorm(run) : Number.POSITIVE_INFINITY;
}

function factorStep(run: Run, step: number): boolean {
  const { matrix, jacobian, size } = run;
  for (let index = 0; index < matrix.length; index += 1) matrix[index] = -jacobian[index]!;
  const diagonal = 1 / (step * GAMMA);
  for (let row = 0; row < size; row += 1) {
    matrix[row * size + row] = matrix[row * size + row]! + diagonal;
  }
  return factorDense(matrix, size, run.rows);
}

function findStage(run: Run, step: number, stage: number): void {
  const right = run.stages[stage]!;
  if (stage < 2) right.set(run.slope);
  else {
    combine(run, STAGE_STATES[stage]!, run.trial);
    evaluate(run, run.time + STAGE_TIMES[stage]! * step, run.trial, right);
  }
  STAGE_MIXES[stage]!.forEach((mix, earlier) => {
    addScaled(right, run.stages[earlier]!, mix / step);
  });
  addScaled(right, run.timeSlope, STAGE_TIME_SLOPES[stage]! * step);
  solveFactored(run.matrix, run.size, run.rows, right);
}

function combine(run: Run, weights: readonly number[], into: Float64Array): void {
  into.set(run.state);
  weights.forEach((weight, stage) => {
    if (weight !== 0) addScaled(into, run.stages[stage]!, weight);
  });
}

function addScaled(into: Float64Array, vector: Float64Array, factor: number): void {
  for (let index = 0; index < into.length; index += 1) {
    into[index] = into[index]! + factor * vector[index]!;
  }
}

/** Root mean square of error over tolerance, hairer1996 IV.8 eq. 8.21. */
function errorNorm(run: Run): number {
  const error = run.stages[ERROR_STAGE]!;
  const { absoluteTolerance, relativeTolerance } = run.problem;
  let sum = 0;
  for (let index = 0; index < run.size; index += 1) {
    const largest = Math.max(Math.abs(run.state[index]!), Math.abs(run.next[index]!));
    sum += (error[index]! / (absoluteTolerance + relativeTolerance * largest)) ** 2;
  }
  return Math.sqrt(sum / Math.max(1, run.size));
}

function accept(run: Run, step: number): void {
  const wanted = wantedTimes(run.problem)[run.wantedNext] ?? run.segmentEnd;
  const landing = [wanted, run.segmentEnd].find((time) => time - run.time === step);
  const reached = landing ?? run.time + step;
  evaluate(run, reached, run.next, run.nextSlope);
  collectWithin(run, reached);
  run.time = reached;
  [run.state, run.next] = [run.next, run.state];
  [run.slope, run.nextSlope] = [run.nextSlope, run.slope];
}

// --- Rates, their Jacobian and the first step ---------------------------------------------------

/** Up to a stop the rates are those before it. */
function evaluate(run: Run, time: number, state: Float64Array, into: Float64Array): void {
  const before = run.segmentEnd - BEFORE_STOP_SHARE * (run.segmentEnd - run.segmentStart);
  run.problem.rates(Math.min(time, before), state, into);
}

/** Forward differences; the increment is the usual square root of the machine's precision. */
function findJacobian(run: Run): void {
  const { size, state, slope, trial, probe, jacobian } = run;
  trial.set(state);
  for (let column = 0; column < size; column += 1) {
    const value = state[column]!;
    const nudge = 1.5e-8 * Math.max(Math.abs(value), 1e-3);
    trial[column] = value + nudge;
    const taken = trial[column]! - value;
    evaluate(run, run.time, trial, probe);
    for (let row = 0; row < size; row += 1) {
      jacobian[row * size + column] = (probe[row]! - slope[row]!) / taken;
    }
    trial[column] = value;
  }
  run.fastest = largestRowSum(jacobian, size);
  findTimeSlope(run);
}

function largestRowSum(matrix: DenseMatrix, size: number): number {
  let largest = 0;
  for (let row = 0; row < size; row += 1) {
    let sum = 0;
    for (let column = 0; column < size; column += 1) sum += Math.abs(matrix[row * size + column]!);
    largest = Math.max(largest, sum);
  }
  return largest;
}

function findTimeSlope(run: Run): void {
  const nudge = 1e-6 * (run.segmentEnd - run.time);
  evaluate(run, run.time + nudge, run.state, run.timeSlope);
  for (let index = 0; index < run.size; index += 1) {
    run.timeSlope[index] = (run.timeSlope[index]! - run.slope[index]!) / nudge;
  }
}

/** A hundredth of the time in which the state would change by its own size, hairer1996 II.4. */
function firstStep(run: Run): number {
  const { absoluteTolerance, relativeTolerance } = run.problem;
  let size = 0;
  let change = 0;
  for (let index = 0; index < run.size; index += 1) {
    const scale = absoluteTolerance + relativeTolerance * Math.abs(run.state[index]!);
    size += (run.state[index]! / scale) ** 2;
    change += (run.slope[index]! / scale) ** 2;
  }
  const whole = run.segmentEnd - run.segmentStart;
  if (size < 1e-10 || change < 1e-10) return whole / 1000;
  return Math.min(whole / 2, 0.01 * Math.sqrt(size / change));
}

// --- Wanted times -------------------------------------------------------------------------------

function wantedTimes(problem: StiffProblem): readonly number[] {
  return problem.at ?? [problem.to];
}

function collectAtStart(run: Run): void {
  const wanted = wantedTimes(run.problem);
  while (run.wantedNext < wanted.length && wanted[run.wantedNext]! <= run.time) {
    collect(run, wanted[run.wantedNext]!, run.state.slice());
  }
}

function collectWithin(run: Run, reached: number): void {
  const wanted = wantedTimes(run.problem);
  while (run.wantedNext < wanted.length && wanted[run.wantedNext]! <= reached) {
    const time = wanted[run.wantedNext]!;
    collect(run, time, stateBetween(run, time, reached));
  }
}

function collect(run: Run, time: number, state: Float64Array): void {
  run.times.push(time);
  run.states.push(state);
  run.wantedNext += 1;
}

/** Cubic through both ends of the step and their slopes, hairer1993 II.6 eq. 6.7. */
function stateBetween(run: Run, time: number, reached: number): Float64Array {
  const step = reached - run.time;
  const share = (time - run.time) / step;
  if (share >= 1) return run.next.slice();
  return run.state.map((old, index) => {
    const rise = run.next[index]! - old;
    const startSlope = step * run.slope[index]! - rise;
    const endSlope = rise - step * run.nextSlope[index]!;
    return old + share * (rise + (1 - share) * ((1 - share) * startSlope + share * endSlope));
  });
}

function solution(run: Run, status: StiffSolution['status']): StiffSolution {
  return { times: run.times, states: run.states, steps: run.steps, status };
}

// --- What may be asked --------------------------------------------------------------------------

function segmentEnds({ from, to, stops = [] }: StiffProblem): readonly number[] {
  return [...stops.filter((stop) => from < stop && stop < to), to];
}

function checkProblem(problem: StiffProblem): void {
  const { from, to, at = [], stops = [], relativeTolerance, absoluteTolerance } = problem;
  if (!(from < to)) throw new RangeError(`time must run forward, got ${from} … ${to}`);
  if (!isRising(at) || at.some((time) => !(from <= time && time <= to))) {
    throw new RangeError('wanted times must rise and lie between from and to');
  }
  if (!isRising(stops)) throw new RangeError('stops must rise');
  if (!(relativeTolerance >= 0 && absoluteTolerance > 0)) {
    throw new RangeError('tolerances must be positive');
  }
}

function isRising(times: readonly number[]): boolean {
  return times.every((time, index) => index === 0 || times[index - 1]! <= time);
}

function isAllFinite(vector: Float64Array): boolean {
  return vector.every(Number.isFinite);
}

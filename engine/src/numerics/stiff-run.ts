// A run of the stiff stepper: what it holds while it goes, and how it asks for the rates.
// Source: hairer1996 IV.8 (increments of the Jacobian). Weakness: a full Jacobian at every step.

import type { DenseMatrix } from './dense.ts';
import type { StiffProblem } from './stiff-problem.ts';

export const STAGES = 4;
/** How near below a stop the old rates are still asked for, as a share of the segment. */
const BEFORE_STOP_SHARE = 1e-12;

export interface Run {
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

export function startRun(problem: StiffProblem): Run {
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

/** Up to a stop the rates are those before it. */
export function evaluate(run: Run, time: number, state: Float64Array, into: Float64Array): void {
  const before = run.segmentEnd - BEFORE_STOP_SHARE * (run.segmentEnd - run.segmentStart);
  run.problem.rates(Math.min(time, before), state, into);
}

/** Forward differences; the increment is the usual square root of the machine's precision. */
export function findJacobian(run: Run): void {
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

export function isAllFinite(vector: Float64Array): boolean {
  return vector.every(Number.isFinite);
}

// One tried step of a linearly implicit method of order 3, and its error.
// Source: sandu1997 (method RODAS3), hairer1996 IV.7 (why there is nothing to iterate).

import { factorDense, solveFactored } from './dense.ts';
import { evaluate, isAllFinite, type Run, STAGES } from './stiff-run.ts';

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

/** Fills `run.next` and returns the error in units of the tolerance (1 = just allowed). */
export function tryStep(run: Run, step: number): number {
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
  const mixes = STAGE_MIXES[stage]!;
  for (let earlier = 0; earlier < mixes.length; earlier += 1)
    addScaled(right, run.stages[earlier]!, mixes[earlier]! / step);
  addScaled(right, run.timeSlope, STAGE_TIME_SLOPES[stage]! * step);
  solveFactored(run.matrix, run.size, run.rows, right);
}

function combine(run: Run, weights: readonly number[], into: Float64Array): void {
  into.set(run.state);
  for (let stage = 0; stage < weights.length; stage += 1)
    if (weights[stage] !== 0) addScaled(into, run.stages[stage]!, weights[stage]!);
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

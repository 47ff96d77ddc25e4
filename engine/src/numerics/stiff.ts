// How do a few coupled quantities change with time when some of them react a thousand times
// faster than others? Source: sandu1997 (method RODAS3), hairer1996 IV.7-8 (why, step control).
// Weakness: full Jacobian, so meant for up to some thirty unknowns; like every implicit method it
// can hop over a point where the true answer runs off to infinity.

import { tryStep } from './rosenbrock.ts';
import { collectAtStart, collectWithin } from './stiff-output.ts';
import {
  checkProblem,
  type StiffProblem,
  type StiffSolution,
  segmentEnds,
  wantedTimes,
} from './stiff-problem.ts';
import { evaluate, findJacobian, isAllFinite, type Run, startRun } from './stiff-run.ts';

export type { Rates, StiffProblem, StiffSolution } from './stiff-problem.ts';

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
 * @source     sandu1997 (RODAS3); hairer1996 IV.8 eq. 8.20 ff. (error norm, next step)
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

// Step control, hairer1996 IV.8: safety factor and bounds on the change are customary.
const SAFETY = 0.9;
const MOST_GROWTH = 5;
const MOST_SHRINK = 0.2;
const ERROR_ORDER = 3;
/** Tuned on validation/numerics/stiff-lumped.json, see stiff.test.ts: below it the cubic is sound. */
const MOST_STEP_TIMES_RATE = 300;
const SMALLEST_STEP_SHARE = 1e-13;

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

function solution(run: Run, status: StiffSolution['status']): StiffSolution {
  return { times: run.times, states: run.states, steps: run.steps, status };
}

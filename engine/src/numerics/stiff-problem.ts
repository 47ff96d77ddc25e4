// What can be asked of the stiff stepper, what it answers, and which questions make no sense.

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

export function segmentEnds({ from, to, stops = [] }: StiffProblem): readonly number[] {
  return [...stops.filter((stop) => from < stop && stop < to), to];
}

export function checkProblem(problem: StiffProblem): void {
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

/** Only the end, where no times are asked for. */
export function wantedTimes(problem: StiffProblem): readonly number[] {
  return problem.at ?? [problem.to];
}

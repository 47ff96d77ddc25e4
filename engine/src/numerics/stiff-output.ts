// The wanted times of a stiff run: states at and between its steps.
// Source: hairer1993 II.6 (cubic between steps).

import { wantedTimes } from './stiff-problem.ts';
import type { Run } from './stiff-run.ts';

export function collectAtStart(run: Run): void {
  const wanted = wantedTimes(run.problem);
  while (run.wantedNext < wanted.length && wanted[run.wantedNext]! <= run.time) {
    collect(run, wanted[run.wantedNext]!, run.state.slice());
  }
}

export function collectWithin(run: Run, reached: number): void {
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

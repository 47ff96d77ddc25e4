// How soon can each task start, by lags, releases and hours of the first hand alone? Longest paths.
// Source: bellman1958.

import type { Problem } from '../solver/problem.ts';

/**
 * Soonest start by task; work that may be left binds nothing.
 * A contradiction in the lags ends it early (contradictionIn proves that).
 *
 * @param isDueFixed  what is due is not done before its time either, so that all is fresh for it
 */
export function soonestStarts(
  problem: Problem,
  { isDueFixed }: { readonly isDueFixed: boolean },
): Float64Array {
  const { tasks, groups, lags, from } = problem;
  const soonest = Float64Array.from(tasks, (task) => {
    const due = isDueFixed ? (task.due ?? from) : from;
    return task.fixed ?? Math.max(due, task.release ?? from);
  });
  const isFirm = (task: number) => !groups[tasks[task]!.group]!.mayBeLeft;
  const firm = lags.filter((lag) => isFirm(lag.from) && isFirm(lag.to));
  for (let round = 0; round <= tasks.length; round += 1) {
    let isMoved = false;
    const raise = (task: number, bound: number) => {
      if (bound <= soonest[task]! || tasks[task]!.fixed !== undefined) return;
      soonest[task] = bound;
      isMoved = true;
    };
    for (const lag of firm) {
      raise(lag.to, soonest[lag.from]! + lag.least);
      if (lag.most !== undefined) raise(lag.from, soonest[lag.to]! - lag.most);
    }
    if (!isMoved) break;
  }
  return soonest;
}

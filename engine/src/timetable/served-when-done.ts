// A dish that is late is on the table as soon as it is done and its hour has come: the search moves a
// late group as one, and bread that came out in time for the next to go in waited along with it.

import type { Plan, Problem } from '../solver/problem.ts';
import type { DayWork } from './work.ts';

/** The same plan with nothing served later than it must be. */
export function servedWhenDone({ problem, meanings, dishes }: DayWork, plan: Plan): Plan {
  const starts = [...plan.starts];
  // The call is nobody's time: it follows what is on the table.
  const calls = meanings.flatMap(({ kind }, task) => (kind === 'call' ? [task] : []));
  for (const task of [...dishes.map(({ served }) => served), ...calls]) {
    const soonest = soonestServed(problem, starts, task);
    if (soonest < (starts[task] ?? soonest)) starts[task] = soonest;
  }
  const lateBy = plan.lateBy.map((late, group) => {
    const dues = problem.tasks.flatMap((task, index) =>
      task.group === group && task.due !== undefined && starts[index] !== undefined
        ? [starts[index] - task.due]
        : [],
    );
    return dues.length === 0 ? late : Math.max(0, ...dues);
  });
  return { ...plan, starts, lateBy };
}

/** By what must be before it, and by what may not be much later than it. */
function soonestServed(problem: Problem, starts: Plan['starts'], served: number): number {
  const { due, fixed, release = problem.from } = problem.tasks[served]!;
  if (fixed !== undefined || due === undefined) return Number.POSITIVE_INFINITY;
  const bounds = problem.lags.flatMap(({ from, to, least, most }) => {
    const before = to === served ? starts[from] : undefined;
    const after = from === served && most !== undefined ? starts[to] : undefined;
    return [
      ...(before === undefined ? [] : [before + least]),
      ...(after === undefined ? [] : [after - most!]),
    ];
  });
  return Math.max(due, release, ...bounds);
}

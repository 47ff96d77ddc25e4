// Which tasks, lags and holds belong to one group, and how far apart must its tasks be?
// Worked out once per problem; every decode uses it again.

import type { Hold, Lag, Problem, Task } from './problem.ts';
import { type Net, netOf } from './serial.ts';
import { APART, latestOnTime, longestPaths } from './temporal.ts';

export interface GroupNet extends Net {
  /** Indices of its tasks in the problem; the place in this list is the local index. */
  readonly members: readonly number[];
  readonly localOf: ReadonlyMap<number, number>;
  /** Lags with exactly one end in the group. */
  readonly outward: readonly Lag[];
  readonly holds: readonly Hold[];
  /** By local index: start no later, so that groups not placed yet can still be on time. */
  readonly hints: Float64Array;
  /** By local index: later than this none of those who may do it is there. */
  readonly hours: Float64Array;
}

/** Room left for groups that are placed later [min]. @tuned on one made-up camp, by whether the
 * first order already gives a plan on time */
const ROOM_FOR_OTHERS = 30;

export function groupNets(problem: Problem): readonly GroupNet[] {
  const latest = { tight: latestOnTime(problem, 0), roomy: latestOnTime(problem, ROOM_FOR_OTHERS) };
  return problem.groups.map((_, group) => groupNet(problem, group, latest));
}

function groupNet(
  problem: Problem,
  group: number,
  latest: { readonly tight: Float64Array; readonly roomy: Float64Array },
): GroupNet {
  const members = problem.tasks.flatMap((task, index) => (task.group === group ? [index] : []));
  const localOf = new Map(members.map((task, local) => [task, local]));
  const touching = problem.lags.filter((lag) => localOf.has(lag.from) || localOf.has(lag.to));
  const inner = touching.filter((lag) => localOf.has(lag.from) && localOf.has(lag.to));
  const arcs = inner.flatMap((lag) => {
    const from = localOf.get(lag.from)!;
    const to = localOf.get(lag.to)!;
    const there = { from, to, least: lag.least };
    return lag.most === undefined ? [there] : [there, { from: to, to: from, least: -lag.most }];
  });
  const paths = longestPaths(members.length, arcs);
  const dues = members.flatMap((task, local) =>
    problem.tasks[task]!.due === undefined ? [] : [local],
  );
  // A task that nothing holds near a due time can be early at no cost.
  const isFree = (local: number) =>
    dues.every((due) => paths[due * members.length + local] === APART);
  return {
    hints: Float64Array.from(members, (task, local) =>
      isFree(local) ? latest.roomy[task]! : latest.tight[task]!,
    ),
    hours: Float64Array.from(members, (task) => lastHour(problem, problem.tasks[task]!)),
    ...netOf(members.length, paths),
    members,
    localOf,
    outward: touching.filter((lag) => localOf.has(lag.from) !== localOf.has(lag.to)),
    holds: problem.holds.filter((hold) => localOf.has(hold.first) || localOf.has(hold.last)),
  };
}

function lastHour(problem: Problem, task: Task): number {
  const leaves = (unit: number) => Math.max(...problem.units[unit]!.windows.map((open) => open.to));
  const lasts = task.seats.map((seat) => Math.max(...seat.map(leaves)));
  return task.minutes > 0 ? Math.min(problem.to, ...lasts) - task.minutes : problem.to;
}

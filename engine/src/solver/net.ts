// Which tasks, lags and holds belong to one group, and how far apart must its tasks be?
// Worked out once per problem; every decode uses it again.

import type { Hold, Lag, Problem } from './problem.ts';
import { longestPaths } from './temporal.ts';

export interface GroupNet {
  /** Indices of its tasks in the problem; the place in this list is the local index. */
  readonly members: readonly number[];
  readonly localOf: ReadonlyMap<number, number>;
  /** Least start(j) - start(i) at [i * members + j], local indices. */
  readonly paths: Float64Array;
  /** Lags with exactly one end in the group. */
  readonly outward: readonly Lag[];
  readonly holds: readonly Hold[];
}

export function groupNets(problem: Problem): readonly GroupNet[] {
  return problem.groups.map((_, group) => netOf(problem, group));
}

function netOf(problem: Problem, group: number): GroupNet {
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
  return {
    members,
    localOf,
    paths: longestPaths(members.length, arcs),
    outward: touching.filter((lag) => localOf.has(lag.from) !== localOf.has(lag.to)),
    holds: problem.holds.filter((hold) => localOf.has(hold.first) || localOf.has(hold.last)),
  };
}

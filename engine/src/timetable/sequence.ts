// In what order does each hand, oven and chimney take its work? Read off a finished plan; used to
// say what binds a job and how late it may slip with the order kept.

import type { Plan, Problem } from '../solver/problem.ts';

/** start(to) - start(from) >= least, and why. */
export interface Link {
  readonly from: number;
  readonly to: number;
  readonly least: number;
  readonly why: 'lag' | 'most' | 'hand' | 'oven' | 'table' | 'coals';
  /** Hand or oven. */
  readonly by?: string;
}

/** All that keeps placed tasks apart in this plan, lags and the order on shared things. */
export function linksOf(problem: Problem, plan: Plan): readonly Link[] {
  return [...lagLinks(problem), ...unitLinks(problem, plan), ...holdLinks(problem, plan)];
}

function lagLinks(problem: Problem): readonly Link[] {
  return problem.lags.flatMap((lag) => {
    const there = { from: lag.from, to: lag.to, least: lag.least, why: 'lag' as const };
    if (lag.most === undefined) return [there];
    return [there, { from: lag.to, to: lag.from, least: -lag.most, why: 'most' as const }];
  });
}

function unitLinks(problem: Problem, plan: Plan): readonly Link[] {
  return problem.units.flatMap((unit, index) => {
    const own = problem.tasks
      .map((task, at) => ({ at, start: plan.starts[at], minutes: task.minutes }))
      .filter((each) => each.start !== undefined && plan.crews[each.at]?.includes(index))
      .sort((a, b) => a.start! - b.start! || a.at - b.at);
    return own.slice(1).map((next, at): Link => {
      const before = own[at]!;
      return { from: before.at, to: next.at, least: before.minutes, why: 'hand', by: unit.id };
    });
  });
}

function holdLinks(problem: Problem, plan: Plan): readonly Link[] {
  return problem.pools.flatMap((pool, index) => {
    if (pool.capacity !== 1) return [];
    const own = problem.holds
      .filter((hold) => hold.pool === index && plan.starts[hold.first] !== undefined)
      .sort((a, b) => plan.starts[a.first]! - plan.starts[b.first]!);
    return own.slice(1).map((next, at): Link => {
      const { last } = own[at]!;
      const least = problem.tasks[last]!.minutes;
      return { from: last, to: next.first, least, why: 'oven', by: pool.id.replace(/^oven /, '') };
    });
  });
}

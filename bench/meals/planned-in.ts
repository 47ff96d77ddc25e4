// The clock stands out here: the search itself counts decodes. How many go into a second is measured
// on the meal at hand, and a search of so many is stopped when its time is over.

import { learner } from '../../engine/src/solver/learned-plan.ts';
import type { Problem } from '../../engine/src/solver/problem.ts';
import { type Found, searchPlan } from '../../engine/src/solver/search.ts';

/** Seconds of this process's own work since some moment: on a busy machine less than by the clock. */
const workSeconds = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

export function secondsOf<Result>(work: () => Result): {
  readonly result: Result;
  readonly seconds: number;
} {
  const since = workSeconds();
  const result = work();
  return { result, seconds: workSeconds() - since };
}

/** Placings of one group that the speed is measured on: too few to begin to learn. */
const PROBE = 500;

/** The best plan of so many seconds of work. */
export function plannedIn(
  problem: Problem,
  wish: { readonly seed: number; readonly seconds: number },
): Found {
  const { seed, seconds } = wish;
  const since = workSeconds();
  const many = Math.ceil(PROBE / problem.groups.length);
  const first = secondsOf(() => searchPlan(problem, { seed, decodes: 1 }));
  const probe = secondsOf(() => searchPlan(problem, { seed, decodes: 1 + many }));
  const each = Math.max(1e-4, (probe.seconds - first.seconds) / many);
  const rest = seconds - (workSeconds() - since) - first.seconds;
  const decodes = Math.floor(rest / each);
  if (decodes <= many) return probe.result;
  const isStopped = () => workSeconds() - since >= seconds;
  const found = searchPlan(problem, { seed, decodes, isStopped, learner });
  return found.cost <= probe.result.cost ? found : probe.result;
}

/** Milliseconds of work until there is a plan to show. */
export function shownIn(problem: Problem, seed: number): number {
  const since = workSeconds();
  let shown = Number.POSITIVE_INFINITY;
  const onBetter = () => {
    shown = Math.min(shown, 1000 * (workSeconds() - since));
  };
  searchPlan(problem, { seed, decodes: 1, onBetter });
  return shown;
}

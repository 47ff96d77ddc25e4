// Why does each job stand where it stands, and how late may it slip before a serving is late?

import type { Plan, Problem } from '../solver/problem.ts';
import type { TaskMeaning } from './builder.ts';
import type { Binding } from './day-sheet.ts';
import { type Link, linksOf } from './sequence.ts';

export interface Reasons {
  /** By task index. */
  readonly because: readonly Binding[];
  readonly latestStart: readonly number[];
}

export function reasonsFor(
  problem: Problem,
  plan: Plan,
  told: { readonly meanings: readonly TaskMeaning[]; readonly idOf: (task: number) => string },
): Reasons {
  const links = linksOf(problem, plan);
  const after = new Map<number, Link[]>();
  for (const link of links) after.set(link.from, [...(after.get(link.from) ?? []), link]);
  const latestStart = latestStarts(problem, plan, links);
  const because = problem.tasks.map((task, index): Binding => {
    if (task.fixed !== undefined) return { kind: 'pin' };
    return bindingOf(problem, plan, { index, after: after.get(index) ?? [], told });
  });
  return { because, latestStart };
}

/** With the order on hands and ovens kept; lags at their most hold too. */
function latestStarts(problem: Problem, plan: Plan, links: readonly Link[]): readonly number[] {
  const latest = problem.tasks.map((task, index) => {
    const start = plan.starts[index];
    if (start === undefined) return Number.NaN;
    if (task.fixed !== undefined || task.due !== undefined) return start;
    const ends = plan.crews[index]!.map((unit) => endOfHours(problem, unit, start));
    return Math.min(problem.to, ...ends) - task.minutes;
  });
  for (const batch of plan.batches) {
    for (const each of batch.uses) {
      const use = problem.stores[batch.store]!.uses[each.use]!;
      latest[use.task] = Math.min(latest[use.task]!, batch.readyAt + use.waitMost);
    }
  }
  for (let round = 0; round < problem.tasks.length; round += 1) {
    if (!tighten(plan, links, latest)) break;
  }
  return latest.map((minute, index) => Math.max(minute, plan.starts[index] ?? minute));
}

const endOfHours = (problem: Problem, unit: number, at: number) =>
  problem.units[unit]!.windows.find((open) => open.from <= at && at <= open.to)?.to ?? problem.to;

function tighten(plan: Plan, links: readonly Link[], latest: number[]): boolean {
  let isMoved = false;
  for (let at = links.length - 1; at >= 0; at -= 1) {
    const { from, to, least } = links[at]!;
    if (plan.starts[from] === undefined || plan.starts[to] === undefined) continue;
    if (latest[to]! - least >= latest[from]!) continue;
    latest[from] = latest[to]! - least;
    isMoved = true;
  }
  return isMoved;
}

/** The first thing that would be run into by starting one minute later. */
function bindingOf(
  problem: Problem,
  plan: Plan,
  at: {
    readonly index: number;
    readonly after: readonly Link[];
    readonly told: {
      readonly meanings: readonly TaskMeaning[];
      readonly idOf: (t: number) => string;
    };
  },
): Binding {
  const start = plan.starts[at.index];
  if (start === undefined) return { kind: 'arrival' };
  if (problem.groups[problem.tasks[at.index]!.group]!.towards === 'early') {
    return { kind: 'after', by: 'serving' };
  }
  const tight = at.after.find((link) => plan.starts[link.to] === start + link.least);
  if (tight !== undefined) return bindingBy(tight, at.told);
  const unit = plan.crews[at.index]!.find((each) => {
    const ends = endOfHours(problem, each, start);
    return start + problem.tasks[at.index]!.minutes >= ends;
  });
  if (unit !== undefined) return { kind: 'hand', by: problem.units[unit]!.id };
  const isTable = problem.tasks[at.index]!.takes.some(
    ({ pool }) => problem.pools[pool]!.id === 'table',
  );
  if (isTable) return { kind: 'table' };
  const nearest = nearestAfter(plan, start, at.after);
  return nearest === undefined ? { kind: 'serving' } : bindingBy(nearest, at.told);
}

function nearestAfter(plan: Plan, start: number, after: readonly Link[]): Link | undefined {
  const slack = (link: Link) => (plan.starts[link.to] ?? Infinity) - start - link.least;
  return [...after].filter((link) => link.why !== 'most').sort((a, b) => slack(a) - slack(b))[0];
}

function bindingBy(
  link: Link,
  told: { readonly meanings: readonly TaskMeaning[]; readonly idOf: (task: number) => string },
): Binding {
  if (link.why === 'hand' || link.why === 'oven') return { kind: link.why, by: link.by ?? '' };
  const meaning = told.meanings[link.to]!;
  if (meaning.kind === 'served') return { kind: 'serving', by: meaning.dish ?? '' };
  return { kind: link.why === 'most' ? 'after' : 'before', by: told.idOf(link.to) };
}

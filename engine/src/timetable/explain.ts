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
  const [after, before] = [new Map<number, Link[]>(), new Map<number, Link[]>()];
  for (const link of links) {
    after.set(link.from, [...(after.get(link.from) ?? []), link]);
    before.set(link.to, [...(before.get(link.to) ?? []), link]);
  }
  const latestStart = latestStarts(problem, plan, links);
  const because = problem.tasks.map((task, index): Binding => {
    if (task.fixed !== undefined) return { kind: 'pin' };
    return bindingOf(problem, plan, {
      index,
      after: after.get(index) ?? [],
      before: before.get(index) ?? [],
      told,
    });
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

interface At {
  readonly index: number;
  /** Links to what comes after it, and from what comes before. */
  readonly after: readonly Link[];
  readonly before: readonly Link[];
  readonly told: {
    readonly meanings: readonly TaskMeaning[];
    readonly idOf: (task: number) => string;
  };
}

/**
 * What a cook would name: the first thing that would be run into by starting one minute later; of a turn
 * or a check its own minute; busy hands only where they are busy in the very next minute.
 */
function bindingOf(problem: Problem, plan: Plan, at: At): Binding {
  const start = plan.starts[at.index];
  if (start === undefined) return { kind: 'arrival' };
  if (problem.groups[problem.tasks[at.index]!.group]!.towards === 'early') {
    return { kind: 'after', by: 'serving' };
  }
  const tight = at.after.filter((link) => plan.starts[link.to] === start + link.least);
  const isShared = ({ why }: Link) => why === 'hand' || why === 'table';
  const firm = tight.find((link) => !isShared(link));
  if (firm !== undefined) return bindingBy(firm, at.told);
  const { kind, load, values } = at.told.meanings[at.index]!;
  if (AT_ITS_MINUTE.has(kind) && values?.minute !== undefined)
    return { kind: 'minute', by: load ?? '' };
  if (tight[0] !== undefined) return bindingBy(tight[0], at.told);
  return looseBinding(problem, plan, at, start);
}

const AT_ITS_MINUTE: ReadonlySet<string> = new Set(['turn', 'check', 'add-coals', 'stir', 'probe']);

/** Nothing is run into in the next minute: hours that end, what it waited for, what it is meant for. */
function looseBinding(problem: Problem, plan: Plan, at: At, start: number): Binding {
  const task = problem.tasks[at.index]!;
  const unit = plan.crews[at.index]!.find(
    (each) => start + task.minutes >= endOfHours(problem, each, start),
  );
  if (unit !== undefined) return { kind: 'hand', by: problem.units[unit]!.id };
  const since = at.before.find(
    ({ why, from, least }) => why === 'lag' && (plan.starts[from] ?? Number.NaN) + least === start,
  );
  if (since !== undefined) return { kind: 'since', by: at.told.idOf(since.from) };
  const nearest = nearestAfter(plan, start, at.after);
  if (nearest !== undefined) return bindingBy(nearest, at.told);
  const isTable = task.takes.some(({ pool }) => problem.pools[pool]!.id === 'table');
  return isTable ? { kind: 'table' } : { kind: 'serving' };
}

/** What it is meant for: the next of its own chain, never just the next in the same hands. */
function nearestAfter(plan: Plan, start: number, after: readonly Link[]): Link | undefined {
  const slack = (link: Link) => (plan.starts[link.to] ?? Infinity) - start - link.least;
  return [...after]
    .filter(({ why }) => why === 'lag' || why === 'oven')
    .sort((a, b) => slack(a) - slack(b))[0];
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

// Every plan of a tiny problem, tried one by one: the truth that the solver's tests compare with.
// No shortcuts but lags and double booking that already failed; knows groups, units, pools, holds
// and lags, not stores.

import type { Problem } from '../../src/solver/problem.ts';

export interface Best {
  /** Least sum of minutes late over all groups, or undefined if even the latest tried won't do. */
  readonly late: number;
  /** Least price of waiting among the plans that are so late. */
  readonly wait: number;
}

/** Lateness in all up to `most` minutes is tried, least first. */
export function bestByExhaustion(problem: Problem, most: number): Best | undefined {
  for (let late = 0; late <= most; late += 1) {
    let wait = Number.POSITIVE_INFINITY;
    for (const lateBy of sharesOf(late, problem.groups.length)) {
      wait = Math.min(wait, leastWait(problem, lateBy));
    }
    if (Number.isFinite(wait)) return { late, wait };
  }
  return undefined;
}

/** All ways to share minutes out over groups. */
function sharesOf(minutes: number, groups: number): readonly (readonly number[])[] {
  if (groups === 1) return [[minutes]];
  const all: number[][] = [];
  for (let first = 0; first <= minutes; first += 1) {
    for (const rest of sharesOf(minutes - first, groups - 1)) all.push([first, ...rest]);
  }
  return all;
}

interface Placing {
  readonly problem: Problem;
  readonly lateBy: readonly number[];
  readonly starts: number[];
  readonly crews: (readonly number[])[];
  best: number;
}

function leastWait(problem: Problem, lateBy: readonly number[]): number {
  const placing: Placing = { problem, lateBy, starts: [], crews: [], best: Infinity };
  placeNext(placing);
  return placing.best;
}

function placeNext(placing: Placing): void {
  const { problem, starts, lateBy } = placing;
  const index = starts.length;
  const task = problem.tasks[index];
  if (task === undefined) {
    if (holdsFit(placing)) placing.best = Math.min(placing.best, waitOf(problem, starts));
    return;
  }
  const exact = task.fixed ?? (task.due === undefined ? undefined : task.due + lateBy[task.group]!);
  const from = exact ?? Math.max(problem.from, task.release ?? problem.from);
  const to = exact ?? problem.to - task.minutes;
  for (let start = from; start <= to; start += 1) {
    if (start < (task.release ?? start) || start + task.minutes > problem.to) continue;
    starts.push(start);
    if (lagsFit(placing, index)) {
      for (const crew of crewsFor(task.seats)) {
        placing.crews.push(crew);
        if (unitsFit(placing, index) && poolsFit(placing)) placeNext(placing);
        placing.crews.pop();
      }
    }
    starts.pop();
  }
}

function waitOf(problem: Problem, starts: readonly number[]): number {
  return problem.prices.reduce((sum, p) => sum + p.price * (starts[p.to]! - starts[p.from]!), 0);
}

function crewsFor(seats: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const [seat, ...rest] = seats;
  if (seat === undefined) return [[]];
  return seat.flatMap((unit) =>
    crewsFor(rest).flatMap((others) => (others.includes(unit) ? [] : [[unit, ...others]])),
  );
}

function lagsFit({ problem, starts }: Placing, index: number): boolean {
  return problem.lags.every((lag) => {
    if ((lag.from !== index && lag.to !== index) || Math.max(lag.from, lag.to) > index) return true;
    const apart = starts[lag.to]! - starts[lag.from]!;
    return lag.least <= apart && apart <= (lag.most ?? Infinity);
  });
}

function unitsFit({ problem, starts, crews }: Placing, index: number): boolean {
  const { minutes } = problem.tasks[index]!;
  const start = starts[index]!;
  return crews[index]!.every((unit) => {
    if (minutes === 0) return true;
    const isThere = problem.units[unit]!.windows.some(
      (open) => open.from <= start && start + minutes <= open.to,
    );
    const isFree = starts.every((other, at) => {
      if (at === index || at >= crews.length || !crews[at]!.includes(unit)) return true;
      return other + problem.tasks[at]!.minutes <= start || start + minutes <= other;
    });
    return isThere && isFree;
  });
}

function poolsFit({ problem, starts }: Placing): boolean {
  return problem.pools.every((pool, index) => {
    for (let minute = problem.from; minute < problem.to; minute += 1) {
      let taken = 0;
      starts.forEach((start, at) => {
        const task = problem.tasks[at]!;
        if (minute < start || start + task.minutes <= minute) return;
        for (const take of task.takes) if (take.pool === index) taken += take.amount;
      });
      if (taken > pool.capacity) return false;
    }
    return true;
  });
}

function holdsFit({ problem, starts }: Placing): boolean {
  return problem.pools.every((pool, index) => {
    const own = problem.holds.filter((hold) => hold.pool === index);
    for (let minute = problem.from; minute < problem.to; minute += 1) {
      const held = own.filter((hold) => {
        const end = starts[hold.last]! + problem.tasks[hold.last]!.minutes;
        return starts[hold.first]! <= minute && minute < end;
      });
      if (held.length > pool.capacity) return false;
    }
    return true;
  });
}

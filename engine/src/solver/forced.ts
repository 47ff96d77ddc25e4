// Two tasks that can't share what they take go one after the other. Where the lags leave only one
// order, that order is a lag too; where they leave none, no plan exists: a proof, whatever is tried.

import type { Taking } from './pools.ts';
import { APART } from './temporal.ts';

export interface Contest {
  readonly minutes: readonly number[];
  readonly takes: readonly (readonly Taking[])[];
  readonly capacities: readonly number[];
}

export type Forced =
  /** Least distances with every forced order added. */
  | { readonly paths: Float64Array }
  /** Neither can be before the other, and together they take too much of this pool. */
  | { readonly clash: readonly [number, number]; readonly pool: number }
  /** The lags alone contradict each other at this task. */
  | { readonly cycleAt: number };

/**
 * @param paths  least start(j) - start(i) by the lags at [i * count + j]
 * @source       bartuschMohringRadermacher1988 (from memory): orders that lags at most force
 */
export function forcedOrders(contest: Contest, paths: Float64Array): Forced {
  const count = contest.minutes.length;
  const tight = Float64Array.from(paths);
  const cycle = cycleIn(tight, count);
  if (cycle !== undefined) return { cycleAt: cycle };
  const pairs = contestedPairs(contest);
  for (let round = 0; round < count * count; round += 1) {
    let isMoved = false;
    for (const { one, other, pool } of pairs) {
      const isBefore = canPrecede(contest, tight, one, other);
      const isAfter = canPrecede(contest, tight, other, one);
      if (!isBefore && !isAfter) return { clash: [one, other], pool };
      if (isBefore && isAfter) continue;
      const [first, last] = isBefore ? [one, other] : [other, one];
      if (addLag(tight, count, { from: first, to: last, least: contest.minutes[first]! })) {
        isMoved = true;
      }
    }
    if (!isMoved) return { paths: tight };
  }
  return { paths: tight };
}

function cycleIn(paths: Float64Array, count: number): number | undefined {
  for (let task = 0; task < count; task += 1) if (paths[task * count + task]! > 0) return task;
  return undefined;
}

interface Pair {
  readonly one: number;
  readonly other: number;
  readonly pool: number;
}

function contestedPairs({ minutes, takes, capacities }: Contest): readonly Pair[] {
  const pairs: Pair[] = [];
  for (let one = 0; one < minutes.length; one += 1) {
    for (let other = one + 1; other < minutes.length; other += 1) {
      if (minutes[one] === 0 || minutes[other] === 0) continue;
      const both = takes[one]!.find(({ pool, amount }) => {
        const more = takes[other]!.find((take) => take.pool === pool)?.amount ?? 0;
        return amount > 0 && more > 0 && amount + more > capacities[pool]!;
      });
      if (both !== undefined) pairs.push({ one, other, pool: both.pool });
    }
  }
  return pairs;
}

/** May the first end before the other starts, as far as the lags say? */
function canPrecede(contest: Contest, paths: Float64Array, first: number, last: number): boolean {
  const back = paths[last * contest.minutes.length + first]!;
  return back === APART || back + contest.minutes[first]! <= 0;
}

/** All longest paths with one lag more; false if it was known. */
function addLag(
  paths: Float64Array,
  count: number,
  lag: { readonly from: number; readonly to: number; readonly least: number },
): boolean {
  const { from, to, least } = lag;
  if (paths[from * count + to]! >= least) return false;
  for (let i = 0; i < count; i += 1) {
    const into = paths[i * count + from]!;
    if (into === APART) continue;
    for (let j = 0; j < count; j += 1) {
      const through = into + least + paths[to * count + j]!;
      if (through > paths[i * count + j]!) paths[i * count + j] = through;
    }
  }
  return true;
}

// How far apart must two tasks be, and can all lags stand together? Longest paths over the lags.
// Exact: a cycle of positive length is a proof that no plan exists, whatever the resources.

import type { Problem } from './problem.ts';

/** start(to) - start(from) >= least. Node -1 is the clock's own zero. */
export interface Arc {
  readonly from: number;
  readonly to: number;
  readonly least: number;
}

export const ORIGIN = -1;
/** No path. */
export const APART = Number.NEGATIVE_INFINITY;

/**
 * Tasks round which the lags add up to more than nothing: proof that they contradict each other.
 *
 * @param isDueFixed  true: due times count as fixed; then a cycle proves that all can't be on time
 * @returns           the cycle in order, ORIGIN standing for the clock; undefined if there is none
 * @source            bellman1958 (longest paths by relaxing every arc n times)
 */
export function contradictionIn(
  problem: Problem,
  { isDueFixed }: { readonly isDueFixed: boolean },
): readonly number[] | undefined {
  const arcs = arcsOf(problem, isDueFixed);
  const nodes = problem.tasks.length + 1;
  const distance = new Array<number>(nodes).fill(0);
  const before = new Array<number>(nodes).fill(Number.NaN);
  let moved = ORIGIN - 1;
  for (let round = 0; round <= nodes; round += 1) {
    moved = relaxOnce(arcs, distance, before);
    if (moved < ORIGIN) return undefined;
  }
  return walkCycle(before, moved, nodes);
}

/** Least distance start(j) - start(i) over all paths, for the tasks of one group. */
export function longestPaths(count: number, arcs: readonly Arc[]): Float64Array {
  const distance = new Float64Array(count * count).fill(APART);
  for (let i = 0; i < count; i += 1) distance[i * count + i] = 0;
  for (const arc of arcs) {
    const at = arc.from * count + arc.to;
    distance[at] = Math.max(distance[at]!, arc.least);
  }
  for (let via = 0; via < count; via += 1) closeOver(distance, count, via);
  return distance;
}

/**
 * Latest start of each task with everything on time, by lags alone.
 *
 * @param apart  minutes added to every lag between two groups: room for what is not known yet
 * @returns      by task; problem.to where nothing binds; a contradiction ends it early
 */
export function latestOnTime(problem: Problem, apart: number): Float64Array {
  const latest = Float64Array.from(problem.tasks, (task) => task.due ?? problem.to);
  const arcs = arcsOf(problem, true, true);
  const groupOf = (task: number) => problem.tasks[task]!.group;
  for (let round = 0; round <= problem.tasks.length; round += 1) {
    let isMoved = false;
    for (let at = arcs.length - 1; at >= 0; at -= 1) {
      const { from, to, least } = arcs[at]!;
      if (from === ORIGIN || problem.tasks[from]!.due !== undefined) continue;
      const isAcross = to !== ORIGIN && groupOf(from) !== groupOf(to);
      const room = least + (isAcross ? apart : 0);
      const bound = (to === ORIGIN ? 0 : latest[to]!) - room;
      if (bound >= latest[from]!) continue;
      latest[from] = bound;
      isMoved = true;
    }
    if (!isMoved) break;
  }
  return latest;
}

/** Both sides of every lag as arcs; work that may be left binds nothing, unless all is asked for. */
function arcsOf(problem: Problem, isDueFixed: boolean, isAll = false): readonly Arc[] {
  const arcs: Arc[] = [];
  const isFirm = (task: number) => isAll || !problem.groups[problem.tasks[task]!.group]!.mayBeLeft;
  for (const lag of problem.lags) {
    if (!isFirm(lag.from) || !isFirm(lag.to)) continue;
    arcs.push({ from: lag.from, to: lag.to, least: lag.least });
    if (lag.most !== undefined) arcs.push({ from: lag.to, to: lag.from, least: -lag.most });
  }
  problem.tasks.forEach((task, index) => {
    const exact = task.fixed ?? (isDueFixed ? task.due : undefined);
    const soonest = Math.max(exact ?? problem.from, task.release ?? problem.from);
    const latest = Math.min(exact ?? problem.to, task.latest ?? problem.to);
    arcs.push({ from: ORIGIN, to: index, least: soonest });
    arcs.push({ from: index, to: ORIGIN, least: -latest });
  });
  return arcs;
}

function relaxOnce(arcs: readonly Arc[], distance: number[], before: number[]): number {
  let moved = ORIGIN - 1;
  for (const arc of arcs) {
    const reached = distance[arc.from + 1]! + arc.least;
    if (reached <= distance[arc.to + 1]!) continue;
    distance[arc.to + 1] = reached;
    before[arc.to + 1] = arc.from;
    moved = arc.to;
  }
  return moved;
}

function walkCycle(before: readonly number[], reached: number, nodes: number): readonly number[] {
  let node = reached;
  for (let step = 0; step < nodes; step += 1) node = before[node + 1]!;
  const cycle = [node];
  for (let at = before[node + 1]!; at !== node && cycle.length <= nodes; at = before[at + 1]!) {
    cycle.push(at);
  }
  return cycle.reverse();
}

function closeOver(distance: Float64Array, count: number, via: number): void {
  for (let i = 0; i < count; i += 1) {
    const first = distance[i * count + via]!;
    if (first === APART) continue;
    for (let j = 0; j < count; j += 1) {
      const through = first + distance[via * count + j]!;
      if (through > distance[i * count + j]!) distance[i * count + j] = through;
    }
  }
}

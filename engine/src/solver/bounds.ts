// Between which minutes can each task of a group still start? Two arrays that only tighten.

import type { GroupNet } from './net.ts';
import type { Problem } from './problem.ts';
import type { Bounds } from './serial.ts';

export interface BoundsWish {
  /** Added to every due time of the group; undefined leaves due tasks free (to measure). */
  readonly late: number | undefined;
  /** Latest start per local index, from pulls. */
  readonly caps: Float64Array;
}

/** From releases, fixed and due times, and tasks of other groups already placed; propagated. */
export function groupBounds(
  problem: Problem,
  net: GroupNet,
  starts: readonly (number | undefined)[],
  wish: BoundsWish,
): Bounds {
  const count = net.members.length;
  const bounds = { soonest: new Float64Array(count), latest: new Float64Array(count) };
  net.members.forEach((index, local) => {
    const task = problem.tasks[index]!;
    const due =
      task.due === undefined || wish.late === undefined ? undefined : task.due + wish.late;
    const exact = task.fixed ?? due;
    bounds.soonest[local] = Math.max(exact ?? problem.from, task.release ?? problem.from);
    bounds.latest[local] = Math.min(
      exact ?? problem.to - task.minutes,
      task.latest ?? problem.to,
      wish.caps[local]!,
    );
  });
  boundByOthers(net, starts, bounds);
  spread(net, bounds);
  return bounds;
}

/** Leaves room for groups not placed yet, as far as the group's own bounds allow. */
export function heedHints(net: GroupNet, bounds: Bounds, late: number): void {
  net.hints.forEach((hint, local) => {
    const wanted = Math.max(bounds.soonest[local]!, hint + late);
    bounds.latest[local] = Math.min(bounds.latest[local]!, wanted);
  });
}

export function isOpen(bounds: Bounds): boolean {
  return bounds.soonest.every((soonest, local) => soonest <= bounds.latest[local]!);
}

function boundByOthers(
  net: GroupNet,
  starts: readonly (number | undefined)[],
  bounds: Bounds,
): void {
  for (const lag of net.outward) {
    const into = net.localOf.get(lag.to);
    const out = net.localOf.get(lag.from);
    const other = starts[into === undefined ? lag.to : lag.from];
    if (other === undefined) continue;
    if (into !== undefined) {
      bounds.soonest[into] = Math.max(bounds.soonest[into]!, other + lag.least);
      bounds.latest[into] = Math.min(bounds.latest[into]!, other + (lag.most ?? Infinity));
    } else if (out !== undefined) {
      bounds.latest[out] = Math.min(bounds.latest[out]!, other - lag.least);
      bounds.soonest[out] = Math.max(bounds.soonest[out]!, other - (lag.most ?? Infinity));
    }
  }
}

function spread(net: GroupNet, bounds: Bounds): void {
  const count = net.members.length;
  const soonest = Float64Array.from(bounds.soonest);
  const latest = Float64Array.from(bounds.latest);
  for (let i = 0; i < count; i += 1) {
    for (let j = 0; j < count; j += 1) {
      const apart = net.paths[i * count + j]!;
      bounds.soonest[j] = Math.max(bounds.soonest[j]!, soonest[i]! + apart);
      bounds.latest[i] = Math.min(bounds.latest[i]!, latest[j]! - apart);
    }
  }
}

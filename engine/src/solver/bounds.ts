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
  fillBounds(problem, net, starts, { ...wish, into: bounds });
  return bounds;
}

/** The same into arrays at hand. */
export function fillBounds(
  problem: Problem,
  net: GroupNet,
  starts: readonly (number | undefined)[],
  wish: BoundsWish & { readonly into: Bounds },
): void {
  const bounds = wish.into;
  for (let local = 0; local < net.members.length; local += 1) {
    const task = problem.tasks[net.members[local]!]!;
    const due =
      task.due === undefined || wish.late === undefined ? undefined : task.due + wish.late;
    const exact = task.fixed ?? due;
    bounds.soonest[local] = Math.max(exact ?? problem.from, task.release ?? problem.from);
    bounds.latest[local] = Math.min(
      exact ?? problem.to - task.minutes,
      task.latest ?? problem.to,
      wish.caps[local]!,
    );
  }
  boundByOthers(net, starts, bounds);
  spread(net, bounds);
}

/** Leaves room for groups not placed yet, as far as the group's own bounds allow. */
export function heedHints(net: GroupNet, bounds: Bounds, late: number): void {
  for (let local = 0; local < net.count; local += 1) {
    const wanted = Math.max(bounds.soonest[local]!, net.hints[local]! + late);
    bounds.latest[local] = Math.min(bounds.latest[local]!, wanted);
  }
}

export function isOpen({ soonest, latest }: Bounds): boolean {
  for (let local = 0; local < soonest.length; local += 1) {
    if (soonest[local]! > latest[local]!) return false;
  }
  return true;
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

/** In place: the paths are closed, so that a bound already tightened tightens no other further. */
function spread({ inward, onward, count }: GroupNet, { soonest, latest }: Bounds): void {
  for (let local = 0; local < count; local += 1) {
    const before = inward[local]!;
    for (let at = 0; at < before.tasks.length; at += 1) {
      const least = soonest[before.tasks[at]!]! + before.leasts[at]!;
      if (least > soonest[local]!) soonest[local] = least;
    }
    const after = onward[local]!;
    for (let at = 0; at < after.tasks.length; at += 1) {
      const most = latest[after.tasks[at]!]! - after.leasts[at]!;
      if (most < latest[local]!) latest[local] = most;
    }
  }
}

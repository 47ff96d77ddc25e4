// One pass of serial generation, backwards: task after task in a given order, each as late as there
// is room. A pass forwards is a pass backwards over the mirrored net.
// Weakness: greedy; the order decides what comes out, and finding none proves nothing.

import { APART } from './temporal.ts';

/** How far apart the tasks of one net must be. */
export interface Net {
  readonly count: number;
  /** Least start(j) - start(i) at [i * count + j]; APART where nothing binds. */
  readonly paths: Float64Array;
  /** For each task i: those j with a path from i, and how long. */
  readonly onward: readonly Reach[];
  /** For each task j: those i with a path to j, and how long. */
  readonly inward: readonly Reach[];
}

interface Reach {
  readonly tasks: Int32Array;
  readonly leasts: Float64Array;
}

export function netOf(count: number, paths: Float64Array): Net {
  const reach = (task: number, step: (other: number) => number): Reach => {
    const others = Array.from({ length: count }, (_, other) => other).filter(
      (other) => other !== task && paths[step(other)] !== APART,
    );
    return {
      tasks: Int32Array.from(others),
      leasts: Float64Array.from(others, (other) => paths[step(other)]!),
    };
  };
  const tasks = Array.from({ length: count }, (_, task) => task);
  return {
    count,
    paths,
    onward: tasks.map((task) => reach(task, (other) => task * count + other)),
    inward: tasks.map((task) => reach(task, (other) => other * count + task)),
  };
}

/** By local index: soonest and latest start; they only tighten. */
export interface Bounds {
  readonly soonest: Float64Array;
  readonly latest: Float64Array;
}

/** A task (local index) that must start earlier for another to fit, and by how much. */
export interface Pull {
  readonly local: number;
  readonly by: number;
}

export type Outcome = 'placed' | 'stuck' | Pull;

/** What the tasks share: hands, places, whatever runs out. */
export interface Room {
  /** Latest start that may do, a task to be pulled out of the way first, or no way at all. */
  startFor(local: number, bounds: Bounds, floor: number): number | 'stuck' | Pull;
  stand(local: number, start: number): void;
  /** Where it stands; undefined (or NaN) where it does not yet. */
  startOf(local: number): number | undefined;
}

/**
 * Places all in this order; stops at the first that is stuck or needs another pulled earlier.
 *
 * @param bounds  tightened as tasks are placed
 * @param floors  no start below these is looked for, by local index
 */
export function serialPass(
  net: Net,
  bounds: Bounds,
  given: {
    readonly order: ArrayLike<number>;
    readonly floors: Float64Array;
    readonly room: Room;
  },
): Outcome {
  const { order, floors, room } = given;
  for (let at = 0; at < order.length; at += 1) {
    const local = order[at]!;
    const start = room.startFor(local, bounds, floors[local]!);
    if (typeof start !== 'number') return start;
    const short = bounds.soonest[local]! - start;
    if (short > 0) {
      const binding = bindingTask(net, room, { local, soonest: bounds.soonest[local]! });
      return binding === undefined ? 'stuck' : { local: binding, by: short };
    }
    room.stand(local, start);
    settle(net, bounds, local, start);
  }
  return 'placed';
}

/** Tightens all for one task that now stands. */
export function settle(net: Net, bounds: Bounds, local: number, start: number): void {
  const { soonest, latest } = bounds;
  const onward = net.onward[local]!;
  for (let at = 0; at < onward.tasks.length; at += 1) {
    const after = start + onward.leasts[at]!;
    const task = onward.tasks[at]!;
    if (after > soonest[task]!) soonest[task] = after;
  }
  const inward = net.inward[local]!;
  for (let at = 0; at < inward.tasks.length; at += 1) {
    const before = start - inward.leasts[at]!;
    const task = inward.tasks[at]!;
    if (before < latest[task]!) latest[task] = before;
  }
}

/** The placed task that keeps this one from being sooner. */
function bindingTask(
  { count, paths }: Net,
  room: Room,
  of: { readonly local: number; readonly soonest: number },
): number | undefined {
  for (let other = 0; other < count; other += 1) {
    const start = room.startOf(other);
    if (start === undefined || other === of.local) continue;
    if (start + paths[other * count + of.local]! === of.soonest) return other;
  }
  return undefined;
}

/** For each task, those that come after it: they are placed first. Cached by whoever has the net. */
export function followersIn({ count, paths }: Net): readonly Int32Array[] {
  return Array.from({ length: count }, (_, before) => {
    const after: number[] = [];
    for (let other = 0; other < count; other += 1) {
      const apart = paths[before * count + other]!;
      const isAfter = apart !== APART && apart >= 0 && other !== before;
      // Two that must start together follow in the order of their numbers.
      if (isAfter && (paths[other * count + before]! < 0 || other > before)) after.push(other);
    }
    return Int32Array.from(after);
  });
}

/** Backwards: among tasks whose followers all stand, the one with the largest key is next. */
export function orderByKeys(
  keys: Float64Array,
  net: { readonly followers: readonly Int32Array[]; readonly leaders: readonly Int32Array[] },
): Int32Array {
  const { followers, leaders } = net;
  const count = followers.length;
  const order = new Int32Array(count);
  const waits = Int32Array.from(followers, (after) => after.length);
  const open: number[] = [];
  for (let task = 0; task < count; task += 1) if (waits[task] === 0) open.push(task);
  for (let at = 0; at < count; at += 1) {
    let best = 0;
    for (let place = 1; place < open.length; place += 1) {
      if (keys[open[place]!]! > keys[open[best]!]!) best = place;
    }
    const task = open[best]!;
    open[best] = open.at(-1)!;
    open.pop();
    order[at] = task;
    for (const leader of leaders[task]!) {
      waits[leader] = waits[leader]! - 1;
      if (waits[leader] === 0) open.push(leader);
    }
  }
  return order;
}

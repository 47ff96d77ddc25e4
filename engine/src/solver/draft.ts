// What is written while a plan is being made, and how a group is taken off again.

import { Board } from './board.ts';
import type { GroupNet } from './net.ts';
import type { Batch, Broken, Plan, Problem, Upkeep } from './problem.ts';
import type { Bounds } from './serial.ts';
import type { SupplyGuide } from './supply.ts';

export interface Draft {
  readonly problem: Problem;
  readonly nets: readonly GroupNet[];
  /** Tasks that must be done by the same unit as this one. */
  readonly followers: ReadonlyMap<number, readonly number[]>;
  /** By group: what a pass writes on, so that it need not be made anew. */
  readonly scratch: readonly Scratch[];
  readonly board: Board;
  readonly starts: (number | undefined)[];
  readonly crews: (readonly number[])[];
  readonly lateBy: number[];
  readonly left: number[];
  readonly broken: Broken[];
  batches: readonly Batch[];
  upkeeps: readonly Upkeep[];
  /** Uses that were given up as not to be supplied; declared, and not tried again. */
  readonly unsupplied: Set<number>;
  /** What a search wants tried; absent where groups are simply placed in order. */
  guide?: Guide;
  /** Placings of one group tried so far: what work is counted in. */
  attempts: number;
}

export interface Scratch {
  readonly bounds: Bounds;
  readonly caps: Float64Array;
  readonly floors: Float64Array;
  readonly room: Float64Array;
  readonly order: Int32Array;
}

export interface Guide extends SupplyGuide {
  /** By task: starts no later than this, unless it has to. */
  readonly caps: Float64Array;
  /** By task: the unit that takes its first seat, if it may; -1: whoever is free. */
  readonly units: Int32Array;
}

export function newDraft(problem: Problem, nets: readonly GroupNet[]): Draft {
  return {
    problem,
    nets,
    followers: followersIn(problem),
    scratch: nets.map(({ count }) => scratchFor(count)),
    board: new Board(problem),
    starts: problem.tasks.map(() => undefined),
    crews: problem.tasks.map(() => []),
    lateBy: problem.groups.map(() => 0),
    left: [],
    broken: [],
    batches: [],
    upkeeps: [],
    unsupplied: new Set(),
    attempts: 0,
  };
}

const scratchFor = (count: number): Scratch => ({
  bounds: { soonest: new Float64Array(count), latest: new Float64Array(count) },
  caps: new Float64Array(count),
  floors: new Float64Array(count),
  room: new Float64Array(count),
  order: new Int32Array(count),
});

export function planFrom(draft: Draft): Plan {
  const { starts, crews, batches, upkeeps, lateBy, left, broken } = draft;
  return { starts, crews, batches, upkeeps, lateBy, left, broken };
}

/** Starts of the tasks that are to be supplied. */
export function suppliedStarts(draft: Draft): readonly (number | undefined)[] {
  if (draft.unsupplied.size === 0) return draft.starts;
  return draft.starts.map((start, task) => (draft.unsupplied.has(task) ? undefined : start));
}

/** Takes every placed task of a group off the board. */
export function unplace(draft: Draft, group: number): void {
  const net = draft.nets[group]!;
  for (const hold of net.holds) {
    const from = draft.starts[hold.first];
    const to = draft.starts[hold.last];
    if (from === undefined || to === undefined) continue;
    const end = to + draft.problem.tasks[hold.last]!.minutes;
    draft.board.markPool(hold.pool, from, end, -1);
  }
  for (const index of net.members) {
    const start = draft.starts[index];
    if (start === undefined) continue;
    draft.board.mark(draft.problem.tasks[index]!, draft.crews[index]!, start, -1);
    draft.starts[index] = undefined;
    draft.crews[index] = [];
  }
}

function followersIn(problem: Problem): ReadonlyMap<number, readonly number[]> {
  const followers = new Map<number, number[]>();
  problem.tasks.forEach((task, index) => {
    if (task.sameAs === undefined) return;
    followers.set(task.sameAs, [...(followers.get(task.sameAs) ?? []), index]);
  });
  return followers;
}

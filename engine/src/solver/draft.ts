// What is written while a plan is being made, and how a group is taken off again.

import { Board } from './board.ts';
import type { GroupNet } from './net.ts';
import type { Batch, Broken, Plan, Problem, Upkeep } from './problem.ts';

export interface Draft {
  readonly problem: Problem;
  readonly nets: readonly GroupNet[];
  /** Tasks that must be done by the same unit as this one. */
  readonly followers: ReadonlyMap<number, readonly number[]>;
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
  /** Placings of one group tried so far: what work is counted in. */
  attempts: number;
}

export function newDraft(problem: Problem, nets: readonly GroupNet[]): Draft {
  return {
    problem,
    nets,
    followers: followersIn(problem),
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

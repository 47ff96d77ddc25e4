// Can this group be placed, this late, beside what already stands? Backwards, task by task, each
// as late as there is room; on a broken lag the binding task is pulled earlier and all is redone.

import { NOWHERE } from './board.ts';
import { fillBounds, heedHints, isOpen } from './bounds.ts';
import { type Draft, type Scratch, suppliedStarts, unplace } from './draft.ts';
import type { GroupNet } from './net.ts';
import type { Hold, Seat, Task } from './problem.ts';
import { type Bounds, type Outcome, type Pull, type Room, serialPass } from './serial.ts';
import { markBatches, supplyStores } from './supply.ts';

export interface PlaceWish {
  readonly late: number;
  /** Every task this much earlier than it could be, where there is room. */
  readonly offset: number;
  /** Times that a task may be pulled earlier and all be redone. */
  readonly pulls: number;
}

/** What is short of supply is pulled this much at a time [min]; tuned for speed, not for truth. */
const SHORT_PULL = 3;

/** True when the group stands, stores supplied; false leaves the draft as it was. */
export function placeGroup(draft: Draft, group: number, wish: PlaceWish): boolean {
  return tryPlacing(draft, group, wish, 'latest') || tryPlacing(draft, group, wish, 'tightest');
}

/** 'latest' works back from the end; 'tightest' gives what has least room the first choice. */
type Order = 'latest' | 'tightest';

function tryPlacing(draft: Draft, group: number, wish: PlaceWish, by: Order): boolean {
  const net = draft.nets[group]!;
  const scratch = draft.scratch[group]!;
  const { bounds, caps } = scratch;
  caps.fill(Number.POSITIVE_INFINITY);
  for (let pulls = 0; pulls <= wish.pulls; pulls += 1) {
    fillBounds(draft.problem, net, draft.starts, { late: wish.late, caps, into: bounds });
    const isLost = !draft.board.isOvertime && !isInHours(net, bounds);
    if (!isOpen(bounds) || isLost) return false;
    draft.attempts += 1;
    const attempt = attemptGroup(draft, net, scratch, { ...wish, by });
    const outcome = attempt === 'placed' ? resupply(draft, net) : attempt;
    if (outcome === 'placed') return true;
    const pulled = outcome === 'stuck' ? undefined : draft.starts[net.members[outcome.local]!];
    unplace(draft, group);
    if (outcome === 'stuck' || pulled === undefined) return false;
    caps[outcome.local] = pulled - outcome.by;
  }
  return false;
}

function isInHours(net: GroupNet, { soonest }: Bounds): boolean {
  for (let local = 0; local < net.count; local += 1) {
    if (soonest[local]! > net.hours[local]!) return false;
  }
  return true;
}

function attemptGroup(
  draft: Draft,
  net: GroupNet,
  { bounds, floors, order, room }: Scratch,
  wish: PlaceWish & { readonly by: Order },
): Outcome {
  floors.set(bounds.soonest);
  const isTightest = wish.by === 'tightest';
  for (let local = 0; local < net.count; local += 1) {
    room[local] = isTightest ? bounds.latest[local]! - bounds.soonest[local]! : 0;
  }
  heedHints(net, bounds, wish.late);
  holdBack(draft, net, bounds, wish.offset);
  sortInto(order, room, bounds.latest);
  return serialPass(net, bounds, { order, floors, room: roomOn(draft, net) });
}

/** Least room first, then the latest, then the last of the list. */
function sortInto(order: Int32Array, room: Float64Array, latest: Float64Array): void {
  for (let local = 0; local < order.length; local += 1) {
    let at = local;
    for (; at > 0; at -= 1) {
      const other = order[at - 1]!;
      const isBefore =
        room[other]! - room[local]! || latest[local]! - latest[other]! || local - other;
      if (isBefore <= 0) break;
      order[at] = other;
    }
    order[at] = local;
  }
}

/** The board as what a pass fills: hands, pools, holds. */
function roomOn(draft: Draft, net: GroupNet): Room {
  return {
    startFor: (local, bounds, floor) => startFor(draft, net, { bounds, local, floor }),
    stand: (local, start) => {
      const index = net.members[local]!;
      const task = draft.problem.tasks[index]!;
      const crew = draft.board.crewAt(task, seatsOf(draft, index, task), start) ?? [];
      stand(draft, net, index, { start, crew });
    },
    startOf: (local) => draft.starts[net.members[local]!],
  };
}

function holdBack(draft: Draft, net: GroupNet, bounds: Bounds, offset: number): void {
  const { guide } = draft;
  if (offset === 0 && guide === undefined) return;
  for (let local = 0; local < net.count; local += 1) {
    const index = net.members[local]!;
    const task = draft.problem.tasks[index]!;
    if (task.due !== undefined || task.fixed !== undefined) continue;
    const cap = guide?.caps[index] ?? Number.POSITIVE_INFINITY;
    const wanted = Math.min(cap, bounds.latest[local]! - offset);
    bounds.latest[local] = Math.max(bounds.soonest[local]!, wanted);
  }
}

function startFor(
  draft: Draft,
  net: GroupNet,
  at: { readonly bounds: Bounds; readonly local: number; readonly floor: number },
): number | 'stuck' | Pull {
  const { bounds, local, floor } = at;
  const index = net.members[local]!;
  const task = draft.problem.tasks[index]!;
  const crew = seatsOf(draft, index, task);
  const isHeldBack = draft.guide !== undefined && draft.guide.caps[index]! < Infinity;
  const aimed = isHeldBack ? undefined : aimOf(net, bounds, task, local);
  if (aimed !== undefined && fitsAt(draft, net, { index, crew, start: aimed })) return aimed;
  let ceiling = bounds.latest[local]!;
  while (ceiling >= floor) {
    const start = draft.board.latestFit(task, crew, { floor, ceiling });
    if (start === NOWHERE) return 'stuck';
    const blocked = firstBlocked(draft, net, index, start);
    if (blocked === undefined) return start;
    if ('pull' in blocked) return blocked.pull;
    ceiling = Math.min(blocked.ceiling, start - 1);
  }
  return 'stuck';
}

/** Where it is liked best, counted from the latest that the other task can still be. */
function aimOf(net: GroupNet, bounds: Bounds, task: Task, local: number): number | undefined {
  const from = task.aim === undefined ? undefined : net.localOf.get(task.aim.from);
  if (task.aim === undefined || from === undefined) return undefined;
  const start = bounds.latest[from]! + task.aim.minutes;
  return bounds.soonest[local]! <= start && start <= bounds.latest[local]! ? start : undefined;
}

function fitsAt(
  draft: Draft,
  net: GroupNet,
  at: { readonly index: number; readonly crew: readonly Seat[]; readonly start: number },
): boolean {
  const { index, crew, start } = at;
  const bounds = { floor: start, ceiling: start };
  const isFree = draft.board.latestFit(draft.problem.tasks[index]!, crew, bounds) === start;
  return isFree && firstBlocked(draft, net, index, start) === undefined;
}

/** Writes a task and the holds that are then whole into the draft. */
export function stand(
  draft: Draft,
  net: GroupNet,
  index: number,
  where: { readonly start: number; readonly crew: readonly number[] },
): void {
  draft.starts[index] = where.start;
  draft.crews[index] = where.crew;
  draft.board.mark(draft.problem.tasks[index]!, where.crew, where.start, 1);
  for (const hold of net.holds) {
    if (hold.first === index || hold.last === index) markHold(draft, hold, 1);
  }
}

/** Marks a hold whose two ends stand; nothing else. */
export function markHold(draft: Draft, hold: Hold, sign: 1 | -1): void {
  const from = draft.starts[hold.first];
  const to = draft.starts[hold.last];
  if (from === undefined || to === undefined) return;
  const end = to + draft.problem.tasks[hold.last]!.minutes;
  draft.board.markPool(hold.pool, from, end, sign);
}

export function seatsOf(draft: Draft, index: number, task: Task): readonly Seat[] {
  const named = task.sameAs === undefined ? undefined : draft.crews[task.sameAs]?.[0];
  const followers = draft.followers.get(index) ?? [];
  const follower = followers.find((each) => draft.crews[each]?.[0] !== undefined);
  const bound = named ?? (follower === undefined ? undefined : draft.crews[follower]![0]);
  const unit = bound ?? draft.guide?.units[index] ?? -1;
  if (unit < 0 || task.seats.length === 0) return task.seats;
  if (bound === undefined && !task.seats[0]!.includes(unit)) return task.seats;
  return [[unit], ...task.seats.slice(1)];
}

type Blocked = { readonly ceiling: number } | { readonly pull: Pull } | undefined;

function firstBlocked(draft: Draft, net: GroupNet, index: number, start: number): Blocked {
  for (const hold of net.holds) {
    if (hold.first !== index && hold.last !== index) continue;
    const blocked = blockedHold(draft, net, hold, { index, start });
    if (blocked !== undefined) return blocked;
  }
  return undefined;
}

function blockedHold(
  draft: Draft,
  net: GroupNet,
  hold: Hold,
  at: { readonly index: number; readonly start: number },
): Blocked {
  const lastMinutes = draft.problem.tasks[hold.last]!.minutes;
  const last = at.index === hold.last ? at.start : draft.starts[hold.last];
  const first = at.index === hold.first ? at.start : draft.starts[hold.first];
  if (last === undefined) return undefined;
  const from = first ?? last - leastHeld(net, hold);
  const block = draft.board.poolBlock(hold.pool, from, last + lastMinutes);
  if (block === undefined) return undefined;
  const blockStart = draft.board.blockStart(hold.pool, block);
  if (at.index === hold.last) return { ceiling: blockStart - lastMinutes };
  const local = net.localOf.get(hold.last);
  if (local === undefined) return { ceiling: Number.NEGATIVE_INFINITY };
  return { pull: { local, by: Math.max(1, last + lastMinutes - blockStart) } };
}

function leastHeld(net: GroupNet, hold: Hold): number {
  const first = net.localOf.get(hold.first);
  const last = net.localOf.get(hold.last);
  if (first === undefined || last === undefined) return 0;
  return Math.max(0, net.paths[first * net.members.length + last]!);
}

/** All stores again with this group's uses; old batches come back if it can't be done. */
function resupply(draft: Draft, net: GroupNet): Outcome {
  if (draft.problem.stores.length === 0) return 'placed';
  markBatches(draft.board, draft.batches, -1);
  const supply = supplyStores(draft.board, suppliedStarts(draft), draft.guide);
  if ('batches' in supply) {
    draft.batches = supply.batches;
    return 'placed';
  }
  markBatches(draft.board, draft.batches, 1);
  const local = net.localOf.get(supply.shortOf) ?? lastUseBefore(draft, net, supply.shortOf);
  return local === undefined ? 'stuck' : { local, by: SHORT_PULL };
}

/** The group's own use that competes with the task that went short. */
function lastUseBefore(draft: Draft, net: GroupNet, task: number): number | undefined {
  const limit = draft.starts[task] ?? Number.POSITIVE_INFINITY;
  let best: { local: number; at: number } | undefined;
  for (const use of draft.problem.stores.flatMap((store) => store.uses)) {
    const local = net.localOf.get(use.task);
    const at = draft.starts[use.task];
    if (local === undefined || at === undefined) continue;
    const isNearer = best === undefined || Math.abs(at - limit) < Math.abs(best.at - limit);
    if (isNearer) best = { local, at };
  }
  return best?.local;
}

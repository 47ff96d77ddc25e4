// Where does each task go, if groups are placed one after the other in this order? Backwards: every
// task as late as it can be. A group that can't be in time is tried later and later, then forced.
// Weakness: greedy; a failure here proves nothing (temporal.ts alone proves).

import { NOWHERE } from './board.ts';
import { groupBounds, isOpen } from './bounds.ts';
import { costOfTrouble } from './cost.ts';
import { type Draft, newDraft, planFrom, unplace } from './draft.ts';
import { forceGroup } from './force.ts';
import { type GroupNet, groupNets } from './net.ts';
import { type PlaceWish, placeGroup, seatsOf, stand } from './place.ts';
import type { Batch, Plan, Problem } from './problem.ts';
import { settle } from './serial.ts';
import { markBatches } from './supply.ts';
import { placeUpkeeps } from './upkeep.ts';

export interface DecodeWish {
  /** Indices of all groups. */
  readonly order: readonly number[];
  /** Pull the group this much earlier than it could be [min]; by group. */
  readonly offsets: readonly number[];
}

export interface Decoded {
  readonly plan: Plan;
  /** Groups that came out late or had to be forced; if none, those left: worth placing sooner. */
  readonly squeaky: readonly number[];
  /** Placings of one group that it took; at best one a group. */
  readonly attempts: number;
}

/** A group that could not be in time where its turn came. */
export interface Missed {
  readonly missed: number;
  /** Groups that stood by then. */
  readonly placed: number;
  readonly attempts: number;
}

/** A plan for this order, with what is late or broken declared; given up past `most`. */
export function decode(
  problem: Problem,
  wish: DecodeWish,
  told: {
    readonly nets?: readonly GroupNet[];
    readonly most?: { readonly cost: number; readonly attempts: number };
  } = {},
): Decoded | Missed {
  const { nets = groupNets(problem), most } = told;
  const draft = newDraft(problem, nets);
  const squeaky: number[] = [];
  for (const [placed, group] of lateGroups(problem, wish).entries()) {
    if (!placeInTime(draft, group, wish.offsets[group] ?? 0)) squeaky.push(group);
    const isOver =
      most !== undefined && (lateCost(draft) > most.cost || draft.attempts > most.attempts);
    if (isOver) return { missed: group, placed, attempts: draft.attempts };
  }
  return finish(draft, wish, squeaky);
}

/** What the plan will cost at least, by what is late and broken so far. */
const lateCost = ({ problem, lateBy, broken }: Draft) => costOfTrouble(problem, { lateBy, broken });

/**
 * The same, given up at the first group that can not be as little late as `allowed` for it: a small
 * part of the work, so that many orders can be tried.
 */
export function decodeOnTime(
  problem: Problem,
  wish: DecodeWish & { readonly allowed: readonly number[] },
  nets: readonly GroupNet[],
): Decoded | Missed {
  const draft = newDraft(problem, nets);
  const order = lateGroups(problem, wish);
  for (const [placed, group] of order.entries()) {
    const offset = wish.offsets[group] ?? 0;
    const isIn = isFollower(problem, group)
      ? placeInTime(draft, group, offset) || draft.lateBy[group]! > 0
      : placeStrictly(draft, group, { offset, allowed: wish.allowed[group]! });
    if (!isIn) return { missed: group, placed, attempts: draft.attempts };
  }
  return finish(draft, wish, []);
}

const lateGroups = (problem: Problem, wish: DecodeWish) =>
  wish.order.filter((group) => problem.groups[group]!.towards === 'late');

/** Work that may be left, or whose lateness only follows from others. */
const isFollower = (problem: Problem, group: number) =>
  problem.groups[group]!.mayBeLeft || problem.groups[group]!.latePrice <= FOLLOWS;
const FOLLOWS = 1;

function placeStrictly(
  draft: Draft,
  group: number,
  wish: { readonly offset: number; readonly allowed: number },
): boolean {
  const least = leastLateness(draft, group);
  const rest = wish.allowed - least;
  const steps = rest < 1 ? [0] : LATENESS_STEPS;
  const lates = steps.map((step) => least + Math.ceil(rest * step));
  for (const late of rest < 0 ? [] : lates) {
    const pulls = wish.allowed > 0 ? PULLS_EASED : PULLS_FIRST;
    if (!placeGroup(draft, group, { late, offset: wish.offset, pulls })) continue;
    draft.lateBy[group] = late;
    return true;
  }
  return false;
}

/** Minutes that each group is late by its own lags and releases, whatever the order. */
export function leastLatenesses(problem: Problem, nets: readonly GroupNet[]): readonly number[] {
  const draft = newDraft(problem, nets);
  return problem.groups.map((_, group) => leastLateness(draft, group));
}

function finish(draft: Draft, wish: DecodeWish, late: readonly number[]): Decoded {
  const squeaky = late.length === 0 ? [...draft.left] : late;
  draft.board.isOvertime = false;
  draft.upkeeps = placeUpkeeps(draft.board, draft.starts, draft.batches);
  for (const group of wish.order) {
    if (draft.problem.groups[group]!.towards === 'early') placeSoon(draft, group);
  }
  declareOvertime(draft);
  return { plan: planFrom(draft), squeaky, attempts: draft.attempts };
}

/** What can wait placed beside what stands, as a plan; the draft is left as it was. */
export function finishedPlan(draft: Draft): Plan {
  const { left, broken, upkeeps } = draft;
  const before = { left: left.length, broken: broken.length };
  const early = draft.problem.groups.flatMap((group, at) =>
    group.towards === 'early' ? [at] : [],
  );
  draft.upkeeps = placeUpkeeps(draft.board, draft.starts, draft.batches);
  for (const group of early) placeSoon(draft, group);
  const plan = copyOf(planFrom(draft));
  for (const group of early) unplace(draft, group);
  for (const { store, start, crew } of draft.upkeeps) {
    const { minutes, seats } = draft.problem.stores[store]!.upkeep!;
    draft.board.mark({ minutes, seats, takes: [], team: 'upkeep' }, crew, start, -1);
  }
  draft.upkeeps = upkeeps;
  left.length = before.left;
  broken.length = before.broken;
  return plan;
}

const copyOf = (plan: Plan): Plan => ({
  ...plan,
  starts: [...plan.starts],
  crews: [...plan.crews],
  lateBy: [...plan.lateBy],
  left: [...plan.left],
  broken: [...plan.broken],
});

/** Work outside hours, once for each task, and for a batch at its first use. */
function declareOvertime(draft: Draft): void {
  const { board, problem } = draft;
  const isOver = (crew: readonly number[], start: number, minutes: number) =>
    minutes > 0 && crew.some((unit) => !board.isThere(unit, start, minutes));
  problem.tasks.forEach((task, index) => {
    const start = draft.starts[index];
    if (start === undefined || !isOver(draft.crews[index]!, start, task.minutes)) return;
    draft.broken.push({ rule: 'hours', task: index });
  });
  for (const batch of draft.batches) {
    const store = problem.stores[batch.store]!;
    const first = batch.uses[0];
    if (first === undefined || !isOver(batch.crew, batch.start, store.minutes)) continue;
    draft.broken.push({ rule: 'hours', task: store.uses[first.use]!.task });
  }
}

/** Minutes late that are tried in turn; the gap before the first that fits is then searched. */
const LATENESS_TRIED = [0, 1, 2, 3, 5, 7, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 360, 600];

/** Pulls allowed: many to be on time, few for each lateness that is tried after. Tuned for speed. */
const PULLS_FIRST = 40;
const PULLS_LATER = 8;
const PULLS_EASED = 12;
/** Shares of what is allowed that are tried in turn. */
const LATENESS_STEPS = [0, 0.2, 0.5, 0.75, 1];

/** False if it came out late or was forced. */
function placeInTime(draft: Draft, group: number, offset: number): boolean {
  const late = leastLatePlacing(draft, group, offset);
  if (late !== undefined) return late === 0;
  if (draft.problem.groups[group]!.mayBeLeft) {
    draft.left.push(group);
    return true;
  }
  draft.board.isOvertime = true;
  if (leastLatePlacing(draft, group, offset) !== undefined) return false;
  forceGroup(draft, group, leastLateness(draft, group));
  return false;
}

/** Places the group as little late as can be found; undefined leaves it off. */
function leastLatePlacing(draft: Draft, group: number, offset: number): number | undefined {
  const soonest = leastLateness(draft, group);
  const before = draft.batches;
  let failed = soonest - 1;
  for (const more of draft.problem.groups[group]!.mayBeLeft ? [0] : LATENESS_TRIED) {
    const late = soonest + more;
    const pulls = more === 0 ? PULLS_FIRST : PULLS_LATER;
    if (placeGroup(draft, group, { late, offset, pulls })) {
      const least = narrow(draft, group, { failed, late, offset, pulls, before });
      draft.lateBy[group] = least ?? 0;
      return least;
    }
    failed = late;
  }
  return undefined;
}

/** Least lateness that lags, releases and what is already placed leave open. */
function leastLateness(draft: Draft, group: number): number {
  const net = draft.nets[group]!;
  const caps = new Float64Array(net.members.length).fill(Number.POSITIVE_INFINITY);
  const bounds = groupBounds(draft.problem, net, draft.starts, { late: undefined, caps });
  let late = 0;
  net.members.forEach((index, local) => {
    const due = draft.problem.tasks[index]!.due;
    if (due !== undefined) late = Math.max(late, bounds.soonest[local]! - due);
  });
  return late;
}

/** Looks for less between the last failure and what fitted; lateness is not monotone. */
function narrow(
  draft: Draft,
  group: number,
  found: PlaceWish & { readonly failed: number; readonly before: readonly Batch[] },
): number | undefined {
  const gap = found.late - found.failed - 1;
  if (gap < 1) return found.late;
  const step = Math.ceil(gap / 8);
  takeBack(draft, group, found.before);
  for (let late = found.failed + 1; late < found.late; late += step) {
    if (placeGroup(draft, group, { ...found, late })) return late;
  }
  // Who takes what may differ now: if it no longer fits, it is forced as any other.
  return placeGroup(draft, group, found) ? found.late : undefined;
}

/** The draft as it was before the group was placed. */
function takeBack(draft: Draft, group: number, before: readonly Batch[]): void {
  unplace(draft, group);
  markBatches(draft.board, draft.batches, -1);
  markBatches(draft.board, before, 1);
  draft.batches = before;
}

/** Forward: as soon as what it waits for is done. */
function placeSoon(draft: Draft, group: number): void {
  const net = draft.nets[group]!;
  const caps = new Float64Array(net.members.length).fill(Number.POSITIVE_INFINITY);
  const bounds = groupBounds(draft.problem, net, draft.starts, { late: 0, caps });
  const order = net.members
    .map((_, local) => local)
    .sort((a, b) => bounds.soonest[a]! - bounds.soonest[b]! || a - b);
  for (const local of isOpen(bounds) ? order : []) {
    const index = net.members[local]!;
    const task = draft.problem.tasks[index]!;
    const seats = seatsOf(draft, index, task);
    const room = { floor: bounds.soonest[local]!, ceiling: bounds.latest[local]! };
    const start = draft.board.soonestFit(task, seats, room);
    if (start === NOWHERE) break;
    const crew = draft.board.crewAt(task, seats, start) ?? [];
    stand(draft, net, index, { start, crew });
    settle(net, bounds, local, start);
  }
  if (net.members.every((index) => draft.starts[index] !== undefined)) return;
  unplace(draft, group);
  if (draft.problem.groups[group]!.mayBeLeft) draft.left.push(group);
  else forceGroup(draft, group, 0);
}

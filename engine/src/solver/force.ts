// What if a group can't be placed at all? It is placed all the same, where lags put it, with whoever
// is free, and every constraint that this breaks is declared. Nothing is dropped in silence.

import { NOWHERE } from './board.ts';
import { groupBounds } from './bounds.ts';
import { type Draft, suppliedStarts } from './draft.ts';
import type { GroupNet } from './net.ts';
import { seatsOf, stand } from './place.ts';
import type { Broken } from './problem.ts';
import { type Bounds, settle } from './serial.ts';
import { markBatches, supplyStores } from './supply.ts';

/** Places the group by its lags alone; declares what is not kept. */
export function forceGroup(draft: Draft, group: number, late: number): void {
  const net = draft.nets[group]!;
  const caps = new Float64Array(net.members.length).fill(Number.POSITIVE_INFINITY);
  const bounds = groupBounds(draft.problem, net, draft.starts, { late, caps });
  draft.lateBy[group] = late;
  const order = net.members
    .map((_, local) => local)
    .sort(
      (a, b) => rank(draft, net, a) - rank(draft, net, b) || bounds.latest[b]! - bounds.latest[a]!,
    );
  for (const local of order) forceTask(draft, net, bounds, local);
  for (const local of order) declareLags(draft, net, local);
  forceSupply(draft);
}

/** Pins and due times first: they are never moved. */
function rank(draft: Draft, net: GroupNet, local: number): number {
  const task = draft.problem.tasks[net.members[local]!]!;
  if (task.fixed !== undefined) return 0;
  return task.due !== undefined ? 1 : 2;
}

function forceTask(draft: Draft, net: GroupNet, bounds: Bounds, local: number): void {
  const index = net.members[local]!;
  const task = draft.problem.tasks[index]!;
  const seats = seatsOf(draft, index, task);
  const soonest = Math.max(bounds.soonest[local]!, draft.problem.from);
  const wanted = Math.max(bounds.latest[local]!, soonest);
  const ceiling = task.fixed ?? Math.min(wanted, draft.problem.to - task.minutes);
  const floor = Math.min(task.fixed ?? soonest, ceiling);
  const found = draft.board.latestFit(task, seats, { floor, ceiling });
  const start = found === NOWHERE ? ceiling : found;
  const crew = draft.board.crewAt(task, seats, start) ?? partCrew(draft, index, start);
  for (const rule of brokenAt(draft, net, { index, start, crew })) {
    draft.broken.push({ rule, task: index });
  }
  stand(draft, net, index, { start, crew });
  settle(net, bounds, local, start);
}

/** As many different free units as there are; a seat may stay empty. */
function partCrew(draft: Draft, index: number, start: number): readonly number[] {
  const task = draft.problem.tasks[index]!;
  const taken: number[] = [];
  for (const seat of task.seats) {
    const open = seat.filter((unit) => !taken.includes(unit));
    const one = draft.board.crewAt(task, [open], start);
    if (one !== undefined) taken.push(...one);
  }
  return taken;
}

function brokenAt(
  draft: Draft,
  net: GroupNet,
  at: { readonly index: number; readonly start: number; readonly crew: readonly number[] },
): readonly Broken['rule'][] {
  const task = draft.problem.tasks[at.index]!;
  const broken: Broken['rule'][] = [];
  if (at.crew.length < task.seats.length) broken.push('unit');
  if (draft.board.latestFit({ ...task, seats: [] }, [], exactly(at.start)) !== at.start) {
    broken.push('pool');
  }
  const isHeld = net.holds.some((hold) => {
    const first = hold.first === at.index ? at.start : draft.starts[hold.first];
    const last = hold.last === at.index ? at.start : draft.starts[hold.last];
    if (hold.first !== at.index && hold.last !== at.index) return false;
    if (first === undefined || last === undefined) return false;
    return !draft.board.isPoolFree(
      hold.pool,
      first,
      last + draft.problem.tasks[hold.last]!.minutes,
    );
  });
  if (isHeld) broken.push('hold');
  if (at.start < (task.release ?? at.start) || (task.latest ?? at.start) < at.start) {
    broken.push('time');
  }
  return broken;
}

const exactly = (start: number) => ({ floor: start, ceiling: start });

function declareLags(draft: Draft, net: GroupNet, local: number): void {
  const index = net.members[local]!;
  const isKept = draft.problem.lags.every((lag) => {
    if (lag.from !== index && lag.to !== index) return true;
    const from = draft.starts[lag.from];
    const to = draft.starts[lag.to];
    if (from === undefined || to === undefined) return true;
    return lag.least <= to - from && to - from <= (lag.most ?? Number.POSITIVE_INFINITY);
  });
  if (!isKept) draft.broken.push({ rule: 'lag', task: index });
}

/** Uses that can't be supplied are declared one by one; the rest is still supplied. */
function forceSupply(draft: Draft): void {
  markBatches(draft.board, draft.batches, -1);
  const uses = draft.problem.stores.reduce((sum, store) => sum + store.uses.length, 0);
  for (let tries = 0; tries <= uses; tries += 1) {
    const supply = supplyStores(draft.board, suppliedStarts(draft));
    if ('batches' in supply) {
      draft.batches = supply.batches;
      return;
    }
    draft.unsupplied.add(supply.shortOf);
    draft.broken.push({ rule: 'store', task: supply.shortOf });
  }
  draft.batches = [];
}

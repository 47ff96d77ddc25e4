// When must each batch be made so that no use goes short and nothing is past its life?
// Latest first: a batch takes in the uses just before the last one it serves, as many as it holds.

import { type Board, NOWHERE, type Work } from './board.ts';
import type { Batch, Store } from './problem.ts';

export type Supply =
  | { readonly batches: readonly Batch[] }
  /** Task that can't be supplied where it stands. */
  | { readonly shortOf: number };

/** What a search wants tried first; anything may come out all the same. */
export interface SupplyGuide {
  /** Batches that stay as they are. */
  readonly kept: readonly Batch[];
  /** The ease that is tried before the others. */
  readonly reach: number;
  readonly isOld: boolean;
  readonly isSplit: boolean;
  /** By store and use: 1 where the use begins a batch of its own. */
  readonly apart: readonly Uint8Array[];
  /** By store and use: the unit that makes the batch whose first use it is; -1: whoever is free. */
  readonly makers: readonly Int32Array[];
}

interface Draw {
  readonly use: number;
  readonly task: number;
  readonly at: number;
  readonly amount: number;
  readonly waitMost: number;
}

/** Batches for all uses placed so far, marked on the board; nothing is marked when short. */
export function supplyStores(
  board: Board,
  starts: readonly (number | undefined)[],
  guide?: SupplyGuide,
): Supply {
  const batches: Batch[] = guide === undefined ? [] : [...guide.kept];
  markBatches(board, batches, 1);
  for (const [index, store] of board.problem.stores.entries()) {
    const short = supplyAnyway(board, { index, store, starts, guide }, batches);
    if (short === undefined) continue;
    markBatches(board, batches, -1);
    return { shortOf: short };
  }
  return { batches };
}

/** Fresh if it can be; then older; then with what one task uses taken from two batches. */
function supplyAnyway(
  board: Board,
  wish: {
    readonly index: number;
    readonly store: Store;
    readonly starts: Starts;
    readonly guide: SupplyGuide | undefined;
  },
  batches: Batch[],
): number | undefined {
  const { store } = wish;
  const uses = store.uses.some((each) => wish.starts[each.task] !== undefined);
  if (!uses) return undefined;
  let short: number | undefined;
  for (const ease of easesFrom(wish.guide)) {
    const wait = ease.wait === 'liked' ? store.waitLiked : ease.wait;
    short = supplyStore(board, { ...wish, ...ease, wait }, batches);
    if (short === undefined) return undefined;
  }
  return short;
}

function easesFrom(guide: SupplyGuide | undefined): readonly Ease[] {
  if (guide === undefined) return EASES;
  return [{ wait: guide.reach, isOld: guide.isOld, isSplit: guide.isSplit }, ...EASES];
}

interface Ease {
  /** How much later than the first use of a batch its last may be [min]. */
  readonly wait: number | 'liked';
  readonly isOld: boolean;
  readonly isSplit: boolean;
}

const ANY = Number.POSITIVE_INFINITY;
const EASES: readonly Ease[] = [
  { wait: 'liked', isOld: false, isSplit: false },
  { wait: ANY, isOld: false, isSplit: false },
  { wait: 'liked', isOld: false, isSplit: true },
  { wait: ANY, isOld: false, isSplit: true },
  { wait: ANY, isOld: true, isSplit: false },
  { wait: ANY, isOld: true, isSplit: true },
];

type Starts = readonly (number | undefined)[];

interface SupplyWish {
  readonly index: number;
  readonly starts: Starts;
  readonly wait: number;
  /** Past what is well, up to what is bearable. */
  readonly isOld: boolean;
  /** What a task uses may come from two batches. */
  readonly isSplit: boolean;
  readonly guide: SupplyGuide | undefined;
}

export function markBatches(board: Board, batches: readonly Batch[], sign: 1 | -1): void {
  for (const batch of batches) markBatch(board, batch, sign);
}

/** Undefined when all is supplied; else the task that is short, with this store's marks wiped. */
function supplyStore(board: Board, wish: SupplyWish, batches: Batch[]): number | undefined {
  const store = board.problem.stores[wish.index]!;
  const open = drawsOf(store, wish);
  const made: Batch[] = [];
  while (open.length > 0) {
    const members = takeBatch(open, store, wish);
    const maker = wish.guide?.makers[wish.index]?.[members.at(-1)!.use] ?? -1;
    const batch = placeBatch(board, { store, index: wish.index, members, maker });
    if (batch === undefined) {
      markBatches(board, made, -1);
      return members.at(-1)!.task;
    }
    made.push(batch);
    markBatch(board, batch, 1);
  }
  batches.push(...made);
  return undefined;
}

/** Latest first; an amount larger than a batch is cut into batchfuls. */
function drawsOf(store: Store, { starts, isOld, index, guide }: SupplyWish): Draw[] {
  const draws: Draw[] = [];
  store.uses.forEach((each, use) => {
    const at = starts[each.task];
    if (at === undefined) return;
    const kept = guide === undefined ? 0 : keptFor(guide.kept, index, use);
    for (let rest = each.amount - kept; rest > 0; rest -= store.size) {
      const amount = Math.min(rest, store.size);
      const waitMost = isOld ? each.waitMost : (each.waitWell ?? each.waitMost);
      draws.push({ use, task: each.task, at, amount, waitMost });
    }
  });
  return draws.sort((a, b) => b.at - a.at || b.amount - a.amount || a.use - b.use);
}

function keptFor(kept: readonly Batch[], store: number, wanted: number): number {
  let sum = 0;
  for (const batch of kept) {
    if (batch.store !== store) continue;
    for (const { use, amount } of batch.uses) if (use === wanted) sum += amount;
  }
  return sum;
}

function takeBatch(open: Draw[], store: Store, wish: SupplyWish): readonly Draw[] {
  const members: Draw[] = [];
  const apart = wish.guide?.apart[wish.index];
  let room = store.size;
  let soonest = Number.NEGATIVE_INFINITY;
  for (let at = 0; at < open.length; ) {
    const draw = open[at]!;
    if (draw.at < soonest) break;
    if (members.length > 0 && apart?.[draw.use] === 1) break;
    const taken = wish.isSplit ? Math.min(draw.amount, room) : draw.amount;
    if (taken > room || taken === 0) {
      at += 1;
      continue;
    }
    members.push({ ...draw, amount: taken });
    if (taken === draw.amount) open.splice(at, 1);
    else open[at] = { ...draw, amount: draw.amount - taken };
    room -= taken;
    soonest = Math.max(soonest, draw.at - Math.min(draw.waitMost, wish.wait));
  }
  return members;
}

function placeBatch(
  board: Board,
  wish: {
    readonly store: Store;
    readonly index: number;
    readonly members: readonly Draw[];
    readonly maker: number;
  },
): Batch | undefined {
  const { store, members, maker } = wish;
  const seats = store.seats[0]?.includes(maker) ? [[maker], ...store.seats.slice(1)] : store.seats;
  const work = batchWork(store);
  const firstUse = members.at(-1)!.at;
  const oldest = Math.max(...members.map((draw) => draw.at - draw.waitMost));
  const floor = oldest - store.lead - store.minutes;
  let ceiling = firstUse - store.lead - store.minutes;
  for (let tries = 0; tries < 200; tries += 1) {
    const start = board.latestFit(work, seats, { floor, ceiling });
    if (start === NOWHERE) return undefined;
    const readyAt = start + store.minutes + store.lead;
    const held = holderFrom(board, store.holder, { start, readyAt, firstUse });
    if ('emptiedAt' in held) {
      const crew = board.crewAt(work, seats, start) ?? [];
      const uses = members.map((draw) => ({ use: draw.use, amount: draw.amount }));
      return { store: wish.index, start, readyAt, emptiedAt: held.emptiedAt, crew, uses };
    }
    ceiling = Math.min(start - 1, held.blockedFrom - store.lead - store.minutes);
  }
  return undefined;
}

/** The holder waits full for the first use if it can; if not, it is emptied as soon as ready. */
function holderFrom(
  board: Board,
  pool: number | undefined,
  span: { readonly start: number; readonly readyAt: number; readonly firstUse: number },
): { readonly emptiedAt: number } | { readonly blockedFrom: number } {
  if (pool === undefined) return { emptiedAt: span.readyAt };
  if (board.isPoolFree(pool, span.start, span.firstUse)) return { emptiedAt: span.firstUse };
  const block = board.poolBlock(pool, span.start, span.readyAt);
  if (block === undefined) return { emptiedAt: span.readyAt };
  return { blockedFrom: board.blockStart(pool, block) };
}

/** The same batches, each left in its holder until its first use where the holder is not wanted. */
export function leftInHolders(
  board: Board,
  starts: Starts,
  batches: readonly Batch[],
): readonly Batch[] {
  return batches.map((batch) => {
    const { holder, uses } = board.problem.stores[batch.store]!;
    const firstUse = Math.min(...batch.uses.map(({ use }) => starts[uses[use]!.task] ?? Infinity));
    if (holder === undefined || !Number.isFinite(firstUse)) return batch;
    if (!board.isPoolFree(holder, batch.emptiedAt, firstUse)) return batch;
    board.markPool(holder, batch.emptiedAt, firstUse, 1);
    return { ...batch, emptiedAt: Math.max(batch.emptiedAt, firstUse) };
  });
}

function batchWork(store: Store): Work {
  const team = store.team === undefined ? {} : { team: store.team };
  return { minutes: store.minutes, seats: store.seats, takes: [], ...team };
}

function markBatch(board: Board, batch: Batch, sign: 1 | -1): void {
  const store = board.problem.stores[batch.store]!;
  board.mark(batchWork(store), batch.crew, batch.start, sign);
  if (store.holder === undefined) return;
  board.markPool(store.holder, batch.start, batch.emptiedAt, sign);
}

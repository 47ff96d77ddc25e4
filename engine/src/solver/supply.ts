// When must each batch be made so that no use goes short and nothing is past its life?
// Latest first: a batch takes in the uses just before the last one it serves, as many as it holds.

import { type Board, NOWHERE, type Work } from './board.ts';
import type { Batch, Store } from './problem.ts';

export type Supply =
  | { readonly batches: readonly Batch[] }
  /** Task that can't be supplied where it stands. */
  | { readonly shortOf: number };

interface Draw {
  readonly use: number;
  readonly task: number;
  readonly at: number;
  readonly amount: number;
  readonly waitMost: number;
}

/** Batches for all uses placed so far, marked on the board; nothing is marked when short. */
export function supplyStores(board: Board, starts: readonly (number | undefined)[]): Supply {
  const batches: Batch[] = [];
  for (const [index, store] of board.problem.stores.entries()) {
    const liked = supplyStore(board, { index, starts, wait: store.waitLiked }, batches);
    if (liked === undefined) continue;
    const wait = Number.POSITIVE_INFINITY;
    const short = supplyStore(board, { index, starts, wait }, batches);
    if (short === undefined) continue;
    markBatches(board, batches, -1);
    return { shortOf: short };
  }
  return { batches };
}

export function markBatches(board: Board, batches: readonly Batch[], sign: 1 | -1): void {
  for (const batch of batches) markBatch(board, batch, sign);
}

/** Undefined when all is supplied; else the task that is short, with this store's marks wiped. */
function supplyStore(
  board: Board,
  wish: { readonly index: number; readonly starts: readonly (number | undefined)[]; wait: number },
  batches: Batch[],
): number | undefined {
  const store = board.problem.stores[wish.index]!;
  const open = drawsOf(store, wish.starts);
  const made: Batch[] = [];
  while (open.length > 0) {
    const members = takeBatch(open, store, wish.wait);
    const batch = placeBatch(board, { store, index: wish.index, members });
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
function drawsOf(store: Store, starts: readonly (number | undefined)[]): Draw[] {
  const draws: Draw[] = [];
  store.uses.forEach((each, use) => {
    const at = starts[each.task];
    if (at === undefined) return;
    for (let rest = each.amount; rest > 0; rest -= store.size) {
      const amount = Math.min(rest, store.size);
      draws.push({ use, task: each.task, at, amount, waitMost: each.waitMost });
    }
  });
  return draws.sort((a, b) => b.at - a.at || b.amount - a.amount || a.use - b.use);
}

function takeBatch(open: Draw[], store: Store, wait: number): readonly Draw[] {
  const members: Draw[] = [];
  let room = store.size;
  let soonest = Number.NEGATIVE_INFINITY;
  for (let at = 0; at < open.length; ) {
    const draw = open[at]!;
    if (draw.at < soonest) break;
    if (draw.amount > room) {
      at += 1;
      continue;
    }
    members.push(draw);
    open.splice(at, 1);
    room -= draw.amount;
    soonest = Math.max(soonest, draw.at - Math.min(draw.waitMost, wait));
  }
  return members;
}

function placeBatch(
  board: Board,
  wish: { readonly store: Store; readonly index: number; readonly members: readonly Draw[] },
): Batch | undefined {
  const { store, members } = wish;
  const work = batchWork(store);
  const firstUse = members.at(-1)!.at;
  const oldest = Math.max(...members.map((draw) => draw.at - draw.waitMost));
  const floor = oldest - store.lead - store.minutes;
  let ceiling = firstUse - store.lead - store.minutes;
  for (let tries = 0; tries < 200; tries += 1) {
    const start = board.latestFit(work, store.seats, { floor, ceiling });
    if (start === NOWHERE) return undefined;
    const readyAt = start + store.minutes + store.lead;
    const held = holderFrom(board, store.holder, { start, readyAt, firstUse });
    if ('emptiedAt' in held) {
      const crew = board.crewAt(work, store.seats, start) ?? [];
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

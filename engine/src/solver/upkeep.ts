// What has to be kept up (a fire that makes more of something) is seen to again and again by whoever
// is free, after all that can not wait has its place. Where nobody is free the gap is longer, not
// the plan broken; the gaps are told.

import { type Board, NOWHERE, type Work } from './board.ts';
import type { Batch, Plan, Problem, Store, Upkeep, UpkeepWish } from './problem.ts';

/** Marked on the board. */
export function placeUpkeeps(
  board: Board,
  starts: Plan['starts'],
  batches: readonly Batch[],
): readonly Upkeep[] {
  return batches.flatMap((batch, index) => {
    const store = board.problem.stores[batch.store]!;
    const { upkeep } = store;
    if (upkeep === undefined) return [];
    const made = keepUp(board, upkeep, {
      from: batch.start + store.minutes,
      to: lastUse(store, starts, batch),
    });
    return made.map((each) => ({ ...each, store: batch.store, batch: index }));
  });
}

interface Kept {
  readonly start: number;
  readonly crew: readonly number[];
}

function keepUp(board: Board, wish: UpkeepWish, span: { from: number; to: number }): Kept[] {
  const { minutes, soonest, most, seats } = wish;
  const work: Work = { minutes, seats, takes: [], team: 'upkeep' };
  const kept: Kept[] = [];
  let since = span.from;
  while (span.to - since > most) {
    const liked = board.latestFit(work, seats, { floor: since + soonest, ceiling: since + most });
    const bounds = { floor: since + most + 1, ceiling: span.to - minutes };
    const start = liked === NOWHERE ? board.soonestFit(work, seats, bounds) : liked;
    if (start === NOWHERE) break;
    const crew = board.crewAt(work, seats, start) ?? [];
    board.mark(work, crew, start, 1);
    kept.push({ start, crew });
    since = start + minutes;
  }
  return kept;
}

const lastUse = (store: Store, starts: Plan['starts'], batch: Batch) =>
  Math.max(batch.readyAt, ...batch.uses.map(({ use }) => starts[store.uses[use]!.task] ?? 0));

/** Minutes between one time and the next, from the work of the batch to its last use. */
export function upkeepGaps(problem: Problem, plan: Plan): readonly number[] {
  return plan.batches.flatMap((batch, index) => {
    const store = problem.stores[batch.store]!;
    const { upkeep } = store;
    if (upkeep === undefined) return [];
    const own = plan.upkeeps.filter((each) => each.batch === index);
    const ends = [batch.start + store.minutes, ...own.map((each) => each.start + upkeep.minutes)];
    const begins = [...own.map((each) => each.start), lastUse(store, plan.starts, batch)];
    return begins.map((begin, at) => begin - ends[at]!);
  });
}

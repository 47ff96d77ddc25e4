// Batches as unknowns: when each is made, by whom, whether at all, and how much of it each use gets.
// The first to be made stands first; those that are not made stand last.

import type { Problem, Store } from '../problem.ts';
import { keepHours, newFlag, type SeatModel, seatModel } from './crew-model.ts';
import { atLeast, atMost, type Literal, not, type Unknown } from './field.ts';
import type { Prover } from './prover.ts';

export interface BatchModel {
  readonly start: Unknown;
  readonly isMade: Unknown;
  readonly seats: readonly SeatModel[];
  readonly shares: readonly Share[];
}

/** What one use gets of one batch. */
export interface Share {
  readonly use: number;
  readonly amount: Unknown;
  /** Minutes older than is liked, and than is well; undefined where it can not be. */
  readonly old: Unknown | undefined;
  readonly tooOld: Unknown | undefined;
}

export function batchModels(
  prover: Prover,
  problem: Problem,
  wish: {
    readonly store: Store;
    readonly many: number;
    readonly starts: readonly (Unknown | undefined)[];
  },
): readonly BatchModel[] {
  const { store, many } = wish;
  const batches = Array.from({ length: many }, () => batchModel(prover, problem, wish));
  batches.forEach(({ start, isMade }, at) => {
    const next = batches[at + 1];
    if (next === undefined) return;
    prover.arcs.add(2 * start, 2 * next.start, 0);
    prover.clauses.add([atLeast(isMade, 1), atMost(next.isMade, 0)]);
  });
  keepHolders(prover, problem, store, batches);
  const wanted = store.uses.reduce(
    (sum, { task, amount }) => sum + (wish.starts[task] === undefined ? 0 : amount),
    0,
  );
  // Fewer can not hold it all; sums by themselves see that late.
  for (const { isMade } of batches.slice(0, Math.ceil(wanted / store.size))) {
    prover.clauses.add([atLeast(isMade, 1)]);
  }
  store.uses.forEach((use, index) => {
    if (wish.starts[use.task] === undefined) return;
    const own = batches.map(({ shares }) => shares.find((each) => each.use === index)!.amount);
    prover.sums.add(
      own.map((amount) => ({ side: 2 * amount, weight: 1 })),
      use.amount,
    );
    prover.sums.add(
      own.map((amount) => ({ side: 2 * amount + 1, weight: 1 })),
      -use.amount,
    );
  });
  return batches;
}

/** With so many holders, the next but so many waits for this one; that follows, but is seen sooner. */
function keepHolders(
  prover: Prover,
  problem: Problem,
  { holder, minutes, lead }: Store,
  batches: readonly BatchModel[],
): void {
  if (holder === undefined) return;
  const { capacity } = problem.pools[holder]!;
  batches.forEach(({ start }, at) => {
    const next = batches[at + capacity];
    if (next === undefined) return;
    prover.arcs.add(2 * start, 2 * next.start, minutes + lead, atLeast(next.isMade, 1));
  });
}

function batchModel(
  prover: Prover,
  problem: Problem,
  wish: { readonly store: Store; readonly starts: readonly (Unknown | undefined)[] },
): BatchModel {
  const { store, starts } = wish;
  const { field, clauses, sums } = prover;
  const start = field.unknown(problem.from, problem.to);
  prover.settled.push(start);
  const isMade = newFlag(prover);
  clauses.add([atLeast(isMade, 1), atLeast(start, problem.to)]);
  clauses.add([atMost(isMade, 0), atMost(start, problem.to - store.minutes - store.lead)]);
  const shares = store.uses.flatMap((_, use) => {
    const used = starts[store.uses[use]!.task];
    return used === undefined ? [] : [shareModel(prover, store, { use, used, start })];
  });
  for (const { amount } of shares) clauses.add([atLeast(isMade, 1), atMost(amount, 0)]);
  clauses.add([atMost(isMade, 0), ...shares.map(({ amount }) => atLeast(amount, 1))]);
  sums.add(
    shares.map(({ amount }) => ({ side: 2 * amount, weight: 1 })),
    store.size,
  );
  const seats = store.seats.map((seat) => madeBy(seatModel(prover, seat), isMade));
  for (const seat of seats) keepHours(prover, problem, { seat, start, minutes: store.minutes });
  return { start, isMade, seats, shares };

  /** Nobody makes what is not made: a seat that is nobody's counts for nothing. */
  function madeBy(seat: SeatModel, made: Unknown): SeatModel {
    return new Map(
      [...seat].map(([unit, literal]) => {
        if (literal === 'always') return [unit, atLeast(made, 1)] as const;
        const both = atLeast(field.unknown(0, 1), 1);
        clauses.add([not(literal), atMost(made, 0), both]);
        clauses.add([not(both), literal]);
        clauses.add([not(both), atLeast(made, 1)]);
        return [unit, both] as const;
      }),
    );
  }
}

function shareModel(
  prover: Prover,
  store: Store,
  at: { readonly use: number; readonly used: Unknown; readonly start: Unknown },
): Share {
  const { field, arcs } = prover;
  const { amount: wanted, waitMost, waitWell = waitMost } = store.uses[at.use]!;
  const amount = field.unknown(0, Math.min(store.size, wanted));
  prover.settled.push(amount);
  const where = atLeast(amount, 1);
  const ready = store.minutes + store.lead;
  arcs.add(2 * at.start, 2 * at.used, ready, where);
  arcs.add(2 * at.used, 2 * at.start, -ready - waitMost, where);
  const past = (from: number): Unknown | undefined =>
    from >= waitMost
      ? undefined
      : pastBy(prover, { ...at, most: waitMost - from, apart: ready + from, where });
  return { use: at.use, amount, old: past(store.waitLiked), tooOld: past(waitWell) };
}

/** Minutes that the use comes later than so long after the batch was begun, if it is of it. */
function pastBy(
  prover: Prover,
  wish: {
    readonly used: Unknown;
    readonly start: Unknown;
    readonly most: number;
    readonly apart: number;
    readonly where: Literal;
  },
): Unknown {
  const past = prover.field.unknown(0, wish.most);
  prover.clauses.add([wish.where, atMost(past, 0)]);
  const sides = [2 * wish.used, 2 * wish.start + 1, 2 * past + 1];
  prover.sums.add(
    sides.map((side) => ({ side, weight: 1 })),
    wish.apart,
    wish.where,
  );
  return past;
}

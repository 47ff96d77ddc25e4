// A problem as unknowns and what binds them: what a search that learns works on. Only what is placed
// backwards is in it; what is left, late or pinned stays so.
// Weakness: upkeep is not priced, an aim that was met is kept, and a price is taken to its tenth.

import { PRICES } from '../cost.ts';
import type { Plan, Problem } from '../problem.ts';
import { type BatchModel, batchModels } from './batch-model.ts';
import {
  addClause,
  keepApart,
  keepHours,
  keepSame,
  opposite,
  type SeatModel,
  seatModel,
} from './crew-model.ts';
import { atLeast, type Literal, type Unknown } from './field.ts';
import { Prover } from './prover.ts';
import type { Sharing } from './shared.ts';
import type { Stay } from './stay.ts';
import type { Term } from './sums.ts';

export interface Model {
  readonly problem: Problem;
  readonly prover: Prover;
  /** By task; undefined: not in it. */
  readonly starts: readonly (Unknown | undefined)[];
  readonly seats: readonly (readonly SeatModel[])[];
  /** By store. */
  readonly batches: readonly (readonly BatchModel[])[];
  readonly terms: readonly Term[];
  /** What they weigh, at least. */
  readonly cost: Unknown;
  /** Two plans that do not cost the same are at least so far apart. */
  readonly step: number;
  readonly follows: Follows;
}

/** What costs and follows from the rest. */
export interface Follows {
  /** Start of the first batch of all. */
  readonly first: Unknown | undefined;
  /** The flag is up where this unit leads this task. */
  readonly teams: readonly {
    readonly task: number;
    readonly unit: number;
    readonly flag: Unknown;
  }[];
}

/** @param from  the plan at hand: says what is in the model, and how late */
export function modelOf(
  problem: Problem,
  from: Pick<Plan, 'starts' | 'lateBy' | 'batches'>,
  spareBatches: number,
): Model {
  const prover = new Prover();
  const starts = startUnknowns(prover, problem, from);
  addLags(prover, problem, starts);
  keepAims(prover, problem, { starts, from });
  const seats = seatsIn(prover, problem, starts);
  const batches = problem.stores.map((store, index) => {
    const made = from.batches.filter((batch) => batch.store === index).length;
    const many = made === 0 ? 0 : made + spareBatches;
    return batchModels(prover, problem, { store, many, starts });
  });
  const parts = { problem, prover, starts, seats, batches };
  addPlaces(parts);
  const made = batchTerms(parts);
  const teams = handOverTerms(parts);
  const terms = [...waitTerms(parts), ...made.terms, ...teams.terms].filter(
    ({ weight }) => weight > 0,
  );
  const cost = prover.field.unknown(-MUCH, MUCH);
  prover.sums.add([...terms, { side: 2 * cost + 1, weight: 1 }], 0, undefined, true);
  const step = Math.max(1, terms.map(({ weight }) => weight).reduce(commonDivisor, 0));
  return { ...parts, terms, cost, step, follows: { first: made.first, teams: teams.flags } };
}

const commonDivisor = (one: number, other: number): number =>
  other === 0 ? one : commonDivisor(other, one % other);

type Parts = Omit<Model, 'terms' | 'cost' | 'step' | 'follows'>;

const MUCH = 1_000_000_000;

function startUnknowns(
  prover: Prover,
  problem: Problem,
  from: Pick<Plan, 'starts' | 'lateBy'>,
): (Unknown | undefined)[] {
  return problem.tasks.map((task, index) => {
    const isIn = from.starts[index] !== undefined && problem.groups[task.group]!.towards === 'late';
    if (!isIn) return undefined;
    const due = task.due === undefined ? undefined : task.due + from.lateBy[task.group]!;
    const exact = task.fixed ?? due;
    const least = Math.max(exact ?? problem.from, task.release ?? problem.from);
    const most = Math.min(exact ?? problem.to - task.minutes, task.latest ?? problem.to);
    const start = prover.field.unknown(least, most);
    prover.settled.push(start);
    return start;
  });
}

function addLags(prover: Prover, problem: Problem, starts: readonly (Unknown | undefined)[]): void {
  for (const { from, to, least, most } of problem.lags) {
    const [one, other] = [starts[from], starts[to]];
    if (one === undefined || other === undefined) continue;
    prover.arcs.add(2 * one, 2 * other, least);
    if (most !== undefined) prover.arcs.add(2 * other, 2 * one, -most);
  }
}

/** What stands where it is liked best stays so far from what it is counted from. */
function keepAims(
  prover: Prover,
  problem: Problem,
  {
    starts,
    from,
  }: { readonly starts: readonly (Unknown | undefined)[]; readonly from: Pick<Plan, 'starts'> },
): void {
  problem.tasks.forEach(({ aim }, task) => {
    const [own, other] = [starts[task], aim === undefined ? undefined : starts[aim.from]];
    if (aim === undefined || own === undefined || other === undefined) return;
    if (from.starts[task]! - from.starts[aim.from]! !== aim.minutes) return;
    prover.arcs.add(2 * other, 2 * own, aim.minutes);
    prover.arcs.add(2 * own, 2 * other, -aim.minutes);
  });
}

function seatsIn(
  prover: Prover,
  problem: Problem,
  starts: readonly (Unknown | undefined)[],
): readonly (readonly SeatModel[])[] {
  const seats = problem.tasks.map((task, index) => {
    const start = starts[index];
    if (start === undefined) return [];
    const own = task.seats.map((seat) => seatModel(prover, seat));
    keepApart(prover, own);
    for (const seat of task.minutes > 0 ? own : []) {
      keepHours(prover, problem, { seat, start, minutes: task.minutes });
    }
    return own;
  });
  problem.tasks.forEach(({ sameAs }, index) => {
    const own = seats[index]![0];
    const other = sameAs === undefined ? undefined : seats[sameAs]![0];
    if (own !== undefined && other !== undefined) keepSame(prover, own, other);
  });
  return seats;
}

function addPlaces(parts: Parts): void {
  const { problem, prover } = parts;
  problem.units.forEach((_, unit) => {
    prover.one.add(worksOf(parts, unit));
  });
  problem.pools.forEach(({ capacity }, pool) => {
    const stays = staysIn(parts, pool);
    if (stays.length < 2) return;
    if (stays.every(({ amount }) => 2 * amount > capacity)) prover.one.add(stays);
    else prover.shared.add(stays, capacity);
  });
}

const literalOf = (literal: Literal | 'always') => (literal === 'always' ? undefined : literal);

/** Tasks and batches that a unit may do. */
function worksOf({ problem, starts, seats, batches }: Parts, unit: number): readonly Stay[] {
  const stays: Stay[] = [];
  const add = (start: Unknown, minutes: number, own: readonly SeatModel[]) => {
    for (const seat of own) {
      const literal = seat.get(unit);
      if (literal === undefined || minutes === 0) continue;
      stays.push({ first: start, last: start, more: minutes, where: literalOf(literal) });
    }
  };
  problem.tasks.forEach(({ minutes }, task) => {
    const start = starts[task];
    if (start !== undefined) add(start, minutes, seats[task]!);
  });
  batches.forEach((own, store) => {
    for (const batch of own) add(batch.start, problem.stores[store]!.minutes, batch.seats);
  });
  return stays;
}

function staysIn({ problem, starts, batches }: Parts, pool: number): readonly Sharing[] {
  const stays: Sharing[] = [];
  problem.tasks.forEach(({ minutes, takes }, task) => {
    const start = starts[task];
    if (start === undefined || minutes === 0) return;
    for (const take of takes) {
      if (take.pool !== pool || take.amount === 0) continue;
      stays.push({
        first: start,
        last: start,
        more: minutes,
        where: undefined,
        amount: take.amount,
      });
    }
  });
  for (const hold of problem.holds) {
    const [first, last] = [starts[hold.first], starts[hold.last]];
    if (hold.pool !== pool || first === undefined || last === undefined) continue;
    stays.push({
      first,
      last,
      more: problem.tasks[hold.last]!.minutes,
      where: undefined,
      amount: 1,
    });
  }
  problem.stores.forEach(({ holder, minutes, lead }, store) => {
    if (holder !== pool) return;
    for (const { start, isMade } of batches[store]!) {
      const where = atLeast(isMade, 1);
      stays.push({ first: start, last: start, more: minutes + lead, where, amount: 1 });
    }
  });
  return stays;
}

/** The model's money. */
export const TENTHS = 10;

function waitTerms({ problem, starts }: Parts): readonly Term[] {
  return problem.prices.flatMap(({ from, to, price }) => {
    const [one, other] = [starts[from], starts[to]];
    if (one === undefined || other === undefined) return [];
    const weight = Math.round(TENTHS * Math.abs(price));
    const sign = price < 0 ? 1 : 0;
    return [
      { side: (2 * other) ^ sign, weight },
      { side: (2 * one + 1) ^ sign, weight },
    ];
  });
}

function batchTerms({ prover, problem, batches }: Parts): {
  readonly terms: readonly Term[];
  readonly first: Unknown | undefined;
} {
  const made = batches.flat();
  if (made.length === 0) return { terms: [], first: undefined };
  const first = prover.field.unknown(problem.from, problem.to);
  prover.most.add(first);
  for (const [own] of batches) if (own !== undefined) prover.arcs.add(2 * first, 2 * own.start, 0);
  const term = (unknown: Unknown | undefined, price: number): Term[] =>
    unknown === undefined ? [] : [{ side: 2 * unknown, weight: TENTHS * price }];
  const terms = [
    { side: 2 * first + 1, weight: TENTHS * PRICES.firstBatch },
    ...made.flatMap(({ isMade, shares }) => [
      ...term(isMade, PRICES.batch),
      ...shares.flatMap(({ old, tooOld }) => [
        ...term(old, PRICES.old),
        ...term(tooOld, PRICES.tooOld),
      ]),
    ]),
  ];
  return { terms, first };
}

/** Each unit of a team costs; the first of them too, which is the same in every plan. */
function handOverTerms({ prover, problem, seats }: Parts): {
  readonly terms: readonly Term[];
  readonly flags: Follows['teams'];
} {
  const teams = new Map<string, Map<number, Unknown>>();
  const flags: { task: number; unit: number; flag: Unknown }[] = [];
  problem.tasks.forEach(({ team }, task) => {
    const first = seats[task]![0];
    if (team === undefined || first === undefined) return;
    const used = teams.get(team) ?? new Map<number, Unknown>();
    teams.set(team, used);
    for (const [unit, literal] of first) {
      const flag = used.get(unit) ?? prover.field.unknown(0, 1);
      used.set(unit, flag);
      flags.push({ task, unit, flag });
      addClause(prover, [opposite(literal), atLeast(flag, 1)]);
    }
  });
  const units = [...teams.values()].flatMap((used) => [...used.values()]);
  const terms = units.map((flag) => ({ side: 2 * flag, weight: TENTHS * PRICES.handOver }));
  return { terms, flags };
}

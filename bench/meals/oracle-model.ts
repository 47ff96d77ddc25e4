// A meal as a constraint model of its own, written from what a problem means and not from how it is
// solved: every plan on time with nothing broken, priced as the solver prices it, in tenths.
// Weakness: no upkeep, no aim, nothing that may be left; meals drawn here have none of them.
import type { Problem, Store } from '../../engine/src/solver/problem.ts';

/** Prices, restated: the solver's own are in solver/cost.ts. In tenths. */
const TENTHS = { firstBatch: 20, batch: 50, handOver: 30, old: 10, tooOld: 100 };

export interface ModelWish {
  /** No plan dearer than this is of interest; in the solver's money. */
  readonly atMost?: number;
  /** Batches that may be made of each store. */
  readonly batches: number;
}

/** A model of MiniZinc: starts s, units by seat w, batches; cost in tenths. */
export function oracleModel(problem: Problem, wish: ModelWish): string {
  const { batches } = wish;
  return [
    'include "globals.mzn";',
    ...startLines(problem),
    ...lagLines(problem),
    ...seatLines(problem),
    ...problem.stores.flatMap((store, at) => storeLines(problem, store, { at, batches })),
    ...unitLines(problem, batches),
    ...holdLines(problem),
    ...poolLines(problem, batches),
    ...costLines(problem, wish),
    'solve :: int_search(s, largest, indomain_max) minimize cost;',
  ].join('\n');
}

const list = (values: readonly unknown[]) => `[${values.join(', ')}]`;

function startLines({ tasks, from, to }: Problem): string[] {
  return [
    `array[1..${tasks.length}] of var ${from}..${to}: s;`,
    ...tasks.flatMap(({ fixed, due, release, latest, minutes }, at) => {
      const s = `s[${at + 1}]`;
      const lines = [`constraint ${s} + ${minutes} <= ${to};`];
      if (fixed !== undefined) lines.push(`constraint ${s} = ${fixed};`);
      if (due !== undefined) lines.push(`constraint ${s} = ${due};`);
      if (release !== undefined) lines.push(`constraint ${s} >= ${release};`);
      if (latest !== undefined) lines.push(`constraint ${s} <= ${latest};`);
      return lines;
    }),
  ];
}

function lagLines({ lags }: Problem): string[] {
  return lags.map(({ from, to, least, most }) => {
    const apart = `s[${to + 1}] - s[${from + 1}]`;
    const upper = most === undefined ? '' : ` /\\ ${apart} <= ${most}`;
    return `constraint ${apart} >= ${least}${upper};`;
  });
}

/** One line for each seat of each task. */
interface SeatRow {
  readonly task: number;
  readonly units: readonly number[];
  readonly isFirst: boolean;
}

const seatRows = ({ tasks }: Problem): readonly SeatRow[] =>
  tasks.flatMap(({ seats }, task) =>
    seats.map((units, seat) => ({ task, units, isFirst: seat === 0 })),
  );

function seatLines(problem: Problem): string[] {
  const rows = seatRows(problem);
  const lines = [`array[1..${rows.length}] of var 0..${problem.units.length - 1}: w;`];
  const firstRow = (task: number) => rows.findIndex((row) => row.task === task && row.isFirst) + 1;
  rows.forEach((row, at) => {
    const w = `w[${at + 1}]`;
    lines.push(`constraint ${w} in {${row.units.join(', ')}};`);
    rows.forEach((other, next) => {
      if (next > at && other.task === row.task) lines.push(`constraint ${w} != w[${next + 1}];`);
    });
    const { sameAs, minutes } = problem.tasks[row.task]!;
    if (row.isFirst && sameAs !== undefined)
      lines.push(`constraint ${w} = w[${firstRow(sameAs)}];`);
    if (minutes === 0) return;
    for (const unit of row.units) {
      lines.push(
        `constraint ${w} = ${unit} -> ${isThere(problem, unit, { start: `s[${row.task + 1}]`, minutes })};`,
      );
    }
  });
  return lines;
}

function isThere(
  problem: Problem,
  unit: number,
  { start, minutes }: { readonly start: string; readonly minutes: number },
): string {
  const within = problem.units[unit]!.windows.map(
    ({ from, to }) => `(${start} >= ${from} /\\ ${start} <= ${to - minutes})`,
  );
  return within.length === 0 ? 'false' : `(${within.join(' \\/ ')})`;
}

/** Batch b of store k: start bsk[b], made at all onk[b], by bwk[b], so much of it for use u xk[u, b]. */
function storeLines(
  problem: Problem,
  store: Store,
  { at, batches }: { readonly at: number; readonly batches: number },
): string[] {
  const { from, to } = problem;
  const [bs, on, bw, x] = [`bs${at}`, `on${at}`, `bw${at}`, `x${at}`];
  const all = `b in 1..${batches}`;
  const uses = `u in 1..${store.uses.length}`;
  return [
    `array[1..${batches}] of var ${from}..${to}: ${bs};`,
    `array[1..${batches}] of var 0..1: ${on};`,
    `array[1..${batches}] of var {${store.seats[0]!.join(', ')}}: ${bw};`,
    `array[1..${store.uses.length}, 1..${batches}] of var 0..${store.size}: ${x};`,
    `constraint forall(b in 1..${batches - 1})(${bs}[b] <= ${bs}[b + 1] /\\ ${on}[b] >= ${on}[b + 1]);`,
    `constraint forall(${all})(${on}[b] = 0 -> ${bs}[b] = ${to} /\\ ${bw}[b] = ${store.seats[0]![0]});`,
    `constraint forall(${all})(sum(${uses})(${x}[u, b]) <= ${store.size} * ${on}[b]);`,
    `constraint forall(${all})(${on}[b] = 1 -> sum(${uses})(${x}[u, b]) >= 1);`,
    ...store.uses.flatMap((_, use) => useLines(store, { use, at, batches })),
    ...store.seats[0]!.map(
      (unit) =>
        `constraint forall(${all})(${on}[b] = 1 /\\ ${bw}[b] = ${unit} -> ` +
        `${isThere(problem, unit, { start: `${bs}[b]`, minutes: store.minutes })});`,
    ),
  ];
}

/** Enough, ready in time, not past its life; what is old is priced, once for each batch it is of. */
function useLines(
  store: Store,
  { use, at, batches }: { readonly use: number; readonly at: number; readonly batches: number },
): string[] {
  const { task, amount, waitMost, waitWell = waitMost } = store.uses[use]!;
  const u = use + 1;
  const x = `x${at}`;
  const all = `b in 1..${batches}`;
  const wait = `(s[${task + 1}] - bs${at}[b] - ${store.minutes + store.lead})`;
  const past = (name: string, from: number) => [
    `array[1..${batches}] of var 0..${Math.max(0, waitMost - from)}: ${name}${at}_${u};`,
    `constraint forall(${all})(${x}[${u}, b] > 0 -> ${name}${at}_${u}[b] >= ${wait} - ${from});`,
  ];
  return [
    `constraint sum(${all})(${x}[${u}, b]) = ${amount};`,
    `constraint forall(${all})(${x}[${u}, b] > 0 -> ${wait} >= 0 /\\ ${wait} <= ${waitMost});`,
    ...past('old', store.waitLiked),
    ...past('far', waitWell),
  ];
}

/** One thing at a time for each unit: tasks and batches. */
function unitLines(problem: Problem, batches: number): string[] {
  const rows = seatRows(problem);
  return problem.units.map((_, unit) => {
    const own = rows.flatMap((row, at) => {
      const { minutes } = problem.tasks[row.task]!;
      if (minutes === 0 || !row.units.includes(unit)) return [];
      return [{ start: `s[${row.task + 1}]`, minutes, amount: `bool2int(w[${at + 1}] = ${unit})` }];
    });
    const made = problem.stores.flatMap((store, at) =>
      store.seats[0]!.includes(unit)
        ? Array.from({ length: batches }, (_each, b) => ({
            start: `bs${at}[${b + 1}]`,
            minutes: store.minutes,
            amount: `bool2int(on${at}[${b + 1}] = 1 /\\ bw${at}[${b + 1}] = ${unit})`,
          }))
        : [],
    );
    return cumulative([...own, ...made], 1);
  });
}

interface Span {
  readonly start: string;
  readonly minutes: number | string;
  readonly amount: number | string;
}

const cumulative = (spans: readonly Span[], capacity: number) =>
  spans.length < 2
    ? ''
    : `constraint cumulative(${list(spans.map((each) => each.start))}, ${list(
        spans.map((each) => each.minutes),
      )}, ${list(spans.map((each) => each.amount))}, ${capacity});`;

/** How long each thing is held: from the start of its first task to the end of its last. */
function holdLines({ holds, tasks, from, to }: Problem): string[] {
  if (holds.length === 0) return [];
  return [
    `array[1..${holds.length}] of var 0..${to - from}: d;`,
    ...holds.map(
      ({ first, last }, id) =>
        `constraint d[${id + 1}] = s[${last + 1}] + ${tasks[last]!.minutes} - s[${first + 1}];`,
    ),
  ];
}

function poolLines(problem: Problem, batches: number): string[] {
  return problem.pools.map((pool, index) => {
    const taken = problem.tasks.flatMap((task, at) =>
      task.takes
        .filter((take) => take.pool === index && task.minutes > 0)
        .map(({ amount }) => ({ start: `s[${at + 1}]`, minutes: task.minutes, amount })),
    );
    const held = problem.holds
      .map((hold, id) => ({ ...hold, id }))
      .filter((hold) => hold.pool === index)
      .map(({ first, id }) => ({ start: `s[${first + 1}]`, minutes: `d[${id + 1}]`, amount: 1 }));
    const made = problem.stores.flatMap((store, at) =>
      store.holder === index
        ? Array.from({ length: batches }, (_, b) => ({
            start: `bs${at}[${b + 1}]`,
            minutes: store.minutes + store.lead,
            amount: `on${at}[${b + 1}]`,
          }))
        : [],
    );
    return cumulative([...taken, ...held, ...made], pool.capacity);
  });
}

function costLines(problem: Problem, { atMost }: ModelWish): string[] {
  const { prices, stores, to } = problem;
  const waits = prices.map(
    ({ from, to: until, price }) =>
      `${Math.round(10 * price)} * (s[${until + 1}] - s[${from + 1}])`,
  );
  const made = stores.flatMap((store, at) =>
    store.uses.length === 0
      ? []
      : [
          `${TENTHS.firstBatch} * (${to} - bs${at}[1])`,
          `${TENTHS.batch} * sum(on${at})`,
          ...store.uses.flatMap((_, use) => [
            `${TENTHS.old} * sum(old${at}_${use + 1})`,
            `${TENTHS.tooOld} * sum(far${at}_${use + 1})`,
          ]),
        ],
  );
  const terms = [...waits, ...made, ...handOverTerms(problem)];
  return [
    'var 0..10000000: cost;',
    `constraint cost = ${terms.join(' + ') || '0'};`,
    ...(atMost === undefined ? [] : [`constraint cost <= ${Math.floor(10 * atMost + 1e-6)};`]),
  ];
}

/** For each team: units that fill its first seats, less one. */
function handOverTerms(problem: Problem): string[] {
  const teams = new Map<string, string[]>();
  seatRows(problem).forEach((row, at) => {
    const { team } = problem.tasks[row.task]!;
    if (team === undefined || !row.isFirst) return;
    teams.set(team, [...(teams.get(team) ?? []), `w[${at + 1}]`]);
  });
  return [...teams.values()].map((own) => {
    const used = problem.units.map((_, unit) => {
      const isUsed = own.map((w) => `${w} = ${unit}`).join(' \\/ ');
      return `bool2int(${isUsed})`;
    });
    return `${TENTHS.handOver} * (${used.join(' + ')} - 1)`;
  });
}

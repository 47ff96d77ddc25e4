// How good is a plan? Nothing broken, then nothing late, then little waiting, a late first batch
// and few hand-overs. The prices are stated here and nowhere else.

import type { Plan, Problem } from './problem.ts';
import { upkeepGaps } from './upkeep.ts';

const BROKEN = 1_000_000;
/** Work outside hours: dearer than twenty minutes late, for each job. */
const OVERTIME = 20_000;
/** Less than a minute late: work is left rather than a dish. */
const LEFT = 900;
export const PRICES = {
  /** A minute earlier that the first batch is made. */
  firstBatch: 2,
  batch: 5,
  handOver: 3,
  /** A minute that something made waits longer than is liked, and than is well, for each use of it. */
  old: 1,
  tooOld: 10,
};
/** A minute more than wanted between one upkeep and the next. */
const UNKEPT = 10;

/** Price of a plan; less is better. */
export function costOf(problem: Problem, plan: Plan): number {
  let waits = 0;
  for (const each of problem.prices) {
    const from = plan.starts[each.from];
    const to = plan.starts[each.to];
    if (from !== undefined && to !== undefined) waits += each.price * (to - from);
  }
  return (
    costOfTrouble(problem, plan) +
    LEFT * plan.left.length +
    waits +
    batchPrice(problem, plan) +
    agePrice(problem, plan) +
    UNKEPT * unkeptMinutes(problem, plan) +
    PRICES.handOver * handOvers(problem, plan)
  );
}

/** What is late and what is broken: the part that can only grow while a plan is being made. */
export function costOfTrouble(problem: Problem, plan: Pick<Plan, 'lateBy' | 'broken'>): number {
  const late = plan.lateBy.reduce(
    (sum, minutes, group) => sum + minutes * problem.groups[group]!.latePrice,
    0,
  );
  const broken = plan.broken.reduce(
    (sum, { rule }) => sum + (rule === 'hours' ? OVERTIME : BROKEN),
    0,
  );
  return late + broken;
}

/** Minutes more than wanted from one upkeep to the next, over all. */
export function unkeptMinutes(problem: Problem, plan: Plan): number {
  if (plan.upkeeps.length === 0 && !problem.stores.some((store) => store.upkeep)) return 0;
  const most = Math.min(...problem.stores.map((store) => store.upkeep?.most ?? Infinity));
  return upkeepGaps(problem, plan).reduce((sum, gap) => sum + Math.max(0, gap - most), 0);
}

function batchPrice(problem: Problem, plan: Plan): number {
  if (plan.batches.length === 0) return 0;
  const first = Math.min(...plan.batches.map((batch) => batch.start));
  return PRICES.firstBatch * (problem.to - first) + PRICES.batch * plan.batches.length;
}

function agePrice(problem: Problem, plan: Plan): number {
  let price = 0;
  for (const batch of plan.batches) {
    const store = problem.stores[batch.store]!;
    for (const { use } of batch.uses) {
      const { task, waitMost, waitWell = waitMost } = store.uses[use]!;
      const wait = (plan.starts[task] ?? batch.readyAt) - batch.readyAt;
      price += PRICES.old * Math.max(0, wait - store.waitLiked);
      price += PRICES.tooOld * Math.max(0, wait - waitWell);
    }
  }
  return price;
}

/** Units that fill the first seats of a team, less one, over all teams. */
function handOvers(problem: Problem, { crews }: Plan): number {
  const { count, teamOf } = teamsOf(problem);
  const units = problem.units.length;
  const isSeen = new Uint8Array(count * units);
  let seen = 0;
  let teams = 0;
  for (let task = 0; task < teamOf.length; task += 1) {
    const team = teamOf[task]!;
    const unit = crews[task]?.[0];
    if (team < 0 || unit === undefined || isSeen[team * units + unit] === 1) continue;
    isSeen[team * units + unit] = 1;
    seen += 1;
  }
  for (let team = 0; team < count; team += 1) {
    if (isSeen.subarray(team * units, (team + 1) * units).includes(1)) teams += 1;
  }
  return seen - teams;
}

interface Teams {
  readonly count: number;
  /** By task; -1: none. */
  readonly teamOf: Int32Array;
}

const teamsByProblem = new WeakMap<Problem, Teams>();

/** Worked out once for each problem: a search prices a plan many thousand times. */
function teamsOf(problem: Problem): Teams {
  const known = teamsByProblem.get(problem);
  if (known !== undefined) return known;
  const names = new Map<string, number>();
  const teamOf = Int32Array.from(problem.tasks, ({ team }) => {
    if (team === undefined) return -1;
    const index = names.get(team) ?? names.size;
    names.set(team, index);
    return index;
  });
  const teams = { count: names.size, teamOf };
  teamsByProblem.set(problem, teams);
  return teams;
}

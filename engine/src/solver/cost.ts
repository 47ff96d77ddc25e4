// How good is a plan? Nothing broken, then nothing late, then little waiting, a late first batch
// and few hand-overs. The prices are stated here and nowhere else.

import type { Plan, Problem } from './problem.ts';
import { upkeepGaps } from './upkeep.ts';

const BROKEN = 1_000_000;
/** Work outside hours: dearer than twenty minutes late, for each job. */
const OVERTIME = 20_000;
/** Less than a minute late: work is left rather than a dish. */
const LEFT = 900;
/** A minute earlier that the first batch is made. */
const FIRST_BATCH = 2;
const BATCH = 5;
const HAND_OVER = 3;
/** A minute more than wanted between one upkeep and the next. */
const UNKEPT = 10;

/** Price of a plan; less is better. */
export function costOf(problem: Problem, plan: Plan): number {
  const waits = problem.prices.reduce((sum, each) => {
    const from = plan.starts[each.from];
    const to = plan.starts[each.to];
    return from === undefined || to === undefined ? sum : sum + each.price * (to - from);
  }, 0);
  return (
    costOfTrouble(problem, plan) +
    LEFT * plan.left.length +
    waits +
    batchPrice(problem, plan) +
    UNKEPT * unkeptMinutes(problem, plan) +
    HAND_OVER * handOvers(problem, plan)
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

function unkeptMinutes(problem: Problem, plan: Plan): number {
  const most = Math.min(...problem.stores.map((store) => store.upkeep?.most ?? Infinity));
  return upkeepGaps(problem, plan).reduce((sum, gap) => sum + Math.max(0, gap - most), 0);
}

function batchPrice(problem: Problem, plan: Plan): number {
  if (plan.batches.length === 0) return 0;
  const first = Math.min(...plan.batches.map((batch) => batch.start));
  return FIRST_BATCH * (problem.to - first) + BATCH * plan.batches.length;
}

function handOvers(problem: Problem, plan: Plan): number {
  const byTeam = new Map<string, Set<number>>();
  problem.tasks.forEach((task, index) => {
    const unit = plan.crews[index]?.[0];
    if (task.team === undefined || unit === undefined) return;
    byTeam.set(task.team, (byTeam.get(task.team) ?? new Set()).add(unit));
  });
  let count = 0;
  for (const units of byTeam.values()) count += units.size - 1;
  return count;
}

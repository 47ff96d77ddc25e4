// A plan made better by a search that learns from every contradiction (exact/), as a whole plan again.
// Where that search has nothing left to try there is none better.

import { costOf, unkeptMinutes } from './cost.ts';
import { type Draft, newDraft } from './draft.ts';
import { findOnTime, type ProveWish, proveBest } from './exact/prove.ts';
import { standAll } from './improve.ts';
import type { GroupNet } from './net.ts';
import type { Plan, Problem } from './problem.ts';
import { leftInHolders } from './supply.ts';

export interface LearnWish extends Omit<ProveWish, 'onFound'> {
  /** The plan whole again: what can wait placed beside what can not. */
  readonly finish: (draft: Draft) => Plan;
  readonly onBetter?: (plan: Plan, cost: number) => void;
}

export interface Learned {
  readonly plan: Plan;
  readonly cost: number;
  readonly work: number;
  /** Proven; not said where the model prices something otherwise. */
  readonly gap?: number;
}

/** What `searchPlan` may be handed: it learns where it has work enough. */
export interface Learner {
  readonly better: typeof learnedPlan;
  readonly onTime: typeof learnedOnTime;
}

export const learner: Learner = {
  better: (...asked) => learnedPlan(...asked),
  onTime: (...asked) => learnedOnTime(...asked),
};

/** @param from  a plan with nothing broken; late it may be */
function learnedPlan(
  problem: Problem,
  nets: readonly GroupNet[],
  from: Plan,
  wish: LearnWish,
): Learned {
  const most = unkeptMinutes(problem, from);
  let best = { plan: from, cost: costOf(problem, from) };
  const onFound = (found: Plan) => {
    const plan = wholeAgain(problem, nets, found, wish);
    const cost = costOf(problem, plan);
    if (cost >= best.cost || unkeptMinutes(problem, plan) > most) return;
    best = { plan, cost };
    wish.onBetter?.(plan, cost);
  };
  const { gap, work } = proveBest(problem, from, { ...wish, onFound });
  return { ...best, work, ...(isAllModelled(problem, from) ? { gap } : {}) };
}

/** A plan on time of the same groups, or undefined, which proves nothing. */
function learnedOnTime(
  problem: Problem,
  nets: readonly GroupNet[],
  late: Plan,
  wish: LearnWish,
): Plan | undefined {
  const found = findOnTime(problem, late, wish);
  if (found === undefined) return undefined;
  const plan = wholeAgain(problem, nets, found, wish);
  return plan.broken.length === 0 ? plan : undefined;
}

function wholeAgain(
  problem: Problem,
  nets: readonly GroupNet[],
  found: Plan,
  { finish }: LearnWish,
): Plan {
  const draft = newDraft(problem, nets);
  const groups = problem.groups.flatMap(({ towards }, group) =>
    towards === 'late' && !found.left.includes(group) ? [group] : [],
  );
  standAll(draft, groups, found);
  draft.batches = leftInHolders(draft.board, draft.starts, draft.batches);
  return finish(draft);
}

/** Is a plan priced by the model as it is by us, with everything in it that could be otherwise? */
function isAllModelled(problem: Problem, from: Plan): boolean {
  return (
    from.left.length === 0 &&
    from.lateBy.every((late) => late === 0) &&
    problem.groups.every(({ towards }) => towards === 'late') &&
    problem.tasks.every(({ aim }) => aim === undefined) &&
    problem.stores.every(({ upkeep }) => upkeep === undefined) &&
    problem.prices.every(({ price }) => Number.isInteger(10 * price))
  );
}

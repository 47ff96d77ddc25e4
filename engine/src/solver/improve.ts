// A plan made better by large steps: a group or a few are taken off the board with the batches that
// they used, and are placed again beside all that stayed, guided partly by where they stood and partly
// by chance. Kept when no dearer, or a little dearer while the search is still warm. Work is counted
// in placings of one group.

import { costOf, unkeptMinutes } from './cost.ts';
import { type Draft, newDraft, planFrom, unplace } from './draft.ts';
import { guideFor, newGuide, type OpenGuide, type Stood } from './guide.ts';
import type { GroupNet } from './net.ts';
import { placeGroup, stand } from './place.ts';
import type { Batch, Plan, Problem } from './problem.ts';
import { markBatches } from './supply.ts';

export interface ImproveWish {
  readonly random: () => number;
  /** Placings of one group that may be tried. */
  readonly placings: number;
  /** The plan whole again: what can wait placed beside what can not. */
  readonly finish: (draft: Draft) => Plan;
  readonly onBetter?: (plan: Plan, cost: number) => void;
  readonly isStopped?: () => boolean;
}

export interface Improved {
  readonly plan: Plan;
  readonly cost: number;
  readonly placings: number;
}

/** @tuned on drawn meals, seeds 1 to 20 of small and medium, up to 4000 decodes; it buys some per cent */
const TUNED = {
  /** Groups taken off at once, at most, and how much fewer are preferred. */
  many: 4,
  fewer: 1.5,
  /** How much dearer a step may be, at first and at last. */
  warm: 12,
  cool: 0.3,
  pulls: 6,
};

/**
 * @param from  a plan with nothing broken; late it may be
 * @source shawLargeSteps1998 (from memory), under annealing; held against proven optima
 *         of meals by `npm run bench meals`
 */
export function improvePlan(
  problem: Problem,
  nets: readonly GroupNet[],
  from: Plan,
  wish: ImproveWish,
): Improved {
  const steps = new Steps(problem, nets, from, wish);
  while (!steps.isOver) steps.step();
  return steps.result;
}

class Steps {
  readonly #problem: Problem;
  readonly #wish: ImproveWish;
  readonly #draft: Draft;
  readonly #guide: OpenGuide;
  /** Groups that are placed backwards. */
  readonly #groups: readonly number[];
  #cost: number;
  #best: Improved;
  #bestPart: number;
  /** What is kept up is kept up no less than in the plan at hand. */
  readonly #unkept: number;

  constructor(problem: Problem, nets: readonly GroupNet[], from: Plan, wish: ImproveWish) {
    this.#problem = problem;
    this.#wish = wish;
    this.#guide = newGuide(problem);
    this.#draft = newDraft(problem, nets);
    this.#draft.guide = this.#guide;
    this.#groups = problem.groups.flatMap((group, index) =>
      group.towards === 'late' && !from.left.includes(index) ? [index] : [],
    );
    standAll(this.#draft, this.#groups, from);
    this.#cost = this.#price();
    this.#bestPart = this.#cost;
    this.#unkept = unkeptMinutes(problem, from);
    this.#best = { plan: from, cost: costOf(problem, from), placings: 0 };
  }

  get isOver(): boolean {
    const { placings, isStopped } = this.#wish;
    if (this.#groups.length === 0) return true;
    return this.#draft.attempts >= placings || isStopped?.() === true;
  }

  get result(): Improved {
    return { ...this.#best, placings: this.#draft.attempts };
  }

  step(): void {
    const groups = this.#chosen();
    const before = this.#takeOff(groups);
    guideFor(this.#draft, this.#guide, { groups, before, random: this.#wish.random });
    // A step that is given up at once still counts, so that the search ends.
    this.#draft.attempts += 1;
    const isPlaced = groups.every((group) => this.#place(group));
    const cost = isPlaced ? this.#price() : Number.POSITIVE_INFINITY;
    if (cost > this.#cost + this.#allowance()) {
      this.#putBack(groups, before);
      return;
    }
    this.#cost = cost;
    if (cost < this.#bestPart - 1e-9) this.#keepBest(cost);
  }

  #allowance(): number {
    const share = Math.min(1, this.#draft.attempts / this.#wish.placings);
    const warmth = TUNED.warm * (TUNED.cool / TUNED.warm) ** share;
    return -warmth * Math.log(1 - this.#wish.random()) * 0.5;
  }

  #keepBest(part: number): void {
    const plan = this.#wish.finish(this.#draft);
    this.#bestPart = part;
    const cost = costOf(this.#problem, plan);
    if (cost >= this.#best.cost || unkeptMinutes(this.#problem, plan) > this.#unkept) return;
    this.#best = { plan, cost, placings: this.#draft.attempts };
    this.#wish.onBetter?.(plan, cost);
  }

  /** One, two or three groups; beside the first those that are busy at about the same time. */
  #chosen(): readonly number[] {
    const { random } = this.#wish;
    const many = 1 + Math.floor(TUNED.many * random() ** TUNED.fewer);
    const first = this.#pick(this.#groups);
    const chosen = [first];
    for (let tries = 0; tries < 8 && chosen.length < many; tries += 1) {
      const other = this.#pick(this.#groups);
      if (!chosen.includes(other) && this.#isNear(first, other)) chosen.push(other);
    }
    return random() < 0.5 ? chosen : chosen.reverse();
  }

  #pick<Of>(list: readonly Of[]): Of {
    return list[Math.floor(this.#wish.random() * list.length)]!;
  }

  #isNear(one: number, other: number): boolean {
    const [a, b] = [this.#spanOf(one), this.#spanOf(other)];
    return a.from <= b.to && b.from <= a.to;
  }

  #spanOf(group: number) {
    let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const task of this.#draft.nets[group]!.members) {
      const start = this.#draft.starts[task];
      if (start === undefined) continue;
      from = Math.min(from, start);
      to = Math.max(to, start);
    }
    return { from, to };
  }

  #takeOff(groups: readonly number[]): Stood {
    const draft = this.#draft;
    const before = {
      starts: draft.starts.slice(),
      crews: draft.crews.slice(),
      lateBy: draft.lateBy.slice(),
      batches: draft.batches,
    };
    for (const group of groups) unplace(draft, group);
    markBatches(draft.board, draft.batches, -1);
    draft.batches = draft.batches.filter((batch) => this.#isUsed(batch));
    markBatches(draft.board, draft.batches, 1);
    return before;
  }

  /** Do all its uses still stand? */
  #isUsed({ store, uses }: Batch): boolean {
    const all = this.#problem.stores[store]!.uses;
    return uses.every(({ use }) => this.#draft.starts[all[use]!.task] !== undefined);
  }

  #putBack(groups: readonly number[], before: Stood): void {
    const draft = this.#draft;
    for (const group of groups) unplace(draft, group);
    markBatches(draft.board, draft.batches, -1);
    for (const group of groups) standGroup(draft, group, before);
    markBatches(draft.board, before.batches, 1);
    draft.batches = before.batches;
    for (const group of groups) draft.lateBy[group] = before.lateBy[group]!;
  }

  #place(group: number): boolean {
    const draft = this.#draft;
    const worst = draft.lateBy[group]!;
    const lates = worst > 0 ? [0, Math.floor(worst / 2), worst - 1, worst] : [0];
    for (const late of lates) {
      if (!placeGroup(draft, group, { late, offset: 0, pulls: TUNED.pulls })) continue;
      draft.lateBy[group] = late;
      return true;
    }
    return false;
  }

  #price(): number {
    return costOf(this.#problem, planFrom(this.#draft));
  }
}

/** The groups of a plan on a fresh board, as they stand in it; what was left as soon as can be is not. */
export function standAll(draft: Draft, groups: readonly number[], plan: Plan): void {
  for (const group of groups) standGroup(draft, group, plan);
  draft.batches = plan.batches;
  markBatches(draft.board, plan.batches, 1);
  plan.lateBy.forEach((late, group) => {
    draft.lateBy[group] = late;
  });
  const { groups: all } = draft.problem;
  draft.left.push(...plan.left.filter((group) => all[group]!.towards === 'late'));
}

function standGroup(draft: Draft, group: number, from: Pick<Plan, 'starts' | 'crews'>): void {
  const net = draft.nets[group]!;
  for (const index of net.members) {
    const start = from.starts[index];
    if (start !== undefined) stand(draft, net, index, { start, crew: from.crews[index]! });
  }
}

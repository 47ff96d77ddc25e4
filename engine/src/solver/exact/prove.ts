// A plan made better by a search that learns, up to the best there is where there is work enough to
// prove it. Rounds in which all is open alternate with rounds in which most groups stay where they
// are: what is learned in one holds in all.

import type { Plan, Problem } from '../problem.ts';
import { atLeast, atMost, type Literal, type Unknown } from './field.ts';
import { type Model, modelOf, TENTHS } from './model.ts';
import { costIn, likeFound, likePlan, planIn } from './model-plan.ts';

export interface ProveWish {
  readonly random: () => number;
  /** Bounds that may be raised. */
  readonly work: number;
  /** Told of every plan that the model prices lower. */
  readonly onFound: (plan: Plan) => void;
  readonly isStopped?: () => boolean;
}

export interface Proven {
  /** No plan of the model costs less than the last that was found, or the one at hand, by more than this. */
  readonly gap: number;
  readonly work: number;
}

/** @tuned on drawn meals, seeds 1 to 20 of small and medium; it buys half of what medium ones lack */
const TUNED = {
  /** Clashes of a round: with all open, times the Luby number of the round; with most held. */
  open: 40,
  held: 60,
  /** So many groups or fewer are never held. */
  few: 5,
  /** How often most is held, and how many are open then, at most. */
  often: 0.75,
  most: 5,
  /** Batches more than the plan at hand has. */
  spare: 1,
  /** So much of what is open between the best and what is proven is hoped for at once, at most. */
  hope: 0.2,
  /** Work after which somebody is asked whether to stop. */
  breath: 20_000,
};

/** @source lubySinclairZuckerman1993 (from memory) for the length of rounds; to try first what stands
 *  in the best plan is common practice, no source */
export function proveBest(problem: Problem, from: Plan, wish: ProveWish): Proven {
  const model = modelOf(problem, from, TUNED.spare);
  const { prover } = model;
  prover.begin();
  let best = likePlan(model, from);
  prover.always(atMost(model.cost, best - model.step));
  const groups = groupsIn(model);
  let hope = TUNED.hope;
  for (let round = 0; prover.work < wish.work && wish.isStopped?.() !== true; round += 1) {
    const isHeld = groups.length > TUNED.few && wish.random() < TUNED.often;
    const hoped =
      best - Math.max(model.step, Math.floor(hope * (best - prover.field.always[2 * model.cost]!)));
    const held = [atMost(model.cost, hoped), ...(isHeld ? heldOf(model, groups, wish.random) : [])];
    const clashes = isHeld ? TUNED.held : TUNED.open * luby(round);
    const work = Math.min(wish.work, prover.work + TUNED.breath);
    const outcome = prover.search({ clashes, work, held });
    if (outcome === 'none') return { gap: 0, work: prover.work };
    if (outcome === 'held' && !isHeld) prover.always(atLeast(model.cost, hoped + 1));
    if (outcome !== 'found') {
      hope /= 2;
      continue;
    }
    hope = Math.min(TUNED.hope, 2 * hope);
    wish.onFound(planIn(model, from));
    likeFound(model);
    best = costIn(model);
    prover.always(atMost(model.cost, best - model.step));
  }
  return { gap: (best - prover.field.always[2 * model.cost]!) / TENTHS, work: prover.work };
}

/** A plan on time of the groups that stand in a late one; undefined proves nothing. */
export function findOnTime(
  problem: Problem,
  late: Plan,
  wish: Omit<ProveWish, 'onFound'>,
): Plan | undefined {
  const from = { ...late, lateBy: late.lateBy.map(() => 0), broken: [] };
  const model = modelOf(problem, from, TUNED.spare + 1);
  const { prover } = model;
  prover.begin();
  likePlan(model, from);
  for (let round = 0; prover.work < wish.work && wish.isStopped?.() !== true; round += 1) {
    const work = Math.min(wish.work, prover.work + TUNED.breath);
    const outcome = prover.search({ clashes: TUNED.open * luby(round), work, held: [] });
    if (outcome === 'found') return planIn(model, from);
    if (outcome === 'none') return undefined;
  }
  return undefined;
}

/** Tasks of each group that is in the model. */
function groupsIn({ problem, starts }: Model): readonly (readonly number[])[] {
  const groups = new Map<number, number[]>();
  problem.tasks.forEach(({ group }, task) => {
    if (starts[task] !== undefined) groups.set(group, [...(groups.get(group) ?? []), task]);
  });
  return [...groups.values()];
}

/** All but a few groups stay where they are, and with whom. */
function heldOf(
  model: Model,
  groups: readonly (readonly number[])[],
  random: () => number,
): readonly Literal[] {
  const open = new Set<number>();
  const many = 2 + Math.floor(random() * (TUNED.most - 1));
  const first = Math.floor(random() * groups.length);
  open.add(first);
  for (let tries = 0; tries < 20 && open.size < many; tries += 1) {
    const other = Math.floor(random() * groups.length);
    if (tries > 10 || isNear(model, groups[first]!, groups[other]!)) open.add(other);
  }
  const { liked } = model.prover;
  const unknowns = groups.flatMap((tasks, group) =>
    open.has(group) ? [] : tasks.flatMap((task) => unknownsOf(model, task)),
  );
  return unknowns.flatMap((unknown) => [
    atLeast(unknown, liked[unknown]!),
    atMost(unknown, liked[unknown]!),
  ]);
}

function isNear({ starts, prover }: Model, one: readonly number[], other: readonly number[]) {
  const span = (tasks: readonly number[]) => {
    const own = tasks.map((task) => prover.liked[starts[task]!]!);
    return { from: Math.min(...own), to: Math.max(...own) };
  };
  const [a, b] = [span(one), span(other)];
  return a.from <= b.to && b.from <= a.to;
}

function unknownsOf({ starts, seats }: Model, task: number): readonly Unknown[] {
  const flags = seats[task]!.flatMap((seat) =>
    [...seat.values()].flatMap((literal) => (literal === 'always' ? [] : [literal.side >> 1])),
  );
  return [starts[task]!, ...new Set(flags)];
}

/** 1 1 2 1 1 2 4 1 1 2 … */
function luby(round: number): number {
  let size = 1;
  while (size < round + 1) size = 2 * size + 1;
  let at = round;
  while (size - 1 !== at) {
    size = (size - 1) / 2;
    at %= size;
  }
  return (size + 1) / 2;
}

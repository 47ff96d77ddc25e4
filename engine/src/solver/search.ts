// Can a better plan be found? First the groups that squeak go to the front; then small seeded changes
// of order and offsets, kept when no worse. Anytime; work is counted in decodes, so results repeat.

import { costOf } from './cost.ts';
import { type Decoded, type DecodeWish, decode } from './decode.ts';
import { groupNets } from './net.ts';
import type { Plan, Problem } from './problem.ts';

export interface SearchWish {
  readonly seed: number;
  /** Work allowed, in decodes that go through at the first try; one is always made. */
  readonly decodes: number;
}

export interface Found {
  readonly plan: Plan;
  readonly cost: number;
  /** Plans made. */
  readonly decodes: number;
  /** 'sound': on time with nothing broken; 'late': the least late that was found. */
  readonly status: 'sound' | 'late';
}

interface Trial extends Decoded {
  readonly wish: DecodeWish;
  readonly cost: number;
}

/** The best plan found within the decodes allowed. */
export function searchPlan(problem: Problem, search: SearchWish): Found {
  const nets = groupNets(problem);
  const tryOut = (wish: DecodeWish): Trial => {
    const decoded = decode(problem, wish, nets);
    return { ...decoded, wish, cost: costOf(problem, decoded.plan) };
  };
  const offsets = problem.groups.map(() => 0);
  let best = tryOut({ order: firstOrder(problem), offsets });
  let latest = best;
  let decodes = 1;
  let attempts = best.attempts;
  const budget = search.decodes * Math.max(1, problem.groups.length);
  const random = randomFrom(search.seed);
  while (decodes < search.decodes) {
    const isSqueaking = latest.squeaky.length > 0 && decodes <= SQUEAKS_MOST;
    if (attempts >= budget && !isSqueaking) break;
    latest = tryOut(isSqueaking ? squeakFirst(latest) : changed(best.wish, random));
    if (latest.cost <= best.cost) best = latest;
    decodes += 1;
    attempts += Math.max(1, latest.attempts);
  }
  const { plan, cost } = best;
  const isLate = plan.lateBy.some((late) => late > 0);
  const status = isLate || plan.broken.length > 0 ? 'late' : 'sound';
  return { plan, cost, decodes, status };
}

/** Tries to bring what squeaks to the front, made even when the work allowed is used up. */
const SQUEAKS_MOST = 4;

/** As given, the dearest lateness first: what can wait least is placed while all is free. */
function firstOrder(problem: Problem): readonly number[] {
  return problem.groups
    .map((group, index) => ({ index, price: group.latePrice }))
    .sort((a, b) => b.price - a.price || a.index - b.index)
    .map((each) => each.index);
}

function squeakFirst(trial: Trial): DecodeWish {
  const loud = new Set(trial.squeaky);
  const order = [...trial.squeaky, ...trial.wish.order.filter((group) => !loud.has(group))];
  return { order, offsets: trial.wish.offsets };
}

function changed(wish: DecodeWish, random: () => number): DecodeWish {
  const order = [...wish.order];
  const offsets = [...wish.offsets];
  const pick = () => Math.floor(random() * order.length);
  if (random() < 0.6) {
    const [moved] = order.splice(pick(), 1);
    order.splice(pick(), 0, moved!);
  } else {
    const at = pick();
    offsets[at] = Math.max(0, offsets[at]! + Math.round((random() - 0.5) * 16));
  }
  return { order, offsets };
}

/** Lehmer generator, modulus 2^31 - 1: the same numbers everywhere. @source parkMiller1988 (grade D) */
function randomFrom(seed: number): () => number {
  let state = (Math.abs(Math.trunc(seed)) % 2_147_483_646) + 1;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

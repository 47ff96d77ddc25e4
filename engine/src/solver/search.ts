// Can a better plan be found? First many orders are tried for one that is on time, each given up as
// soon as a group misses, that group then going first. Failing that, whole plans with what is late
// declared. Then small seeded changes of order and offsets, kept when no worse. Work is counted in
// placings, so results repeat.

import { costOf } from './cost.ts';
import {
  type Decoded,
  type DecodeWish,
  decode,
  decodeOnTime,
  finishedPlan,
  leastLatenesses,
  type Missed,
} from './decode.ts';
import { improvePlan } from './improve.ts';
import type { Learner } from './learned-plan.ts';
import { type GroupNet, groupNets } from './net.ts';
import { firstOrders } from './orders.ts';
import type { Plan, Problem } from './problem.ts';
import { randomFrom } from './random.ts';

export interface SearchWish {
  readonly seed: number;
  /** Work allowed, in decodes that go through at the first try; one is always made. */
  readonly decodes: number;
  /** Told of the first plan and of every better one. */
  readonly onBetter?: (found: Found) => void;
  /** Asked between steps, after the first plan: what is best by then is the answer. */
  readonly isStopped?: () => boolean;
  /** Learns from contradictions where there is work enough; handed in, so that a first screen need not load it. */
  readonly learner?: Learner;
}

export interface Found {
  readonly plan: Plan;
  readonly cost: number;
  /** Plans made. */
  readonly decodes: number;
  /** 'sound': on time with nothing broken; 'late': the least late that was found. */
  readonly status: 'sound' | 'late';
  /** Proven: no plan costs less by more than this that makes at most one batch more than the first. */
  readonly gap?: number;
}

interface Trial extends Decoded {
  readonly wish: DecodeWish;
  readonly cost: number;
  readonly gap?: number;
}

/** What a search carries along; `attempts` and `decodes` are counted up. */
interface Search {
  readonly problem: Problem;
  readonly nets: readonly GroupNet[];
  readonly allowed: readonly number[];
  readonly random: () => number;
  readonly wish: SearchWish;
  attempts: number;
  decodes: number;
  /** Price of the plan that was shown at once. */
  shown?: number;
}

/** The best plan found within the work allowed: one on time, else the least late. */
export function searchPlan(problem: Problem, wish: SearchWish): Found {
  const nets = groupNets(problem);
  const allowed = leastLatenesses(problem, nets);
  const search = newSearch(problem, nets, { allowed, wish });
  const shown = wish.onBetter === undefined ? undefined : quickly(search);
  const first = firstOnTime(search);
  if ('plan' in first) return foundFrom(search, improved(search, first));
  const quick = shown ?? quickly(search);
  return foundFrom(search, improved(search, afterAll(search, quick, first.order)));
}

/** On time by learning, which is quick where there is little to learn; else the least late. */
function afterAll(search: Search, quick: Trial, order: readonly number[]): Trial {
  const isSmall = search.problem.tasks.length <= LEARNING.small;
  const soon = isSmall ? onTimeAfterAll(search, quick) : undefined;
  if (soon !== undefined) return soon;
  const late = leastLate(search, order);
  const least = quick.cost < late.cost ? quick : late;
  if (isSmall || least.plan.lateBy.every((minutes) => minutes === 0)) return least;
  return onTimeAfterAll(search, least) ?? least;
}

/** Found by learning where no order came out on time; only where there is work enough for it. */
function onTimeAfterAll(search: Search, late: Trial): Trial | undefined {
  const { problem, nets, wish } = search;
  const placings = wish.decodes * Math.max(1, problem.groups.length);
  if (wish.learner === undefined || !isWorthLearning(search, placings)) return undefined;
  if (search.allowed.some((least) => least > 0)) return undefined;
  const plan = wish.learner.onTime(problem, nets, late.plan, {
    random: search.random,
    work: LEARNING.onTime * LEARNING.workEach * placings,
    finish: finishedPlan,
    ...(wish.isStopped === undefined ? {} : { isStopped: wish.isStopped }),
  });
  return plan && { ...late, plan, cost: costOf(problem, plan) };
}

/** The first order whole, late as it is: something to show at once. Not counted: shown or not, the
 * search goes the same way. */
function quickly(search: Search): Trial {
  const { problem, nets, wish, attempts, decodes } = search;
  const [order] = firstOrders(problem, nets);
  const trial = tryLate(search, { order: order!, offsets: problem.groups.map(() => 0) })!;
  wish.onBetter?.(foundFrom(search, trial));
  search.shown = trial.cost;
  Object.assign(search, { attempts, decodes });
  return trial;
}

/** Only one that is on time; undefined if none was found, which proves nothing. */
export function searchOnTime(problem: Problem, wish: SearchWish): Found | undefined {
  const nets = groupNets(problem);
  const allowed = leastLatenesses(problem, nets);
  if (allowed.some((late) => late > 0)) return undefined;
  const search = newSearch(problem, nets, { allowed, wish });
  const first = firstOnTime(search, EASED);
  return 'plan' in first ? foundFrom(search, improved(search, first)) : undefined;
}

function newSearch(
  problem: Problem,
  nets: readonly GroupNet[],
  told: { readonly allowed: readonly number[]; readonly wish: SearchWish },
): Search {
  return { problem, nets, ...told, random: randomFrom(told.wish.seed), attempts: 0, decodes: 0 };
}

function foundFrom(search: Search, { plan, cost, gap }: Trial): Found {
  const isLate = plan.lateBy.some((late) => late > 0);
  const status = isLate || plan.broken.length > 0 ? 'late' : 'sound';
  return { plan, cost, decodes: search.decodes, status, ...(gap === undefined ? {} : { gap }) };
}

interface Effort {
  readonly repairs: number;
  readonly chances: number;
  /** Of the first orders. */
  readonly orders: number;
}

/**
 * Repairs of each first order, orders drawn by chance after them if none is on time, and placings
 * after which no more are drawn.
 * @tuned on sixty varied camps: nothing more came out on time with twice as many of each
 */
const FULL: Effort = { repairs: 4, chances: 24, orders: 5 };
/** A meal eased after it was found late. */
const EASED: Effort = { repairs: 1, chances: 0, orders: 2 };
const CHANCE_PLACINGS = 200;

/** The cheapest of the first orders that are on time, or the order that came furthest. */
function firstOnTime(search: Search, effort: Effort = FULL): Trial | Furthest {
  const { chances, repairs, orders } = effort;
  const { problem, nets, random } = search;
  const offsets = problem.groups.map(() => 0);
  const tried = new Set<string>();
  let best: Trial | undefined;
  let furthest: Furthest = { order: problem.groups.map((_, group) => group), placed: -1 };
  const follow = (wish: DecodeWish) => {
    const end = repaired(search, wish, { tried, repairs });
    if (end === undefined) return;
    if (!('plan' in end)) furthest = end.placed > furthest.placed ? end : furthest;
    else if (best === undefined || end.cost < best.cost) best = end;
  };
  for (const order of firstOrders(problem, nets).slice(0, orders)) follow({ order, offsets });
  for (let chance = 0; chance < chances && best === undefined; chance += 1) {
    if (search.attempts > CHANCE_PLACINGS) break;
    follow(changed(changed({ order: furthest.order, offsets }, random), random));
  }
  return best ?? furthest;
}

interface Furthest {
  readonly order: readonly number[];
  /** Groups that stood before the first that missed. */
  readonly placed: number;
}

/** What misses goes first, a few times; undefined when the order was tried before. */
function repaired(
  search: Search,
  from: DecodeWish,
  { tried, repairs }: { readonly tried: Set<string>; readonly repairs: number },
): Trial | Furthest | undefined {
  let wish = from;
  let furthest: Furthest | undefined;
  for (let repair = 0; repair <= repairs; repair += 1) {
    const key = `${wish.order.join()} ${wish.offsets.join()}`;
    if (tried.has(key)) break;
    tried.add(key);
    const trial = tryOnTime(search, wish);
    if ('plan' in trial) return trial;
    const { placed, missed } = trial;
    if (placed > (furthest?.placed ?? -1)) furthest = { order: wish.order, placed };
    if (placed === 0) break;
    wish = { ...wish, order: withFirst(wish.order, [missed]) };
  }
  return furthest;
}

function tryOnTime(search: Search, wish: DecodeWish): Trial | Missed {
  const { problem, nets, allowed } = search;
  const outcome = decodeOnTime(problem, { ...wish, allowed }, nets);
  search.decodes += 1;
  search.attempts += Math.max(1, outcome.attempts);
  if ('missed' in outcome) return outcome;
  return { ...outcome, wish, cost: costOf(problem, outcome.plan) };
}

/**
 * Learning begins where so many placings may be made: before that its model is not worth making.
 * Large steps get their share first. A placing takes about as long as so many bounds raised.
 * @tuned on drawn meals, seeds 1 to 20; the shares by what is left of the gap after a second
 */
const LEARNING = {
  from: 600,
  /** A plan for a first look asks for fewer, however large the meal. */
  fromDecodes: 50,
  /** Tasks; more are learned from slowly, so that large steps get more there. */
  small: 120,
  steps: 0.08,
  stepsOfMany: 0.4,
  workEach: 60,
  onTime: 0.5,
};

/** Better in waiting, hand-overs and the like; never later. What is broken stays as it is. */
function improved(search: Search, first: Trial): Trial {
  const { problem, wish } = search;
  if (first.cost < (search.shown ?? Number.POSITIVE_INFINITY)) {
    wish.onBetter?.(foundFrom(search, first));
  }
  if (first.plan.broken.length > 0 || wish.decodes < 2) return first;
  const placings = (wish.decodes - 1) * Math.max(1, problem.groups.length);
  const { learner } = wish;
  if (learner === undefined || !isWorthLearning(search, placings))
    return byLargeSteps(search, first, placings);
  const isSmall = problem.tasks.length <= LEARNING.small;
  const steps = Math.floor((isSmall ? LEARNING.steps : LEARNING.stepsOfMany) * placings);
  const made = byLargeSteps(search, first, steps);
  return byLearning(search, made, { learner, placings: placings - steps });
}

const isWorthLearning = ({ wish }: Search, placings: number) =>
  placings >= LEARNING.from && wish.decodes >= LEARNING.fromDecodes;

function byLargeSteps(search: Search, first: Trial, placings: number): Trial {
  const { problem, nets, random } = search;
  const made = improvePlan(problem, nets, first.plan, {
    random,
    placings,
    finish: finishedPlan,
    ...toldOf(search, first),
  });
  countPlacings(search, made.placings);
  return { ...first, plan: made.plan, cost: made.cost };
}

function byLearning(
  search: Search,
  first: Trial,
  { learner, placings }: { readonly learner: Learner; readonly placings: number },
): Trial {
  const { problem, nets, random } = search;
  const { plan, cost, work, gap } = learner.better(problem, nets, first.plan, {
    random,
    work: placings * LEARNING.workEach,
    finish: finishedPlan,
    ...toldOf(search, first),
  });
  countPlacings(search, Math.ceil(work / LEARNING.workEach));
  return { ...first, plan, cost, ...(gap === undefined ? {} : { gap }) };
}

function toldOf(search: Search, first: Trial) {
  const { onBetter, isStopped } = search.wish;
  return {
    onBetter: (plan: Plan, cost: number) => onBetter?.(foundFrom(search, { ...first, plan, cost })),
    ...(isStopped === undefined ? {} : { isStopped }),
  };
}

function countPlacings(search: Search, placings: number): void {
  search.attempts += placings;
  search.decodes += Math.ceil(placings / Math.max(1, search.problem.groups.length));
}

/** Whole plans, late as they are: what squeaks brought to the front, then the other first orders. */
function leastLate(search: Search, order: readonly number[]): Trial {
  const { problem, nets } = search;
  const offsets = problem.groups.map(() => 0);
  const others = firstOrders(problem, nets).map((each) => ({ order: each, offsets }));
  let best = allALittleLate(search, order) ?? tryLate(search, { order, offsets })!;
  let latest: Trial | undefined = best;
  const share = LATE_SHARE * search.wish.decodes * problem.groups.length;
  const allowed = Math.max(LATE_PLACINGS, share);
  const budget = search.attempts + allowed;
  for (let turn = 0; turn < Math.max(search.wish.decodes, SQUEAKS_LEAST); turn += 1) {
    if (search.attempts >= budget || search.wish.isStopped?.() === true) break;
    const squeaks: DecodeWish | undefined =
      turn < SQUEAKS_MOST && latest !== undefined && latest.squeaky.length > 0
        ? { ...latest.wish, order: withFirst(latest.wish.order, latest.squeaky) }
        : undefined;
    const isRound = squeaks?.order.join() === latest?.wish.order.join();
    const next = isRound ? others.shift() : squeaks;
    const wish = next ?? others.shift() ?? loosened(best, search.random);
    latest = tryLate(search, wish, { cost: best.cost, attempts: LATE_PLACINGS });
    if (latest !== undefined && latest.cost <= best.cost) best = latest;
  }
  return best;
}

/**
 * Everything so much late at most: no dish bears all the lateness. First a limit that can be kept is
 * looked for, then it is halved towards the last that could not.
 */
function allALittleLate(search: Search, furthest: readonly number[]): Trial | undefined {
  let failed = 0;
  let best: Trial | undefined;
  let kept = Number.POSITIVE_INFINITY;
  for (const late of [20, 60, 150]) {
    best = withinLateness(search, furthest, late);
    if (best !== undefined) kept = late;
    if (best !== undefined) break;
    failed = late;
  }
  for (let turn = 0; turn < 2 && best !== undefined && kept - failed > 2; turn += 1) {
    const late = Math.ceil((failed + kept) / 2);
    const less = withinLateness(search, furthest, late);
    if (less === undefined) failed = late;
    else [best, kept] = [less.cost < best.cost ? less : best, late];
  }
  return best;
}

function withinLateness(
  search: Search,
  furthest: readonly number[],
  late: number,
): Trial | undefined {
  const { problem, nets } = search;
  const eased = { ...search, allowed: search.allowed.map((own) => own + late) };
  const offsets = problem.groups.map(() => 0);
  for (const order of [furthest, ...firstOrders(problem, nets).slice(0, 2)]) {
    const end = repaired(eased, { order, offsets }, { tried: new Set(), repairs: 0 });
    search.attempts = eased.attempts;
    if (end !== undefined && 'plan' in end) return end;
  }
  return undefined;
}

/** Placings spent on looking for something less late. @tuned so that a late meal stays in its time */
const LATE_PLACINGS = 600;
/** Of all work, where there is much: the rest goes into making the least late one better. */
const LATE_SHARE = 0.3;
/** Whole plans tried even when few decodes are allowed; squeaks may go round in circles. */
const SQUEAKS_LEAST = 4;
const SQUEAKS_MOST = 6;

function tryLate(
  search: Search,
  wish: DecodeWish,
  most?: { readonly cost: number; readonly attempts: number },
): Trial | undefined {
  const { problem, nets } = search;
  const decoded = decode(problem, wish, { nets, ...(most === undefined ? {} : { most }) });
  search.decodes += 1;
  search.attempts += Math.max(1, decoded.attempts);
  if (!('plan' in decoded)) return undefined;
  return { ...decoded, wish, cost: costOf(problem, decoded.plan) };
}

const withFirst = (order: readonly number[], first: readonly number[]) => [
  ...first,
  ...order.filter((group) => !first.includes(group)),
];

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

/** A change like any other, or one group pulled out of the way by about what is late; offsets that
 * no longer buy anything are dropped now and then. */
function loosened(trial: Trial, random: () => number): DecodeWish {
  const worst = Math.max(0, ...trial.plan.lateBy);
  if (worst === 0 || random() < 0.5) return changed(trial.wish, random);
  const isFresh = random() < 0.5;
  const offsets = trial.wish.offsets.map((offset) => (isFresh ? 0 : offset));
  const pulled = Math.floor(random() * offsets.length);
  offsets[pulled] = Math.round(random() * Math.min(30, 2 * worst));
  const { order } = trial.wish;
  return { order: random() < 0.5 ? withFirst(order, [pulled]) : order, offsets };
}

// One try at a day: strictly to the minute, then eased one thing at a time until it is on time.

import type { Notice } from '../notice/notice.ts';
import { type Found, searchOnTime, searchPlan } from '../solver/search.ts';
import { type Unwashed, withWashes } from './clean-hands.ts';
import type { Serving, TimetableRequest } from './day-sheet.ts';
import { hurryDough, hurryNotices } from './hurry.ts';
import { withTimeInHand } from './in-hand.ts';
import { layOut } from './lay-out.ts';
import { taskOfVisit } from './round.ts';
import { servedWhenDone } from './served-when-done.ts';
import { hopelessDish } from './unplanned.ts';
import { type DayWish, type DayWork, dayWork } from './work.ts';

export interface TryWish {
  readonly seed?: number;
  /** Plans tried; more is slower and better. */
  readonly decodes?: number;
}

/** Tuned: two camps of 2 and 7 dishes stay under 20 and 80 ms on the machine they were timed on. */
const DECODES = 16;

export interface Attempt {
  readonly day: DayWork;
  readonly found: Found;
  readonly laid: ReturnType<typeof layOut>;
  /** Hands that find no minute for washing. */
  readonly unwashed: readonly Unwashed[];
  /** Worst lateness; infinite where something is broken. */
  readonly worst: number;
  readonly extra: readonly Notice[];
  readonly wish: DayWish;
}

/**
 * To the minute and with time in hand where that can be; if late, with jobs a little off their minutes, then with the dough hurried, then
 * with a free-from dish not first, then both.
 */
export function tryEasing(request: TimetableRequest, options: TryWish): Attempt {
  const strict = onTime(request, options, STRICT);
  if (strict?.worst === 0) {
    const { inHand = 0 } = request;
    return surer(request, options, inHand) ?? strict;
  }
  const plain = attempt(request, options, { isFreeFromFirst: true, isLoose: true });
  if (plain.worst === 0 || hopelessIn(request, plain) !== undefined) return plain;
  const hurried = hurriedAttempt(request, options, plain);
  if (hurried !== undefined) return hurried;
  if (!request.dishes.some((work) => work.dish.freeFrom)) return plain;
  if (plain.worst < WORTH_NOT_FIRST) return plain;
  const wish = { isFreeFromFirst: false, isLoose: true };
  const unordered = onTime(request, options, wish);
  return unordered ?? hurriedAttempt(request, options, { ...plain, wish }) ?? plain;
}

const STRICT: DayWish = { isFreeFromFirst: true, isLoose: false };

/** To the minute, with time in hand for as many dishes as a plan is found for. */
export const surer = (
  request: TimetableRequest,
  { decodes = DECODES, ...options }: TryWish,
  wished: number,
): Attempt | undefined =>
  withTimeInHand(request, wished, (inHand) => {
    const effort = { ...options, decodes: Math.min(decodes, SURER_DECODES) };
    const found = onTime(request, effort, { ...STRICT, inHand });
    return found?.worst === 0 && found.unwashed.length === 0 ? found : undefined;
  });

/** Tuned: with more, no more dishes of the demo camps had time in hand. */
const SURER_DECODES = 4;

export const hopelessIn = (request: TimetableRequest, { day, found, laid }: Attempt) =>
  hopelessDish(request, day, { plan: found.plan, servings: laid.servings });

/** On time by a quicker rise, or undefined. */
function hurriedAttempt(
  request: TimetableRequest,
  options: TryWish,
  late: Attempt,
): Attempt | undefined {
  const hurried = hurryDough(request, late.worst);
  const eased = hurried && onTime(hurried, options, late.wish);
  return eased && { ...eased, extra: hurryNotices(request, eased.laid.jobs) };
}

/** A free-from dish gives up being first only if all is served this much sooner [min]. */
const WORTH_NOT_FIRST = 15;

function attempt(request: TimetableRequest, options: TryWish, wish: DayWish): Attempt {
  const { decodes = DECODES, seed = 1 } = options;
  const day = dayWork(request, wish);
  const first = attemptOf(request, day, searchPlan(day.problem, { seed, decodes }), wish);
  return washed(request, options, first);
}

export function onTime(
  request: TimetableRequest,
  options: TryWish,
  wish: DayWish,
): Attempt | undefined {
  const { decodes = DECODES, seed = 1 } = options;
  const day = dayWork(request, wish);
  const found = searchOnTime(day.problem, { seed, decodes });
  return found && washed(request, options, attemptOf(request, day, found, wish));
}

function attemptOf(request: TimetableRequest, day: DayWork, made: Found, wish: DayWish): Attempt {
  const found = made.status === 'late' ? { ...made, plan: servedWhenDone(day, made.plan) } : made;
  const plain = layOut(request, day, found.plan);
  const { jobs, left } = withWashes(request, plain.jobs);
  const worst = worstOf(found.plan.broken.length, plain.servings);
  return { day, found, laid: { ...plain, jobs }, unwashed: left, worst, extra: [], wish };
}

/** Where hands find no minute to wash, it is made a job of its own and all is planned again. */
function washed(request: TimetableRequest, options: TryWish, first: Attempt): Attempt {
  const { decodes = DECODES, seed = 1 } = options;
  let best = first;
  let before = new Set<string>();
  let last = first;
  for (let round = 0; round < WASH_ROUNDS && best.unwashed.length > 0; round += 1) {
    before = new Set([...before, ...last.unwashed.map(({ job }) => taskOfVisit(job.id))]);
    const wish = { ...first.wish, washFirst: before };
    const day = dayWork(request, wish);
    const effort = { seed, decodes: Math.min(decodes, 4) };
    const found = searchOnTime(day.problem, effort);
    if (found === undefined) break;
    last = attemptOf(request, day, found, wish);
    const isBetter = last.unwashed.length < best.unwashed.length && last.worst <= best.worst;
    if (isBetter) best = last;
  }
  return best;
}

/** Each round may hand work to somebody else, who then has to wash. */
const WASH_ROUNDS = 2;

/** Worst lateness; beyond all measure if the plan can't even be carried out. */
const worstOf = (broken: number, servings: readonly Serving[]) =>
  broken > 0 ? Number.POSITIVE_INFINITY : Math.max(0, ...servings.map((serving) => serving.lateBy));

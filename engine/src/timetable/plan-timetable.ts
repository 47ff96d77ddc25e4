// The day sheet of a meal: planned backwards from serving over hands, ovens, chimneys and lit coals.

import { type Notice, notice } from '../notice/notice.ts';
import { minutes } from '../quantity/unit.ts';
import type { Plan } from '../solver/problem.ts';
import { type Found, searchOnTime, searchPlan } from '../solver/search.ts';
import { upkeepGaps } from '../solver/upkeep.ts';
import { advise } from './advise.ts';
import { type Unwashed, withWashes } from './clean-hands.ts';
import type { DaySheet, Job, Serving, TimetableRequest } from './day-sheet.ts';
import { TEND_UNFED } from './habits.ts';
import { hurryDough, hurryNotices } from './hurry.ts';
import { layOut } from './lay-out.ts';
import { isUsedAgain } from './oven-turns.ts';
import { provenTrouble } from './proof.ts';
import { hopelessDish, unplannedNotice } from './unplanned.ts';
import { type DayWish, type DayWork, dayWork } from './work.ts';

export interface TimetableOptions {
  readonly seed?: number;
  /** Plans tried; more is slower and better. */
  readonly decodes?: number;
  /** Look for advice when something is late. */
  readonly isAdvised?: boolean;
}

/** Tuned: two camps of 2 and 7 dishes stay under 20 and 80 ms on the machine they were timed on. */
const DECODES = 16;

/**
 * Who does what when, so that every dish is served in time if that can be found.
 *
 * Backwards from each serving, every job as late as it can be; what can't be in time comes out
 * late, never dropped. Not found in time is not a proof; 'impossible' is only said with one.
 *
 * @param request  the camp, its dishes with their loads, coal and bake plans
 * @returns        the sheet; without hands one that has no jobs
 * @notice         TIMETABLE_LATE and its like, dish by dish
 * @source         ours: backward decoder with a soft fallback, checked against exhaustive search
 */
export function planTimetable(request: TimetableRequest, options: TimetableOptions = {}): DaySheet {
  if (request.camp.hands.length === 0) return withoutHands();
  if (request.dishes.length === 0) return emptySheet([]);
  const best = tryEasing(request, options);
  const aside = hopelessIn(request, best);
  if (aside === undefined) return sheetOf(request, best, options);
  const dishes = request.dishes.filter((work) => work.dish.id !== aside.dish);
  const rest = planTimetable({ ...request, dishes }, options);
  const status = rest.status === 'planned' ? 'late' : rest.status;
  return { ...rest, status, notices: [unplannedNotice(aside), ...rest.notices] };
}

function sheetOf(request: TimetableRequest, best: Attempt, options: TimetableOptions): DaySheet {
  const { isAdvised = true } = options;
  const { day, found, laid, extra } = best;
  const proven = found.status === 'late' ? provenTrouble(request, day) : [];
  const isProven = proven.length > 0;
  const worstFor = (eased: TimetableRequest) => worstWhen(eased, best);
  const isShort = isAdvised && found.status === 'late';
  return {
    status: isProven ? 'impossible' : found.status === 'late' ? 'late' : 'planned',
    ...laid,
    advice: isShort ? advise(request, worstFor, best.worst) : [],
    notices: [
      ...proven,
      ...lateNotices(laid.servings),
      ...brokenNotices(day, found.plan),
      ...leftNotices(day, found.plan),
      ...longWaits(request, laid.servings),
      ...unfedNotices(day, found.plan),
      ...unwashedNotices(best.unwashed),
      ...offMinuteNotices(laid.jobs),
      ...extra,
      ...day.notices,
    ],
  };
}

interface Attempt {
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
 * To the minute; if late, with jobs a little off their minutes, then with the dough hurried, then
 * with a free-from dish not first, then both.
 */
function tryEasing(request: TimetableRequest, options: TimetableOptions): Attempt {
  const strict = onTime(request, options, { isFreeFromFirst: true, isLoose: false });
  if (strict?.worst === 0) return strict;
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

const hopelessIn = (request: TimetableRequest, { day, found, laid }: Attempt) =>
  hopelessDish(request, day, { plan: found.plan, servings: laid.servings });

/** On time by a quicker rise, or undefined. */
function hurriedAttempt(
  request: TimetableRequest,
  options: TimetableOptions,
  late: Attempt,
): Attempt | undefined {
  const hurried = hurryDough(request, late.worst);
  const eased = hurried && onTime(hurried, options, late.wish);
  return eased && { ...eased, extra: hurryNotices(request, eased.laid.jobs) };
}

/** A free-from dish gives up being first only if all is served this much sooner [min]. */
const WORTH_NOT_FIRST = 15;

function attempt(request: TimetableRequest, options: TimetableOptions, wish: DayWish): Attempt {
  const { decodes = DECODES, seed = 1 } = options;
  const day = dayWork(request, wish);
  const first = attemptOf(request, day, searchPlan(day.problem, { seed, decodes }), wish);
  return washed(request, options, first);
}

function onTime(
  request: TimetableRequest,
  options: TimetableOptions,
  wish: DayWish,
): Attempt | undefined {
  const { decodes = DECODES, seed = 1 } = options;
  const day = dayWork(request, wish);
  const found = searchOnTime(day.problem, { seed, decodes });
  return found && washed(request, options, attemptOf(request, day, found, wish));
}

function attemptOf(request: TimetableRequest, day: DayWork, found: Found, wish: DayWish): Attempt {
  const plain = layOut(request, day, found.plan);
  const { jobs, left } = withWashes(request, plain.jobs);
  const worst = worstOf(found.plan.broken.length, plain.servings);
  return { day, found, laid: { ...plain, jobs }, unwashed: left, worst, extra: [], wish };
}

/** Where hands find no minute to wash, it is made a job of its own and all is planned again. */
function washed(request: TimetableRequest, options: TimetableOptions, first: Attempt): Attempt {
  const { decodes = DECODES, seed = 1 } = options;
  let best = first;
  let before = new Set<string>();
  let last = first;
  for (let round = 0; round < WASH_ROUNDS && best.unwashed.length > 0; round += 1) {
    before = new Set([...before, ...last.unwashed.map(({ job }) => job.id)]);
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

/** 0 if an eased request is on time by a quick look; infinite if that does not show it. */
const worstWhen = (eased: TimetableRequest, best: Attempt): number =>
  onTime(eased, { decodes: 1 }, best.wish)?.worst ?? Number.POSITIVE_INFINITY;

/** What advice has to beat: anything does, if the plan at hand can't even be carried out. */
const worstOf = (broken: number, servings: readonly Serving[]) =>
  broken > 0 ? Number.POSITIVE_INFINITY : Math.max(0, ...servings.map((serving) => serving.lateBy));

const withoutHands = (): DaySheet => ({
  ...emptySheet([notice('TIMETABLE_NO_HANDS', 'stop')]),
  status: 'impossible',
});

const emptySheet = (notices: readonly Notice[]): DaySheet => ({
  status: 'planned',
  jobs: [],
  spans: [],
  lightings: [],
  lit: [],
  servings: [],
  advice: [],
  notices,
});

function lateNotices(servings: readonly Serving[]): readonly Notice[] {
  return servings.flatMap(({ dish, lateBy, served }) => {
    if (lateBy <= 0) return [];
    const values = { lateMinutes: lateBy, servedClockMinutes: served };
    return [notice('TIMETABLE_LATE', 'stop', { dish }, values)];
  });
}

/** One notice for each dish and rule: the first job it hits, and how many more. */
function brokenNotices(day: DayWork, plan: Plan): readonly Notice[] {
  const seen = new Map<string, { task: number; rule: string; count: number }>();
  for (const { rule, task } of plan.broken) {
    const key = `${day.meanings[task]!.dish ?? ''} ${rule}`;
    const known = seen.get(key);
    const isSooner =
      known === undefined || (plan.starts[task] ?? 0) < (plan.starts[known.task] ?? 0);
    seen.set(key, { task: isSooner ? task : known.task, rule, count: (known?.count ?? 0) + 1 });
  }
  return [...seen.values()].map(({ task, rule, count }) => {
    const { dish, oven, kind } = day.meanings[task]!;
    const pins = day.dishes.find((each) => each.work.dish.id === dish)?.work.dish.pins;
    const isPinned = pins?.coalsOnAt !== undefined || pins?.hand !== undefined;
    const about = {
      task: day.problem.tasks[task]!.id,
      ...(dish === undefined ? {} : { dish }),
      ...(oven === undefined ? {} : { oven }),
    };
    const code = isPinned ? 'TIMETABLE_PIN_NOT_KEPT' : 'TIMETABLE_NOT_KEPT';
    const startClockMinutes = plan.starts[task] ?? 0;
    return notice(code, 'stop', about, { rule, job: kind, startClockMinutes, jobs: count });
  });
}

function leftNotices(day: DayWork, plan: Plan): readonly Notice[] {
  return plan.left.map((group) =>
    notice('TIMETABLE_LEFT', 'doubt', {}, { what: day.problem.groups[group]!.id }),
  );
}

/** Waiting longer than it should, for a pinned start or for an oven that bakes again. */
function longWaits(request: TimetableRequest, servings: readonly Serving[]): readonly Notice[] {
  return request.dishes.flatMap((work) => {
    const serving = servings.find((each) => each.dish === work.dish.id);
    if (serving === undefined || serving.waits <= work.canWait) return [];
    const isPinned = work.dish.pins.coalsOnAt !== undefined;
    const isAgain = work.loads.every((load) => isUsedAgain(request, work, load));
    if (!isPinned && !(isAgain && work.loads.length > 0)) return [];
    const values = { waitMinutes: serving.waits, canWaitMinutes: minutes(work.canWait) };
    const code = isPinned ? 'TIMETABLE_PIN_WAITS' : 'TIMETABLE_OVEN_WAITS';
    return [notice(code, 'doubt', { dish: work.dish.id }, values)];
  });
}

/** The wish to wash stays, even where it costs a minute. */
function unwashedNotices(unwashed: readonly Unwashed[]): readonly Notice[] {
  return unwashed.map(({ job, hand }) => {
    const about = { hand, task: job.id, ...(job.dish === undefined ? {} : { dish: job.dish }) };
    const values = { job: job.kind, startClockMinutes: job.start };
    return notice('TIMETABLE_HANDS_NOT_WASHED', 'danger', about, values);
  });
}

/** Turns and additions that had to leave their minute, once for each load. */
function offMinuteNotices(jobs: readonly Job[]): readonly Notice[] {
  const worst = new Map<string, { readonly job: Job; readonly off: number }>();
  for (const job of jobs) {
    if (job.kind !== 'turn' && job.kind !== 'add-coals') continue;
    const lay = jobs.find((other) => other.kind === 'lay-coals' && other.load === job.load);
    const off = Math.abs(
      job.start - (lay?.end ?? job.start) - Math.round(Number(job.values.minute)),
    );
    const known = worst.get(job.load ?? '')?.off ?? OFF_MINUTES_QUIET;
    if (off > known) worst.set(job.load ?? '', { job, off });
  }
  return [...worst.values()].map(({ job, off }) => {
    const about = { task: job.id, dish: job.dish ?? '', oven: job.oven ?? '' };
    return notice('TIMETABLE_OFF_MINUTE', 'doubt', about, { job: job.kind, offMinutes: off });
  });
}

/** So much off its minute needs no word: one pair of hands at one lid does one thing at a time. */
const OFF_MINUTES_QUIET = 2;

function unfedNotices(day: DayWork, plan: Plan): readonly Notice[] {
  const gapMinutes = Math.max(0, ...upkeepGaps(day.problem, plan));
  if (gapMinutes <= TEND_UNFED) return [];
  return [notice('TIMETABLE_FIRE_UNFED', 'doubt', {}, { gapMinutes })];
}

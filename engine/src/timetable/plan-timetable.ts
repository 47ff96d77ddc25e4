// The day sheet of a meal: planned backwards from serving over hands, ovens, chimneys and lit coals.

import { type Notice, notice } from '../notice/notice.ts';
import { minutes } from '../quantity/unit.ts';
import type { Plan } from '../solver/problem.ts';
import { type Found, searchOnTime, searchPlan } from '../solver/search.ts';
import { upkeepGaps } from '../solver/upkeep.ts';
import { advise } from './advise.ts';
import type { DaySheet, Serving, TimetableRequest } from './day-sheet.ts';
import { TEND_UNFED } from './habits.ts';
import { hurryDough, hurryNotices } from './hurry.ts';
import { layOut } from './lay-out.ts';
import { isUsedAgain } from './oven-turns.ts';
import { provenTrouble } from './proof.ts';
import { type DayWork, dayWork } from './work.ts';

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
  const { isAdvised = true } = options;
  const best = tryEasing(request, options);
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
      ...extra,
      ...day.notices,
    ],
  };
}

interface Attempt {
  readonly day: DayWork;
  readonly found: Found;
  readonly laid: ReturnType<typeof layOut>;
  /** Worst lateness; infinite where something is broken. */
  readonly worst: number;
  readonly extra: readonly Notice[];
  readonly isFreeFromFirst: boolean;
}

/** As wished; if late, with the dough hurried, then with a free-from dish not first, then both. */
function tryEasing(request: TimetableRequest, options: TimetableOptions): Attempt {
  const plain = attempt(request, options, { isFreeFromFirst: true });
  if (plain.worst === 0) return plain;
  const hurried = hurriedAttempt(request, options, plain);
  if (hurried !== undefined) return hurried;
  if (!request.dishes.some((work) => work.dish.freeFrom)) return plain;
  if (plain.worst < WORTH_NOT_FIRST) return plain;
  const unordered = onTime(request, options, { isFreeFromFirst: false });
  return (
    unordered ?? hurriedAttempt(request, options, { ...plain, isFreeFromFirst: false }) ?? plain
  );
}

/** On time by a quicker rise, or undefined. */
function hurriedAttempt(
  request: TimetableRequest,
  options: TimetableOptions,
  late: Attempt,
): Attempt | undefined {
  const hurried = hurryDough(request, late.worst);
  const eased = hurried && onTime(hurried, options, late);
  return eased && { ...eased, extra: hurryNotices(request, eased.laid.jobs) };
}

/** A free-from dish gives up being first only if all is served this much sooner [min]. */
const WORTH_NOT_FIRST = 15;

interface Wish {
  readonly isFreeFromFirst: boolean;
}

function attempt(request: TimetableRequest, options: TimetableOptions, wish: Wish): Attempt {
  const { decodes = DECODES, seed = 1 } = options;
  const day = dayWork(request, wish);
  return attemptOf(request, day, searchPlan(day.problem, { seed, decodes }), wish);
}

function onTime(
  request: TimetableRequest,
  options: TimetableOptions,
  { isFreeFromFirst }: Wish,
): Attempt | undefined {
  const { decodes = DECODES, seed = 1 } = options;
  const day = dayWork(request, { isFreeFromFirst });
  const found = searchOnTime(day.problem, { seed, decodes });
  return found && attemptOf(request, day, found, { isFreeFromFirst });
}

function attemptOf(
  request: TimetableRequest,
  day: DayWork,
  found: Found,
  { isFreeFromFirst }: Wish,
): Attempt {
  const laid = layOut(request, day, found.plan);
  const worst = worstOf(found.plan.broken.length, laid.servings);
  return { day, found, laid, worst, extra: [], isFreeFromFirst };
}

/** 0 if an eased request is on time by a quick look; infinite if that does not show it. */
const worstWhen = (eased: TimetableRequest, best: Attempt): number =>
  onTime(eased, { decodes: 1 }, best)?.worst ?? Number.POSITIVE_INFINITY;

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

function unfedNotices(day: DayWork, plan: Plan): readonly Notice[] {
  const gapMinutes = Math.max(0, ...upkeepGaps(day.problem, plan));
  if (gapMinutes <= TEND_UNFED) return [];
  return [notice('TIMETABLE_FIRE_UNFED', 'doubt', {}, { gapMinutes })];
}

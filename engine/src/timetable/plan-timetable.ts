// The day sheet of a meal: planned backwards from serving over hands, ovens, chimneys and lit coals.

import { minutes } from '../quantity/unit.ts';
import { adviceFor, type Outcome, surerDays } from './advise.ts';
import { hopelessIn, surer, type TryWish, tryEasing } from './attempt.ts';
import { checkTimetable } from './check-timetable.ts';
import { dayJudge } from './day-judge.ts';
import type { DaySheet, TimetableRequest } from './day-sheet.ts';
import { type FirstOptions, firstSheet, sheetOf } from './first-sheet.ts';

export interface TimetableOptions extends FirstOptions {
  /** Look for advice at once when something is late; else `adviseDay` does it afterwards. */
  readonly isAdvised?: boolean;
}

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
  const sheet = firstSheet(request, { judge: dayJudge, ...options });
  const isAdvised = options.isAdvised ?? true;
  return isAdvised && sheet.isAdvicePending ? adviseDay(request, sheet) : sheet;
}

/**
 * The sheet with what would help, one thing at a time: each item was planned and that plan passed the
 * checker. Work is bounded by the tasks planned anew, so that the same sheet gets the same advice.
 */
export function adviseDay(request: TimetableRequest, sheet: DaySheet): DaySheet {
  if (!sheet.isAdvicePending) return sheet;
  const { isAdvicePending: _, ...plain } = sheet;
  if (sheet.status !== 'planned') {
    return { ...plain, advice: adviceFor(request, sheet, soundOutcome) };
  }
  const surest = surerDays(request, sheet, soundChance);
  return surest.length === 0 ? plain : { ...plain, surer: surest };
}

/** The share in time of a plan with so much in hand; undefined where no sound one was found. */
function soundChance(request: TimetableRequest, inHand: number): number | undefined {
  const found = surer(request, {}, inHand);
  if (found === undefined) return undefined;
  const sheet = sheetOf(request, found, { judge: dayJudge });
  return checkTimetable(request, sheet).length === 0 ? sheet.doubt?.inTime : undefined;
}

/** A quick look first; what it promises has to be found as the day itself is planned. */
function soundOutcome(request: TimetableRequest): Outcome | undefined {
  const quick = outcomeWith(request, { decodes: ADVICE_DECODES });
  const isWhole = quick !== undefined && quick.lateBy === 0 && quick.aside.length === 0;
  return isWhole ? outcomeWith(request, {}) : quick;
}

/** What comes of a request that is really planned, dishes set aside as ever; only if it is sound. */
function outcomeWith(request: TimetableRequest, effort: TryWish): Outcome | undefined {
  const found = tryEasing({ ...request, inHand: minutes(0) }, effort);
  const hopeless = hopelessIn(request, found);
  if (hopeless === undefined) {
    const sheet = sheetOf(request, found, { doubtRuns: 0, judge: dayJudge });
    const isSound = Number.isFinite(found.worst) && checkTimetable(request, sheet).length === 0;
    return isSound ? { lateBy: found.worst, aside: [] } : undefined;
  }
  const dishes = request.dishes.filter((work) => work.dish.id !== hopeless.dish);
  const rest = outcomeWith({ ...request, dishes }, effort);
  return rest && { ...rest, aside: [hopeless.dish, ...rest.aside] };
}

/** Tuned: a help is found where one more oven or hand makes a demo meal as it was; more found no more. */
const ADVICE_DECODES = 4;

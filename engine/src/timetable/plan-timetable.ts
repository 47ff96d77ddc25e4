// The day sheet of a meal: planned backwards from serving over hands, ovens, chimneys and lit coals.

import { type Notice, notice } from '../notice/notice.ts';
import { adviceFor } from './advise.ts';
import { type Attempt, hopelessIn, onTime, type TryWish, tryEasing } from './attempt.ts';
import { checkTimetable } from './check-timetable.ts';
import type { DaySheet, TimetableRequest } from './day-sheet.ts';
import { dayDoubt, RUNS } from './doubt/doubt.ts';
import { planNotices } from './plan-notices.ts';
import { provenTrouble } from './proof.ts';
import { unplannedNotice } from './unplanned.ts';

export interface TimetableOptions extends TryWish {
  /** Look for advice at once when something is late; else `adviseDay` does it afterwards. */
  readonly isAdvised?: boolean;
  /** Runs of the day with drawn bakes and rises; 0 for none. */
  readonly doubtRuns?: number;
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
  const sheet = firstSheet(request, options);
  const isAdvised = options.isAdvised ?? true;
  return isAdvised && sheet.isAdvicePending ? adviseDay(request, sheet) : sheet;
}

function firstSheet(request: TimetableRequest, options: TimetableOptions): DaySheet {
  if (request.camp.hands.length === 0) return withoutHands();
  if (request.dishes.length === 0) return emptySheet([]);
  const best = tryEasing(request, options);
  const aside = hopelessIn(request, best);
  if (aside === undefined) return sheetOf(request, best, options);
  const dishes = request.dishes.filter((work) => work.dish.id !== aside.dish);
  const rest = firstSheet({ ...request, dishes }, options);
  const status = rest.status === 'planned' ? 'late' : rest.status;
  const notices = [unplannedNotice(aside), ...rest.notices];
  return { ...rest, status, isAdvicePending: true, notices };
}

/**
 * The sheet with what would help, one thing at a time: each item was planned and that plan passed the
 * checker. Work is bounded by the tasks planned anew, so that the same sheet gets the same advice.
 */
export function adviseDay(request: TimetableRequest, sheet: DaySheet): DaySheet {
  if (!sheet.isAdvicePending) return sheet;
  const { isAdvicePending: _, ...plain } = sheet;
  const isFreeFromFirst = !sheet.notices.some(
    ({ code }) => code === 'TIMETABLE_FREE_FROM_NOT_FIRST',
  );
  const soundLateness = (eased: TimetableRequest): number | undefined => {
    const found = onTime(eased, { decodes: 1 }, { isFreeFromFirst, isLoose: true });
    if (found === undefined || found.worst > 0) return undefined;
    const made = sheetOf(eased, found, { doubtRuns: 0 });
    return checkTimetable(eased, made).length === 0 ? found.worst : undefined;
  };
  return { ...plain, advice: adviceFor(request, sheet, soundLateness) };
}

function sheetOf(request: TimetableRequest, best: Attempt, options: TimetableOptions): DaySheet {
  const { doubtRuns = RUNS, seed = 1 } = options;
  const { day, found, laid, extra, unwashed } = best;
  const isLate = found.status === 'late';
  const proven = isLate ? provenTrouble(request) : [];
  const { servings, jobs } = laid;
  return {
    status: proven.length > 0 ? 'impossible' : isLate ? 'late' : 'planned',
    ...laid,
    advice: [],
    ...(isLate ? { isAdvicePending: true } : {}),
    ...(proven.length > 0 ? { proven } : {}),
    ...(doubtRuns > 0
      ? { doubt: dayDoubt(request, day, found.plan, { seed, runs: doubtRuns }) }
      : {}),
    notices: [
      ...planNotices({ request, day, plan: found.plan, servings, jobs, unwashed }),
      ...extra,
      ...day.notices,
    ],
  };
}

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

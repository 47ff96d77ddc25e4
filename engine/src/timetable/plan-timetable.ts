// The day sheet of a meal: planned backwards from serving over hands, ovens, chimneys and lit coals.

import { adviceFor } from './advise.ts';
import { onTime } from './attempt.ts';
import { checkTimetable } from './check-timetable.ts';
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
  const sheet = firstSheet(request, options);
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

// What would the checker say of the day from now on? What lies in the past, and what no minute ahead
// could have mended, is no fault of a plan.

import { checkTimetable } from '../check-timetable.ts';
import type { DaySheet, Job, TimetableRequest, Violation } from '../day-sheet.ts';
import type { ReplanAsked } from './slip.ts';
import type { DayState } from './state.ts';

interface Seen {
  readonly request: TimetableRequest;
  readonly state: DayState;
  readonly asked: ReplanAsked;
}

export function violationsAhead(seen: Seen, sheet: DaySheet): readonly Violation[] {
  const { request, state, asked } = seen;
  const found = checkTimetable(request, sheet).filter((each) => !isHistory(seen, sheet, each));
  const early = sheet.jobs.flatMap((job): readonly Violation[] => {
    const isPast = (state.get(job.id)?.state ?? 'open') !== 'open';
    if (isPast || job.start >= asked.now) return [];
    return [{ rule: 'not-before', jobs: [job.id], found: job.start, wanted: asked.now }];
  });
  return [...found, ...early];
}

function isHistory(seen: Seen, sheet: DaySheet, violation: Violation): boolean {
  const { state, asked } = seen;
  const isPast = (id: string) => (state.get(id)?.state ?? 'open') !== 'open';
  const jobs = violation.jobs.filter((id) => sheet.jobs.some((job) => job.id === id));
  if (jobs.length > 0 && jobs.every(isPast)) return true;
  const [before] = jobs;
  if (violation.rule === 'recipe-order' && before !== undefined && isPast(before)) {
    return isTooLongAgo(violation, state.get(before)!.end, asked.now);
  }
  const own = sheet.jobs.filter(
    ({ load, dish }) => load === violation.jobs[0] || dish === violation.jobs[0],
  );
  if (violation.rule === 'minutes-in-the-oven') return isInTooLong(seen, own);
  if (violation.rule.endsWith('-at-its-minute')) return isMinutePast(seen, own, violation);
  const outs = own.filter(({ kind }) => kind === 'take-out');
  return outs.length > 0 && outs.every(({ id }) => isPast(id)) && violation.rule === 'can-wait';
}

/** The step before it was done so long ago that no minute ahead would have been soon enough. */
const isTooLongAgo = ({ found, wanted }: Violation, end: number, now: number) =>
  Number(found) > Number(wanted) && end + Number(wanted) < now;

/** It bakes on as the cook said, or was to come out before now and does so at once. */
function isInTooLong({ asked, state }: Seen, own: readonly Job[]): boolean {
  const cooks = own.filter(({ kind }) => kind === 'cook');
  const isSlow = asked.slips.some(
    (slip) =>
      slip.kind === 'takes-longer' &&
      cooks.some(({ id }) => id.split('~')[0] === slip.job.split('~')[0]),
  );
  const isOver = cooks.some(({ id }) => (state.get(id)?.end ?? Infinity) <= asked.now + AT_ONCE);
  const outs = own.filter(({ kind }) => kind === 'take-out');
  return isSlow || (isOver && outs.every(({ start }) => start <= asked.now + AT_ONCE));
}

/** As soon as can be, with something else in the hands [min]. */
const AT_ONCE = 5;
/** The checker's own leave. */
const NEAR_MINUTES = 5;

/** Its minute was over, or will be before coals that did not catch can have been lit again. */
function isMinutePast(
  { asked, request }: Seen,
  own: readonly Job[],
  { wanted, rule }: Violation,
): boolean {
  const lay = own.find(({ kind }) => kind === 'lay-coals');
  const isRelit =
    rule.startsWith('add-coals') &&
    asked.slips.some(({ kind }) => kind === 'chimney-failed' || kind === 'behind');
  const wait = isRelit ? request.ashOver + LIT_AGAIN : AT_ONCE;
  return lay !== undefined && lay.end + Number(wanted) + NEAR_MINUTES < asked.now + wait;
}

/** Work of lighting, and until hands are free for it [min]. */
const LIT_AGAIN = 8;

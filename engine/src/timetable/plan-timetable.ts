// The day sheet of a meal: planned backwards from serving over hands, ovens, chimneys and lit coals.

import { type Notice, notice } from '../notice/notice.ts';
import { minutes } from '../quantity/unit.ts';
import type { Plan } from '../solver/problem.ts';
import { searchPlan } from '../solver/search.ts';
import { advise } from './advise.ts';
import type { DaySheet, Serving, TimetableRequest } from './day-sheet.ts';
import { layOut } from './lay-out.ts';
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
  const day = dayWork(request);
  const { decodes = DECODES, seed = 1, isAdvised = true } = options;
  const found = searchPlan(day.problem, { seed, decodes });
  const laid = layOut(request, day, found.plan);
  const proven = provenTrouble(request, day);
  const isProven = proven.length > 0;
  const advice =
    isAdvised && found.status === 'late'
      ? advise(request, planTimetable, worstOf(found.plan.broken.length, laid.servings))
      : [];
  return {
    status: isProven ? 'impossible' : found.status === 'late' ? 'late' : 'planned',
    ...laid,
    advice,
    notices: [
      ...proven,
      ...lateNotices(laid.servings),
      ...brokenNotices(day, found.plan),
      ...leftNotices(day, found.plan),
      ...pinWaits(request, laid.servings),
      ...day.notices,
    ],
  };
}

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

/** A pinned start is kept; what it costs in waiting is said. */
function pinWaits(request: TimetableRequest, servings: readonly Serving[]): readonly Notice[] {
  return request.dishes.flatMap((work) => {
    const serving = servings.find((each) => each.dish === work.dish.id);
    if (work.dish.pins.coalsOnAt === undefined || serving === undefined) return [];
    if (serving.waits <= work.canWait) return [];
    const values = { waitMinutes: serving.waits, canWaitMinutes: minutes(work.canWait) };
    return [notice('TIMETABLE_PIN_WAITS', 'doubt', { dish: work.dish.id }, values)];
  });
}

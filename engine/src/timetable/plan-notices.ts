// What a finished plan has to say beside its times: late, not kept, left, waiting, off its minute.

import { type Notice, notice } from '../notice/notice.ts';
import { minutes } from '../quantity/unit.ts';
import type { Plan } from '../solver/problem.ts';
import { upkeepGaps } from '../solver/upkeep.ts';
import type { Unwashed } from './clean-hands.ts';
import type { Job, Serving, TimetableRequest } from './day-sheet.ts';
import { TEND_UNFED } from './habits.ts';
import { darkNotices } from './in-the-dark.ts';
import { isUsedAgain } from './oven-turns.ts';
import { riseNotices } from './rise-notices.ts';
import type { DayWork } from './work.ts';

/** A day that was planned, and how it lies on the sheet. */
export interface Planned {
  readonly request: TimetableRequest;
  readonly day: DayWork;
  readonly plan: Plan;
  readonly servings: readonly Serving[];
  readonly jobs: readonly Job[];
  readonly unwashed: readonly Unwashed[];
}

/** In the order in which they are told. */
export const planNotices = (made: Planned): readonly Notice[] => [
  ...lateNotices(made.servings),
  ...pastLatest(made.request, made.servings),
  ...brokenNotices(made.day, made.plan),
  ...leftNotices(made.day, made.plan),
  ...longWaits(made.request, made.servings),
  ...riseNotices(made.request),
  ...unfedNotices(made.day, made.plan),
  ...unwashedNotices(made.unwashed),
  ...offMinuteNotices(made.jobs),
  ...darkNotices(made.request, made.jobs),
];

function lateNotices(servings: readonly Serving[]): readonly Notice[] {
  return servings.flatMap(({ dish, lateBy, served }) => {
    if (lateBy <= 0) return [];
    const values = { lateMinutes: lateBy, servedClockMinutes: served };
    return [notice('TIMETABLE_LATE', 'stop', { dish }, values)];
  });
}

/** The cook's own latest, or the minute at which a turn-in window closes. */
function pastLatest({ dishes }: TimetableRequest, servings: readonly Serving[]): readonly Notice[] {
  return servings.flatMap(({ dish, served }) => {
    const latest = dishes.find((work) => work.dish.id === dish)?.dish.latestAt;
    if (latest === undefined || served <= latest) return [];
    const values = { latestAtClockMinutes: latest, servedClockMinutes: served };
    return [notice('TIMETABLE_PAST_LATEST', 'stop', { dish }, values)];
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

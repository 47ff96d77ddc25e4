// Tonight's one bread, planned for its hour or for the soonest that goes.

import type { MealDay } from './meal.ts';
import { campForTonight } from './menu/index.ts';
import type { Tonight, TonightAnswers } from './menu/tonight-answers.ts';
import { isRefusal, type OrRefusal } from './notice/notice.ts';
import { type DayOptions, planDay } from './plan.ts';
import { type ClockMinutes, clockMinutes } from './quantity/unit.ts';

export interface TonightDay {
  readonly tonight: Tonight;
  readonly plan: MealDay;
}

const MOST_ROUNDS = 6;
const STEP_MINUTES = 5;

/**
 * Tonight's bread, planned; where no serving time was wished, for the soonest that goes.
 *
 * The first guess is planned. Too soon, and it is planned again for the time it came out, since
 * what nobody wished can't be late; with time to spare at the start, for that much sooner.
 *
 * @refuses  see campForTonight
 */
export function planTonightDay(
  answers: TonightAnswers,
  options: Omit<DayOptions, 'now'> = {},
): OrRefusal<TonightDay> {
  let planned = plannedAt(answers, options);
  if (answers.when.serveAt !== undefined || isRefusal(planned)) return planned;
  let [soonest, served] = [soundOr(planned), servedOr(planned)];
  let tooSoon: number = answers.now;
  for (let round = 1; round < MOST_ROUNDS; round += 1) {
    const latest = soonest === undefined ? Number.POSITIVE_INFINITY : servingWish(soonest.plan);
    const serveAt = between(betterTime(planned.plan, answers.now), tooSoon, latest);
    if (serveAt === undefined) break;
    const next = plannedAt({ ...answers, when: { serveAt } }, options);
    if (isRefusal(next)) break;
    planned = next;
    soonest = soundOr(next) ?? soonest;
    served ??= servedOr(next);
    if (soundOr(next) === undefined) tooSoon = serveAt;
  }
  return soonest ?? served ?? planned;
}

const soundOr = (planned: TonightDay) => (isInTime(planned.plan) ? planned : undefined);
const servedOr = (planned: TonightDay) => (isLate(planned.plan) ? undefined : planned);

/** A time that has not been tried: as asked, or halfway where that was too soon; else undefined. */
function between(asked: number, tooSoon: number, latest: number): ClockMinutes | undefined {
  const halfway = STEP_MINUTES * Math.ceil((tooSoon + latest) / 2 / STEP_MINUTES);
  const serveAt = tooSoon < asked && asked < latest ? asked : halfway;
  return tooSoon < serveAt && serveAt < latest ? clockMinutes(serveAt) : undefined;
}

function plannedAt(answers: TonightAnswers, options: DayOptions): OrRefusal<TonightDay> {
  const tonight = campForTonight(answers);
  if (isRefusal(tonight)) return tonight;
  const assumed = [...(options.assumed ?? []), ...tonight.assumed];
  const plan = planDay(tonight.camp, tonight.menu, { ...options, assumed, now: answers.now });
  return { tonight, plan };
}

const servingWish = ({ menu }: MealDay): number => menu.dishes[0]?.serveAt ?? 0;

/** Nothing late or amiss, and no dough hurried for a time that nobody wished. */
const isInTime = ({ daySheet }: MealDay): boolean =>
  daySheet.status === 'planned' && !isHurried(daySheet);

const isLate = ({ daySheet }: MealDay): boolean =>
  daySheet.servings.some(({ lateBy }) => lateBy > 0);

const isHurried = ({ notices }: MealDay['daySheet']): boolean =>
  notices.some(({ code }) => code === 'TIMETABLE_RISE_HURRIED');

/** Later by what it lacked, or sooner by the time in which nobody has begun. */
function betterTime(plan: MealDay, now: ClockMinutes): ClockMinutes {
  const wished = servingWish(plan);
  const { daySheet } = plan;
  if (!isInTime(plan)) {
    const late = Math.max(STEP_MINUTES, ...daySheet.servings.map(({ lateBy }) => lateBy));
    const more = isHurried(daySheet) ? HURRIED_MINUTES : 0;
    return clockMinutes(STEP_MINUTES * Math.ceil((wished + late + more) / STEP_MINUTES));
  }
  const begins = Math.min(...daySheet.jobs.map(({ start }) => start));
  const idle = Number.isFinite(begins) ? Math.max(0, begins - now) : 0;
  return clockMinutes(wished - STEP_MINUTES * Math.floor(idle / STEP_MINUTES));
}

/** A hurried dough has lost some of its rise: the plan for so much later gives it back. */
const HURRIED_MINUTES = 10;

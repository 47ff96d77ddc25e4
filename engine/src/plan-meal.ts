// A whole meal plan: the day, what would help where it is late, and what is carried for it. A file of
// its own, so that a first dish card loads no more than the day.

import type { Camp } from './camp/camp.ts';
import type { MealDay, MealPlan } from './meal.ts';
import { otherShares } from './menu/index.ts';
import type { Menu } from './menu/menu.ts';
import type { TonightAnswers } from './menu/tonight-answers.ts';
import { isRefusal, type OrRefusal } from './notice/notice.ts';
import { type DayOptions, type Further, planDay, timetableRequestOf } from './plan.ts';
import { planTonightDay, type TonightDay } from './plan-tonight.ts';
import { provisionsFor } from './provisions/index.ts';
import type { ClockMinutes } from './quantity/unit.ts';
import { adviseDay, dayJudge } from './timetable/index.ts';

export interface PlanOptions extends DayOptions {
  /**
   * What would help a late day: looked for at once, or by `advisedPlan` once the plan is shown.
   * Surer days than one in time are looked for by `advisedPlan` alone.
   */
  readonly advice?: 'now' | 'later';
}

/**
 * A meal from camp and menu: every stage in order, each dish planned or refused by name.
 *
 * @param camp     place, weather, mouths, hands, ovens, fuel
 * @param menu     dishes and recipes
 * @returns        always a plan; what could not be planned stands in `refusals`, nothing is dropped
 */
export const planMeal = (camp: Camp, menu: Menu, options: PlanOptions = {}): MealPlan =>
  finished(planDay(camp, menu, { further: FURTHER, ...options }), options);

const FURTHER: Further = { otherShares, judge: dayJudge };

/** Advice is looked for once, for the sharing of ovens that stands. */
function finished(day: MealDay, { advice, now, onStage }: PlanOptions): MealPlan {
  const isLate = day.daySheet.status !== 'planned';
  const { daySheet } = advice === 'later' || !isLate ? day : advisedPlan(day, now);
  onStage?.('provisions');
  return { ...day, daySheet, provisions: provisionsFor(day) };
}

/** The plan with what would help where it is late, or make it surer; as it is where nothing would. */
export const advisedPlan = <Plan extends MealDay>(plan: Plan, now?: ClockMinutes): Plan => ({
  ...plan,
  daySheet: adviseDay(timetableRequestOf(plan, now), plan.daySheet),
});

export interface PlannedTonight extends TonightDay {
  readonly plan: MealPlan;
}

/**
 * Tonight's bread as a whole plan.
 *
 * @refuses  see campForTonight
 */
export function planTonight(
  answers: TonightAnswers,
  options: Omit<PlanOptions, 'now'> = {},
): OrRefusal<PlannedTonight> {
  const found = planTonightDay(answers, { further: FURTHER, ...options });
  if (isRefusal(found)) return found;
  return { ...found, plan: finished(found.plan, { ...options, now: answers.now }) };
}

// A camp that outgrows its ovens by a little: does a meal stay on time by another sharing of them?

import { describe, expect, it } from 'vitest';
import { checkTimetable, type MealPlan, planMeal, timetableRequestOf } from '#engine';
import { demoCamps } from './index.ts';

const demo = demoCamps('2026-09-08').find((each) => each.camp.id === 'harrow-saddle')!;

const forMouths = (count: number): MealPlan =>
  planMeal(
    { ...demo.camp, mouths: [{ count, appetite: 'hard-work' as const, who: 'the crew' }] },
    demo.menu,
  );

const codesOf = (plan: MealPlan, dish: string) =>
  plan.dishes.find((each) => each.dish.id === dish)?.notices.map(({ code }) => code) ?? [];

describe('a camp of 26 mouths with ovens for 24', () => {
  it('eats on time: the stew fills its pot past four fifths, is not split, and the card says so', () => {
    const plan = forMouths(26);
    expect(plan.refusals).toEqual([]);
    expect(plan.daySheet.status).toBe('planned');
    expect(plan.daySheet.servings.every(({ lateBy }) => lateBy === 0)).toBe(true);
    expect(codesOf(plan, 'stew')).toContain('MENU_POT_PRESSED');
    expect(checkTimetable(timetableRequestOf(plan), plan.daySheet)).toEqual([]);
  });

  it('with 24 mouths nothing is pressed: the first sharing stands', () => {
    const plan = forMouths(24);
    expect(plan.daySheet.status).toBe('planned');
    for (const { dish } of plan.dishes) {
      expect(codesOf(plan, dish.id)).not.toContain('MENU_POT_PRESSED');
    }
  });
});

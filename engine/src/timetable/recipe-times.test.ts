// Times that a recipe sets are kept, or said to be broken: none is passed over. Meals are hand-made;
// minutes are common practice, no source.

import { describe, expect, it } from 'vitest';
import { pilcrowCreek } from '../../validation/timetable/demo-meals.ts';
import type { RecipeStep } from '../menu/recipe.ts';
import { minutes } from '../quantity/unit.ts';
import { checkTimetable } from './check-timetable.ts';
import type { TimetableRequest } from './day-sheet.ts';
import { planTimetable } from './plan-timetable.ts';

const QUICK = { doubtRuns: 0, isAdvised: false };

function loafSteps(change: (step: RecipeStep) => RecipeStep): TimetableRequest {
  const request = pilcrowCreek();
  const dishes = request.dishes.map((work) =>
    work.dish.id === 'loaf'
      ? { ...work, recipe: { ...work.recipe, steps: work.recipe.steps.map(change) } }
      : work,
  );
  return { ...request, dishes };
}

const bakedWithin = (most: number) =>
  loafSteps((step) =>
    step.kind === 'cook'
      ? { ...step, after: [...step.after, { step: 'mix', least: minutes(0), most: minutes(most) }] }
      : step,
  );

describe('a time between mixing and baking', () => {
  it('is proven not to be possible where the rises between take longer: 10 min for 2 h of dough', () => {
    const { proven = [] } = planTimetable(bakedWithin(10), QUICK);
    expect(proven.map(({ code, about }) => [code, about.dish])).toEqual([
      ['TIMETABLE_CONTRADICTION', 'loaf'],
    ]);
  });

  it('is kept where there is room for it, by the checker too', () => {
    const request = bakedWithin(150);
    const sheet = planTimetable(request, QUICK);
    expect(sheet.status).toBe('planned');
    expect(checkTimetable(request, sheet)).toEqual([]);
  });

  it('is seen by the checker on a sheet that was planned without it', () => {
    const sheet = planTimetable(pilcrowCreek(), QUICK);
    const found = checkTimetable(bakedWithin(10), sheet);
    expect(found.map(({ rule, wanted }) => [rule, wanted])).toEqual([['recipe-order', 10]]);
  });
});

describe('a rise that is written far from what this dough takes', () => {
  const codesFor = (riseMinutes: number) => {
    const request = loafSteps((step) =>
      step.kind === 'rise' ? { ...step, minutes: minutes(riseMinutes) } : step,
    );
    return planTimetable(request, QUICK).notices.map(({ code }) => code);
  };

  it.each([1800, 15])('is said at %s min, 75 being likely', (riseMinutes) => {
    expect(codesFor(riseMinutes)).toContain('TIMETABLE_RISE_NOT_AS_WRITTEN');
  });

  it('is not worth a word at 75 min', () => {
    expect(codesFor(75)).not.toContain('TIMETABLE_RISE_NOT_AS_WRITTEN');
  });
});

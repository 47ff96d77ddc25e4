// A dish that is set aside takes no proof with it: the worse the wish, the plainer the verdict. Meals
// are hand-made; minutes are common practice, no source.

import { describe, expect, it } from 'vitest';
import * as make from '../../validation/timetable/build-meal.ts';
import { pilcrowCreek } from '../../validation/timetable/demo-meals.ts';
import { clockMinutes, minutes } from '../quantity/unit.ts';
import type { DishWork, TimetableRequest } from './day-sheet.ts';
import { planTimetable } from './plan-timetable.ts';

/** The loaf of the demo camp changed; the cook comes at 9:15, salad and apples are as ever. */
function loafWith(change: (work: DishWork) => DishWork): TimetableRequest {
  const request = pilcrowCreek();
  const dishes = request.dishes.map((work) => (work.dish.id === 'loaf' ? change(work) : work));
  return { ...request, dishes };
}

const servedAt = (time: string) => (work: DishWork) => ({
  ...work,
  dish: { ...work.dish, serveAt: make.at(time) },
});

const proofsOfLoaf = (request: TimetableRequest) => {
  const { status, proven = [] } = planTimetable(request, { doubtRuns: 0, isAdvised: false });
  return {
    status,
    codes: proven.flatMap(({ code, about }) => (about.dish === 'loaf' ? code : [])),
  };
};

describe('a dish that nothing can serve in time', () => {
  it.each([
    ['12:00', 'TIMETABLE_TOO_SOON'],
    ['9:30', 'TIMETABLE_RISE_TOO_LONG'],
    ['9:10', 'TIMETABLE_BEFORE_FIRST_TASK'],
  ])('is proven at %s: %s', (time, code) => {
    const request = loafWith(servedAt(time));
    expect(proofsOfLoaf(request)).toEqual({ status: 'impossible', codes: [code] });
  });

  it('is proven where its steps contradict each other: cut within 5 min, cooled for 20', () => {
    const request = loafWith((work) => {
      const steps = work.recipe.steps.map((step) =>
        step.kind !== 'cut'
          ? step
          : {
              ...step,
              after: [...step.after, { step: 'take-out', least: minutes(0), most: minutes(5) }],
            },
      );
      return { ...work, recipe: { ...work.recipe, steps } };
    });
    const { status, codes } = proofsOfLoaf(request);
    expect([status, codes]).toEqual(['impossible', ['TIMETABLE_CONTRADICTION']]);
  });

  it('is proven where its dough rises for 9 h, and is not told a minute at which it would come', () => {
    const rise = { first: minutes(540), least: minutes(520), second: minutes(200) };
    const request = loafWith((work) => ({ ...work, rise: { ...work.rise!, ...rise } }));
    const sheet = planTimetable(request, { doubtRuns: 0, isAdvised: false });
    expect(sheet.proven?.map(({ code }) => code)).toEqual(['TIMETABLE_RISE_TOO_LONG']);
    const aside = sheet.notices.find(({ code }) => code === 'TIMETABLE_DISH_UNPLANNED');
    expect(aside?.values.rule).toBe('proven');
  });

  it('is served late, never dropped, where a plan comes within six hours: one pair of hands till 20:00', () => {
    const stew = make.recipe('stew', 'stew', [make.step('prepare', 20)], {
      method: 'simmer',
      canWait: 30,
    });
    const of = (id: string) =>
      make.work(stew, make.dish(id, stew, '13:00'), [
        { oven: 'A', coals: [10, 10], out: 200, shape: 'pot' },
      ]);
    const camp = make.camp({
      hands: [make.hand('cook', 'steady', ['9:00', '20:00'])],
      ovens: [make.oven('A', 12)],
    });
    const request = make.request(camp, [of('first'), of('second')], {
      notBefore: clockMinutes(make.at('9:00')),
    });
    const sheet = planTimetable(request, { doubtRuns: 0, isAdvised: false });
    expect(sheet.servings.map(({ dish }) => dish).toSorted()).toEqual(['first', 'second']);
    const lateBy = Math.max(...sheet.servings.map((each) => each.lateBy));
    expect(lateBy).toBeGreaterThan(180); // 200 in the oven that the other has emptied
    expect(lateBy).toBeLessThanOrEqual(360);
  });
});

describe('two pieces of one dough in one oven', () => {
  it('are mixed apart and both served: the second rises where the first has baked', () => {
    const steps = [
      make.step('mix', 10, { table: true }),
      make.step('rise', 60, { hands: 0, after: [['mix', 0, 0]] }),
      {
        ...make.step('shape', 6, { table: true, after: [['rise', 0, 20]] }),
        say: 'Into its oven.',
      },
      make.step('second-rise', 30, { hands: 0, after: [['shape', 0, 5]] }),
      make.step('cook', 30, { hands: 0, after: [['second-rise', 0, 15]] }),
    ];
    const dough = make.recipe('dough', 'yeast-bread', steps, {
      canWait: 20,
      ingredients: [make.wheat],
      division: [
        { shape: 'roll', count: 12, gramsEach: 66 as never, portionsEach: 1 },
        { shape: 'round', count: 1, gramsEach: 900 as never, portionsEach: 8 },
      ],
    });
    const piece = (id: string, shape: 'roll' | 'round') =>
      make.work(
        dough,
        make.dish(id, dough, '18:00', { pieces: [shape] }),
        [{ oven: 'A', coals: [16, 8], out: 30 }],
        { rise: [60, 30] },
      );
    const camp = make.camp({
      hands: [make.hand('cook', 'steady', ['12:00', '22:00'])],
      ovens: [make.oven('A', 14)],
    });
    const request = make.request(camp, [piece('rolls', 'roll'), piece('round', 'round')]);
    const sheet = planTimetable(request, { doubtRuns: 0, isAdvised: false });
    const mixes = sheet.jobs.filter(({ kind }) => kind === 'mix');
    expect(mixes.map(({ dish }) => dish).toSorted()).toEqual(['rolls', 'round']);
    expect(sheet.servings.map(({ dish }) => dish).toSorted()).toEqual(['rolls', 'round']);
    expect(sheet.notices.map(({ code }) => code)).not.toContain('TIMETABLE_DISH_UNPLANNED');
    for (const { ready, served, wanted } of sheet.servings)
      if (served > wanted) expect(served - ready).toBeLessThanOrEqual(15); // nobody holds back what is late
  });
});

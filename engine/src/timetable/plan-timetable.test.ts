// Meals as whole day sheets. Coals and minutes are hand-made; what is tested is the clock: every
// sheet goes through the checker, which restates the rules of the job on its own.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as make from '../../validation/timetable/build-meal.ts';
import { harrowSaddle, pilcrowCreek } from '../../validation/timetable/demo-meals.ts';
import { timetableWords } from '../publish/words/timetable.ts';
import { timetableProofWords } from '../publish/words/timetable-proof.ts';
import { clockMinutes, minutes } from '../quantity/unit.ts';
import { checkTimetable } from './check-timetable.ts';
import { timetableCodes } from './codes.ts';
import type { DaySheet, Job, TimetableRequest } from './day-sheet.ts';
import { planTimetable } from './plan-timetable.ts';

const codes = (sheet: DaySheet) =>
  [...(sheet.proven ?? []), ...sheet.notices].map((each) => each.code);
const jobOf = (sheet: DaySheet, load: string, kind: Job['kind']) =>
  sheet.jobs.find((job) => job.load === load && job.kind === kind)!;

const steady = make.hand('cook', 'steady', ['9:00', '20:00']);
const biscuits = make.recipe(
  'biscuits',
  'biscuit',
  [
    make.step('mix', 8, { table: true }),
    make.step('cook', 20, { hands: 0, after: [['mix', 0, 15]] }),
  ],
  { canWait: 10, ingredients: [make.wheat] },
);
const oneBread = (wish: {
  readonly camp?: Parameters<typeof make.camp>[0];
  readonly pins?: NonNullable<Parameters<typeof make.dish>[3]>['pins'];
  readonly more?: Partial<TimetableRequest>;
}): TimetableRequest =>
  make.request(
    make.camp(wish.camp ?? { hands: [steady], ovens: [make.oven('A', 12)] }),
    [
      make.work(biscuits, make.dish('biscuits', biscuits, '12:00', { pins: wish.pins ?? {} }), [
        { oven: 'A', coals: [16, 8], out: 22, turns: [11], checks: [10] },
      ]),
    ],
    wish.more,
  );

describe('the two demo camps', () => {
  it('Pilcrow Creek: one pair of hands, one oven twice, all on time and nothing broken', () => {
    const request = pilcrowCreek();
    const sheet = planTimetable(request);
    expect(checkTimetable(request, sheet)).toEqual([]);
    expect(sheet.status).toBe('planned');
    expect(jobOf(sheet, 'apples-1', 'wipe-oven').start).toBeGreaterThanOrEqual(
      jobOf(sheet, 'loaf-1', 'take-out').end,
    );
  });

  it('Harrow Saddle: seven dishes, five ovens, three hands, all on time and nothing broken', () => {
    const request = harrowSaddle();
    const sheet = planTimetable(request);
    expect(checkTimetable(request, sheet)).toEqual([]);
    expect(sheet.status).toBe('planned');
    expect(sheet.servings.map((serving) => serving.lateBy)).toEqual([0, 0, 0, 0, 0, 0, 0]);
  });

  it('mixes the dough of rolls and loaf once and shapes it twice', () => {
    const { jobs } = planTimetable(harrowSaddle());
    const of = (kind: Job['kind']) =>
      jobs.filter((job) => job.kind === kind && (job.dish === 'rolls' || job.dish === 'loaf'));
    expect(of('mix')).toHaveLength(1);
    expect(of('mix')[0]!.values.with).toBe('loaf');
    expect(of('rise')).toHaveLength(1);
    expect(of('shape')).toHaveLength(2);
  });

  it('weighs the gluten-free dish before any wheat is touched', () => {
    const { jobs } = planTimetable(harrowSaddle());
    const firstOf = (dish: string) =>
      Math.min(...jobs.filter((j) => j.dish === dish).map((j) => j.start));
    expect(firstOf('cornbread')).toBeLessThan(firstOf('rolls'));
    expect(firstOf('cornbread')).toBeLessThan(firstOf('cobbler'));
  });

  it('runs on wood coals with one feeder fire and no chimney', () => {
    const wood = pilcrowCreek();
    const request = {
      ...wood,
      camp: { ...wood.camp, fuel: { kind: 'wood-coals' as const, lead: minutes(60) } },
    };
    const sheet = planTimetable(request);
    expect(checkTimetable(request, sheet)).toEqual([]);
    expect(sheet.lightings).toHaveLength(1);
    expect(sheet.lightings[0]!.chimney).toBeUndefined();
    expect(sheet.lightings[0]!.readyAt - sheet.lightings[0]!.at).toBeGreaterThanOrEqual(60);
  });

  it('says the same for the same request', () => {
    expect(planTimetable(harrowSaddle())).toEqual(planTimetable(harrowSaddle()));
  });
});

describe('one bread, worked out by hand', () => {
  it('lights as late as it can: out at 12:00 - 2, coals on 22 before, 24 to light and ash over', () => {
    const sheet = planTimetable(oneBread({}));
    expect(sheet.status).toBe('planned');
    expect(jobOf(sheet, 'biscuits-1', 'take-out').end).toBe(make.at('12:00'));
    expect(jobOf(sheet, 'biscuits-1', 'lay-coals').end).toBe(make.at('11:36'));
    expect(sheet.firstFire).toBe(make.at('11:34') - 24);
  });

  it('keeps a pinned minute for the coals and says what waiting it costs', () => {
    const request = oneBread({ pins: { coalsOnAt: make.at('11:00') } });
    const sheet = planTimetable(request);
    expect(jobOf(sheet, 'biscuits-1', 'lay-coals').end).toBe(make.at('11:00'));
    expect(codes(sheet)).toContain('TIMETABLE_PIN_WAITS');
    expect(checkTimetable(request, sheet)).toEqual([]);
  });

  it('keeps a pin that makes supper late, and moves supper rather than the pin', () => {
    const sheet = planTimetable(oneBread({ pins: { coalsOnAt: make.at('11:50') } }));
    expect(jobOf(sheet, 'biscuits-1', 'lay-coals').end).toBe(make.at('11:50'));
    expect(sheet.status).not.toBe('planned');
    expect(sheet.servings[0]!.lateBy).toBe(14); // 11:50 + 22 in the oven + 2 to take out
  });

  it('gives oven work to the hand that is pinned', () => {
    const hands = [steady, make.hand('guest', 'new', ['9:00', '20:00'])];
    const request = oneBread({
      camp: { hands, ovens: [make.oven('A', 12)] },
      pins: { hand: 'guest' },
    });
    const sheet = planTimetable(request);
    expect(jobOf(sheet, 'biscuits-1', 'turn').hands).toEqual(['guest']);
    expect(checkTimetable(request, sheet)).toEqual([]);
  });

  it('never gives lids or coals to a new hand alone', () => {
    const hands = [make.hand('guest', 'new', ['9:00', '20:00']), steady];
    const request = oneBread({ camp: { hands, ovens: [make.oven('A', 12)] } });
    const sheet = planTimetable(request);
    for (const kind of ['lay-coals', 'turn', 'check', 'take-out'] as const) {
      expect(jobOf(sheet, 'biscuits-1', kind).hands).toContain('cook');
    }
  });

  it('lifts a deep 14-inch oven by two', () => {
    const hands = [steady, make.hand('guest', 'new', ['9:00', '20:00'])];
    const request = oneBread({ camp: { hands, ovens: [make.oven('A', 14, 'deep')] } });
    const sheet = planTimetable(request);
    expect(jobOf(sheet, 'biscuits-1', 'take-out').hands).toHaveLength(2);
    expect(checkTimetable(request, sheet)).toEqual([]);
  });
});

describe('wishes that can not be met', () => {
  it('no hands: impossible, no jobs, said', () => {
    const sheet = planTimetable(oneBread({ camp: { hands: [], ovens: [make.oven('A', 12)] } }));
    expect(sheet.status).toBe('impossible');
    expect(sheet.jobs).toEqual([]);
    expect(codes(sheet)).toEqual(['TIMETABLE_NO_HANDS']);
  });

  it('serving already past: still a plan, the soonest, and said (24 to light, 2 lay, 22 in, 2 out)', () => {
    const now = clockMinutes(make.at('12:30'));
    const sheet = planTimetable(oneBread({ more: { notBefore: now } }));
    expect(sheet.status).toBe('impossible');
    expect(codes(sheet)).toContain('TIMETABLE_SERVING_PAST');
    expect(sheet.servings[0]!.served).toBe(make.at('12:30') + 24 + 2 + 22 + 2);
  });

  it('too soon for anybody: proven, with the least-late plan', () => {
    const now = clockMinutes(make.at('11:30'));
    const request = oneBread({ more: { notBefore: now } });
    const sheet = planTimetable(request);
    expect(sheet.status).toBe('impossible');
    expect(codes(sheet)).toContain('TIMETABLE_TOO_SOON');
    expect(sheet.servings[0]!.lateBy).toBe(20); // 11:30 + 50 = 12:20
    expect(checkTimetable(request, sheet)).toEqual([]);
  });

  it('a recipe whose lags contradict each other: proven', () => {
    const wrong = make.recipe(
      'wrong',
      'cold-dish',
      [make.step('mix', 5), make.step('dress', 5, { after: [['mix', 30, 20]] })],
      { method: 'none' },
    );
    const camp = make.camp({ hands: [steady], ovens: [] });
    const sheet = planTimetable(
      make.request(camp, [make.work(wrong, make.dish('wrong', wrong, '12:00'), [])]),
    );
    expect(sheet.status).toBe('impossible');
    expect(codes(sheet)).toContain('TIMETABLE_CONTRADICTION');
  });

  it('more work than hours: proven by adding up', () => {
    const brief = make.hand('cook', 'steady', ['11:40', '12:00']);
    const sheet = planTimetable(
      oneBread({ camp: { hands: [brief], ovens: [make.oven('A', 12)] } }),
    );
    expect(sheet.status).toBe('impossible');
    const proofs = ['TIMETABLE_TOO_SOON', 'TIMETABLE_HOURS_TOO_SHORT'];
    expect(codes(sheet).some((code) => proofs.includes(code))).toBe(true);
    expect(sheet.servings).toHaveLength(1);
  });

  it('one cook and two breads out at the same minute: 4 min of work in 2, with advice from plans', () => {
    const of = (id: string, oven: string) =>
      make.work(
        { ...biscuits, id },
        make.dish(id, { ...biscuits, id }, '12:00', {}),
        [{ oven, coals: [16, 8], out: 22, turns: [11] }],
        { canWait: 0 },
      );
    const camp = make.camp({ hands: [steady], ovens: [make.oven('A', 12), make.oven('B', 12)] });
    const request = make.request(camp, [of('first', 'A'), of('second', 'B')]);
    const sheet = planTimetable(request);
    expect(sheet.status).toBe('impossible');
    expect(sheet.proven?.map(({ code }) => code)).toEqual(['TIMETABLE_HOURS_TOO_SHORT']);
    expect(checkTimetable(request, sheet)).toEqual([]);
    const help = sheet.advice.find((each) => each.change === 'one-more-hand');
    expect(help?.lateBy).toBe(0);
  });
});

describe('what gives way when supper would be late', () => {
  it('counts a rise shorter, inside its band, and says so (4 minutes short: cut by 5), soak 15 and fold 3 being part of it', () => {
    const request = pilcrowCreek();
    const dishes = request.dishes.map((work) =>
      work.rise === undefined
        ? work
        : { ...work, rise: { ...work.rise, first: minutes(102), least: minutes(60) } },
    );
    const sheet = planTimetable({ ...request, dishes });
    expect(sheet.status).toBe('planned');
    const said = sheet.notices.find((each) => each.code === 'TIMETABLE_RISE_HURRIED');
    expect(said?.values).toEqual({ likelyMinutes: 102, hurriedMinutes: 97 });
    const rise = sheet.jobs.find((job) => job.kind === 'rise')!;
    expect(rise.end - rise.start).toBe(97 - 15 - 3);
  });

  it('never cuts a rise past its band', () => {
    const request = pilcrowCreek();
    const dishes = request.dishes.map((work) =>
      work.rise === undefined
        ? work
        : { ...work, rise: { ...work.rise, first: minutes(102), least: minutes(100) } },
    );
    const sheet = planTimetable({ ...request, dishes });
    expect(codes(sheet)).not.toContain('TIMETABLE_RISE_HURRIED');
    expect(sheet.servings.find((each) => each.dish === 'loaf')!.lateBy).toBeGreaterThan(0);
  });

  it('mixes a batter that can not stand after the dough, never beside it, and says so', () => {
    const dough = make.recipe(
      'dough',
      'yeast-bread',
      [
        make.step('mix', 10, { table: true }),
        make.step('rise', 120, { hands: 0, after: [['mix', 0, 0]] }),
        make.step('shape', 5, { table: true, after: [['rise', 0, 20]] }),
      ],
      { canWait: 10, ingredients: [make.wheat] },
    );
    const batter = make.recipe('batter', 'corn-bread', [make.step('mix', 8)], { canWait: 10 });
    const camp = make.camp({
      hands: [steady, make.hand('other', 'steady', ['9:00', '20:00'])],
      ovens: [make.oven('A', 12), make.oven('B', 12)],
      chimneys: 2,
      strictGluten: true,
    });
    const request = make.request(camp, [
      make.work(dough, make.dish('loaf', dough, '13:00'), [{ oven: 'A', coals: [16, 8], out: 40 }]),
      make.work(batter, make.dish('free', batter, '13:00', { freeFrom: true }), [
        { oven: 'B', coals: [16, 8], out: 30 },
      ]),
    ]);
    const sheet = planTimetable(request);
    expect(sheet.status).toBe('planned');
    expect(codes(sheet)).toContain('TIMETABLE_FREE_FROM_NOT_FIRST');
    expect(checkTimetable(request, sheet)).toEqual([]);
  });
});

describe('words', () => {
  it('has one sentence for each code of the timetable, and no other', () => {
    const said = [timetableWords, timetableProofWords].flatMap((words) => Object.keys(words));
    expect(said.sort()).toEqual(Object.keys(timetableCodes).sort());
  });
});

describe('random meals', () => {
  it('pass the checker, but for what their notices declare', () => {
    let planned = 0;
    fc.assert(
      fc.property(mealDraw, (request) => {
        const sheet = planTimetable(request, { isAdvised: false });
        const isDeclared = codes(sheet).includes('TIMETABLE_NOT_KEPT');
        if (!isDeclared) expect(checkTimetable(request, sheet)).toEqual([]);
        // Served, or set aside and said so: never silently dropped.
        const aside = codes(sheet).filter((code) => code === 'TIMETABLE_DISH_UNPLANNED');
        expect(sheet.servings.length + aside.length).toBe(request.dishes.length);
        if (sheet.status === 'planned') planned += 1;
        for (const job of sheet.jobs) {
          expect(job.latestStart).toBeGreaterThanOrEqual(job.start);
          expect(Number.isInteger(job.latestStart)).toBe(true);
        }
      }),
      { seed: 31, numRuns: 60 },
    );
    expect(planned).toBeGreaterThan(20);
  });
});

const dishDraw = fc.record({
  serve: fc.constantFrom('17:00', '18:00', '18:30'),
  oven: fc.constantFrom('A', 'B', 'C'),
  kind: fc.constantFrom('biscuit' as const, 'stew' as const, 'cold-dish' as const),
  out: fc.integer({ min: 15, max: 70 }),
  canWait: fc.integer({ min: 5, max: 60 }),
  mix: fc.integer({ min: 2, max: 20 }),
  coals: fc.integer({ min: 10, max: 40 }),
});

const mealDraw = fc
  .record({
    dishes: fc.array(dishDraw, { minLength: 1, maxLength: 5 }),
    hands: fc.integer({ min: 1, max: 3 }),
    chimneys: fc.integer({ min: 1, max: 2 }),
    isWood: fc.boolean(),
  })
  .map(({ dishes, hands, chimneys, isWood }): TimetableRequest => {
    const skills = ['camp-cook', 'steady', 'new'] as const;
    const camp = make.camp({
      hands: skills.slice(0, hands).map((skill) => make.hand(skill, skill, ['12:00', '21:00'])),
      ovens: ['A', 'B', 'C'].map((id) => make.oven(id, 12)),
      chimneys,
      ...(isWood ? { woodLead: 45 } : {}),
    });
    const works = dishes.map(({ serve, oven, kind, out, canWait, mix, coals }, at) => {
      const steps = [make.step('mix', mix, { table: true })];
      const isCold = kind === 'cold-dish';
      const method = isCold ? 'none' : kind === 'stew' ? 'simmer' : 'bake';
      const recipe = make.recipe(`recipe-${at}`, kind, steps, { canWait, method });
      const loads = isCold
        ? []
        : [{ oven, coals: [coals, 8] as const, out, turns: out > 24 ? [12] : [], core: 90 }];
      return make.work(recipe, make.dish(`dish-${at}`, recipe, serve), loads);
    });
    return make.request(camp, works);
  });

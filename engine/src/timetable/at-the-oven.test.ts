// Work at ovens and fire as a cook does it. Meals are hand-made; rules are common practice, no source,
// unless the name of the test says otherwise.

import { describe, expect, it } from 'vitest';
import * as make from '../../validation/timetable/build-meal.ts';
import { harrowSaddle, pilcrowCreek } from '../../validation/timetable/demo-meals.ts';
import { clockMinutes, minutes } from '../quantity/unit.ts';
import { checkTimetable } from './check-timetable.ts';
import type { DaySheet, DishWork, Job, TimetableRequest } from './day-sheet.ts';
import { planTimetable } from './plan-timetable.ts';

const jobsOf = (sheet: DaySheet, kind: Job['kind'], dish?: string) =>
  sheet.jobs.filter((job) => job.kind === kind && (dish === undefined || job.dish === dish));
const codes = (sheet: DaySheet) => sheet.notices.map((each) => each.code);
const rules = (request: TimetableRequest, sheet: DaySheet) =>
  checkTimetable(request, sheet).map((each) => each.rule);

const cook = make.hand('cook', 'steady', ['9:00', '20:00']);
const biscuits = make.recipe('biscuits', 'biscuit', [make.step('mix', 8)], { canWait: 20 });
const bread = (id: string, oven: string, load: object = {}, serveAt = '12:00') =>
  make.work({ ...biscuits, id }, make.dish(id, { ...biscuits, id }, serveAt), [
    { oven, coals: [16, 8], out: 40, ...load },
  ]);

describe('an oven', () => {
  it('has one action at a time: a turn of the same minute comes before the addition (review: two at one lid)', () => {
    const pair = [cook, make.hand('other', 'steady', ['9:00', '20:00'])];
    const camp = make.camp({ hands: pair, ovens: [make.oven('A', 12)] });
    const load = { turns: [15], additions: [[15, 4, 2]] };
    const request = make.request(camp, [bread('bread', 'A', load)]);
    const sheet = planTimetable(request);
    expect(rules(request, sheet)).toEqual([]);
    const [turn, added] = [jobsOf(sheet, 'turn')[0]!, jobsOf(sheet, 'add-coals')[0]!];
    const zero = jobsOf(sheet, 'lay-coals')[0]!.end;
    expect(turn.end).toBeLessThanOrEqual(added.start);
    expect(Math.abs(added.start - zero - 15)).toBeLessThanOrEqual(1);
    const start = clockMinutes(added.start - 0);
    const end = clockMinutes(added.start + 1);
    const jobs = sheet.jobs.map((job) =>
      job === turn ? { ...job, start, end, hands: ['other'] } : job,
    );
    expect(rules(request, { ...sheet, jobs })).toContain('one-action-on-an-oven');
  });

  it('is turned and fed within a minute of its coals’ own minutes when hands are free', () => {
    const camp = make.camp({ hands: [cook], ovens: [make.oven('A', 12)] });
    const load = {
      out: 60,
      turns: [13, 27, 41],
      additions: [
        [20, 4, 2],
        [35, 3, 1],
      ],
    };
    const sheet = planTimetable(make.request(camp, [bread('bread', 'A', load)]));
    const zero = jobsOf(sheet, 'lay-coals')[0]!.end;
    for (const job of [...jobsOf(sheet, 'turn'), ...jobsOf(sheet, 'add-coals')]) {
      expect(Math.abs(job.start - zero - Number(job.values.minute))).toBeLessThanOrEqual(1);
    }
    expect(codes(sheet)).not.toContain('TIMETABLE_OFF_MINUTE');
  });

  it('is greased before dough is shaped into it for its last rise', () => {
    const request = pilcrowCreek();
    const dishes = request.dishes.map((work): DishWork => {
      const steps = work.recipe.steps.map((step) =>
        step.kind === 'shape' ? { ...step, say: 'Shape one round in the cold, wiped oven.' } : step,
      );
      return { ...work, recipe: { ...work.recipe, steps } };
    });
    const sheet = planTimetable({ ...request, dishes });
    const kinds = ['grease', 'shape', 'load', 'second-rise', 'lay-coals'] as const;
    const starts = kinds.map((kind) => jobsOf(sheet, kind, 'loaf')[0]!.start);
    expect(starts).toEqual([...starts].sort((a, b) => a - b));
    const grease = jobsOf(sheet, 'grease', 'loaf')[0]!;
    const jobs = sheet.jobs.map((job) =>
      job === grease ? { ...job, end: clockMinutes(job.end + 30) } : job,
    );
    expect(rules({ ...request, dishes }, { ...sheet, jobs })).toContain('greased-first');
  });

  it('holds a dough that is slashed once risen: after the rise in it, before its coals', () => {
    const request = pilcrowCreek();
    const dishes = request.dishes.map((work): DishWork => {
      const rise = work.recipe.steps.find(({ kind }) => kind === 'second-rise');
      if (work.dish.id !== 'loaf' || rise === undefined) return work;
      const slash = {
        ...make.step('shape', 1, { after: [[rise.id, 0, 15]] }),
        id: 'slash',
        say: 'Slash it.',
      };
      return { ...work, recipe: { ...work.recipe, steps: [...work.recipe.steps, slash] } };
    });
    const sheet = planTimetable({ ...request, dishes });
    const [rise, lay] = [
      jobsOf(sheet, 'second-rise', 'loaf')[0]!,
      jobsOf(sheet, 'lay-coals', 'loaf')[0]!,
    ];
    const slash = jobsOf(sheet, 'shape', 'loaf').find(({ say }) => say === 'Slash it.')!;
    expect(slash.start).toBeGreaterThanOrEqual(rise.end);
    expect(slash.end).toBeLessThanOrEqual(lay.start);
    expect(rules({ ...request, dishes }, sheet)).toEqual([]);
    const early = {
      ...slash,
      start: clockMinutes(rise.start - 5),
      end: clockMinutes(rise.start - 4),
    };
    const jobs = sheet.jobs.map((job) => (job === slash ? early : job));
    expect(rules({ ...request, dishes }, { ...sheet, jobs })).toContain('recipe-order');
  });

  it('leaves its coals to the next one, the last does not', () => {
    const camp = make.camp({ hands: [cook], ovens: [make.oven('A', 12), make.oven('B', 12)] });
    const two = [bread('first', 'A', {}, '12:00'), bread('second', 'B', {}, '14:00')];
    const sheet = planTimetable(make.request(camp, two));
    expect(jobsOf(sheet, 'take-out').map((job) => job.values.movesCoals)).toEqual([1, undefined]);
  });
});

describe('a pot', () => {
  const stew = make.recipe(
    'stew',
    'stew',
    [
      make.step('prepare', 10),
      make.step('brown', 15, { skill: 'steady', after: [['prepare', 0]] }),
      make.step('cook', 90, { hands: 0, after: [['brown', 0]] }),
      make.named('slurry', make.step('stir', 3, { after: [['cook', 0]] })),
    ],
    { method: 'simmer', canWait: 60, ingredients: [make.beef] },
  );
  const potWork = (more: object = {}): DishWork => {
    const load = { oven: 'A', coals: [0, 18] as const, out: 110, shape: 'pot' as const };
    const made = make.work(stew, make.dish('stew', stew, '14:00'), [
      {
        ...load,
        additions: [
          [20, 9, 0],
          [50, 6, 6],
        ],
      },
    ]);
    const [first] = made.loads;
    const thenAbove = first!.coals.above;
    const coals = { ...first!.coals, browning: { until: minutes(20), thenAbove } };
    return { ...made, loads: [{ ...first!, coals, bake: { ...first!.bake, ...more } }] };
  };
  const camp = make.camp({ hands: [cook], ovens: [make.oven('A', 12)] });
  const request = make.request(camp, [potWork()]);
  const sheet = planTimetable(request);

  it('is browned over coals below with its lid off; the lid’s coals come after', () => {
    expect(rules(request, sheet)).toEqual([]);
    const [lay, brown] = [jobsOf(sheet, 'lay-coals')[0]!, jobsOf(sheet, 'brown')[0]!];
    const lid = jobsOf(sheet, 'add-coals')[0]!;
    expect(lay.end).toBeLessThanOrEqual(brown.start);
    expect(brown.end).toBeLessThanOrEqual(lid.start);
    const jobs = sheet.jobs.map((job) =>
      job === lid ? { ...job, start: clockMinutes(brown.start + 2) } : job,
    );
    expect(rules(request, { ...sheet, jobs })).toContain('browned-in-the-open');
  });

  it('is stirred without a recipe’s words, and gets its slurry once, near the end', () => {
    const stirs = jobsOf(sheet, 'stir');
    const said = stirs.filter((job) => job.say !== undefined);
    expect(stirs.length).toBeGreaterThan(2);
    expect(said.map((job) => job.say)).toEqual(['slurry']);
    const out = jobsOf(sheet, 'take-out')[0]!.start;
    expect(out - said[0]!.start).toBeLessThanOrEqual(20);
    expect(said[0]!.start).toBe(Math.max(...stirs.map((job) => job.start)));
  });

  it('comes off early, where its bake asks for it and it may wait', () => {
    const early = planTimetable(make.request(camp, [potWork({ aimEarly: minutes(30) })]));
    expect(early.status).toBe('planned');
    const out = jobsOf(early, 'take-out')[0]!;
    expect(early.servings[0]!.served - out.end).toBeGreaterThanOrEqual(30);
  });
});

describe('coals', () => {
  it('are laid from two chimneyfuls, or from an older one, rather than not at all (review: STOP for 2 coals)', () => {
    const camp = make.camp({ hands: [cook], ovens: [make.oven('A', 12)], chimneyfulCoals: 24 });
    const load = {
      coals: [18, 12],
      out: 60,
      additions: [
        [15, 10, 6],
        [30, 8, 2],
      ],
    };
    const request = make.request(camp, [bread('bread', 'A', load, '13:00')]);
    const sheet = planTimetable(request);
    expect(sheet.status).toBe('planned');
    expect(rules(request, sheet)).toEqual([]);
  });

  it('are lit a tenth more than needed, as far as the chimney holds them', () => {
    const lit = (chimneyfulCoals: number) => {
      const camp = make.camp({ hands: [cook], ovens: [make.oven('A', 12)], chimneyfulCoals });
      return planTimetable(make.request(camp, [bread('bread', 'A')])).lightings[0]!.coals;
    };
    expect([lit(60), lit(25), lit(24)]).toEqual([27, 25, 24]);
  });

  it('are never fewer in a chimney than draw: a dozen and a quarter of it (judgement, common practice)', () => {
    const lit = (chimneyfulCoals: number) => {
      const camp = make.camp({ hands: [cook], ovens: [make.oven('A', 12)], chimneyfulCoals });
      const request = make.request(camp, [bread('bread', 'A', { coals: [2, 1] })]);
      const sheet = planTimetable(request);
      const { coals, uses } = sheet.lightings[0]!;
      expect(uses.reduce((sum, use) => sum + use.coals, 0)).toBe(3);
      expect(rules(request, sheet)).toEqual([]);
      const lightings = sheet.lightings.map((each) => ({ ...each, coals: 4 }));
      expect(rules(request, { ...sheet, lightings })).toContain('chimney-draws');
      return coals;
    };
    expect([lit(24), lit(100), lit(12)]).toEqual([12, 25, 12]);
  });

  it('are said to be old side by side: what is added above does nothing for those below', () => {
    const camp = make.camp({ hands: [cook], ovens: [make.oven('A', 12)] });
    const load = { coals: [0, 17], out: 97, additions: [[30, 29, 0]] } as const;
    const aged = (each: object) =>
      planTimetable(make.request(camp, [bread('bread', 'A', each, '13:00')])).notices.filter(
        ({ code }) => code === 'TIMETABLE_COALS_OLD',
      );
    expect(aged(load).map(({ values }) => values.neededMinutes)).toEqual([97]);
    expect(
      aged({
        ...load,
        additions: [
          [30, 29, 12],
          [65, 10, 6],
        ],
      }),
    ).toEqual([]);
  });

  it('are lit in a heap that takes half as long again where there is no chimney', () => {
    const camp = make.camp({ hands: [cook], ovens: [make.oven('A', 12)], chimneys: 0 });
    const request = make.request(camp, [bread('bread', 'A')]);
    const sheet = planTimetable(request);
    const [lighting] = sheet.lightings;
    expect(lighting!.chimney).toBeUndefined();
    expect(lighting!.readyAt - jobsOf(sheet, 'light-chimney')[0]!.end).toBe(33);
    expect(rules(request, sheet)).toEqual([]);
    const lightings = [{ ...lighting!, readyAt: clockMinutes(lighting!.at + 24) }];
    expect(rules(request, { ...sheet, lightings })).toContain('ash-over');
  });
});

describe('water', () => {
  it('is fetched by a free hand before the first mixing, weighing needs none', () => {
    const request = harrowSaddle();
    const place = { ...request.camp.place, water: 'a spring' };
    const sheet = planTimetable({ ...request, camp: { ...request.camp, place } });
    const trip = jobsOf(sheet, 'fetch-water')[0]!;
    const mixes = sheet.jobs.filter((job) => job.kind === 'mix' || job.kind === 'prepare');
    expect(trip.end).toBeLessThanOrEqual(Math.min(...mixes.map((job) => job.start)));
  });
});

describe('a dish that can not be', () => {
  it('is set aside with its reason, and the rest is planned on its own day', () => {
    const request = pilcrowCreek();
    const dishes = request.dishes.map((work) => {
      const serveAt = work.dish.id === 'loaf' ? make.at('5:30') : work.dish.serveAt;
      return { ...work, dish: { ...work.dish, serveAt } };
    });
    const sheet = planTimetable({ ...request, dishes });
    const aside = sheet.notices.filter((each) => each.code === 'TIMETABLE_DISH_UNPLANNED');
    expect(aside.length).toBe(1);
    const dish = aside[0]!.about.dish;
    expect(sheet.jobs.filter((job) => job.dish === dish)).toEqual([]);
    expect(sheet.status).toBe('impossible'); // wanted before anybody comes
    expect(Math.max(...sheet.jobs.map((job) => job.end))).toBeLessThan(24 * 60);
    expect(rules({ ...request, dishes }, sheet)).toEqual([]);
  });
});

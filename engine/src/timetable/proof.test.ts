// What is said to be proven: each kind by a day whose arithmetic can be done by hand, and never where a
// plan was found. Meals are hand-made; minutes are common practice, no source.

import { describe, expect, it } from 'vitest';
import * as make from '../../validation/timetable/build-meal.ts';
import { harrowSaddle, pilcrowCreek } from '../../validation/timetable/demo-meals.ts';
import { clockMinutes, fromCelsius, minutes } from '../quantity/unit.ts';
import type { TimetableRequest } from './day-sheet.ts';
import { planTimetable } from './plan-timetable.ts';
import { provenTrouble } from './proof.ts';

const cook = (from: string, to: string) => make.hand('cook', 'steady', [from, to]);
const bread = make.recipe('bread', 'biscuit', [make.step('mix', 8)], { canWait: 20 });
const load = { oven: 'A', coals: [16, 8] as const, out: 22 };

function breadsAt(
  times: readonly string[],
  wish: {
    readonly hands?: TimetableRequest['camp']['hands'];
    readonly coals?: readonly [number, number];
    readonly out?: number;
    readonly ovens?: readonly string[];
    readonly chimneyfulCoals?: number;
  } = {},
): TimetableRequest {
  const { hands = [cook('8:00', '20:00')], coals = [16, 8], out = 22 } = wish;
  const ovens = wish.ovens ?? times.map(() => 'A');
  const camp = make.camp({
    hands,
    ovens: [...new Set(ovens)].map((id) => make.oven(id, 12)),
    ...(wish.chimneyfulCoals === undefined ? {} : { chimneyfulCoals: wish.chimneyfulCoals }),
  });
  const works = times.map((at, index) => {
    const oven = ovens[index]!;
    const dish = make.dish(`bread-${index}`, bread, at);
    return make.work(bread, dish, [{ ...load, oven, coals, out }]);
  });
  return make.request(camp, works);
}

const stew = make.recipe('stew', 'stew', [make.step('prepare', 8)], {
  canWait: 30,
  method: 'simmer',
});
/** Pots for 12:00 in one oven: each stays in it until it is served. */
function potsIn(oven: string, count: number): TimetableRequest {
  const camp = make.camp({ hands: [cook('8:00', '20:00')], ovens: [make.oven(oven, 12)] });
  const works = Array.from({ length: count }, (_, index) => {
    const dish = make.dish(`pot-${index}`, stew, '12:00', { pins: { oven } });
    const inside = { oven, coals: [16, 8] as const, out: 60, shape: 'pot' as const };
    return make.work(stew, dish, [inside]);
  });
  return make.request(camp, works);
}

const proof = (request: TimetableRequest) => {
  const found = provenTrouble(request);
  return found.map(({ code, conflicts }) => [code, conflicts] as const);
};

describe('a proof that a day can not be in time', () => {
  it('names serving and hour: served at 7:30, the first hands at 8:00', () => {
    expect(proof(breadsAt(['7:30']))).toEqual([
      ['TIMETABLE_BEFORE_FIRST_TASK', ['menu.bread-0.serveAt', 'hands.cook.from']],
    ]);
  });

  it('names the coals: at 8:00 the chimney is lit, 2 + 22 min later it is ready, supper is at 8:40', () => {
    const [found] = provenTrouble(breadsAt(['8:40']));
    expect(found!.code).toBe('TIMETABLE_COALS_TOO_LATE');
    expect(found!.values.readyClockMinutes).toBe(make.at('8:24'));
    // 8:24, laying 2, baking 22, out 2
    expect(found!.values.soonestClockMinutes).toBe(make.at('8:50'));
    expect(provenTrouble(breadsAt(['8:50']))).toEqual([]);
  });

  it('names nobody there: the one pair of hands leaves at 11:00, the bread is for 12:00', () => {
    const codes = proof(breadsAt(['12:00'], { hands: [cook('8:00', '11:00')] }));
    expect(codes.map(([code]) => code)).toEqual(['TIMETABLE_NOBODY_THERE']);
    expect(codes[0]![1]).toContain('hands.cook');
    expect(codes[0]![1]).toContain('menu.bread-0.serveAt');
  });

  it('names the oven that would be in two places, and both pins', () => {
    expect(proof(potsIn('A', 2))).toEqual([
      ['TIMETABLE_OVEN_TWICE', ['menu.pot-0.pins.oven', 'menu.pot-1.pins.oven', 'ovens.A']],
    ]);
    expect(proof(potsIn('A', 1))).toEqual([]);
  });

  it('names coals and chimneys: 90 coals by 8:40, one chimneyful of 60 made by then', () => {
    const request = breadsAt(['9:10', '9:10'], {
      coals: [30, 15],
      ovens: ['A', 'B'],
      hands: [cook('8:00', '20:00'), make.hand('other', 'steady', ['8:00', '20:00'])],
    });
    const [found] = provenTrouble(request);
    expect(found!.code).toBe('TIMETABLE_COALS_TOO_FEW');
    expect(found!.values).toMatchObject({ neededCoals: 90, thereCoals: 60 });
    expect(found!.conflicts).toContain('gear.chimneys');
  });

  it('names the rise that is longer than the day, at its quickest', () => {
    const steps = [make.step('mix', 10), make.step('rise', 300, { hands: 0, after: [['mix', 0]] })];
    const slow = make.recipe('slow', 'yeast-bread', steps, { canWait: 20 });
    const camp = make.camp({ hands: [cook('8:00', '20:00')], ovens: [make.oven('A', 12)] });
    const work = make.work(slow, make.dish('slow', slow, '12:00'), [load]);
    const rise = {
      dough: fromCelsius(20),
      first: minutes(400),
      second: minutes(0),
      least: minutes(300),
      most: minutes(600),
    };
    const request = make.request(camp, [{ ...work, rise }]);
    const [found] = provenTrouble(request);
    expect(found!.code).toBe('TIMETABLE_RISE_TOO_LONG');
    expect(found!.values).toMatchObject({ riseMinutes: 300, thereMinutes: 240 });
    expect(found!.conflicts).toEqual([
      'recipes.slow.steps.rise',
      'menu.slow.serveAt',
      'hands.cook.from',
    ]);
  });

  it('names a step that may wait less than it must', () => {
    const steps = [make.step('mix', 5), make.step('dress', 5, { after: [['mix', 30, 20]] })];
    const wrong = make.recipe('wrong', 'cold-dish', steps, { method: 'none' });
    const camp = make.camp({ hands: [cook('8:00', '20:00')], ovens: [] });
    const request = make.request(camp, [make.work(wrong, make.dish('wrong', wrong, '12:00'), [])]);
    const [found] = provenTrouble(request);
    expect(found!.code).toBe('TIMETABLE_CONTRADICTION');
    expect(found!.conflicts).toEqual(
      expect.arrayContaining(['recipes.wrong.steps.mix', 'recipes.wrong.steps.dress']),
    );
  });

  it('adds up the work of those who may do it: two new hands do not help at lids', () => {
    const crowd = [
      make.hand('cook', 'steady', ['11:00', '12:30']),
      make.hand('one', 'new', ['8:00', '20:00']),
    ];
    const times = Array.from({ length: 10 }, () => '12:00');
    const ovens = times.map((_, at) => `oven-${at}`);
    const request = breadsAt(times, { hands: crowd, ovens, chimneyfulCoals: 400 });
    const codes = provenTrouble(request).map(({ code }) => code);
    expect(codes).toEqual(['TIMETABLE_HOURS_TOO_SHORT']);
  });
});

describe('no proof', () => {
  it('is ever given where a plan in time was found', () => {
    const easy = [
      harrowSaddle(),
      pilcrowCreek(),
      breadsAt(['12:00']),
      breadsAt(['11:00', '12:30']),
    ];
    for (const base of easy) {
      for (const shift of [0, -60, -120, -180, -240]) {
        const dishes = base.dishes.map((work) => {
          const serveAt = clockMinutes(work.dish.serveAt + shift);
          return { ...work, dish: { ...work.dish, serveAt } };
        });
        const request = { ...base, dishes };
        const sheet = planTimetable(request, { isAdvised: false, doubtRuns: 0 });
        if (sheet.status === 'planned') expect(provenTrouble(request)).toEqual([]);
      }
    }
  });

  it('means not found, not impossible: a late sheet without one says late', () => {
    const sheet = planTimetable(breadsAt(['12:00', '12:00'], { ovens: ['A', 'B'], out: 3 }), {
      doubtRuns: 0,
    });
    if (sheet.proven === undefined) expect(sheet.status).not.toBe('impossible');
    else expect(sheet.status).toBe('impossible');
  });
});

describe('advice', () => {
  it('comes only with a day in time that passed the checker: one more oven, or a later serving', () => {
    const sheet = planTimetable(potsIn('A', 2), { doubtRuns: 0 });
    expect(sheet.status).toBe('impossible');
    expect(sheet.proven?.map(({ code }) => code)).toEqual(['TIMETABLE_OVEN_TWICE']);
    expect(sheet.advice.map(({ change }) => change)).toContain('one-more-oven');
    expect(sheet.advice.every(({ lateBy }) => lateBy === 0)).toBe(true);
  });

  it('is left for later where it is asked to be, and the day is shown at once', () => {
    const request = potsIn('A', 2);
    const sheet = planTimetable(request, { doubtRuns: 0, isAdvised: false });
    expect(sheet.isAdvicePending).toBe(true);
    expect(sheet.advice).toEqual([]);
    expect(planTimetable(request, { doubtRuns: 0 }).jobs).toEqual(sheet.jobs);
  });

  it('never begins in the past: at 11:30 for 12:00 nobody is told to start earlier', () => {
    const late = breadsAt(['12:00']);
    const request = { ...late, notBefore: clockMinutes(make.at('11:30')) };
    const { status, advice } = planTimetable(request, { doubtRuns: 0 });
    expect(status).toBe('impossible');
    expect(advice.map(({ change }) => change)).toEqual(['serve-later']);
  });

  it('names a pinned minute that makes it impossible, and offers to move it', () => {
    const day = pilcrowCreek();
    const coalsOnAt = clockMinutes(make.at('10:00')); // the dough takes two hours from 9:15 on
    const dishes = day.dishes.map((work) =>
      work.dish.id === 'loaf' ? { ...work, dish: { ...work.dish, pins: { coalsOnAt } } } : work,
    );
    const { proven = [], advice } = planTimetable({ ...day, dishes }, { doubtRuns: 0 });
    expect(proven.map(({ code, values }) => [code, values.pinnedClockMinutes])).toEqual([
      ['TIMETABLE_CONTRADICTION', coalsOnAt],
    ]);
    expect(proven[0]!.conflicts).toContain('menu.loaf.pins.coalsOnAt');
    expect(advice[0]).toMatchObject({ change: 'without-pin', dish: 'loaf', lateBy: 0 });
  });

  it('is not given where the worst dish is hours late even so', () => {
    const request = { ...potsIn('A', 8) };
    const { advice } = planTimetable(request, { doubtRuns: 0 });
    expect(advice.filter(({ lateBy }) => lateBy > 60)).toEqual([]);
  });
});

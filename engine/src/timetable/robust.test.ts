// A little change of what is asked must not make supper late, and small habits are what they are
// said to be. Meals are hand-made; minutes are common practice, no source.

import { describe, expect, it } from 'vitest';
import * as make from '../../validation/timetable/build-meal.ts';
import { harrowSaddle, pilcrowCreek } from '../../validation/timetable/demo-meals.ts';
import { clockMinutes, minutes } from '../quantity/unit.ts';
import { checkTimetable } from './check-timetable.ts';
import type { DaySheet, Job, TimetableRequest } from './day-sheet.ts';
import { washUpMinutes } from './habits.ts';
import { litCoals } from './lit-coals.ts';
import { coalMinutes } from './oven-work.ts';
import { planTimetable } from './plan-timetable.ts';

const shifted = (
  request: TimetableRequest,
  by: { readonly serve: number; readonly hand: number; readonly chimneys: number },
): TimetableRequest => {
  const { camp } = request;
  const hands = camp.hands.map((hand, at) =>
    at === 1 ? { ...hand, from: clockMinutes(hand.from + by.hand) } : hand,
  );
  const gear = { ...camp.gear, chimneys: by.chimneys };
  const dishes = request.dishes.map((work) => {
    const serveAt = clockMinutes(work.dish.serveAt + by.serve);
    return { ...work, dish: { ...work.dish, serveAt } };
  });
  return { ...request, camp: { ...camp, hands, gear }, dishes };
};

const jobsOf = (sheet: DaySheet, kind: Job['kind'], dish?: string) =>
  sheet.jobs.filter((job) => job.kind === kind && (dish === undefined || job.dish === dish));

describe('small changes', () => {
  it('leave Harrow Saddle on time: serving 15 min either way, a hand 20 min sooner to 10 later', () => {
    for (const serve of [-15, -5, 5, 15]) {
      for (const hand of [-20, 10]) {
        for (const chimneys of [2, 3]) {
          const request = shifted(harrowSaddle(), { serve, hand, chimneys });
          const sheet = planTimetable(request, { isAdvised: false });
          expect([serve, hand, chimneys, sheet.status]).toEqual([serve, hand, chimneys, 'planned']);
          expect(checkTimetable(request, sheet)).toEqual([]);
        }
      }
    }
  });
});

describe('bread', () => {
  it('is cut as soon as it has rested, and its waiting is counted from there', () => {
    const sheet = planTimetable(pilcrowCreek());
    const rest = jobsOf(sheet, 'rest', 'loaf').at(-1)!;
    const cut = jobsOf(sheet, 'cut', 'loaf')[0]!;
    const serving = sheet.servings.find((each) => each.dish === 'loaf')!;
    expect(cut.start - rest.end).toBeLessThanOrEqual(5);
    expect(serving.ready).toBe(rest.end);
    expect(serving.waits).toBe(serving.served - rest.end - (cut.end - cut.start));
  });

  it('rises as long as estimated from the end of mixing on: soak 15 and fold 3 are part of 80', () => {
    const sheet = planTimetable(pilcrowCreek());
    const rise = jobsOf(sheet, 'rise', 'loaf')[0]!;
    expect(rise.end - rise.start).toBe(80 - 15 - 3);
    expect(sheet.notices.map((each) => each.code)).not.toContain('TIMETABLE_RISE_HURRIED');
  });
});

describe('wash-up', () => {
  it('follows each serving; of a fair it is longer than of a family, and shared (judgement)', () => {
    const request = pilcrowCreek();
    const sheet = planTimetable(request, { isAdvised: false });
    const times = new Set(request.dishes.map(({ dish }) => dish.serveAt));
    expect(times.size).toBeGreaterThan(1);
    expect(jobsOf(sheet, 'wash-up')).toHaveLength(times.size);
    const small = washUpMinutes({ dishes: 2, ovens: 1, mouths: 4 });
    const middle = washUpMinutes({ dishes: 6, ovens: 6, mouths: 24 });
    const fair = washUpMinutes({ dishes: 4, ovens: 24, mouths: 300 });
    expect(small).toBeLessThan(middle);
    expect(fair).toBeGreaterThan(2 * middle);
  });

  it('of a hot oven is no work for a new hand alone', () => {
    const request = harrowSaddle();
    const wipes = jobsOf(planTimetable(request, { isAdvised: false }), 'wipe-oven');
    expect(wipes.length).toBeGreaterThan(0);
    for (const { hands } of wipes) {
      const skills = hands.map((id) => request.camp.hands.find((each) => each.id === id)!.skill);
      expect(skills.some((skill) => skill !== 'new')).toBe(true);
    }
  });
});

describe('cutting', () => {
  it('takes two seconds a piece where many ovens are cut at once, its own minutes else (judgement)', () => {
    const steps = [make.step('mix', 5), make.step('cut', 1)];
    const bread = make.recipe('bread', 'corn-bread', steps, { canWait: 30 });
    const ovens = ['A', 'B', 'C', 'D', 'E'];
    const minutesOf = (used: readonly string[]) => {
      const camp = make.camp({
        hands: ['cook', 'second'].map((id) => make.hand(id, 'steady', ['9:00', '20:00'])),
        ovens: ovens.map((id) => make.oven(id, 12)),
        chimneys: 4,
      });
      const loads = used.map((oven) => ({ oven, coals: [16, 8] as const, out: 25 }));
      const work = make.work(bread, make.dish('bread', bread, '12:00'), loads);
      const many = work.loads.map((each) => ({ ...each, load: { ...each.load, portions: 24 } }));
      const sheet = planTimetable(make.request(camp, [{ ...work, loads: many }]));
      const [cut] = jobsOf(sheet, 'cut');
      return cut!.end - cut!.start;
    };
    expect([minutesOf(['A']), minutesOf(ovens)]).toEqual([1, (5 * 24 * 2) / 60]);
  });
});

describe('fire', () => {
  it('feeds a feeder fire from lighting to the last shovel, 35 min apart at most', () => {
    const { camp, ...rest } = pilcrowCreek();
    const fuel = { kind: 'wood-coals' as const, lead: minutes(60) };
    const sheet = planTimetable({ ...rest, camp: { ...camp, fuel } });
    const fed = jobsOf(sheet, 'tend-fire');
    const light = jobsOf(sheet, 'light-feeder')[0]!;
    const uses = sheet.lightings[0]!.uses.map(({ job }) => sheet.jobs.find((j) => j.id === job)!);
    const ends = [light.end, ...fed.map((job) => job.end)];
    const starts = [...fed.map((job) => job.start), Math.max(...uses.map((job) => job.start))];
    expect(fed.length).toBeGreaterThan(3);
    for (const [at, end] of ends.entries()) expect(starts[at]! - end).toBeLessThanOrEqual(35);
    expect(fed.every((job) => job.hands.length === 1)).toBe(true);
  });

  it('lays 60 coals in four minutes and 15 in two: two, and one for every 25', () => {
    expect([15, 25, 60].map(coalMinutes)).toEqual([2, 3, 4]);
  });

  it('never counts fewer coals than none, not even where a load is out before they are laid', () => {
    const request = harrowSaddle();
    const sheet = planTimetable(request);
    const jobs = sheet.jobs.map((job) =>
      job.kind === 'take-out' ? { ...job, start: clockMinutes(job.start - 300) } : job,
    );
    for (const { waiting, onOvens } of litCoals(request, jobs, sheet.lightings)) {
      expect(waiting).toBeGreaterThanOrEqual(0);
      expect(onOvens).toBeGreaterThanOrEqual(0);
    }
  });
});

describe('a heavy oven', () => {
  const bread = make.recipe('bread', 'biscuit', [make.step('mix', 8)], { canWait: 20 });
  const sheetOf = (size: number, style: 'regular' | 'deep', second: readonly [string, string]) => {
    const cook = make.hand('cook', 'steady', ['9:00', '20:00']);
    const camp = make.camp({
      hands: [cook, make.hand('guest', 'new', second)],
      ovens: [make.oven('A', size, style)],
    });
    const load = { oven: 'A', coals: [16, 8] as const, out: 22, turns: [11] };
    const dish = make.dish('bread', bread, '12:00');
    return planTimetable(make.request(camp, [make.work(bread, dish, [load])]));
  };
  const lifts = (sheet: DaySheet) =>
    (['load', 'turn', 'take-out'] as const).map((kind) => jobsOf(sheet, kind)[0]!.hands.length);

  it('is loaded, turned and taken out by two from 14 inches deep or 16 inches on', () => {
    const all = ['9:00', '20:00'] as const;
    expect(lifts(sheetOf(14, 'deep', all))).toEqual([2, 2, 2]);
    expect(lifts(sheetOf(16, 'regular', all))).toEqual([2, 2, 2]);
    expect(lifts(sheetOf(14, 'regular', all))).toEqual([1, 1, 1]);
  });

  it('is loaded alone, and said so, where the second hand comes later', () => {
    const sheet = sheetOf(14, 'deep', ['11:40', '20:00']);
    expect(lifts(sheet)[0]).toBe(1);
    expect(sheet.notices.map((each) => each.code)).toContain('TIMETABLE_LIFT_ALONE');
  });
});

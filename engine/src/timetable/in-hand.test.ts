// Time in hand before a serving. Expected minutes are worked out by hand; the chance follows from them
// by the runs of the day, which doubt.test.ts holds against the normal distribution.

import { describe, expect, it } from 'vitest';
import * as make from '../../validation/timetable/build-meal.ts';
import { harrowSaddle } from '../../validation/timetable/demo-meals.ts';
import { minutes } from '../quantity/unit.ts';
import { checkTimetable } from './check-timetable.ts';
import type { TimetableRequest } from './day-sheet.ts';
import { adviseDay, planTimetable } from './plan-timetable.ts';

const cook = make.hand('cook', 'steady', ['8:00', '20:00']);

/** One bread for 12:00 that may wait so long; 80 in 100 bakes lie within ten minutes of 22. */
function oneBread(canWait: number, inHand?: number): TimetableRequest {
  const bread = make.recipe('bread', 'biscuit', [make.step('mix', 8)], { canWait });
  const camp = make.camp({ hands: [cook], ovens: [make.oven('A', 12)] });
  const load = { oven: 'A', coals: [16, 8] as const, out: 22 };
  const plain = make.request(camp, [make.work(bread, make.dish('bread', bread, '12:00'), [load])]);
  const dishes = plain.dishes.map((work) => ({
    ...work,
    loads: work.loads.map((each) => ({
      ...each,
      bake: { ...each.bake, minutes: minutes(22), least: minutes(12), most: minutes(32) },
    })),
  }));
  return { ...plain, dishes, ...(inHand === undefined ? {} : { inHand: minutes(inHand) }) };
}

const outAt = (request: TimetableRequest) =>
  planTimetable(request).jobs.find(({ kind }) => kind === 'take-out')!.end;

describe('time in hand', () => {
  it('takes bread out so much sooner, never more than half of what it may wait', () => {
    expect(outAt(oneBread(20))).toBe(make.at('12:00'));
    expect(outAt(oneBread(20, 6))).toBe(make.at('11:54'));
    expect(outAt(oneBread(20, 30))).toBe(make.at('11:50'));
    expect(outAt(oneBread(0, 30))).toBe(make.at('12:00'));
  });

  it('is no wait that was asked for: every plan passes the checker, and a job may use it up', () => {
    const request = oneBread(20, 6);
    const sheet = planTimetable(request);
    expect(checkTimetable(request, sheet)).toEqual([]);
    const out = sheet.jobs.find(({ kind }) => kind === 'take-out')!;
    expect(out.latestStart - out.start).toBeGreaterThanOrEqual(2);
  });

  it('makes the day surer, and a day that is not sure says what a quarter of an hour would bring', () => {
    const plain = planTimetable(oneBread(40), { isAdvised: false });
    const sure = planTimetable(oneBread(40, 15), { isAdvised: false });
    expect(sure.doubt!.inTime).toBeGreaterThan(plain.doubt!.inTime + 0.1);
    const [offer] = adviseDay(oneBread(40), plain).surer ?? [];
    expect(offer).toMatchObject({ inHand: 15, startEarlier: 0, inTime: sure.doubt!.inTime });
  });

  it('is kept for as many dishes as a plan is found for, and never makes a meal late', () => {
    for (const inHand of [5, 15, 40]) {
      const request = { ...harrowSaddle(), inHand: minutes(inHand) };
      const sheet = planTimetable(request, { doubtRuns: 0 });
      expect(sheet.status).toBe('planned');
      expect(checkTimetable(request, sheet)).toEqual([]);
    }
  });
});

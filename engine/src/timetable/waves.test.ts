// Big feeds: many ovens of one dish in waves. Meals are hand-made; what is asserted are the minutes of
// each oven's own coal plan and sums done by hand. Sizes, paces and lines are common practice, no source.

import { describe, expect, it } from 'vitest';
import * as make from '../../validation/timetable/build-meal.ts';
import { checkTimetable } from './check-timetable.ts';
import type { Job } from './day-sheet.ts';
import { coalsOf, fireWatch } from './fire-watch.ts';
import { planTimetable } from './plan-timetable.ts';
import { servingLines } from './serving-lines.ts';
import { walksOf } from './walks.ts';

const cooks = ['one', 'two', 'three', 'four', 'five', 'six'].map((id) =>
  make.hand(id, 'steady', ['9:00', '20:00']),
);
const flat = make.recipe('flat', 'biscuit', [make.step('mix', 8)], { canWait: 60 });
const LOAD = {
  out: 40,
  turns: [15, 30],
  additions: [[20, 4, 2]] as const,
};

/** So many ovens of one bread, at noon. */
function feed(ovens: number, hands = cooks) {
  const ids = Array.from({ length: ovens }, (_, index) => `O${index + 1}`);
  const camp = make.camp({ hands, ovens: ids.map((id) => make.oven(id, 12)), chimneys: 6 });
  const loads = ids.map((oven) => ({ oven, coals: [16, 8] as const, ...LOAD }));
  const request = make.request(camp, [make.work(flat, make.dish('flat', flat, '12:00'), loads)]);
  const sheet = planTimetable(request);
  const of = (kind: Job['kind']) => sheet.jobs.filter((job) => job.kind === kind);
  return { request, sheet, of };
}

describe('many ovens of one dish', () => {
  it('go in waves of no more than six, in one round a task, each oven in exactly one', () => {
    const { request, sheet, of } = feed(10);
    expect(sheet.status).toBe('planned');
    expect(checkTimetable(request, sheet)).toEqual([]);
    const rounds = walksOf(of('lay-coals'));
    expect(rounds.map(({ jobs }) => jobs.length)).toEqual([5, 5]);
    const ovens = rounds.flatMap(({ jobs }) => jobs.map(({ oven }) => oven));
    expect(new Set(ovens).size).toBe(10);
  });

  it('turn and feed each oven at its own minutes, within the minute that a lone oven has', () => {
    const { of } = feed(10);
    for (const lay of of('lay-coals')) {
      const own = (kind: Job['kind']) =>
        of(kind)
          .filter(({ load }) => load === lay.load)
          .map(({ start }) => start - lay.end);
      const minutes = [...own('turn'), ...own('add-coals')].sort((a, b) => a - b);
      [15, 20, 30].forEach((wanted, index) => {
        expect(Math.abs(minutes[index]! - wanted)).toBeLessThanOrEqual(1);
      });
      const cooked = of('take-out').find(({ load }) => load === lay.load)!.start - lay.end;
      expect(cooked).toBeGreaterThanOrEqual(40);
      expect(cooked).toBeLessThanOrEqual(42);
    }
  });

  it('are walked in the same order at the same pace by every round', () => {
    const { of } = feed(6);
    const orders = ['grease', 'lay-coals', 'turn', 'add-coals', 'take-out'].flatMap((kind) =>
      walksOf(of(kind as Job['kind'])).map(({ jobs }) => {
        const first = jobs[0]!.start;
        return jobs.map(({ oven, start }) => `${oven}+${start - first}`).join(' ');
      }),
    );
    expect(new Set(orders).size).toBe(1);
  });

  it('have coals for every oven: what is laid and added is what was lit for it', () => {
    const { sheet, of } = feed(10);
    const uses = sheet.lightings.flatMap((lighting) => lighting.uses);
    for (const job of [...of('lay-coals'), ...of('add-coals')]) {
      const got = uses.filter((use) => use.job === job.id).reduce((sum, use) => sum + use.coals, 0);
      expect(got).toBe(Number(job.values.above) + Number(job.values.below));
    }
    // Ten ovens, 16 + 8 laid and 4 + 2 added on each, by hand.
    expect(uses.reduce((sum, use) => sum + use.coals, 0)).toBe(300);
  });

  it('stay ovens by themselves below four, with one pair of hands, or pinned to one', () => {
    for (const { sheet } of [feed(3), feed(5, cooks.slice(0, 1))])
      expect(sheet.jobs.filter(({ round }) => round !== undefined)).toEqual([]);
  });
});

describe('the fire watch', () => {
  it('counts each coal once over its quarter hours (300, by hand)', () => {
    const { sheet } = feed(10);
    const quarters = fireWatch(sheet);
    const all = quarters.reduce((sum, { lays, adds }) => sum + coalsOf(lays) + coalsOf(adds), 0);
    expect(all).toBe(300);
    expect(quarters.flatMap(({ lights }) => lights)).toHaveLength(sheet.lightings.length);
    for (const { from } of quarters) expect(from % 15).toBe(0);
  });
});

describe('serving lines', () => {
  const loads = Array.from({ length: 10 }, (_, index) => ({
    oven: `O${index + 1}`,
    id: `stew-${index + 1}`,
    portions: 28,
  }));
  const asked = (mouths: number, reserve: number) =>
    servingLines({
      mouths,
      sheet: { spans: feed(1).sheet.spans },
      dishes: [{ dish: 'stew', reserve, loads }],
    });

  it('are three for 300 mouths, at six a minute and twenty minutes (300 / 120)', () => {
    expect(asked(300, 0)?.lines).toBe(3);
    expect(asked(24, 0)).toBeUndefined();
  });

  it('share every oven once, and keep the last shut that hold the reserve (30 of 28 each: two)', () => {
    const [stew] = asked(300, 30)!.dishes;
    expect(stew!.kept).toHaveLength(2);
    const all = [...stew!.ovens.flat(), ...stew!.kept];
    expect(all.toSorted()).toEqual(loads.map(({ oven }) => oven).toSorted());
    const sizes = stew!.ovens.map((line) => line.length);
    expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
  });
});

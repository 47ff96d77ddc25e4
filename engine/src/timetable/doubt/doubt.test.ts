// Chance and bands against plain arithmetic on days so small that they can be added up by hand.
// Meals are hand-made; minutes are common practice, no source.

import { describe, expect, it } from 'vitest';
import * as make from '../../../validation/timetable/build-meal.ts';
import { harrowSaddle, pilcrowCreek } from '../../../validation/timetable/demo-meals.ts';
import { clockMinutes, minutes } from '../../quantity/unit.ts';
import { tryEasing } from '../attempt.ts';
import type { DishWork, TimetableRequest } from '../day-sheet.ts';
import { planTimetable } from '../plan-timetable.ts';
import { dayWork } from '../work.ts';
import { networkOf, runDay } from './network.ts';

const bread = make.recipe('bread', 'biscuit', [make.step('mix', 8)], { canWait: 20 });
const oneBread = (band: readonly [least: number, most: number], more: Partial<DishWork> = {}) => {
  const camp = make.camp({
    hands: [make.hand('cook', 'steady', ['8:00', '20:00'])],
    ovens: [make.oven('A', 12)],
  });
  const work = make.loadWork('bread', { oven: 'A', coals: [16, 8], out: 40 });
  const [least, most] = band;
  const bake = { ...work.bake, minutes: minutes(40), least: minutes(least), most: minutes(most) };
  const dish = make.dish('bread', bread, '12:00');
  return make.request(camp, [
    { dish, recipe: bread, loads: [{ ...work, bake }], canWait: minutes(20), ...more },
  ]);
};
const doubtOf = (request: TimetableRequest, seed = 1, doubtRuns = 2000) =>
  planTimetable(request, { seed, doubtRuns }).doubt!;

describe('the chance of serving in time', () => {
  it('is one where nothing is in doubt: no band, coals lit for one oven only', () => {
    const request = oneBread([40, 40]);
    const doubt = doubtOf({ ...request, ashOver: minutes(0) });
    expect(doubt.inTime).toBe(1);
    expect(doubt.meals[0]).toMatchObject({ soonest: 720, likely: 720, latest: 720 });
  });

  it('follows the normal distribution: with 8 in 10 inside ±10 min, 74 in 100 are late by 5 at most', () => {
    // z = 5 / 10 · 1.2816 = 0.641; the table of the normal distribution gives 0.739.
    const doubt = doubtOf({ ...oneBread([30, 50]), ashOver: minutes(0) });
    expect(doubt.inTime).toBeGreaterThan(0.739 - 0.03);
    expect(doubt.inTime).toBeLessThan(0.739 + 0.03);
    const [dish] = doubt.dishes;
    expect(dish!.latest - dish!.likely).toBeGreaterThanOrEqual(9);
    expect(dish!.latest - dish!.likely).toBeLessThanOrEqual(11);
  });

  it('never falls when the same day has narrower bands', () => {
    const shares = [20, 12, 6, 2].map(
      (each) => doubtOf({ ...oneBread([40 - each, 40 + each]), ashOver: minutes(0) }).inTime,
    );
    expect(shares).toEqual([...shares].sort((one, other) => one - other));
  });

  it('is not touched by a bake that the cook has pinned', () => {
    const pinned = oneBread([20, 70]);
    const dishes = pinned.dishes.map((work) => ({
      ...work,
      dish: { ...work.dish, pins: { bakeMinutes: minutes(40) } },
    }));
    expect(doubtOf({ ...pinned, dishes, ashOver: minutes(0) }).inTime).toBe(1);
  });

  it('repeats with its seed, and other seeds say nearly the same', () => {
    const request = harrowSaddle();
    expect(doubtOf(request, 7, 400)).toEqual(doubtOf(request, 7, 400));
    const shares = [1, 2, 3].map((seed) => doubtOf(request, seed, 400).inTime);
    expect(Math.max(...shares) - Math.min(...shares)).toBeLessThan(0.12);
  });

  it('counts to the minute at which a turn-in window closes: z = 10 / 10 · 1.2816, 90 in 100', () => {
    const open = oneBread([30, 50]);
    const dishes = open.dishes.map((work) => ({
      ...work,
      dish: { ...work.dish, latestAt: clockMinutes(make.at('12:10')) },
    }));
    const doubt = doubtOf({ ...open, dishes, ashOver: minutes(0) });
    expect(Math.abs(doubt.inTime - 0.9)).toBeLessThan(0.02);
  });

  it('names what would help most: begun ten minutes sooner, the one bread is in time more often', () => {
    const doubt = doubtOf({ ...oneBread([30, 50]), ashOver: minutes(0) });
    expect(doubt.buys[0]).toMatchObject({ kind: 'bake', dish: 'bread', sooner: 10 });
    expect(doubt.buys[0]!.inTime).toBeGreaterThan(0.95); // z = 15 / 10 · 1.2816: 0.973
  });
});

describe('a day without slips', () => {
  it('comes out as the sheet has it, job by job; only what is done comes out a little sooner', () => {
    for (const request of [harrowSaddle(), pilcrowCreek()]) {
      const { day, found } = tryEasing(request, {});
      const network = networkOf(day, found.plan);
      const starts = new Float64Array(day.problem.tasks.length);
      const readyLater = network.batches.map(() => 0);
      runDay(network, { longer: new Float64Array(starts.length), readyLater }, starts);
      found.plan.starts.forEach((planned, task) => {
        const { kind } = day.meanings[task]!;
        if (planned === undefined) return;
        const isFree = kind === 'take-out' || kind === 'rest';
        // Bread that came out sooner had these very hands until this minute.
        const isHeldUp = found.plan.starts.some(
          (out, at) =>
            day.meanings[at]!.kind === 'take-out' &&
            starts[at]! < out! &&
            starts[at]! + day.problem.tasks[at]!.minutes === starts[task]! &&
            found.plan.crews[at]!.some((unit) => found.plan.crews[task]!.includes(unit)),
        );
        if (!isFree && isHeldUp) return;
        expect(starts[task]!, kind).toBeLessThanOrEqual(planned);
        if (!isFree) expect(starts[task]!, kind).toBe(planned);
      });
    }
  });
});

describe('the network of a day', () => {
  it('lets a job wait for what comes before it and for its own hands, and for nothing else', () => {
    const request = oneBread([30, 50]);
    const day = dayWork(request);
    const starts = day.problem.tasks.map((_, task) => 600 + task);
    const plan = {
      starts,
      crews: day.problem.tasks.map(() => []),
      batches: [],
      upkeeps: [],
      lateBy: [],
      left: [],
      broken: [],
    };
    const network = networkOf(day, plan);
    const found = new Float64Array(starts.length);
    runDay(network, { longer: new Float64Array(starts.length), readyLater: [] }, found);
    for (const { from, to, least } of network.arcsFrom.flat()) {
      expect(found[to]! - found[from]!).toBeGreaterThanOrEqual(least);
    }
  });
});

// What the lanes draw, counted against the jobs of the sheet: nothing is left out, nothing invented.

import { describe, expect, it } from 'vitest';
import type { MealPlan } from '../../meal.ts';
import { clockMinutes } from '../../quantity/unit.ts';
import type { Job } from '../../timetable/day-sheet.ts';
import { fixturePlan } from '../fixture.ts';
import { sayFor } from '../speak.ts';
import { lanesBlocks } from './lanes-part.ts';

const wood = fixturePlan('wood-coals');
const briquettes = fixturePlan();

/** The same day with the fire fed at these minutes after it is lit. */
function fedAt(plan: MealPlan, minutes: readonly number[]): MealPlan {
  const [lit] = plan.daySheet.lightings;
  const [like] = plan.daySheet.jobs;
  const feeds = minutes.map((after, index): Job => {
    const start = clockMinutes(lit!.at + after);
    const { load: _load, oven: _oven, dish: _dish, ...plain } = like!;
    const end = clockMinutes(start + 2);
    return { ...plain, id: `tend-fire-${index + 1}`, kind: 'tend-fire', start, end, values: {} };
  });
  const jobs = [...plan.daySheet.jobs.filter(({ kind }) => kind !== 'tend-fire'), ...feeds];
  jobs.sort((one, other) => one.start - other.start);
  return { ...plan, daySheet: { ...plan.daySheet, jobs } };
}

/** Everything in the group of that lane, on the wide drawings. */
function fireLanes(plan: MealPlan): readonly string[] {
  const say = sayFor({ measures: 'metric', clock: '24', plan });
  return lanesBlocks(plan, say).flatMap((block) => {
    if (block.type !== 'drawing' || block.narrow) return [];
    return block.svg.match(/<g class="fire">.*?<\/g>/s) ?? [];
  });
}

describe('the lane of a feeder fire', () => {
  it('is drawn for wood, and not where coals are lit by chimneyfuls', () => {
    expect(fireLanes(wood).length).toBeGreaterThan(0);
    expect(fireLanes(briquettes)).toEqual([]);
  });

  it('has a mark for every feeding of the sheet, no more and no fewer', () => {
    for (const minutes of [[], [20], [20, 40, 61]]) {
      const marks = fireLanes(fedAt(wood, minutes)).flatMap((lane) => lane.match(/<line /g) ?? []);
      expect(marks.length).toBe(minutes.length);
    }
  });
});

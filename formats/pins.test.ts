// What the cook decides, from the camp file to the plan: kept as it is, and judged.

import { describe, expect, it } from 'vitest';
import { type DishPlan, planMeal } from '#engine';
import pilcrowCreek from './demo/pilcrow-creek.camp.json' with { type: 'json' };
import { type CampFile, readCampFile } from './index.ts';

type Pins = NonNullable<CampFile['menu'][number]['pins']>;

/** The loaf of the demo camp, alone, with these pins. */
function loafWith(pins: Pins): DishPlan {
  const read = readCampFile({ ...pilcrowCreek, menu: [{ ...pilcrowCreek.menu[0], pins }] });
  if (!read.ok) throw new Error(JSON.stringify(read.troubles[0]));
  const [loaf] = planMeal(read.camp, read.menu).dishes;
  if (loaf === undefined) throw new Error('not planned');
  return loaf;
}

const stayOf = ({ loads }: DishPlan) => loads[0]!.coals.outMinute - loads[0]!.coals.loadInMinute;

const judged = ({ loads }: DishPlan) =>
  loads[0]!.bake.notices.filter((each) => each.code.startsWith('BAKE_PIN_'));

describe('a pinned start', () => {
  it('cold puts the loaf in with its coals, hot waits for the oven', () => {
    expect(loafWith({ preheat: false }).loads[0]?.coals.loadInMinute).toBe(0);
    expect(loafWith({ preheat: true }).loads[0]?.coals.loadInMinute).toBeGreaterThan(0);
  });
});

describe('pinned minutes', () => {
  it('that are too few are kept, and said with the minutes that it would get from us', () => {
    const free = loafWith({});
    const short = loafWith({ bake: '10 min' });
    expect(stayOf(short)).toBeCloseTo(10, 6);
    expect(judged(free)).toEqual([]);
    expect(judged(short)).toEqual([
      expect.objectContaining({
        code: 'BAKE_PIN_SHORT',
        about: expect.objectContaining({ dish: 'loaf', oven: 'A' }),
      }),
    ]);
    const { pinnedMinutes, minutes, leastMinutes } = judged(short)[0]!.values;
    expect(pinnedMinutes).toBe(10);
    expect(Number(minutes)).toBeGreaterThan(Number(leastMinutes));
    expect(Number(leastMinutes)).toBeGreaterThan(10);
  });

  it('that are too many are kept and said', () => {
    const long = loafWith({ bake: '100 min' });
    expect(stayOf(long)).toBeCloseTo(100, 6);
    expect(judged(long).map((each) => each.code)).toEqual(['BAKE_PIN_LONG']);
  });
});

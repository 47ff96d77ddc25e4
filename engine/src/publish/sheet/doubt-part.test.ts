// The lines that say how sure a day is. What is asserted is what a reader could hold against each
// other: nothing that counts as in time is told as late, and no gain is told that is none.

import { describe, expect, it } from 'vitest';
import { clockMinutes, minutes } from '../../quantity/unit.ts';
import type { DayDoubt } from '../../timetable/doubt/doubt.ts';
import { fixturePlan } from '../fixture.ts';
import { sayFor } from '../speak.ts';
import { doubtBlocks, doubtLine, doubtLines } from './doubt-part.ts';

const planned = fixturePlan();
const at = (hours: number, past: number) => clockMinutes(hours * 60 + past);

const meal = {
  wanted: at(18, 0),
  soonest: at(18, 0),
  likely: at(18, 20),
  latest: at(19, 5),
  inTime: 0.58,
  limits: { soonest: at(18, 30), latest: at(18, 30) },
};
const doubt: DayDoubt = {
  seed: 1,
  runs: 120,
  inTime: 0.58,
  grace: 5,
  dishes: [],
  meals: [meal],
  buys: [{ kind: 'ash-over', sooner: 10, inTime: 0.58, saved: 3 }],
};

function textOf(shown: DayDoubt, more: object = {}): string {
  const status = 'planned' as const;
  const plan = { ...planned, daySheet: { ...planned.daySheet, status, doubt: shown, ...more } };
  return JSON.stringify(
    doubtLines(plan, sayFor({ measures: 'metric', clock: '24', plan })),
  ).replaceAll('\u00a0', ' ');
}

describe('how sure a day is', () => {
  it('says until when it is in time where a dish has its own latest: 18:20 is then not late', () => {
    expect(textOf(doubt)).toContain('in time (by 18:30, its latest) 6 times in 10');
    const grace = { ...meal, limits: { soonest: at(18, 5), latest: at(18, 5) } };
    expect(textOf({ ...doubt, meals: [grace] })).toContain('in time (by 18:05) 6 times in 10');
  });

  it('tells a gain in times of a hundred, and none where there is none', () => {
    expect(textOf(doubt)).not.toContain('times more');
    const buys = [{ kind: 'ash-over' as const, sooner: 10, inTime: 0.65, saved: 3 }];
    expect(textOf({ ...doubt, buys })).toContain('in time 7 times more in 100');
  });

  it('offers the plan with time in hand, and whether somebody has to come sooner for it', () => {
    const surer = [{ inHand: minutes(15), startEarlier: minutes(30), inTime: 0.76 }];
    expect(textOf(doubt, { surer })).toContain(
      'with 15 min in hand and everybody there 30 min sooner, all is in time 75 times in 100',
    );
  });

  it('is one sentence on top of the day sheet, and meal by meal where its times are doubted', () => {
    const dishes = [
      {
        dish: planned.dishes[0]!.dish.id,
        soonest: at(18, 0),
        likely: at(18, 20),
        latest: at(19, 5),
        inTime: 0.58,
      },
    ];
    const daySheet = { ...planned.daySheet, doubt: { ...doubt, dishes } };
    const plan = { ...planned, daySheet };
    const say = sayFor({ measures: 'metric', clock: '24', plan });
    const [line, ...more] = doubtLine(plan);
    expect(more).toEqual([]);
    expect(JSON.stringify(line)).toContain('"All of it is in time 6 times in 10."');
    const told = JSON.stringify(doubtBlocks(plan, say)).replaceAll('\u00a0', ' ');
    expect(told).toContain('in time (by 18:30, its latest) 6 times in 10');
  });
});

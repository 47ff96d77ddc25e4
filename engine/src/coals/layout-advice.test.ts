// What a layout is told to add or take is found by running it: fed back, it does; one fewer does not.

import { describe, expect, it } from 'vitest';
import { type Change, coalRequest } from '../../validation/coals/requests.ts';
import { isRefusal } from '../notice/notice.ts';
import { fromFahrenheit, kelvin, minutes } from '../quantity/unit.ts';
import { LAID_AGE_MINUTES } from './burn.ts';
import type { LyingCoals } from './fire-state.ts';
import { judgeLayout, type LayoutQuestion } from './judge-layout.ts';
import { usualLoad } from './usual-load.ts';

const lying = (above: number, below: number, lit: number): readonly LyingCoals[] => [
  { place: 'above', pieces: above, litMinutesAgo: minutes(lit) },
  { place: 'below', pieces: below, litMinutesAgo: minutes(lit) },
];

const asked = (
  coals: readonly LyingCoals[],
  { method = 'bake', ...change }: Change = {},
): LayoutQuestion => {
  const { oven, air, place, screened, fuel } = coalRequest({ ...change, method });
  const isPot = method === 'simmer' || method === 'boil';
  return {
    ...{ oven, air, place, screened, fuel, method, coals, load: usualLoad({ oven, air }, method) },
    wanted: isPot ? kelvin(air.boiling + 4) : fromFahrenheit(350),
    minutes: minutes(isPot ? 120 : 45),
    loadInMinute: minutes(isPot ? 0 : 15),
  };
};

const verdict = (question: LayoutQuestion) => {
  const answer = judgeLayout(question);
  if (isRefusal(answer)) throw new Error(answer.code);
  return answer.notices[0]!;
};

const fed = (question: LayoutQuestion, above: number, below: number): LayoutQuestion => ({
  ...question,
  coals: [...question.coals, ...lying(above, below, LAID_AGE_MINUTES)],
});

describe('coals to add to a layout', () => {
  it.each([
    [8, 4, 20],
    [12, 6, 20],
    [12, 2, 35],
    [4, 10, 30],
  ])(
    'to %i above and %i below do when they are laid, and one coal fewer does not (run again; splitByMethod for the sides)',
    (above, below, lit) => {
      const question = asked(lying(above, below, lit));
      const { code, values } = verdict(question);
      expect(code).toMatch(/COOL|FADES/);
      expect(values?.addMinute).toBe(0);
      expect(values?.everyMinutes).toBeUndefined();
      const [lid, floor] = [Number(values?.addAbove), Number(values?.addBelow)];
      expect(lid + floor).toBeGreaterThan(0);
      expect(verdict(fed(question, lid, floor)).code).toBe('COALS_LAYOUT_DOES');
      const less = lid > floor ? fed(question, lid - 1, floor) : fed(question, lid, floor - 1);
      expect(verdict(less).code).toMatch(/COOL|FADES/);
    },
  );

  it('are fewer now and more in half an hour where old ones fade under a bake (coalLife: add every 30 min)', () => {
    const { code, values } = verdict(asked(lying(10, 5, 50)));
    expect(code).toMatch(/COOL|FADES/);
    expect(values?.everyMinutes).toBe(30);
  });

  it('lie below alone for a boil, whatever is short (splitByMethod: 0 above)', () => {
    const { code, values } = verdict(asked(lying(0, 10, 20), { method: 'boil' }));
    expect(code).toBe('COALS_LAYOUT_COOL');
    expect(values?.addAbove ?? 0).toBe(0);
    expect(Number(values?.addBelow ?? 0) > 0 || values?.fullPotKelvin !== undefined).toBe(true);
  });

  it('are not named where nothing that fits does it: a bread at 450 F in a gale from three coals (physics: heat fits a lid)', () => {
    const question = { ...asked(lying(2, 1, 20), { wind: 4 }), wanted: fromFahrenheit(475) };
    const { code, values } = verdict(question);
    expect(code).toBe('COALS_LAYOUT_COOL');
    expect(values?.addAbove).toBeUndefined();
    expect(Number(values?.fullKelvin)).toBeLessThan(fromFahrenheit(475));
  });

  it('come off again where a layout is too hot, and it then does (run again)', () => {
    const question = asked(lying(30, 14, 20));
    const { code, values } = verdict(question);
    expect(code).toBe('COALS_LAYOUT_HOT');
    const [lid, floor] = [30 - Number(values?.addAbove), 14 - Number(values?.addBelow)];
    expect(verdict({ ...question, coals: lying(lid, floor, 20) }).code).toBe('COALS_LAYOUT_DOES');
  });
});

describe('a pot on a layout of one’s own', () => {
  it('is judged by its own boil: the verdict turns from short to boiling, never back, with more coals (common practice, no source)', () => {
    const order = ['COALS_LAYOUT_COOL', 'COALS_LAYOUT_FADES', 'COALS_LAYOUT_DOES'];
    const question = (below: number) => ({
      ...asked(lying(17, below, 20), { method: 'simmer' }),
      minutes: minutes(75),
    });
    const steps = [3, 8, 13, 18].map((below) => verdict(question(below)));
    expect(steps[0]!.code).toBe('COALS_LAYOUT_COOL');
    const reached = steps
      .filter(({ code }) => code !== 'COALS_LAYOUT_HOT')
      .map(({ code }) => order.indexOf(code));
    expect(reached).toEqual([...reached].sort((one, other) => one - other));
  });
});

describe('more coals than lie flat', () => {
  it('are counted: what fits on the lid and how many are too many (ringMethod)', () => {
    const answer = judgeLayout(asked(lying(40, 8, 20)));
    if (isRefusal(answer)) throw new Error(answer.code);
    const over = answer.notices.find(({ code }) => code === 'COALS_PIN_OVERFILLS');
    expect(Number(over?.values?.above)).toBe(40);
    expect(Number(over?.values?.lidFits)).toBeGreaterThanOrEqual(20); // a rim ring of 12 inch alone is 18
    expect(Number(over?.values?.lidFits)).toBeLessThan(40);
  });
});

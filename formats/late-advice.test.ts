// A meal that is in time, with one thing taken away so that it no longer is: the advice has to name
// what was taken. That giving it back helps is no opinion: the whole camp is planned in time.

import { describe, expect, it } from 'vitest';
import { type Camp, clockMinutes, planMeal } from '#engine';
import { demoCamps } from './demo.ts';

const crew = demoCamps('2026-09-08').find(({ camp }) => camp.id === 'harrow-saddle')!;

const late = (camp: Camp) => planMeal(camp, crew.menu).daySheet;
const handsLater = (minutes: number): Camp => ({
  ...crew.camp,
  hands: crew.camp.hands.map((hand) => ({ ...hand, from: clockMinutes(hand.from + minutes) })),
});
const withoutOven = (id: string): Camp => ({
  ...crew.camp,
  ovens: crew.camp.ovens.filter((oven) => oven.id !== id),
});

describe('advice on a day that lacks one thing', () => {
  it.each([60, 120])(
    'names the %d minutes that everybody comes too late, and no fewer than are missing',
    (minutes) => {
      const sheet = late(handsLater(minutes));
      expect(sheet.status).not.toBe('planned');
      const [best] = sheet.advice.filter(({ change }) => change === 'start-earlier');
      expect(best).toMatchObject({ lateBy: 0 });
      const missing = Math.max(...sheet.servings.map(({ lateBy }) => lateBy));
      expect(best!.amount).toBeGreaterThanOrEqual(missing);
      expect(best!.amount).toBeLessThanOrEqual(minutes + 15);
      const mended = late(handsLater(minutes - best!.amount));
      expect(mended.servings.every(({ lateBy }) => lateBy === 0)).toBe(true);
    },
    20_000,
  );

  it.each(['C', 'D'])(
    'names one more oven where a dish is hours late or set aside for want of %s',
    (id) => {
      const sheet = late(withoutOven(id));
      const aside = sheet.notices.filter(({ code }) => code === 'TIMETABLE_DISH_UNPLANNED');
      const isLate = sheet.servings.some(({ lateBy }) => lateBy > 30);
      expect(aside.length === 1 || isLate).toBe(true);
      expect(sheet.advice.map(({ change }) => change)).toContain('one-more-oven');
    },
    20_000,
  );

  it('names one more pair of hands where one cook does the work of three', () => {
    const sheet = late({ ...crew.camp, hands: crew.camp.hands.slice(0, 1) });
    expect(sheet.advice.map(({ change, lateBy, aside }) => [change, lateBy, aside])).toContainEqual(
      ['one-more-hand', 0, undefined],
    );
  }, 20_000);

  it('tells what helps but in part behind what mends all, with the dish that still finds no place', () => {
    const sheet = late({ ...crew.camp, hands: crew.camp.hands.slice(0, 1) });
    const isWhole = sheet.advice.map(({ lateBy, aside }) => lateBy === 0 && aside === undefined);
    expect(isWhole).toEqual(isWhole.toSorted((one, other) => Number(other) - Number(one)));
    const now = Math.max(...sheet.servings.map(({ lateBy }) => lateBy));
    for (const { lateBy, aside } of sheet.advice)
      if (aside !== undefined) expect(lateBy).toBeLessThan(now);
  }, 20_000);
});

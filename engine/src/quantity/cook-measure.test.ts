import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CookMeasure, cookMeasureFor, cookMeasureText } from './cook-measure.ts';
import { fractionText } from './fraction.ts';
import { grams } from './unit.ts';

// Grams of a measure by nist-sp430 ratios: 16 tbsp and 48 tsp to the cup.
const flour = { cup: grams(120), tbsp: grams(7.5), tsp: grams(2.5) };
const salt = { cup: grams(288), tbsp: grams(18), tsp: grams(6) };

const said = (mass: number, food: Parameters<typeof cookMeasureFor>[1]) => {
  const measure = cookMeasureFor(grams(mass), food);
  return measure ? cookMeasureText(measure, 'plain') : 'weigh it';
};

describe('cookMeasureFor', () => {
  it.each([
    [450, flour, '3 3/4 cups'],
    [120, flour, '1 cup'],
    [30, flour, '1/4 cup'],
    [22.5, flour, '3 tbsp'],
    [6, salt, '1 tsp'],
    [24, salt, '4 tsp'],
    [9, salt, '1 1/2 tsp'],
    [3, salt, '1/2 tsp'],
    [0.75, salt, '1/8 tsp'],
    [0.1, salt, 'weigh it'],
    [150, { each: grams(50) }, '3'],
    [90, {}, 'weigh it'],
  ])('says %d g as a cook would measure it', (mass, food, wanted) => {
    expect(said(mass, food)).toBe(wanted);
  });

  it('comes as near as any honest amount, or within 4 %, for any mass (seed 4711)', () => {
    const grid = (measure: 'cup' | 'tbsp' | 'tsp', from: number, to: number, step: number) => {
      const amounts: number[] = [];
      for (let amount = from; amount <= to; amount += step) amounts.push(amount * flour[measure]);
      return amounts;
    };
    const honest = [
      ...grid('cup', 0.25, 45, 0.25),
      ...grid('tbsp', 1, 16, 0.5),
      ...grid('tsp', 0.25, 12, 0.25),
    ];
    fc.assert(
      fc.property(fc.double({ min: 1.25, max: 5000, noNaN: true }), (mass) => {
        const measure = cookMeasureFor(grams(mass), flour) as CookMeasure;
        const got = measure.amount * (flour[measure.measure as 'cup'] ?? Number.NaN);
        const best = Math.min(...honest.map((each) => Math.abs(each - mass)));
        expect(Math.abs(got - mass)).toBeLessThanOrEqual(Math.max(0.04 * mass, best) + 1e-6);
      }),
      { seed: 4711, numRuns: 1000 },
    );
  });

  it('never says more than it can: no mass, no measure', () => {
    expect(cookMeasureFor(grams(0), flour)).toBeUndefined();
    expect(cookMeasureFor(grams(Number.NaN), flour)).toBeUndefined();
  });
});

describe('words for a measure', () => {
  it('uses one cup, two cups, and the sign for a fraction', () => {
    expect(cookMeasureText({ amount: 2.75, measure: 'cup' })).toBe('2¾ cups');
    expect(cookMeasureText({ amount: 0.5, measure: 'cup' })).toBe('½ cup');
    expect(cookMeasureText({ amount: 1.5, measure: 'tsp' })).toBe('1½ tsp');
    expect(cookMeasureText({ amount: 3, measure: 'each' })).toBe('3');
  });

  it('rounds to the nearest eighth or third', () => {
    expect(fractionText(0.34)).toBe('⅓');
    expect(fractionText(1.99)).toBe('2');
    expect(fractionText(0.01)).toBe('0');
    expect(fractionText(23.4)).toBe('23');
    expect(fractionText(2.66, 'plain')).toBe('2 2/3');
  });
});

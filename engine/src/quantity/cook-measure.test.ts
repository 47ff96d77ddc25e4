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

  it.each([
    [99, flour, '3/4 cup + 1 tbsp'],
    [101.25, { cup: grams(120) }, '3/4 cup (11 % less)'],
    [50, flour, '1/3 cup + 1 tbsp'],
    [1350, flour, '11 1/4 cups'],
    [28, flour, '3 1/2 tbsp'],
    [60, salt, '3 1/2 tbsp'],
    [120, { each: grams(50), cup: grams(243) }, '2 1/2'],
    [456, { each: grams(50) }, '9'],
    [65, { each: grams(50) }, '1 1/2 (15 % more)'],
    // sr28: soda 4.6 g a teaspoon; 1.6 g are 0.35 of it, 1.45 g 0.32
    [1.6, { tsp: grams(4.6) }, '3/8 tsp'],
    [1.45, { tsp: grams(4.6) }, 'scant 3/8 tsp'],
  ])(
    'says %d g by quarters and thirds of a cup, few spoons, whole pieces',
    (mass, food, wanted) => {
      expect(said(mass, food)).toBe(wanted);
    },
  );

  it('never counts past 3 1/2 tbsp or 5 tsp, and says when it is a tenth off (seed 4711)', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.25, max: 5000, noNaN: true }), (mass) => {
        const found = cookMeasureFor(grams(mass), flour) as CookMeasure;
        const { amount, measure, plusTablespoons = 0, off } = found;
        expect(amount).toBeLessThanOrEqual({ tbsp: 3.5, tsp: 5, cup: 42, each: 0 }[measure]);
        const got = amount * flour[measure as 'cup'] + plusTablespoons * flour.tbsp;
        const miss = got / mass - 1;
        expect(off ?? miss).toBeCloseTo(miss, 9);
        if (off === undefined) expect(Math.abs(miss)).toBeLessThanOrEqual(0.1 + 1e-9);
      }),
      { seed: 4711, numRuns: 1000 },
    );
  });

  it('comes within 10 % of any mass from a third of a cup up where cup, tbsp and tsp are known', () => {
    for (let mass = 40; mass < 2000; mass *= 1.01) {
      expect(cookMeasureFor(grams(mass), flour)?.off, String(mass)).toBeUndefined();
    }
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

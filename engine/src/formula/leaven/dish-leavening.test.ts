import { describe, expect, it } from 'vitest';
import { dishMade, ingredientMade, recipeMade } from '../../../validation/menu/made.ts';
import type { Recipe } from '../../menu/recipe.ts';
import { clockMinutes, fromCelsius, metres } from '../../quantity/unit.ts';
import { formulaFor } from '../scale.ts';
import { dishLeavening, type LeaveningWish } from './dish-leavening.ts';

const SERVED = clockMinutes(19 * 60);
const loaf = recipeMade(
  'loaf',
  { 'bread flour': 500, water: 310, salt: 10, 'instant yeast': 5 },
  { kind: 'yeast-bread' },
);
const plain = recipeMade(
  'sour loaf',
  { 'bread flour': 450, water: 280, salt: 10 },
  { kind: 'yeast-bread' },
);
const sour = {
  ...plain,
  ingredients: [...plain.ingredients, ingredientMade('sourdough starter', 150)],
};
const biscuit = recipeMade(
  'biscuit',
  { flour: 450, milk: 280, salt: 7, 'baking powder': 20 },
  { kind: 'biscuit' },
);

function raised(recipe: Recipe, celsius: number, more: Partial<LeaveningWish> = {}) {
  const [elevation, air] = [metres(0), fromCelsius(celsius)];
  const formula = formulaFor({ dish: dishMade(recipe), recipe, factor: 1, elevation, air });
  return dishLeavening({ formula, recipe, elevation, serveAt: SERVED, airAt: () => air, ...more });
}
const codes = (of: ReturnType<typeof raised>) => of.notices.map((each) => each.code);

describe('what raises a dish on its day', () => {
  it('of yeast is a rise and its water, of powder is gas (legalPowder: 12 %), never both', () => {
    const bread = raised(loaf, 20);
    expect(bread.rise?.estimate?.first).toBeGreaterThan(0);
    expect(bread.water?.dough).toBe(fromCelsius(25));
    expect(bread.gas).toBeUndefined();
    const quick = raised(biscuit, 20);
    expect(quick.rise).toBeUndefined();
    expect(quick.gas!.least).toBeCloseTo(20 * 0.12, 9);
  });

  it('reads the air by the clock: a cold morning before a mild day takes longer than the mild day', () => {
    const airAt = (at: number) => fromCelsius(at < 16 * 60 ? 6 : 22);
    const mild = raised(sour, 22).rise!.estimate!.first;
    expect(raised(sour, 22, { airAt }).rise!.estimate!.first).toBeGreaterThan(mild);
  });

  it('says a rise of more than eight hours, and one that never ends, with a box that works', () => {
    const slow = raised(sour, 12);
    expect(codes(slow)).toContain('FORMULA_RISE_LONG');
    const frost = raised(sour, 2);
    expect(codes(frost)).toContain('FORMULA_RISE_STOPPED'); // wild yeast stops at 8 °C, gaenzle1998
    const stopped = frost.notices.find((each) => each.code === 'FORMULA_RISE_STOPPED')!;
    expect(stopped.values.boxMinutes).toBeLessThan(8 * 60);
  });

  it('has its starter fed the evening before, and kept warm in the frost', () => {
    expect(raised(sour, 20).starter!.map((each) => each.do)).toEqual(['wake', 'feed', 'mix']);
    expect(raised(sour, 3).starter!.every((each) => each.feed?.needsWarmth ?? true)).toBe(true);
    expect(raised(loaf, 20).starter).toBeUndefined();
  });

  it('takes the fizz test as strength and the date as a doubt only (lloyd2004)', () => {
    const dead = raised(biscuit, 20, { powder: { fizz: 'none' } });
    expect(codes(dead)).toEqual(['FORMULA_POWDER_DEAD']);
    expect(dead.gas!.least).toBe(0);
    const old = raised(biscuit, 20, { powder: { openedMonths: 24 } });
    expect(codes(old)).toEqual(['FORMULA_POWDER_OLD']);
    expect(old.gas!.least).toBeCloseTo(20 * 0.12, 9);
    const tested = raised(biscuit, 20, { powder: { openedMonths: 24, fizz: 'hard' } });
    expect(codes(tested)).toEqual([]);
  });
});

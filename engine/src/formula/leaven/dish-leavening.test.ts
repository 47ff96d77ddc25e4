import { describe, expect, it } from 'vitest';
import { dishMade, ingredientMade, recipeMade } from '../../../validation/menu/made.ts';
import { readRecipeText } from '../../menu/read-recipe.ts';
import type { Recipe } from '../../menu/recipe.ts';
import { clockMinutes, fromCelsius, metres, toCelsius } from '../../quantity/unit.ts';
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

  it('of milk and eggs is warmed by the milk alone, by hand: 45 °C and no more before yeast', () => {
    const braid = recipeMade(
      'braid',
      { 'bread flour': 500, milk: 200, egg: 150, 'instant yeast': 7 },
      { kind: 'yeast-bread' },
    );
    const { water, rise, notices } = raised(braid, 5);
    expect(water).toMatchObject({ warmed: ['milk'], hasEgg: true, limit: 'too hot for yeast' });
    expect(water!.water).toBe(fromCelsius(45));
    // J/K: flour 500 × 1.7, eggs 150 × 3.6 and yeast 10 at 5 °C; milk 200 × 3.9 at 45 °C; 2.8 K by hand
    const cold = 500 * 1.7 + 150 * 3.6 + 10;
    const byHand = (cold * 5 + 200 * 3.9 * 45) / (cold + 200 * 3.9) + 2.8;
    expect(toCelsius(water!.dough)).toBeCloseTo(byHand, 0);
    expect(rise!.mixed).toBe(water!.dough);
    expect(rise!.options.map((each) => each.do)).not.toContain('warmer-dough');
    expect(notices.map(({ code }) => code)).toContain('FORMULA_WATER_CAPPED');
    expect(raised(braid, 20).water!.dough).toBe(fromCelsius(25));
  });

  it('of eggs alone can not be warmed: it is as warm as they are, and that is said', () => {
    const eggs = recipeMade(
      'egg loaf',
      { 'bread flour': 500, egg: 300, 'instant yeast': 7 },
      { kind: 'yeast-bread' },
    );
    const { water, rise, notices } = raised(eggs, 10);
    expect(water).toMatchObject({ warmed: [], limit: 'nothing to warm' });
    expect(toCelsius(rise!.mixed)).toBeCloseTo(10 + 5 / 1.8, 6); // 5 °F by hand, handFriction
    expect(notices.map(({ code }) => code)).toContain('FORMULA_WATER_CAPPED');
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

  it('begins a second rise cold where the recipe leaves the dough in the cold over night', () => {
    const written = (night: string) => {
      const text = `Rolls\n500 g bread flour\n320 g water\n10 g salt\n4 g instant yeast\n\nMix and knead. Let rise 1 hour.${night} Shape into 12 rolls. Let rise 45 minutes. Bake at 400 F for 25 minutes.`;
      const read = readRecipeText(text);
      if ('refused' in read || read.recipe === undefined) throw new Error('not read');
      return raised(read.recipe, 20).rise!;
    };
    const plain = written('');
    const chilled = written(' Put it in the fridge overnight, 10 hours.');
    expect(plain.cold).toBeUndefined();
    expect(chilled.cold).toMatchObject({ minutes: 600, place: fromCelsius(4), isFirstRise: false });
    expect(chilled.estimate!.first).toBeCloseTo(plain.estimate!.first, 6);
    // A dough of half a kilo needs more than an hour in 20 °C air to come near it (Newton's cooling).
    expect(chilled.estimate!.second).toBeGreaterThan(plain.estimate!.second + 45);
    expect(codes(raised(loaf, 20))).toEqual([]);
  });
});

// Other ways of sharing out the ovens. Truth here is the judgement that is written down in lay.ts:
// three quarters is the published working fill (potFill), nine tenths our own last limit.

import { describe, expect, it } from 'vitest';
import { campMade, dishMade, ovenMade, recipeMade } from '../../validation/menu/made.ts';
import { grams } from '../quantity/unit.ts';
import type { MenuDish } from './menu.ts';
import { portionsFor } from './portions.ts';
import type { Recipe } from './recipe.ts';
import { otherShares, shareOvens } from './share.ts';

const stew = recipeMade('stew', { 'beef chuck': 1000, water: 1000 }, { portions: 2 });
const beans = recipeMade(
  'beans',
  { 'pinto beans': 500, water: 1500 },
  { kind: 'beans', portions: 2 },
);
const rolls = recipeMade(
  'rolls',
  { 'bread flour': 900, water: 570, salt: 18, 'instant yeast': 12 },
  {
    kind: 'yeast-bread',
    method: 'bake',
    portions: 24,
    division: [{ shape: 'roll', count: 24, gramsEach: grams(62.5), portionsEach: 1 }],
  },
);
// A 12-inch deep oven holds 8 quarts: 5.68 litres are three quarters of it.
const camp = campMade({
  ovens: [ovenMade('deep', 12, { style: 'deep' }), ovenMade('B', 12), ovenMade('C', 12)],
});
const lay = (recipe: Recipe, change: Partial<MenuDish>) => {
  const dish = dishMade(recipe, change);
  return { dish, recipe, portions: portionsFor(dish, recipe, camp) };
};
const ovensOf = (shares: ReturnType<typeof shareOvens>, dish: string) =>
  shares.fits.get(dish)?.loads.map(({ oven }) => oven);
const codesOf = (shares: ReturnType<typeof shareOvens>, dish: string) =>
  shares.fits.get(dish)?.notices.map(({ code }) => code);

describe('a batter over unequal ovens', () => {
  it('lies as thick in each of them, deep or shallow: shared by floor (plane geometry)', () => {
    const batter = recipeMade(
      'batter',
      { cornmeal: 500, water: 500 },
      { kind: 'corn-bread', method: 'bake' },
    );
    const ovens = [ovenMade('A', 10), ovenMade('B', 14, { style: 'deep' })];
    const two = campMade({ ovens });
    const dish = dishMade(batter, { portions: 40 });
    const wish = { dish, recipe: batter, portions: portionsFor(dish, batter, two) };
    const loads = shareOvens({ dishes: [wish], camp: two }).fits.get('batter')!.loads;
    expect(loads.map(({ oven }) => oven).sort()).toEqual(['A', 'B']);
    expect(loads[0]!.thickness).toBeCloseTo(loads[1]!.thickness, 9);
    const [a, b] = ['A', 'B'].map((id) => loads.find(({ oven }) => oven === id)!.mass);
    expect(b! / a!).toBeCloseTo((14 / 10) ** 2, 9);
    expect(a! + b!).toBeCloseTo(5000, 6);
  });
});

describe('other ways of sharing out the ovens', () => {
  it('keep a stew of 85 % in its pot, and say so, instead of taking one more oven', () => {
    const wish = { dishes: [lay(stew, { portions: 6.4 })], camp };
    const first = shareOvens(wish);
    expect(ovensOf(first, 'stew')).toHaveLength(2);
    const [pressed] = otherShares(wish, first);
    expect(ovensOf(pressed!, 'stew')).toEqual(['deep']);
    expect(codesOf(pressed!, 'stew')).toEqual(['MENU_POT_PRESSED']);
  });

  it('never fill a pot above nine tenths, nor one of beans above four fifths: they foam', () => {
    const tooMuch = { dishes: [lay(stew, { portions: 7 })], camp };
    const foams = { dishes: [lay(beans, { portions: 6.4 })], camp };
    for (const wish of [tooMuch, foams]) {
      for (const shares of [shareOvens(wish), ...otherShares(wish, shareOvens(wish))]) {
        for (const fit of shares.fits.values()) expect(fit.loads.length).toBeGreaterThan(1);
      }
    }
  });

  it('are none where only equal ovens would change places', () => {
    const alike = campMade({ ovens: [ovenMade('A', 12), ovenMade('B', 12), ovenMade('C', 12)] });
    const wish = { dishes: [lay(rolls, { portions: 12 })], camp: alike };
    expect(otherShares(wish, shareOvens(wish))).toEqual([]);
  });

  it('are at most three, all different, and hold the whole batch each', () => {
    const wish = { dishes: [lay(stew, { portions: 6.4 }), lay(rolls, { portions: 14 })], camp };
    const first = shareOvens(wish);
    const others = otherShares(wish, first);
    expect(others.length).toBeGreaterThan(0);
    expect(others.length).toBeLessThanOrEqual(3);
    for (const shares of others) {
      for (const { dish, portions } of wish.dishes) {
        const loads = shares.fits.get(dish.id)?.loads ?? [];
        const sum = loads.reduce((all, load) => all + load.portions, 0);
        expect(sum).toBeCloseTo(portions.portions, 9);
      }
    }
    const words = [first, ...others].map((each) =>
      JSON.stringify(
        [...each.fits.values()].map((fit) => fit.loads.map((load) => [load.dish, load.oven])),
      ),
    );
    expect(new Set(words).size).toBe(words.length);
  });
});

// Packs, larder, yields and the bill. Truth: the arithmetic of afrs-a6 and exhaustive search.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  madeCamp,
  madeDish,
  madeFormula,
  madeIngredient,
  madeRecipe,
} from '../../validation/bake/made.ts';
import type { StoreFood, Stores } from '../camp/stores.ts';
import type { Ingredient } from '../menu/recipe.ts';
import { isRefusal } from '../notice/notice.ts';
import { fromFahrenheit, grams, minutes, ratio } from '../quantity/unit.ts';
import type { DishToProvide } from './dish-to-provide.ts';
import { packsFor } from './packs.ts';
import { provisionsFor } from './provisions-for.ts';

const POUND = 453.59237; // nist-hb44
const pack = (size: number, price?: number) => ({
  size: grams(size),
  ...(price === undefined ? {} : { price }),
});

function bought(need: number, ...packs: readonly ReturnType<typeof pack>[]) {
  const found = packsFor('flour', grams(need), packs);
  if (isRefusal(found)) throw new Error(found.code);
  return found;
}

describe('packs', () => {
  it('are rounded up to whole ones, and one that fits exactly is not doubled by arithmetic', () => {
    expect(bought(2100, pack(1000)).packs).toMatchObject([{ size: 1000, count: 3 }]);
    expect(bought(3000, pack(1000)).bought).toBe(3000);
    expect(bought(3 * 0.1 * 1000, pack(100)).bought).toBe(300);
    expect(bought(0, pack(1000)).packs).toEqual([]);
  });

  it('of the cheapest sizes where all are priced, of the least left over where not', () => {
    expect(bought(2200, pack(1000, 3), pack(2500, 5)).packs).toMatchObject([
      { size: 2500, count: 1 },
    ]);
    expect(bought(2200, pack(1000, 1), pack(2500, 5)).packs).toMatchObject([
      { size: 1000, count: 3 },
    ]);
    expect(bought(5200, pack(500), pack(2500)).packs).toMatchObject([
      { size: 2500, count: 2 },
      { size: 500, count: 1 },
    ]);
  });

  it('are never less than is needed, and with one size never a whole pack too many', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 60_000, noNaN: true }),
        fc.array(fc.integer({ min: 50, max: 10_000 }), { minLength: 1, maxLength: 4 }),
        (need, sizes) => {
          const found = bought(need, ...sizes.map((size) => pack(size)));
          expect(found.bought).toBeGreaterThanOrEqual(need - 1e-4);
          expect(found.bought - need).toBeLessThan(Math.min(...sizes));
        },
      ),
      { seed: 4 },
    );
  });

  it('of two sizes cost what the cheapest of all mixtures costs (exhaustive)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 9000 }),
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: 1, max: 40 }),
        (need, small, large) => {
          const packs = [pack(500, small), pack(2500, large)];
          let best = Number.POSITIVE_INFINITY;
          for (let many = 0; many <= 4; many += 1)
            for (let few = 0; few <= 18; few += 1)
              if (many * 2500 + few * 500 >= need)
                best = Math.min(best, many * large + few * small);
          expect(bought(need, ...packs).cost).toBe(best);
        },
      ),
      { seed: 9 },
    );
  });

  it.each([0, -500, Number.NaN, Number.POSITIVE_INFINITY])(
    'of %s g are refused by name',
    (size) => {
      const found = packsFor('bread flour', grams(1000), [pack(1000), pack(size)]);
      expect(found).toMatchObject({
        refused: true,
        code: 'PROVISIONS_PACK_ZERO',
        conflicts: ['stores.foods.bread flour.packs'],
        values: { name: 'bread flour' },
      });
    },
  );
});

const planned = (ingredients: readonly Ingredient[]): DishToProvide => ({
  dish: madeDish(),
  recipe: madeRecipe({ ingredients, kind: 'stew', method: 'simmer' }),
  formula: madeFormula(ingredients),
  loads: [],
  safety: {
    dish: 'bread',
    hotHold: fromFahrenheit(140),
    coldHold: fromFahrenheit(40),
    outLimit: minutes(120),
    freeFrom: [],
    cautions: [],
  },
});

const shopping = (ingredients: readonly Ingredient[], ...foods: readonly StoreFood[]) => {
  const stores: Stores = { foods, carriers: [], coolers: [], money: '€' };
  return provisionsFor({ camp: madeCamp({ stores }), dishes: [planned(ingredients)] });
};
const carrots = madeIngredient('carrots, peeled', 3 * POUND, { part: 'vegetable', food: 'carrot' });
const cucumber = madeIngredient('cucumber', 3 * POUND, { part: 'vegetable' });

describe('from the dishes to the till', () => {
  it('3 lb by a yield of 1 / 1.19 is 3.57 lb as purchased (afrs-a6)', () => {
    const usable = ratio(1 / 1.19);
    const { shopping: lines } = shopping([cucumber], { name: 'cucumber', packs: [], usable });
    expect((lines[0]?.asBought ?? 0) / POUND).toBeCloseTo(3.57, 9);
    expect((lines[0]?.bought ?? 0) / POUND).toBeCloseTo(3.57, 9);
  });

  it('the yield of the cook wins over the table, and the larder is taken off before the packs', () => {
    const food = {
      name: 'carrots',
      packs: [pack(1000, 1.5)],
      usable: ratio(0.75),
      have: grams(300),
    };
    const { shopping: lines, bill } = shopping([carrots], food);
    const needed = (3 * POUND) / 0.75;
    expect(lines[0]).toMatchObject({ have: 300, bought: 2000, cost: 3 });
    expect(lines[0]?.toBuy).toBeCloseTo(needed - 300, 9);
    expect(bill).toMatchObject({ bought: 2000, cost: 3, money: '€', unpriced: 0 });
  });

  it.each([1.19, 0, -0.2, Number.NaN])(
    'a yield of %s is refused by name and the food still bought',
    (usable) => {
      const { refusals, shopping: lines } = shopping([carrots], {
        name: 'carrots',
        packs: [],
        usable: ratio(usable),
      });
      expect(refusals).toMatchObject([
        { code: 'PROVISIONS_YIELD_OVER_ONE', conflicts: ['stores.foods.carrots.usable'] },
      ]);
      expect((lines[0]?.bought ?? 0) / POUND).toBeCloseTo(3 * 1.22, 6); // the table's: afrs-a6
    },
  );

  it('what the larder holds in full is not bought, and never counted as more than is needed', () => {
    const { shopping: lines, bill } = shopping([cucumber], {
      name: 'cucumber',
      packs: [pack(500, 1)],
      have: grams(99_000),
    });
    expect(lines[0]?.have).toBe(lines[0]?.asBought ?? lines[0]?.grams);
    expect(lines[0]?.toBuy).toBe(0);
    expect(bill).toMatchObject({ bought: 0, cost: 0, unpriced: 0 });
  });

  it('a line without a price is told beside the bill, and a store that nothing uses is named', () => {
    const { bill, notices } = shopping([carrots, cucumber], { name: 'rye flour', packs: [] });
    expect(bill?.unpriced).toBe(2);
    const unused = notices.filter(({ code }) => code === 'PROVISIONS_STORE_UNUSED');
    expect(unused.map(({ values }) => values.name)).toEqual(['rye flour']);
  });

  it('takes a gluten-free flour for another food than the plain one', () => {
    const flour = (name: string) => madeIngredient(name, 1000, { part: 'flour' });
    const { shopping: lines } = shopping(
      [flour('bread flour'), flour('bread flour, gluten-free')],
      {
        name: 'bread flour',
        packs: [pack(2500)],
      },
    );
    expect(lines.map(({ packs }) => packs?.length ?? 0).sort()).toEqual([0, 1]);
  });
});

// Boxes and carriers. Truth: exhaustive packings and balances of weight; the bound of first fit
// decreasing, 11/9 and one more (johnson1973).

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  madeCamp,
  madeDish,
  madeFormula,
  madeIngredient,
  madeRecipe,
} from '../../../validation/bake/made.ts';
import type { Camp, CampOven } from '../../camp/camp.ts';
import type { Carrier, Stores } from '../../camp/stores.ts';
import { nominalOven } from '../../menu/nominal-oven.ts';
import type { Ingredient, Recipe } from '../../menu/recipe.ts';
import { fromUnit, inUnit } from '../../quantity/convert.ts';
import { fromFahrenheit, grams, minutes } from '../../quantity/unit.ts';
import type { DishToProvide } from '../dish-to-provide.ts';
import { provisionsFor } from '../provisions-for.ts';
import { loadCarriers, packBoxes } from './pack-boxes.ts';
import { usualLimit } from './pack-items.ts';
import type { PackedBox, PackItem } from './packing.ts';

const item = (mass: number, own: Partial<PackItem> = {}): PackItem => ({
  what: { thing: 'own', name: `${mass}` },
  kind: 'kit',
  mass: grams(mass),
  divides: false,
  ...own,
});
const box = { limit: grams(10_000), mass: grams(1000) };
const packed = (items: readonly PackItem[]) => packBoxes(items, () => box);
const weighs = (boxes: readonly PackedBox[]) => boxes.reduce((sum, { mass }) => sum + mass, 0);

/** The fewest boxes, by trying every way: for few things only. */
function fewest(masses: readonly number[], room: number): number {
  const place = (index: number, free: readonly number[], best: number): number => {
    if (free.length >= best) return best;
    const mass = masses[index];
    if (mass === undefined) return free.length;
    let found = best;
    free.forEach((left, at) => {
      if (mass <= left) found = place(index + 1, free.with(at, left - mass), found);
    });
    return place(index + 1, [...free, room - mass], found);
  };
  return place(0, [], masses.length + 1);
}

describe('boxes', () => {
  it('are within 11/9 of the fewest and one more (johnson1973; the fewest by trying all)', () => {
    const mass = fc.integer({ min: 500, max: 9000 });
    fc.assert(
      fc.property(fc.array(mass, { minLength: 1, maxLength: 7 }), (masses) => {
        const found = packed(masses.map((each) => item(each))).length;
        expect(found).toBeLessThanOrEqual((11 / 9) * fewest(masses, 9000) + 1);
      }),
      { seed: 11, numRuns: 60 },
    );
  });

  it('hold everything once, weigh no more than they may, and share no box between two kinds', () => {
    const kinds = ['dry', 'raw-meat', 'ready', 'fuel', 'free-from'] as const;
    const thing = fc.record({
      mass: fc.integer({ min: 1, max: 30_000 }),
      kind: fc.constantFrom(...kinds),
    });
    fc.assert(
      fc.property(fc.array(thing, { maxLength: 30 }), (things) => {
        const boxes = packed(things.map(({ mass, kind }) => item(mass, { kind, divides: true })));
        const all = things.reduce((sum, { mass }) => sum + mass, 0);
        expect(weighs(boxes) - 1000 * boxes.length).toBeCloseTo(all, 4);
        for (const each of boxes) {
          expect(each.mass).toBeLessThanOrEqual(10_000.001);
          expect(each.items.every(({ kind }) => kind === each.kind)).toBe(true);
        }
      }),
      { seed: 12 },
    );
  });

  it('tell by how much a thing that does not divide is too heavy', () => {
    const [only] = packed([item(12_500)]);
    expect(only).toMatchObject({ mass: 13_500, over: 3500 });
  });
});

const carrier = (own: Partial<Carrier>): Carrier => ({
  name: 'mule',
  kind: 'mule',
  count: 1,
  ...own,
});

describe('carriers', () => {
  const boxes = packed([item(8000), item(7000), item(6000)]);

  it('take the heaviest first, and none takes more than it may', () => {
    const { carriers, left } = loadCarriers(
      boxes,
      [carrier({ count: 2, limit: grams(16_500) })],
      usualLimit,
    );
    expect(carriers.map(({ mass }) => mass)).toEqual([16_000, 9000 - 1000]);
    expect(left).toEqual([]);
    expect(carriers.map(({ name }) => name)).toEqual(['mule 1', 'mule 2']);
  });

  it('leave what is too much, and carried and left weigh together what was packed', () => {
    const limits = fc.array(fc.integer({ min: 1000, max: 20_000 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(limits, (all) => {
        const named = all.map((limit) => carrier({ limit: grams(limit) }));
        const { carriers, left } = loadCarriers(boxes, named, usualLimit);
        const carried = carriers.reduce((sum, { mass }) => sum + mass, 0);
        expect(carried + weighs(left)).toBeCloseTo(weighs(boxes), 6);
        for (const each of carriers) expect(each.mass).toBeLessThanOrEqual(each.limit + 1e-6);
      }),
      { seed: 13 },
    );
  });
});

const dough: readonly Ingredient[] = [
  madeIngredient('bread flour', 6000, { part: 'flour', food: 'bread-flour' }),
  madeIngredient('baking powder', 60, { part: 'powder', food: 'baking-powder' }),
  madeIngredient('fine salt', 90, { part: 'salt', food: 'salt' }),
  madeIngredient('milk', 2000, { part: 'liquid' }),
  madeIngredient('water', 1500, { part: 'water' }),
];
const meat = [madeIngredient('beef chuck', 4000, { part: 'meat' })];

const dishOf = (
  id: string,
  ingredients: readonly Ingredient[],
  own: Partial<Recipe> = {},
  freeFrom: readonly string[] = [],
): DishToProvide => ({
  dish: madeDish({ id, freeFrom: freeFrom.length > 0 }),
  recipe: madeRecipe({ ingredients, ...own }),
  formula: madeFormula(ingredients),
  loads: [],
  safety: {
    dish: id,
    hotHold: fromFahrenheit(140),
    coldHold: fromFahrenheit(40),
    outLimit: minutes(120),
    freeFrom,
    cautions: [],
  },
});

const oven = (id: string, inches: number): CampOven => ({
  ...nominalOven(fromUnit(inches, 'inch'), 'regular'),
  id,
  name: id,
});

function packingOf(
  own: Partial<Camp>,
  stores: Partial<Stores> = {},
  freeFrom: readonly string[] = [],
) {
  const camp = madeCamp({ ...own, stores: { foods: [], carriers: [], coolers: [], ...stores } });
  const stew = dishOf('stew', meat, { kind: 'stew', method: 'simmer' });
  const found = provisionsFor({ camp, dishes: [dishOf('biscuits', dough, {}, freeFrom), stew] });
  if (found.packing === undefined) throw new Error('nothing packed');
  return { ...found, packing: found.packing };
}

describe('a packed camp', () => {
  it('has its leavening in a dry tin of its own, raw meat apart from what is eaten as it is', () => {
    const { boxes } = packingOf({}).packing;
    const kindsOf = (name: string) =>
      boxes
        .filter(({ items }) => items.some(({ what }) => 'name' in what && what.name === name))
        .map(({ kind }) => kind);
    expect(kindsOf('baking powder')).toEqual(['dry-tin']);
    expect(kindsOf('beef chuck')).toEqual(['raw-meat']);
    expect(kindsOf('milk')).toEqual(['ready']);
  });

  it('has a mix that is kept free of something in a box of its own, leavening and all', () => {
    const { boxes } = packingOf({}, {}, ['egg']).packing;
    const free = boxes.filter(({ kind }) => kind === 'free-from').flatMap(({ items }) => items);
    expect(free.map(({ what }) => what.thing).sort()).toEqual(['bag', 'leavening']);
    expect(boxes.some(({ kind }) => kind === 'dry-tin')).toBe(false);
  });

  it('carries each food once: bags, tin and loose food weigh what the shopping list weighs', () => {
    const { packing, foodMass } = packingOf({});
    const things = packing.boxes.flatMap(({ items }) => items);
    const food = things.filter(({ what }) => ['food', 'bag', 'leavening'].includes(what.thing));
    expect(food.reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(foodMass, 3);
  });

  it('counts its ovens: a 12-inch one is 20 lb, each by itself (ovenSizing)', () => {
    const { boxes } = packingOf({ ovens: [oven('A', 12), oven('B', 12)] }).packing;
    const ovens = boxes.filter(({ kind }) => kind === 'oven');
    expect(ovens.map(({ mass }) => inUnit(mass, 'pound'))).toEqual(
      [20, 20].map((lb) => expect.closeTo(lb, 2)),
    );
  });

  it('says how much is too much for the carriers, and nothing where they take all', () => {
    const ovens = [oven('A', 12), oven('B', 12), oven('C', 12)];
    const codes = (limit: number) =>
      packingOf({ ovens }, { carriers: [carrier({ limit: grams(limit) })] });
    const short = codes(20_000);
    const over = short.notices.find(({ code }) => code === 'PROVISIONS_OVERLOAD');
    expect(over?.values.overGrams).toBe(short.packing.leftMass);
    const carried = short.packing.carriers.reduce((sum, { mass }) => sum + mass, 0);
    expect(carried + short.packing.leftMass).toBeCloseTo(short.packing.mass, 6);
    const enough = codes(200_000).notices.map(({ code }) => code);
    expect(enough).not.toContain('PROVISIONS_OVERLOAD');
  });
});

// What lies between dough and iron, and the room that it takes. Truth: solid geometry, the published
// rule for how full a tin is (beranbaum2009), and the words of the recipe itself.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { campMade, dishMade, ovenMade, recipeMade } from '../../validation/menu/made.ts';
import { grams, metres, minutes } from '../quantity/unit.ts';
import { contactFigures, type FloorContact, type InOvenWish, inOvenOf } from './in-oven.ts';
import { layIn } from './lay.ts';
import { lotsOf } from './lots.ts';
import { portionsFor } from './portions.ts';
import type { Recipe } from './recipe.ts';

const quick = recipeMade(
  'quick',
  { flour: 500, water: 350 },
  { kind: 'quick-bread', method: 'bake' },
);
const batter = recipeMade(
  'batter',
  { cornmeal: 500, water: 500 },
  { kind: 'corn-bread', method: 'bake' },
);
const loaf = recipeMade(
  'loaf',
  { 'bread flour': 450, water: 290, salt: 9, 'instant yeast': 5 },
  { kind: 'yeast-bread', method: 'bake', portions: 8 },
);
const biscuits = recipeMade(
  'biscuits',
  { flour: 500, milk: 300, lard: 60 },
  {
    kind: 'biscuit',
    method: 'bake',
    portions: 16,
    division: [{ shape: 'biscuit', count: 16, gramsEach: grams(54), portionsEach: 1 }],
  },
);

const lain = (recipe: Recipe, inOven: InOvenWish, oven = ovenMade('A', 12), portions = 8) => {
  const dish = dishMade(recipe, { portions, inOven });
  const [lot] = lotsOf(dish, recipe, portionsFor(dish, recipe, campMade()));
  return layIn(oven, lot!);
};
const CONTACTS: readonly FloorContact[] = ['iron', 'paper', 'rack', 'tin', 'meal'];

describe('what a dough rests on', () => {
  it('is what the dish says, then the recipe, then its steps, then its kind', () => {
    const step = (say: string) => ({
      id: 'load',
      kind: 'load' as const,
      say,
      minutes: minutes(1),
      hands: 1,
      skill: 'new' as const,
      needsTable: false,
      after: [],
    });
    const onPaper = { ...biscuits, steps: [step('Onto baking paper.')] };
    expect(inOvenOf(biscuits).contact).toBe('iron');
    expect(inOvenOf(quick).contact).toBe('paper');
    expect(inOvenOf(onPaper).contact).toBe('paper');
    const said = { ...onPaper, inOven: { contact: 'rack' as const } };
    expect(inOvenOf(said).contact).toBe('rack');
    expect(inOvenOf(said, dishMade(said, { inOven: { contact: 'meal' } })).contact).toBe('meal');
  });

  it('takes a pinned hot or cold oven before the older word of the recipe', () => {
    const cold = { ...quick, target: { ...quick.target, coldOven: true } };
    expect(inOvenOf(quick).oven).toBeUndefined();
    expect(inOvenOf(cold).oven).toBe('cold');
    expect(inOvenOf({ ...cold, inOven: { oven: 'preheated' } }).oven).toBe('preheated');
    expect(inOvenOf(cold, dishMade(cold, { pins: { preheat: true } })).oven).toBe('preheated');
  });

  it('lets less heat through the more air there is in it: iron, paper, rack, tin on a rack', () => {
    const passed = CONTACTS.slice(0, 4).map((each) => contactFigures(each).conductance);
    expect(passed).toEqual([...passed].sort((a, b) => b - a));
    // Radiation of iron at 200 C alone is 4 sigma T^3 x 0.9 = 21.6 (Stefan-Boltzmann).
    const radiation = 4 * 5.670374e-8 * 473.15 ** 3 * 0.9;
    expect(contactFigures('rack').conductance).toBeGreaterThan(radiation);
    expect(contactFigures('rack').conductance).toBeLessThan(radiation + 10);
  });

  it('takes its height from under the lid, whatever the oven and the dough', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...CONTACTS),
        fc.constantFrom(quick, batter, loaf, biscuits),
        fc.constantFrom(8, 10, 12, 14, 16),
        fc.constantFrom('regular' as const, 'deep' as const),
        fc.double({ min: 0.5, max: 30, noNaN: true }),
        (contact, recipe, inches, style, portions) => {
          const oven = ovenMade('A', inches, { style });
          const lying = lain(recipe, { contact }, oven, portions);
          const { height } = contactFigures(contact);
          expect(lying.headroom + lying.risenHeight + height).toBeCloseTo(oven.depth, 9);
          expect(lying.volume).toBeCloseTo(lying.planArea * lying.thickness, 9);
          if (lying.fill <= 1) expect(lying.headroom).toBeGreaterThan(0.012 - 1e-9);
        },
      ),
      { seed: 3, numRuns: 300 },
    );
  });
});

describe('a batter that just goes in', () => {
  it('fills its oven to between half and two thirds (beranbaum2009), shallow or deep', () => {
    for (const [inches, style] of [
      [10, 'regular'],
      [12, 'regular'],
      [12, 'deep'],
      [14, 'regular'],
      [14, 'deep'],
      [16, 'regular'],
    ] as const) {
      const oven = ovenMade('A', inches, { style });
      const one = lain(batter, { contact: 'iron' }, oven, 8);
      const deep = one.thickness / one.fill / oven.depth;
      expect(deep, `${inches} ${style}`).toBeGreaterThan(0.5);
      expect(deep, `${inches} ${style}`).toBeLessThan(2 / 3);
    }
  });

  it('is poured no higher than two thirds of its tin (beranbaum2009)', () => {
    const one = lain(batter, { contact: 'tin' });
    const full = one.thickness / one.fill;
    expect(full).toBeLessThanOrEqual((2 / 3) * 0.051 + 1e-9);
  });
});

describe('a loaf in its tin', () => {
  it('needs a deep oven: rack, tin and rise are higher than a plain twelve', () => {
    expect(lain(loaf, { contact: 'tin' }).fill).toBeGreaterThan(1);
    expect(lain(loaf, { contact: 'tin' }, ovenMade('A', 12, { style: 'deep' })).fill).toBeLessThan(
      1,
    );
  });

  it('does not go in where it is longer than the floor is wide (plane geometry)', () => {
    const tin = { length: metres(0.3), width: metres(0.1), height: metres(0.07) };
    expect(Math.hypot(0.3, 0.1)).toBeGreaterThan(0.3048 * 0.84);
    expect(lain(loaf, { tin }, ovenMade('A', 12, { style: 'deep' }), 1).fill).toBeGreaterThan(1);
  });

  it('is the whole batch in one tin; a second loaf wants another oven', () => {
    const two = {
      ...loaf,
      division: [{ shape: 'loaf' as const, count: 2, gramsEach: grams(377), portionsEach: 4 }],
    };
    const deep = ovenMade('A', 14, { style: 'deep' });
    expect(lain(two, { contact: 'tin' }, deep).fill).toBeGreaterThan(1);
  });
});

describe('pieces', () => {
  it('touching on purpose go in closer than apart, and never overlap', () => {
    for (const inches of [8, 10, 12, 14, 16]) {
      const oven = ovenMade('A', inches);
      const apart = lain(biscuits, { pieces: 'apart' }, oven, 6);
      const touching = lain(biscuits, { pieces: 'touching' }, oven, 6);
      expect(touching.fill).toBeLessThanOrEqual(apart.fill);
      for (const [index, one] of touching.pieces.entries()) {
        for (const other of touching.pieces.slice(index + 1)) {
          const between = Math.hypot(one.x - other.x, one.y - other.y);
          expect(between).toBeGreaterThan(one.diameter - 1e-6);
        }
      }
    }
  });
});

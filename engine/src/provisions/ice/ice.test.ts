// Heat of ice and coolers against a refrigeration text, a textbook's chest and a published test of
// lid openings.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { madeCamp } from '../../../validation/bake/made.ts';
import cases from '../../../validation/provisions/ice-tests.json' with { type: 'json' };
import { insideOf, type Stores } from '../../camp/stores.ts';
import { fromUnit } from '../../quantity/convert.ts';
import {
  clockMinutes,
  cubicMetres,
  fromCelsius,
  fromFahrenheit,
  grams,
  joules,
  kelvinDifference,
  metres,
} from '../../quantity/unit.ts';
import type { ShoppingLine } from '../provisions.ts';
import { boxLeak, foodHeat, iceFor, iceHeat, openingHeat, wallLeak } from './heat.ts';
import { icePlanFor } from './ice-plan.ts';

const expected = (name: string): number => {
  const row = cases.rows.find(([key]) => key === name);
  if (row === undefined) throw new Error(name);
  return row[1] as number;
};

const JOULES_PER_BTU = 1055.05585; // nist-sp811, international table
const POUND = fromUnit(1, 'pound');

describe('heat that ice takes up', () => {
  const text = { from: fromFahrenheit(5), to: fromFahrenheit(40) };
  // The text's own figures: 144 Btu/lb, 0.504 and 1 Btu/(lb F); one Btu/(lb F) is 4.1868 kJ/(kg K).
  const its = { fusion: 144 * 2.326, ice: 0.504 * 4.1868, water: 4.1868 }; // nist-sp811

  it('25 lb from 5 °F to 40 °F is 4,140.2 Btu with the figures of iceRefrigerationText', () => {
    const heat = iceHeat(grams(25 * POUND), text, its) / JOULES_PER_BTU;
    expect(heat).toBeCloseTo(expected('in all'), 0);
    const parts = ['sensible, ice', 'fusion', 'sensible, water'].map(expected);
    expect(parts.reduce((sum, each) => sum + each, 0)).toBeCloseTo(expected('in all'), 9);
    const melted = iceHeat(grams(25 * POUND), { from: fromCelsius(0), to: fromCelsius(0) }, its);
    expect(melted / JOULES_PER_BTU).toBeCloseTo(expected('fusion'), 0);
  });

  it('is within 0.3 % of it with ours: 334 kJ/kg is 143.6 Btu/lb (iceSurfaceText)', () => {
    const heat = iceHeat(grams(25 * POUND), text) / JOULES_PER_BTU;
    expect(Math.abs(heat / expected('in all') - 1)).toBeLessThan(0.003);
  });

  it('fao-ice gives 80 kcal/kg, within half a per cent of ours', () => {
    const melted = iceHeat(grams(1000), { from: fromCelsius(0), to: fromCelsius(0) });
    expect(Math.abs(melted / (80 * 4186.8) - 1)).toBeLessThan(0.005); // nist-sp811 calorie
  });

  it('goes there and back: ice for the heat that it takes up weighs the same', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e6, noNaN: true }), (mass) => {
        expect(iceFor(iceHeat(grams(mass), text), text)).toBeCloseTo(mass, 6);
      }),
      { seed: 6 },
    );
  });
});

describe('the chest of 50 x 40 x 30 cm', () => {
  const outer = { length: 0.5, width: 0.4, height: 0.3 };
  const wall = 0.03;
  const inner = { length: 0.44, width: 0.34, height: 0.27 };
  const warmer = kelvinDifference(25);
  const openBelow = ({ length, width, height }: typeof outer) =>
    length * width + 2 * height * (length + width);
  const leak = (box: typeof outer) =>
    wallLeak({
      squareMetres: openBelow(box),
      thickness: metres(wall),
      wattsPerMetreKelvin: 0.033,
      warmer,
    });
  const days = (watts: number) => (30 * 333_200) / watts / 86_400; // L of the problem

  it('lets in 20.35 W by its outer area and 15.7 W by its inner, bottom neglected (iceChest)', () => {
    expect(leak(outer)).toBeCloseTo(expected('chest, outer area'), 2);
    expect(leak(inner)).toBeCloseTo(expected('chest, inner area'), 1);
    expect(days(leak(outer))).toBeCloseTo(expected('chest, outer area, days'), 2);
    expect(days(leak(inner))).toBeCloseTo(expected('chest, inner area, days'), 1);
  });

  it('lets in between its inner and its outer area with edges and corners (bergman2011 table 4.1)', () => {
    const inside = { length: metres(0.44), width: metres(0.34), height: metres(0.24) };
    const whole = boxLeak(inside, metres(wall), warmer);
    const six = ({ length, width, height }: typeof outer) =>
      2 * (length * width + length * height + width * height);
    const flat = (box: typeof outer) => (0.033 * six(box) * 25) / wall;
    expect(whole).toBeGreaterThan(flat(inside));
    expect(whole).toBeLessThan(flat(outer));
  });
});

describe('lids and food', () => {
  it('ten openings of 36 quarts let in 30 to 40 Btu (lidOpenings)', () => {
    const inside = insideOf(cubicMetres(36 * fromUnit(1, 'us-quart')));
    const heat = (10 * openingHeat(inside)) / JOULES_PER_BTU;
    expect(heat).toBeGreaterThanOrEqual(expected('ten openings, least'));
    expect(heat).toBeLessThanOrEqual(expected('ten openings, most'));
  });

  it('water gives off 4.186 kJ/(kg K) by siebel1892, as water does', () => {
    expect(foodHeat(grams(1000), 1, kelvinDifference(1))).toBeCloseTo(4186, 6);
    expect(foodHeat(grams(1000), 0.7, kelvinDifference(-3))).toBe(0);
  });
});

const line = (name: string, mass: number, own: Partial<ShoppingLine>): ShoppingLine => ({
  name,
  grams: grams(mass),
  shelf: 'cold',
  keep: 'cold',
  dishes: [],
  checkLabel: [],
  ...own,
});
const meat = line('beef chuck', 4000, { shelf: 'meat' });
const milk = line('milk', 2000, {});
const cooler = { name: 'blue', inside: insideOf(cubicMetres(0.034)), wall: metres(0.03) };
const planFor = (stores: Partial<Stores> | undefined, lastServing = 1440) =>
  icePlanFor({
    camp: madeCamp(
      stores === undefined ? {} : { stores: { foods: [], carriers: [], coolers: [], ...stores } },
    ),
    shopping: [meat, milk, line('flour', 5000, { shelf: 'dry', keep: 'dry' })],
    lastServing,
  });

describe('ice for a camp', () => {
  it('is none where nothing is kept cold', () => {
    const camp = madeCamp();
    expect(icePlanFor({ camp, shopping: [], lastServing: 1200 })).toBeUndefined();
  });

  it('keeps raw meat in a box of its own where there are two, or where nobody named one', () => {
    expect(planFor(undefined)?.boxes.map(({ holds }) => holds)).toEqual(['raw-meat', 'ready']);
    const two = planFor({ coolers: [cooler, { ...cooler, name: 'red' }] });
    expect(two?.boxes.map(({ holds }) => holds).sort()).toEqual(['raw-meat', 'ready']);
    expect(planFor({ coolers: [cooler] })?.boxes.map(({ holds }) => holds)).toEqual(['both']);
  });

  it('is what leaks in, lids and walls, over what a gram of it takes up', () => {
    const [box] = planFor({ coolers: [{ ...cooler, openings: 0 }] })?.boxes ?? [];
    const perGram = iceHeat(grams(1), { from: fromCelsius(-5), to: fromCelsius(4) });
    expect(box?.iceNeeded).toBeCloseTo(((box?.leak ?? 0) * 86_400) / perGram, 6);
  });

  it('lasts as long as it is needed where just enough goes in, and half as long for half of it', () => {
    const needed = planFor({ coolers: [cooler] })?.boxes[0]?.iceNeeded ?? grams(0);
    const lasts = (ice: number) =>
      planFor({ coolers: [{ ...cooler, ice: grams(ice) }] })?.boxes[0]?.lasts ?? 0;
    expect(lasts(needed)).toBeCloseTo(1440, 6);
    expect(lasts(needed / 2)).toBeCloseTo(720, 6);
  });

  it('is more the longer it lies, the thinner the wall and the more often the lid is opened', () => {
    const ice = (own: Partial<typeof cooler> & { openings?: number }, last?: number) =>
      planFor({ coolers: [{ ...cooler, ...own }] }, last)?.ice ?? 0;
    expect(ice({}, 2880)).toBeGreaterThan(ice({}));
    expect(ice({ wall: metres(0.02) })).toBeGreaterThan(ice({}));
    expect(ice({ openings: 40 })).toBeGreaterThan(ice({}));
    const early = planFor({ coolers: [cooler], packedAt: clockMinutes(-720) })?.ice ?? 0;
    expect(early).toBeGreaterThan(ice({}));
  });

  it('never goes in for warm food without saying what that would cost (a cooler does not chill)', () => {
    const box = planFor({ coolers: [cooler] })?.boxes[0];
    const water = foodHeat(grams(6000), 1, kelvinDifference(16));
    const most = iceFor(joules(water), { from: fromCelsius(-5), to: fromCelsius(4) });
    expect(box?.iceIfWarm).toBeGreaterThan(0.5 * most);
    expect(box?.iceIfWarm).toBeLessThan(most);
  });

  it('says a cooler of the size of its food is full when twice as much goes in', () => {
    const full = planFor({ coolers: [{ ...cooler, inside: insideOf(cubicMetres(0.008)) }] });
    expect(full?.boxes[0]?.fill).toBeGreaterThan(1);
  });
});

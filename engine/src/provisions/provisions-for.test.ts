import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  madeCamp,
  madeDish,
  madeFormula,
  madeIngredient,
  madeRecipe,
} from '../../validation/bake/made.ts';
import cards from '../../validation/provisions/service-cards.json' with { type: 'json' };
import type { Camp } from '../camp/camp.ts';
import type { CoalPlan } from '../coals/coal-plan.ts';
import type { Ingredient, Recipe } from '../menu/recipe.ts';
import { clockMinutes, fromFahrenheit, grams, metresPerSecond, minutes } from '../quantity/unit.ts';
import { bibliographies } from '../sources/index.ts';
import type { DishToProvide } from './dish-to-provide.ts';
import { provisionsFor } from './provisions-for.ts';
import { asBought } from './shopping.ts';

const POUND = 453.59237;
const row = (card: string) => {
  const found = cards.rows.find(([key]) => key === card);
  if (found === undefined) throw new Error(card);
  return found as unknown as readonly [string, number, number, number];
};

const planned = (
  id: string,
  ingredients: readonly Ingredient[],
  own: Partial<Recipe> = {},
  loads: DishToProvide['loads'] = [],
  freeFrom: readonly string[] = [],
  factor = 1,
): DishToProvide => ({
  dish: madeDish({ id, freeFrom: freeFrom.length > 0 }),
  recipe: madeRecipe({ ingredients, ...own }),
  formula: madeFormula(ingredients, factor),
  loads,
  safety: {
    dish: id,
    hotHold: fromFahrenheit(140),
    coldHold: fromFahrenheit(40),
    outLimit: minutes(120),
    freeFrom,
    cautions: [],
  },
});

const coals = (fuelMass: number, coalsInAll: number) =>
  ({
    coals: {
      fuelMass: grams(fuelMass),
      coalsInAll,
      above: { shovels: 2 },
      below: { shovels: 1 },
      additions: [],
    } as unknown as CoalPlan,
  }) as const;

describe('worked examples of the service cards', () => {
  it('348 portions of 1.25 lb a hundred are 4.35 lb on the shopping list (afrs-a1)', () => {
    const [, pounds, factor, expected] = row('afrs-a1');
    const beef = madeIngredient('beef chuck', pounds * POUND, { part: 'meat' });
    const { shopping } = provisionsFor({
      camp: madeCamp(),
      dishes: [planned('stew', [beef], {}, [], [], factor)],
    });
    expect((shopping[0]?.grams ?? 0) / POUND).toBeCloseTo(expected, 6);
  });

  it('edible portion becomes as purchased by the factor of its food (afrs-a6)', () => {
    const [, pounds, factor, expected] = row('afrs-a6');
    expect(pounds * factor).toBeCloseTo(expected, 9); // the card's own arithmetic: 1.19 is cucumber
    expect((asBought('cucumber, pared', grams(pounds * POUND)) ?? 0) / POUND).toBeCloseTo(
      expected,
      9,
    );
    // Rows of the same card: 1 lb of onion is 1.11 lb bought, cabbage cored 1.25, carrot 1.22.
    expect(asBought('onion', grams(POUND))).toBeCloseTo(1.11 * POUND, 6);
    expect(asBought('cabbage', grams(POUND))).toBeCloseTo(1.25 * POUND, 6);
    expect(asBought('carrot', grams(POUND))).toBeCloseTo(1.22 * POUND, 6);
    expect(asBought('bread-flour', grams(POUND))).toBeUndefined();
  });
});

describe('the shopping list', () => {
  it('buys a food by its plain name, and keeps apart what only shares a row of the larder', () => {
    const part = { part: 'spice', food: 'ground-spice' } as const;
    const dishes = [
      planned('chili', [
        madeIngredient('cumin', 4, part),
        madeIngredient('paprika', 6, part),
        madeIngredient('butter, melted', 50, { part: 'fat', food: 'butter-salted' }),
        madeIngredient('sugar (filling)', 100, { part: 'sugar', food: 'sugar' }),
      ]),
    ];
    const { shopping } = provisionsFor({ camp: madeCamp(), dishes });
    const bought = shopping.map(({ name, grams: mass }) => [name, mass]);
    expect(bought).toEqual(
      expect.arrayContaining([
        ['cumin', 4],
        ['paprika', 6],
        ['butter', 50],
        ['sugar', 100],
      ]),
    );
    expect(bought).toHaveLength(4);
  });

  it('weighs what the batches weigh, water left out', () => {
    const foods = fc.constantFrom(
      madeIngredient('bread flour', 500, { part: 'flour', food: 'bread-flour' }),
      madeIngredient('onions, chopped', 200, { part: 'vegetable', food: 'onion' }),
      madeIngredient('fine salt', 10, { part: 'salt', food: 'salt' }),
      madeIngredient('something of our own', 70),
      madeIngredient('water', 300, { part: 'water', food: 'water' }),
    );
    fc.assert(
      fc.property(
        fc.array(fc.array(foods, { maxLength: 6 }), { maxLength: 5 }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (lists, factor) => {
          const dishes = lists.map((list, index) =>
            planned(`dish-${index}`, list, {}, [], [], factor),
          );
          const dry = lists.flat().filter((each) => each.part !== 'water');
          const expected = dry.reduce((sum, each) => sum + each.grams * factor, 0);
          const found = provisionsFor({ camp: madeCamp(), dishes });
          expect(found.foodMass).toBeCloseTo(expected, 6);
        },
      ),
      { seed: 21 },
    );
  });

  it('keeps tinned and fresh, and what is called free from, on lines of their own', () => {
    const dishes = [
      planned('a', [
        madeIngredient('baking powder', 10, { part: 'powder', food: 'baking-powder' }),
        madeIngredient('baking powder, gluten-free', 10, { part: 'powder', food: 'baking-powder' }),
      ]),
      planned('b', [madeIngredient('baking powder', 5, { part: 'powder', food: 'baking-powder' })]),
    ];
    const { shopping } = provisionsFor({ camp: madeCamp(), dishes });
    expect(shopping.map((line) => line.grams).sort((a, b) => a - b)).toEqual([10, 15]);
  });
});

describe('home-weighed bags', () => {
  const dough = [
    madeIngredient('bread flour', 500, { part: 'flour', food: 'bread-flour' }),
    madeIngredient('fine salt', 10, { part: 'salt', food: 'salt' }),
    madeIngredient('water', 320, { part: 'water', food: 'water' }),
  ];

  it('hold the dry part and leave the rest to be added, and weigh together what the batch does', () => {
    const [bag] = provisionsFor({ camp: madeCamp(), dishes: [planned('loaf', dough)] }).bags;
    expect(bag?.contents.map((each) => each.name)).toEqual(['bread flour', 'fine salt']);
    expect(bag?.add.map((each) => each.name)).toEqual(['water']);
    const added = bag?.add.reduce((sum, each) => sum + each.grams, 0) ?? 0;
    expect((bag?.total ?? 0) + added).toBe(830);
    expect(bag?.contains).toContain('gluten');
  });

  it('that are free from something come first and say so', () => {
    const meal = [madeIngredient('our own meal', 500, { part: 'meal' })];
    const dishes = [
      planned('loaf', dough),
      planned('corn', meal, { kind: 'corn-bread' }, [], ['gluten']),
    ];
    const { bags, notices } = provisionsFor({ camp: madeCamp(), dishes });
    expect(bags.map((bag) => bag.dish)).toEqual(['corn', 'loaf']);
    expect(notices.map((each) => each.code)).toContain('PROVISIONS_BAG_APART');
  });

  it('of a cobbler keep the fruit’s sugar and starch out of the dough', () => {
    const cobbler = [
      madeIngredient('canned peaches', 2000, { part: 'fruit' }),
      madeIngredient('sugar (fruit)', 150, { part: 'sugar' }),
      madeIngredient('cornstarch', 60, { food: 'cornstarch' }),
      madeIngredient('bread flour', 480, { part: 'flour' }),
      madeIngredient('sugar (topping)', 150, { part: 'sugar' }),
    ];
    const { bags } = provisionsFor({
      camp: madeCamp(),
      dishes: [planned('cobbler', cobbler, { kind: 'cobbler' })],
    });
    expect(bags.map((bag) => bag.contents.map((each) => each.name))).toEqual([
      ['bread flour', 'sugar (topping)'],
      ['sugar (fruit)', 'cornstarch'],
    ]);
  });
});

describe('fuel', () => {
  const withFuel = (onHand?: number): Camp =>
    madeCamp({
      fuel: {
        kind: 'briquettes',
        pieceMass: grams(25),
        isMeasured: true,
        ...(onHand === undefined ? {} : { onHand: grams(onHand) }),
      },
    });
  const dishes = [planned('loaf', [], {}, [coals(1000, 40), coals(500, 20)])];
  const codes = (camp: Camp) => provisionsFor({ camp, dishes }).notices.map((each) => each.code);

  it('is what the plans burn and never without a spare', () => {
    const { fuel } = provisionsFor({ camp: withFuel(), dishes });
    expect(fuel).toMatchObject({ kind: 'briquettes', pieces: 60, mass: 1500, short: 0 });
    expect(fuel.massWithSpare).toBeGreaterThan(1500 * 1.2);
  });

  it('is said to be short with the spare, and not enough without it', () => {
    expect(codes(withFuel(5000))).toEqual([]);
    expect(codes(withFuel(1600))).toContain('PROVISIONS_FUEL_SHORT');
    expect(codes(withFuel(1400))).toContain('PROVISIONS_FUEL_NOT_ENOUGH');
  });

  it('has more spare the windier it gets, but never twice (wind-doubles)', () => {
    const spare = (wind: number) => {
      const [hour] = madeCamp().weather;
      const camp = madeCamp({
        weather: [{ ...hour!, at: clockMinutes(600), wind: metresPerSecond(wind) }],
      });
      return provisionsFor({ camp, dishes }).fuel.spare;
    };
    expect(spare(8)).toBeGreaterThan(spare(4));
    expect(spare(4)).toBeGreaterThan(spare(1));
    expect(spare(40)).toBeLessThan(1);
  });

  it('has one lit coal in twenty to spare besides, for those that break (common practice)', () => {
    const wood = madeCamp({ fuel: { kind: 'wood-coals', lead: minutes(60) } });
    const spare = (camp: Camp) => provisionsFor({ camp, dishes }).fuel.spare;
    expect(spare(withFuel()) - spare(wood)).toBeCloseTo(0.05, 9);
  });

  it('of wood is told in shovels, never in pieces', () => {
    const camp = madeCamp({ fuel: { kind: 'wood-coals', lead: minutes(60) } });
    const { fuel } = provisionsFor({ camp, dishes });
    expect(fuel.pieces).toBeUndefined();
    expect(fuel.shovels).toBe(6);
  });
});

describe('water', () => {
  const drunkBy = (hours: readonly (readonly [number, number])[]) => {
    const hands = hours.map(([from, to], index) => ({
      id: `hand-${index}`,
      name: 'a hand',
      skill: 'steady' as const,
      from: clockMinutes(60 * from),
      to: clockMinutes(60 * to),
    }));
    const { water, notices } = provisionsFor({ camp: madeCamp({ hands }), dishes: [] });
    expect(notices.map((each) => each.code)).toContain('PROVISIONS_DRINKING_HOURS');
    return (1000 * (water.find((need) => need.use === 'drinking')?.volume ?? 0)) / 8;
  };

  it('to drink is the gallon of camping-gallon by the waking hours at camp, a litre at least', () => {
    const gallon = 4; // litres, rounded up from 3.785
    expect(drunkBy([[6, 22]])).toBeCloseTo(gallon, 9);
    expect(drunkBy([[10, 18]])).toBeCloseTo(gallon / 2, 9);
    expect(
      drunkBy([
        [10, 12],
        [11, 18],
      ]),
    ).toBeCloseTo(gallon / 2, 9);
    expect(drunkBy([[12, 13]])).toBe(1);
    expect(drunkBy([[8, 56]])).toBeCloseTo(2 * gallon, 9);
  });

  it('for hands is five gallons at the least where the public is fed (sf-handwash)', () => {
    const hands = (event: Camp['event']) =>
      provisionsFor({
        camp: { ...madeCamp(), ...(event === undefined ? {} : { event }) },
        dishes: [],
      }).water.find((need) => need.use === 'hands');
    const US_GALLON = 0.003785411784; // nist-sp811
    expect(hands('public')?.volume).toBeGreaterThanOrEqual(5 * US_GALLON - 1e-4);
    expect(hands('home')?.volume).toBe(hands(undefined)?.volume);
  });

  it('to drown ash is a bucket for a small fire, five gallons for a large one (ash-water)', () => {
    const ash = (fuelMass: number) =>
      provisionsFor({
        camp: madeCamp(),
        dishes: [planned('loaf', [], {}, [coals(fuelMass, 40)])],
      }).water.find((need) => need.use === 'ash');
    expect(ash(12_000)).toMatchObject({ source: 'ash-water', volume: 0.019 });
    expect(ash(1400)).toMatchObject({ source: 'camp-practice', volume: 0.01 });
  });

  it('names a work of the bibliography for every use', () => {
    const keys = Object.values(bibliographies).flatMap((each) => Object.keys(each));
    const dishes = [planned('loaf', [madeIngredient('water', 300, { part: 'water' })])];
    for (const { source } of provisionsFor({ camp: madeCamp(), dishes }).water)
      if (source !== 'recipes') expect(keys).toContain(source);
  });

  it('to drink and cook is 4 l a person a day, inside the 2.5 to 9 l of sphere-water', () => {
    const { water, waterInAll } = provisionsFor({ camp: madeCamp(), dishes: [] });
    const drinking = water.find((need) => need.use === 'drinking');
    const perMouth = ((drinking?.volume ?? 0) / 8) * 1000;
    expect(perMouth).toBeGreaterThanOrEqual(2.5);
    expect(perMouth).toBeLessThanOrEqual(9);
    expect(waterInAll).toBeCloseTo(
      water.reduce((sum, need) => sum + need.volume, 0),
      12,
    );
  });
});

describe('walks to the water', () => {
  it('are as many as two cans of ten litres want, where the camp names its water', () => {
    const camp = madeCamp();
    const far = { ...camp, place: { ...camp.place, water: 'pump, 200 m' } };
    const found = provisionsFor({ camp: far, dishes: [] });
    expect(found.waterTrips).toBe(Math.ceil(found.waterInAll / 0.02));
    expect(found.notices.map(({ code }) => code)).toContain('PROVISIONS_WATER_TRIPS');
    const { water: _none, ...near } = camp.place;
    expect(
      provisionsFor({ camp: { ...camp, place: near }, dishes: [] }).waterTrips,
    ).toBeUndefined();
  });
});

// A cook's own food: from the label in the file to the grams of a formula and back to the file.

import { describe, expect, it } from 'vitest';
import { percentagesOf, planMeal } from '#engine';
import { fromEngine } from './from-engine.ts';
import { readCampFile } from './read.ts';

const FLOUR = {
  id: 'mill-flour',
  name: 'Flour of our mill',
  part: 'flour',
  label: 'eu',
  kilocalories: 348,
  fat: 1.4,
  carbohydrate: 71,
  fibre: 3.2,
  protein: 11.5,
  salt: 0,
  measures: { cup: '132 g' },
  contains: ['wheat'],
};
const DRINK = {
  id: 'creamy-drink',
  name: 'Creamy drink',
  part: 'liquid',
  label: 'us',
  of: '240 g',
  kilocalories: 130,
  fat: 5,
  carbohydrate: 17,
  sugar: 7,
  protein: 3,
  sodiumMilligrams: 100,
  measures: { cup: '240 g' },
  contains: ['soy'],
  mayContain: ['tree-nut'],
};

const camp = (foods: readonly unknown[]) => ({
  emberwright: 'camp',
  version: 1,
  id: 'own',
  title: 'Own food',
  place: { name: 'Here' },
  mouths: [{ count: 4 }],
  ovens: [{ id: 'A', diameter: '12 in' }],
  menu: [{ id: 'bread', recipe: 'bread', serve: '18:00' }],
  recipes: [
    {
      id: 'bread',
      name: 'Bread',
      kind: 'quick-bread',
      method: 'bake',
      portions: 6,
      ingredients: [
        { name: 'flour of our mill', measure: '3 cups' },
        { name: 'the white one', food: 'creamy-drink', measure: '1 to 1 1/2 cups' },
        { name: 'baking powder', measure: '4 tsp' },
        { name: 'black beans', measure: '1 (15 oz) can' },
      ],
    },
  ],
  foods,
});

function read(foods: readonly unknown[]) {
  const found = readCampFile(camp(foods));
  if (!found.ok) throw new Error(JSON.stringify(found.troubles));
  return found;
}

describe("a cook's own food in a camp file", () => {
  it('is weighed by its own cup, by its name or by its id, a range by its middle', () => {
    const [flour, drink] = read([FLOUR, DRINK]).menu.recipes[0]!.ingredients;
    expect(flour?.grams).toBe(3 * 132);
    expect(drink?.grams).toBeCloseTo(1.25 * 240, 9);
    expect(drink?.part).toBe('liquid');
  });

  it('counts in the formula by its own label: water is what the label leaves over', () => {
    const { ingredients } = read([FLOUR, DRINK]).menu.recipes[0]!;
    const shares = percentagesOf(
      ingredients.map((ingredient) => ({ ingredient, grams: ingredient.grams })),
    );
    // 240 g less 5, 17, 3 and 0.26 g of salt leave 214.74 g of water; hand arithmetic.
    expect(shares?.hydration).toBeCloseTo((300 * 214.742) / 240 / 396, 4);
    expect(shares?.fat).toBeCloseTo((300 * (5 / 240)) / 396, 2);
  });

  it('brings its allergens, the doubtful ones too, into the plan and the shopping', () => {
    const { menu, camp: place } = read([FLOUR, DRINK]);
    const [flour, drink] = menu.recipes[0]!.ingredients;
    expect(flour?.allergens).toEqual(['wheat', 'gluten']);
    expect([drink?.allergens, drink?.checkLabel]).toEqual([['soy'], ['tree-nut']]);
    const plan = planMeal(place, menu, {});
    expect(plan.refusals).toEqual([]);
    expect(JSON.stringify(plan.provisions)).toContain('mill-flour');
  });

  it('is the same after it was written and read again', () => {
    const first = read([FLOUR, DRINK]);
    const written = fromEngine(first.camp, first.menu);
    const again = readCampFile(written);
    expect(again.ok && again.menu.foods).toEqual(first.menu.foods);
    expect(again.ok && again.menu.recipes[0]!.ingredients).toEqual(
      first.menu.recipes[0]!.ingredients,
    );
  });

  it('that can not be is a trouble of its place, and so is one of a shape that we do not know', () => {
    const heavy = readCampFile(camp([{ ...FLOUR, protein: 60 }, DRINK]));
    expect(!heavy.ok && heavy.troubles.map(({ code, path }) => [code, path])).toContainEqual([
      'FILE_FOOD_IMPOSSIBLE',
      'foods[0]',
    ]);
    expect(readCampFile(camp([{ ...FLOUR, part: 'stone' }, DRINK])).ok).toBe(false);
  });
});

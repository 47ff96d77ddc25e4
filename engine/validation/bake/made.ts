// Loads, recipes and air made for tests of bake/, safety/ and provisions/; no expected values here.

import type { Air, Camp } from '../../src/camp/camp.ts';
import type { Formula } from '../../src/formula/formula.ts';
import type { OvenLoad } from '../../src/menu/load.ts';
import type { MenuDish } from '../../src/menu/menu.ts';
import type { Ingredient, Recipe } from '../../src/menu/recipe.ts';
import {
  clockMinutes,
  cubicMetres,
  degrees,
  fromCelsius,
  grams,
  kelvin,
  metres,
  metresPerSecond,
  minutes,
  pascals,
  ratio,
  squareMetres,
} from '../../src/quantity/unit.ts';

/** Sea-level air at 20 C unless the boiling point is said. */
export const madeAir = (boilingCelsius = 99.97): Air => ({
  temperature: kelvin(293.15),
  pressure: pascals(101_325),
  wind: metresPerSecond(1),
  windFrom: degrees(0),
  boiling: fromCelsius(boilingCelsius),
});

/** A dough of this thickness and density on 0.03 m2 of floor. */
export function madeDough(dough: {
  readonly millimetres: number;
  readonly rise: number;
  readonly density?: number;
}): OvenLoad {
  const thickness = dough.millimetres / 1000;
  const area = 0.03;
  return {
    id: 'bread-1',
    dish: 'bread',
    oven: 'A',
    mass: grams(thickness * area * (dough.density ?? 1100) * 1000),
    portions: 8,
    shape: 'disc',
    thickness: metres(thickness),
    risenHeight: metres(thickness * dough.rise),
    planArea: squareMetres(area),
    volume: cubicMetres(thickness * area),
    pieces: [],
    fill: ratio(0.5),
    headroom: metres(0.02),
  };
}

export const madePot = (massGrams: number, diameterMetres = 0.3): OvenLoad => {
  const area = (Math.PI * diameterMetres ** 2) / 4;
  const depth = massGrams / 1e6 / area;
  return {
    ...madeDough({ millimetres: depth * 1000, rise: 1 }),
    id: 'pot-1',
    dish: 'pot',
    shape: 'pot',
    mass: grams(massGrams),
    planArea: squareMetres(area),
    volume: cubicMetres(massGrams / 1e6),
  };
};

export const madeRecipe = (own: Partial<Recipe> = {}): Recipe => ({
  id: 'bread',
  name: 'bread',
  kind: 'yeast-bread',
  method: 'bake',
  portions: 8,
  ingredients: [],
  steps: [],
  target: { canWait: minutes(30), rest: minutes(10), isCold: false },
  division: [],
  contains: [],
  ...own,
});

export const madeIngredient = (
  name: string,
  massGrams: number,
  own: Partial<Ingredient> = {},
): Ingredient => ({
  name,
  grams: grams(massGrams),
  asWritten: `${massGrams} g`,
  part: 'other',
  allergens: [],
  checkLabel: [],
  ...own,
});

export const madeFormula = (ingredients: readonly Ingredient[] = [], factor = 1): Formula => ({
  dish: 'bread',
  recipe: 'bread',
  lines: ingredients.map((ingredient) => ({ ingredient, grams: grams(ingredient.grams * factor) })),
  flour: grams(0),
  batch: grams(ingredients.reduce((sum, each) => sum + each.grams * factor, 0)),
  changes: [],
  notices: [],
});

export const madeDish = (own: Partial<MenuDish> = {}): MenuDish => ({
  id: 'bread',
  name: 'bread',
  recipe: 'bread',
  serveAt: clockMinutes(1110),
  freeFrom: false,
  pins: {},
  ...own,
});

export const madeCamp = (own: Partial<Camp> = {}): Camp => ({
  id: 'camp',
  title: 'camp',
  place: { name: 'a bench', elevation: metres(300), ground: 'gravel', hearth: 'fire-table' },
  date: '2026-09-12',
  timeZone: 'UTC',
  weather: [
    {
      at: clockMinutes(1080),
      air: fromCelsius(18),
      wind: metresPerSecond(2),
      gust: metresPerSecond(3),
      windFrom: degrees(270),
    },
  ],
  mouths: [{ count: 8, appetite: 'ordinary' }],
  needs: [],
  hands: [],
  ovens: [],
  fuel: { kind: 'briquettes', pieceMass: grams(25), isMeasured: true },
  gear: {
    chimneys: 1,
    chimneyfulCoals: 90,
    lidStands: 1,
    tables: 1,
    windScreens: 1,
    thermometer: true,
    others: [],
  },
  restriction: 'none',
  ...own,
});

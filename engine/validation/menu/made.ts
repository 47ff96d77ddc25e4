// A plain camp, dish and recipe for the tests of menu/ and formula/, to be changed where it matters.

import type { Camp, CampOven } from '../../src/camp/camp.ts';
import { allergensNamed } from '../../src/larder/allergens.ts';
import { foodNamed } from '../../src/larder/name.ts';
import type { MenuDish } from '../../src/menu/menu.ts';
import { nominalOven } from '../../src/menu/nominal-oven.ts';
import type { Ingredient, Recipe } from '../../src/menu/recipe.ts';
import { fromUnit } from '../../src/quantity/convert.ts';
import {
  clockMinutes,
  degrees,
  fromCelsius,
  grams,
  metres,
  metresPerSecond,
  minutes,
} from '../../src/quantity/unit.ts';

export const ovenMade = (id: string, inches: number, change: Partial<CampOven> = {}): CampOven => ({
  ...nominalOven(fromUnit(inches, 'inch'), change.style),
  id,
  ...change,
});

export const campMade = (change: Partial<Camp> = {}): Camp => ({
  id: 'made',
  title: 'Made',
  place: { name: 'Here', elevation: metres(100), ground: 'soil', hearth: 'ground' },
  date: '2026-06-01',
  timeZone: 'UTC',
  weather: [
    {
      at: clockMinutes(0),
      air: fromCelsius(15),
      wind: metresPerSecond(2),
      gust: metresPerSecond(3),
      windFrom: degrees(270),
    },
  ],
  mouths: [{ count: 8, appetite: 'ordinary' }],
  needs: [],
  hands: [
    { id: 'cook', name: 'Cook', skill: 'steady', from: clockMinutes(0), to: clockMinutes(1440) },
  ],
  ovens: [ovenMade('A', 12)],
  fuel: { kind: 'briquettes', pieceMass: grams(25), isMeasured: false },
  gear: {
    chimneys: 1,
    chimneyfulCoals: 100,
    lidStands: 1,
    tables: 1,
    windScreens: 0,
    thermometer: true,
    others: [],
  },
  restriction: 'none',
  ...change,
});

export const dishMade = (recipe: Recipe, change: Partial<MenuDish> = {}): MenuDish => ({
  id: recipe.id,
  name: recipe.name,
  recipe: recipe.id,
  serveAt: clockMinutes(1080),
  freeFrom: false,
  pins: {},
  ...change,
});

export function ingredientMade(name: string, mass: number, note?: string): Ingredient {
  const food = foodNamed(name);
  return {
    name,
    grams: grams(mass),
    asWritten: `${mass} g`,
    ...(food === undefined ? {} : { food: food.key }),
    part: food?.part ?? 'other',
    ...allergensNamed(`${name} ${note ?? ''}`, food),
    ...(note === undefined ? {} : { note }),
  };
}

export const recipeMade = (
  id: string,
  amounts: Readonly<Record<string, number>>,
  change: Partial<Recipe> = {},
): Recipe => ({
  id,
  name: id,
  kind: 'stew',
  method: 'simmer',
  portions: 8,
  ingredients: Object.entries(amounts).map(([name, mass]) => ingredientMade(name, mass)),
  steps: [],
  target: { canWait: minutes(30), rest: minutes(0), isCold: false },
  division: [],
  contains: [],
  ...change,
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import ovenTable from '../../data/ovens.json' with { type: 'json' };
import ranges from '../../validation/formula/published-ranges.json' with { type: 'json' };
import service from '../../validation/menu/service-portions.json' with { type: 'json' };
import { campTrouble } from '../camp/trouble.ts';
import { foodWithKey } from '../larder/larder.ts';
import { isRefusal } from '../notice/notice.ts';
import { fromUnit } from '../quantity/convert.ts';
import { clockMinutes, metres } from '../quantity/unit.ts';
import { massToFill } from './fill-oven.ts';
import { recipeMass } from './pieces.ts';
import { portionsFor } from './portions.ts';
import { readyRecipes, readyRecipeWithId } from './ready-recipes.ts';
import { shareOvens } from './share.ts';
import { campForTonight } from './tonight.ts';
import type { Tonight, TonightAnswers } from './tonight-answers.ts';
import { menuTrouble } from './trouble.ts';

const answers = (change: Partial<TonightAnswers> = {}): TonightAnswers => ({
  what: 'biscuits',
  oven: { diameterMetres: fromUnit(12, 'inch') },
  when: { serveAt: clockMinutes(1110) },
  date: '2026-06-01',
  timeZone: 'UTC',
  now: clockMinutes(960),
  ...change,
});
const tonight = (change: Partial<TonightAnswers> = {}) =>
  campForTonight(answers(change)) as Tonight;

function loadsOf({ camp, menu }: Tonight) {
  const dish = menu.dishes[0]!;
  const recipe = menu.recipes[0]!;
  const { fits } = shareOvens({
    dishes: [{ dish, recipe, portions: portionsFor(dish, recipe, camp) }],
    camp,
  });
  return fits.get(dish.id)?.loads ?? [];
}

describe('ready recipes', () => {
  it('are eight at least, each whole: ingredients from the larder, steps in order, no trouble', () => {
    expect(readyRecipes.length).toBeGreaterThanOrEqual(8);
    expect(new Set(readyRecipes.map((each) => each.id)).size).toBe(readyRecipes.length);
    for (const recipe of readyRecipes) {
      const { camp, menu } = tonight({ what: recipe.id });
      expect(menuTrouble(menu, camp).refusals, recipe.id).toEqual([]);
      expect(
        recipe.steps.filter((step) => step.kind === 'cook'),
        recipe.id,
      ).toHaveLength(1);
      for (const each of recipe.ingredients) {
        expect(foodWithKey(each.food ?? '')?.part, each.name).toBe(each.part);
      }
    }
  });

  it('lie inside published ranges (validation/formula/published-ranges.json)', () => {
    for (const row of ranges.rows as readonly Record<string, unknown>[]) {
      const { ingredients } = readyRecipeWithId(String(row.recipe))!;
      const sum = (parts: readonly string[]) =>
        ingredients.reduce((all, each) => all + (parts.includes(each.part) ? each.grams : 0), 0);
      const flour = sum(['flour', 'meal']);
      for (const [part, range] of Object.entries(row)) {
        if (part === 'recipe') continue;
        const [least, most] = range as readonly [number, number];
        const percent = (100 * sum([part === 'buttermilk' ? 'liquid' : part])) / flour;
        expect(percent, `${row.recipe} ${part}`).toBeGreaterThanOrEqual(least);
        expect(percent, `${row.recipe} ${part}`).toBeLessThanOrEqual(most);
      }
    }
  });

  it('give a portion of stew what armedForcesRecipes card L-23 gives, within 3 %', () => {
    const stew = readyRecipeWithId('beef-stew')!;
    for (const [food, , each] of service.rows as readonly (readonly unknown[])[]) {
      const mass = stew.ingredients.find((one) => one.food === food)!.grams / stew.portions;
      expect(Math.abs(mass / Number(each) - 1), String(food)).toBeLessThan(0.03);
    }
  });
});

describe('a camp for tonight', () => {
  it('stands on three answers, without trouble, in one oven, for every recipe and every usual oven', () => {
    for (const recipe of readyRecipes) {
      for (const inches of [8, 10, 12, 14, 16]) {
        const oven = { diameterMetres: fromUnit(inches, 'inch') };
        const made = tonight({ what: recipe.id, oven });
        expect(campTrouble(made.camp).refusals, recipe.id).toEqual([]);
        const loads = loadsOf(made);
        expect(loads, `${recipe.id} ${inches}`).toHaveLength(1);
        expect(loads[0]!.fill).toBeLessThanOrEqual(1.07);
        const full = massToFill(made.camp.ovens[0]!, recipe);
        const onePortion = recipeMass(recipe) / recipe.portions;
        expect(loads[0]!.mass).toBeGreaterThan(0.4 * full - onePortion);
        expect(loads[0]!.mass).toBeLessThan(full + onePortion);
      }
    }
  });

  it('says each of its fourteen usual values, and none that the cook gave', () => {
    expect(tonight().assumed.map((each) => each.what)).toHaveLength(14);
    const said = tonight({ hands: 2, elevation: metres(1200), weather: { airKelvin: 270 } });
    expect(said.assumed.map((each) => each.what)).not.toContain('hands');
    expect(said.assumed.map((each) => each.what)).not.toContain('air');
    expect(said.camp.hands).toHaveLength(2);
    expect(said.camp.place.elevation).toBe(1200);
  });

  it('makes the recipe as it is written where the oven takes it, in whole portions', () => {
    expect(loadsOf(tonight({ what: 'soda-bread' }))[0]!.mass).toBeCloseTo(899, 6);
    for (const recipe of readyRecipes) {
      const made = tonight({ what: recipe.id });
      expect(made.menu.dishes[0]!.portions! % 1, recipe.id).toBe(0);
      expect(made.menu.dishes[0]!.portions!).toBeLessThanOrEqual(recipe.portions);
    }
  });

  it('lets the dish follow the mouths unless the cook gave an amount', () => {
    expect(tonight().menu.dishes[0]!.portionsAssumed).toBe(true);
    expect(tonight({ mouths: 4 }).menu.dishes[0]!.portions).toBeUndefined();
    expect(tonight({ amount: { portions: 5 } }).menu.dishes[0]!.portionsAssumed).toBeUndefined();
  });

  it('refuses a storm and a cold in which nobody cooks', () => {
    for (const weather of [{ windMetresPerSecond: 200 }, { airKelvin: 193 }]) {
      expect(isRefusal(campForTonight(answers({ weather })))).toBe(true);
    }
  });

  it('takes the amount as flour, mass, portions or thickness', () => {
    const biscuits = readyRecipeWithId('biscuits')!;
    const portions = (amount: TonightAnswers['amount']) =>
      tonight({ ...(amount === undefined ? {} : { amount }) }).menu.dishes[0]!.portions!;
    expect(portions({ flourGrams: 960 })).toBeCloseTo(2 * biscuits.portions, 9);
    expect(portions({ massGrams: recipeMass(biscuits) / 2 })).toBeCloseTo(biscuits.portions / 2, 9);
    expect(portions({ portions: 5 })).toBe(5);
    const thick = tonight({ what: 'corn-bread', amount: { thicknessMetres: 0.04 } });
    expect(loadsOf(thick)[0]!.thickness).toBeCloseTo(0.04, 6);
  });

  it('lets the owner of an oven know better, and serves as soon as it can be if no time is said', () => {
    const made = tonight({
      oven: {
        diameterMetres: fromUnit(12, 'inch'),
        floorDiameter: metres(0.24),
        depth: metres(0.12),
      },
      when: {},
    });
    expect(made.camp.ovens[0]!.floorDiameter).toBe(0.24);
    expect(made.camp.ovens[0]!.depth).toBe(0.12);
    expect(made.menu.dishes[0]!.serveAt).toBeGreaterThan(960);
    expect(made.menu.dishes[0]!.serveAt % 5).toBe(0);
  });

  it('refuses what can not be, and says of an oven between sizes that it is reckoned', () => {
    const code = (change: Partial<TonightAnswers>) => {
      const outcome = campForTonight(answers(change));
      return isRefusal(outcome) ? outcome.code : undefined;
    };
    expect(code({ what: 'moon cake' })).toBe('MENU_READY_RECIPE_UNKNOWN');
    expect(code({ oven: { diameterMetres: 1 } })).toBe('MENU_OVEN_SIZE_UNKNOWN');
    expect(code({ oven: { diameterMetres: Number.NaN } })).toBe('MENU_OVEN_SIZE_UNKNOWN');
    expect(code({ when: { serveAt: clockMinutes(100) } })).toBe('MENU_SERVE_PAST');
    expect(code({ amount: { massGrams: -1 } })).toBe('MENU_AMOUNT_IMPOSSIBLE');
    expect(code({ amount: { portions: 1e9 } })).toBe('MENU_AMOUNT_ABSURD');
    expect(code({ what: 'beef-stew', amount: { flourGrams: 500 } })).toBe('MENU_AMOUNT_IMPOSSIBLE');
    const between = tonight({ oven: { diameterMetres: fromUnit(11, 'inch') } });
    expect(between.notices.map((each) => each.code)).toEqual(['MENU_OVEN_BETWEEN_SIZES']);
  });

  it('never throws and never gives a number that is none, whatever it is asked', () => {
    const odd = fc.oneof(fc.double(), fc.double({ min: 0.2, max: 0.41 }), fc.constantFrom(0, -1));
    fc.assert(
      fc.property(odd, odd, fc.constantFrom(...readyRecipes), (diameterMetres, portions, what) => {
        const made = campForTonight(
          answers({ what, oven: { diameterMetres }, amount: { portions } }),
        );
        if (isRefusal(made)) return;
        for (const load of loadsOf(made)) {
          const numbers = Object.values(load).filter((each) => typeof each === 'number');
          expect(numbers.every(Number.isFinite)).toBe(true);
        }
      }),
      { seed: 9, numRuns: 300 },
    );
  });
});

describe('hot or cold at the start', () => {
  const oven = { diameterMetres: fromUnit(12, 'inch') };
  const isAssumed = ({ assumed }: Tonight) => assumed.some((each) => each.what === 'cold-oven');

  it('is the recipe’s own affair, and assumed aloud, until it is said', () => {
    const unsaid = tonight();
    expect(unsaid.menu.dishes[0]?.pins.preheat).toBeUndefined();
    expect(isAssumed(unsaid)).toBe(true);
    for (const startsHot of [true, false]) {
      const said = tonight({ oven: { ...oven, startsHot }, pins: { coalsAbove: 14 } });
      expect(said.menu.dishes[0]?.pins).toEqual({ preheat: startsHot, coalsAbove: 14 });
      expect(isAssumed(said)).toBe(false);
    }
  });
});

describe('a thickness that is fixed too high', () => {
  const thick = (thicknessMetres: number, what = 'soda-bread', inches = 12) =>
    campForTonight(
      answers({
        what,
        oven: { diameterMetres: fromUnit(inches, 'inch') },
        amount: { thicknessMetres },
      }),
    );
  const refusalOf = (outcome: ReturnType<typeof campForTonight>) => {
    if (!isRefusal(outcome)) throw new Error('not refused');
    return outcome;
  };

  it('is refused with the thickest that fits: that goes in, a millimetre more does not', () => {
    const refused = refusalOf(thick(0.08));
    expect(refused.code).toBe('MENU_TOO_THICK');
    expect(refused.about.dish).toBe('soda-bread');
    const most = Number(refused.values.mostMetres);
    expect(most).toBeGreaterThan(0.02);
    const fits = thick(most - 1e-6);
    expect(isRefusal(fits)).toBe(false);
    expect(loadsOf(fits as Tonight)).toHaveLength(1);
    expect(isRefusal(thick(most + 0.001))).toBe(true);
  });

  it('is the spread of a batter, unless its amount is said: then that decides, and is said', () => {
    const refused = refusalOf(thick(0.25, 'corn-bread'));
    expect(refused.code).toBe('MENU_TOO_THICK');
    const most = Number(refused.values.mostMetres);
    const fits = thick(most - 1e-6, 'corn-bread') as Tonight;
    expect(loadsOf(fits)[0]?.thickness).toBeCloseTo(most, 4);
    expect(fits.notices).toEqual([]);
    const said = tonight({ what: 'corn-bread', amount: { massGrams: 900, thicknessMetres: 0.25 } });
    expect(said.notices.map((each) => each.code)).toEqual(['MENU_THICKNESS_WITHOUT_EFFECT']);
  });

  it('changes nothing for rolls, which take their own shape, and says so', () => {
    const { notices } = tonight({ what: 'rolls', amount: { thicknessMetres: 0.03 } });
    expect(notices.map((each) => each.code)).toEqual(['MENU_THICKNESS_WITHOUT_EFFECT']);
  });

  it('names no oven but one that a source vouches for: rows graded A to C (ovenSizing)', () => {
    const vouched = ovenTable.rows.filter((row) => row.grade !== 'D');
    const sizes = vouched.map((row) => `${row.style} ${row.diameterInches}`);
    let named = 0;
    for (let millimetres = 20; millimetres <= 120; millimetres += 2) {
      const outcome = thick(millimetres / 1000, 'soda-bread', 8);
      if (!isRefusal(outcome) || outcome.values.diameterMetres === undefined) continue;
      named += 1;
      const inches = Math.round(Number(outcome.values.diameterMetres) / 0.0254);
      expect(sizes).toContain(`${outcome.values.style} ${inches}`);
    }
    expect(named).toBeGreaterThan(0);
  });
});

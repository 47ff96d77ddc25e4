import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { campMade, dishMade, ovenMade, recipeMade } from '../../validation/menu/made.ts';
import sizes from '../../validation/menu/oven-sizes.json' with { type: 'json' };
import scaling from '../../validation/menu/service-scaling.json' with { type: 'json' };
import { fromUnit, inUnit } from '../quantity/convert.ts';
import { clockMinutes, grams, metres, minutes } from '../quantity/unit.ts';
import { floorOf } from './geometry.ts';
import type { OvenLoad } from './load.ts';
import { nominalOven } from './nominal-oven.ts';
import { batchMass } from './pieces.ts';
import { portionsFor } from './portions.ts';
import { type DishToLay, shareOvens } from './share.ts';
import { menuTrouble } from './trouble.ts';

const stew = recipeMade('stew', { 'beef chuck': 1000, water: 600, potatoes: 400 });
const bread = recipeMade(
  'bread',
  { 'bread flour': 500, water: 310, salt: 10, 'instant yeast': 5 },
  { kind: 'yeast-bread', method: 'bake' },
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
const lay = (dish: DishToLay['dish'], recipe: DishToLay['recipe'], camp = campMade()) => ({
  dish,
  recipe,
  portions: portionsFor(dish, recipe, camp),
});
const sumOf = (loads: readonly OvenLoad[], of: (load: OvenLoad) => number) =>
  loads.reduce((sum, load) => sum + of(load), 0);

describe('portions', () => {
  it('scale as armedForcesRecipes card A-1: 348 of 100 is 3.48, 1.25 lb becomes 4.35 lb', () => {
    for (const [
      portions,
      pounds,
      factor,
      scaled,
    ] of scaling.rows as readonly (readonly number[])[]) {
      const recipe = recipeMade(
        'card',
        { potatoes: fromUnit(pounds!, 'pound') },
        { portions: 100 },
      );
      const dish = dishMade(recipe, { portions: portions! });
      const found = portionsFor(dish, recipe, campMade());
      expect(found.factor).toBeCloseTo(factor!, 12);
      expect(inUnit(batchMass(recipe, dish, found), 'pound')).toBeCloseTo(scaled!, 12);
    }
  });

  it('keep the number that the cook said, without appetite and reserve', () => {
    const camp = campMade({ mouths: [{ count: 30, appetite: 'hard-work' }] });
    const found = portionsFor(dishMade(stew, { portions: 20 }), stew, camp);
    expect([found.portions, found.reserve, found.factor]).toEqual([20, 0, 2.5]);
    expect(found.notices.map(({ code }) => code)).toContain('MENU_FOOD_SHORT');
  });

  it('do not call food short where the number that the cook said is about enough', () => {
    const camp = campMade({ mouths: [{ count: 22, appetite: 'ordinary' }] });
    const { notices } = portionsFor(dishMade(stew, { portions: 20 }), stew, camp);
    expect(notices.map(({ code }) => code)).not.toContain('MENU_FOOD_SHORT');
  });

  it('count appetites in this order: child, over 65, ordinary, hard work (common practice)', () => {
    const wanted = (['child', 'over-65', 'ordinary', 'hard-work'] as const).map(
      (appetite) =>
        portionsFor(dishMade(stew), stew, campMade({ mouths: [{ count: 10, appetite }] })).portions,
    );
    expect(wanted).toEqual([...wanted].sort((a, b) => a - b));
    expect(new Set(wanted).size).toBe(4);
    expect(wanted[3]).toBe(14); // hardWorkRations: 4,200 over 3,000 kcal
  });

  it('leave out who can not eat the dish and say so', () => {
    const needs = [
      { who: 'a guest', kind: 'gluten', strictness: 'strict' },
      { who: 'another', kind: 'vegetarian', strictness: 'avoid' },
    ] as const;
    const camp = campMade({ needs });
    expect(portionsFor(dishMade(bread), bread, camp).eaters).toBe(7);
    const eaten = portionsFor(dishMade(stew), stew, camp);
    expect(eaten.eaters).toBe(7);
    expect(eaten.notices.map((each) => each.code)).toEqual(['MENU_CANNOT_EAT']);
  });
});

describe('usual ovens', () => {
  it('have quarts and pounds of the ovenSizing chart', () => {
    for (const [inches, style, quarts, pounds] of sizes.rows as readonly (readonly unknown[])[]) {
      const oven = nominalOven(fromUnit(Number(inches), 'inch'), style as 'regular' | 'deep');
      expect(inUnit(oven.capacity, 'us-quart')).toBeCloseTo(Number(quarts), 9);
      expect(inUnit(oven.mass, 'pound')).toBeCloseTo(Number(pounds), 9);
    }
  });

  it('hold what a cone between floor and rim holds, within 12 % of the chart (solid geometry)', () => {
    for (const [inches, style, quarts] of sizes.rows as readonly (readonly unknown[])[]) {
      const oven = nominalOven(fromUnit(Number(inches), 'inch'), style as 'regular' | 'deep');
      const [rim, floor] = [oven.diameter, floorOf(oven)];
      const cone = ((Math.PI * oven.depth) / 12) * (rim ** 2 + floor ** 2 + rim * floor) * 1e6;
      expect(Math.abs(cone / (Number(quarts) * 946.352946) - 1)).toBeLessThan(0.12);
    }
  });

  it('have a floor of about 10 inches in a 12-inch oven (ovenSizing); the owner knows better', () => {
    const oven = nominalOven(fromUnit(12, 'inch'));
    expect(inUnit(floorOf(oven), 'inch')).toBeCloseTo(10, 0);
    expect(floorOf({ ...oven, floorDiameter: metres(0.27) })).toBe(0.27);
  });
});

describe('ovens for dishes', () => {
  it('take mass and portions in as they give them out, whatever the batch', () => {
    const camp = campMade({
      ovens: ['A', 'B', 'C', 'D'].map((id, index) => ovenMade(id, [8, 10, 12, 14][index]!)),
    });
    fc.assert(
      fc.property(
        fc.constantFrom(stew, bread, rolls),
        fc.double({ min: 1, max: 60, noNaN: true }),
        (recipe, portions) => {
          const dish = dishMade(recipe, { portions });
          const wish = lay(dish, recipe, camp);
          const loads = shareOvens({ dishes: [wish], camp }).fits.get(dish.id)?.loads;
          if (loads === undefined) return;
          expect(sumOf(loads, (load) => load.mass)).toBeCloseTo(
            batchMass(recipe, dish, wish.portions),
            6,
          );
          expect(sumOf(loads, (load) => load.portions)).toBeCloseTo(portions, 6);
          for (const load of loads) {
            expect(load.volume).toBeCloseTo(load.planArea * load.thickness, 9);
            expect(load.headroom).toBeGreaterThan(0.01);
            expect(load.fill).toBeLessThan(1.071);
            if (load.shape === 'pieces') expect(load.pieces.length).toBeGreaterThan(0);
          }
        },
      ),
      { seed: 11, numRuns: 200 },
    );
  });

  it('fill a pot to three quarters (potFill): 6 quarts take 4.26 kg of stew, not 5', () => {
    const camp = campMade();
    const laid = (portions: number) =>
      shareOvens({ dishes: [lay(dishMade(stew, { portions }), stew, camp)], camp });
    const full = laid((4258 / 2000) * 8).fits.get('stew')!.loads[0]!;
    expect(full.fill).toBeCloseTo(1, 3);
    const refused = laid((5000 / 2000) * 8).refusals[0]!;
    expect(refused.code).toBe('MENU_OVEN_TOO_SMALL');
    expect(refused.values.diameterMetres).toBeCloseTo(0.3048, 6);
    expect(refused.values.style).toBe('deep');
  });

  it('share a batch over ovens, or bake it in turns, when one is not enough', () => {
    const two = campMade({ ovens: [ovenMade('A', 12), ovenMade('B', 12)] });
    const one = campMade();
    const dish = dishMade(rolls, { portions: 28 });
    const shared = shareOvens({ dishes: [lay(dish, rolls, two)], camp: two }).fits.get('rolls')!;
    expect(shared.loads.map((load) => load.oven).sort()).toEqual(['A', 'B']);
    expect(shared.notices.map((each) => each.code)).toContain('MENU_SPLIT');
    const turned = shareOvens({ dishes: [lay(dish, rolls, one)], camp: one }).fits.get('rolls')!;
    expect(turned.loads.map((load) => load.oven)).toEqual(['A', 'A']);
    expect(turned.notices.map((each) => each.code)).toContain('MENU_IN_TURNS');
    expect(sumOf(turned.loads, (load) => load.pieces.length)).toBe(28);
  });

  it('put the pot into the deep oven and the rolls into the regular one (common practice)', () => {
    const camp = campMade({
      ovens: [ovenMade('deep', 12, { style: 'deep' }), ovenMade('flat', 12)],
    });
    const dishes = [
      lay(dishMade(rolls, { portions: 14 }), rolls, camp),
      lay(dishMade(stew), stew, camp),
    ];
    const { fits } = shareOvens({ dishes, camp });
    expect(fits.get('rolls')!.loads[0]!.oven).toBe('flat');
    expect(fits.get('stew')!.loads[0]!.oven).toBe('deep');
  });

  it('give one oven to two dishes only one after the other', () => {
    const camp = campMade();
    const late = dishMade(stew, { id: 'late', serveAt: clockMinutes(1080 + 240) });
    const soon = dishMade(bread);
    const apart = shareOvens({ dishes: [lay(late, stew, camp), lay(soon, bread, camp)], camp });
    expect([...apart.fits.values()].flatMap((fit) => fit.notices)).toEqual([]);
    const same = { ...late, serveAt: soon.serveAt };
    const tight = shareOvens({ dishes: [lay(same, stew, camp), lay(soon, bread, camp)], camp });
    expect(tight.fits.get('bread')!.notices.map((each) => each.code)).toContain('MENU_OVEN_TIGHT');
  });

  it('keep the kept-free oven for the dish that must be kept free, and nobody else', () => {
    const free = recipeMade(
      'corn',
      { 'cornmeal, certified gluten-free': 450, water: 400, eggs: 100, salt: 8 },
      { kind: 'corn-bread', method: 'bake' },
    );
    const ovens = [ovenMade('blue', 12, { keptFreeOf: ['gluten'] }), ovenMade('B', 12)];
    const camp = campMade({ ovens });
    const dishes = [
      lay(dishMade(bread), bread, camp),
      lay(dishMade(free, { freeFrom: true }), free, camp),
    ];
    const { fits } = shareOvens({ dishes, camp });
    expect(fits.get('corn')!.loads[0]!.oven).toBe('blue');
    expect(fits.get('bread')!.loads[0]!.oven).toBe('B');
    const none = campMade({ ovens: [ovenMade('B', 12)] });
    const forced = shareOvens({ dishes: [dishes[1]!], camp: none }).fits.get('corn')!;
    expect(forced.notices.map((each) => each.code)).toEqual(['MENU_NOT_KEPT_FREE']);
  });

  it('bake rolls and a round of one dough in turns when both are pinned to one oven', () => {
    const division = [
      { shape: 'roll', count: 12, gramsEach: grams(60), portionsEach: 1 },
      { shape: 'round', count: 1, gramsEach: grams(780), portionsEach: 8 },
    ] as const;
    const dough = { ...rolls, id: 'dough', portions: 20, division };
    const camp = campMade();
    const dish = dishMade(dough, { portions: 20, pins: { oven: 'A' } });
    const fit = shareOvens({ dishes: [lay(dish, dough, camp)], camp }).fits.get('dough')!;
    expect(fit.loads.map((load) => Math.round(load.mass))).toEqual([780, 720]);
    expect(fit.notices.map((each) => each.code)).toEqual(['MENU_IN_TURNS']);
  });

  it('keep a pinned oven and judge it', () => {
    const camp = campMade({ ovens: [ovenMade('small', 8), ovenMade('large', 14)] });
    const dish = dishMade(stew, { pins: { oven: 'small' } });
    const fit = shareOvens({ dishes: [lay(dish, stew, camp)], camp }).fits.get('stew')!;
    expect(fit.loads[0]!.oven).toBe('small');
    expect(fit.notices[0]!.code).toBe('MENU_PINNED_OVEN_OVERFULL');
    const lost = dishMade(stew, { pins: { oven: 'gone' } });
    expect(shareOvens({ dishes: [lay(lost, stew, camp)], camp }).refusals[0]!.code).toBe(
      'MENU_PIN_UNKNOWN',
    );
  });

  it('keep two pins on one oven that is too small and wanted twice at once, and judge both', () => {
    const camp = campMade({ ovens: [ovenMade('small', 8), ovenMade('large', 14)] });
    const dishes = [
      lay(dishMade(stew, { pins: { oven: 'small' } }), stew, camp),
      lay(dishMade(rolls, { portions: 40, pins: { oven: 'small' } }), rolls, camp),
    ];
    const { fits, refusals } = shareOvens({ dishes, camp });
    expect(refusals).toEqual([]);
    for (const { dish } of dishes) {
      const fit = fits.get(dish.id)!;
      expect(fit.loads.map((load) => load.oven)).toEqual(['small']);
      expect(fit.notices.map((each) => [each.code, each.level])).toEqual(
        expect.arrayContaining([
          ['MENU_PINNED_OVEN_OVERFULL', 'stop'],
          ['MENU_OVEN_TIGHT', 'doubt'],
        ]),
      );
      // Nothing is taken away to make it fit: the whole batch is laid.
      expect(sumOf(fit.loads, (load) => load.portions)).toBeGreaterThanOrEqual(dish.portions ?? 8);
    }
  });

  it('keep the thickness of a batter from 8 to 16 inches when mass goes with the floor', () => {
    const batter = recipeMade(
      'batter',
      { cornmeal: 500, water: 500 },
      { kind: 'corn-bread', method: 'bake' },
    );
    const thick = [8, 10, 12, 14, 16].map((inches) => {
      const camp = campMade({ ovens: [ovenMade('A', inches)] });
      const dish = dishMade(batter, { portions: 8 * (inches / 12) ** 2 });
      return shareOvens({ dishes: [lay(dish, batter, camp)], camp }).fits.get('batter')!.loads[0]!
        .thickness;
    });
    for (const each of thick) expect(each).toBeCloseTo(thick[0]!, 9);
  });

  it('plan twenty ovens and twelve dishes inside its bound', () => {
    const ovens = Array.from({ length: 20 }, (_, index) => ovenMade(`O${index}`, 12));
    const camp = campMade({ ovens, mouths: [{ count: 60, appetite: 'ordinary' }] });
    const dishes = Array.from({ length: 12 }, (_, index) => {
      const recipe = index % 2 === 0 ? stew : bread;
      return lay(dishMade(recipe, { id: `d${index}`, portions: 10 }), recipe, camp);
    });
    const { fits, refusals } = shareOvens({ dishes, camp });
    expect(refusals).toEqual([]);
    const used = [...fits.values()].flatMap((fit) => fit.loads.map((load) => load.oven));
    expect(new Set(used).size).toBe(used.length);
  });
});

describe('trouble in a menu', () => {
  const camp = campMade();
  const codes = (recipe = stew, change: Parameters<typeof dishMade>[1] = {}, now?: number) =>
    menuTrouble(
      { dishes: [dishMade(recipe, change)], recipes: [recipe] },
      camp,
      now === undefined ? undefined : clockMinutes(now),
    ).refusals.map((each) => each.code);

  it('is found and named, one code a kind', () => {
    expect(codes()).toEqual([]);
    expect(codes(stew, { recipe: 'gone' })).toEqual(['MENU_RECIPE_MISSING']);
    expect(codes(recipeMade('stew', {}))).toEqual(['MENU_RECIPE_EMPTY']);
    expect(codes(recipeMade('stew', { water: -1 }))).toEqual(['MENU_AMOUNT_IMPOSSIBLE']);
    expect(codes(recipeMade('stew', { water: Number.NaN }))).toEqual(['MENU_AMOUNT_IMPOSSIBLE']);
    expect(codes(recipeMade('stew', { water: 1e9 }))).toEqual(['MENU_AMOUNT_ABSURD']);
    expect(codes(stew, { portions: 1e6 })).toEqual(['MENU_AMOUNT_ABSURD']);
    expect(codes(stew, { portions: 0 })).toEqual(['MENU_NOBODY_EATS']);
    expect(codes(stew, { serveAt: clockMinutes(500) }, 600)).toEqual(['MENU_SERVE_PAST']);
    expect(codes(stew, { latestAt: clockMinutes(1000) })).toEqual(['MENU_LATEST_BEFORE_SERVE']);
    expect(codes(stew, { pins: { oven: 'X' } })).toEqual(['MENU_PIN_UNKNOWN']);
    expect(codes(stew, { pins: { coalsAbove: -3 } })).toEqual(['MENU_PIN_IMPOSSIBLE']);
    const hot = { dishes: [dishMade(stew, { pins: { preheat: true } })], recipes: [stew] };
    expect(menuTrouble(hot, camp).notices[0]?.code).toBe('MENU_PIN_WITHOUT_EFFECT');
    const said = { dishes: [dishMade(stew, { inOven: { oven: 'preheated' } })], recipes: [stew] };
    expect(menuTrouble(said, camp).notices[0]?.code).toBe('MENU_PIN_WITHOUT_EFFECT');
    const step = { id: 'a', kind: 'mix', say: '', minutes: minutes(1), hands: 1 } as const;
    const after = [{ step: 'a', least: minutes(0) }];
    const circle = { ...step, skill: 'new', needsTable: false, after } as const;
    expect(codes({ ...stew, steps: [circle] })).toEqual(['MENU_STEPS_CIRCULAR']);
  });

  it('says who finds nothing to eat, and whose label is to be read', () => {
    const needs = [{ who: 'a guest', kind: 'gluten', strictness: 'strict' }] as const;
    const oats = recipeMade('oats', { oats: 300, water: 900 });
    const found = menuTrouble(
      {
        dishes: [dishMade(bread), dishMade(oats, { serveAt: clockMinutes(700) })],
        recipes: [bread, oats],
      },
      campMade({ needs }),
    );
    expect(found.notices.map((each) => [each.code, each.level])).toEqual([
      ['MENU_CHECK_LABEL', 'danger'],
      ['MENU_NOTHING_TO_EAT', 'doubt'],
    ]);
  });

  it('never throws and never says NaN, whatever the numbers', () => {
    const odd = fc.oneof(fc.double(), fc.constantFrom(Number.NaN, 0, -1, 1e308, Number.MIN_VALUE));
    fc.assert(
      fc.property(odd, odd, odd, (mass, portions, share) => {
        const recipe = recipeMade('odd', { water: mass }, { portions });
        const dish = dishMade(recipe, { share });
        const found = menuTrouble({ dishes: [dish], recipes: [recipe] }, camp);
        const values = found.refusals.flatMap((each) => Object.values(each.values));
        expect(values.filter((value) => Number.isNaN(value))).toEqual([]);
        if (found.refusals.length === 0) {
          const { fits } = shareOvens({ dishes: [lay(dish, recipe)], camp });
          for (const load of fits.get('odd')?.loads ?? []) expect(load.mass).toBeGreaterThan(0);
        }
      }),
      { seed: 5, numRuns: 300 },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  madeAir,
  madeDough,
  madeFormula,
  madePot,
  madeRecipe,
} from '../../validation/bake/made.ts';
import published from '../../validation/bake/published-bake-times.json' with { type: 'json' };
import type { CurvePoint } from '../coals/coal-plan.ts';
import type { Recipe, RecipeKind } from '../menu/recipe.ts';
import { fromCelsius, fromFahrenheit, type Kelvin, kelvin, minutes } from '../quantity/unit.ts';
import { bakeFor } from './bake-for.ts';
import { heatWishFor, wantedOvenFor, wantsHotOven } from './heat-wish.ts';
import { simmerLengthening } from './pot-minutes.ts';

type Row = readonly [string, RecipeKind, number, number, number, number, number, number];
const rows = published.rows as unknown as readonly Row[];
const formula = madeFormula();

const baked = (
  dough: { millimetres: number; rise: number; density?: number },
  wanted: Kelvin,
  own: Partial<Recipe> = {},
  boilingCelsius?: number,
) =>
  bakeFor({
    load: madeDough(dough),
    recipe: madeRecipe(own),
    formula,
    air: madeAir(boilingCelsius),
    wanted,
  });

const codesOf = (plan: { notices: readonly { code: string }[] }) =>
  plan.notices.map((each) => each.code);

describe('minutes of breads', () => {
  const ours = ([, kind, millimetres, density, rise, oven]: Row) =>
    baked({ millimetres, density, rise }, fromFahrenheit(oven), { kind });

  it('reach with their band into every range of published-bake-times but one', () => {
    const missed = rows.filter((row) => {
      const plan = ours(row);
      return row[7] < plan.least || plan.most < row[6];
    });
    // A known miss that stays in the table: the recipe pats to 25 … 40 mm and prints one range.
    expect(missed.map(([name]) => name)).toEqual(['soda bread, patted 25 mm']);
  });

  it('lie within a quarter of the nearer end of published-bake-times, that one row within 40 %', () => {
    for (const row of rows) {
      const [name, , , , , , least, most] = row;
      const { minutes: found } = ours(row);
      const miss = found < least ? 1 - found / least : found > most ? found / most - 1 : 0;
      const bound = name === 'soda bread, patted 25 mm' ? 0.4 : 0.25;
      expect(miss, `${name}: ${found.toFixed(1)} min`).toBeLessThan(bound);
    }
  });

  it('never use the minutes that the recipe hints at', () => {
    const hinted = (least: number) =>
      baked({ millimetres: 25, rise: 2 }, fromCelsius(200), {
        target: {
          canWait: minutes(0),
          rest: minutes(0),
          isCold: false,
          minutesHint: [minutes(least), minutes(least + 5)],
        },
      }).minutes;
    expect(hinted(1)).toBe(hinted(500));
  });

  it('thicker never bakes sooner, hotter never later', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: 150, max: 260, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.constantFrom<RecipeKind>('yeast-bread', 'biscuit', 'corn-bread', 'cobbler'),
        (thin, more, celsius, hotter, kind) => {
          const at = (millimetres: number, oven: number) =>
            baked({ millimetres, rise: 1.8 }, fromCelsius(oven), { kind }).minutes;
          expect(at(thin + more, celsius)).toBeGreaterThanOrEqual(at(thin, celsius) - 1e-9);
          expect(at(thin, celsius + hotter)).toBeLessThanOrEqual(at(thin, celsius) + 1e-9);
        },
      ),
      { seed: 12 },
    );
  });

  it('follow the oven that the coals give, and start when the load goes in', () => {
    const steady = (celsius: number): CurvePoint[] =>
      [0, 30, 60, 120].map((minute) => point(minute, celsius));
    const along = (curve: readonly CurvePoint[], loadInMinute: number) =>
      bakeFor({
        load: madeDough({ millimetres: 25, rise: 2 }),
        recipe: madeRecipe(),
        formula,
        air: madeAir(),
        wanted: fromCelsius(215),
        curve,
        loadInMinute: minutes(loadInMinute),
      }).minutes;
    const wished = baked({ millimetres: 25, rise: 2 }, fromCelsius(215)).minutes;
    // A still oven is told as it is without the load, a curve with it in: its floor gives way no more.
    const still = along(steady(215), 0);
    expect(Math.abs(still / wished - 1)).toBeLessThan(0.1);
    expect(along(steady(215), 20)).toBeCloseTo(still, 6);
    const slow = [point(0, 20), point(20, 215), point(120, 215)];
    expect(along(slow, 0)).toBeGreaterThan(wished + 5);
    expect(along(slow, 20)).toBeCloseTo(still, 6);
  });

  it('say so when the oven never bakes it, the dough is out of range, the top stays pale', () => {
    expect(codesOf(baked({ millimetres: 25, rise: 2 }, fromCelsius(80)))).toContain(
      'BAKE_OVEN_TOO_COOL',
    );
    expect(codesOf(baked({ millimetres: 90, rise: 2 }, fromCelsius(200)))).toContain(
      'BAKE_THICKNESS_OUTSIDE_EVIDENCE',
    );
    expect(codesOf(baked({ millimetres: 8, rise: 2 }, fromCelsius(160)))).toContain(
      'BAKE_TOP_STAYS_PALE',
    );
  });
});

const point = (minute: number, celsius: number): CurvePoint => ({
  minute: minutes(minute),
  oven: fromCelsius(celsius),
  low: fromCelsius(celsius - 15),
  high: fromCelsius(celsius + 15),
  lid: fromCelsius(celsius + 50),
  floor: fromCelsius(celsius),
  wall: fromCelsius(celsius),
});

describe('the core when done', () => {
  it('is three kelvin under the local boil where the target can not be reached (crumb-below-boil)', () => {
    // 5,000 ft boils at 94.9 C and 10,000 ft at 89.8 C (if97 on iso2533).
    const low = baked({ millimetres: 25, rise: 2 }, fromCelsius(200)).done;
    expect(low.cappedByBoil).toBe(false);
    const high = baked({ millimetres: 25, rise: 2 }, fromCelsius(200), {}, 89.8).done;
    expect(high.cappedByBoil).toBe(true);
    expect(high.core).toBeCloseTo(fromCelsius(86.8), 6);
    expect(high.wantedCore).toBeCloseTo(fromCelsius(96), 6);
  });

  it('never rises with height', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 70, max: 101, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (boils, cooler) => {
          const core = (celsius: number) =>
            baked({ millimetres: 25, rise: 2 }, fromCelsius(200), {}, celsius).done.core ?? 0;
          expect(core(boils - cooler)).toBeLessThanOrEqual(core(boils));
        },
      ),
      { seed: 13 },
    );
  });

  it('of a roast is 165 F until safety knows the meat (foodsafety-chart)', () => {
    const roast = (leastFahrenheit?: number) =>
      bakeFor({
        load: madePot(2000),
        recipe: madeRecipe({ kind: 'roast', method: 'roast' }),
        formula,
        air: madeAir(),
        wanted: fromCelsius(177),
        ...(leastFahrenheit === undefined ? {} : { leastCore: fromFahrenheit(leastFahrenheit) }),
      }).done.core;
    expect(roast()).toBeCloseTo(fromCelsius(74), 6);
    expect(roast(145)).toBeCloseTo(fromFahrenheit(145), 6);
    expect(roast(165)).toBeCloseTo(fromFahrenheit(165), 6);
  });

  it('is never below what safety asks for', () => {
    const plan = bakeFor({
      load: madeDough({ millimetres: 60, rise: 1 }),
      recipe: madeRecipe({
        kind: 'roast',
        method: 'roast',
        target: { canWait: minutes(0), rest: minutes(0), isCold: false, core: fromCelsius(55) },
      }),
      formula,
      air: madeAir(),
      wanted: fromCelsius(177),
      leastCore: fromFahrenheit(165),
    });
    expect(plan.done.core).toBeCloseTo(fromFahrenheit(165), 6);
    expect(codesOf(plan)).toContain('BAKE_SAFE_CORE_RAISED');
  });
});

describe('pots', () => {
  const stew = (boilingCelsius?: number, own: Partial<Recipe> = {}) =>
    bakeFor({
      load: madePot(5000),
      recipe: madeRecipe({
        kind: 'stew',
        method: 'simmer',
        target: {
          canWait: minutes(60),
          rest: minutes(0),
          isCold: false,
          minutesHint: [minutes(80), minutes(120)],
        },
        ...own,
      }),
      formula,
      air: madeAir(boilingCelsius),
      wanted: kelvin(377),
    });

  it('simmer a quarter longer at 5,000 ft, as csu-high-altitude says', () => {
    expect(stew(99.97).minutes).toBeCloseTo(100, 0);
    expect(stew(94.82).minutes).toBeCloseTo(125, 0);
    expect(simmerLengthening(fromCelsius(94.82))).toBeCloseTo(1.25, 2);
  });

  it('say that a fork decides, and that the rule ends at 5,000 ft', () => {
    expect(codesOf(stew())).toEqual(['BAKE_TENDER_BY_FORK']);
    expect(codesOf(stew(89.8))).toContain('BAKE_SIMMER_ABOVE_EVIDENCE');
  });

  it('say when the coals never bring them to the boil', () => {
    const cold = [0, 60, 180].map((minute) => ({ ...point(minute, 80), load: fromCelsius(60) }));
    const plan = bakeFor({
      load: madePot(5000),
      recipe: madeRecipe({ kind: 'stew', method: 'simmer' }),
      formula,
      air: madeAir(),
      wanted: kelvin(377),
      curve: cold,
    });
    expect(codesOf(plan)).toContain('BAKE_POT_NEVER_BOILS');
  });
});

describe('what a dish wants of the oven', () => {
  it('is the recipe’s own temperature, and just above the local boil for a simmer', () => {
    const own = madeRecipe({
      target: { canWait: minutes(0), rest: minutes(0), isCold: false, oven: fromCelsius(191) },
    });
    expect(wantedOvenFor({ recipe: own, air: madeAir() })).toBe(fromCelsius(191));
    const simmer = madeRecipe({ kind: 'stew', method: 'simmer' });
    const wanted = wantedOvenFor({ recipe: simmer, air: madeAir(92.7) });
    expect(wanted).toBeGreaterThan(fromCelsius(92.7));
    expect(wanted).toBeLessThan(fromCelsius(98));
  });

  it('is a hot oven for biscuits, a cold one for pots and where the recipe lines a cold oven', () => {
    const step = (say: string) => ({
      id: 'load',
      kind: 'load' as const,
      say,
      minutes: minutes(5),
      hands: 1,
      skill: 'steady' as const,
      needsTable: false,
      after: [],
    });
    expect(wantsHotOven(madeRecipe({ kind: 'biscuit' }))).toBe(true);
    expect(wantsHotOven(madeRecipe({ kind: 'stew', method: 'simmer' }))).toBe(false);
    const cold = madeRecipe({ steps: [step('Line the cold oven with the parchment circle.')] });
    expect(wantsHotOven(cold)).toBe(false);
  });

  it('is a cold oven for a dough that is shaped into it or makes its last rise in it', () => {
    const step = (kind: 'shape' | 'second-rise', say: string) => ({
      ...{ id: kind, kind, say, minutes: minutes(5), hands: 1, skill: 'steady' as const },
      ...{ needsTable: false, after: [] },
    });
    const hot = (kind: 'shape' | 'second-rise', say: string) =>
      wantsHotOven(madeRecipe({ steps: [step(kind, say)] }));
    expect(hot('shape', 'Lay paper in the cold, wiped oven; shape one round and set it in.')).toBe(
      false,
    );
    expect(hot('shape', 'Divide in two; into greased ovens.')).toBe(false);
    expect(hot('second-rise', 'Second rise in the closed oven beside the fire.')).toBe(false);
    expect(hot('second-rise', 'Second rise on the table, under a towel.')).toBe(true);
    expect(hot('shape', 'Shape into a round while the oven heats.')).toBe(true);
    expect(hot('shape', 'Shape and set it into the hot oven.')).toBe(true);
  });

  it('is browning first with the lid off, for a pot that has lots to brown, in whole fives', () => {
    const brown = (kind: 'stew' | 'roast', length: number) =>
      heatWishFor({
        recipe: madeRecipe({
          kind,
          method: kind === 'stew' ? 'simmer' : 'roast',
          steps: [
            {
              ...{ id: 'b', kind: 'brown', say: 'Brown it.', minutes: minutes(length), hands: 1 },
              ...{ skill: 'steady', needsTable: false, after: [] },
            },
          ],
        }),
        load: madeDough({ millimetres: 16, rise: 2 }),
        minutes: minutes(90),
        air: madeAir(),
      }).brownFirst;
    expect(brown('stew', 15)).toBe(20);
    expect(brown('stew', 33)).toBe(40);
    expect(brown('roast', 15)).toBeUndefined();
  });

  it('start hot or cold as the dish pins it, else as the recipe says, but a pot never hot', () => {
    const biscuit = madeRecipe({ kind: 'biscuit' });
    const { target } = biscuit;
    const cold = madeRecipe({ kind: 'biscuit', target: { ...target, coldOven: true } });
    const wish = (recipe: Recipe, preheat?: boolean) =>
      heatWishFor({
        recipe,
        load: madeDough({ millimetres: 16, rise: 2 }),
        minutes: minutes(20),
        air: madeAir(),
        preheat,
      }).preheat;
    expect([wish(biscuit), wish(biscuit, false)]).toEqual([true, false]);
    expect([wish(cold), wish(cold, true)]).toEqual([false, true]);
    expect(wish(madeRecipe({ kind: 'stew', method: 'simmer' }), true)).toBe(false);
  });
});

describe('minutes that the cook pins', () => {
  const bread = { millimetres: 30, rise: 2 };
  const withPin = (pinned: number, leastCore?: Kelvin) =>
    bakeFor({
      load: madeDough(bread),
      recipe: madeRecipe(),
      formula,
      air: madeAir(),
      wanted: fromFahrenheit(400),
      pinnedMinutes: minutes(pinned),
      ...(leastCore === undefined ? {} : { leastCore }),
    });
  const own = baked(bread, fromFahrenheit(400));

  it('are judged against our own band and said with ours, and our own minutes stay ours', () => {
    const short = withPin(own.least - 1);
    expect(short.minutes).toBe(own.minutes);
    expect(short.notices).toContainEqual(
      expect.objectContaining({
        code: 'BAKE_PIN_SHORT',
        level: 'stop',
        values: expect.objectContaining({ pinnedMinutes: own.least - 1, minutes: own.minutes }),
      }),
    );
    expect(codesOf(withPin(own.most + 1))).toContain('BAKE_PIN_LONG');
    for (const inside of [own.least, own.minutes, own.most])
      expect(codesOf(withPin(inside)).filter((code) => code.includes('_PIN_'))).toEqual([]);
  });

  it('that are too few for a safe core are a danger', () => {
    const { notices } = withPin(5, fromFahrenheit(165));
    expect(notices.find((each) => each.code === 'BAKE_PIN_SHORT')?.level).toBe('danger');
  });
});

describe('any load', () => {
  it('gets finite minutes in order, a core and a loss, whatever its numbers', () => {
    const kinds: readonly RecipeKind[] = [
      'yeast-bread',
      'biscuit',
      'cobbler',
      'stew',
      'roast',
      'fruit',
      'cold-dish',
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.double({ min: 0, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 2000, noNaN: true }),
        fc.double({ min: -20, max: 500, noNaN: true }),
        fc.array(fc.double({ min: -20, max: 600, noNaN: true }), { maxLength: 5 }),
        (kind, millimetres, rise, density, oven, celsius) => {
          const plan = bakeFor({
            load: madeDough({ millimetres, rise, density }),
            recipe: madeRecipe({ kind, method: kind === 'cold-dish' ? 'none' : 'bake' }),
            formula,
            air: madeAir(),
            wanted: fromCelsius(oven),
            curve: celsius.map((each, index) => point(index * 10, each)),
            loadInMinute: minutes(5),
          });
          for (const value of [plan.minutes, plan.least, plan.most, plan.loss]) {
            expect(Number.isFinite(value)).toBe(true);
          }
          expect(plan.least).toBeLessThanOrEqual(plan.minutes);
          expect(plan.minutes).toBeLessThanOrEqual(plan.most);
        },
      ),
      { seed: 17, numRuns: 300 },
    );
  });
});

describe('told by signs', () => {
  const done = (hasThermometer: boolean, leastCore?: Kelvin, kind: RecipeKind = 'corn-bread') =>
    bakeFor({
      load: madeDough({ millimetres: 25, rise: 1.6 }),
      recipe: madeRecipe({ kind }),
      formula,
      air: madeAir(),
      wanted: fromCelsius(204),
      hasThermometer,
      ...(leastCore === undefined ? {} : { leastCore }),
    }).done;

  it('names no core that nobody can read, unless health wants it', () => {
    expect(done(true).core).toBeDefined();
    expect(done(false).core).toBeUndefined();
    expect(done(false).signs).not.toContain('core');
    expect(done(false).signs.length).toBeGreaterThan(0);
    expect(done(false, fromFahrenheit(160)).core).toBeUndefined(); // egg: 160 F, foodsafety-chart
    expect(done(false, fromFahrenheit(165), 'roast').core).toBeDefined();
  });

  it('lets biscuits and corn bread be brown on top, as their last look says', () => {
    for (const kind of ['biscuit', 'corn-bread'] as const) {
      expect(done(true, undefined, kind).top).toBe('brown');
    }
  });
});

describe('a pot that may wait', () => {
  const pot = (canWait: number, pinned?: number) =>
    bakeFor({
      load: madePot(2500),
      recipe: madeRecipe({
        kind: 'stew',
        method: 'simmer',
        target: { canWait: minutes(canWait), rest: minutes(0), isCold: false },
      }),
      formula,
      air: madeAir(),
      wanted: fromCelsius(163),
      ...(pinned === undefined ? {} : { pinnedMinutes: minutes(pinned) }),
    });

  it('is begun for the late end of its band, and only where it can wait so long', () => {
    const patient = pot(120);
    expect(patient.aimEarly).toBeCloseTo(patient.most - patient.minutes, 9);
    expect(pot(5).aimEarly).toBeUndefined();
    expect(pot(120, 90).aimEarly).toBeUndefined();
  });
});

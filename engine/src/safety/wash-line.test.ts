import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import drops from '../../validation/safety/drinking-bleach.json' with { type: 'json' };
import table from '../../validation/safety/wash-line.json' with { type: 'json' };
import { isRefusal } from '../notice/notice.ts';
import { cubicMetres, fromFahrenheit } from '../quantity/unit.ts';
import { drinkingDose } from './drinking-water.ts';
import { HAND_WASH, sanitisingBucket, sanitisingHeat, THREE_BUCKETS } from './wash-line.ts';
import { bleachDose, bleachStrength } from './water.ts';

const GALLON = 3.785411784e-3; // exact
const TABLESPOON = 14.78676478125e-6; // exact
const FLUID_OUNCE = 29.5735295625e-6; // exact
type Row = readonly [number, number, number, number];

describe('bleach in drinking water', () => {
  it('is as many drops as epa-p100sp1s prints, and never fewer than epa-older-leaflet', () => {
    const rows = drops.rows as unknown as readonly Row[];
    expect(rows).toHaveLength(4);
    for (const [percent, gallons, printed, over] of rows) {
      const found = drinkingDose({ water: cubicMetres(gallons * GALLON), percent });
      expect(isRefusal(found) ? -1 : found.drops, `${percent} %`).toBe(printed + over);
    }
  });

  it('is twice as much where it is cloudy or cold, waits 30 min, 2 drops a quart (epa-p100sp1s)', () => {
    const clear = drinkingDose({ water: cubicMetres(GALLON), percent: 8.25 });
    const cloudy = drinkingDose({
      water: cubicMetres(GALLON),
      percent: 8.25,
      isCloudyOrCold: true,
    });
    if (isRefusal(clear) || isRefusal(cloudy)) throw new Error('refused');
    expect(cloudy.drops).toBe(2 * clear.drops);
    expect(clear.wait).toBe(30);
    const quart = drinkingDose({ water: cubicMetres(GALLON / 4), percent: 6 });
    expect(isRefusal(quart) ? 0 : quart.drops).toBe(2);
  });

  it('is refused without a label, and for a label that no table has', () => {
    const ask = (percent: number | undefined, water = GALLON) =>
      drinkingDose({ water: cubicMetres(water), percent });
    const code = (found: ReturnType<typeof ask>) => (isRefusal(found) ? found.code : 'dosed');
    expect(code(ask(undefined))).toBe('SAFETY_BLEACH_UNKNOWN');
    expect(code(ask(Number.NaN))).toBe('SAFETY_BLEACH_UNKNOWN');
    expect(code(ask(1))).toBe('SAFETY_BLEACH_NOT_FOR_DRINKING');
    expect(code(ask(12.5))).toBe('SAFETY_BLEACH_NOT_FOR_DRINKING');
    expect(code(ask(6, 0))).toBe('SAFETY_NO_WATER');
    expect(code(ask(6, Number.NaN))).toBe('SAFETY_NO_WATER');
  });

  it('stays between 4 and 10 mg/L of chlorine in clear water, for every label and size', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 10, noNaN: true }),
        fc.integer({ min: 4, max: 400 }),
        (percent, quarts) => {
          const water = cubicMetres((quarts * GALLON) / 4);
          const found = drinkingDose({ water, percent });
          if (isRefusal(found)) throw new Error(found.code);
          const strength = bleachStrength({ water, bleach: found.volume, percent });
          expect(strength).toBeGreaterThan(4);
          expect(strength).toBeLessThan(12);
        },
      ),
      { seed: 61, numRuns: 200 },
    );
  });
});

describe('the last of three buckets', () => {
  it('takes the millilitres of the published formula for each label (kdhe-bleach)', () => {
    const rows = table.rows as unknown as readonly Row[];
    expect(rows).toHaveLength(12);
    for (const [percent, partsPerMillion, millilitres] of rows) {
      const dose = bleachDose({ water: cubicMetres(GALLON), partsPerMillion, percent });
      expect(Math.abs((isRefusal(dose) ? 0 : dose * 1e6) - millilitres)).toBeLessThan(0.01);
    }
  });

  it('of 5 gal at 50 mg/L wants 0.61 fl oz or 1.22 tablespoons of 5.25 % (bleach-bucket)', () => {
    const found = sanitisingBucket({
      water: cubicMetres(5 * GALLON),
      percent: 5.25,
      partsPerMillion: 50,
    });
    if (isRefusal(found)) throw new Error(found.code);
    expect(Math.abs(found.bleach / FLUID_OUNCE - 0.61)).toBeLessThan(0.02);
    expect(Math.abs(found.bleach / TABLESPOON - 1.22)).toBeLessThan(0.02);
  });

  it('of 1025 and 5127 mg/L are 5 and 25 tablespoons a gallon (cdc-norovirus)', () => {
    for (const [spoons, printed] of [
      [5, 1025],
      [25, 5127],
    ] as const) {
      const found = bleachStrength({
        water: cubicMetres(GALLON),
        bleach: cubicMetres(spoons * TABLESPOON),
        percent: 5.25,
      });
      expect(Math.abs(found - printed)).toBeLessThan(2);
    }
  });

  it('is as warm as its strength asks, in hard and soft water (food-code-4-501)', () => {
    const rows = table.heat as unknown as readonly Row[];
    expect(rows).toHaveLength(6);
    for (const [strength, hard, soft] of rows) {
      expect(sanitisingHeat(strength)).toBeCloseTo(fromFahrenheit(hard), 9);
      expect(sanitisingHeat(strength, false)).toBeCloseTo(fromFahrenheit(soft), 9);
    }
    expect(sanitisingHeat(24)).toBeUndefined();
  });

  it('keeps the warmer of permit and code: 75 F at 100 mg/L, 100 F at 50 (river-permit, food-code-4-501)', () => {
    const heat = (partsPerMillion: number) => {
      const found = sanitisingBucket({ water: cubicMetres(0.02), percent: 6, partsPerMillion });
      return isRefusal(found) ? undefined : found.heat.least;
    };
    expect(heat(100)).toBeCloseTo(fromFahrenheit(75), 9);
    expect(heat(50)).toBeCloseTo(fromFahrenheit(100), 9);
  });
});

describe('the wash line', () => {
  it('washes at 120 to 140 F and dips a minute (river-permit); hands at 100 to 108 F, 5 gal (sf-handwash)', () => {
    expect(THREE_BUCKETS.wash.least).toBeCloseTo(fromFahrenheit(120), 9);
    expect(THREE_BUCKETS.wash.most).toBeCloseTo(fromFahrenheit(140), 9);
    expect(THREE_BUCKETS.dip).toBe(1);
    expect(HAND_WASH.water.least).toBeCloseTo(fromFahrenheit(100), 9);
    expect(HAND_WASH.water.most).toBeCloseTo(fromFahrenheit(108), 9);
    expect(HAND_WASH.can).toBeCloseTo(5 * GALLON, 9);
  });
});

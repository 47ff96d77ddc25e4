import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import gas from '../../../validation/formula/gas.json' with { type: 'json' };
import acids from '../../../validation/formula/neutralising-values.json' with { type: 'json' };
import { ingredientMade } from '../../../validation/menu/made.ts';
import { pressureAtElevation } from '../../camp/air.ts';
import { inUnit } from '../../quantity/convert.ts';
import { fromCelsius, grams, metres, pascals } from '../../quantity/unit.ts';
import { gasOfSoda, gasOfSodaHeated, gasVolume } from '../gas.ts';
import { fizzStrength, insteadOfPowder } from './fizz.ts';
import { gasReport } from './gas-report.ts';
import { leaveningAcid, powderStrength, sodaPerGram } from './table.ts';

type Numbers = readonly number[];
const SEA = pascals(101_325);
const DOUGH = fromCelsius(20);
const lines = (amounts: Readonly<Record<string, number>>) =>
  Object.entries(amounts).map(([name, mass]) => ({
    ingredient: ingredientMade(name, mass),
    grams: grams(mass),
  }));
const report = (amounts: Readonly<Record<string, number>>, pressure = SEA) =>
  gasReport(lines(amounts), { dough: DOUGH, pressure })!;

describe('acids', () => {
  it.each(acids.rows as unknown as readonly (readonly [string, number, number | null])[])(
    'neutralise as printed in neutralisingValues: %s %d',
    (key, printed, other) => {
      const { neutralisingValue } = leaveningAcid(key)!;
      const both = other === null ? [printed] : [printed, other];
      expect(neutralisingValue).toBeGreaterThanOrEqual(Math.min(...both) - 0.5);
      expect(neutralisingValue).toBeLessThanOrEqual(Math.max(...both) + 0.5);
    },
  );

  it('of the kitchen follow from sodaChemistry: acetic, lactic, citric, tartaric, cream of tartar', () => {
    // 84.0066 g of soda for each acid hydrogen; molar masses by atomic weights.
    for (const [key, grammes, hydrogens] of [
      ['acetic', 60.052, 1],
      ['lactic', 90.078, 1],
      ['citric', 192.124, 3],
      ['tartaric', 150.087, 2],
      ['cream-of-tartar', 188.177, 1],
    ] as const) {
      const value = (100 * 84.0066 * hydrogens) / grammes;
      expect(Math.abs(leaveningAcid(key)!.neutralisingValue - value)).toBeLessThan(0.1);
    }
  });

  it('by the spoon: a tablespoon of vinegar takes 0.23 tsp of soda, a cup of buttermilk 0.40 (worked by hand)', () => {
    expect((14.9 * sodaPerGram('vinegar-distilled')) / 4.6).toBeCloseTo(0.23, 2);
    expect((245 * sodaPerGram('buttermilk')) / 4.6).toBeCloseTo(0.4, 2);
  });
});

describe('powder', () => {
  it('gives the legal 12 % for sure (legalPowder), and at most what the sodium of sr28 18370 allows', () => {
    for (const key of ['baking-powder', 'baking-powder-phosphate', undefined]) {
      expect(powderStrength(key).least).toBe(0.12);
    }
    const sodaShare = 0.07893 / 0.27367; // 7,893 mg of sodium in 100 g, all taken as soda
    expect(powderStrength('baking-powder-phosphate').most).toBeCloseTo(sodaShare * 0.5239, 3);
  });

  it('of 12 g in 240 g of flour is 1.44 g of gas, 0.79 L at 20 °C, 0.99 L at 95 (published formula, by hand)', () => {
    const biscuit = report({ flour: 240, 'baking powder': 12, milk: 164, shortening: 95 });
    expect(biscuit.least).toBeCloseTo(1.44, 9);
    expect(inUnit(biscuit.inDough, 'litre')).toBeCloseTo(0.787, 3);
    expect(inUnit(biscuit.inCrumb, 'litre')).toBeCloseTo(0.988, 3);
  });

  it('is four times weaker than soda by the spoon: 3.7 to 4.4 times (worked by hand)', () => {
    const spoon = gasOfSoda(grams(4.6));
    expect(spoon / (4.6 * 0.12)).toBeCloseTo(4.4, 1);
    expect(spoon / (4.6 * 0.14)).toBeCloseTo(3.7, 1);
  });

  it('is replaced by about the kitchen rule: for a tablespoon, 1 tsp of soda and 2 of cream of tartar', () => {
    const { soda, tartar } = insteadOfPowder(grams(13.8));
    expect(soda / 4.6).toBeGreaterThan(0.6);
    expect(soda / 4.6).toBeLessThan(1.05);
    expect(Math.abs(tartar / 3 - 2)).toBeLessThan(0.5);
    const made = report({ flour: 375, 'baking soda': soda, 'cream of tartar': tartar });
    expect(made.least).toBeCloseTo(13.8 * 0.12, 3);
    expect(made.sodaLeft).toBeCloseTo(0, 6);
  });

  it('that does not fizz gives nothing, a weak one something between, and time alone takes none (lloyd2004)', () => {
    expect(fizzStrength('none')).toEqual([0, 0]);
    expect(fizzStrength(undefined)).toEqual([1, 1]);
    const [least, most] = fizzStrength('weak');
    expect(least).toBeGreaterThan(0);
    expect(least).toBeLessThan(most);
    expect(most).toBeLessThan(1);
  });

  it('in self-rising flour is at least half a percent of gas (selfRisingFlour, 21 CFR 137.180)', () => {
    expect(report({ 'self rising flour': 500 }).least).toBeCloseTo(2.5, 9);
  });
});

describe('soda', () => {
  it('with too little acid gives half of the rest by heat and says what stays', () => {
    const soda = report({ flour: 500, 'baking soda': 7, buttermilk: 385 });
    const met = (385 * 0.008 * 84.0066) / 90.078;
    expect(soda.sodaLeft).toBeCloseTo(7 - met, 1);
    expect(soda.least).toBeCloseTo(gasOfSoda(grams(met)) + gasOfSodaHeated(grams(7 - met)), 1);
  });

  it('with too much acid leaves acid and no soda', () => {
    const sour = report({ flour: 500, 'baking soda': 1, buttermilk: 400 });
    expect(sour.sodaLeft).toBe(0);
    expect(sour.acidLeft).toBeGreaterThan(1);
  });
});

describe('room for the gas', () => {
  it('is that of validation/formula/gas.json at each pressure, within its four figures', () => {
    for (const [celsius, pressure, litres] of gas.rows as readonly Numbers[]) {
      const volume = gasVolume(grams(1), fromCelsius(celsius!), pascals(pressure!));
      expect(inUnit(volume, 'litre')).toBeCloseTo(litres!, 3);
    }
  });

  it('grows as the air thins, though the crumb sets cooler', () => {
    const biscuit = { flour: 240, 'baking powder': 12 };
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5000, noNaN: true }),
        fc.double({ min: 1, max: 500, noNaN: true }),
        (height, up) => {
          const low = report(biscuit, pressureAtElevation(metres(height)));
          const high = report(biscuit, pressureAtElevation(metres(height + up)));
          expect(high.inCrumb).toBeGreaterThan(low.inCrumb);
          expect(high.least).toBe(low.least);
        },
      ),
      { seed: 12 },
    );
  });

  it('is not asked for where nothing makes gas', () => {
    expect(gasReport(lines({ flour: 500 }), { dough: DOUGH, pressure: SEA })).toBeUndefined();
  });
});

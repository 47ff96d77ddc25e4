import { execFileSync, spawnSync } from 'node:child_process';
import { UcumLhcUtils } from '@lhncbc/ucum-lhc';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import exact from '../../validation/quantity/exact-units.json' with { type: 'json' };
import { fromUnit, inUnit, type UnitName, units } from './convert.ts';
import { fromFahrenheit, kelvinDifference, toFahrenheit } from './unit.ts';

type Row = readonly [UnitName, number, string, string, string, string];
const rows = exact.rows as unknown as readonly Row[];
const hasGnuUnits = spawnSync('units', ['--version']).status === 0;

/** Relative difference; the last digits of a double are 1e-16. */
const miss = (got: number, wanted: number) => Math.abs(got / wanted - 1);

describe('sizes of units', () => {
  it('are those of nist-hb44 appendix C and nist-sp811 appendix B to the last digit of a double', () => {
    for (const [name, size] of rows)
      expect(miss(fromUnit(1, name), size), name).toBeLessThan(4e-16);
  });

  it('are ratios of integers that a double holds exactly', () => {
    for (const [name, { numerator, denominator }] of Object.entries(units)) {
      expect(Number.isSafeInteger(numerator) && Number.isSafeInteger(denominator), name).toBe(true);
    }
  });

  it('keep the household ratios of nist-sp430: a cup is 8 fluid ounces, 16 tbsp, 48 tsp', () => {
    const inCups = (name: UnitName) => fromUnit(1, 'us-cup') / fromUnit(1, name);
    expect(inCups('us-fluid-ounce')).toBeCloseTo(8, 13);
    expect(inCups('us-tablespoon')).toBeCloseTo(16, 13);
    expect(inCups('us-teaspoon')).toBeCloseTo(48, 13);
  });

  it('go there and back for every unit and amount (seed 4711)', () => {
    const names = Object.keys(units) as UnitName[];
    const amounts = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...names), amounts, (name, amount) => {
        expect(miss(inUnit(fromUnit(amount, name) as never, name), amount)).toBeLessThan(1e-15);
      }),
      { seed: 4711 },
    );
  });
});

describe('a second opinion on units', () => {
  const gnu = (have: string, want: string) =>
    Number(execFileSync('units', ['-t', '-d', '15', have, want], { encoding: 'utf8' }).trim());

  it.skipIf(!hasGnuUnits && !process.env.CI)(
    'NOT RUN unless the units package is installed (apt-get install units): gnu-units gives every size, to 1e-15',
    () => {
      for (const [name, , want, have] of rows) {
        expect(miss(fromUnit(1, name), gnu(have, want)), name).toBeLessThan(1e-15);
      }
    },
  );

  it.skipIf(!hasGnuUnits && !process.env.CI)(
    'NOT RUN unless the units package is installed (apt-get install units): gnu-units reads °F as we do',
    () => {
      for (const fahrenheit of [-40, 0, 32, 196, 212, 350, 425]) {
        const wanted = gnu(`tempF(${fahrenheit})`, 'K');
        expect(fromFahrenheit(fahrenheit)).toBeCloseTo(wanted, 10);
      }
    },
  );

  it('a UCUM library (ucum) gives every size that it defines, to 1e-14', () => {
    const library = UcumLhcUtils.getInstance();
    const compared = rows.filter(([, , , , code]) => code !== '');
    expect(compared.length).toBe(rows.length - 2);
    for (const [name, , , , code, si] of compared) {
      const { status, toVal } = library.convertUnitTo(code, 1, si);
      expect(status, name).toBe('succeeded');
      expect(miss(fromUnit(1, name), Number(toVal)), name).toBeLessThan(1e-14);
    }
  });
});

describe('readings and differences of temperature', () => {
  it('are not the same thing: 350 °F is 176.667 °C, but 25 °F more is 13.889 °C more (gnu-units)', () => {
    expect(fromFahrenheit(350) - 273.15).toBeCloseTo(176.6667, 4);
    expect(fromUnit(25, 'fahrenheit-difference')).toBeCloseTo(13.8889, 4);
    expect(toFahrenheit(fromFahrenheit(350))).toBeCloseTo(350, 10);
  });

  it('are kept apart by the compiler', () => {
    const difference = fromUnit(25, 'fahrenheit-difference');
    // @ts-expect-error a difference is not a reading
    const wrong = toFahrenheit(difference);
    expect(Number.isFinite(wrong)).toBe(true);
    expect(inUnit(kelvinDifference(10), 'fahrenheit-difference')).toBeCloseTo(18, 12);
  });
});

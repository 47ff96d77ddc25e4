import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fractionText } from './fraction.ts';
import {
  type Amount,
  isUnread,
  readAmount,
  readLength,
  readTemperature,
  sizeOfUnit,
} from './read.ts';
import { toCelsius } from './unit.ts';

const amount = (text: string): Amount => {
  const read = readAmount(text);
  if (isUnread(read)) throw new Error(`unread: ${read.why}`);
  return read;
};

const why = (outcome: object) => ('unread' in outcome && 'why' in outcome ? outcome.why : 'read');

describe('readAmount', () => {
  it.each([
    ['1 1/2 cups', 1.5, 1.5, 'cup', ''],
    ['1-1/2 cups', 1.5, 1.5, 'cup', ''],
    ['1½ cups', 1.5, 1.5, 'cup', ''],
    ['1 ½ c.', 1.5, 1.5, 'cup', ''],
    ['¾ cup', 0.75, 0.75, 'cup', ''],
    ['3⁄4 cup', 0.75, 0.75, 'cup', ''],
    ['3/4-1 cup', 0.75, 1, 'cup', ''],
    ['1/2 – 3/4 tsp', 0.5, 0.75, 'tsp', ''],
    ['1 to 1 1/2 cups', 1, 1.5, 'cup', ''],
    ['2-3 lbs', 2, 3, 'lb', ''],
    ['3 3/4 cups bread flour', 3.75, 3.75, 'cup', 'bread flour'],
    ['2 T oil', 2, 2, 'tbsp', 'oil'],
    ['2 t salt', 2, 2, 'tsp', 'salt'],
    ['2 Tbsp.', 2, 2, 'tbsp', ''],
    ['1 teaspoonful', 1, 1, 'tsp', ''],
    ['8 fl oz', 8, 8, 'fl-oz', ''],
    ['8 fluid ounces', 8, 8, 'fl-oz', ''],
    ['6.5 oz', 6.5, 6.5, 'oz', ''],
    ['.5 lb', 0.5, 0.5, 'lb', ''],
    ['450 g', 450, 450, 'g', ''],
    ['450g', 450, 450, 'g', ''],
    ['1,5 kg', 1.5, 1.5, 'kg', ''],
    ['1,250 g', 1250, 1250, 'g', ''],
    ['250 ml', 250, 250, 'ml', ''],
    ['2 litres', 2, 2, 'l', ''],
    ['1 qt', 1, 1, 'quart', ''],
    ['1 pint', 1, 1, 'pint', ''],
    ['6 medium', 6, 6, 'each', 'medium'],
    ['4 green apples', 4, 4, 'each', 'green apples'],
    ['10', 10, 10, 'each', ''],
    ['2 each', 2, 2, 'each', ''],
    ['about 2 cups', 2, 2, 'cup', ''],
  ])('reads "%s"', (text, low, high, unit, rest) => {
    expect(amount(text)).toEqual({ low, high, unit, rest });
  });

  it.each([
    ['', 'no-number'],
    ['salt to taste', 'no-number'],
    ['-2 cups', 'no-number'],
    ['1/0 cup', 'not-a-fraction'],
    ['1-1/0 cup', 'not-a-fraction'],
    ['2-1 cups', 'range-runs-down'],
    ['9'.repeat(300), 'too-long'],
  ])('does not guess at "%.20s": %s', (text, wanted) => {
    expect(why(readAmount(text))).toBe(wanted);
  });

  it('never throws and never gives a number that is none, whatever is typed (seed 4711)', () => {
    const pieces = fc.constantFrom(
      '1',
      '2',
      '/',
      '-',
      ' ',
      ',',
      '.',
      '½',
      'cup',
      'g',
      'to',
      '⁄',
      '0',
      'T',
    );
    const typed = fc.oneof(
      fc.string(),
      fc.array(pieces, { maxLength: 8 }).map((all) => all.join('')),
    );
    fc.assert(
      fc.property(typed, (text) => {
        const read = readAmount(text);
        const isSound =
          isUnread(read) || (0 <= read.low && read.low <= read.high && Number.isFinite(read.high));
        expect(isSound).toBe(true);
      }),
      { seed: 4711, numRuns: 2000 },
    );
  });

  it('reads back every amount that we write, by eighths up to 19⅞', () => {
    for (let eighths = 1; eighths < 160; eighths += 1) {
      for (const style of ['sign', 'plain'] as const) {
        expect(amount(`${fractionText(eighths / 8, style)} cups`).low).toBe(eighths / 8);
      }
    }
  });

  it('knows what each unit is: nist-sp430 cup 236.588 ml, pound 453.592 g', () => {
    expect(sizeOfUnit('cup')).toEqual({ kind: 'volume', each: 236.5882365e-6 });
    expect(sizeOfUnit('lb')).toEqual({ kind: 'mass', each: 453.59237 });
    expect(sizeOfUnit('each')).toEqual({ kind: 'count' });
  });
});

describe('readTemperature', () => {
  it.each([
    ['350 F', 176.667, 176.667],
    ['350°F', 176.667, 176.667],
    ['350 degrees F', 176.667, 176.667],
    ['180 °C', 180, 180],
    ['325-350 °F', 162.778, 176.667],
    ['-5 C', -5, -5],
    ['−5 °C', -5, -5],
    ['400 K', 126.85, 126.85],
  ])('reads "%s"', (text, low, high) => {
    const read = readTemperature(text);
    if (isUnread(read)) throw new Error(read.why);
    expect(toCelsius(read.low)).toBeCloseTo(low, 3);
    expect(toCelsius(read.high)).toBeCloseTo(high, 3);
  });

  it('does not guess the scale', () => {
    expect(why(readTemperature('350'))).toBe('no-unit');
    expect(why(readTemperature('350 X'))).toBe('unknown-unit');
    expect(why(readTemperature('hot'))).toBe('no-number');
  });
});

describe('readLength', () => {
  it.each([
    ['12 inch', 0.3048],
    ['12"', 0.3048],
    ['12-inch', 0.3048],
    ['12 in.', 0.3048],
    ['1 1/2 in', 0.0381],
    ['25 mm', 0.025],
    ['2.5 cm', 0.025],
    ['1 ft', 0.3048],
    ['0.3 m', 0.3],
  ])('reads "%s"', (text, wanted) => {
    const read = readLength(text);
    if (isUnread(read)) throw new Error(read.why);
    expect(read.low).toBeCloseTo(wanted, 12);
  });

  it('does not guess the unit', () => {
    expect(why(readLength('12'))).toBe('no-unit');
    expect(why(readLength('12 hands'))).toBe('unknown-unit');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNumber } from '#engine';
import { isDate, readClock, readDirection, writeClock, writeDirection } from './clock-text.ts';
import {
  inMeasuresOf,
  type QuantityKind,
  quantityPattern,
  readQuantity,
  writeQuantity,
} from './quantity-text.ts';

describe('a quantity in a camp file', () => {
  // Expected values: NIST Handbook 44 appendix C (inch, foot, pound, ounce, US quart), the SI
  // brochure's definition of the degree Celsius, the international knot of 1852 m an hour.
  it.each([
    ['length', '12 in', 0.3048],
    ['length', '3 3/4 in', 0.09525],
    ['length', '3¾ in', 0.09525],
    ['length', '10"', 0.254],
    ['length', '6,890 ft', 2100.072],
    ['length', '2100 m', 2100],
    ['length', '-430 m', -430],
    ['mass', '1 lb', 453.59237],
    ['mass', '1 oz', 28.349523125],
    ['mass', '2.5 kg', 2500],
    ['mass', '2,5 kg', 2500],
    ['volume', '1 qt', 0.000946352946],
    ['volume', '5.7 l', 0.0057],
    ['temperature', '18 °C', 291.15],
    ['temperature', '−4 C', 269.15],
    ['temperature', '212 °F', 373.15],
    ['speed', '36 km/h', 10],
    ['speed', '1 mph', 0.44704],
    ['speed', '3600 kn', 1852],
    ['duration', '1 h 20 min', 80],
    ['duration', '1.5 h', 90],
    ['duration', '2 d', 2880],
    ['share', '60 %', 0.6],
  ] as const)(
    'reads %s "%s" by the definitions of nist-hb44 and si-brochure',
    (kind, text, wanted) => {
      expect(readQuantity(kind, text)).toBeCloseTo(wanted, 10);
    },
  );

  it.each([
    ['length', '12'],
    ['length', 'in'],
    ['length', '12 kg'],
    ['length', 'twelve in'],
    ['length', '1/0 in'],
    ['length', 'NaN in'],
    ['length', 'Infinity in'],
    ['length', '1e400 in'],
    ['mass', '1 2 g'],
    ['temperature', '18'],
    ['duration', '1 h 20'],
    ['duration', ''],
    ['mass', `${'9'.repeat(70)} g`],
  ] as const)('does not guess at %s "%s"', (kind, text) => {
    expect(readQuantity(kind, text)).toBeUndefined();
  });

  it('is written in a short unit that reads back as the same', () => {
    expect(writeQuantity('length', 0.3048)).toBe('12 in'); // ovens are spoken of in inches: common practice
    expect(writeQuantity('length', 0.254)).toBe('10 in');
    expect(writeQuantity('length', 2100)).toBe('2100 m');
    expect(writeQuantity('temperature', readQuantity('temperature', '400 °F')!)).toBe('400 °F');
    expect(writeQuantity('mass', readQuantity('mass', '15 lb')!)).toBe('15 lb');
    expect(writeQuantity('duration', 120)).toBe('2 h');
  });

  it('comes back within a billionth after being written, whatever it was (round trip)', () => {
    const kinds: QuantityKind[] = ['length', 'mass', 'volume', 'temperature', 'speed', 'duration'];
    const value = fc.double({ min: 0.001, max: 5000, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...kinds), value, (kind, inside) => {
        const text = writeQuantity(kind, inside);
        expect(Math.abs(readQuantity(kind, text)! - inside)).toBeLessThan(
          1e-9 * Math.max(1, inside),
        );
        expect(text).toMatch(new RegExp(quantityPattern(kind), 'u'));
      }),
      { seed: 20260912, numRuns: 400 },
    );
  });

  it('keeps the unit of every whole number of inches, pounds, quarts and degrees', () => {
    for (let number = 1; number <= 60; number += 1)
      for (const [kind, unit] of [
        ['length', 'in'],
        ['mass', 'lb'],
        ['volume', 'qt'],
        ['temperature', '°F'],
      ] as const) {
        const inside = readQuantity(kind, `${number} ${unit}`)!;
        expect(readQuantity(kind, writeQuantity(kind, inside))).toBe(inside);
      }
  });
});

describe('numbers as a cook writes them', () => {
  it.each([
    ['3 3/4', 3.75],
    ['1/2', 0.5],
    ['½', 0.5],
    ['6,890', 6890],
    ['1,234.5', 1234.5],
    ['1,5', 1.5],
    ['.5', 0.5],
    ['-3 3/4', -3.75],
    ['− 4', -4],
    ['2⅔', 2 + 2 / 3],
  ])('reads "%s"', (text, wanted) => expect(readNumber(text)).toBe(wanted));

  it.each(['', '1/0', '1,23,4', '1e9', '0x10', '--1', '1.2.3'])('does not read "%s"', (text) =>
    expect(readNumber(text)).toBeUndefined(),
  );
});

describe('bounds in the writer’s measures', () => {
  it.each([
    ['temperature', '-60 °C', '200 F', '-76 °F'], // exact: -60 x 1.8 + 32
    ['temperature', '60 °C', '200 C', '60 °C'],
    ['length', '4 in', '9 m', '10.2 cm'], // nist-hb44: 25.4 mm to the inch
    ['mass', '0.01 g', '9000 kg', '0.01 g'],
    ['length', '4 in', 'much', '4 in'],
  ] as const)('says a %s of %s beside "%s" as %s', (kind, bound, written, wanted) =>
    expect(inMeasuresOf(kind, bound, written)).toBe(wanted),
  );
});

describe('times, dates and directions', () => {
  it.each([
    ['00:00', 0],
    ['18:30', 1110],
    ['9:05', 545],
    ['24:00', 1440],
    ['+1 06:00', 1800],
    ['-1 20:00', -240],
  ])('reads the clock "%s"', (text, wanted) => expect(readClock(text)).toBe(wanted));

  it.each(['24:01', '25:00', '12:60', '6:30 pm', '1830', '', 'noon'])(
    'does not guess at the clock "%s"',
    (text) => expect(readClock(text)).toBeUndefined(),
  );

  it('writes the clock so that it reads back, days before and after too', () => {
    for (let minute = -3000; minute <= 4500; minute += 7)
      expect(readClock(writeClock(minute))).toBe(minute);
  });

  it('knows the days of the Gregorian calendar (ISO 8601)', () => {
    expect(['2024-02-29', '2026-12-31', '2000-02-29'].every(isDate)).toBe(true);
    const none = ['2026-02-29', '1900-02-29', '2026-13-01', '2026-00-10', '26-01-01', '2026-1-1'];
    expect(none.some(isDate)).toBe(false);
  });

  it('reads the sixteen points of the compass, 22.5 degrees apart from north clockwise', () => {
    expect(readDirection('N')).toBe(0);
    expect(readDirection('e')).toBe(90);
    expect(readDirection('WSW')).toBe(247.5);
    expect(readDirection('north')).toBe(0);
    expect(readDirection('south-west')).toBe(225);
    expect(readDirection('from the North West')).toBe(315);
    expect(readDirection('west-southwesterly')).toBe(247.5);
    expect(readDirection('northish-up')).toBeUndefined();
    expect(readDirection('361°')).toBeUndefined();
    for (let degrees = 0; degrees < 360; degrees += 0.5)
      expect(readDirection(writeDirection(degrees))).toBe(degrees);
  });
});

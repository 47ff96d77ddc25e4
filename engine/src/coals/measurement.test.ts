import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromCelsius, fromFahrenheit, kelvin, minutes } from '../quantity/unit.ts';
import type { CurvePoint } from './coal-plan.ts';
import {
  beliefAfter,
  expectedAt,
  type Instrument,
  likelihood,
  type Reading,
  readingFrom,
  testModels,
} from './measurement.ts';

const SEED = 20264;
const instruments = Object.keys(testModels) as readonly Instrument[];

describe('a hand inside the oven', () => {
  it.each([
    [2, 450],
    [3, 400],
    [4, 350],
    [5, 300],
    [6, 250],
    [7, 200],
  ])('endures %i s and is read as 550 F less 50 a second (handInside)', (seconds, fahrenheit) => {
    const reading = readingFrom('hand-inside', fromFahrenheit(fahrenheit));
    expect(reading).toMatchObject({ seconds: expect.closeTo(seconds, 6) });
  });
});

describe('a hand above the coals', () => {
  it.each([
    [450, 1, 2],
    [362, 3, 4],
    [337.5, 5, 7],
  ])('at %s F endures what its own page gives (handAbove)', (fahrenheit, least, most) => {
    const reading = readingFrom('hand-above-coals', fromFahrenheit(fahrenheit));
    if (reading.by !== 'hand-above-coals') throw new Error('the other hand');
    expect(least <= reading.seconds && reading.seconds <= most).toBe(true);
  });

  it('is never foretold from an oven, and says another heat than the hand inside at 1.5 s', () => {
    expect(expectedAt('hand-above-coals', [], 10)).toBeUndefined();
    const best = (by: 'hand-inside' | 'hand-above-coals') => {
      const heats = Array.from({ length: 60 }, (_, index) => fromFahrenheit(200 + 5 * index));
      const reading: Reading = { by, seconds: 5 };
      return heats.reduce((one, other) =>
        likelihood(reading, other) > likelihood(reading, one) ? other : one,
      );
    };
    // handAbove: 5 s is about 340 F; handInside: 300 F. The pages contradict each other.
    expect(best('hand-above-coals') - best('hand-inside')).toBeGreaterThan(10);
  });
});

describe('flour and brown paper', () => {
  it.each([
    ['pale', fromFahrenheit(280)],
    ['straw', fromFahrenheit(350)],
    ['dark', fromFahrenheit(450)],
  ] as const)('flour is %s where flourTest says so', (colour, oven) => {
    expect(readingFrom('flour', oven)).toEqual({ by: 'flour', colour });
  });

  it.each([
    ['pale', 120],
    ['yellow', 180],
    ['yellow', 190],
    ['light-brown', 220],
    ['light-brown', 230],
    ['dark-brown', 240],
    ['dark-brown', 300],
  ] as const)('paper is %s at %i °C (brownPaper)', (colour, celsius) => {
    expect(readingFrom('brown-paper', fromCelsius(celsius))).toEqual({ by: 'brown-paper', colour });
  });

  it('have chances that add up to 1 at any heat', () => {
    fc.assert(
      fc.property(fc.double({ min: 300, max: 620, noNaN: true }), (heat) => {
        const flour = ['pale', 'straw', 'brown', 'dark'] as const;
        const sum = flour.reduce(
          (all, colour) => all + likelihood({ by: 'flour', colour }, kelvin(heat)),
          0,
        );
        expect(sum).toBeCloseTo(1, 6);
      }),
      { seed: SEED },
    );
  });
});

describe('every test', () => {
  it('is likeliest to read what it reads at that heat, and never reads NaN', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...instruments),
        fc.double({ min: 310, max: 580, noNaN: true }),
        (by, heat) => {
          const reading = readingFrom(by, kelvin(heat));
          const here = likelihood(reading, kelvin(heat));
          expect(Number.isFinite(here)).toBe(true);
          for (const off of [-60, 60]) {
            const other = readingFrom(by, kelvin(heat + off));
            expect(likelihood(other, kelvin(heat))).toBeLessThanOrEqual(here + 1e-9);
          }
        },
      ),
      { seed: SEED },
    );
  });

  it('narrows the band and moves it towards what it read', () => {
    const before = { kelvin: kelvin(450), low: kelvin(425), high: kelvin(475) };
    const read: readonly Reading[] = [
      { by: 'thermometer', kelvin: kelvin(470) },
      { by: 'hand-inside', seconds: 2 },
      { by: 'flour', colour: 'dark' },
      { by: 'brown-paper', colour: 'light-brown' },
    ];
    for (const reading of read) {
      const after = beliefAfter(before, reading);
      expect(after.kelvin).toBeGreaterThan(before.kelvin);
      expect(after.high - after.low).toBeLessThan(before.high - before.low);
    }
  });

  it('weighs a thermometer against the band as two normals do: inverse variances (jcgm100)', () => {
    const spread = 20;
    const before = {
      kelvin: kelvin(450),
      low: kelvin(450 - 1.2816 * spread),
      high: kelvin(450 + 1.2816 * spread),
    };
    const after = beliefAfter(before, { by: 'thermometer', kelvin: kelvin(470) });
    const weight = 1 / 8 ** 2 / (1 / 8 ** 2 + 1 / spread ** 2);
    expect(after.kelvin).toBeCloseTo(450 + 20 * weight, 1);
  });
});

describe('what a test should read at a minute of a plan', () => {
  const curve: readonly CurvePoint[] = Array.from({ length: 31 }, (_, minute) => {
    const oven = kelvin(300 + 5 * minute);
    const [low, high] = [kelvin(oven - 15), kelvin(oven + 15)];
    return { minute: minutes(minute), oven, low, high, lid: oven, floor: oven, wall: oven };
  });

  it('is the mean of the minutes that it takes', () => {
    expect(expectedAt('thermometer', curve, 20)?.likely).toEqual({
      by: 'thermometer',
      kelvin: 397.5,
    });
    expect(expectedAt('flour', curve, 30)?.likely).toEqual({ by: 'flour', colour: 'straw' });
  });

  it('is nothing past the end of the plan', () => {
    expect(expectedAt('thermometer', curve, 60)).toBeUndefined();
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import wyoming from '../../validation/formula/altitude-leavening.json' with { type: 'json' };
import purdy from '../../validation/formula/altitude-purdy.json' with { type: 'json' };
import service from '../../validation/formula/altitude-service.json' with { type: 'json' };
import { ingredientMade } from '../../validation/menu/made.ts';
import { pressureAtElevation } from '../camp/air.ts';
import { fromUnit } from '../quantity/convert.ts';
import { grams, metres } from '../quantity/unit.ts';
import { cutForHeight, leaveningCutAt } from './height.ts';
import { feetToMetres, heightCompared } from './height-advice.ts';

type Numbers = readonly number[];
const SERVICE_FEET = [2000, 4000, 6000, 8000];
const advised = (feet: number, source: string) =>
  heightCompared(feetToMetres(feet), { leavens: 'powder', teaspoonsForTwoCups: 3 })?.advice.find(
    (each) => each.source === source,
  );

describe('published tables for a height', () => {
  it.each([
    ['uwAltitude', wyoming],
    ['purdyAltitude', purdy],
  ] as const)('give back every row of %s', (source, table) => {
    for (const [feet, least, most] of table.rows as readonly Numbers[]) {
      const { leavening } = advised(feet!, source)!;
      expect(leavening[0], `${feet} ft`).toBeCloseTo(least!, 3);
      expect(leavening[1], `${feet} ft`).toBeCloseTo(most!, 3);
    }
  });

  it('give the liquid and sugar of uwAltitude at 5,000 ft: 2-4 tbsp more, 0-2 less, 15-25 °F', () => {
    const advice = advised(5000, 'uwAltitude')!;
    expect(advice.liquid).toEqual([2 / 16, 4 / 16]);
    expect(advice.sugar).toEqual([0, 2 / 16]);
    expect(advice.ovenHotter!.map((step) => Math.round(step * 1.8))).toEqual([15, 25]);
  });

  it('give the cuts of serviceAltitude as the ends of its printed rows, within a hundredth', () => {
    SERVICE_FEET.forEach((feet, column) => {
      const cuts = (service.rows as readonly Numbers[]).map(
        (row) => 1 - row[column + 1]! / row[0]!,
      );
      const { leavening } = advised(feet, 'serviceAltitude')!;
      expect(Math.abs(leavening[0] - Math.min(...cuts))).toBeLessThan(0.01);
      expect(Math.abs(leavening[1] - Math.max(...cuts))).toBeLessThan(0.01);
    });
  });

  it('of serviceAltitude cut two to three times what equal gas asks (ussa1976), row by row', () => {
    SERVICE_FEET.forEach((feet, column) => {
      const law = 1 - pressureAtElevation(fromUnit(feet, 'foot')) / 101_325;
      for (const row of service.rows as readonly Numbers[]) {
        const times = (1 - row[column + 1]! / row[0]!) / law;
        expect(times).toBeGreaterThan(1.9);
        expect(times).toBeLessThan(3.1);
      }
    });
    const { largestOverLaw } = heightCompared(feetToMetres(6000), { leavens: 'powder' })!;
    expect(largestOverLaw).toBeGreaterThan(2);
  });

  it('of nmsuCakes cut by the flour: at 5,000 ft twice 1/4 to 1/2 tsp of 3 tsp', () => {
    const { leavening } = advised(5000, 'nmsuCakes')!;
    expect(leavening[0]).toBeCloseTo(0.5 / 3, 9);
    expect(leavening[1]).toBeCloseTo(1 / 3, 9);
  });

  it('say 10-25 % less yeast at 5,000 ft (coloradoYeast) and a sixth (coloradoWheat)', () => {
    const { advice, law } = heightCompared(feetToMetres(5000), { leavens: 'yeast' })!;
    expect(advice.map(({ source }) => source)).toEqual(['coloradoWheat', 'coloradoYeast']);
    expect(advice[1]!.leavening).toEqual([0.1, 0.25]);
    expect(law).toBeGreaterThan(0.1);
    expect(law).toBeLessThan(0.25);
  });

  it('are silent low down and are held, and marked, above their last row', () => {
    expect(heightCompared(metres(300), { leavens: 'powder' })).toBeUndefined();
    const high = advised(14_000, 'uwAltitude')!;
    expect(high.isAboveTable).toBe(true);
    expect(high.leavening).toEqual([0.25, 0.25]);
  });
});

describe('a recipe with a height of its own', () => {
  const powder = { ingredient: ingredientMade('baking powder', 20), grams: grams(20) };
  const weighed = (here: number, written?: number) =>
    cutForHeight(powder, metres(here), written === undefined ? undefined : metres(written)).line
      .grams;

  it('is not cut twice: written at 1,500 m it stays as it is there, and 3,000 ft round it', () => {
    expect(weighed(1500, 1500)).toBe(20);
    expect(weighed(2300, 1500)).toBe(20);
    expect(weighed(2600, 1500)).toBeLessThan(20);
  });

  it('gets back on low ground what was cut on high: there and back is the same gas (gas law)', () => {
    const up = weighed(2400);
    const back = cutForHeight({ ...powder, grams: up }, metres(0), metres(2400)).line.grams;
    expect(back).toBeCloseTo(20, 9);
  });

  it('never needs more leavening in thinner air, wherever it was written', () => {
    const height = () => fc.double({ min: -400, max: 5500, noNaN: true });
    fc.assert(
      fc.property(height(), height(), height(), (one, other, written) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(weighed(high, written)).toBeLessThanOrEqual(weighed(low, written) + 1e-9);
        expect(leaveningCutAt(metres(high))).toBeGreaterThanOrEqual(leaveningCutAt(metres(low)));
      }),
      { seed: 11, numRuns: 300 },
    );
  });
});

import { describe, expect, it } from 'vitest';
import { modelFahrenheit } from '../../validation/coals/compare.ts';
import published from '../../validation/coals/published-steps.json' with { type: 'json' };
import { usualOven } from './charts.ts';

const INCH = 0.0254; // m, exact
const SIZES = [8, 10, 12, 14, 16] as const;

/** A pair more, about the count of the most reprinted chart at 350 F. */
const stepAt = (ovenInches: number): number => {
  expect(usualOven(ovenInches * INCH).diameter).toBeGreaterThan(0);
  const above = Math.round(1.4 * ovenInches);
  const below = Math.round(0.66 * ovenInches);
  const cell = { ovenInches, heatFahrenheit: 0, above, below };
  return modelFahrenheit({ ...cell, above: above + 1, below: below + 1 }) - modelFahrenheit(cell);
};

describe('one pair of coals', () => {
  const [leasts, mosts] = [1, 2].map((column) => published.rows.map((row) => Number(row[column])));

  it.each(SIZES)(
    'brings a %i inch oven a step between the smallest and the largest published (countingRules)',
    (inches) => {
      const step = stepAt(inches);
      expect(step).toBeGreaterThanOrEqual(Math.min(...(leasts ?? [])));
      expect(step).toBeLessThanOrEqual(Math.max(...(mosts ?? [])));
    },
  );

  it('brings less the larger the oven is: why rules by diameter overheat small ovens (countingRules)', () => {
    const steps = SIZES.map(stepAt);
    expect(steps).toEqual([...steps].sort((one, other) => other - one));
  });

  it('is told by six rules that disagree, all kept', () => {
    expect(published.rows.length).toBe(6);
  });
});

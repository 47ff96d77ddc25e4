import { describe, expect, it } from 'vitest';
import { pairStepFahrenheit } from '../../validation/coals/compare.ts';
import published from '../../validation/coals/published-steps.json' with { type: 'json' };

const SIZES = [8, 10, 12, 14, 16] as const;

describe('one pair of coals', () => {
  const [leasts, mosts] = [1, 2].map((column) => published.rows.map((row) => Number(row[column])));

  it.each(SIZES)(
    'brings a %i inch oven a step between the smallest and the largest published (countingRules)',
    (inches) => {
      const step = pairStepFahrenheit(inches);
      expect(step).toBeGreaterThanOrEqual(Math.min(...(leasts ?? [])));
      expect(step).toBeLessThanOrEqual(Math.max(...(mosts ?? [])));
    },
  );

  it('brings less the larger the oven is: why rules by diameter overheat small ovens (countingRules)', () => {
    const steps = SIZES.map(pairStepFahrenheit);
    expect(steps).toEqual([...steps].sort((one, other) => other - one));
  });

  it('is told by six rules that disagree, all kept', () => {
    expect(published.rows.length).toBe(6);
  });
});

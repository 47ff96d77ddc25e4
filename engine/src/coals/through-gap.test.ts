import { describe, expect, it } from 'vitest';
import { crossing, gapShares } from './through-gap.ts';

describe('what crosses the gap between lid and food', () => {
  it.each([
    [0.5, 1.65644112],
    [1, 0.60190723],
    [2, 0.13986588],
    [5, 0.00404461],
  ])('is x K1(x): at x = %f K1 is %f (abramowitz1964 table 9.8, from memory)', (x, bessel) => {
    expect(Math.abs(crossing(x) / (x * bessel) - 1)).toBeLessThan(1e-5);
  });

  it('is all over a narrow gap, without a leap', () => {
    expect(crossing(0)).toBe(1);
    expect(Math.abs(crossing(0.0201) - 1)).toBeLessThan(0.001);
  });

  it('is less for finer patterns and wider gaps', () => {
    const near = gapShares(12, { gapMetres: 0.03, radiusMetres: 0.165 });
    const far = gapShares(12, { gapMetres: 0.06, radiusMetres: 0.165 });
    for (const [harmonic, share] of near.entries()) {
      expect(far[harmonic]).toBeLessThan(share);
      if (harmonic > 1) expect(share).toBeLessThan(near[harmonic - 1]!);
    }
  });
});

// What is left of a hot lid's pattern where it reaches the food below? Heat shines through the gap
// and blurs on its way. Source: view factors of parallel planes (bergman2011 ch. 13): the share of
// a wave of wave number k that crosses a gap h is kh K1(kh), K1 by abramowitz1964 9.6.24.
// Weak spot: planes without end; walls that shine back are left out.

import type { Harmonics } from './plate/patch.ts';
import { meanKelvin } from './plate/reading.ts';
import type { Rings } from './plate/rings.ts';

/** Shares of the harmonics that cross a gap over a plate. */
export const gapShares = (
  highest: number,
  { gapMetres, radiusMetres }: { readonly gapMetres: number; readonly radiusMetres: number },
): readonly number[] =>
  Array.from({ length: highest + 1 }, (_, harmonic) =>
    crossing((waveOn(harmonic) * gapMetres) / radiusMetres),
  );

/** The pattern after the gap; its mean stays. */
export const throughGap = (
  kelvins: Harmonics,
  rings: Rings,
  shares: readonly number[],
): Harmonics => {
  const mean = meanKelvin(kelvins, rings);
  const blurred = (values: Float64Array, harmonic: number) => {
    const [level, kept] = [harmonic === 0 ? mean : 0, shares[harmonic] ?? 0];
    const left = new Float64Array(values.length);
    for (let ring = 0; ring < left.length; ring++)
      left[ring] = level + kept * (values[ring]! - level);
    return left;
  };
  return {
    along: kelvins.along.map(blurred),
    across: kelvins.across.map((values, harmonic) =>
      harmonic > 0 ? blurred(values, harmonic) : values,
    ),
  };
};

const ROUND_WAVE = 3.8317; // first zero of J1, abramowitz1964 table 9.5: hot rim, cold middle

/** Mildest wave of a harmonic on an insulated disc, times its radius. @source abramowitz1964 9.5.16 */
const waveOn = (harmonic: number): number => {
  if (harmonic === 0) return ROUND_WAVE;
  const root = Math.cbrt(harmonic);
  return harmonic + 0.8086165 * root + 0.07249 / root - 0.05097 / harmonic;
};

const INTEGRAL = { step: 0.2, steps: 45 } as const;

/** x K1(x): 1 for a narrow gap, 0 for a wide one. @source abramowitz1964 9.6.24, by trapezium */
export const crossing = (x: number): number => {
  if (x < NARROW) return 1;
  let sum = Math.exp(-x) / 2;
  for (let at = 1; at <= INTEGRAL.steps; at++) {
    const cosh = Math.cosh(at * INTEGRAL.step);
    sum += Math.exp(-x * cosh) * cosh;
  }
  return x * sum * INTEGRAL.step;
};

const NARROW = 0.02; // below it the integral would need more steps, and 1 is right to 0.001

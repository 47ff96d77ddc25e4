// How far may the heat be off? The four factors moved one by one, and their effects added up.
// Source: factors.ts. Weak spot: first order only; a band of a saturated pot is a little too wide.

import type { FactorBeliefs } from './factors.ts';
import { type FactorName, factorSettings } from './factors.ts';
import type { OvenMoment, RunSetting } from './run.ts';

/** 80 % of a normal lies within this many standard deviations. */
export const EIGHTY_PERCENT = 1.2816; // normal quantile at 0.9

/** The same plan with one factor moved by a standard deviation. */
export interface FactorMoments {
  readonly factor: FactorName;
  readonly moments: readonly OvenMoment[];
}

/** A run of the same acts for each factor that can matter here. */
export const factorMoments = (
  setting: RunSetting,
  beliefs: FactorBeliefs,
  run: (changed: RunSetting) => readonly OvenMoment[],
): readonly FactorMoments[] =>
  factorSettings(setting, beliefs).map(({ factor, setting: changed }) => ({
    factor,
    moments: run(changed),
  }));

/**
 * Half of the 80 % band at each moment [K]: independent factors, effects added in quadrature.
 *
 * @source  jcgm100 5.1.2 eq. 10 (to first order)
 */
export const halfBands = (
  moments: readonly OvenMoment[],
  runs: readonly FactorMoments[],
): readonly number[] =>
  moments.map((moment, index) => {
    const squares = runs.reduce((sum, run) => {
      const moved = run.moments[index]?.ovenKelvin ?? moment.ovenKelvin;
      return sum + (moved - moment.ovenKelvin) ** 2;
    }, 0);
    return EIGHTY_PERCENT * Math.sqrt(squares);
  });

/**
 * 80 % band of something that each run ends with: a finishing minute, a heat.
 *
 * @param likely   of the run as believed
 * @param shifted  the same of each factor's run; one that has none counts as no change
 */
export const bandOf = (
  likely: number,
  shifted: readonly (number | undefined)[],
): { readonly low: number; readonly high: number } => {
  const squares = shifted.reduce<number>((sum, each) => sum + ((each ?? likely) - likely) ** 2, 0);
  const half = EIGHTY_PERCENT * Math.sqrt(squares);
  return { low: likely - half, high: likely + half };
};

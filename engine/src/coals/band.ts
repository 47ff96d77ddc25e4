// How far may the heat be off? As far as published charts are from each other.
// Source: the charts of charts.ts, pooled; spread checked in band.test.ts against the tables.
// Weak spot: charts copy each other, and none was measured.

import type { CoalRequest } from './coal-plan.ts';

/**
 * Pooled standard deviation of ln(coals in all) between charts for the same oven and heat.
 *
 * @tuned  computed from all cells of coals-charts.json that two or more charts cover
 */
export const CHART_SPREAD = 0.064;
/** 80 % of a normal lies within this many standard deviations. */
const EIGHTY_PERCENT = 1.2816; // normal quantile at 0.9
/** Wood coals: nobody measured them; twice the doubt is our word for that. */
const WOOD_DOUBT = 2;
/** High camps: the two published signs of thin air's effect differ by about this much more. */
const HEIGHT_DOUBT = 0.5;
const SEA_LEVEL_PASCALS = 101_325; // iso2533

export interface BandFactors {
  readonly low: number;
  readonly high: number;
}

/** Factors on coal strength that bound 80 % of what the charts' authors would have met. */
export const bandFactors = (request: Pick<CoalRequest, 'fuel' | 'air'>): BandFactors => {
  const wood = request.fuel.kind === 'wood-coals' ? WOOD_DOUBT : 1;
  const thin = Math.abs(Math.log(request.air.pressure / SEA_LEVEL_PASCALS)) * HEIGHT_DOUBT;
  const spread = Math.hypot(CHART_SPREAD * wood, thin);
  return { low: Math.exp(-EIGHTY_PERCENT * spread), high: Math.exp(EIGHTY_PERCENT * spread) };
};

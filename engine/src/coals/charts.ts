// What do the published charts say, and what does a printed temperature mean?
//
// Read alike for all charts: the steady temperature inside an oven of usual depth that bakes, i.e.
// takes up 1500 W per m2 of its plan, coals at their mean strength from 15 to 60 minutes after
// lighting, air 70 F, calm, sea level, coals on a fire pan. No chart says any of this itself.
// Sources: chartReprinted, chartSupply, chartPair, ruleTwiceDiameter, rulePlusMinusThree.

import data from '../../data/coals-charts.json' with { type: 'json' };
import type { CampOven } from '../camp/camp.ts';
import { nominalOven } from '../menu/index.ts';
import { fromFahrenheit, type Kelvin, metres, toFahrenheit } from '../quantity/unit.ts';
import type { ChartCount } from './coal-plan.ts';

const INCH = 0.0254; // m, exact

export interface ChartRow {
  readonly ovenInches: number;
  readonly heatFahrenheit: number;
  readonly above: number;
  readonly below: number;
}

export interface Chart {
  readonly id: string;
  readonly source: string;
  readonly rows: readonly ChartRow[];
}

/** All published charts and rules, the most reprinted one first. */
export const charts: readonly Chart[] = data.charts.map((chart) => ({
  id: chart.id,
  source: chart.source,
  rows: chart.rows.map(([ovenInches = 0, heatFahrenheit = 0, above = 0, below = 0]) => ({
    ovenInches,
    heatFahrenheit,
    above,
    below,
  })),
}));

const SIZE_SLACK_INCHES = 0.3; // an oven is sold by the inch; a tape measure is not finer
const HEAT_SLACK_FAHRENHEIT = 12.5; // half a step of the charts

/** A chart's count at this size and heat, between its rows; undefined past its edges. */
export const chartCount = (
  chart: Chart,
  wish: { readonly diameterMetres: number; readonly heat: Kelvin },
): ChartCount | undefined => {
  const inches = wish.diameterMetres / INCH;
  const ovens = [...new Set(chart.rows.map((row) => row.ovenInches))].sort((a, b) => a - b);
  const low = ovens.findLast((oven) => oven <= inches + SIZE_SLACK_INCHES);
  const high = ovens.find((oven) => oven >= inches - SIZE_SLACK_INCHES);
  if (low === undefined || high === undefined) return;
  const heat = toFahrenheit(wish.heat);
  const lower = atHeat(chart, low, heat);
  const upper = atHeat(chart, high, heat);
  if (!lower || !upper) return;
  const share = high > low ? Math.min(1, Math.max(0, (inches - low) / (high - low))) : 0;
  return {
    source: chart.source,
    above: Math.round(lower.above + share * (upper.above - lower.above)),
    below: Math.round(lower.below + share * (upper.below - lower.below)),
    oven: wish.heat,
  };
};

/** The printed heat whose count is this one, or one coal off it; undefined past the chart's edges. */
export const chartHeat = (
  chart: Chart,
  laid: { readonly diameterMetres: number; readonly coals: number },
): Kelvin | undefined => {
  const offs = PRINTED_FAHRENHEIT.flatMap((fahrenheit) => {
    const heat = fromFahrenheit(fahrenheit);
    const count = chartCount(chart, { diameterMetres: laid.diameterMetres, heat });
    return count ? [{ heat, off: Math.abs(count.above + count.below - laid.coals) }] : [];
  });
  const nearest = offs.toSorted((one, other) => one.off - other.off)[0];
  return nearest !== undefined && nearest.off <= 1 ? nearest.heat : undefined;
};

const PRINTED_FAHRENHEIT = [300, 325, 350, 375, 400, 425, 450, 475, 500];

const atHeat = (chart: Chart, ovenInches: number, fahrenheit: number) => {
  const rows = chart.rows.filter((row) => row.ovenInches === ovenInches);
  const low = rows.findLast((row) => row.heatFahrenheit <= fahrenheit + HEAT_SLACK_FAHRENHEIT);
  const high = rows.find((row) => row.heatFahrenheit >= fahrenheit - HEAT_SLACK_FAHRENHEIT);
  if (!low || !high) return;
  const step = high.heatFahrenheit - low.heatFahrenheit;
  const share = step > 0 ? (fahrenheit - low.heatFahrenheit) / step : 0;
  return {
    above: low.above + share * (high.above - low.above),
    below: low.below + share * (high.below - low.below),
  };
};

/** The oven of usual depth and weight that a chart means by this diameter. @source ovenSizing */
export const usualOven = (
  diameterMetres: number,
): Pick<CampOven, 'diameter' | 'depth' | 'mass'> => {
  const { diameter, depth, mass } = nominalOven(metres(diameterMetres));
  return { diameter, depth, mass };
};

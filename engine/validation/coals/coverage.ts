// Does the band hold what it promises? Its width is set without a chart (or without a size of oven)
// and then the cells left out are counted inside it. All cells are kept, those it misses too.

import { EIGHTY_PERCENT } from '../../src/coals/band.ts';
import { usualOven } from '../../src/coals/charts.ts';
import { CHART_DOUBT } from '../../src/coals/factors.ts';
import { ovenBody } from '../../src/coals/geometry.ts';
import { coalsToHold, heldKelvin } from '../../src/coals/hold.ts';
import { parameter } from '../../src/coals/parameters.ts';
import { fromFahrenheit, kelvin, toFahrenheit } from '../../src/quantity/unit.ts';
import { type ChartCell, chartCases, PRINTED_CHARTS } from './compare.ts';

const INCH = 0.0254; // m, exact
/** They count coals for a heat over a range of heats: these set the width. */
const WIDTH_CHARTS = ['reprinted', 'supply', 'pair', 'twice-diameter', 'plus-minus-three'];

interface Cell extends ChartCell {
  readonly chart: string;
  /** ln of the chart's coals in all beside those that the model wants. */
  readonly off: number;
}

const holdOf = (cell: ChartCell) => {
  const body = ovenBody(usualOven(cell.ovenInches * INCH));
  return {
    body,
    outside: {
      airKelvin: parameter('chartAirKelvin'),
      pressurePascals: parameter('chartPressurePascals'),
      windMetresPerSecond: 0,
    },
    strengthAbove: 1,
    strengthBelow: 1,
    shareAbove: cell.above / (cell.above + cell.below),
    sinkWatts: parameter('chartLoadWattsPerSquareMetre') * body.mouthArea,
    targetKelvin: fromFahrenheit(cell.heatFahrenheit),
  };
};

const cells: readonly Cell[] = chartCases.flatMap((chart) =>
  chart.cells.map((cell) => ({
    ...cell,
    chart: chart.id,
    off: Math.log((cell.above + cell.below) / coalsToHold(holdOf(cell))),
  })),
);

/** Each chart weighs alike, however many cells it has: charts copy each other. */
const widthFrom = (kept: readonly Cell[]): number => {
  const charts = [...new Set(kept.map((cell) => cell.chart))];
  const squares = charts.map((id) => {
    const of = kept.filter((cell) => cell.chart === id);
    return of.reduce((sum, cell) => sum + cell.off ** 2, 0) / of.length;
  });
  return Math.sqrt(squares.reduce((sum, each) => sum + each, 0) / squares.length);
};

/** What CHART_DOUBT is computed from. */
export const chartDoubt = (): number =>
  widthFrom(cells.filter((cell) => WIDTH_CHARTS.includes(cell.chart)));

export interface Covered {
  readonly leftOut: string;
  readonly spread: number;
  readonly inside: number;
  readonly cells: number;
}

const coveredWithout = (leftOut: string, isOut: (cell: Cell) => boolean): Covered => {
  const kept = cells.filter((cell) => WIDTH_CHARTS.includes(cell.chart) && !isOut(cell));
  const spread = widthFrom(kept);
  const out = cells.filter(
    (cell) => isOut(cell) && (WIDTH_CHARTS.includes(cell.chart) || !isWidthChart(leftOut)),
  );
  const inside = out.filter((cell) => Math.abs(cell.off) <= EIGHTY_PERCENT * spread).length;
  return { leftOut, spread, inside, cells: out.length };
};

const isWidthChart = (id: string) => WIDTH_CHARTS.includes(id) || /^\d/.test(id);

/** One chart left out at a time, those that never set the width among them. */
export const chartsLeftOut = (): readonly Covered[] =>
  chartCases.map(({ id }) => coveredWithout(id, (cell) => cell.chart === id));

/** One size of oven left out at a time, in the charts that set the width. */
export const sizesLeftOut = (): readonly Covered[] =>
  [8, 10, 12, 14, 16].map((inches) =>
    coveredWithout(`${inches} inch`, (cell) => cell.ovenInches === inches),
  );

export const shareInside = (covered: readonly Covered[]): number =>
  covered.reduce((sum, each) => sum + each.inside, 0) /
  covered.reduce((sum, each) => sum + each.cells, 0);

export const setsWidth = ({ leftOut }: Covered) => WIDTH_CHARTS.includes(leftOut);
export const isPrinted = ({ leftOut }: Covered) => PRINTED_CHARTS.includes(leftOut);

/** Half of the band in F at one cell, and how far the charts' own heats for its count lie apart. */
export const bandFahrenheit = (ovenInches: number) => {
  const cell = { ovenInches, heatFahrenheit: 350, above: 0, below: 0 };
  const hold = { ...holdOf({ ...cell, above: 2, below: 1 }) };
  const coals = coalsToHold(hold);
  const heatAt = (log: number) =>
    toFahrenheit(kelvin(heldKelvin(hold, coals * Math.exp(log)).ovenKelvin));
  const sigma = EIGHTY_PERCENT * CHART_DOUBT;
  const said = cells
    .filter((each) => each.ovenInches === ovenInches && each.heatFahrenheit === 350)
    .filter((each) => WIDTH_CHARTS.includes(each.chart))
    .map((each) => 350 - (heatAt(each.off) - 350));
  return {
    low: heatAt(-sigma),
    high: heatAt(sigma),
    chartsLow: Math.min(...said),
    chartsHigh: Math.max(...said),
    charts: said.length,
  };
};

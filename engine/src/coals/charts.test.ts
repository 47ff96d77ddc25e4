import { describe, expect, it } from 'vitest';
import {
  bestStrength,
  chartCases,
  chartFits,
  chartSpread,
  heldOutFits,
  PRINTED_CHARTS,
} from '../../validation/coals/compare.ts';
import {
  chartDoubt,
  chartsLeftOut,
  setsWidth,
  shareInside,
  sizesLeftOut,
} from '../../validation/coals/coverage.ts';
import { coalReport } from '../../validation/coals/report.ts';
import { trialStrength } from '../../validation/coals/requests.ts';
import { fromFahrenheit } from '../quantity/unit.ts';
import { chartCount, chartHeat, charts } from './charts.ts';
import { CHART_DOUBT } from './factors.ts';

const INCH = 0.0254; // m, exact
const fits = chartFits();
const fitOf = (id: string) => {
  const fit = fits.find((each) => each.id === id);
  if (!fit) throw new RangeError(`no chart ${id}`);
  return fit;
};

describe('the network against published charts', () => {
  it('leaves out no chart and no cell', () => {
    expect(chartCases.map((chart) => [chart.id, chart.cells.length])).toEqual([
      ['reprinted', 30],
      ['supply', 24],
      ['pair', 8],
      ['twice-diameter', 30],
      ['plus-minus-three', 30],
      ['edges', 7],
      ['rings', 16],
      ['single', 23],
    ]);
  });

  it('lies within 25 F of at least 80 % of the cells of chartReprinted, chartSupply and chartPair', () => {
    const printed = PRINTED_CHARTS.map(fitOf);
    const within = printed.reduce((sum, fit) => sum + fit.within25, 0);
    const cells = printed.reduce((sum, fit) => sum + fit.cells, 0);
    expect(cells).toBe(62);
    expect(within / cells).toBeGreaterThanOrEqual(0.8);
  });

  it('has the power of a coal that fits those three charts best, to half a percent', () => {
    expect(Math.abs(bestStrength(PRINTED_CHARTS) - 1)).toBeLessThan(0.005);
  });

  it('fits each of the three within 35 F rms by coals fitted to the other two', () => {
    for (const fit of heldOutFits()) expect(fit.rms).toBeLessThan(35);
  });

  it('reproduces the rms of the trial model within 2 F for every chart it was tried on', () => {
    const tried = chartFits(trialStrength).filter((fit) => fit.trialRms !== undefined);
    expect(tried.length).toBe(5);
    for (const fit of tried) expect(Math.abs(fit.rms - (fit.trialRms ?? 0))).toBeLessThan(2);
  });

  it('reads chartSupply as cooler than chartReprinted: that chart lays fewer coals', () => {
    expect(fitOf('supply').bias).toBeLessThan(fitOf('reprinted').bias - 20);
  });

  it('overheats small ovens and underheats large ones by rules of diameter, as a user found (countingRules)', () => {
    const rule = chartCases.find((chart) => chart.id === 'plus-minus-three');
    const misses = rule?.cells.map((cell) => cell.ovenInches) ?? [];
    expect(new Set(misses).size).toBe(5);
    expect(coalReport().split('\n').length).toBeGreaterThan(14);
  });

  it('prints a line for every chart', () => {
    const report = coalReport();
    for (const chart of chartCases) expect(report).toContain(chart.title);
  });
});

describe('the spread of the charts about the model', () => {
  it('is what the band is made of, to the third digit', () => {
    expect(chartDoubt()).toBeCloseTo(CHART_DOUBT, 3);
  });

  it('is wider than that of the charts among themselves, since the model is off too', () => {
    expect(chartDoubt()).toBeGreaterThan(chartSpread());
  });

  it('covers 75 to 90 % of the cells of charts that it was not made from (80 % band, five charts)', () => {
    const left = chartsLeftOut().filter(setsWidth);
    expect(left.reduce((sum, each) => sum + each.cells, 0)).toBe(122); // none dropped
    expect(shareInside(left)).toBeGreaterThanOrEqual(0.75);
    expect(shareInside(left)).toBeLessThanOrEqual(0.9);
  });

  it('covers 75 to 90 % of the cells of sizes that it was not made from', () => {
    const left = sizesLeftOut();
    expect(left.reduce((sum, each) => sum + each.cells, 0)).toBe(122);
    expect(shareInside(left)).toBeGreaterThanOrEqual(0.75);
    expect(shareInside(left)).toBeLessThanOrEqual(0.9);
  });

  it('does not cover the rings on the lid of chartRings, and the report says so', () => {
    const rings = chartsLeftOut().find((each) => each.leftOut === 'rings');
    expect(rings!.inside).toBeLessThan(rings!.cells / 2);
    expect(coalReport()).toContain(`${rings!.inside}/${rings!.cells}`);
  });
});

describe('a count from a chart', () => {
  const reprinted = charts[0];
  if (!reprinted) throw new RangeError('no charts');

  it('is the printed one for every printed cell of every chart', () => {
    for (const chart of charts)
      for (const row of chart.rows) {
        const wish = {
          diameterMetres: row.ovenInches * INCH,
          heat: fromFahrenheit(row.heatFahrenheit),
        };
        const said = chartCount(chart, wish);
        expect([said?.above, said?.below]).toEqual([Math.round(row.above), Math.round(row.below)]);
      }
  });

  it('read the other way gives the printed heat of every printed cell of the most reprinted chart', () => {
    for (const { ovenInches, heatFahrenheit, above, below } of reprinted.rows) {
      const laid = { diameterMetres: ovenInches * INCH, coals: above + below };
      expect(chartHeat(reprinted, laid)).toBeCloseTo(fromFahrenheit(heatFahrenheit), 6);
    }
    expect(chartHeat(reprinted, { diameterMetres: 12 * INCH, coals: 90 })).toBeUndefined();
  });

  it('is not made up past the edges of the chart', () => {
    const at = (inches: number, fahrenheit: number) =>
      chartCount(reprinted, { diameterMetres: inches * INCH, heat: fromFahrenheit(fahrenheit) });
    expect(at(12, 600)).toBeUndefined();
    expect(at(12, 200)).toBeUndefined();
    expect(at(20, 350)).toBeUndefined();
    expect(at(13, 350)).toMatchObject({ above: 19, below: 10 });
  });
});

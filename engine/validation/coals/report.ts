// The comparison of our network with every published chart, printed for people.

import { CHART_DOUBT, factorNames, factors } from '../../src/coals/factors.ts';
import { type ChartFit, chartFits, chartSpread, heldOutFits, PRINTED_CHARTS } from './compare.ts';
import {
  bandFahrenheit,
  type Covered,
  chartsLeftOut,
  isPrinted,
  setsWidth,
  shareInside,
  sizesLeftOut,
} from './coverage.ts';

/** One line a chart, those it fits badly too. */
export function coalReport(): string {
  const fits = chartFits();
  const main = fits.filter((fit) => PRINTED_CHARTS.includes(fit.id));
  const within = main.reduce((sum, fit) => sum + fit.within25, 0);
  const cells = main.reduce((sum, fit) => sum + fit.cells, 0);
  return [
    'Coals: temperature of our oven network less the printed one, in F',
    'Read alike for all: steady, usual oven that bakes, mid-life coals, 70 F, calm, sea level.',
    '',
    `${'chart'.padEnd(38)}  cells    rms   bias  worst  within 25  trial rms`,
    ...fits.map(line),
    '',
    `The three printed charts together: ${within} of ${cells} cells within 25 F (aim: 80 %).`,
    `Charts differ from each other by ${percent(chartSpread())} (1 sigma of coals in all).`,
    "One parameter set. The coal's power is fitted to the first three charts, each cell alike; its",
    'partner, the load, to the first one by the trial model; the other charts and rules are out of sample.',
    'Each of the three by coals that were fitted to the other two:',
    ...heldOutFits().map(
      (fit) =>
        `  ${fit.title.padEnd(36)} coals x ${fit.strength.toFixed(3)}  rms ${fit.rms.toFixed(1)}  bias ${fit.bias.toFixed(1)}  ${fit.within25}/${fit.cells}`,
    ),
    'Charts are practice, not measurements: this shows agreement with practice, not with nature.',
    '',
    ...bandReport(),
  ].join('\n');
}

/** The band: what it is made of, whether it holds for cells that did not set it, how wide it is. */
function bandReport(): readonly string[] {
  const charts = chartsLeftOut();
  const sizes = sizesLeftOut();
  const setting = charts.filter(setsWidth);
  return [
    'The 80 % band: factors on the model, 1 sigma of the ln of each',
    ...factorNames.map((name) => `  ${name.padEnd(16)} ${percent(factors[name].spread)}`),
    `  strength and loss together are ${percent(CHART_DOUBT)} of coals in all, the width of the`,
    '  charts about the model, each chart weighing alike.',
    '',
    `${'left out'.padEnd(20)}  width without it   cells inside the band`,
    ...setting.map(coveredLine),
    `  charts left out one by one: ${percent(shareInside(setting))} inside (aim: 75 to 90 %)`,
    `  the three printed ones among them: ${percent(shareInside(setting.filter(isPrinted)))}`,
    ...sizes.map(coveredLine),
    `  sizes left out one by one: ${percent(shareInside(sizes))} inside (aim: 75 to 90 %)`,
    '  not used for the width, and how they fare all the same:',
    ...charts.filter((covered) => !setsWidth(covered)).map(coveredLine),
    '',
    'For 350 F by our count, in F: the band, and what the charts would call that heat',
    ...[8, 10, 12, 14, 16].map(widthLine),
  ];
}

const coveredLine = ({ leftOut, spread, inside, cells }: Covered): string =>
  `${leftOut.padEnd(20)}  ${percent(spread).padStart(10)}  ${`${inside}/${cells}`.padStart(16)}`;

const widthLine = (inches: number): string => {
  const { low, high, chartsLow, chartsHigh, charts } = bandFahrenheit(inches);
  const range = (from: number, to: number) => `${from.toFixed(0)} to ${to.toFixed(0)}`;
  return (
    `${String(inches).padStart(2)} inch  ${range(low, high)} (${(high - low).toFixed(0)} wide); ` +
    `${charts} charts: ${range(chartsLow, chartsHigh)} (${(chartsHigh - chartsLow).toFixed(0)} wide)`
  );
};

const percent = (share: number) => `${(100 * share).toFixed(1)} %`;

const line = (fit: ChartFit): string =>
  [
    fit.title.padEnd(38),
    String(fit.cells).padStart(6),
    fit.rms.toFixed(1).padStart(6),
    fit.bias.toFixed(1).padStart(6),
    fit.worst.toFixed(1).padStart(6),
    `${fit.within25}/${fit.cells}`.padStart(9),
    (fit.trialRms === undefined ? '-' : fit.trialRms.toFixed(1)).padStart(10),
  ].join(' ');

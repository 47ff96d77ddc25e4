// The comparison of our network with every published chart, printed for people.

import { CHART_SPREAD } from '../../src/coals/band.ts';
import { type ChartFit, chartFits, chartSpread } from './compare.ts';

/** One line a chart, those it fits badly too. */
export function coalReport(): string {
  const fits = chartFits();
  const main = fits.filter((fit) => ['reprinted', 'supply', 'pair'].includes(fit.id));
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
    `Charts differ from each other by ${percent(chartSpread())} (1 sigma of coals in all); ` +
      `the band is 1.28 times ${percent(CHART_SPREAD)} to each side.`,
    'One parameter set, two numbers fitted to the first chart only: the rest is out of sample.',
    'Charts are practice, not measurements: this shows agreement with practice, not with nature.',
  ].join('\n');
}

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

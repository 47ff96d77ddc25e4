// Our network against every published chart and rule, all read alike (see coals/charts.ts).

import { charts, usualOven } from '../../src/coals/charts.ts';
import { ovenBody } from '../../src/coals/geometry.ts';
import { parameter } from '../../src/coals/parameters.ts';
import { coalsInRings, roomFor } from '../../src/coals/room.ts';
import { steadyOven } from '../../src/coals/steady.ts';
import { kelvin, toFahrenheit } from '../../src/quantity/unit.ts';
import edges from './reprinted-edges.json' with { type: 'json' };
import rings from './rings.json' with { type: 'json' };
import rules from './single-rules.json' with { type: 'json' };

const INCH = 0.0254; // m, exact
const SIZES = [8, 10, 12, 14, 16] as const;

export interface ChartCell {
  readonly ovenInches: number;
  readonly heatFahrenheit: number;
  readonly above: number;
  readonly below: number;
}

export interface ChartCase {
  readonly id: string;
  readonly title: string;
  readonly cells: readonly ChartCell[];
  /** What the trial model behind the network reached (rms, F), where it was tried. */
  readonly trialRms?: number;
}

const TRIAL_RMS: Readonly<Record<string, number>> = {
  reprinted: 12.2,
  pair: 13.2,
  supply: 33.4,
  'twice-diameter': 37.8,
  'plus-minus-three': 34.4,
};

const TITLES: Readonly<Record<string, string>> = {
  reprinted: 'the most reprinted chart',
  supply: 'supply-house chart',
  pair: 'one pair for 25 F, 12 inch',
  'twice-diameter': 'twice the diameter, 2/3 above',
  'plus-minus-three': 'plus three, minus three',
};

/** Every chart and rule that was found, none left out. */
export const chartCases: readonly ChartCase[] = [
  ...charts.map((chart) => ({
    id: chart.id,
    title: TITLES[chart.id] ?? chart.id,
    cells: chart.rows,
    ...(TRIAL_RMS[chart.id] === undefined ? {} : { trialRms: TRIAL_RMS[chart.id] as number }),
  })),
  { id: 'edges', title: 'the reprinted chart past its edges', cells: edgeCells() },
  { id: 'rings', title: 'rings on the lid, one ring below', cells: ringCells() },
  { id: 'single', title: 'single rules and counts for 350 F', cells: ruleCells() },
];

function edgeCells(): readonly ChartCell[] {
  return edges.rows.map(([ovenInches = 0, heatFahrenheit = 0, above = 0, below = 0]) => ({
    ovenInches,
    heatFahrenheit,
    above,
    below,
  }));
}

// A ring is what touches all round; the one below leaves the legs clear.
function ringCells(): readonly ChartCell[] {
  return rings.rows.map(([ovenInches = 0, heatFahrenheit = 0, count = 0]) => {
    const diameter = ovenInches * INCH;
    const room = roomFor(ovenBody(usualOven(diameter)), diameter);
    const above = coalsInRings({ outerRadius: diameter / 2 }, count);
    return { ovenInches, heatFahrenheit, above, below: room.floorRing };
  });
}

type RuleRow = readonly [string, number, number, readonly number[], readonly number[]];

function ruleCells(): readonly ChartCell[] {
  return (rules.rows as unknown as readonly RuleRow[]).flatMap(([, oven, heat, above, below]) =>
    SIZES.filter((size) => oven === 0 || oven === size).map((size) => ({
      ovenInches: size,
      heatFahrenheit: heat,
      above: (above[0] ?? 0) * size + (above[1] ?? 0),
      below: (below[0] ?? 0) * size + (below[1] ?? 0),
    })),
  );
}

/** The charts that print a count for each size and heat; the coal's power is fitted to their cells. */
export const PRINTED_CHARTS = ['reprinted', 'supply', 'pair'];

/**
 * What the network gives for a chart's cell, read as charts.ts says.
 *
 * @param strength  of every coal, 1 = the model's own
 */
export const modelFahrenheit = (cell: ChartCell, strength = 1): number => {
  const body = ovenBody(usualOven(cell.ovenInches * INCH));
  const steady = steadyOven({
    body,
    outside: {
      airKelvin: parameter('chartAirKelvin'),
      pressurePascals: parameter('chartPressurePascals'),
      windMetresPerSecond: 0,
    },
    supply: {
      above: cell.above * strength,
      below: cell.below * strength,
      covering: cell.above,
    },
    sinkWatts: parameter('chartLoadWattsPerSquareMetre') * body.mouthArea,
  });
  return toFahrenheit(kelvin(steady.ovenKelvin));
};

/** What one pair more brings, about the count of the most reprinted chart at 350 F [F]. */
export const pairStepFahrenheit = (ovenInches: number): number => {
  const above = Math.round(1.4 * ovenInches);
  const below = Math.round(0.66 * ovenInches);
  const cell = { ovenInches, heatFahrenheit: 0, above, below };
  return modelFahrenheit({ ...cell, above: above + 1, below: below + 1 }) - modelFahrenheit(cell);
};

export interface ChartFit {
  readonly id: string;
  readonly title: string;
  readonly cells: number;
  readonly rms: number;
  readonly bias: number;
  readonly worst: number;
  readonly within25: number;
  readonly trialRms?: number;
}

export const chartFits = (strength = 1): readonly ChartFit[] =>
  chartCases.map(({ cells, ...chart }) => {
    const errors = cells.map((cell) => modelFahrenheit(cell, strength) - cell.heatFahrenheit);
    return {
      ...chart,
      cells: errors.length,
      rms: rmsOf(errors),
      bias: mean(errors),
      worst: Math.max(...errors.map(Math.abs)),
      within25: errors.filter((error) => Math.abs(error) <= 25).length,
    };
  });

const mean = (of: readonly number[]) => of.reduce((sum, each) => sum + each, 0) / of.length;
const rmsOf = (errors: readonly number[]) => Math.sqrt(mean(errors.map((error) => error ** 2)));

/** The strength of coals that fits these charts best, least squares over their cells, 0.9 to 1.1. */
export const bestStrength = (chartIds: readonly string[]): number => {
  const cells = chartCases.filter(({ id }) => chartIds.includes(id)).flatMap((each) => each.cells);
  const missAt = (strength: number) =>
    rmsOf(cells.map((cell) => modelFahrenheit(cell, strength) - cell.heatFahrenheit));
  let [low, high] = [0.9, 1.1];
  for (let step = 0; step < 24; step += 1) {
    const [left, right] = [low + (high - low) / 3, high - (high - low) / 3];
    if (missAt(left) < missAt(right)) high = right;
    else low = left;
  }
  return (low + high) / 2;
};

export interface HeldOutFit extends ChartFit {
  readonly strength: number;
}

/** Each printed chart judged by coals that were fitted to the other two. */
export const heldOutFits = (): readonly HeldOutFit[] =>
  PRINTED_CHARTS.map((id) => {
    const strength = bestStrength(PRINTED_CHARTS.filter((other) => other !== id));
    const fit = chartFits(strength).find((each) => each.id === id);
    if (!fit) throw new RangeError(`no chart ${id}`);
    return { ...fit, strength };
  });

/** Pooled standard deviation of ln(coals in all) where two or more charts name the same cell. */
export const chartSpread = (): number => {
  const totals = new Map<string, number[]>();
  for (const cell of charts.flatMap((chart) => chart.rows)) {
    const key = `${cell.ovenInches}/${cell.heatFahrenheit}`;
    totals.set(key, [...(totals.get(key) ?? []), Math.log(cell.above + cell.below)]);
  }
  let squares = 0;
  let freedom = 0;
  for (const logs of totals.values()) {
    const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
    squares += logs.reduce((sum, log) => sum + (log - mean) ** 2, 0);
    freedom += logs.length - 1;
  }
  return Math.sqrt(squares / freedom);
};

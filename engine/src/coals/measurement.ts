// What does a thermometer, a hand, a pinch of flour say of the oven, and how sure is it?
//
// Each test is a model: the likeliest reading at a heat, and a doubt of its own. The two hand tests
// contradict each other by about 100 F at the same count of seconds: one is made inside the oven,
// the other above the fire, and neither is ever read by the other's table.
// Sources: handInside, handAbove, flourTest, brownPaper. Weak spot: no page states a doubt; they are
// ours, no smaller than the pages differ among themselves.

import {
  fromCelsius,
  fromFahrenheit,
  type Kelvin,
  kelvin,
  toFahrenheit,
} from '../quantity/unit.ts';
import { EIGHTY_PERCENT } from './band.ts';
import type { CurvePoint } from './coal-plan.ts';

export type FlourColour = 'pale' | 'straw' | 'brown' | 'dark';
export type PaperColour = 'pale' | 'yellow' | 'light-brown' | 'dark-brown';

export type Reading =
  | { readonly by: 'thermometer'; readonly kelvin: Kelvin }
  /** Seconds that a hand endures just inside the oven, lid off. */
  | { readonly by: 'hand-inside'; readonly seconds: number }
  /** Seconds that a hand endures 3 to 5 inches above the coals; says nothing of an oven. */
  | { readonly by: 'hand-above-coals'; readonly seconds: number }
  | { readonly by: 'flour'; readonly colour: FlourColour }
  | { readonly by: 'brown-paper'; readonly colour: PaperColour };

export type Instrument = Reading['by'];

export interface TestModel {
  readonly by: Instrument;
  /** What the reading is about. */
  readonly about: 'oven' | 'fire';
  /** The oven must be empty for it. */
  readonly needsEmptyOven: boolean;
  /** It shows the mean heat of so many minutes. */
  readonly takesMinutes: number;
}

export const testModels: Readonly<Record<Instrument, TestModel>> = {
  thermometer: model('thermometer', 'oven', false, 1),
  'hand-inside': model('hand-inside', 'oven', true, 0),
  'hand-above-coals': model('hand-above-coals', 'fire', false, 0),
  flour: model('flour', 'oven', true, 5), // flourTest
  'brown-paper': model('brown-paper', 'oven', true, 5), // brownPaper: "a few minutes"
};

function model(
  by: Instrument,
  about: TestModel['about'],
  needsEmptyOven: boolean,
  takesMinutes: number,
): TestModel {
  return { by, about, needsEmptyOven, takesMinutes };
}

/** Standard deviations; ours, see the header. */
const DOUBT = {
  /** A probe among glowing iron sees more than air. */
  thermometerKelvin: 8,
  insideSeconds: 0.8,
  aboveSeconds: 0.8,
  /** Dark flour: 400 to 450 F on one page, 450 on another. */
  flourKelvin: 14,
  paperKelvin: 10,
} as const;

/** Seconds just inside the oven. @source handInside: 550 F less 50 F a second, 1 … 8 s */
const insideSeconds = (oven: Kelvin): number =>
  Math.min(8, Math.max(1, (550 - toFahrenheit(oven)) / 50));

/** Middles of what the page gives: <1 s 600 F, 1-2 s 450, 3-4 s 362, 5-7 s 337. @source handAbove */
const ABOVE: readonly (readonly [number, number])[] = [
  [0.5, 600],
  [1.5, 450],
  [3.5, 362.5],
  [6, 337.5],
];

const aboveSeconds = (fire: Kelvin): number => {
  const fahrenheit = toFahrenheit(fire);
  const [first, last] = [ABOVE[0]!, ABOVE.at(-1)!];
  if (fahrenheit >= first[1]) return first[0];
  if (fahrenheit <= last[1]) return last[0];
  const index = ABOVE.findIndex(([, heat]) => heat <= fahrenheit);
  const [before, after] = [ABOVE[index - 1]!, ABOVE[index]!];
  const share = (before[1] - fahrenheit) / (before[1] - after[1]);
  return before[0] + share * (after[0] - before[0]);
};

interface Scale<Colour extends string> {
  readonly colours: readonly Colour[];
  /** Where one colour gives way to the next, one fewer than colours. */
  readonly edges: readonly Kelvin[];
  readonly doubtKelvin: number;
}

/** @source flourTest: none below 300 F, light about 350, dark about 450; edges between are ours */
const FLOUR: Scale<FlourColour> = {
  colours: ['pale', 'straw', 'brown', 'dark'],
  edges: [fromFahrenheit(300), fromFahrenheit(375), fromFahrenheit(425)],
  doubtKelvin: DOUBT.flourKelvin,
};

/** @source brownPaper: pale 120 °C, yellow 180-190, light brown 220-230, dark brown 240-300 */
const PAPER: Scale<PaperColour> = {
  colours: ['pale', 'yellow', 'light-brown', 'dark-brown'],
  edges: [fromCelsius(150), fromCelsius(205), fromCelsius(235)],
  doubtKelvin: DOUBT.paperKelvin,
};

const colourAt = <Colour extends string>(scale: Scale<Colour>, oven: Kelvin): Colour => {
  const passed = scale.edges.filter((edge) => edge <= oven).length;
  return scale.colours[passed]!;
};

/** The likeliest reading of a test at this heat (of the oven, or of the fire it is held above). */
export const readingFrom = (by: Instrument, heat: Kelvin): Reading => {
  if (by === 'thermometer') return { by, kelvin: heat };
  if (by === 'hand-inside') return { by, seconds: insideSeconds(heat) };
  if (by === 'hand-above-coals') return { by, seconds: aboveSeconds(heat) };
  if (by === 'flour') return { by, colour: colourAt(FLOUR, heat) };
  return { by, colour: colourAt(PAPER, heat) };
};

/**
 * How likely is this reading if the heat is so? For colours a probability, for numbers a density:
 * only its ratio between two heats means something.
 */
export const likelihood = (reading: Reading, heat: Kelvin): number => {
  switch (reading.by) {
    case 'thermometer':
      return density((reading.kelvin - heat) / DOUBT.thermometerKelvin);
    case 'hand-inside':
      return density((reading.seconds - insideSeconds(heat)) / DOUBT.insideSeconds);
    case 'hand-above-coals':
      return density((reading.seconds - aboveSeconds(heat)) / DOUBT.aboveSeconds);
    case 'flour':
      return colourChance(FLOUR, reading.colour, heat);
    case 'brown-paper':
      return colourChance(PAPER, reading.colour, heat);
  }
};

const density = (sigmas: number): number => Math.exp(-0.5 * sigmas * sigmas);

const colourChance = <Colour extends string>(
  { colours, edges, doubtKelvin }: Scale<Colour>,
  colour: Colour,
  heat: Kelvin,
): number => {
  const at = colours.indexOf(colour);
  const below = (edge: Kelvin | undefined, past: number) =>
    edge === undefined ? past : normalBelow((edge - heat) / doubtKelvin);
  return Math.max(0, below(edges[at], 1) - below(edges[at - 1], 0));
};

/** Share of a normal below so many sigmas. @source abramowitz1964 26.2.17 (error below 7.5e-8) */
const normalBelow = (sigmas: number): number => {
  const t = 1 / (1 + 0.231_641_9 * Math.abs(sigmas));
  const series = [0.319_381_53, -0.356_563_782, 1.781_477_937, -1.821_255_978, 1.330_274_429];
  const sum = series.reduceRight((rest, each) => (rest + each) * t, 0);
  const tail = (Math.exp(-0.5 * sigmas * sigmas) / Math.sqrt(2 * Math.PI)) * sum;
  return sigmas > 0 ? 1 - tail : tail;
};

export interface Expected {
  /** At the heat as believed, and at the edges of its 80 % band. */
  readonly likely: Reading;
  readonly ifCool: Reading;
  readonly ifHot: Reading;
}

/**
 * What a test in the oven should read at this minute of a plan; undefined past its end, and for the
 * hand above the coals, which no oven's heat foretells.
 */
export const expectedAt = (
  by: Instrument,
  curve: readonly CurvePoint[],
  minute: number,
): Expected | undefined => {
  const { about, takesMinutes } = testModels[by];
  if (about === 'fire') return;
  const seen = curve.filter(
    (point) => minute - takesMinutes <= point.minute && point.minute <= minute,
  );
  const last = seen.at(-1);
  if (last === undefined || last.minute < minute - 1) return;
  const mean = (of: (point: CurvePoint) => number) =>
    kelvin(seen.reduce((sum, point) => sum + of(point), 0) / seen.length);
  return {
    likely: readingFrom(
      by,
      mean((point) => point.oven),
    ),
    ifCool: readingFrom(
      by,
      mean((point) => point.low),
    ),
    ifHot: readingFrom(
      by,
      mean((point) => point.high),
    ),
  };
};

/** The oven's heat after a reading: what was believed before and what the test says, weighed. */
export interface OvenBelief {
  readonly kelvin: Kelvin;
  readonly low: Kelvin;
  readonly high: Kelvin;
}

const GRID = { steps: 121, sigmas: 4 } as const;

/**
 * Belief after a reading, on a grid of heats (a colour says nothing a formula could take).
 *
 * By Bayes' rule; the prior is a normal with the band's width.
 */
export const beliefAfter = (before: OvenBelief, reading: Reading): OvenBelief => {
  const spread = Math.max(1, (before.high - before.low) / (2 * EIGHTY_PERCENT));
  const points = Array.from({ length: GRID.steps }, (_, index) => {
    const sigmas = GRID.sigmas * ((2 * index) / (GRID.steps - 1) - 1);
    const heat = kelvin(before.kelvin + sigmas * spread);
    return { heat, weight: density(sigmas) * likelihood(reading, heat) };
  });
  const all = points.reduce((sum, point) => sum + point.weight, 0);
  if (!(all > 1e-12)) return before; // the reading and the plan can't both be right: believe the plan
  const mean = points.reduce((sum, point) => sum + point.weight * point.heat, 0) / all;
  const square = points.reduce((sum, point) => sum + point.weight * (point.heat - mean) ** 2, 0);
  const half = EIGHTY_PERCENT * Math.sqrt(square / all);
  return { kelvin: kelvin(mean), low: kelvin(mean - half), high: kelvin(mean + half) };
};

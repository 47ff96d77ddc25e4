// Our answers to textbook-transients.json: the stiff stepper for what warms, the root search for what
// has settled. Source: cengel, bergman2011 chapter 5 (the equations, not the answers).

import { isNoRoot, rootOf } from '../../src/numerics/root.ts';
import { integrateStiff, type Rates } from '../../src/numerics/stiff.ts';
import { CELLS, conduction, middleOf } from './conduction.ts';
import table from './textbook-transients.json' with { type: 'json' };

type Inputs = Readonly<Record<string, number>>;

export interface TextbookCase {
  readonly name: string;
  readonly asked: string;
  readonly inputs: Inputs;
  readonly answer: number;
  readonly rounding: number;
  readonly where: string;
}

export const textbookCases: readonly TextbookCase[] = (
  table.rows as unknown as readonly (readonly [string, string, Inputs, number, number, string])[]
).map(([name, asked, inputs, answer, rounding, where]) => ({
  ...{ name, asked, inputs, answer, rounding, where },
}));

const of = (inputs: Inputs, key: string): number => inputs[key] ?? Number.NaN;

/** Ours, in the unit that the case asks for. */
export function textbookAnswer({ name, asked, inputs }: TextbookCase): number {
  if (name.startsWith('thermocouple')) return lumpedSeconds(inputs, 0.01);
  if (name.startsWith('silver')) return lumpedSeconds(inputs, shareLeft(inputs));
  if (name.startsWith('brass')) return plateMiddle(inputs);
  if (name.startsWith('egg')) return eggMinutes(inputs);
  if (name.startsWith('circuit')) return boardCelsius(inputs);
  const state = conducted(0, of(inputs, 'biot'), of(inputs, 'fourier'));
  return asked.includes('surface') ? surfaceOf(state, of(inputs, 'biot')) : middleOf(state);
}

const shareLeft = (inputs: Inputs) =>
  (of(inputs, 'wanted') - of(inputs, 'fluid')) / (of(inputs, 'start') - of(inputs, 'fluid'));

const stiff = (rates: Rates, cells: number, to: number, at?: readonly number[]) => {
  const run = integrateStiff({
    ...{ rates, from: 0, to, relativeTolerance: 1e-7, absoluteTolerance: 1e-8 },
    start: new Float64Array(cells).fill(1),
    ...(at === undefined ? {} : { at }),
    mostSteps: 5000,
  });
  if (run.status !== 'done') throw new RangeError(run.status);
  return run.states;
};

/** A ball as one store: its share of the start falls to `share` then [s]. */
function lumpedSeconds(inputs: Inputs, share: number): number {
  const perSecond =
    (6 * of(inputs, 'film')) /
    (of(inputs, 'density') * of(inputs, 'heat') * of(inputs, 'diameter'));
  const left = (seconds: number) =>
    stiff(
      (_, state, into) => {
        into[0] = -perSecond * state[0]!;
      },
      1,
      seconds,
    )[0]![0]!;
  return found((seconds) => left(seconds) - share, 1, 60);
}

const conducted = (shape: number, biot: number, fourier: number): Float64Array =>
  stiff(conduction(shape, biot), CELLS, fourier)[0]!;

/** The film in series with the outer half of the last cell. */
const surfaceOf = (state: Float64Array, biot: number): number =>
  state[CELLS - 1]! / (1 + biot / (2 * CELLS));

function plateMiddle(inputs: Inputs): number {
  const half = of(inputs, 'halfThickness');
  const biot = (of(inputs, 'film') * half) / of(inputs, 'conductivity');
  const fourier = (of(inputs, 'diffusivity') * of(inputs, 'seconds')) / half ** 2;
  const left = middleOf(conducted(0, biot, fourier));
  return of(inputs, 'fluid') + left * (of(inputs, 'start') - of(inputs, 'fluid'));
}

function eggMinutes(inputs: Inputs): number {
  const radius = of(inputs, 'diameter') / 2;
  const biot = (of(inputs, 'film') * radius) / of(inputs, 'conductivity');
  const share = shareLeft(inputs);
  const fourier = found((each) => middleOf(conducted(2, biot, each)) - share, 0.05, 0.6);
  return (fourier * radius ** 2) / of(inputs, 'diffusivity') / 60;
}

const STEFAN_BOLTZMANN = 5.670_374e-8;

function boardCelsius(inputs: Inputs): number {
  const lost = (kelvin: number) =>
    of(inputs, 'area') *
    (of(inputs, 'film') * (kelvin - of(inputs, 'fluid')) +
      of(inputs, 'emissivity') * STEFAN_BOLTZMANN * (kelvin ** 4 - of(inputs, 'around') ** 4));
  return (
    found((kelvin) => lost(kelvin) - of(inputs, 'watts'), 293, 400) - of(inputs, 'zeroCelsius')
  );
}

function found(rise: (at: number) => number, low: number, high: number): number {
  const root = rootOf(rise, { low, high, tolerance: 1e-6 });
  if (isNoRoot(root)) throw new RangeError(root.noRoot);
  return root;
}

// What does the oven settle at under a steady supply? Newton on the network, skin refreshed.
// Source: coalsOvenModelNotes. Used to search counts; the time run in run.ts has the last word.

import type { OvenBody } from './geometry.ts';
import type { FloorTouch } from './load.ts';
import {
  cavityKelvin,
  flowsAt,
  type IronState,
  type Moment,
  type Outside,
  type Supply,
  slopesAt,
  solveThree,
} from './network.ts';
import { skinLookup } from './skin-table.ts';

export interface SteadyCase {
  readonly body: OvenBody;
  readonly outside: Outside;
  readonly supply: Supply;
  readonly sinkWatts: number;
  readonly touch?: FloorTouch | undefined;
  /** A near answer, to start from. */
  readonly from?: IronState;
}

export interface SteadyOven {
  readonly iron: IronState;
  readonly ovenKelvin: number;
}

const MOST_ITERATIONS = 60;
const SETTLED_KELVIN = 1e-3;
const LONGEST_STEP_KELVIN = 80; // keeps Newton from leaping below the air

/** Temperatures at which all heat flows balance. Always ends: bounded iterations. */
export const steadyOven = (steady: SteadyCase): SteadyOven => {
  const skin = skinLookup(steady.body, steady.outside);
  let iron = steady.from ?? firstGuess(steady.outside);
  for (let iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
    const moment: Moment = { ...steady, skin: skin(iron.lid, iron.wall) };
    const flows = flowsAt(moment, iron);
    const step = solveThree(slopesAt(moment, iron), [
      -flows.intoLid,
      -flows.intoWall,
      -flows.intoFloor,
    ]);
    iron = stepped(iron, step);
    if (Math.max(...step.map(Math.abs)) < SETTLED_KELVIN) break;
  }
  return { iron, ovenKelvin: cavityKelvin(steady.body, iron, steady.sinkWatts) };
};

const firstGuess = (outside: Outside): IronState => {
  const warm = outside.airKelvin + 120;
  return { lid: warm, wall: warm, floor: warm };
};

const stepped = (iron: IronState, step: readonly [number, number, number]): IronState => ({
  lid: iron.lid + bounded(step[0]),
  wall: iron.wall + bounded(step[1]),
  floor: iron.floor + bounded(step[2]),
});

const bounded = (step: number) =>
  Math.max(-LONGEST_STEP_KELVIN, Math.min(LONGEST_STEP_KELVIN, step));

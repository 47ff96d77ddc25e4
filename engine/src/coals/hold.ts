// How many coals hold a wanted heat? The steady network turned round.
// Source: coalsOvenModelNotes 5.2. Counts here are fractions of mid-life coals; people get wholes.

import type { OvenBody } from './geometry.ts';
import type { FloorTouch } from './load.ts';
import type { IronState, Outside } from './network.ts';
import { openMouthWatts } from './run.ts';
import { type SteadyCase, type SteadyOven, steadyOven } from './steady.ts';

export interface HoldCase {
  readonly body: OvenBody;
  readonly outside: Outside;
  readonly strengthAbove: number;
  readonly strengthBelow: number;
  /** Share of the coals that lies on the lid, 0 … 1. */
  readonly shareAbove: number;
  readonly sinkWatts: number;
  /** What lies on the floor and cools it; left out, nothing does. */
  readonly touch?: FloorTouch | undefined;
  /** What is held: the inside of the oven, or the floor where the lid is off. */
  readonly targetKelvin: number;
  readonly isOpen?: boolean;
}

const MOST_COALS = 400; // far past what any lid carries: a wish above it can't be met
const MOST_TRIES = 40;
const CLOSE_KELVIN = 0.02;

/** Cavity (lid off: floor) temperature that a number of mid-life coals settles at. */
export const heldKelvin = (
  hold: Omit<HoldCase, 'targetKelvin'>,
  coals: number,
  from?: IronState,
): { readonly ovenKelvin: number; readonly iron: IronState } => {
  const above = coals * hold.shareAbove;
  const below = coals - above;
  const supply = {
    above: above * hold.strengthAbove,
    below: below * hold.strengthBelow,
    covering: above,
  };
  const { body, outside, sinkWatts, touch } = hold;
  if (hold.isOpen) return openFloor({ body, outside, sinkWatts, supply });
  return steadyOven({ body, outside, sinkWatts, touch, supply, ...(from ? { from } : {}) });
};

const OPEN_ROUNDS = 12;

// What leaves the mouth depends on the heat inside and the other way round: half-way each round.
const openFloor = (steady: SteadyCase): SteadyOven => {
  let inside = steadyOven(steady);
  let openWatts = 0;
  for (let round = 0; round < OPEN_ROUNDS; round++) {
    openWatts = (openWatts + openMouthWatts(steady, inside.ovenKelvin)) / 2;
    inside = steadyOven({ ...steady, sinkWatts: steady.sinkWatts + openWatts, from: inside.iron });
  }
  return { iron: inside.iron, ovenKelvin: inside.iron.floor };
};

/** Mid-life coals that hold the target; 0 where none are needed, Infinity where none suffice. */
export const coalsToHold = (hold: HoldCase): number => {
  const missAt = (coals: number) => heldKelvin(hold, coals).ovenKelvin - hold.targetKelvin;
  let low = { coals: 0, miss: missAt(0) };
  if (low.miss >= 0) return 0;
  let high = { coals: 30, miss: missAt(30) };
  while (high.miss < 0 && high.coals < MOST_COALS) {
    low = high;
    high = { coals: high.coals * 2, miss: missAt(high.coals * 2) };
  }
  return high.miss < 0 ? Number.POSITIVE_INFINITY : crossing(missAt, low, high);
};

interface Miss {
  readonly coals: number;
  readonly miss: number;
}

// Illinois false position: bracketed, so it always ends inside. The general root finder was tried: it
// asks for both ends again and settles on coals, not kelvin, and took a third longer.
const crossing = (missAt: (coals: number) => number, from: Miss, to: Miss): number => {
  let [low, high] = [from, to];
  for (let attempt = 0; attempt < MOST_TRIES; attempt++) {
    const coals = high.coals - (high.miss * (high.coals - low.coals)) / (high.miss - low.miss);
    const found = { coals, miss: missAt(coals) };
    if (Math.abs(found.miss) < CLOSE_KELVIN) return coals;
    low = found.miss * high.miss < 0 ? high : { coals: low.coals, miss: low.miss / 2 };
    high = found;
  }
  return high.coals;
};

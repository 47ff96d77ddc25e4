// One step of the oven in time: iron, coals and load together.
// Source: verwer1999 (ROS2: L-stable, second order for any approximate Jacobian).
// Why not the general stiff solver: three lumps with a known Jacobian cost a tenth of it, and every
// whole minute is wanted anyway; run.test.ts holds it against a run with 1-second steps.

import type { Joules, Kelvin } from '../quantity/unit.ts';
import type { OvenBody } from './geometry.ts';
import type { Load, LoadState } from './load.ts';
import {
  cavityKelvin,
  type Flows,
  flowsAt,
  type IronState,
  type Moment,
  type Outside,
  type Skin,
  type Supply,
  skinAt,
  slopesAt,
  solveThree,
} from './network.ts';

const GAMMA = 1 - Math.SQRT1_2; // verwer1999 eq. 2.7: L-stable, smaller error constant

export interface StepSetting {
  readonly body: OvenBody;
  readonly outside: Outside;
  /** Undefined while the oven is empty. */
  readonly load: Load | undefined;
}

export interface StepState {
  readonly iron: IronState;
  readonly load: LoadState;
  /** Coefficients of the step before; a start has none. */
  readonly skin?: Skin | undefined;
}

export interface StepCase {
  readonly seconds: number;
  readonly supplyBefore: Supply;
  readonly supplyAfter: Supply;
  /** Heat that leaves through the open mouth [W]; 0 with the lid on. */
  readonly openWatts: number;
}

/**
 * Coefficients at the middle of the step, from those of the step before: one costly evaluation a
 * step, and second order all the same.
 */
const skinAtMidStep = (
  setting: StepSetting,
  state: StepState,
  step: StepCase,
  sinkWatts: number,
): Skin => {
  const { body, outside } = setting;
  const skin = state.skin ?? skinAt(body, state.iron, outside);
  const moment: Moment = { body, outside, supply: step.supplyBefore, sinkWatts, skin };
  const solve = stageSolver(body, slopesAt(moment, state.iron), step.seconds);
  const rate = solve(rates(body, flowsAt(moment, state.iron)));
  return skinAt(body, moved(state.iron, rate, step.seconds / 2), outside);
};

/** New state and the heat that went each way [J]. */
export interface Stepped extends StepState {
  readonly givenJoules: number;
  readonly lossJoules: number;
  readonly loadJoules: number;
}

/** A load whose intake changes less than this in a step is not worth a second pass [W]. */
const STEADY_INTAKE_WATTS = 0.3;

/** The oven after `seconds`. */
export const stepOven = (setting: StepSetting, state: StepState, step: StepCase): Stepped => {
  const first = loadWatts(setting, state, step.openWatts);
  const skin = skinAtMidStep(setting, state, step, first + step.openWatts);
  const sink = (watts: number) => ({ skin, sinkWatts: watts + step.openWatts });
  const guess = ironAfterStep(setting, state.iron, step, sink(first));
  const guessLoad = loadAfter(setting, state.load, first * step.seconds);
  const last = loadWatts(setting, { iron: guess.iron, load: guessLoad }, step.openWatts);
  const isSteady = Math.abs(last - first) < STEADY_INTAKE_WATTS;
  const taken = isSteady ? first : (first + last) / 2;
  const ended = isSteady ? guess : ironAfterStep(setting, state.iron, step, sink(taken));
  return {
    iron: ended.iron,
    skin,
    load: isSteady ? guessLoad : loadAfter(setting, state.load, taken * step.seconds),
    givenJoules: ended.givenJoules,
    lossJoules: ended.lossJoules + step.openWatts * step.seconds,
    loadJoules: taken * step.seconds,
  };
};

const loadAfter = (setting: StepSetting, load: LoadState, joules: number): LoadState =>
  setting.load ? setting.load.after(load, joules as Joules) : load;

const MOST_TRIES = 20;
const CLOSE_WATTS = 1e-3;

/**
 * Heat into the load when oven and load agree about it: the more it takes, the cooler the cavity.
 * False position (Illinois) between nothing and what it would take of an undisturbed cavity; runs
 * several times in every step, two or three rounds each, so it makes no object and asks no end twice
 * as the general root finder does.
 */
export const loadWatts = (setting: StepSetting, state: StepState, openWatts: number): number => {
  const { load, body } = setting;
  if (!load) return 0;
  const takes = (watts: number) =>
    load.heatInto(state.load, cavityKelvin(body, state.iron, watts + openWatts) as Kelvin);
  const most = takes(0);
  if (Math.abs(most) < CLOSE_WATTS) return most;
  return agreed(takes, most);
};

const agreed = (takes: (watts: number) => number, most: number): number => {
  let [low, high] = [0, most];
  let [lowMiss, highMiss] = [-most, most - takes(most)];
  for (let attempt = 0; attempt < MOST_TRIES; attempt++) {
    if (Math.abs(highMiss) < CLOSE_WATTS) return high;
    const middle = high - (highMiss * (high - low)) / (highMiss - lowMiss);
    const miss = middle - takes(middle);
    if (miss * highMiss < 0) [low, lowMiss] = [high, highMiss];
    else lowMiss /= 2;
    [high, highMiss] = [middle, miss];
  }
  return high;
};

interface IronStep {
  readonly iron: IronState;
  readonly givenJoules: number;
  readonly lossJoules: number;
}

type Triple = readonly [number, number, number];

const ironAfterStep = (
  setting: StepSetting,
  iron: IronState,
  step: StepCase,
  { skin, sinkWatts }: { readonly skin: Skin; readonly sinkWatts: number },
): IronStep => {
  const { body, outside } = setting;
  const momentOf = (supply: Supply): Moment => ({ body, outside, supply, sinkWatts, skin });
  const before = momentOf(step.supplyBefore);
  const flowsBefore = flowsAt(before, iron);
  const solve = stageSolver(body, slopesAt(before, iron), step.seconds);
  const one = solve(rates(body, flowsBefore)); // verwer1999 eq. 2.6, first stage
  const ahead = moved(iron, one, step.seconds);
  const flowsAhead = flowsAt(momentOf(step.supplyAfter), ahead);
  const push = rates(body, flowsAhead);
  const two = solve([push[0] - 2 * one[0], push[1] - 2 * one[1], push[2] - 2 * one[2]]);
  const ended = moved(moved(iron, one, 1.5 * step.seconds), two, 0.5 * step.seconds);
  const flowsEnded = flowsAt(momentOf(step.supplyAfter), ended);
  const half = step.seconds / 2; // trapezium: its own quadrature, so the balance tests the step
  return {
    iron: ended,
    givenJoules: half * (given(flowsBefore) + given(flowsEnded)),
    lossJoules: half * (lost(flowsBefore) + lost(flowsEnded)),
  };
};

const given = (flows: Flows) => flows.fromAbove + flows.fromBelow;
const lost = (flows: Flows) => flows.lidLoss + flows.wallLoss;

const rates = (body: OvenBody, flows: Flows): Triple => [
  flows.intoLid / body.lidCapacity,
  flows.intoWall / body.wallCapacity,
  flows.intoFloor / body.floorCapacity,
];

// Solves (1 - gamma dt J) k = right, with J the slopes over the heat capacities.
const stageSolver = (body: OvenBody, slopes: ReturnType<typeof slopesAt>, seconds: number) => {
  const factor = -GAMMA * seconds;
  const lid = factor / body.lidCapacity;
  const wall = factor / body.wallCapacity;
  const floor = factor / body.floorCapacity;
  const [a, b, c, d, e, f, g, h, i] = slopes;
  return (right: Triple): Triple =>
    solveThree(
      [
        1 + lid * a,
        lid * b,
        lid * c,
        wall * d,
        1 + wall * e,
        wall * f,
        floor * g,
        floor * h,
        1 + floor * i,
      ],
      right,
    );
};

const moved = (iron: IronState, rate: Triple, seconds: number): IronState => ({
  lid: iron.lid + rate[0] * seconds,
  wall: iron.wall + rate[1] * seconds,
  floor: iron.floor + rate[2] * seconds,
});

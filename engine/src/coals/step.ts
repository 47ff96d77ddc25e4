// One step of the oven in time: iron, coals and load together.
// Source: verwer1999 (ROS2: L-stable, second order for any approximate Jacobian).
// Why not the general stiff solver: the planner wants every whole minute, and three lumps with a known
// Jacobian then cost a third of it; oven-course.test.ts holds this step against that solver.

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
  type Supply,
  slopesAt,
  solveThree,
} from './network.ts';
import { type SkinLookup, skinLookup } from './skin-table.ts';

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
}

export interface StepCase {
  readonly seconds: number;
  readonly supplyBefore: Supply;
  readonly supplyAfter: Supply;
  /** Heat that leaves through the open mouth [W]; 0 with the lid on. */
  readonly openWatts: number;
}

/** New state and the heat that went each way [J]. */
export interface Stepped extends StepState {
  readonly givenJoules: number;
  readonly lossJoules: number;
  readonly loadJoules: number;
  /** Difference to the embedded method of first order, the worst of the three [K]. */
  readonly differenceKelvin: number;
}

/** A load whose intake changes less than this in a step is not worth a second pass [W]. */
const STEADY_INTAKE_WATTS = 0.3;

/** The oven after `seconds`. */
export const stepOven = (setting: StepSetting, state: StepState, step: StepCase): Stepped => {
  const first = loadWatts(setting, state, step.openWatts);
  const skin = skinLookup(setting.body, setting.outside);
  const sink = (watts: number) => ({ skin, sinkWatts: watts + step.openWatts });
  const guess = ironAfterStep(setting, state.iron, step, sink(first));
  const guessLoad = loadAfter(setting, state.load, first * step.seconds);
  const last = loadWatts(setting, { iron: guess.iron, load: guessLoad }, step.openWatts);
  const isSteady = Math.abs(last - first) < STEADY_INTAKE_WATTS;
  const taken = isSteady ? first : (first + last) / 2;
  const ended = isSteady ? guess : ironAfterStep(setting, state.iron, step, sink(taken));
  return {
    iron: ended.iron,
    load: isSteady ? guessLoad : loadAfter(setting, state.load, taken * step.seconds),
    givenJoules: ended.givenJoules,
    lossJoules: ended.lossJoules + step.openWatts * step.seconds,
    loadJoules: taken * step.seconds,
    differenceKelvin: ended.differenceKelvin,
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
export const loadWatts = (
  setting: StepSetting,
  state: StepState,
  openWatts: number,
  close = CLOSE_WATTS,
): number => {
  const { load, body } = setting;
  if (!load) return 0;
  const takes = (watts: number) =>
    load.heatInto(state.load, cavityKelvin(body, state.iron, watts + openWatts) as Kelvin);
  const most = takes(0);
  if (Math.abs(most) < close) return most;
  return agreed(takes, most, close);
};

const agreed = (takes: (watts: number) => number, most: number, close: number): number => {
  let [low, high] = [0, most];
  let [lowMiss, highMiss] = [-most, most - takes(most)];
  for (let attempt = 0; attempt < MOST_TRIES; attempt++) {
    if (Math.abs(highMiss) < close) return high;
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
  readonly differenceKelvin: number;
}

type Triple = readonly [number, number, number];

const ironAfterStep = (
  setting: StepSetting,
  iron: IronState,
  step: StepCase,
  { skin, sinkWatts }: { readonly skin: SkinLookup; readonly sinkWatts: number },
): IronStep => {
  const { body, outside } = setting;
  const momentOf = (supply: Supply, at: IronState): Moment => ({
    body,
    outside,
    supply,
    sinkWatts,
    skin: skin(at.lid, at.wall),
  });
  const before = momentOf(step.supplyBefore, iron);
  const flowsBefore = flowsAt(before, iron);
  const solve = stageSolver(body, slopesAt(before, iron), step.seconds);
  const one = solve(rates(body, flowsBefore)); // verwer1999 eq. 2.6, first stage
  const ahead = moved(iron, one, step.seconds);
  const flowsAhead = flowsAt(momentOf(step.supplyAfter, ahead), ahead);
  const push = rates(body, flowsAhead);
  const two = solve([push[0] - 2 * one[0], push[1] - 2 * one[1], push[2] - 2 * one[2]]);
  const ended = moved(moved(iron, one, 1.5 * step.seconds), two, 0.5 * step.seconds);
  const flowsEnded = flowsAt(momentOf(step.supplyAfter, ended), ended);
  const half = step.seconds / 2; // trapezium: its own quadrature, so the balance tests the step
  return {
    iron: ended,
    givenJoules: half * (given(flowsBefore) + given(flowsEnded)),
    lossJoules: half * (lost(flowsBefore) + lost(flowsEnded)),
    // verwer1999: y + h k1 is the embedded first order; this is what second order adds to it
    differenceKelvin:
      half *
      Math.max(Math.abs(one[0] + two[0]), Math.abs(one[1] + two[1]), Math.abs(one[2] + two[2])),
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

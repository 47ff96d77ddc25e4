// One step of the oven in time: iron, coals and load together.
// Source: verwer1999 (ROS2: L-stable, second order for any approximate Jacobian).
// Why not the general stiff solver: the planner wants every whole minute, and three lumps with a known
// Jacobian then cost a third of it; oven-course.test.ts holds this step against that solver.

import type { Joules, Kelvin } from '../quantity/unit.ts';
import type { OvenBody } from './geometry.ts';
import type { FloorTouch, Load, LoadState } from './load.ts';
import {
  cavityKelvin,
  type Flows,
  flowsAt,
  type IronState,
  type Matrix,
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
  const sinkWatts = first + step.openWatts;
  const touch = setting.load?.fromFloor?.(state.load);
  const guess = ironAfterStep(setting, state.iron, step, { skin, sinkWatts, touch });
  const guessLoad = loadAfter(setting, state.load, first * step.seconds + guess.touchJoules);
  const last = loadWatts(setting, { iron: guess.iron, load: guessLoad }, step.openWatts);
  const touched = meanTouch(touch, setting.load?.fromFloor?.(guessLoad));
  const change = Math.abs(last - first) + touchChange(touch, touched);
  const isSteady = change < STEADY_INTAKE_WATTS;
  const taken = isSteady ? first : (first + last) / 2;
  const again = { skin, sinkWatts: taken + step.openWatts, touch: touched };
  const ended = isSteady ? guess : ironAfterStep(setting, state.iron, step, again);
  return {
    iron: ended.iron,
    load: isSteady
      ? guessLoad
      : loadAfter(setting, state.load, taken * step.seconds + ended.touchJoules),
    givenJoules: ended.givenJoules,
    lossJoules: ended.lossJoules + step.openWatts * step.seconds,
    loadJoules: taken * step.seconds + ended.touchJoules,
    differenceKelvin: ended.differenceKelvin,
  };
};

/** What lies on the floor warms as the step goes: half way between its ends. */
const meanTouch = (
  before: FloorTouch | undefined,
  after: FloorTouch | undefined,
): FloorTouch | undefined =>
  before &&
  after && {
    wattsPerKelvin: (before.wattsPerKelvin + after.wattsPerKelvin) / 2,
    kelvin: (before.kelvin + after.kelvin) / 2,
  };

const touchChange = (before: FloorTouch | undefined, mean: FloorTouch | undefined): number =>
  before && mean ? 2 * before.wattsPerKelvin * Math.abs(mean.kelvin - before.kelvin) : 0;

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
  if (!setting.load) return 0;
  const most = takenWatts(setting, state, openWatts);
  if (Math.abs(most) < close) return most;
  let low = 0;
  let lowMiss = -most;
  let high = most;
  let highMiss = most - takenWatts(setting, state, most + openWatts);
  for (let attempt = 0; attempt < MOST_TRIES && Math.abs(highMiss) >= close; attempt++) {
    const middle = high - (highMiss * (high - low)) / (highMiss - lowMiss);
    const miss = middle - takenWatts(setting, state, middle + openWatts);
    if (miss * highMiss < 0) {
      low = high;
      lowMiss = highMiss;
    } else lowMiss /= 2;
    high = middle;
    highMiss = miss;
  }
  return high;
};

/** What the load takes of a cavity that loses `sinkWatts` in all. */
const takenWatts = (setting: StepSetting, state: StepState, sinkWatts: number): number =>
  setting.load
    ? setting.load.heatInto(state.load, cavityKelvin(setting.body, state.iron, sinkWatts) as Kelvin)
    : 0;

interface IronStep {
  readonly iron: IronState;
  readonly givenJoules: number;
  readonly lossJoules: number;
  /** From the floor straight into what lies on it. */
  readonly touchJoules: number;
  readonly differenceKelvin: number;
}

type Triple = readonly [number, number, number];

interface Sink {
  readonly skin: SkinLookup;
  readonly sinkWatts: number;
  readonly touch: FloorTouch | undefined;
}

const momentAt = (setting: StepSetting, supply: Supply, sink: Sink, at: IronState): Moment => ({
  body: setting.body,
  outside: setting.outside,
  supply,
  sinkWatts: sink.sinkWatts,
  touch: sink.touch,
  skin: sink.skin(at.lid, at.wall),
});

const ironAfterStep = (
  setting: StepSetting,
  iron: IronState,
  step: StepCase,
  sink: Sink,
): IronStep => {
  const { body } = setting;
  const { seconds, supplyBefore, supplyAfter } = step;
  const before = momentAt(setting, supplyBefore, sink, iron);
  const flowsBefore = flowsAt(before, iron);
  const matrix = stageMatrix(body, slopesAt(before, iron), seconds);
  const one = solveThree(matrix, rates(body, flowsBefore)); // verwer1999 eq. 2.6, first stage
  const ahead = moved(iron, one, seconds);
  const push = rates(body, flowsAt(momentAt(setting, supplyAfter, sink, ahead), ahead));
  const two = solveThree(matrix, [
    push[0] - 2 * one[0],
    push[1] - 2 * one[1],
    push[2] - 2 * one[2],
  ]);
  const ended = moved(moved(iron, one, 1.5 * seconds), two, 0.5 * seconds);
  const flowsEnded = flowsAt(momentAt(setting, supplyAfter, sink, ended), ended);
  const half = seconds / 2; // trapezium: its own quadrature, so the balance tests the step
  return {
    iron: ended,
    givenJoules: half * (given(flowsBefore) + given(flowsEnded)),
    lossJoules: half * (lost(flowsBefore) + lost(flowsEnded)),
    touchJoules: half * (flowsBefore.floorToLoad + flowsEnded.floorToLoad),
    // verwer1999: y + h k1 is the embedded first order; this is what second order adds to it
    differenceKelvin: half * largest(one[0] + two[0], one[1] + two[1], one[2] + two[2]),
  };
};

const largest = (one: number, two: number, three: number) =>
  Math.max(Math.abs(one), Math.abs(two), Math.abs(three));

const given = (flows: Flows) => flows.fromAbove + flows.fromBelow;
const lost = (flows: Flows) => flows.lidLoss + flows.wallLoss;

const rates = (body: OvenBody, flows: Flows): Triple => [
  flows.intoLid / body.lidCapacity,
  flows.intoWall / body.wallCapacity,
  flows.intoFloor / body.floorCapacity,
];

/** 1 - gamma dt J, with J the slopes over the heat capacities. */
const stageMatrix = (body: OvenBody, slopes: Matrix, seconds: number): Matrix => {
  const factor = -GAMMA * seconds;
  const lid = factor / body.lidCapacity;
  const wall = factor / body.wallCapacity;
  const floor = factor / body.floorCapacity;
  const [a, b, c, d, e, f, g, h, i] = slopes;
  return [
    1 + lid * a,
    lid * b,
    lid * c,
    wall * d,
    1 + wall * e,
    wall * f,
    floor * g,
    floor * h,
    1 + floor * i,
  ];
};

const moved = (iron: IronState, rate: Triple, seconds: number): IronState => ({
  lid: iron.lid + rate[0] * seconds,
  wall: iron.wall + rate[1] * seconds,
  floor: iron.floor + rate[2] * seconds,
});

// One stretch of an oven's course in which nobody does anything: the network as rates for the stiff
// stepper, and its heat balance by a quadrature of its own.
// Sources: network.ts (flows), numerics/stiff.ts (method). See oven-course.ts.

import { integrateStiff, type StiffSolution } from '../numerics/stiff.ts';
import type { Joules } from '../quantity/unit.ts';
import type { LoadState } from './load.ts';
import { cavityKelvin, type Flows, flowsAt, type IronState } from './network.ts';
import {
  aged,
  COVERING_BURNT,
  type OvenMoment,
  openMouthWatts,
  type RunSetting,
  type Strengths,
  strengthsOf,
  supplyOf,
} from './run.ts';
import { type SkinLookup, skinLookup } from './skin-table.ts';
import { loadWatts, type StepSetting } from './step.ts';

/** Everything that a stretch needs; it starts from `moment`. */
export interface CourseSpan {
  readonly setting: RunSetting;
  readonly moment: OvenMoment;
  /** The lid is off until this minute. */
  readonly openUntil: number;
  readonly relativeTolerance: number;
  readonly absoluteKelvin: number;
  readonly mostSteps: number;
}

export interface SpanEnd {
  /** The wanted moments, without the last. */
  readonly moments: readonly OvenMoment[];
  readonly last: OvenMoment;
  readonly steps: number;
  readonly status: StiffSolution['status'];
}

/**
 * The oven up to `edge`, with the moments wanted on the way; or, where `mayCut`, up to where its load
 * stops taking heat and gives it back: what it then is depends on the way it came.
 */
export const spanRun = (span: CourseSpan, { wanted, edge, mayCut }: SpanWish): SpanEnd => {
  const from = span.moment.minute;
  const work = workOf(span);
  const stops = ends(span, (edge - from) * 60);
  const near = stops.flatMap((stop) => BEFORE_END_SECONDS.map((before) => stop - before));
  const whole = [
    0,
    ...near.filter((time) => time > 0),
    ...stops,
    ...wanted.map((minute) => (minute - from) * 60),
    (edge - from) * 60,
  ];
  const at = withMiddles(distinct(whole));
  const { iron } = span.moment;
  const run = integrateStiff({
    rates: (seconds, state, into) => writeRates(work, seconds, state, into),
    start: [iron.lid, iron.wall, iron.floor, 0],
    from: 0,
    to: (edge - from) * 60,
    at,
    stops,
    relativeTolerance: span.relativeTolerance,
    absoluteTolerance: span.absoluteKelvin,
    mostSteps: span.mostSteps,
  });
  const all = run.times.map((seconds, index) => nowAt(work, seconds, run.states[index]!));
  const cut = mayCut ? all.findIndex(givesBackFrom) : -1;
  const moments = momentsOf(work, run, all).slice(0, cut < 0 ? undefined : cut / 2 + 1);
  const isWanted = (moment: OvenMoment) =>
    wanted.some((minute) => Math.abs(minute - moment.minute) < 1e-9);
  const last = { ...(moments.at(-1) ?? span.moment) };
  return {
    moments: moments.slice(0, -1).filter(isWanted),
    last: run.status === 'done' && cut < 0 ? { ...last, minute: edge } : last,
    steps: run.steps,
    status: run.status,
  };
};

export interface SpanWish {
  readonly wanted: readonly number[];
  readonly edge: number;
  readonly mayCut: boolean;
}

/** A whole sample, not a middle, at which the load takes nothing more and took before. */
const givesBackFrom = ({ loadWatts: taken }: Now, index: number, all: readonly Now[]): boolean =>
  index >= 2 && index % 2 === 0 && taken < 0 && all[index - 2]!.loadWatts >= 0;

const SAME_SECONDS = 1e-6;

const distinct = (times: readonly number[]): readonly number[] => {
  const rising = [...times].sort((one, other) => one - other);
  return rising.filter((time, index) => {
    const next = rising[index + 1]; // of two that are alike the later stays: it may be the end
    return next === undefined || next - time > SAME_SECONDS;
  });
};

/** A coal ends with a square root, which Simpson's rule needs in short pieces. */
const BEFORE_END_SECONDS = [20, 5, 1];
const LONGEST_SAMPLE_SECONDS = 60; // Simpson over a minute is good to 1e-5 of the heat, see tests

/** Every stretch cut to a minute at most, with its middle: what Simpson's rule wants. */
const withMiddles = (times: readonly number[]): readonly number[] => {
  const all = [times[0] ?? 0];
  for (const [index, to] of times.entries()) {
    const from = times[index - 1];
    if (from === undefined) continue;
    const parts = Math.max(1, Math.ceil((to - from) / LONGEST_SAMPLE_SECONDS - 1e-9));
    for (let half = 1; half < 2 * parts; half += 1)
      all.push(from + ((to - from) * half) / (2 * parts));
    all.push(to);
  }
  return all;
};

/** When coals turn to ash or begin to bare the lid: their heat has a corner there. */
const ends = ({ setting, moment }: CourseSpan, seconds: number): readonly number[] => {
  const corners = [1, 1 - COVERING_BURNT];
  const times = moment.coals.flatMap((group) =>
    corners.map((burnt) => (burnt - group.burnt) * setting.burnoutMinutes * 60),
  );
  return distinct(times.filter((time) => SAME_SECONDS < time && time < seconds - SAME_SECONDS));
};

interface Work {
  readonly span: CourseSpan;
  readonly step: StepSetting;
  readonly strengths: Strengths;
  readonly skin: SkinLookup;
  readonly isOpen: boolean;
}

const workOf = (span: CourseSpan): Work => {
  const { setting, moment } = span;
  const load = moment.load === undefined ? undefined : setting.load;
  return {
    span,
    step: { body: setting.body, outside: setting.outside, load },
    strengths: strengthsOf(setting),
    skin: skinLookup(setting.body, setting.outside),
    isOpen: setting.isOpen === true || moment.minute < span.openUntil,
  };
};

/** The load's heat is counted in this many joules, so that one tolerance fits iron and load. */
const LOAD_JOULES = 2500; // a kilogram of dough warmed by about a kelvin
/** Tight, since slopes are taken by tiny differences. */
const AGREED_WATTS = 1e-9;

interface Now {
  readonly flows: Flows;
  readonly loadWatts: number;
  readonly openWatts: number;
  readonly load: LoadState;
  readonly iron: IronState;
}

const nowAt = (work: Work, seconds: number, state: Float64Array): Now => {
  const { setting, moment } = work.span;
  const iron = { lid: state[0]!, wall: state[1]!, floor: state[2]! };
  const joules = (state[3]! * LOAD_JOULES) as Joules;
  const load = work.step.load ? work.step.load.after(moment.load ?? [], joules) : [];
  const openWatts = work.isOpen ? openNow(work, iron, load) : 0;
  const taken = loadWatts(work.step, { iron, load }, openWatts, AGREED_WATTS);
  const flows = flowsAt(
    {
      body: setting.body,
      outside: setting.outside,
      supply: supplyOf(moment.coals, work.strengths, seconds / 60 / setting.burnoutMinutes),
      skin: work.skin(iron.lid, iron.wall),
      sinkWatts: taken + openWatts,
      touch: work.step.load?.fromFloor?.(load),
    },
    iron,
  );
  return { flows, loadWatts: taken, openWatts, load, iron };
};

const openNow = ({ span, step }: Work, iron: IronState, load: LoadState): number => {
  const closed = loadWatts(step, { iron, load }, 0, AGREED_WATTS);
  return openMouthWatts(span.setting, cavityKelvin(step.body, iron, closed));
};

const writeRates = (work: Work, seconds: number, state: Float64Array, into: Float64Array) => {
  const { body } = work.step;
  const { flows, loadWatts: taken } = nowAt(work, seconds, state);
  into[0] = flows.intoLid / body.lidCapacity;
  into[1] = flows.intoWall / body.wallCapacity;
  into[2] = flows.intoFloor / body.floorCapacity;
  into[3] = (taken + flows.floorToLoad) / LOAD_JOULES;
};

/** A moment at each whole sample; the middles only serve the balance. */
const momentsOf = (work: Work, run: StiffSolution, all: readonly Now[]): readonly OvenMoment[] => {
  const { setting, moment: start } = work.span;
  const moments: OvenMoment[] = [];
  let { givenJoules, lossJoules } = start;
  for (let index = 0; index < all.length; index += 2) {
    const now = all[index]!;
    const seconds = run.times[index]!;
    if (index >= 2) {
      const [before, middle] = [all[index - 2]!, all[index - 1]!];
      const sixth = (seconds - run.times[index - 2]!) / 6; // Simpson
      givenJoules += sixth * (given(before) + 4 * given(middle) + given(now));
      lossJoules += sixth * (lost(before) + 4 * lost(middle) + lost(now));
    }
    moments.push({
      minute: start.minute + seconds / 60,
      iron: now.iron,
      coals: aged(start.coals, seconds / 60 / setting.burnoutMinutes),
      load: work.step.load ? now.load : undefined,
      ovenKelvin: setting.isOpen
        ? now.iron.floor
        : cavityKelvin(work.step.body, now.iron, now.loadWatts),
      givenJoules,
      lossJoules,
      loadJoules: start.loadJoules + run.states[index]![3]! * LOAD_JOULES,
    });
  }
  return moments;
};

const given = ({ flows }: Now) => flows.fromAbove + flows.fromBelow;
const lost = ({ flows, openWatts }: Now) => flows.lidLoss + flows.wallLoss + openWatts;

// The oven minute by minute: coals age, iron warms, the load takes heat, things happen.
// Sources: network.ts, burn.ts. A moment is plain data, so that any minute can be a start.

import { ASH_STRENGTH, meanStrength, strengthAt } from './burn.ts';
import type { OvenBody } from './geometry.ts';
import type { Load, LoadState } from './load.ts';
import { cavityKelvin, type IronState, type Outside, type Supply } from './network.ts';
import { parameter, STEFAN_BOLTZMANN } from './parameters.ts';
import { loadWatts, stepOven } from './step.ts';

/** Coals of one age in one place. */
export interface CoalGroup {
  readonly place: 'above' | 'below';
  readonly count: number;
  /** Part of its burning time that is over; 1 = ash. */
  readonly burnt: number;
  /** True once its ash has been knocked off. */
  readonly isClear?: boolean;
  /** Where round the oven they lie, clockwise from the handle [rad]; all round where not said. */
  readonly arc?: { readonly from: number; readonly to: number };
}

/** What stays the same through a run. */
export interface RunSetting {
  readonly body: OvenBody;
  readonly outside: Outside;
  readonly load: Load;
  /** From lighting to ash, here. */
  readonly burnoutMinutes: number;
  /** Delivered heat of one piece beside the chart's briquette of equal age. */
  readonly strengthAbove: number;
  readonly strengthBelow: number;
  /** Least steps of the integrator in a minute; one where not said. */
  readonly stepsPerMinute?: number;
  /** What a coal delivers under its own ash, beside one that was knocked clear; 1 where not said. */
  readonly ashStrength?: number;
  /** The lid stays off, as over a fry: `ovenKelvin` of its moments is then its floor. */
  readonly isOpen?: boolean;
}

/** Everything about one moment; minutes since coals on. */
export interface OvenMoment {
  readonly minute: number;
  readonly iron: IronState;
  readonly coals: readonly CoalGroup[];
  /** Undefined while the oven is empty. */
  readonly load: LoadState | undefined;
  readonly ovenKelvin: number;
  readonly givenJoules: number;
  readonly lossJoules: number;
  readonly loadJoules: number;
}

export interface StartOfRun {
  readonly ironKelvin: number;
  readonly coals: readonly CoalGroup[];
}

export const startMoment = (start: StartOfRun): OvenMoment => ({
  minute: 0,
  iron: { lid: start.ironKelvin, wall: start.ironKelvin, floor: start.ironKelvin },
  coals: start.coals,
  load: undefined,
  ovenKelvin: start.ironKelvin,
  givenJoules: 0,
  lossJoules: 0,
  loadJoules: 0,
});

export const withLoadIn = (moment: OvenMoment, load: Load): OvenMoment => ({
  ...moment,
  load: load.start,
});

export const withCoals = (moment: OvenMoment, more: readonly CoalGroup[]): OvenMoment => ({
  ...moment,
  coals: [...moment.coals, ...more.filter((group) => group.count > 0)],
});

/** Coals lie spent below this strength: they no longer cover the lid as live ones do. */
export const COVERING_BURNT = 0.5;

/** What one piece delivers beside the chart's of equal age. */
export interface Strengths {
  readonly above: number;
  readonly below: number;
  readonly underAsh: number;
}

const FULL: Strengths = { above: 1, below: 1, underAsh: ASH_STRENGTH };

export const strengthsOf = (setting: RunSetting): Strengths => ({
  above: setting.strengthAbove,
  below: setting.strengthBelow,
  underAsh: setting.ashStrength ?? ASH_STRENGTH,
});

/** Heat on offer from all coals, as mid-life chart briquettes; `older` counts in burning times. */
export const supplyOf = (
  coals: readonly CoalGroup[],
  strengths: Strengths = FULL,
  older = 0,
): Supply => {
  let above = 0;
  let below = 0;
  let covering = 0;
  for (const group of coals) {
    const burnt = group.burnt + older;
    const strength = group.count * strengthAt(burnt) * (group.isClear ? 1 : strengths.underAsh);
    if (group.place === 'below') below += strength * strengths.below;
    else {
      above += strength * strengths.above;
      covering += group.count * Math.max(0, Math.min(1, (1 - burnt) / COVERING_BURNT));
    }
  }
  return { above, below, covering };
};

/**
 * Heat on offer at the end of a stretch, drawn as a straight line whose mean is the true one: coals
 * end with a square root, and a step that counts on both ends alone would miss part of it.
 */
const supplyAhead = (coals: readonly CoalGroup[], strengths: Strengths, older: number): Supply => {
  const ended = supplyOf(coals, strengths, older);
  let { above, below } = ended;
  for (const { burnt, count, place, isClear } of coals) {
    if (burnt >= 1) continue;
    const mean = meanStrength(burnt, burnt + older);
    const bend = 2 * mean - strengthAt(burnt) - strengthAt(burnt + older);
    const more = count * bend * (isClear ? 1 : strengths.underAsh);
    if (place === 'below') below += more * strengths.below;
    else above += more * strengths.above;
  }
  return { above, below, covering: ended.covering };
};

export const aged = (coals: readonly CoalGroup[], burnt: number): readonly CoalGroup[] =>
  coals.map((group) => ({ ...group, burnt: group.burnt + burnt }));

const OPEN_COEFFICIENT = 10; // W/m2K, warm air rising out of an open pot; a judgement, no source

/** Heat that leaves through the open mouth [W]. */
export const openMouthWatts = (
  setting: Pick<RunSetting, 'body' | 'outside'>,
  ovenKelvin: number,
): number => {
  const air = setting.outside.airKelvin;
  const radiated = parameter('emissivityInside') * STEFAN_BOLTZMANN * (ovenKelvin ** 4 - air ** 4);
  return setting.body.mouthArea * (radiated + OPEN_COEFFICIENT * (ovenKelvin - air));
};

export interface MinuteOptions {
  /** Lid off for this long at the start of the minute. */
  readonly openSeconds?: number;
  readonly stepsPerMinute?: number;
}

/** The oven one minute later. */
export const minuteLater = (
  setting: RunSetting,
  moment: OvenMoment,
  options: MinuteOptions = {},
): OvenMoment => {
  const openSeconds = setting.isOpen ? 60 : Math.min(60, options.openSeconds ?? 0);
  const steps = options.stepsPerMinute ?? setting.stepsPerMinute ?? 1;
  let later = moment;
  if (openSeconds > 0) {
    const inside = setting.isOpen ? cavityOver(setting, moment) : moment.ovenKelvin;
    const openWatts = openMouthWatts(setting, inside);
    later = stepsLater(setting, later, { seconds: openSeconds, steps: 1, openWatts });
  }
  if (openSeconds < 60)
    later = stepsLater(setting, later, { seconds: 60 - openSeconds, steps, openWatts: 0 });
  return { ...later, minute: moment.minute + 1 };
};

/** Between iron and sky, where the moment itself tells the floor. */
const cavityOver = ({ body, outside, load }: RunSetting, moment: OvenMoment): number => {
  const inside = moment.load === undefined ? undefined : load;
  const state = { iron: moment.iron, load: moment.load ?? [] };
  return cavityKelvin(body, moment.iron, loadWatts({ body, outside, load: inside }, state, 0));
};

interface Span {
  readonly seconds: number;
  readonly steps: number;
  readonly openWatts: number;
}

const stepsLater = (setting: RunSetting, start: OvenMoment, span: Span): OvenMoment => {
  let moment = start;
  for (let step = 0; step < span.steps; step++) {
    const whole = span.seconds / span.steps;
    const until = secondsToNextEnd(setting, moment.coals);
    if (0 < until && until < whole) {
      moment = stepLater(setting, moment, { seconds: until, openWatts: span.openWatts });
      moment = stepLater(setting, moment, { seconds: whole - until, openWatts: span.openWatts });
    } else moment = stepLater(setting, moment, { seconds: whole, openWatts: span.openWatts });
  }
  return moment;
};

/** A coal ends with a square root: a step lands there rather than going over it. */
const secondsToNextEnd = (setting: RunSetting, coals: readonly CoalGroup[]): number => {
  let least = Number.POSITIVE_INFINITY;
  for (const group of coals) if (group.burnt < 1) least = Math.min(least, 1 - group.burnt);
  return least * setting.burnoutMinutes * 60;
};

interface StepSpan {
  readonly seconds: number;
  readonly openWatts: number;
  readonly halvings?: number;
}

/**
 * A step whose second order adds more than this to its first is cut in two [K]. Tuned on 300 runs
 * over the whole valid range against the run under error control (oven-course.ts): iron is then off
 * by 0.03 K on the median run, 0.06 K on the tenth worst, 0.13 K at worst; uncut it was 1 K.
 */
const MOST_DIFFERENCE_KELVIN = 0.5;
const MOST_HALVINGS = 5; // down to two seconds: then it goes on, there is no endless step

const stepLater = (setting: RunSetting, moment: OvenMoment, span: StepSpan): OvenMoment => {
  const { seconds, openWatts, halvings = 0 } = span;
  const strengths = strengthsOf(setting);
  const older = seconds / 60 / setting.burnoutMinutes;
  const inside = moment.load === undefined ? undefined : setting.load;
  const stepSetting = { body: setting.body, outside: setting.outside, load: inside };
  const state = { iron: moment.iron, load: moment.load ?? [] };
  const supplyBefore = supplyOf(moment.coals, strengths);
  const supplyAfter = supplyAhead(moment.coals, strengths, older);
  const stepped = stepOven(stepSetting, state, { seconds, supplyBefore, supplyAfter, openWatts });
  if (stepped.differenceKelvin > MOST_DIFFERENCE_KELVIN && halvings < MOST_HALVINGS) {
    const half = { seconds: seconds / 2, openWatts, halvings: halvings + 1 };
    return stepLater(setting, stepLater(setting, moment, half), half);
  }
  const takenWatts = loadWatts(stepSetting, stepped, 0);
  return {
    minute: moment.minute,
    iron: stepped.iron,
    coals: aged(moment.coals, older),
    load: inside ? stepped.load : undefined,
    ovenKelvin: setting.isOpen
      ? stepped.iron.floor
      : cavityKelvin(setting.body, stepped.iron, takenWatts),
    givenJoules: moment.givenJoules + stepped.givenJoules,
    lossJoules: moment.lossJoules + stepped.lossJoules,
    loadJoules: moment.loadJoules + stepped.loadJoules,
  };
};

// The oven minute by minute: coals age, iron warms, the load takes heat, things happen.
// Sources: network.ts, burn.ts. A moment is plain data, so that any minute can be a start.

import { strengthAt } from './burn.ts';
import type { OvenBody } from './geometry.ts';
import type { Load, LoadState } from './load.ts';
import { cavityKelvin, type IronState, type Outside, type Skin, type Supply } from './network.ts';
import { parameter, STEFAN_BOLTZMANN } from './parameters.ts';
import { loadWatts, stepOven } from './step.ts';

/** Coals of one age in one place. */
export interface CoalGroup {
  readonly place: 'above' | 'below';
  readonly count: number;
  /** Part of its burning time that is over; 1 = ash. */
  readonly burnt: number;
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
  /** Steps of the integrator in a minute; two where coals burn away within minutes. */
  readonly stepsPerMinute?: number;
}

/** Everything about one moment; minutes since coals on. */
export interface OvenMoment {
  readonly minute: number;
  readonly iron: IronState;
  /** Coefficients of the last step, kept to save work; undefined where the air has changed. */
  readonly skin?: Skin | undefined;
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
const COVERING_BURNT = 0.5;

const FULL = { above: 1, below: 1 } as const;

/** Heat on offer from all coals, as mid-life chart briquettes. */
export const supplyOf = (
  coals: readonly CoalGroup[],
  strengths: { readonly above: number; readonly below: number } = FULL,
): Supply => {
  let above = 0;
  let below = 0;
  let covering = 0;
  for (const group of coals) {
    const strength = group.count * strengthAt(group.burnt);
    if (group.place === 'below') below += strength * strengths.below;
    else {
      above += strength * strengths.above;
      covering += group.count * Math.max(0, Math.min(1, (1 - group.burnt) / COVERING_BURNT));
    }
  }
  return { above, below, covering };
};

export const aged = (coals: readonly CoalGroup[], burnt: number): readonly CoalGroup[] =>
  coals.map((group) => ({ ...group, burnt: group.burnt + burnt }));

const OPEN_COEFFICIENT = 10; // W/m2K, warm air rising out of an open pot; a judgement, no source

/** Heat that leaves through the open mouth [W]. */
export const openMouthWatts = (setting: RunSetting, ovenKelvin: number): number => {
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
  const openSeconds = Math.min(60, options.openSeconds ?? 0);
  const opened =
    openSeconds > 0
      ? stepsLater(setting, moment, {
          seconds: openSeconds,
          steps: 1,
          openWatts: openMouthWatts(setting, moment.ovenKelvin),
        })
      : moment;
  const later =
    openSeconds < 60
      ? stepsLater(setting, opened, {
          seconds: 60 - openSeconds,
          steps: options.stepsPerMinute ?? setting.stepsPerMinute ?? 1,
          openWatts: 0,
        })
      : opened;
  return { ...later, minute: moment.minute + 1 };
};

interface Span {
  readonly seconds: number;
  readonly steps: number;
  readonly openWatts: number;
}

const stepsLater = (setting: RunSetting, start: OvenMoment, span: Span): OvenMoment => {
  let moment = start;
  for (let step = 0; step < span.steps; step++) moment = stepLater(setting, moment, span);
  return moment;
};

const stepLater = (setting: RunSetting, moment: OvenMoment, span: Span): OvenMoment => {
  const seconds = span.seconds / span.steps;
  const strengths = { above: setting.strengthAbove, below: setting.strengthBelow };
  const later = aged(moment.coals, seconds / 60 / setting.burnoutMinutes);
  const inside = moment.load === undefined ? undefined : setting.load;
  const stepSetting = { body: setting.body, outside: setting.outside, load: inside };
  const stepped = stepOven(
    stepSetting,
    { iron: moment.iron, load: moment.load ?? [], skin: moment.skin },
    {
      seconds,
      supplyBefore: supplyOf(moment.coals, strengths),
      supplyAfter: supplyOf(later, strengths),
      openWatts: span.openWatts,
    },
  );
  const takenWatts = loadWatts(stepSetting, stepped, 0);
  return {
    minute: moment.minute,
    iron: stepped.iron,
    skin: stepped.skin,
    coals: later,
    load: inside ? stepped.load : undefined,
    ovenKelvin: cavityKelvin(setting.body, stepped.iron, takenWatts),
    givenJoules: moment.givenJoules + stepped.givenJoules,
    lossJoules: moment.lossJoules + stepped.lossJoules,
    loadJoules: moment.loadJoules + stepped.loadJoules,
  };
};

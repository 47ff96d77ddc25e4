// What a restriction allows, on what the coals may lie, how much stays clear, and at what wind it is over.
// Sources: fire-stages, river-fire-pan, usfs-campfire, fire-departments, red-flag-example. A local order
// overrides all of it.

import type { FireRestriction, WeatherHour } from '../camp/camp.ts';
import { type ClockMinutes, metres } from '../quantity/unit.ts';
import { DRY_AIR, FRESH_WIND, isRedFlag, STRONG_WIND } from './wind.ts';

export type FireLeave = 'yes' | 'built-in-grate' | 'no' | 'ask' | 'area-closed';

export interface FireStage {
  readonly stage: 0 | 1 | 2 | 3;
  readonly charcoal: FireLeave;
  readonly wood: FireLeave;
  /** A stove with a valve that shuts, on three cleared feet. */
  readonly stove: FireLeave;
}

/** Stages as most offices have them (fire-stages); a fourth closes the area. */
export const FIRE_STAGES: readonly FireStage[] = [
  { stage: 0, charcoal: 'yes', wood: 'yes', stove: 'yes' },
  { stage: 1, charcoal: 'built-in-grate', wood: 'built-in-grate', stove: 'yes' },
  { stage: 2, charcoal: 'no', wood: 'no', stove: 'yes' },
  { stage: 3, charcoal: 'area-closed', wood: 'area-closed', stove: 'area-closed' },
];

/** The stage that the camp says; undefined where it has not been asked, or coals are allowed in spite. */
export const stageOf = (restriction: FireRestriction): FireStage | undefined =>
  FIRE_STAGES.find(({ stage }) => STAGES[restriction] === stage);

const STAGES: Readonly<Partial<Record<FireRestriction, FireStage['stage']>>> = {
  none: 0,
  'stage-1': 1,
  'stage-2': 2,
};

const FOOT_METRES = 0.3048;
const INCH_METRES = 0.0254;

/** Where rules ask for a pan: so wide at least, a lip so high, on legs or blocks (river-fire-pan). */
export const FIRE_PAN = { side: metres(12 * INCH_METRES), lip: metres(3 * INCH_METRES) } as const;

export const CLEAR_SPACE = {
  /** Bare ground, across (usfs-campfire; an older page of the same service has half of it). */
  bare: metres(10 * FOOT_METRES),
  tents: metres(15 * FOOT_METRES), // usfs-campfire
  structures: metres(30 * FOOT_METRES), // fire-departments
  /** Walked over once it is out (usfs-campfire). */
  lookRound: metres(50 * FOOT_METRES),
  stove: metres(3 * FOOT_METRES), // fire-stages
} as const;

export interface FireHour {
  readonly at: ClockMinutes;
  readonly hour: WeatherHour;
  /** 'stop': do not light, put out. 'watch': screen up and somebody who does nothing else. */
  readonly level: 'stop' | 'watch';
  readonly because: 'red-flag' | 'wind' | 'gust' | 'dry';
}

/** Hours of the forecast at or over a level, soonest first (red-flag-example; 10 mph is judged). */
export const fireHours = (weather: readonly WeatherHour[]): readonly FireHour[] =>
  weather.flatMap((hour) => {
    const found = levelOf(hour);
    return found === undefined ? [] : [{ at: hour.at, hour, ...found }];
  });

function levelOf(hour: WeatherHour): Pick<FireHour, 'level' | 'because'> | undefined {
  if (isRedFlag(hour)) return { level: 'stop', because: 'red-flag' };
  if (STRONG_WIND <= hour.wind) return { level: 'stop', because: 'wind' };
  if (hour.humidity !== undefined && hour.humidity <= DRY_AIR) {
    return { level: 'watch', because: 'dry' };
  }
  if (STRONG_WIND <= hour.gust) return { level: 'watch', because: 'gust' };
  return FRESH_WIND <= hour.wind ? { level: 'watch', because: 'wind' } : undefined;
}

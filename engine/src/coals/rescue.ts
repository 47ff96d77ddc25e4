// It is going wrong: three moves in order, each run from the fire as it stands now. No plan needed.
// Source: run.ts for the effects; which move helps which trouble is common practice, no source.
// Weak spot: what knocking ash off and raising the oven bring is ours; nobody has measured either.

import { windAtOven } from '../camp/air.ts';
import { isRefusal, type OrRefusal } from '../notice/notice.ts';
import {
  type KelvinDifference,
  kelvinDifference,
  type Minutes,
  metresPerSecond,
  minutes,
} from '../quantity/unit.ts';
import { burnoutMinutes } from './burn.ts';
import { beliefsFor, believed } from './factors.ts';
import { standingRoom } from './feeding.ts';
import { type FireNow, type FireState, fireNow, liveCoals, runOn } from './fire-state.ts';
import { shovelsFor } from './fuel.ts';
import { momentAfter } from './moves.ts';
import { coalWidth, roomFor } from './room.ts';
import type { CoalGroup, OvenMoment, RunSetting } from './run.ts';
import { siteFor } from './site.ts';

export type Symptom =
  | 'bottom-dark'
  | 'top-pale'
  | 'one-side-hot'
  | 'coals-dying'
  | 'raw-middle'
  | 'late';

export interface RescueMove {
  readonly do:
    | 'take-below'
    | 'take-above'
    | 'add-above'
    | 'add-below'
    | 'below-to-above'
    | 'knock-ash'
    | 'screen-wind'
    | 'raise-oven'
    | 'turn'
    | 'wait';
  readonly coals: number;
  /** Wood coals: the same in shovels. */
  readonly shovels?: number;
  /** Where the effect is felt. 'side': the hotter side above the cooler one. 'load': mean of food. */
  readonly feels: Feels;
  /** Change against doing nothing, at its largest within 20 minutes. */
  readonly effect: KelvinDifference;
  /** Minutes until most of it is felt. */
  readonly after: Minutes;
}

export type Feels = 'oven' | 'lid' | 'floor' | 'side' | 'load';

export interface Rescue {
  readonly symptom: Symptom;
  /** Three, in the order in which they are tried; fewer where less can be done. */
  readonly moves: readonly RescueMove[];
}

type Try = readonly [RescueMove['do'], Feels];

/** What is tried for each trouble, in order; the first three that can be done here and help. */
const TRIES: Readonly<Record<Symptom, readonly Try[]>> = {
  'bottom-dark': [
    ['take-below', 'floor'],
    ['raise-oven', 'floor'],
    ['below-to-above', 'floor'],
  ],
  'top-pale': [
    ['knock-ash', 'lid'],
    ['below-to-above', 'lid'],
    ['add-above', 'lid'],
    ['screen-wind', 'lid'],
    ['wait', 'load'],
  ],
  'one-side-hot': [
    ['turn', 'side'],
    ['screen-wind', 'side'],
    ['take-above', 'oven'],
    ['take-below', 'floor'],
  ],
  'coals-dying': [
    ['knock-ash', 'oven'],
    ['add-above', 'oven'],
    ['add-below', 'oven'],
    ['screen-wind', 'oven'],
  ],
  'raw-middle': [
    ['take-above', 'lid'],
    ['take-below', 'floor'],
    ['wait', 'load'],
    ['raise-oven', 'floor'],
  ],
  late: [
    ['add-above', 'oven'],
    ['screen-wind', 'oven'],
    ['knock-ash', 'oven'],
    ['add-below', 'oven'],
    ['wait', 'load'],
  ],
};

const MOVES = 3;
const WATCH_MINUTES = 20;
const FELT_SHARE = 0.8;
const FELT_KELVIN = 0.5; // below it nobody can tell

/**
 * Three moves for one trouble, from any fire.
 *
 * @refuses  as fireNow
 */
export const rescue = (asked: {
  readonly symptom: Symptom;
  readonly state: FireState;
}): OrRefusal<Rescue> => {
  const { symptom, state } = asked;
  const now = fireNow(state);
  if (isRefusal(now)) return now;
  const usual = runOn(now.setting, now.moment, { minutes: WATCH_MINUTES });
  const moves: RescueMove[] = [];
  for (const [move, feels] of TRIES[symptom]) {
    const coals = coalsFor(move, state, now);
    if (moves.length === MOVES || coals === undefined) continue;
    const found = tried({ move, feels, coals }, state, now, usual);
    if (Math.abs(found.effect) >= FELT_KELVIN) moves.push(found);
  }
  return { symptom, moves };
};

const HANDFUL = { pieces: 1, wood: 4 } as const; // half a shovel
const MOST_MOVED = 6; // as in moves.ts
const LEAST_ADDED = 3;
const USUAL_SHARE = 0.15; // of what glows
const LEAST_WIND_TO_SCREEN = 0.3;

/** How many coals a move takes; undefined where it can't be made. */
const coalsFor = (move: RescueMove['do'], state: FireState, now: FireNow): number | undefined => {
  const handful = state.fuel.kind === 'wood-coals' ? HANDFUL.wood : HANDFUL.pieces;
  const live = (place: CoalGroup['place']) => liveCoals(now.moment, place);
  const whole = (coals: number) => Math.floor(coals / handful) * handful;
  const some = (coals: number) => (whole(coals) > 0 ? whole(coals) : undefined);
  const added = Math.max(LEAST_ADDED, handful, USUAL_SHARE * (live('above') + live('below')));
  const free = (place: CoalGroup['place']) => roomLeft(place, state, now);
  if (move === 'take-below') return some(Math.min(MOST_MOVED, live('below') / 3));
  if (move === 'take-above') return some(Math.min(MOST_MOVED, live('above') / 3));
  if (move === 'below-to-above')
    return some(Math.min(MOST_MOVED, live('below') / 3, free('above')));
  if (move === 'add-above') return some(Math.min(MOST_MOVED, added, free('above')));
  if (move === 'add-below') return some(Math.min(MOST_MOVED, added, free('below')));
  if (move === 'screen-wind')
    return state.screened || state.air.wind < LEAST_WIND_TO_SCREEN ? undefined : 0;
  if (move === 'wait') return now.moment.load === undefined ? undefined : 0;
  return move === 'turn' || live('above') + live('below') > 0 ? 0 : undefined;
};

const roomLeft = (place: CoalGroup['place'], state: FireState, { moment, setting }: FireNow) => {
  const room = roomFor(setting.body, state.oven.diameter, coalWidth(state.fuel));
  const all = place === 'above' ? room.lidAll : room.floorAll;
  return Math.max(0, all - standingRoom(moment.coals, place));
};

interface Tried {
  readonly move: RescueMove['do'];
  readonly feels: Feels;
  readonly coals: number;
}

const tried = (
  { move, feels, coals }: Tried,
  state: FireState,
  now: FireNow,
  usual: readonly OvenMoment[],
): RescueMove => {
  const changes = changesOf({ move, feels, coals }, state, now, usual);
  const largest = changes.reduce((far, each) => (Math.abs(each) > Math.abs(far) ? each : far), 0);
  const felt = changes.findIndex((each) => Math.abs(each) >= FELT_SHARE * Math.abs(largest));
  return {
    do: move,
    coals,
    ...(state.fuel.kind === 'wood-coals' && coals > 0 ? { shovels: shovelsFor(coals) } : {}),
    feels,
    effect: kelvinDifference(largest),
    after: minutes(Math.max(1, felt)),
  };
};

const changesOf = (
  { move, feels, coals }: Tried,
  state: FireState,
  now: FireNow,
  usual: readonly OvenMoment[],
): readonly number[] => {
  const felt = (moment: OvenMoment) => feltAt(moment, feels, now);
  // Waiting is measured against now: what the food gains if it is left in.
  if (move === 'wait') return usual.map((moment) => felt(moment) - felt(now.moment));
  if (feels === 'side') return usual.map((moment, index) => sideChange(move, state, moment, index));
  const changed = runOn(
    settingAfter(move, state, now),
    momentAfter(now.moment, { do: move, coals }),
    {
      minutes: WATCH_MINUTES,
    },
  );
  return changed.map((moment, index) => felt(moment) - felt(usual[index] ?? moment));
};

const feltAt = ({ iron, ovenKelvin, load }: OvenMoment, feels: Feels, { request }: FireNow) => {
  if (feels === 'lid') return iron.lid;
  if (feels === 'floor') return iron.floor;
  if (feels === 'load') return load === undefined ? ovenKelvin : request.load.temperature(load);
  return ovenKelvin;
};

const COAL_SCATTER = 0.15; // as in unevenness.ts: one-sided part of N coals is this x sqrt(2/N)
const SIDE_MINUTES = 12; // in which a side follows, about half of what iron takes to cool

// The hotter side stands above the other by the one-sided part of what its coals hold; a half turn
// hands it to the other side, a screen takes the wind's part away. First order, no plate is solved.
const sideChange = (
  move: RescueMove['do'],
  state: FireState,
  { coals, iron }: OvenMoment,
  minute: number,
): number => {
  const count = Math.max(
    1,
    coals.reduce((sum, group) => sum + group.count, 0),
  );
  const scatter = COAL_SCATTER * Math.sqrt(2 / count);
  const windy = windShare(state.air.wind);
  const screen = windShare(state.air.wind * screenShare());
  const share = move === 'turn' ? Math.hypot(windy, scatter) : windy - screen;
  const followed = 1 - Math.exp(-minute / SIDE_MINUTES);
  return -share * (iron.lid - state.air.temperature) * followed;
};

/** Half the difference of windward and lee coals by their mean; the lee feels half the wind. */
const windShare = (wind: number): number => {
  const life = (windMetresPerSecond: number) =>
    burnoutMinutes({ life: 1 }, { windMetresPerSecond, pressurePascals: 101_325 });
  const ratio = life(wind / 2) / life(wind);
  return (ratio - 1) / (ratio + 1);
};

const screenShare = (): number => {
  const one = metresPerSecond(1);
  return windAtOven(one, true) / windAtOven(one, false);
};

/** Ours: ash knocked off lets a coal give this much more. */
const ASH_GAIN = 1.1;
/** Ours: an oven raised on a tall stand takes this share of what its coals below gave it. */
const RAISED_SHARE = 0.6;

const settingAfter = (
  move: RescueMove['do'],
  state: FireState,
  { setting, request }: FireNow,
): RunSetting => {
  if (move === 'knock-ash')
    return {
      ...setting,
      strengthAbove: setting.strengthAbove * ASH_GAIN,
      strengthBelow: setting.strengthBelow * ASH_GAIN,
    };
  if (move === 'raise-oven')
    return { ...setting, strengthBelow: setting.strengthBelow * RAISED_SHARE };
  if (move !== 'screen-wind') return setting;
  const wind = metresPerSecond(state.air.wind * screenShare());
  const screened = { ...request, air: { ...request.air, wind }, screened: true };
  return believed(siteFor(screened), beliefsFor(request));
};

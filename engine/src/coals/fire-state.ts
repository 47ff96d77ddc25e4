// Any state as a start: coals of a rough age, iron as hot as it is, food that is in already.
// Source: run.ts. What happened before is run again from the ages given, so that nobody has to say
// how hot the iron is; a said heat wins.

import type { Air, CampOven, Fuel, Place } from '../camp/camp.ts';
import type { HeatMethod } from '../menu/recipe.ts';
import { type OrRefusal, type Refusal, refusal } from '../notice/notice.ts';
import {
  type Joules,
  type Kelvin,
  kelvin,
  type Minutes,
  minutes,
  squareMetres,
  watts,
} from '../quantity/unit.ts';
import { LAID_AGE_MINUTES, LAID_BURNT, MID_LIFE_BURNT } from './burn.ts';
import type { CoalRequest } from './coal-plan.ts';
import type { SiteConditions } from './conditions.ts';
import { beliefsFor, believed, type FactorBeliefs } from './factors.ts';
import type { Load } from './load.ts';
import { COALS_RANGE, coalTrouble } from './range.ts';
import {
  type CoalGroup,
  minuteLater,
  type OvenMoment,
  type RunSetting,
  startMoment,
  withCoals,
  withLoadIn,
} from './run.ts';
import { siteFor } from './site.ts';
import { isOpenMethod, isPotMethod } from './split.ts';

/** Coals as a cook tells them: how many, where, lit about when. */
export interface LyingCoals {
  readonly place: CoalGroup['place'];
  readonly pieces: number;
  readonly litMinutesAgo: Minutes;
}

export interface FireState {
  readonly oven: CampOven;
  readonly air: Air;
  readonly place: Place;
  readonly screened: boolean;
  readonly fuel: Fuel;
  readonly method: HeatMethod;
  readonly coals: readonly LyingCoals[];
  /** Iron now, where the cook knows it; else it is as hot as these coals made it. */
  readonly ironNow?: Kelvin;
  /** What is in the oven, or will be. */
  readonly load?: Load;
  /** Undefined: it is not in yet. */
  readonly loadInMinutesAgo?: Minutes;
  /**
   * Nobody said how old the coals are: they burn, since they were counted. 'made-up': before the oldest
   * of them others lay there, mid-life, and kept the oven as it is.
   */
  readonly agesAssumed?: 'laid' | 'made-up';
  readonly beliefs?: FactorBeliefs;
  /** Rain, sun, wet ground, a riser, the oven weighed; left out, none of it. */
  readonly conditions?: SiteConditions;
}

/** The same for the simulator; minute 0 is now. */
export interface FireNow {
  readonly request: CoalRequest;
  readonly setting: RunSetting;
  readonly moment: OvenMoment;
}

const MOST_AGE_MINUTES = 600;
/** Older happenings have left no heat: iron halves in a quarter of an hour. */
const MOST_PAST_MINUTES = 180;

/**
 * The fire as it must stand now.
 *
 * @refuses  COALS_AGE_IMPOSSIBLE, COALS_PIN_IMPOSSIBLE and those of an oven, wind or fuel that no
 *           plan is made for
 */
export const fireNow = (
  state: FireState,
  wanted: Kelvin = kelvin(state.air.temperature + 100),
): OrRefusal<FireNow> => {
  const request = requestOf(state, wanted);
  const trouble = coalTrouble(request) ?? coalsTrouble(state);
  if (trouble) return trouble;
  const setting = believed(siteFor(request), beliefsFor(request));
  return { request, setting, moment: momentNow({ ...state, coals: coalsAtWork(state) }, setting) };
};

/** Lid off, what lies on it heats nothing. */
const coalsAtWork = ({ coals, method }: FireState): readonly LyingCoals[] =>
  isOpenMethod(method) ? coals.filter(({ place }) => place === 'below') : coals;

const requestOf = (state: FireState, wanted: Kelvin): CoalRequest => ({
  loadId: 'now',
  oven: state.oven,
  air: state.air,
  place: state.place,
  screened: state.screened,
  fuel: state.fuel,
  wish: { method: state.method, wanted, minutes: minutes(60), preheat: false },
  load: state.load ?? nothingIn,
  ironAtStart: state.ironNow ?? state.air.temperature,
  pins: {},
  ...(state.beliefs === undefined ? {} : { beliefs: state.beliefs }),
  ...(state.conditions === undefined ? {} : { conditions: state.conditions }),
});

/** An empty oven takes up nothing. */
const nothingIn: Load = {
  planArea: squareMetres(0),
  start: [],
  heatInto: () => watts(0),
  after: (state, _heat: Joules) => state,
  temperature: () => kelvin(0),
};

const coalsTrouble = ({
  coals,
  oven,
  loadInMinutesAgo = minutes(0),
}: FireState): Refusal | undefined => {
  const { lowest, highest } = COALS_RANGE.pin;
  const about = { oven: oven.id };
  const isAge = (age: number) => 0 <= age && age <= MOST_AGE_MINUTES;
  const odd = coals.find(
    ({ pieces }) => !(Number.isInteger(pieces) && lowest <= pieces && pieces <= highest),
  );
  if (odd) return refusal('COALS_PIN_IMPOSSIBLE', ['coals'], about, { coals: odd.pieces });
  const age = [loadInMinutesAgo, ...coals.map((each) => each.litMinutesAgo)].find(
    (each) => !isAge(each),
  );
  if (age === undefined) return;
  const values = Number.isFinite(age) ? { minutes: age } : {};
  return refusal('COALS_AGE_IMPOSSIBLE', ['coals'], about, values);
};

/** Laid when they had ashed over; so long ago, at the earliest now. */
const laidAgo = ({ litMinutesAgo }: LyingCoals): number =>
  Math.min(MOST_PAST_MINUTES, Math.max(0, Math.round(litMinutesAgo - LAID_AGE_MINUTES)));

const momentNow = (state: FireState, setting: RunSetting): OvenMoment => {
  const { coals, ironNow, loadInMinutesAgo } = state;
  const loadAgo = loadInMinutesAgo === undefined ? -1 : Math.round(loadInMinutesAgo);
  const oldest = Math.max(0, ...coals.map(laidAgo));
  const before = coalsBefore(state, oldest);
  const heated = before.length > 0 && loadAgo >= 0 ? loadAgo + heatedMinutes(state) : loadAgo;
  const past = Math.min(MOST_PAST_MINUTES, Math.max(0, heated, oldest));
  const air = state.air.temperature;
  let moment: OvenMoment = { ...startMoment({ ironKelvin: air, coals: [] }), minute: -past };
  while (true) {
    const ago = -moment.minute;
    if (before.length > 0 && ago >= oldest)
      moment = { ...moment, coals: ago > oldest ? before : [] };
    const now = coals.filter((each) => laidAgo(each) === ago);
    if (now.length > 0)
      moment = withCoals(
        moment,
        now.map((each) => groupOf(each, setting)),
      );
    if (Math.min(past, loadAgo) === ago && state.load) moment = withLoadIn(moment, state.load);
    if (ago <= 0) break;
    moment = minuteLater(setting, moment);
  }
  return ironNow === undefined ? moment : withIron(moment, ironNow);
};

const HEATED_MINUTES = 15; // as usual-fire.ts; a pot starts cold
const heatedMinutes = ({ method }: FireState) => (isPotMethod(method) ? 0 : HEATED_MINUTES);

/** What lay there before coals that were made up: as many, kept at their mid-life. */
const coalsBefore = ({ agesAssumed, coals }: FireState, oldest: number): readonly CoalGroup[] =>
  agesAssumed !== 'made-up'
    ? []
    : coals
        .filter((each) => laidAgo(each) === oldest)
        .map(({ place, pieces }) => ({ place, count: pieces, burnt: MID_LIFE_BURNT }));

/** Older coals than the past that is run have burned on before it. */
const groupOf = (coals: LyingCoals, setting: RunSetting): CoalGroup => {
  const { place, pieces: count, litMinutesAgo } = coals;
  const before = litMinutesAgo - laidAgo(coals) - LAID_AGE_MINUTES;
  const share = Math.min(1, litMinutesAgo / LAID_AGE_MINUTES);
  return { place, count, burnt: LAID_BURNT * share + Math.max(0, before) / setting.burnoutMinutes };
};

const withIron = (moment: OvenMoment, iron: Kelvin): OvenMoment => ({
  ...moment,
  iron: { lid: iron, wall: iron, floor: iron },
  ovenKelvin: iron,
});

/** Live coals of one place now. */
export const liveCoals = (moment: OvenMoment, place: CoalGroup['place']): number =>
  moment.coals
    .filter((group) => group.place === place && group.burnt < 1)
    .reduce((sum, group) => sum + group.count, 0);

/** What happens from now on, if nothing more is done than a load set in. */
export const runOn = (
  setting: RunSetting,
  from: OvenMoment,
  wish: { readonly minutes: number; readonly loadInMinute?: number },
): readonly OvenMoment[] => {
  const moments: OvenMoment[] = [];
  let moment = from;
  while (true) {
    const isLoading = moment.load === undefined && moment.minute === wish.loadInMinute;
    if (isLoading) moment = withLoadIn(moment, setting.load);
    moments.push(moment);
    if (moment.minute >= from.minute + wish.minutes) return moments;
    moment = minuteLater(setting, moment, isLoading ? { openSeconds: LID_OFF_SECONDS } : {});
  }
};

const LID_OFF_SECONDS = 30; // as in feeding.ts

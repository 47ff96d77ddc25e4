// What must the coals do for this load: hold a heat, and for a pot first bring it up?
// Sources: hold.ts, run.ts. Weak spot: "up" is a mean temperature of the load, near the boil.

import { type Joules, type Kelvin, kelvin } from '../quantity/unit.ts';
import { MID_LIFE_BURNT } from './burn.ts';
import type { CoalRequest } from './coal-plan.ts';
import { laid, laidBetween } from './coals-ahead.ts';
import type { Need } from './feed-wish.ts';
import type { OvenBody } from './geometry.ts';
import { coalsToHold, type HoldCase } from './hold.ts';
import type { FloorTouch, LoadState } from './load.ts';
import { parameter } from './parameters.ts';
import { coalWidth, type Room, roomFor } from './room.ts';
import { minuteLater, type RunSetting, startMoment, withLoadIn } from './run.ts';
import { hasBareLid, isHeatedFirst, isOpenMethod, isPotMethod, shareAboveFor } from './split.ts';

export interface HeatNeed extends Need {
  readonly shareAbove: number;
  readonly room: Room;
  readonly hold: number;
  /** Change of the held count with the wanted heat [coals/K]. */
  readonly perKelvin: number;
}

const UP_BELOW_BOIL_KELVIN = 2;
/** A pot should boil by half its time, within five quarters of an hour at the latest; ours. */
const UP_SHARE = 0.5;
const UP_MOST_MINUTES = 75;
/** Browned food and hot iron: it should simmer within the hour that it took so far; ours. */
const UP_MOST_BROWNED_MINUTES = 55;
const UP_LEAST_MINUTES = 15;

export const heatNeedFor = (request: CoalRequest, setting: RunSetting): HeatNeed => {
  const shareAbove = shareAboveFor(request.wish.method);
  const room = roomOf(request, setting.body);
  const holdCase = holdCaseFor(request, setting, shareAbove);
  const hold = coalsToHold(holdCase);
  const warmer = coalsToHold({ ...holdCase, targetKelvin: holdCase.targetKelvin + 5 });
  const isPot = isPotMethod(request.wish.method) && !request.wish.preheat;
  const upKelvin = isPot ? upKelvinFor(request) : 0;
  const heatUp = isPot
    ? coalsToBringUp({ request, setting, shareAbove, room, hold, upKelvin })
    : hold;
  return {
    hold,
    heatUp,
    upKelvin,
    shareAbove,
    room,
    perKelvin: Math.max(0.02, (warmer - hold) / 5),
  };
};

/** Where coals may lie: none on the lid of a fry or of a boil (splitByMethod). */
export const roomOf = (
  { oven, fuel, wish }: Pick<CoalRequest, 'oven' | 'fuel'> & { readonly wish: Method },
  body: OvenBody,
): Room => {
  const room = roomFor(body, oven.diameter, coalWidth(fuel));
  return hasBareLid(wish.method) ? { ...room, lidRing: 0, lidAll: 0 } : room;
};

type Method = Pick<CoalRequest['wish'], 'method'>;

const upKelvinFor = (request: CoalRequest) =>
  Math.min(request.air.boiling, request.wish.wanted) - UP_BELOW_BOIL_KELVIN;

export const holdCaseFor = (
  request: CoalRequest,
  setting: RunSetting,
  shareAbove: number,
): HoldCase => ({
  body: setting.body,
  outside: setting.outside,
  strengthAbove: setting.strengthAbove,
  strengthBelow: setting.strengthBelow,
  shareAbove,
  ...heldSink(request),
  targetKelvin: request.wish.wanted,
  ...(isOpenMethod(request.wish.method) ? { isOpen: true } : {}),
});

/** Lid off, the inside is this far from the air to the floor: 0.56 over D coals at every size. */
const OPEN_INSIDE_SHARE = 0.56;

/** What a load asks of an oven that is held: of its inside [W], and of the floor that it lies on. */
export interface HeldSink {
  readonly sinkWatts: number;
  readonly touch: FloorTouch | undefined;
}

/** Mean heat that the load takes from an oven at the wanted heat; a pot, once it has come up. */
export const heldSink = (request: CoalRequest): HeldSink => {
  const { load, wish } = request;
  const isPot = isPotMethod(wish.method);
  const start = isPot ? broughtUp(request).state : load.start;
  const air = request.air.temperature;
  const inside = isOpenMethod(wish.method)
    ? kelvin(air + OPEN_INSIDE_SHARE * (wish.wanted - air))
    : wish.wanted;
  const spans = isPot ? 1 : Math.max(1, Math.round(wish.minutes));
  let state: LoadState = start;
  let joules = 0;
  let passage = 0;
  let pull = 0;
  for (let span = 0; span < spans; span++) {
    const taken = load.heatInto(state, inside) * 60;
    const touch = load.fromFloor?.(state);
    const touched = touch ? touch.wattsPerKelvin * (inside - touch.kelvin) * 60 : 0;
    passage += touch?.wattsPerKelvin ?? 0;
    pull += touch ? touch.wattsPerKelvin * touch.kelvin : 0;
    joules += taken;
    state = load.after(state, (taken + touched) as Joules);
  }
  const sinkWatts = Math.max(0, joules / (60 * spans));
  const touch =
    passage > 0 ? { wattsPerKelvin: passage / spans, kelvin: pull / passage } : undefined;
  return { sinkWatts, touch };
};

const MOST_SPANS = 400;

interface BroughtUp {
  readonly state: LoadState;
  /** Heat that it took. */
  readonly joules: number;
}

const broughtUp = ({ load, wish, air }: CoalRequest): BroughtUp => {
  const hot = Math.max(wish.wanted, air.boiling + 60) as Kelvin;
  const up = Math.min(wish.wanted, air.boiling) - UP_BELOW_BOIL_KELVIN;
  let state = load.start;
  let joules = 0;
  for (let span = 0; span < MOST_SPANS && load.temperature(state) < up; span++) {
    const taken = load.heatInto(state, hot) * 30;
    state = load.after(state, taken as Joules);
    joules += taken;
  }
  return { state, joules };
};

interface BringUp {
  readonly request: CoalRequest;
  readonly setting: RunSetting;
  readonly shareAbove: number;
  readonly room: Room;
  readonly hold: number;
  readonly upKelvin: number;
}

/** What a boil would want in all if its lid could carry what does not fit below. */
export const coalsUpWithLid = (
  request: CoalRequest,
  setting: RunSetting,
  { shareAbove, hold, upKelvin }: HeatNeed,
): number => {
  const room = roomFor(setting.body, request.oven.diameter, coalWidth(request.fuel));
  return coalsToBringUp({ request, setting, shareAbove, room, hold, upKelvin });
};

const MOST_TRIES = 6;

/** A boil is wanted by this minute. */
export const upDeadline = ({ minutes, brownFirst }: CoalRequest['wish']): number => {
  const most = (brownFirst ?? 0) > 0 ? UP_MOST_BROWNED_MINUTES : UP_MOST_MINUTES;
  return Math.round(Math.min(most, Math.max(UP_LEAST_MINUTES, minutes * UP_SHARE)));
};

// From what the heat balance says, more by as much as the pot stayed short, until it is up.
const coalsToBringUp = (wish: BringUp): number => {
  const room = wish.room.lidAll + wish.room.floorAll;
  const deadline = upDeadline(wish.request.wish);
  const intoLoad = broughtUp(wish.request).joules / (deadline * 60 * parameter('lidCoalWatts'));
  let coals = Math.min(room, Math.max(LEAST_COALS, wish.hold, intoLoad + wish.hold / 2));
  for (let attempt = 0; attempt < MOST_TRIES && coals < room; attempt++) {
    const share = shareUpBy(wish, coals, deadline);
    if (share >= 1) return coals;
    coals = Math.min(room, coals * Math.min(MORE.most, Math.max(MORE.least, share ** -MORE.power)));
  }
  return coals;
};

/** Next try beside the last. */
const MORE = { least: 1.05, most: 1.6, power: 0.6 } as const;
const LEAST_COALS = 6; // fewer do not keep each other alight; common practice, no source

/** What does not fit under the floor of a slow pot goes on its lid, where that may carry coals. */
export const spilled = (
  wish: { readonly below: number; readonly all: number },
  room: Pick<Room, 'floorAll' | 'lidAll'>,
): { readonly above: number; readonly below: number } => {
  const below = Math.min(wish.below, room.floorAll);
  return { above: room.lidAll > 0 ? wish.all - below : 0, below };
};

/** How much of its way up the pot has made by the deadline; 1 or more = it is up. */
const shareUpBy = (wish: BringUp, coals: number, deadline: number): number => {
  const { request, setting } = wish;
  const counts = spilled({ below: coals * (1 - wish.shareAbove), all: coals }, wish.room);
  const start = startMoment({ ironKelvin: request.ironAtStart, coals: midLife(counts) });
  const kept = { ...setting, burnoutMinutes: KEPT_MINUTES };
  let moment = withLoadIn(start, setting.load);
  const cold = setting.load.temperature(setting.load.start);
  let reached = cold;
  while (moment.minute < deadline && reached < wish.upKelvin) {
    moment = minuteLater(kept, moment);
    reached = setting.load.temperature(moment.load ?? []);
  }
  const way = wish.upKelvin - cold;
  return way > 0 ? Math.max(LEAST_SHARE, ((reached as number) - cold) / way) : 1;
};

const LEAST_SHARE = 0.1;
/** Coals that are added to as they fade, as the plan will do: they stay in mid-life. */
const KEPT_MINUTES = 1e9;

const midLife = (counts: { readonly above: number; readonly below: number }) =>
  laid(counts).map((group) => ({ ...group, burnt: MID_LIFE_BURNT }));

/** Coals to lay at first: what holds, corrected for how old they will be while the load is in. */
export const firstCoals = (request: CoalRequest, setting: RunSetting, need: HeatNeed): number =>
  need.upKelvin > 0 ? need.heatUp : need.hold * ageFactor(request, setting.burnoutMinutes);

const PREHEAT_USUAL_MINUTES = 20;
const FIRST_SET_MINUTES = 30; // after that coals are added where they run short
const AGE_FACTOR = { least: 0.85, most: 1.2 } as const; // past these, adding coals does it better

/** Old coals are weaker than the mid-life coal that the network counts in. */
export const ageFactor = (request: CoalRequest, burnout: number): number => {
  const preheat = isHeatedFirst(request.wish) ? PREHEAT_USUAL_MINUTES : 0;
  const to = preheat + Math.min(FIRST_SET_MINUTES, request.wish.minutes);
  const mean = Math.max(0.1, laidBetween({ from: preheat, to }, burnout));
  return Math.min(AGE_FACTOR.most, Math.max(AGE_FACTOR.least, 1 / mean));
};

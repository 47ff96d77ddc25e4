// It is going wrong: three moves in order, each run from the fire as it stands now. No plan needed.
// Source: run.ts for the effects; which move helps which trouble is common practice, no source.
// Weak spot: what knocking ash off (ash.ts) and raising the oven (riser.ts) bring, nobody has measured.

import { windAtOven } from '../camp/air.ts';
import { isRefusal, type Notice, type OrRefusal } from '../notice/notice.ts';
import {
  type KelvinDifference,
  kelvinDifference,
  type Minutes,
  metresPerSecond,
  minutes,
} from '../quantity/unit.ts';
import { ASH_GAIN, hasAsh, withAshOff } from './ash.ts';
import { standingRoom } from './coals-ahead.ts';
import { beliefsFor, believed } from './factors.ts';
import { type FireNow, type FireState, fireNow, liveCoals, runOn } from './fire-state.ts';
import { shovelsFor } from './fuel.ts';
import { idleAbove } from './idle-above.ts';
import { farthest, momentAfter } from './moves.ts';
import { noFire } from './no-fire.ts';
import {
  type SideEffect,
  type SideMove,
  type SideSight,
  sideEffect,
  sideSight,
} from './rescue-side.ts';
import { triesFor, withoutLid } from './rescue-tries.ts';
import { riserFactor } from './riser.ts';
import { coalWidth, roomFor } from './room.ts';
import type { CoalGroup, OvenMoment, RunSetting } from './run.ts';
import { siteFor } from './site.ts';
import { isOpenMethod } from './split.ts';

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
    /** From the hot side to the cool one, of the coals on the lid or of those below. */
    | 'shift-above'
    | 'shift-below'
    /** Off the hot side, not laid anew. */
    | 'thin-above'
    | 'thin-below'
    | 'wait';
  readonly coals: number;
  /** Wood coals: the same in shovels. */
  readonly shovels?: number;
  /**
   * Where the effect is felt. 'load': mean of food. 'side': hot side less cool side on the food's worse
   * face, a mean over the next 20 minutes. It is a change of a difference: no side gets cooler by it.
   */
  readonly feels: Feels;
  /** Change against doing nothing, at its largest within 20 minutes. */
  readonly effect: KelvinDifference;
  /** 'side': by how much the hot side is hotter than the cool one; below zero they have changed. */
  readonly sides?: { readonly before: KelvinDifference; readonly after: KelvinDifference };
  /** 'side': the hot side's top browns so many minutes less in the next 20. */
  readonly browning?: Minutes;
  /** Minutes until most of it is felt. */
  readonly after: Minutes;
  /** Where the effect rests on a guess: it may be nothing, and is hardly more than this. */
  readonly most?: KelvinDifference;
  /** One side is hot, and this helps the heat alone: the sides stay as unlike as they are. */
  readonly evens?: false;
}

/** Why something that is usually done is not among the moves. */
export type WhyNot =
  | 'too-few-below'
  | 'too-few-above'
  | 'no-room'
  | 'no-ash'
  | 'screened'
  | 'calm'
  | 'no-food'
  | 'lid-off'
  /** Run, and told by no thermometer of a camp; or for the worse. */
  | 'not-felt';

export interface LeftOut {
  readonly do: RescueMove['do'];
  readonly why: WhyNot;
}

export type Feels = 'oven' | 'lid' | 'floor' | 'side' | 'load';

export interface Rescue {
  readonly symptom: Symptom;
  /** Three, in the order in which they are tried; fewer where less can be done. */
  readonly moves: readonly RescueMove[];
  /** Where they are fewer than three: what was thought of and why it is not among them. */
  readonly leftOut?: readonly LeftOut[];
  /** COALS_NO_FIRE, where no move can help; COALS_ABOVE_IDLE beside them. */
  readonly notices?: readonly Notice[];
  /** The lid is off. */
  readonly isOpen?: true;
}

const MOVES = 3;
const WATCH_MINUTES = 20;
const FELT_SHARE = 0.8;
const FELT_KELVIN = 2.8; // 5 F: a move below it is told by no thermometer of a camp; ours

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
  const out = noFire(state, now);
  if (out) return { symptom, moves: [], notices: [out] };
  const usual = runOn(now.setting, now.moment, { minutes: WATCH_MINUTES });
  const idle = idleAbove(state, now);
  const beside = {
    symptom,
    ...(idle.length > 0 ? { notices: idle } : {}),
    ...(isOpenMethod(state.method) ? { isOpen: true as const } : {}),
  };
  if (symptom === 'one-side-hot') return { ...beside, ...sideMoves(state, now, usual) };
  const moves: RescueMove[] = [];
  const leftOut: LeftOut[] = [...withoutLid(symptom, state)];
  for (const [move, feels] of triesFor(symptom, state)) {
    if (moves.length === MOVES) break;
    const coals = coalsFor(move, state, now);
    if (coals === undefined) {
      leftOut.push({ do: move, why: whyNot(move, state, now) });
      continue;
    }
    const found = tried({ move, feels, coals }, state, now, usual);
    if (isWorthIt(found)) moves.push(found);
    else leftOut.push({ do: move, why: 'not-felt' });
  }
  return { ...beside, moves, ...(moves.length < MOVES ? { leftOut } : {}) };
};

/** What stands in the way of a move that can't be made. */
const whyNot = (move: RescueMove['do'], state: FireState, now: FireNow): WhyNot => {
  if (move === 'take-above') return 'too-few-above';
  if (move === 'take-below') return 'too-few-below';
  if (move === 'below-to-above')
    return liveCoals(now.moment, 'below') < 3 ? 'too-few-below' : 'no-room';
  if (move === 'screen-wind') return state.screened ? 'screened' : 'calm';
  if (move === 'wait') return 'no-food';
  return move === 'knock-ash' ? 'no-ash' : 'no-room';
};

/** Bared coals burn up sooner: what would leave the oven cooler by that is no help. */
const isWorthIt = ({ do: move, effect }: RescueMove): boolean =>
  (move === 'knock-ash' ? effect : Math.abs(effect)) >= FELT_KELVIN;

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
  // A boil is brought up with its whole lid, as its plan says (floor-limit.ts).
  if (move === 'add-above' && state.method === 'boil') return some(free('above'));
  if (move === 'add-above') return some(Math.min(MOST_MOVED, added, free('above')));
  if (move === 'add-below') return some(Math.min(MOST_MOVED, added, free('below')));
  if (move === 'screen-wind')
    return state.screened || state.air.wind < LEAST_WIND_TO_SCREEN ? undefined : 0;
  if (move === 'wait') return now.moment.load === undefined ? undefined : 0;
  if (move === 'knock-ash') return hasAsh(now.moment.coals) ? 0 : undefined;
  return live('above') + live('below') > 0 ? 0 : undefined;
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
  /** Ash off at the upper end of what it may bring. */
  readonly isMost?: boolean;
}

const tried = (
  { move, feels, coals }: Tried,
  state: FireState,
  now: FireNow,
  usual: readonly OvenMoment[],
): RescueMove => {
  const changes = changesOf({ move, feels, coals }, state, now, usual);
  const largest = farthest(changes);
  const atMost = () => farthest(changesOf({ move, feels, coals, isMost: true }, state, now, usual));
  const felt = changes.findIndex((each) => Math.abs(each) >= FELT_SHARE * Math.abs(largest));
  return {
    do: move,
    coals,
    ...(state.fuel.kind === 'wood-coals' && coals > 0 ? { shovels: shovelsFor(coals) } : {}),
    feels,
    effect: kelvinDifference(largest),
    after: minutes(Math.max(1, felt)),
    ...(move === 'knock-ash' ? { most: kelvinDifference(atMost()) } : {}),
  };
};

const changesOf = (
  { move, feels, coals, isMost = false }: Tried,
  state: FireState,
  now: FireNow,
  usual: readonly OvenMoment[],
): readonly number[] => {
  const felt = (moment: OvenMoment) => feltAt(moment, feels, now);
  // Waiting is measured against now: what the food gains if it is left in.
  if (move === 'wait') return usual.map((moment) => felt(moment) - felt(now.moment));
  const changed = runOn(
    isMost ? withAshOff(now.setting, ASH_GAIN.most) : settingAfter(move, state, now),
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

const SHIFTS = {
  above: ['shift-above', 'thin-above'],
  below: ['shift-below', 'thin-below'],
} as const;
/** A side less hot by this, or browning so much later in twenty minutes, can be told on a crust. */
const NOTICED = { kelvins: 5, minutes: 1 } as const; // ours: 10 F, and a minute of colour

/**
 * What can be done about a hot side, each move run on the plates; only what can be noticed. A screen
 * where wind blows is offered for the heat it brings, and said to even nothing where it does not.
 */
const sideMoves = (
  state: FireState,
  now: FireNow,
  usual: readonly OvenMoment[],
): Pick<Rescue, 'moves' | 'leftOut'> => {
  const sight = sideSight(state, now, usual);
  const shift = evenestShift(sight, state, now);
  const turned = sideEffect(sight, { do: 'turn' });
  const leftOut: LeftOut[] = [
    ...(isNoticed(turned) ? [] : [{ do: 'turn', why: 'not-felt' } as const]),
    ...(shift.length > 0 ? [] : [{ do: SHIFTS[sight.worse][0], why: 'not-felt' } as const]),
  ];
  const evening = [...(isNoticed(turned) ? [{ do: 'turn' } as const] : []), ...shift]
    .map((move) => ({ move, effect: sideEffect(sight, move) }))
    .filter(({ effect }) => isNoticed(effect))
    .map(({ move, effect }) => sideMove(move, effect, sight));
  const screen = screenMove(sight, state, now, usual);
  const moves = 'why' in screen ? evening : [...evening, screen];
  return { moves, leftOut: [...leftOut, ...('why' in screen ? [screen] : [])] };
};

const screenMove = (
  sight: SideSight,
  state: FireState,
  now: FireNow,
  usual: readonly OvenMoment[],
): RescueMove | LeftOut => {
  const coals = coalsFor('screen-wind', state, now);
  if (coals === undefined) return { do: 'screen-wind', why: whyNot('screen-wind', state, now) };
  const wind = state.air.wind * screenShare();
  const move = { do: 'screen-wind', windMetresPerSecond: wind } as const;
  const effect = sideEffect(sight, move);
  if (isNoticed(effect)) return sideMove(move, effect, sight);
  const heat = tried({ move: 'screen-wind', feels: 'oven', coals }, state, now, usual);
  return isWorthIt(heat) ? { ...heat, evens: false } : { do: 'screen-wind', why: 'not-felt' };
};

/** The few coals whose shift, or taking away, leaves the sides most alike; none if it helps little. */
const evenestShift = (sight: SideSight, state: FireState, now: FireNow): readonly SideMove[] => {
  const { worse } = sight;
  const handful = state.fuel.kind === 'wood-coals' ? HANDFUL.wood : HANDFUL.pieces;
  const ways = worse === 'above' ? SHIFTS.above : SHIFTS.below;
  const tries = ways
    .flatMap((way) => [1, 2, 3].map((times): SideMove => ({ do: way, coals: times * handful })))
    .filter((move) => 'coals' in move && move.coals <= liveCoals(now.moment, worse) / 3)
    .map((move) => ({ move, left: leftOf(sight, sideEffect(sight, move)) }))
    .toSorted((one, other) => one.left - other.left);
  const [best] = tries;
  const was = Math.max(sight.lid.swing, sight.floor.swing);
  return best !== undefined && best.left <= was - NOTICED.kelvins ? [best.move] : [];
};

/** Of the worse face, whichever side is then the hotter one. */
const leftOf = ({ lid, floor }: SideSight, { kelvins }: SideEffect): number =>
  Math.abs(Math.max(lid.swing, floor.swing) + kelvins);

const isNoticed = ({ kelvins, browningMinutes }: SideEffect): boolean =>
  kelvins <= -NOTICED.kelvins || browningMinutes >= NOTICED.minutes;

const sideMove = (move: SideMove, effect: SideEffect, sight: SideSight): RescueMove => {
  const { fuel } = sight.state;
  const before = sight.worse === 'above' ? sight.lid.swing : sight.floor.swing;
  const coals = 'coals' in move ? move.coals : 0;
  return {
    do: move.do,
    coals,
    ...(fuel.kind === 'wood-coals' && coals > 0 ? { shovels: shovelsFor(coals) } : {}),
    feels: 'side',
    effect: kelvinDifference(effect.kelvins),
    sides: {
      before: kelvinDifference(before),
      after: kelvinDifference(before + effect.kelvins),
    },
    browning: minutes(effect.browningMinutes),
    after: minutes(effect.after),
  };
};

const screenShare = (): number => {
  const one = metresPerSecond(1);
  return windAtOven(one, true) / windAtOven(one, false);
};

/** Two inches: bricks on their side, or a low trivet under the legs; common practice, no source. */
const RISER_METRES = 0.05;

const settingAfter = (
  move: RescueMove['do'],
  state: FireState,
  { setting, request }: FireNow,
): RunSetting => {
  if (move === 'knock-ash') return withAshOff(setting);
  if (move === 'raise-oven') {
    const riser = request.conditions?.riser ?? 0;
    const gap = (height: number) => riserFactor(setting.body, height);
    const share = gap(riser + RISER_METRES) / gap(riser);
    return { ...setting, strengthBelow: setting.strengthBelow * share };
  }
  if (move !== 'screen-wind') return setting;
  const wind = metresPerSecond(state.air.wind * screenShare());
  const screened = { ...request, air: { ...request.air, wind }, screened: true };
  return believed(siteFor(screened), beliefsFor(request));
};

// What can a cook do about the heat, and what does each move bring? Each is run, not guessed.
// Source: replay.ts. Weak spot: what knocking ash off brings is a guess (ash.ts), and told as one.

import { windAtOven } from '../camp/air.ts';
import { kelvinDifference, metresPerSecond, minutes } from '../quantity/unit.ts';
import { ASH_GAIN, hasAsh, withAshOff } from './ash.ts';
import type { CoalRequest, Move } from './coal-plan.ts';
import { laid, standingRoom } from './coals-ahead.ts';
import type { Counted } from './count.ts';
import { beliefsFor, believed } from './factors.ts';
import { shovelsFor } from './fuel.ts';
import { replayedFrom } from './replay.ts';
import type { CoalGroup, OvenMoment, RunSetting } from './run.ts';
import { withCoals } from './run.ts';
import { siteFor } from './site.ts';
import { isBaked } from './split.ts';

export interface MoveWish {
  readonly request: CoalRequest;
  readonly setting: RunSetting;
  readonly counted: Counted;
  readonly minute: number;
}

export interface MoveChoice {
  readonly ifHot: readonly Move[];
  readonly ifCool: readonly Move[];
}

/** Long enough for most of a move to be felt, short enough that the coals are still there. */
const WATCH_MINUTES = 20;
const FELT_SHARE = 0.8;
const LEAST_WIND_TO_SCREEN = 0.3; // m/s at the oven; below it a screen does nothing a cook can see

/** Moves at one minute of the plan, each with its simulated effect. */
export const movesAt = (wish: MoveWish): MoveChoice => {
  const from = wish.counted.run.moments[wish.minute];
  if (!from) return { ifHot: [], ifCool: [] };
  const usual = watched(wish, wish.setting, from);
  const priced = (plain: PlainMove) => moveWith(wish, plain, { from, usual });
  return {
    ifHot: usefulFirst(takes(wish, from).map(priced)),
    ifCool: usefulFirst([...adds(wish, from), ...screens(wish), ...ashes(from)].map(priced)),
  };
};

/** A move that does less than this share of the best one is not worth a walk to the fire. */
const USEFUL_SHARE = 0.25;
const FELT_KELVIN = 0.5; // below it nobody can tell

// What does most comes first; of two alike, the one that is felt sooner.
const usefulFirst = (moves: readonly Move[]): readonly Move[] => {
  const size = (move: Move) => Math.abs(move.effect);
  const most = Math.max(0, ...moves.map(size));
  return moves
    .filter((move) => move.do !== 'knock-ash' || move.effect > 0) // bared coals may be gone too soon
    .filter((move) => size(move) >= Math.max(FELT_KELVIN, USEFUL_SHARE * most))
    .sort((one, other) => size(other) - size(one) || one.after - other.after);
};

interface PlainMove {
  readonly do: Move['do'];
  readonly coals: number;
}

/** Coals of one move: about a tenth of the set, and never more than a cook picks up at once. */
const movedCoals = ({ counted }: MoveWish, share: number): number => {
  const { counts, feed } = counted;
  const all = counts.above + counts.below;
  const most = Math.min(MOST_MOVED, Math.max(LEAST_MOVED, MOST_SHARE * all));
  const coals = Math.min(most, Math.max(LEAST_MOVED, share * all));
  return Math.max(feed.handful, Math.floor(coals / feed.handful) * feed.handful);
};

const LEAST_MOVED = 2;
const MOST_MOVED = 6; // with tongs, one by one, the lid on; common practice, no source
const MOST_SHARE = 0.25; // of the set; more is laying it anew
const USUAL_SHARE = 0.11; // of the set

const takes = (wish: MoveWish, from: OvenMoment): readonly PlainMove[] => {
  const coals = movedCoals(wish, USUAL_SHARE);
  const least = wish.counted.feed.handful;
  const moves: PlainMove[] = [
    { do: 'take-above', coals: Math.min(coals, thirdOf(from, 'above', least)) },
    { do: 'take-below', coals: Math.min(coals, thirdOf(from, 'below', least)) },
  ];
  return moves.filter((move) => move.coals > 0);
};

/** About a third of what glows in one place: more at once turns one trouble into another. */
const thirdOf = (from: OvenMoment, place: CoalGroup['place'], handful: number): number => {
  const live = from.coals
    .filter((group) => group.place === place && group.burnt < 1)
    .reduce((sum, group) => sum + group.count, 0);
  const third = Math.floor(live / 3 / handful) * handful;
  return Math.max(third, live > handful ? handful : 0);
};

const adds = (wish: MoveWish, from: OvenMoment): readonly PlainMove[] => {
  const { handful, room } = wish.counted.feed;
  const wanted = movedCoals(wish, USUAL_SHARE);
  const fits = (all: number, place: CoalGroup['place']) =>
    Math.floor(Math.max(0, all - standingRoom(from.coals, place)) / handful) * handful;
  const below: PlainMove = {
    do: 'add-below',
    coals: Math.min(wanted, fits(room.floorAll, 'below')),
  };
  const above: PlainMove = { do: 'add-above', coals: Math.min(wanted, fits(room.lidAll, 'above')) };
  const moves = isBaked(wish.request.wish.method) ? [above, below] : [below];
  return moves.filter((move) => move.coals > 0);
};

const screens = ({ request }: MoveWish): readonly PlainMove[] =>
  !request.screened && request.air.wind >= LEAST_WIND_TO_SCREEN
    ? [{ do: 'screen-wind', coals: 0 }]
    : [];

const ashes = ({ coals }: OvenMoment): readonly PlainMove[] =>
  hasAsh(coals) ? [{ do: 'knock-ash', coals: 0 }] : [];

/** Move coals from below to the lid: the bread's last minutes. */
export const finishAbove = (wish: MoveWish): Move | undefined => {
  const from = wish.counted.run.moments[wish.minute];
  if (!from || wish.counted.counts.below === 0) return;
  const { handful, room } = wish.counted.feed;
  const free = room.lidAll - standingRoom(from.coals, 'above');
  const fits = Math.floor(Math.max(0, free) / handful) * handful;
  const coals = Math.min(thirdOf(from, 'below', handful), movedCoals(wish, MOST_SHARE), fits);
  if (coals === 0) return;
  const usual = watched(wish, wish.setting, from);
  return moveWith(wish, { do: 'below-to-above', coals }, { from, usual });
};

/** What comes after the food is out helps nobody. */
const watchMinutes = ({ minute, counted }: MoveWish): number =>
  Math.min(WATCH_MINUTES, Math.max(1, counted.run.outMinute - minute));

const watched = (wish: MoveWish, setting: RunSetting, from: OvenMoment) =>
  replayedFrom(setting, wish.counted, from, {
    untilMinute: wish.minute + watchMinutes(wish),
    isDone: true,
  });

const moveWith = (
  wish: MoveWish,
  plain: PlainMove,
  run: { readonly from: OvenMoment; readonly usual: readonly OvenMoment[] },
): Move => {
  const after = momentAfter(run.from, plain);
  const moments = watched(wish, settingAfter(wish, plain), after);
  const changes = changesOf(run.usual, moments, ovenOf);
  const ofFloor = changesOf(run.usual, moments, ({ iron }) => iron.floor);
  const atMost = () =>
    farthest(
      changesOf(run.usual, watched(wish, withAshOff(wish.setting, ASH_GAIN.most), after), ovenOf),
    );
  // Coals that change their side hardly change the air: what they do is felt at the floor.
  const isAtFloor = plain.do === 'below-to-above';
  const felt = isAtFloor ? ofFloor : changes;
  const first = felt.findIndex((each) => Math.abs(each) >= FELT_SHARE * Math.abs(farthest(felt)));
  return {
    ...plain,
    ...(wish.request.fuel.kind === 'wood-coals' ? { shovels: shovelsFor(plain.coals) } : {}),
    effect: kelvinDifference(farthest(changes)),
    after: minutes(Math.max(1, first)),
    ...(isAtFloor ? { floor: kelvinDifference(farthest(ofFloor)) } : {}),
    ...(plain.do === 'knock-ash' ? { most: kelvinDifference(atMost()) } : {}),
  };
};

const ovenOf = ({ ovenKelvin }: OvenMoment) => ovenKelvin;

const changesOf = (
  usual: readonly OvenMoment[],
  moments: readonly OvenMoment[],
  read: (moment: OvenMoment) => number,
): readonly number[] => moments.map((moment, index) => read(moment) - read(usual[index] ?? moment));

/** The change that is farthest from none. */
export const farthest = (changes: readonly number[]): number =>
  changes.reduce((far, each) => (Math.abs(each) > Math.abs(far) ? each : far), 0);

const settingAfter = ({ request, setting }: MoveWish, plain: PlainMove): RunSetting => {
  if (plain.do === 'knock-ash') return withAshOff(setting);
  if (plain.do !== 'screen-wind') return setting;
  const one = metresPerSecond(1);
  const shelter = windAtOven(one, true) / windAtOven(one, false);
  const wind = metresPerSecond(request.air.wind * shelter);
  const screened = { ...request, air: { ...request.air, wind } };
  return believed(siteFor(screened), beliefsFor(request));
};

/** The fire once a move is made; what moves no coals leaves it as it is. */
export const momentAfter = (
  from: OvenMoment,
  plain: { readonly do: string; readonly coals: number },
): OvenMoment => {
  const { coals } = plain;
  if (plain.do === 'add-above') return withCoals(from, laid({ above: coals, below: 0 }));
  if (plain.do === 'add-below') return withCoals(from, laid({ above: 0, below: coals }));
  if (plain.do === 'take-above') return taken(from, 'above', coals);
  if (plain.do === 'take-below') return taken(from, 'below', coals);
  if (plain.do !== 'below-to-above') return from;
  const left = taken(from, 'below', coals);
  const moved = from.coals.map((group, index) => ({
    ...group,
    place: 'above' as const,
    count: group.count - (left.coals[index]?.count ?? group.count),
  }));
  return withCoals(left, moved);
};

/** A cook takes coals as they lie, old and young alike. */
const taken = (from: OvenMoment, place: CoalGroup['place'], coals: number): OvenMoment => {
  const isThere = (group: CoalGroup) => group.place === place && group.burnt < 1;
  const all = from.coals.filter(isThere).reduce((sum, group) => sum + group.count, 0);
  const left = all > 0 ? Math.max(0, 1 - coals / all) : 0;
  return {
    ...from,
    coals: from.coals.map((group) =>
      isThere(group) ? { ...group, count: group.count * left } : group,
    ),
  };
};

// I have 22 coals left: what can I do? Each method in turn, the coals shared as it wants them, no
// more of them than its food bears and than lie flat; the others are left over.
// Source: run.ts, splitByMethod. What a kind of dish needs, and bears, is common practice, no source.

import type { HeatMethod, RecipeKind } from '../menu/recipe.ts';
import { isRefusal, type Notice, notice, type OrRefusal } from '../notice/notice.ts';
import { fromFahrenheit, type Kelvin, kelvin, type Minutes, minutes } from '../quantity/unit.ts';
import { type FireState, fireNow, type LyingCoals, runOn } from './fire-state.ts';
import type { Load } from './load.ts';
import { roomOf } from './need.ts';
import { noFire } from './no-fire.ts';
import type { Room } from './room.ts';
import type { OvenMoment } from './run.ts';
import { isPotMethod, shareAboveFor, WANTED_HALF_RANGE } from './split.ts';
import { PREHEAT_MINUTES, wantedAtFire } from './usual-fire.ts';
import { usualLoad } from './usual-load.ts';

export interface CoalsLeft
  extends Omit<FireState, 'coals' | 'method' | 'load' | 'loadInMinutesAgo'> {
  readonly pieces: number;
  readonly litMinutesAgo: Minutes;
}

/** A heat of the charts, and how long it is held from its first minute on. */
export interface HeldHeat {
  readonly oven: Kelvin;
  readonly fromMinute: Minutes;
  readonly minutes: Minutes;
}

export interface Possibility {
  readonly method: HeatMethod;
  readonly above: number;
  readonly below: number;
  /** Of those that were asked about, so many are not laid. */
  readonly leftOver: number;
  /** More would burn the food, or do not lie flat; left out where all are laid. */
  readonly why?: 'burns' | 'no-room';
  /** Of two ways to bake: quick breads at the charts' hot, or dough and fruit at their medium. */
  readonly heat?: 'hot' | 'medium';
  /** With the food in. */
  readonly hottest: Kelvin;
  /** Hottest first; only those that are reached. */
  readonly heats: readonly HeldHeat[];
  /** Kinds of dish that this is enough for, with the usual load of this oven. */
  readonly kinds: readonly RecipeKind[];
}

export interface Possibilities {
  readonly ways: readonly Possibility[];
  readonly notices: readonly Notice[];
}

const LOOKED_AT_MINUTES = 120;
/** Very hot, hot, medium, slow as the charts name them, and warm enough to hold food (60 °C food). */
const HEATS: readonly Kelvin[] = [450, 400, 350, 300, 200].map(fromFahrenheit);

/** A way to cook with them, and the oven that its food bears. Common practice, no source. */
interface Way {
  readonly method: HeatMethod;
  readonly heat?: 'hot' | 'medium';
  /** A pot: once it boils, on the mean. */
  readonly most: (air: CoalsLeft['air']) => number;
}

const WAYS: readonly Way[] = [
  { method: 'bake', heat: 'hot', most: () => fromFahrenheit(450) },
  { method: 'bake', heat: 'medium', most: () => fromFahrenheit(400) }, // it fades from there
  { method: 'roast', most: () => fromFahrenheit(375) },
  { method: 'simmer', most: (air) => wantedAtFire('simmer', air) + WANTED_HALF_RANGE },
  { method: 'keep-warm', most: () => fromFahrenheit(200) },
];

/** What a dish of a kind needs at the least: a heat for so long. Common practice, no source. */
const ENOUGH: readonly (readonly [RecipeKind, 'hot' | 'medium' | 'roast', number, number])[] = [
  ['biscuit', 'hot', 400, 15],
  ['corn-bread', 'hot', 400, 25],
  ['quick-bread', 'medium', 350, 40],
  ['yeast-bread', 'medium', 350, 40],
  ['cobbler', 'medium', 350, 40],
  ['fruit', 'medium', 350, 30],
  ['roast', 'roast', 300, 75],
];
/** The food at the boil for so long. */
const AT_BOIL: readonly (readonly [RecipeKind, number])[] = [
  ['stew', 60],
  ['braise', 90],
  ['beans', 90],
];

/**
 * What these coals still do in this oven, by method: how hot for how long, and what that cooks.
 *
 * @refuses  as fireNow
 * @notice   COALS_NO_FIRE — nothing glows, and there are no ways
 * @notice   COALS_NOTHING_FITS — no kind of dish can be cooked on them
 */
export const whatCanIDoWith = (left: CoalsLeft): OrRefusal<Possibilities> => {
  const out = withoutFire(left);
  if (out !== undefined) return isRefusal(out) ? out : { ways: [], notices: [out] };
  const ways: Possibility[] = [];
  for (const asked of WAYS) {
    const way = wayOf(left, asked);
    if (isRefusal(way)) return way;
    ways.push(way);
  }
  const isNothing = ways.every((way) => way.kinds.length === 0);
  const about = { oven: left.oven.id };
  return {
    ways: withoutTwins(ways),
    notices: isNothing ? [notice('COALS_NOTHING_FITS', 'doubt', about)] : [],
  };
};

const withoutFire = (left: CoalsLeft): OrRefusal<Notice> | undefined => {
  const coals = [
    { place: 'above', pieces: left.pieces, litMinutesAgo: left.litMinutesAgo },
  ] as const;
  const state = { ...left, method: 'bake', coals, load: usualLoad(left, 'bake') } as const;
  const now = fireNow(state);
  return isRefusal(now) ? now : noFire(state, now);
};

/** Where all the coals make no oven too hot for dough, both ways to bake are one. */
const withoutTwins = (ways: readonly Possibility[]): readonly Possibility[] => {
  const [hot, medium, ...others] = ways;
  if (hot === undefined || medium === undefined) return ways;
  if (hot.above + hot.below !== medium.above + medium.below) return ways;
  const { heat: _, ...both } = medium;
  return [{ ...both, kinds: [...hot.kinds, ...medium.kinds] }, ...others];
};

const wayOf = (left: CoalsLeft, way: Way): OrRefusal<Possibility> => {
  const { method } = way;
  const load = usualLoad(left, method);
  const empty = fireNow({ ...left, method, coals: [] });
  if (isRefusal(empty)) return empty;
  const room = roomOf({ ...left, wish: { method } }, empty.setting.body);
  const momentsOf = (pieces: number): OrRefusal<readonly OvenMoment[]> => {
    const counts = sharedOut(pieces, method, room);
    const now = fireNow({ ...left, method, load, coals: lying(left, counts) });
    if (isRefusal(now)) return now;
    const start = { ...now.moment, iron: empty.moment.iron, ovenKelvin: empty.moment.ovenKelvin };
    const ahead = { minutes: LOOKED_AT_MINUTES, loadInMinute: waitFor(left, method) };
    return runOn(now.setting, start, ahead);
  };
  const bare = momentsOf(0);
  if (isRefusal(bare)) return bare;
  const burns = (pieces: number) => isTooHot(momentsOf(pieces), { left, way, load, bare });
  const pieces = mostOf(left, burns);
  const moments = momentsOf(pieces);
  if (isRefusal(moments)) return moments;
  const counts = sharedOut(pieces, method, room);
  const leftOver = left.pieces - counts.above - counts.below;
  const inside = moments.filter((moment) => moment.load !== undefined);
  const heats = HEATS.flatMap((heat) => heldHeat(inside, heat));
  return {
    method,
    ...(way.heat === undefined ? {} : { heat: way.heat }),
    ...counts,
    leftOver,
    ...(leftOver === 0 ? {} : { why: pieces < left.pieces ? 'burns' : 'no-room' }),
    hottest: kelvin(Math.max(...inside.map((moment) => moment.ovenKelvin))),
    heats,
    kinds: kindsFor(way, heats, boiledMinutes(moments, load, left)),
  };
};

/** Shared as the method has them, as far as they lie flat; a dish kept warm has none below. */
const sharedOut = (pieces: number, method: HeatMethod, room: Room) => {
  const wanted = pieces - Math.round(pieces * shareAboveFor(method));
  const below = Math.min(wanted, room.floorAll);
  return { above: Math.min(pieces - below, room.lidAll), below };
};

const WOOD_HANDFUL = 4; // half a shovel

/** More coals never make an oven cooler, so halving finds the most that burn nothing. */
const mostOf = ({ pieces, fuel }: CoalsLeft, burns: (pieces: number) => boolean): number => {
  if (!burns(pieces)) return pieces;
  const handful = fuel.kind === 'wood-coals' ? WOOD_HANDFUL : 1;
  let [holds, fails] = [0, Math.ceil(pieces / handful)];
  while (fails - holds > 1) {
    const middle = Math.floor((holds + fails) / 2);
    if (burns(handful * middle)) fails = middle;
    else holds = middle;
  }
  return handful * holds;
};

interface Burning {
  readonly left: CoalsLeft;
  readonly way: Way;
  readonly load: Load;
  /** The same with no coals: an oven that is too hot by itself is not put down to them. */
  readonly bare: readonly OvenMoment[];
}

const isTooHot = (
  moments: OrRefusal<readonly OvenMoment[]>,
  { left: { air }, way, load, bare }: Burning,
): boolean => {
  if (isRefusal(moments)) return false;
  const most = way.most(air) + WANTED_HALF_RANGE;
  if (isPotMethod(way.method)) {
    const up = moments.filter((moment) => isBoiling(moment, load, air));
    return up.reduce((sum, moment) => sum + moment.ovenKelvin - most, 0) > 0;
  }
  return moments.some(
    ({ load: food, ovenKelvin }, index) =>
      food !== undefined &&
      ovenKelvin > Math.max(most, (bare[index]?.ovenKelvin ?? 0) + WANTED_HALF_RANGE),
  );
};

/** Baked food waits for its heat; a pot warms with its own. */
const waitFor = ({ ironNow }: CoalsLeft, method: HeatMethod): number => {
  if (method === 'simmer') return 0;
  return ironNow === undefined ? PREHEAT_MINUTES : HOT_OVEN_MINUTES;
};

/** An oven that is hot already: time to lay the coals. */
const HOT_OVEN_MINUTES = 5;

const lying = (
  { litMinutesAgo }: CoalsLeft,
  { above, below }: { readonly above: number; readonly below: number },
): readonly LyingCoals[] => [
  { place: 'above', pieces: above, litMinutesAgo },
  { place: 'below', pieces: below, litMinutesAgo },
];

/** The longest stretch at this heat, short dips let pass. */
const heldHeat = (moments: readonly OvenMoment[], heat: Kelvin): readonly HeldHeat[] => {
  let best: readonly [number, number] = [0, -1];
  let [from, last] = [0, Number.NEGATIVE_INFINITY];
  for (const { minute, ovenKelvin } of moments) {
    if (ovenKelvin < heat - WANTED_HALF_RANGE) continue;
    if (minute - last > DIP_MINUTES) from = minute;
    last = minute;
    if (last - from > best[1] - best[0]) best = [from, last];
  }
  const [fromMinute, end] = best;
  return end - fromMinute < LEAST_HELD_MINUTES
    ? []
    : [{ oven: heat, fromMinute: minutes(fromMinute), minutes: minutes(end - fromMinute) }];
};

const DIP_MINUTES = 10; // loading cools every oven for a few minutes
const LEAST_HELD_MINUTES = 5; // less is passing by

const isBoiling = (moment: OvenMoment, load: Load, air: CoalsLeft['air']): boolean =>
  moment.load !== undefined && load.temperature(moment.load) >= air.boiling - 2;

const boiledMinutes = (moments: readonly OvenMoment[], load: Load, { air }: CoalsLeft): number =>
  moments.filter((moment) => isBoiling(moment, load, air)).length;

const kindsFor = (
  { method, heat }: Way,
  heats: readonly HeldHeat[],
  boiled: number,
): readonly RecipeKind[] => {
  if (method === 'simmer')
    return AT_BOIL.filter(([, least]) => boiled >= least).map(([kind]) => kind);
  const isEnough = (fahrenheit: number, least: number) =>
    heats.some((held) => held.oven >= fromFahrenheit(fahrenheit) && held.minutes >= least);
  return ENOUGH.filter(
    ([, of, wanted, least]) => of === (heat ?? method) && isEnough(wanted, least),
  ).map(([kind]) => kind);
};

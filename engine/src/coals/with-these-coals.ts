// I have 22 coals left: what can I do? Each method in turn, the coals shared as it wants them.
// Source: run.ts, splitByMethod. What a kind of dish needs is common practice, no source.

import type { HeatMethod, RecipeKind } from '../menu/recipe.ts';
import { isRefusal, type Notice, notice, type OrRefusal } from '../notice/notice.ts';
import { fromFahrenheit, type Kelvin, kelvin, type Minutes, minutes } from '../quantity/unit.ts';
import { type FireState, fireNow, type LyingCoals, runOn } from './fire-state.ts';
import type { Load } from './load.ts';
import { roomOf, spilled } from './need.ts';
import { noFire } from './no-fire.ts';
import type { OvenMoment } from './run.ts';
import { shareAboveFor, WANTED_HALF_RANGE } from './split.ts';
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
const METHODS: readonly HeatMethod[] = ['bake', 'roast', 'simmer', 'keep-warm'];

/** What a dish of a kind needs at the least: a heat for so long. Common practice, no source. */
const ENOUGH: readonly (readonly [RecipeKind, HeatMethod, number, number])[] = [
  ['biscuit', 'bake', 400, 15],
  ['corn-bread', 'bake', 400, 25],
  ['quick-bread', 'bake', 350, 40],
  ['yeast-bread', 'bake', 350, 40],
  ['cobbler', 'bake', 350, 40],
  ['fruit', 'bake', 350, 30],
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
  for (const method of METHODS) {
    const way = wayOf(left, method);
    if (isRefusal(way)) return way;
    ways.push(way);
  }
  const isNothing = ways.every((way) => way.kinds.length === 0);
  const about = { oven: left.oven.id };
  return { ways, notices: isNothing ? [notice('COALS_NOTHING_FITS', 'doubt', about)] : [] };
};

const withoutFire = (left: CoalsLeft): OrRefusal<Notice> | undefined => {
  const coals = [
    { place: 'above', pieces: left.pieces, litMinutesAgo: left.litMinutesAgo },
  ] as const;
  const state = { ...left, method: 'bake', coals, load: usualLoad(left, 'bake') } as const;
  const now = fireNow(state);
  return isRefusal(now) ? now : noFire(state, now);
};

const wayOf = (left: CoalsLeft, method: HeatMethod): OrRefusal<Possibility> => {
  const empty = fireNow({ ...left, method, coals: [] });
  if (isRefusal(empty)) return empty;
  const { body } = empty.setting;
  const room = roomOf({ ...left, wish: { method } }, body);
  const above = Math.round(left.pieces * shareAboveFor(method));
  const counts = spilled({ below: left.pieces - above, all: left.pieces }, room);
  const load = usualLoad(left, method);
  const now = fireNow({ ...left, method, load, coals: lying(left, counts) });
  if (isRefusal(now)) return now;
  const start = { ...now.moment, iron: empty.moment.iron, ovenKelvin: empty.moment.ovenKelvin };
  // Baked food waits for its heat; a pot warms with its own.
  const preheat = left.ironNow === undefined ? PREHEAT_MINUTES : HOT_OVEN_MINUTES;
  const wait = method === 'simmer' ? 0 : preheat;
  const moments = runOn(now.setting, start, { minutes: LOOKED_AT_MINUTES, loadInMinute: wait });
  const heats = HEATS.flatMap((heat) => heldHeat(moments, heat));
  return {
    method,
    ...counts,
    hottest: kelvin(Math.max(...moments.map((moment) => moment.ovenKelvin))),
    heats,
    kinds: kindsFor(method, heats, boiledMinutes(moments, load, left)),
  };
};

const PREHEAT_MINUTES = 15;
/** An oven that is hot already: time to lay the coals. */
const HOT_OVEN_MINUTES = 5;

const lying = (
  { litMinutesAgo }: CoalsLeft,
  { above, below }: { readonly above: number; readonly below: number },
): readonly LyingCoals[] => [
  { place: 'above', pieces: above, litMinutesAgo },
  { place: 'below', pieces: below, litMinutesAgo },
];

const heldHeat = (moments: readonly OvenMoment[], heat: Kelvin): readonly HeldHeat[] => {
  const isThere = (moment: OvenMoment) => moment.ovenKelvin >= heat - WANTED_HALF_RANGE;
  const first = moments.findIndex(isThere);
  if (first < 0) return [];
  const end = moments.findIndex((moment, index) => index > first + DIP_MINUTES && !isThere(moment));
  const last = end < 0 ? moments.length - 1 : end;
  return [{ oven: heat, fromMinute: minutes(first), minutes: minutes(last - first) }];
};

const DIP_MINUTES = 10; // loading cools every oven for a few minutes

const boiledMinutes = (moments: readonly OvenMoment[], load: Load, { air }: CoalsLeft): number =>
  moments.filter(
    (moment) => moment.load !== undefined && load.temperature(moment.load) >= air.boiling - 2,
  ).length;

const kindsFor = (
  method: HeatMethod,
  heats: readonly HeldHeat[],
  boiled: number,
): readonly RecipeKind[] => {
  if (method === 'simmer')
    return AT_BOIL.filter(([, least]) => boiled >= least).map(([kind]) => kind);
  const isEnough = (fahrenheit: number, least: number) =>
    heats.some((held) => held.oven >= fromFahrenheit(fahrenheit) && held.minutes >= least);
  return ENOUGH.filter(([, of, heat, least]) => of === method && isEnough(heat, least)).map(
    ([kind]) => kind,
  );
};

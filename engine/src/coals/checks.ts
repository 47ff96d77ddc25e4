// What to look at, when, and what the look costs: empty oven and full oven kept apart.
// Sources: handInside (550 F less 50 F a second), flourTest, common practice for colours.
// Weak spot: expected colours follow the share of the bake that is over, not chemistry; the bake
// stage knows the core and adds the probe.

import { type Kelvin, kelvin, kelvinDifference, minutes, toFahrenheit } from '../quantity/unit.ts';
import type { Check, CheckWay, CoalRequest, Move } from './coal-plan.ts';
import type { Counted } from './count.ts';
import { upMinute } from './count.ts';
import { type MoveChoice, movesAt } from './moves.ts';
import { replayedFrom } from './replay.ts';
import type { RunSetting } from './run.ts';
import { isBaked, WANTED_HALF_RANGE } from './split.ts';
import { visitNear } from './visits.ts';

export interface CheckWish {
  readonly request: CoalRequest;
  readonly setting: RunSetting;
  readonly counted: Counted;
  /** Minutes at which somebody is at this oven anyhow: turns and additions. */
  readonly visits?: readonly number[];
}

const BEFORE_LOADING_MINUTES = 5; // time for a flour test and for a move
const PEEK_SECONDS = 3; // a three second lift
const HAND_SECONDS = 10; // hand or thermometer in the mouth of an empty oven

/**
 * All checks of a plan, soonest first; only those that are of use: there is time for the reading, and
 * for a move to act before the food comes out. Two looks into a full oven that are close are one.
 */
export const checksFor = (wish: CheckWish): readonly Check[] => {
  if (!isBaked(wish.request.wish.method)) return potChecks(wish);
  const { loadInMinute, outMinute } = wish.counted.run;
  const stay = outMinute - loadInMinute;
  const visits = wish.visits ?? [];
  const top = lookAt(wish, Math.round(loadInMinute + TOP_LOOK_SHARE * stay), visits);
  const last = lookAt(wish, Math.round(loadInMinute + LAST_LOOK_SHARE * stay), [...visits, top]);
  const look = (minute: number, ways: readonly CheckWay[]) =>
    fullCheck(wish, { minute, moves: feltAt(wish, minute) }, ways);
  const isApart = last - top >= APART_MINUTES && outMinute - last >= LEAST_LEFT_MINUTES;
  const late = isApart ? [look(last, LAST_WAYS)].filter(isOfUse) : [];
  const first = look(top, late.length > 0 ? TOP_WAYS : BOTH_WAYS);
  return [...emptyChecks(wish), ...[first, ...late].filter(isOfUse)];
};

const TOP_WAYS: readonly CheckWay[] = [{ by: 'nose' }, { by: 'top-colour', colour: 'straw' }];
const LAST_WAYS: readonly CheckWay[] = [
  { by: 'top-colour', colour: 'brown' },
  { by: 'bottom-corner', colour: 'brown' },
];
const BOTH_WAYS: readonly CheckWay[] = [...TOP_WAYS, { by: 'bottom-corner', colour: 'straw' }];
/** Nearer than this a second look tells nothing new; ours. */
const APART_MINUTES = 5;

/** To read it, to go to the fire and for a move to be felt at all; ours. */
const LEAST_LEFT_MINUTES = 4;

/** A reading that nothing can follow is none. */
const isOfUse = ({ ifHot, ifCool }: Check): boolean => ifHot.length + ifCool.length > 0;

/** A move that no thermometer of a camp would tell is none: 5 F, as in rescue.ts. */
const FELT_KELVIN = 2.8;

/** Moves at a minute whose effect is felt before the food comes out. */
const feltAt = (wish: CheckWish, minute: number): MoveChoice => {
  const { ifHot, ifCool } = movesAt({ ...wish, minute });
  const isFelt = ({ effect }: Move) => Math.abs(effect) >= FELT_KELVIN;
  return { ifHot: ifHot.filter(isFelt), ifCool: ifCool.filter(isFelt) };
};

/** Joined to another visit that is near; a stay too short for that keeps its minute. */
const lookAt = ({ counted }: CheckWish, wished: number, visits: readonly number[]): number => {
  const { loadInMinute, outMinute } = counted.run;
  return visitNear(wished, visits, { after: loadInMinute, before: outMinute }) ?? wished;
};

/** When to look at the top, and when at the bottom; common practice, no source. */
const TOP_LOOK_SHARE = 0.6;
const LAST_LOOK_SHARE = 0.85;

/** Flour tells the heat of an oven that stands near it, not of one that has far to go. */
const FLOUR_RISE_KELVIN = 2 * WANTED_HALF_RANGE;

/** None where coals have only just been laid: an oven that is loaded so soon is hot already. */
const emptyChecks = (wish: CheckWish): readonly Check[] => {
  const minute = wish.counted.run.loadInMinute - BEFORE_LOADING_MINUTES;
  return wish.request.wish.preheat && minute >= BEFORE_LOADING_MINUTES
    ? [emptyCheck(wish, minute)].filter(isOfUse)
    : [];
};

const emptyCheck = (wish: CheckWish, minute: number): Check => {
  const { loadInMinute } = wish.counted.run;
  const { wanted } = wish.request.wish;
  const { moments } = wish.counted.run;
  const loading = kelvin(moments[loadInMinute - 1]?.ovenKelvin ?? wanted);
  // A pass is what will be the wanted heat when the load goes in, however wide our doubt is.
  const rises = Math.max(0, loading - (moments[minute]?.ovenKelvin ?? loading));
  const low = kelvin(wanted - WANTED_HALF_RANGE - rises);
  const high = kelvin(wanted + WANTED_HALF_RANGE - rises);
  return {
    minute: minutes(minute),
    oven: 'empty',
    ways: [
      { by: 'thermometer', low, high },
      handWindow(low, high),
      ...(rises > FLOUR_RISE_KELVIN ? [] : [{ by: 'flour', colour: flourColour(wanted) } as const]),
    ],
    costs: lookCost(wish, minute, HAND_SECONDS),
    rises: kelvinDifference(rises),
    ...feltAt(wish, minute),
  };
};

/**
 * Seconds that a hand endures just inside the oven. The other hand test, above an open fire, reads
 * about 100 F apart from this one and is not used.
 *
 * @source  handInside
 */
export const handSeconds = (oven: Kelvin): number =>
  Math.min(8, Math.max(1, (550 - toFahrenheit(oven)) / 50));

const handWindow = (low: Kelvin, high: Kelvin): CheckWay => ({
  by: 'hand-inside',
  leastSeconds: Math.floor(handSeconds(high)),
  mostSeconds: Math.ceil(handSeconds(low)),
});

/**
 * Colour of a teaspoon of flour after five minutes in the empty oven.
 *
 * @source  flourTest: unbrowned below 300 F, light at about 350, dark at about 450; edges between
 *          are ours
 */
export const flourColour = (oven: Kelvin): 'pale' | 'straw' | 'brown' | 'dark' => {
  const fahrenheit = toFahrenheit(oven);
  if (fahrenheit < 300) return 'pale';
  if (fahrenheit < 375) return 'straw';
  return fahrenheit < 425 ? 'brown' : 'dark';
};

interface Look {
  readonly minute: number;
  readonly moves: MoveChoice;
}

const fullCheck = (wish: CheckWish, look: Look, ways: readonly CheckWay[]): Check => ({
  minute: minutes(look.minute),
  oven: 'full',
  ways,
  costs: lookCost(wish, look.minute, PEEK_SECONDS),
  ...look.moves,
});

const potChecks = (wish: CheckWish): readonly Check[] => {
  const { request, counted } = wish;
  if (request.wish.method === 'keep-warm' || request.wish.method === 'fry') return [];
  const { loadInMinute, outMinute } = counted.run;
  const up = upMinute(counted.feed, counted.run);
  const wished = up === undefined ? outMinute - LATE_LOOK_MINUTES : afterUp(up);
  const minute = lookAt(wish, Math.min(outMinute - 1, wished), wish.visits ?? []);
  if (minute <= loadInMinute) return [];
  const at = counted.run.moments[minute];
  const pot = at?.load === undefined ? undefined : request.load.temperature(at.load);
  const moves = feltAt(wish, minute);
  const looks = potLooks(request, pot);
  // Once it should be up a look says whether to wait; a still pot tells nothing.
  if (looks === 'still') return [];
  const check = fullCheck(wish, { minute, moves }, [{ by: 'simmer', looks }]);
  return up === undefined ? [check].filter(isOfUse) : [check];
};

/** A pot that does not come up is looked at near its end, where it moves most; ours. */
const LATE_LOOK_MINUTES = 10;

/** On a whole five, once it must be up. */
const afterUp = (up: number) => Math.ceil((up + 1) / 5) * 5;

/** What the plan has the pot do by then: a check asks for nothing else. */
const potLooks = ({ wish, air }: CoalRequest, pot: number | undefined) => {
  const short = air.boiling - (pot ?? air.boiling);
  if (short > STILL_KELVIN) return 'still';
  if (short > NEAR_KELVIN || wish.method !== 'boil') return 'shivering';
  return 'rolling';
};

/** A pot steams and moves before it boils: about 85 °C at the sea (common practice, no source). */
const STILL_KELVIN = 15;
const NEAR_KELVIN = 2;

const RECOVERED_KELVIN = 1;
const WATCH_MINUTES = 10;

/** What a look costs: the drop one minute later, and the minutes until it is made up. */
const lookCost = (wish: CheckWish, minute: number, openSeconds: number): Check['costs'] => {
  const from = wish.counted.run.moments[minute];
  if (!from) return { heat: kelvinDifference(0), minutes: minutes(0) };
  const run = (seconds: number) =>
    replayedFrom(wish.setting, wish.counted, from, {
      untilMinute: minute + WATCH_MINUTES,
      isDone: true,
      openSeconds: seconds,
    });
  const closed = run(0);
  const drops = run(openSeconds).map(
    (moment, index) => (closed[index]?.ovenKelvin ?? moment.ovenKelvin) - moment.ovenKelvin,
  );
  const made = drops.findIndex((drop, index) => index > 0 && drop < RECOVERED_KELVIN);
  return {
    heat: kelvinDifference(Math.max(0, ...drops)),
    minutes: minutes(made < 0 ? WATCH_MINUTES : made),
  };
};

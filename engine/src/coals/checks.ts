// What to look at, when, and what the look costs: empty oven and full oven kept apart.
// Sources: handInside (550 F less 50 F a second), flourTest, common practice for colours.
// Weak spot: expected colours follow the share of the bake that is over, not chemistry; the bake
// stage knows the core and adds the probe.

import { type Kelvin, kelvin, kelvinDifference, minutes, toFahrenheit } from '../quantity/unit.ts';
import type { Check, CheckWay, CoalRequest } from './coal-plan.ts';
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

/** All checks of a plan, soonest first. */
export const checksFor = (wish: CheckWish): readonly Check[] => {
  if (!isBaked(wish.request.wish.method)) return potChecks(wish);
  const { loadInMinute, outMinute } = wish.counted.run;
  const stay = outMinute - loadInMinute;
  const visits = wish.visits ?? [];
  const top = lookAt(wish, Math.round(loadInMinute + TOP_LOOK_SHARE * stay), visits);
  const last = lookAt(wish, Math.round(loadInMinute + LAST_LOOK_SHARE * stay), [...visits, top]);
  // One set of moves for both looks into a full oven: minutes apart they do the same.
  const moves = movesAt({ ...wish, minute: top });
  return [
    ...(wish.request.wish.preheat ? [emptyCheck(wish)] : []),
    fullCheck(wish, { minute: top, moves }, [
      { by: 'nose' },
      { by: 'top-colour', colour: 'straw' },
    ]),
    fullCheck(wish, { minute: last, moves }, [
      { by: 'top-colour', colour: 'brown' },
      { by: 'bottom-corner', colour: 'brown' },
    ]),
  ];
};

/** Joined to another visit that is near; a stay too short for that keeps its minute. */
const lookAt = ({ counted }: CheckWish, wished: number, visits: readonly number[]): number => {
  const { loadInMinute, outMinute } = counted.run;
  return visitNear(wished, visits, { after: loadInMinute, before: outMinute }) ?? wished;
};

/** When to look at the top, and when at the bottom; common practice, no source. */
const TOP_LOOK_SHARE = 0.6;
const LAST_LOOK_SHARE = 0.85;

const emptyCheck = (wish: CheckWish): Check => {
  const { loadInMinute } = wish.counted.run;
  const minute = Math.max(1, loadInMinute - BEFORE_LOADING_MINUTES);
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
      { by: 'flour', colour: flourColour(wanted) },
    ],
    costs: lookCost(wish, minute, HAND_SECONDS),
    rises: kelvinDifference(rises),
    ...movesAt({ ...wish, minute }),
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
  const up = upMinute(counted.feed, counted.run) ?? Math.round((loadInMinute + outMinute) / 2);
  const looks = request.wish.method === 'boil' ? 'rolling' : 'shivering';
  const soon = Math.min(outMinute - 1, Math.ceil((up + 1) / 5) * 5);
  const minute = lookAt(wish, soon, wish.visits ?? []);
  if (minute <= loadInMinute) return [];
  const moves = movesAt({ ...wish, minute });
  return [fullCheck(wish, { minute, moves }, [{ by: 'simmer', looks }])];
};

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

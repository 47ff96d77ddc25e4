// When are coals added to an oven that bakes, and how many? Settled before it runs, by the burning of
// its coals alone: in more wind visits come in between, none is moved or left out.
// Sources: burn.ts (strength ahead is known); published: add from 20 … 45 min on (coalLife).
// Weak spot: two rules of thumb of ours decide (FIRST_SET_SHARE, leastLeft), tuned.

import { minutes } from '../quantity/unit.ts';
import type { Addition } from './coal-plan.ts';
import { aheadIn, freshAhead, laid, type Span, standingRoom } from './coals-ahead.ts';
import { ASHY_MINUTE, type Counts, type FeedWish } from './feed-wish.ts';
import { aged, type CoalGroup } from './run.ts';

/** People think in fives, and nobody tends one oven more often. */
const EVERY_MINUTES = 5;
/**
 * The first set may burn for this share of its life before it is made up, later ones, older in part,
 * for less. Tuned on 144 bakes of 15 to 90 minutes in 0 to 3 m/s: the farthest that the heat strays
 * from the wish is 31 F (rms), little more than a step of the charts, for 2.7 visits in the mean.
 */
export const FIRST_SET_SHARE = 0.5;
const LATER_SHARE = 0.25;
/** Fewer coals than this share of the need are not worth a visit; ours. */
const LEAST_SHARE = 0.08;
/** Between two visits, where coals do not burn away in minutes. */
const leastBetween = (burnoutMinutes: number): number =>
  Math.max(EVERY_MINUTES, Math.min(10, 0.3 * burnoutMinutes));
/**
 * Coals laid later than this before the end warm nothing that matters: iron holds half its heat for a
 * quarter of an hour. Coals that burn away in minutes leave it sooner.
 */
const leastLeft = (burnoutMinutes: number): number =>
  Math.max(leastBetween(burnoutMinutes), Math.min(15, 0.2 * burnoutMinutes));

/** In a shorter stay the loading is the first visit that comes in, in a longer one its middle. */
const LONG_STAY_MINUTES = 30;

export interface Stretch {
  /** The load goes in. */
  readonly loadMinute: number;
  /** Coals are wanted until here. */
  readonly untilMinute: number;
  readonly burnoutMinutes: number;
}

/**
 * Minutes at which coals are added: a stretch that one set does not last is halved, and its halves
 * again; first the stay, then the loading itself is a visit, then what lies before it.
 */
export const visitMinutes = (stretch: Stretch): readonly number[] => {
  const { loadMinute, untilMinute, burnoutMinutes } = stretch;
  const least = leastBetween(burnoutMinutes);
  const left = leastLeft(burnoutMinutes);
  const fives = (minute: number) => EVERY_MINUTES * Math.round(minute / EVERY_MINUTES);
  const between = (from: number, to: number): readonly number[] => {
    const share = from === 0 ? FIRST_SET_SHARE : LATER_SHARE;
    if (to - from <= share * burnoutMinutes) return [];
    const isBefore = from < loadMinute && loadMinute < to;
    const isLong = to === untilMinute && to - loadMinute >= LONG_STAY_MINUTES;
    const middle =
      isBefore && !isLong ? loadMinute : fives((Math.max(from, isLong ? loadMinute : 0) + to) / 2);
    if (middle - from < least || to - middle < (to === untilMinute ? left : least)) return [];
    return [...between(from, middle), middle, ...between(middle, to)];
  };
  return between(0, untilMinute);
};

/**
 * All additions of an oven: each makes its coals up to the need until the next. Reckoned in fractions
 * throughout and told as whole pieces of the running total, so that rounding never adds up.
 */
export const plannedAdditions = (wish: FeedWish): readonly Addition[] => {
  const { loadMinute, tendedMinutes, setting } = wish;
  const { burnoutMinutes } = setting;
  const until = loadMinute + tendedMinutes;
  const stretch = { loadMinute, untilMinute: until, burnoutMinutes };
  const visits = tendedMinutes > 0 ? visitMinutes(stretch) : [];
  const additions: Addition[] = [];
  let [coals, before] = [laid(wish.sized), 0];
  let [wanted, told] = [wish.sized, wish.counts];
  let waiting = 0;
  for (const [index, minute] of visits.entries()) {
    coals = aged(coals, (minute - before) / burnoutMinutes);
    before = minute;
    const span = { minutes: (visits[index + 1] ?? until) - minute, burnoutMinutes };
    const more = lacking(wish, coals, span);
    coals = [...coals, ...laid(more)];
    wanted = plus(wanted, more);
    waiting += more.above + more.below;
    if (waiting < LEAST_SHARE * wish.need.hold) continue;
    waiting = 0;
    const sets = whole(wish, { wanted, told });
    told = plus(told, sets);
    if (sets.above + sets.below > 0)
      additions.push({ minute: minutes(minute), ...sets, clearAsh: minute >= ASHY_MINUTE });
  }
  return additions;
};

const plus = (one: Counts, other: Counts): Counts => ({
  above: one.above + other.above,
  below: one.below + other.below,
});

/** What makes the coals up to the need over the minutes ahead and still lies flat, before rounding. */
const lacking = (wish: FeedWish, coals: readonly CoalGroup[], span: Span): Counts => {
  const short = (place: CoalGroup['place'], share: number, room: number) => {
    const wanted = (wish.need.hold * share - aheadIn(coals, place, span)) / freshAhead(span);
    return Math.max(0, Math.min(wanted, room - standingRoom(coals, place)));
  };
  const { room, shareAbove } = wish;
  return {
    above: short('above', shareAbove, room.lidAll),
    below: short('below', 1 - shareAbove, room.floorAll),
  };
};

/** Whole pieces that bring what was told so far up to what is wanted so far. */
const whole = (
  { handful }: FeedWish,
  { wanted, told }: { readonly wanted: Counts; readonly told: Counts },
): Counts => {
  const upTo = (pieces: number, so: number) =>
    Math.max(0, Math.round(pieces / handful) * handful - so);
  const all = upTo(wanted.above + wanted.below, told.above + told.below);
  const above = Math.min(all, upTo(wanted.above, told.above));
  return { above, below: all - above };
};

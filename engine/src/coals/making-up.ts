// When are coals added to an oven that bakes, and how many? Settled before it runs, by the burning of
// its coals alone: in more wind visits come in between, none is moved or left out.
// Sources: burn.ts (strength ahead is known); published: add from 20 … 45 min on (coalLife).
// Weak spot: two rules of thumb of ours decide (FIRST_SET_SHARE, LEAST_LEFT), tuned.

import { minutes } from '../quantity/unit.ts';
import type { Addition } from './coal-plan.ts';
import { aheadIn, freshAhead, laid, type Span, standingRoom } from './coals-ahead.ts';
import { ASHY_MINUTE, type Counts, type FeedWish } from './feed-wish.ts';
import { aged, type CoalGroup } from './run.ts';

/** People think in fives, and nobody tends one oven more often. */
const EVERY_MINUTES = 5;
/**
 * The first set may burn for this share of its life before it is made up, later ones, older in part,
 * for less. Tuned: keeps the heat within a step of the charts, 25 F, and half an hour's bake in still
 * air free of visits.
 */
export const FIRST_SET_SHARE = 0.62;
const LATER_SHARE = 0.4;
/** Fewer coals than this share of the need are not worth a visit; ours. */
const LEAST_SHARE = 0.08;
/**
 * Coals laid later warm nothing that matters: iron holds half its heat for a quarter of an hour.
 * Coals that burn away in minutes leave it sooner.
 */
const LEAST_LEFT = { minutes: 10, shareOfBurnout: 0.3 } as const;

/** Minutes at which coals are added: a stretch that one set does not last is halved, and again. */
export const visitMinutes = (untilMinute: number, burnoutMinutes: number): readonly number[] => {
  const left = Math.min(LEAST_LEFT.minutes, LEAST_LEFT.shareOfBurnout * burnoutMinutes);
  const least = Math.max(EVERY_MINUTES, left);
  const between = (from: number, to: number): readonly number[] => {
    const middle = EVERY_MINUTES * Math.round((from + to) / 2 / EVERY_MINUTES);
    const share = from === 0 ? FIRST_SET_SHARE : LATER_SHARE;
    const lasts = to - from <= share * burnoutMinutes;
    if (lasts || middle - from < least || to - middle < least) return [];
    return [...between(from, middle), middle, ...between(middle, to)];
  };
  return between(0, untilMinute);
};

/**
 * All additions of an oven: each makes its coals up to the need until the next. Reckoned in fractions
 * throughout and told as whole pieces of the running total, so that rounding never adds up.
 */
export const plannedAdditions = (wish: FeedWish): readonly Addition[] => {
  const { burnoutMinutes } = wish.setting;
  const until = wish.loadMinute + wish.tendedMinutes;
  const visits = wish.tendedMinutes > 0 ? visitMinutes(until, burnoutMinutes) : [];
  const additions: Addition[] = [];
  let [coals, before] = [laid(wish.sized), 0];
  let lying = laid(wish.counts);
  let [wanted, told] = [wish.sized, wish.counts];
  let waiting = 0;
  for (const [index, minute] of visits.entries()) {
    const older = (minute - before) / burnoutMinutes;
    [coals, lying, before] = [aged(coals, older), aged(lying, older), minute];
    const span = { minutes: (visits[index + 1] ?? until) - minute, burnoutMinutes };
    const more = lacking(wish, coals, span);
    coals = [...coals, ...laid(more)];
    wanted = plus(wanted, more);
    waiting += more.above + more.below;
    if (waiting < LEAST_SHARE * wish.need.hold) continue;
    waiting = 0;
    const asked = whole(wish, { wanted, told });
    told = plus(told, asked);
    const sets = fitting(wish, lying, asked);
    lying = [...lying, ...laid(sets)];
    if (sets.above + sets.below > 0)
      additions.push({ minute: minutes(minute), ...sets, clearAsh: minute >= ASHY_MINUTE });
  }
  return additions;
};

const plus = (one: Counts, other: Counts): Counts => ({
  above: one.above + other.above,
  below: one.below + other.below,
});

/** What makes the coals up to the need over the minutes ahead, before rounding. */
const lacking = (wish: FeedWish, coals: readonly CoalGroup[], span: Span): Counts => {
  const short = (place: CoalGroup['place'], share: number) =>
    Math.max(0, wish.need.hold * share - aheadIn(coals, place, span)) / freshAhead(span);
  return { above: short('above', wish.shareAbove), below: short('below', 1 - wish.shareAbove) };
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

/** No more than lie flat. */
const fitting = ({ handful, room }: FeedWish, lying: readonly CoalGroup[], sets: Counts) => {
  const free = (place: CoalGroup['place'], all: number) =>
    Math.floor(Math.max(0, all - standingRoom(lying, place)) / handful) * handful;
  return {
    above: Math.min(sets.above, free('above', room.lidAll)),
    below: Math.min(sets.below, free('below', room.floorAll)),
  };
};

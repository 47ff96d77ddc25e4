// From a wanted heat to whole coals: the steady network guesses, runs in time correct.
//
// What a wanted temperature means: the mean inside the oven over the time the load is in (in a
// cold start over its second half, for a pot from its boil on). What a chart's printed temperature
// is taken to mean stands in charts.ts. Sources: coalsOvenModelNotes (network), splitByMethod.

import type { CoalRequest } from './coal-plan.ts';
import { feedWish } from './feed-for.ts';
import type { Counts, FeedWish } from './feed-wish.ts';
import { type FedRun, fedRun, laidFirst } from './feeding.ts';
import { firstSet } from './first-set.ts';
import { type HeatNeed, heatNeedFor } from './need.ts';
import { type RunSetting, startMoment } from './run.ts';
import { FRACTION, handfulOf, type Sized, wholeCounts } from './whole-counts.ts';

/** The answer of the search, before it is dressed for people. */
export interface Counted {
  readonly counts: Counts;
  /** Before rounding, before lid and floor were full, before pins. */
  readonly wished: number;
  readonly need: HeatNeed;
  readonly feed: FeedWish;
  readonly run: FedRun;
  readonly meanKelvin: number;
  readonly lidIsFull: boolean;
  readonly floorIsFull: boolean;
  /** What the charts' meaning came to, where a bake was asked beside it. */
  readonly byChart?: number;
  /** Coals that would lie below but for the ring under a bread being closed. */
  readonly movedToLid: number;
}

const ROUNDS = 3;

/**
 * Counts that hold the wish, found by `ROUNDS` corrections: the first set by the heat
 * of the first half hour that counts, what is added later by the heat after that.
 */
export const countCoals = (request: CoalRequest, setting: RunSetting): Counted => {
  const { chartLoad } = request;
  if (chartLoad === undefined) return countedFor(request, setting);
  const { chartLoad: _, ...asked } = request;
  const asChart = countedFor({ ...asked, load: chartLoad }, { ...setting, load: chartLoad });
  return recounted(request, setting, asChart, asChart.counts);
};

/** The same oven with these counts instead, kept up as they are, and with the load itself in it. */
export const recounted = (
  request: CoalRequest,
  setting: RunSetting,
  counted: Counted,
  counts: Counts,
): Counted => {
  const before = counted.counts.above + counted.counts.below;
  const all = counts.above + counts.below;
  const sized = counts === counted.counts ? counted.feed.sized : counts;
  const share = all > 0 ? sized.above / (sized.above + sized.below) : counted.need.shareAbove;
  const hold = (counted.feed.need.hold * all) / Math.max(1, before);
  const need = { ...counted.need, hold, heatUp: hold, shareAbove: share };
  const { loadMinute } = counted.feed;
  const feed = feedWish(request, setting, { need, counts, sized, loadMinute });
  const start = startMoment({
    ironKelvin: request.ironAtStart,
    coals: laidFirst(counts, feed),
  });
  return { ...counted, counts, feed, run: fedRun(feed, start), byChart: counted.byChart ?? before };
};

const countedFor = (request: CoalRequest, setting: RunSetting): Counted => {
  const need = heatNeedFor(request, setting);
  const first: Attempt = { need, ...firstSet(request, setting, need) };
  const { above, below } = request.pins;
  if (above !== undefined && below !== undefined)
    return asPinned(request, setting, { ...first, pinned: above + below });
  const search = need.upKelvin > 0 ? searchedPot : searched;
  return { ...search(request, setting, first), need };
};

// What the cook laid is kept up, not brought to what we would have laid.
const asPinned = (
  request: CoalRequest,
  setting: RunSetting,
  { need, wished, pinned, loadMinute }: Attempt & { readonly pinned: number },
): Counted => {
  const kept = { ...need, hold: pinned, heatUp: pinned };
  return { ...tried(request, setting, { need: kept, wished, loadMinute }), need };
};

// In fractions of a coal and so many rounds, no fewer: whole coals, or a stop when it is near enough,
// would make the answer jump where the wish hardly moves.
const searched = (request: CoalRequest, setting: RunSetting, first: Attempt): Counted => {
  let attempt: Attempt = { ...first, handful: FRACTION };
  let counted = tried(request, setting, attempt);
  for (let round = 0; round < ROUNDS && counted.run.additions.length > 0; round++) {
    const { all, late } = meansWhileIn(counted.feed, counted.run);
    const isHeatedFirst = counted.feed.readyKelvin > 0;
    if (isHeatedFirst && late === undefined) break;
    const { need } = attempt;
    const wanted = need.hold + (request.wish.wanted - (late ?? all)) * need.perKelvin;
    const hold = withinFeed(wanted, first.need.hold);
    attempt = { ...attempt, need: { ...need, hold, heatUp: hold } };
    counted = tried(request, setting, attempt);
  }
  return tried(request, setting, { ...attempt, handful: handfulOf(request) });
};

/**
 * A pot may sit anywhere between a shiver and a gentle roll: it gets the least that keeps its water
 * at the boil, tried from less than the steady network asks for, since water carries it over gaps.
 */
const searchedPot = (request: CoalRequest, setting: RunSetting, first: Attempt): Counted => {
  const at = (share: number) =>
    tried(request, setting, { ...first, need: { ...first.need, hold: share * first.need.hold } });
  let share: number = POT_HOLD.first;
  let counted = at(share);
  while (!staysUp(request, counted) && share < POT_HOLD.most) {
    share += POT_HOLD.step;
    counted = at(share);
  }
  return counted;
};

/**
 * Shares of the steady count to try. 0.7 would do for coals as strong as we think; the first is larger
 * so that coals as weak as the band's low edge (a sixth) hold the boil too.
 */
const POT_HOLD = { first: 0.85, step: 0.15, most: 1.3 } as const;
/** Water this much below the boil hardly shivers; weaker coals take one kelvin more. */
const MOST_DIP_KELVIN = 2;

const staysUp = ({ air, load, wish }: CoalRequest, { feed, run }: Counted): boolean => {
  const up = upMinute(feed, run);
  const boil = Math.min(air.boiling, wish.wanted);
  return run.moments.every(
    (moment) =>
      up === undefined ||
      moment.minute <= up ||
      moment.load === undefined ||
      load.temperature(moment.load) >= boil - MOST_DIP_KELVIN - 0.01,
  );
};

/** Additions may be sized up or down by this share of what the steady network asks for. */
const FEED_REASON = { least: 0.6, most: 1.25 } as const;

const withinFeed = (hold: number, steady: number): number =>
  Math.min(FEED_REASON.most * steady, Math.max(FEED_REASON.least * steady, hold));

interface Attempt extends Sized {
  readonly loadMinute: number;
}

const tried = (request: CoalRequest, setting: RunSetting, attempt: Attempt): Counted => {
  const whole = wholeCounts(request, attempt);
  const { counts } = whole;
  const isPinned = request.pins.above !== undefined || request.pins.below !== undefined;
  const sized = isPinned ? counts : wholeCounts(request, { ...attempt, handful: FRACTION }).counts;
  const feed = feedWish(request, setting, { ...attempt, counts, sized });
  const start = startMoment({
    ironKelvin: request.ironAtStart,
    coals: laidFirst(counts, feed),
  });
  const run = fedRun(feed, start);
  return { ...whole, ...attempt, feed, run, meanKelvin: meansWhileIn(feed, run).all };
};

const EARLY_MINUTES = 30; // about what the first set of coals decides

interface Means {
  readonly all: number;
  /** Undefined for a bake that the first set decides alone. */
  readonly late: number | undefined;
}

/** Means inside the oven over the time that counts; see the header. */
export const meansWhileIn = (feed: FeedWish, run: FedRun): Means => {
  const from = countedFrom(feed, run);
  const mean = (after: number, until: number) => {
    const kelvins = run.moments.slice(after + 1, until + 1).map((moment) => moment.ovenKelvin);
    if (kelvins.length === 0) return;
    return kelvins.reduce((sum, each) => sum + each, 0) / kelvins.length;
  };
  const turn = feed.need.upKelvin > 0 ? from : Math.min(run.outMinute, from + EARLY_MINUTES);
  return {
    all: mean(from, run.outMinute) ?? run.moments.at(-1)?.ovenKelvin ?? Number.NaN,
    late: run.outMinute - turn >= EVERY_LATE_MINUTES ? mean(turn, run.outMinute) : undefined,
  };
};

const EVERY_LATE_MINUTES = 10; // a shorter rest says nothing about what is added

const countedFrom = (feed: FeedWish, run: FedRun): number => {
  const half = Math.floor(run.loadInMinute + feed.stayMinutes / 2);
  if (feed.need.upKelvin > 0) return Math.min(half, upMinute(feed, run) ?? half);
  return feed.readyKelvin > 0 ? run.loadInMinute : half;
};

/** First minute at which a pot has come up, or undefined. */
export const upMinute = (feed: FeedWish, run: FedRun): number | undefined =>
  run.moments.find(
    (moment) =>
      moment.load !== undefined && feed.setting.load.temperature(moment.load) >= feed.need.upKelvin,
  )?.minute;

const STEAM_JOULES_PER_GRAM = 2257; // at 100 °C; 1 % more at 90 (if97, steam tables)

/** Grams that boil away once a pot has come up; undefined for a bake. */
export const boiledOffGrams = ({ feed, run }: Counted): number | undefined => {
  const up = upMinute(feed, run);
  if (feed.need.upKelvin === 0 || up === undefined) return;
  const joules = (run.moments.at(-1)?.loadJoules ?? 0) - (run.moments[up]?.loadJoules ?? 0);
  return Math.max(0, joules / STEAM_JOULES_PER_GRAM);
};

/** Laid at coals on: the lid of a pot that is browned first stays bare until then. */
export const firstCounts = ({ counts, feed }: Counted): Counts =>
  feed.brownMinutes > 0 ? { ...counts, above: 0 } : counts;

/** First sets and all additions. */
export const coalsInAll = (counted: Counted): number => {
  const { above, below } = firstCounts(counted);
  return counted.run.additions.reduce(
    (sum, addition) => sum + addition.above + addition.below,
    above + below,
  );
};

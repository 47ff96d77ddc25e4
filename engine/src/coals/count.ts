// From a wanted heat to whole coals: the steady network guesses, runs in time correct.
//
// What a wanted temperature means: the mean inside the oven over the time the load is in (in a
// cold start over its second half, for a pot from its boil on). What a chart's printed temperature
// is taken to mean stands in charts.ts. Sources: coalsOvenModelNotes (network), splitByMethod.

import type { CoalRequest } from './coal-plan.ts';
import { type FedRun, type FeedWish, fedRun, laidFirst } from './feeding.ts';
import { SHOVEL_PIECES } from './fuel.ts';
import { firstCoals, type HeatNeed, heatNeedFor, spilled } from './need.ts';
import type { Room } from './room.ts';
import { type RunSetting, startMoment } from './run.ts';
import { hasBareLid, isBaked, isHeatedFirst } from './split.ts';

export interface Counts {
  readonly above: number;
  readonly below: number;
}

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

const MOST_ROUNDS = 3;
/** Loaded when this near the wanted heat: a cook's eye is not finer. */
const READY_KELVIN = 3;

/**
 * Counts that hold the wish, found by at most `MOST_ROUNDS` corrections: the first set by the heat
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
  const share = all > 0 ? counts.above / all : counted.need.shareAbove;
  const hold = (counted.feed.need.hold * all) / Math.max(1, before);
  const need = { ...counted.need, hold, heatUp: hold, shareAbove: share };
  const feed = feedWish(request, setting, { need, counts, wished: counted.wished });
  const start = startMoment({
    ironKelvin: request.ironAtStart,
    coals: laidFirst(counts, feed),
  });
  return { ...counted, counts, feed, run: fedRun(feed, start), byChart: counted.byChart ?? before };
};

const countedFor = (request: CoalRequest, setting: RunSetting): Counted => {
  const need = heatNeedFor(request, setting);
  const first: Attempt = { need, wished: firstCoals(request, setting, need) };
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
  { need, wished, pinned }: Attempt & { readonly pinned: number },
): Counted => {
  const kept = { ...need, hold: pinned, heatUp: pinned };
  return { ...tried(request, setting, { need: kept, wished }), need };
};

const searched = (request: CoalRequest, setting: RunSetting, first: Attempt): Counted => {
  let attempt = first;
  let counted = tried(request, setting, attempt);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = corrected(request, counted, attempt);
    const change = Math.hypot(
      next.wished - attempt.wished,
      counted.run.additions.length > 0 ? next.need.hold - attempt.need.hold : 0,
    );
    if (change < CLOSE_COALS * handfulOf(request)) break;
    attempt = next;
    counted = tried(request, setting, attempt);
  }
  return counted;
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

const CLOSE_COALS = 0.5; // near enough to stop searching: people lay whole ones

/** Additions may be sized up or down by this share of what the steady network asks for. */
const FEED_REASON = { least: 0.6, most: 1.25 } as const;

const withinFeed = (hold: number, steady: number): number =>
  Math.min(FEED_REASON.most * steady, Math.max(FEED_REASON.least * steady, hold));

const corrected = (request: CoalRequest, counted: Counted, { need, wished }: Attempt): Attempt => {
  const { early, late } = meansWhileIn(counted.feed, counted.run);
  const coals = (mean: number | undefined) =>
    mean === undefined ? 0 : (request.wish.wanted - mean) * need.perKelvin;
  // What was added in the first half hour shares the blame for it.
  const isFedEarly = counted.run.additions.some(
    (addition) => addition.minute < counted.run.loadInMinute + EARLY_MINUTES / 2,
  );
  const feedBlame = isFedEarly && need.upKelvin === 0 ? 0.5 : 0;
  const hold = withinFeed(need.hold + coals(late) + feedBlame * coals(early), counted.need.hold);
  return {
    wished: withinReason(wished + (1 - feedBlame) * coals(early), request, counted.need),
    need: { ...need, hold, heatUp: need.upKelvin > 0 ? need.heatUp : hold },
  };
};

/** The steady answer may be corrected, not overturned; hot iron needs less than any air does. */
const REASON = { least: 0.9, leastWhenHot: 0.5, most: 1.4 } as const;

// A pot never gets fewer than its boil wants.
const withinReason = (wished: number, request: CoalRequest, need: HeatNeed): number => {
  const isHot = request.ironAtStart > request.air.temperature + HOT_IRON_KELVIN;
  const share = isHot ? REASON.leastWhenHot : REASON.least;
  const least = need.upKelvin > 0 ? need.heatUp : share * need.hold;
  const most = Math.max(least, REASON.most * need.hold);
  return Math.min(most, Math.max(least, wished));
};

/** Iron this far above the air is an oven used again. */
export const HOT_IRON_KELVIN = 10;

interface Attempt {
  readonly need: HeatNeed;
  readonly wished: number;
}

export const handfulOf = (request: CoalRequest) =>
  request.fuel.kind === 'wood-coals' ? SHOVEL_PIECES / 2 : 1;

const tried = (request: CoalRequest, setting: RunSetting, attempt: Attempt): Counted => {
  const whole = wholeCounts(request, attempt);
  const feed = feedWish(request, setting, { ...attempt, counts: whole.counts });
  const start = startMoment({
    ironKelvin: request.ironAtStart,
    coals: laidFirst(whole.counts, feed),
  });
  const run = fedRun(feed, start);
  return { ...whole, ...attempt, feed, run, meanKelvin: meansWhileIn(feed, run).all };
};

const feedWish = (
  request: CoalRequest,
  setting: RunSetting,
  { need, counts }: Attempt & { readonly counts: Counts },
): FeedWish => {
  const all = counts.above + counts.below;
  return {
    setting,
    need,
    shareAbove: all > 0 ? counts.above / all : need.shareAbove,
    heldShareAbove: need.shareAbove,
    room: feedRoom(request, need.room, counts),
    stayMinutes: Math.max(1, Math.round(request.wish.minutes)),
    tendedMinutes: Math.max(1, Math.round(request.wish.tendedFor ?? request.wish.minutes)),
    readyKelvin: isHeatedFirst(request.wish) ? request.wish.wanted - READY_KELVIN : 0,
    handful: handfulOf(request),
    brownMinutes: Math.round(request.wish.brownFirst ?? 0),
    lidAfterBrowning: counts.above,
  };
};

// Added coals keep to the ring under a bread as the first ones do; a pinned heap is kept up.
const feedRoom = (request: CoalRequest, room: Room, counts: Counts): Room =>
  isBaked(request.wish.method)
    ? { ...room, floorAll: Math.max(room.floorRing, counts.below) }
    : room;

/** Whole coals (or half shovels) above and below, pins kept, lid and floor not overfilled. */
const wholeCounts = (request: CoalRequest, { need, wished }: Attempt) => {
  const handful = handfulOf(request);
  const rounded = (coals: number) => Math.round(coals / handful) * handful;
  const fitting = (room: number) => Math.floor(room / handful) * handful;
  const { pins } = request;
  const all = Math.max(handful, rounded(Math.min(wished, 1000)));
  const shared = rounded(all * need.shareAbove);
  const plain = { above: shared, below: all - shared };
  const fair = fairCounts(request, need.room, { all, below: plain.below, handful });
  const above =
    pins.above ?? (pins.below === undefined ? fair.above : Math.max(0, all - pins.below));
  const below = pins.below ?? Math.max(0, all - above);
  const ringIsFull = isBaked(request.wish.method) && fair.below < plain.below;
  const isLidOver = pins.above === undefined && above > need.room.lidAll;
  const floorIsFull =
    pins.below === undefined &&
    (hasBareLid(request.wish.method)
      ? plain.below >= fitting(need.room.floorAll)
      : below > need.room.floorAll);
  return {
    counts: {
      above: isLidOver ? fitting(need.room.lidAll) : above,
      below: floorIsFull ? fitting(need.room.floorAll) : below,
    },
    lidIsFull: isLidOver && !hasBareLid(request.wish.method),
    floorIsFull,
    movedToLid: ringIsFull && pins.above === undefined ? plain.below - fair.below : 0,
  };
};

interface ShareWish {
  readonly all: number;
  readonly below: number;
  readonly handful: number;
}

/**
 * Under a pot the floor is filled, and what does not fit goes on the lid. Under a bread there is one
 * ring under the rim and none in the middle (ringMethod): more goes on the lid, and only what its
 * lid can not carry makes a second ring.
 */
const fairCounts = (request: CoalRequest, room: Room, wish: ShareWish): Counts => {
  const down = (pieces: number) => Math.floor(pieces / wish.handful) * wish.handful;
  if (!isBaked(request.wish.method))
    return spilled(wish, { ...room, floorAll: down(room.floorAll) });
  const ring = Math.max(wish.handful, down(room.floorRing));
  const below = Math.min(wish.below, ring);
  const tooMany = Math.max(0, wish.all - below - down(room.lidAll));
  const second = Math.min(tooMany, down(room.floorSecondRing));
  return { above: wish.all - below - second, below: below + second };
};

const EARLY_MINUTES = 30; // about what the first set of coals decides

interface Means {
  readonly all: number;
  readonly early: number | undefined;
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
    early: mean(from, turn),
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

// From a wanted heat to whole coals: the steady network guesses, runs in time correct.
//
// What a wanted temperature means: the mean inside the oven over the time the load is in (in a
// cold start over its second half, for a pot from its boil on). What a chart's printed temperature
// is taken to mean stands in charts.ts.

import type { CoalRequest } from './coal-plan.ts';
import { type FedRun, type FeedWish, fedRun, laid } from './feeding.ts';
import { SHOVEL_PIECES } from './fuel.ts';
import { firstCoals, type HeatNeed, heatNeedFor } from './need.ts';
import { type RunSetting, startMoment } from './run.ts';

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
}

const MOST_ROUNDS = 4;
/** Loaded when this near the wanted heat: a cook's eye is not finer. */
const READY_KELVIN = 3;

/** Counts that hold the wish, found by at most `MOST_ROUNDS` corrections. */
export const countCoals = (request: CoalRequest, setting: RunSetting): Counted => {
  const need = heatNeedFor(request, setting);
  let counted = tried(request, setting, { need, wished: firstCoals(request, setting, need) });
  const { above, below } = request.pins;
  if (above !== undefined && below !== undefined) return counted;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const miss = request.wish.wanted - counted.meanKelvin;
    const next = withinReason(counted.wished + miss * need.perKelvin, need);
    if (Math.abs(next - counted.wished) < 0.6 * handfulOf(request)) break;
    counted = tried(request, setting, { need, wished: next });
  }
  return counted;
};

// The steady answer may be corrected, not overturned; a pot never gets fewer than its boil wants.
const withinReason = (wished: number, need: HeatNeed): number => {
  const least = need.upKelvin > 0 ? need.heatUp : 0.6 * need.hold;
  const most = Math.max(least, 1.4 * need.hold);
  return Math.min(most, Math.max(least, wished));
};

interface Attempt {
  readonly need: HeatNeed;
  readonly wished: number;
}

const handfulOf = (request: CoalRequest) =>
  request.fuel.kind === 'wood-coals' ? SHOVEL_PIECES / 2 : 1;

const tried = (request: CoalRequest, setting: RunSetting, attempt: Attempt): Counted => {
  const whole = wholeCounts(request, attempt);
  const feed = feedWish(request, setting, { ...attempt, counts: whole.counts });
  const start = startMoment({ ironKelvin: request.ironAtStart, coals: laid(whole.counts) });
  const run = fedRun(feed, start);
  return { ...whole, ...attempt, feed, run, meanKelvin: meanWhileIn(feed, run) };
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
    room: need.room,
    stayMinutes: Math.max(1, Math.round(request.wish.minutes)),
    readyKelvin: request.wish.preheat ? request.wish.wanted - READY_KELVIN : 0,
    handful: handfulOf(request),
  };
};

/** Whole coals (or half shovels) above and below, pins kept, lid and floor not overfilled. */
const wholeCounts = (request: CoalRequest, { need, wished }: Attempt) => {
  const handful = handfulOf(request);
  const rounded = (coals: number) => Math.round(coals / handful) * handful;
  const fitting = (room: number) => Math.floor(room / handful) * handful;
  const { pins } = request;
  const all = Math.max(handful, rounded(Math.min(wished, 1000)));
  const shared = rounded(all * need.shareAbove);
  const above = pins.above ?? (pins.below === undefined ? shared : Math.max(0, all - pins.below));
  const below = pins.below ?? Math.max(0, all - above);
  const lidIsFull = pins.above === undefined && above > need.room.lidAll;
  const floorIsFull = pins.below === undefined && below > need.room.floorAll;
  return {
    counts: {
      above: lidIsFull ? fitting(need.room.lidAll) : above,
      below: floorIsFull ? fitting(need.room.floorAll) : below,
    },
    lidIsFull,
    floorIsFull,
  };
};

/** Mean inside the oven over the time that counts; see the header. */
export const meanWhileIn = (feed: FeedWish, run: FedRun): number => {
  const from = countedFrom(feed, run);
  const counted = run.moments.filter((moment) => moment.minute > from);
  const sum = counted.reduce((total, moment) => total + moment.ovenKelvin, 0);
  return counted.length > 0 ? sum / counted.length : (run.moments.at(-1)?.ovenKelvin ?? Number.NaN);
};

const countedFrom = (feed: FeedWish, run: FedRun): number => {
  const half = run.loadInMinute + feed.stayMinutes / 2;
  if (feed.need.upKelvin > 0) return Math.min(half, upMinute(feed, run) ?? half);
  return feed.readyKelvin > 0 ? run.loadInMinute : half;
};

/** First minute at which a pot has come up, or undefined. */
export const upMinute = (feed: FeedWish, run: FedRun): number | undefined =>
  run.moments.find(
    (moment) =>
      moment.load !== undefined && feed.setting.load.temperature(moment.load) >= feed.need.upKelvin,
  )?.minute;

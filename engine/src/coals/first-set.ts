// How many coals are laid first, and when is the oven loaded?
//
// Both are found by running the oven in calm air; wind then scales the coals by what it takes from the
// iron and by how much sooner it ages them. So more wind never asks for fewer, and no minute jumps.
// Sources: coalsOvenModelNotes (network), burn.ts. Weak spot: wind's effect on the warming up is not
// run here; what is added later is sized by the heat in the wind itself (count.ts).

import { draughtRate } from './burn.ts';
import type { CoalRequest } from './coal-plan.ts';
import { laidBetween } from './coals-ahead.ts';
import { feedWish, readyKelvinFor } from './feed-for.ts';
import type { FeedWish } from './feed-wish.ts';
import { type FedRun, fedRun, laidFirst, readyMinute } from './feeding.ts';
import { FIRST_SET_SHARE } from './making-up.ts';
import { firstCoals, type HeatNeed, heatNeedFor } from './need.ts';
import { type OvenMoment, type RunSetting, startMoment } from './run.ts';
import { isHeatedFirst } from './split.ts';
import { FRACTION, type Sized, wholeCounts } from './whole-counts.ts';

export interface FirstSet {
  /** Coals of the first set, before rounding. */
  readonly wished: number;
  readonly loadMinute: number;
}

const ROUNDS = 3;

export const firstSet = (request: CoalRequest, setting: RunSetting, need: HeatNeed): FirstSet => {
  const { wish, pins } = request;
  const wished = firstCoals(request, setting, need);
  if (need.upKelvin > 0) return { wished, loadMinute: Math.round(wish.brownFirst ?? 0) };
  if (pins.above !== undefined && pins.below !== undefined)
    return { wished, loadMinute: loadMinuteFor(request, setting, { need, wished }) };
  const calm = inCalmAir(setting);
  const isCalm = setting.outside.windMetresPerSecond === 0;
  const calmNeed = isCalm ? need : heatNeedFor(request, calm);
  const start = { need: calmNeed, wished: firstCoals(request, calm, calmNeed), handful: FRACTION };
  const loadMinute = loadMinuteFor(request, calm, start);
  const settled = settledInCalm(request, calm, { ...start, loadMinute });
  const feed = feedOf(request, setting, { ...start, loadMinute });
  const age = ageOver(feed, setting.burnoutMinutes) / ageOver(feed, calm.burnoutMinutes);
  const loss = calmNeed.hold > 0 ? need.hold / calmNeed.hold : 1;
  return { wished: withinReason(settled * age * loss, request, need), loadMinute };
};

/** The same oven where no wind blows. */
const inCalmAir = (setting: RunSetting): RunSetting => {
  const { outside, burnoutMinutes } = setting;
  return {
    ...setting,
    outside: { ...outside, windMetresPerSecond: 0 },
    burnoutMinutes: burnoutMinutes * draughtRate(outside.windMetresPerSecond),
  };
};

const loadMinuteFor = (request: CoalRequest, setting: RunSetting, sized: Sized): number => {
  if (!isHeatedFirst(request.wish)) return 0;
  const feed = feedOf(request, setting, { ...sized, loadMinute: 0 });
  return readyMinute(setting, startOf(request, feed), readyKelvinFor(request));
};

type Timed = Sized & { readonly loadMinute: number };

const feedOf = (request: CoalRequest, setting: RunSetting, sized: Timed): FeedWish => {
  const { counts } = wholeCounts(request, sized);
  return feedWish(request, setting, { ...sized, counts, sized: counts });
};

const startOf = ({ ironAtStart }: CoalRequest, feed: FeedWish): OvenMoment =>
  startMoment({ ironKelvin: ironAtStart, coals: laidFirst(feed.counts, feed) });

/** Coals with which the heat is as wanted in the mean, over the minutes that tell for this start. */
const settledInCalm = (request: CoalRequest, calm: RunSetting, first: Timed): number => {
  let { wished } = first;
  for (let round = 0; round < ROUNDS; round++) {
    const feed = feedOf(request, calm, { ...first, wished });
    const mean =
      feed.readyKelvin > 0 ? aloneKelvin(request, feed) : keptKelvin(request, feed, wished);
    const miss = request.wish.wanted - mean;
    wished = withinReason(wished + miss * first.need.perKelvin, request, first.need);
  }
  return wished;
};

/** Heated first: while the first set alone heats the load, so it does not depend on what follows. */
const aloneKelvin = (request: CoalRequest, feed: FeedWish): number => {
  const { from, to } = aloneSpan(feed, feed.setting.burnoutMinutes);
  const stayMinutes = Math.round(to) - feed.loadMinute;
  const run = fedRun({ ...feed, stayMinutes, tendedMinutes: 0 }, startOf(request, feed));
  return meanFrom(run, from);
};

/** Started cold: over its second half, with what is added kept in step with the first set. */
const keptKelvin = (request: CoalRequest, feed: FeedWish, wished: number): number => {
  const hold = wished / ageOver(feed, feed.setting.burnoutMinutes);
  const run = fedRun({ ...feed, need: { ...feed.need, hold } }, startOf(request, feed));
  return meanFrom(run, Math.floor(feed.stayMinutes / 2));
};

const meanFrom = ({ moments }: FedRun, minute: number): number => {
  const inside = moments.slice(minute + 1).map(({ ovenKelvin }) => ovenKelvin);
  return inside.reduce((sum, each) => sum + each, 0) / Math.max(1, inside.length);
};

const EARLY_MINUTES = 30; // about what the first set of coals decides
const LEAST_LOOK_MINUTES = 5;

/** Minutes over which the first set alone is to keep the heat, as long as it is left to itself. */
const aloneSpan = (feed: FeedWish, burnoutMinutes: number) => {
  const from = feed.loadMinute;
  const alone = FIRST_SET_SHARE * burnoutMinutes;
  const to = Math.min(from + feed.stayMinutes, alone);
  const early = feed.readyKelvin > 0 ? Math.min(to, from + EARLY_MINUTES) : to;
  return { from, to: Math.max(early, from + LEAST_LOOK_MINUTES) };
};

const WEAKEST = 0.1; // a set that is all but ash when it is wanted is sized by withinReason

/** Old coals are weaker than the mid-life coal that the network counts in. */
const ageOver = (feed: FeedWish, burnoutMinutes: number): number =>
  1 / Math.max(WEAKEST, laidBetween(aloneSpan(feed, burnoutMinutes), burnoutMinutes));

/** The steady answer may be corrected, not overturned; hot iron needs less than any air does. */
const REASON = { least: 0.9, leastWhenHot: 0.5, most: 1.4 } as const;

const withinReason = (wished: number, request: CoalRequest, need: HeatNeed): number => {
  const isHot = request.ironAtStart > request.air.temperature + HOT_IRON_KELVIN;
  const share = isHot ? REASON.leastWhenHot : REASON.least;
  return Math.min(REASON.most * need.hold, Math.max(share * need.hold, wished));
};

/** Iron this far above the air is an oven used again. */
export const HOT_IRON_KELVIN = 10;

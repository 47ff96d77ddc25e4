// Which coals bring core, top and bottom to their end together? The bake judges a handful of layouts;
// the best is laid. Source: ours; splitByMethod for where it starts; the bound of a fifth more than a
// chart is one cook's published need to brown crusts.
// Weak spot: few layouts are tried, so the best is the best of those.

import type { CoalRequest, CurvePoint } from './coal-plan.ts';
import { type Counted, type Counts, handfulOf, recounted } from './count.ts';
import { curveOf } from './curve.ts';
import { foodInMinute } from './food-in.ts';
import type { RunSetting } from './run.ts';

/** What a bake makes of an oven's curve. coals/ declares it, bake/ implements it. */
export type BakeJudge = (oven: {
  readonly curve: readonly CurvePoint[];
  readonly loadInMinute: number;
}) => BakeVerdict;

export interface BakeVerdict {
  /** From load in to done. */
  readonly minutes: number;
  /** Nothing lacks at 0; in minutes that a cook would as soon lose. */
  readonly fault: number;
}

/**
 * Shares above that are tried. Charts and pages put 58 to 75 % of a bread's coals on the lid
 * (splitByMethod); the bake may go a step past them, no farther.
 */
const SHARES = [0.6, 2 / 3, 0.73, 0.8] as const;
const MOST_ABOVE = 0.8;
/** Then, at the best share, these many coals in all beside what the charts say. */
const TOTALS = [0.9, 1.1, 1.2] as const;
/** A coal more must be worth as many minutes. */
const COAL_PRICE_MINUTES = 0.25;

/** The counts of which the judge thinks best, run. */
export const settled = (
  request: CoalRequest,
  setting: RunSetting,
  first: Counted,
  judge: BakeJudge,
): Counted => {
  const all = first.counts.above + first.counts.below;
  const tried = new Map<string, Tried>();
  const tryOut = (counts: Counts): Tried => {
    const key = `${counts.above}/${counts.below}`;
    const found = tried.get(key) ?? judged({ request, setting, first, judge }, counts);
    tried.set(key, found);
    return found;
  };
  const shared = SHARES.map((share) => tryOut(sharedOut(request, first, { all, share })));
  let best = bestOf([tryOut(first.counts), ...shared]);
  const share = best.counted.counts.above / (best.counted.counts.above + best.counted.counts.below);
  const sized = TOTALS.map((size) => tryOut(sharedOut(request, first, { all: size * all, share })));
  best = bestOf([best, ...sized]);
  const near = [-1, 1].map((step) => tryOut(moved(request, first, best.counted.counts, step)));
  return bestOf([best, ...near]).counted;
};

interface Tried {
  readonly counted: Counted;
  readonly score: number;
}

interface Judged {
  readonly request: CoalRequest;
  readonly setting: RunSetting;
  readonly first: Counted;
  readonly judge: BakeJudge;
}

const judged = ({ request, setting, first, judge }: Judged, counts: Counts): Tried => {
  const counted = recounted(request, setting, first, counts);
  const { fault } = judge({
    curve: curveOf(request.load, counted.run.moments, []),
    loadInMinute: foodInMinute(counted),
  });
  return { counted, score: fault + COAL_PRICE_MINUTES * (counts.above + counts.below) };
};

const bestOf = (all: readonly Tried[]): Tried =>
  all.reduce((best, each) => (each.score < best.score ? each : best));

/** Whole coals or half shovels; what the lid can not carry is left out, not put below. */
const sharedOut = (
  request: CoalRequest,
  { need }: Counted,
  wish: { readonly all: number; readonly share: number },
): Counts => {
  const handful = handfulOf(request);
  const rounded = (coals: number) => Math.round(coals / handful) * handful;
  const lid = Math.floor(need.room.lidAll / handful) * handful;
  const ring = Math.max(handful, Math.floor(need.room.floorRing / handful) * handful);
  const above = Math.min(lid, rounded(wish.all * wish.share));
  const below = Math.min(ring, Math.max(handful, rounded(wish.all * (1 - wish.share))));
  return { above, below };
};

/** One handful more or fewer below, the lid as it is. */
const moved = (request: CoalRequest, first: Counted, counts: Counts, step: number): Counts => {
  const handful = handfulOf(request);
  const ring = Math.max(handful, Math.floor(first.need.room.floorRing / handful) * handful);
  const least = Math.ceil(((1 - MOST_ABOVE) / MOST_ABOVE) * counts.above - 0.5);
  const below = Math.min(ring, Math.max(handful, least, counts.below + step * handful));
  return { above: counts.above, below };
};

// Which coals bring core, top and bottom to their end together? The bake judges layouts, first a few
// far apart, then neighbours of the best in the direction that its faces ask for; the best is laid.
// Source: ours; splitByMethod for where it starts; heavy coals above and a ring below are common
// practice, no source.
// Weak spot: a descent finds a good layout near where it starts, not surely the best of all.

import { minutes } from '../quantity/unit.ts';
import type { AsCounted, ChosenCounts, CoalRequest, CurvePoint } from './coal-plan.ts';
import { type Counted, recounted } from './count.ts';
import { curveOf } from './curve.ts';
import { foodInMinute } from './food-in.ts';
import type { RunSetting } from './run.ts';
import { handfulOf } from './whole-counts.ts';

type Counts = Counted['counts'];

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
  /** How much too dark each face comes out; below 0 too pale, 0 right. Left out, nobody looked. */
  readonly faces?: { readonly top: number; readonly bottom: number };
  /** From load in to a dark bottom, where that is sooner than done. */
  readonly darkBottom?: number;
}

export interface Settled {
  readonly counted: Counted;
  readonly chosen: ChosenCounts;
}

/** The counts of which the judge thinks best, run; from those chosen before, where there are some. */
export const settled = (
  request: CoalRequest,
  setting: RunSetting,
  first: Counted,
  judge: BakeJudge,
): Settled => {
  const search = searchOf({ request, setting, first, judge });
  const all = first.counts.above + first.counts.below;
  const { chosen } = request;
  const starts = chosen === undefined ? startsFrom(request, first.counts) : [chosen];
  const tried = starts.map(search.tryOut);
  let best = bestOf(tried);
  for (const step of [coarseStep(request, all), handfulOf(request)])
    best = walked(search, best, step);
  const asCounted = chosen === undefined ? turnedDown(tried[0]!, best) : chosen.asCounted;
  return {
    counted: best.counted,
    chosen: { ...best.counted.counts, ...(asCounted === undefined ? {} : { asCounted }) },
  };
};

/** Why the layout as counted is not laid, where its bottom is why. */
function turnedDown({ counts, verdict }: Tried, best: Tried): AsCounted | undefined {
  if (verdict.darkBottom === undefined || counts.below <= best.counts.below) return undefined;
  return {
    ...counts,
    darkMinute: minutes(verdict.darkBottom),
    doneMinute: minutes(verdict.minutes),
  };
}

const startsFrom = (request: CoalRequest, counts: Counts): readonly Counts[] => {
  const all = counts.above + counts.below;
  const spread = SHARES.map((share) => {
    const above = inHandfuls(request, all * share);
    return { above, below: inHandfuls(request, all) - above };
  });
  return [counts, ...spread];
};

/** Shares above that are looked at first; charts and pages put 58 to 75 % there (splitByMethod). */
const SHARES = [0.62, 0.72, 0.82] as const;
/**
 * In all, beside what the charts say. One cook needed a fifth more to brown crusts; a lid full of coals
 * over a thin batter, as camp practice has it, is up to a third more. Each has its price, below.
 */
const TOTALS = { least: 0.8, most: 1.35 } as const;
/**
 * Fewer below than half a ring heat the floor in spots: each that lacks must be worth as many minutes.
 * Fewer than a third are never laid. Judged.
 */
const EVEN_RING = { least: 1 / 3, usual: 1 / 2, minutes: 1 } as const;
/** A coal more must be worth as many minutes. */
const COAL_PRICE_MINUTES = 0.15;
/** Layouts that are run for one load at most; it takes about half of them. */
const MOST_RUNS = 30;

interface Tried {
  readonly counts: Counts;
  readonly counted: Counted;
  readonly score: number;
  readonly verdict: BakeVerdict;
}

interface Search {
  /** Brought into its bounds first; run once, however often it is asked for. */
  readonly tryOut: (counts: Counts) => Tried;
  readonly isSpent: () => boolean;
}

interface Judged {
  readonly request: CoalRequest;
  readonly setting: RunSetting;
  readonly first: Counted;
  readonly judge: BakeJudge;
}

const searchOf = (asked: Judged): Search => {
  const tried = new Map<string, Tried>();
  const bounds = boundsOf(asked);
  return {
    tryOut: (counts) => {
      const within = bounds(counts);
      const key = `${within.above}/${within.below}`;
      const found = tried.get(key) ?? judged(asked, within);
      tried.set(key, found);
      return found;
    },
    isSpent: () => tried.size >= MOST_RUNS,
  };
};

const judged = ({ request, setting, first, judge }: Judged, counts: Counts): Tried => {
  const counted = recounted(request, setting, first, counts);
  const verdict = judge({
    curve: curveOf(request.load, counted.run.moments, []),
    loadInMinute: foodInMinute(counted),
  });
  const lacking = Math.max(0, EVEN_RING.usual * first.need.room.floorRing - counts.below);
  const price = COAL_PRICE_MINUTES * (counts.above + counts.below) + EVEN_RING.minutes * lacking;
  return { counts, counted, score: verdict.fault + price, verdict };
};

const bestOf = (all: readonly Tried[]): Tried =>
  all.reduce((best, each) => (each.score < best.score ? each : best));

/** From the best so far to any neighbour that is better, until none is or the runs are spent. */
const walked = (search: Search, from: Tried, step: number): Tried => {
  let best = from;
  let isBetter = true;
  while (isBetter && !search.isSpent()) {
    isBetter = false;
    for (const [above, below] of waysFor(best.verdict.faces)) {
      if (search.isSpent()) break;
      const next = search.tryOut({
        above: best.counts.above + step * above,
        below: best.counts.below + step * below,
      });
      if (next.score >= best.score) continue;
      best = next;
      isBetter = true;
      break;
    }
  }
  return best;
};

type Way = readonly [above: number, below: number];

const WAYS: Readonly<Record<string, readonly Way[]>> = {
  bottomDark: [
    [0, -1],
    [1, -1],
    [-1, -1],
  ],
  bottomPale: [
    [0, 1],
    [-1, 1],
  ],
  topPale: [
    [1, 0],
    [1, -1],
  ],
  topDark: [
    [-1, 0],
    [-1, 1],
  ],
  right: [
    [-1, 0],
    [0, -1],
    [1, 0],
  ],
  unknown: [
    [0, -1],
    [0, 1],
    [-1, 0],
    [1, 0],
    [1, -1],
    [-1, 1],
  ],
};

/** The face that is farther off is helped first. */
const waysFor = (faces: BakeVerdict['faces']): readonly Way[] => {
  if (faces === undefined) return WAYS.unknown!;
  const forTop = faces.top > 0 ? WAYS.topDark! : WAYS.topPale!;
  const forBottom = faces.bottom > 0 ? WAYS.bottomDark! : WAYS.bottomPale!;
  const ways = [...(faces.bottom === 0 ? [] : forBottom), ...(faces.top === 0 ? [] : forTop)];
  if (ways.length === 0) return WAYS.right!;
  const topFirst = Math.abs(faces.top) > Math.abs(faces.bottom);
  return topFirst && faces.bottom !== 0 ? [...forTop, ...forBottom] : ways;
};

const inHandfuls = (request: CoalRequest, coals: number): number => {
  const handful = handfulOf(request);
  return Math.round(coals / handful) * handful;
};

const coarseStep = (request: CoalRequest, all: number): number =>
  Math.max(handfulOf(request), inHandfuls(request, all / 8));

/** Whole coals or half shovels; what the lid can not carry is left out, not put below. */
const boundsOf = ({ request, first }: Judged): ((counts: Counts) => Counts) => {
  const handful = handfulOf(request);
  const { room } = first.need;
  const all = first.counts.above + first.counts.below;
  const down = (coals: number) => Math.floor(coals / handful) * handful;
  const lid = down(room.lidAll);
  const ring = Math.max(handful, down(room.floorRing));
  const least = Math.min(ring, Math.max(handful, inHandfuls(request, EVEN_RING.least * ring)));
  return (counts) => {
    const below = Math.min(ring, Math.max(least, counts.below));
    const fewest = Math.ceil((TOTALS.least * all - below) / handful) * handful;
    const most = Math.max(handful, down(TOTALS.most * all - below));
    const above = Math.min(lid, most, Math.max(fewest, handful, counts.above));
    return { above, below };
  };
};

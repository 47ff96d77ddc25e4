// A load from going in to coming out: steps that grow with time, a look every minute.
// Source: step.ts. Steps of 2 % of the time so far keep every minute within half a percent of the
// answer of steps a hundred times smaller (bake-inside.test.ts).

import { type Body, type Slices, slicesOf } from './body.ts';
import { colourOf } from './colour.ts';
import type { FacesAt } from './face.ts';
import type { InsidePhysics } from './physics.ts';
import { type Inside, insideOf, type Tuning } from './state.ts';
import { stepInside } from './step.ts';
import { tuning as fitted } from './tuning.ts';

export interface InsideWish {
  readonly body: Body;
  readonly physics: InsidePhysics;
  readonly faces: FacesAt;
  /** Longest that is looked at. */
  readonly minutes: number;
  /** Ends sooner once this holds. */
  readonly until?: (moment: InsideMoment) => boolean;
  /** Slices; 21 where not said. */
  readonly count?: number;
  /** Twice the steps' length and fewer slices, for drafts: minutes within 2 %, a third of the work. */
  readonly isRough?: boolean;
  readonly tuning?: Tuning;
  /** Minutes at which the whole of it is kept, for drawings. */
  readonly cutsAt?: readonly number[];
  /** Fixed steps instead of growing ones, for tests. */
  readonly stepSeconds?: number;
}

/** How it stands at one minute. Faces: what a hand or an eye would meet. */
export interface InsideMoment {
  readonly minute: number;
  /** Coolest slice. */
  readonly coreKelvin: number;
  readonly meanKelvin: number;
  readonly bottomKelvin: number;
  readonly topKelvin: number;
  /** Change of colour, 0 … 52. */
  readonly bottomColour: number;
  readonly topColour: number;
  /** Share of starch that has set, where it has set least. */
  readonly set: number;
  /** Share of the mass as it went in that has left as steam. */
  readonly loss: number;
  readonly height: number;
  readonly bottomCrust: number;
  readonly topCrust: number;
  /** Heat so far through each face [J], of one square metre, one metre, or the whole. */
  readonly bottomJoules: number;
  readonly topJoules: number;
}

/** The inside at one minute, slice by slice from the bottom (or from the middle). */
export interface InsideCut {
  readonly minute: number;
  readonly edges: readonly number[];
  readonly kelvins: readonly number[];
  readonly waters: readonly number[];
}

export interface InsideRun {
  /** One a minute, the first as it goes in. */
  readonly moments: readonly InsideMoment[];
  readonly cuts: readonly InsideCut[];
  readonly energy: {
    readonly givenJoules: number;
    readonly warmedJoules: number;
    readonly steamJoules: number;
    /** What the balance lacks, over what was given. */
    readonly errorRatio: number;
  };
}

const SLICES = { usual: 21, rough: 15 } as const;
const STEP = {
  usual: { share: 0.02, least: 0.5, most: 12 },
  rough: { share: 0.04, least: 0.5, most: 20 },
} as const;

/**
 * Heat, water, starch and colour inside a load.
 *
 * @valid   thickness 4 … 200 mm, faces up to 350 °C; never NaN
 * @source  maxwell1873, devries1958, voller1981, zanoni1995, zanoni1995-starch, lind-rask1991; three
 *          fitted numbers in tuning.ts
 */
export function bakeInside(wish: InsideWish): InsideRun {
  const slices = slicesOf(wish.body, wish.count ?? (wish.isRough ? SLICES.rough : SLICES.usual));
  const inside = insideOf(slices, wish.physics, wish.tuning ?? fitted);
  const mass = massOf(slices);
  const heatAtStart = heatOf(slices);
  wish.faces(0, inside.bottom.now, inside.top.now);
  const moments = [momentOf(inside, mass, 0)];
  const cuts: InsideCut[] = [];
  const cutsAt = new Set(wish.cutsAt ?? []);
  if (cutsAt.has(0)) cuts.push(cutOf(inside, 0));
  for (let minute = 1; minute <= wish.minutes; minute += 1) {
    minuteInside(inside, wish, minute);
    const moment = momentOf(inside, mass, minute);
    moments.push(moment);
    if (cutsAt.has(minute)) cuts.push(cutOf(inside, minute));
    if (wish.until?.(moment)) break;
  }
  const givenJoules = inside.bottom.joules + inside.top.joules;
  const warmedJoules = heatOf(slices) - heatAtStart;
  const steamJoules = inside.steam * wish.physics.steamJoules;
  const error = givenJoules - warmedJoules - steamJoules;
  const errorRatio = givenJoules > 0 ? error / givenJoules : 0;
  return { moments, cuts, energy: { givenJoules, warmedJoules, steamJoules, errorRatio } };
}

function minuteInside(inside: Inside, wish: InsideWish, minute: number): void {
  const { share, least, most } = wish.isRough ? STEP.rough : STEP.usual;
  const end = minute * 60;
  let seconds = end - 60;
  while (seconds < end - 1e-6) {
    const wanted = wish.stepSeconds ?? Math.min(most, Math.max(least, share * seconds));
    // Whole steps to the minute, so that none is a crumb of one.
    const step = (end - seconds) / Math.ceil((end - seconds) / wanted - 1e-9);
    wish.faces(seconds + step, inside.bottom.now, inside.top.now);
    stepInside(inside, step);
    seconds += step;
  }
}

function massOf({ count, dry, water }: Slices): number {
  let sum = 0;
  for (let slice = 0; slice < count; slice += 1) sum += dry[slice]! * (1 + water[slice]!);
  return sum;
}

function heatOf({ count, dry, heat }: Slices): number {
  let sum = 0;
  for (let slice = 0; slice < count; slice += 1) sum += dry[slice]! * heat[slice]!;
  return sum;
}

function momentOf(inside: Inside, mass: number, minute: number): InsideMoment {
  const { slices, bottom, top, work } = inside;
  let core = Number.POSITIVE_INFINITY;
  let least = Number.POSITIVE_INFINITY;
  let warm = 0;
  let dry = 0;
  for (let slice = 0; slice < slices.count; slice += 1) {
    core = Math.min(core, slices.kelvin[slice]!);
    least = Math.min(least, slices.set[slice]!);
    warm += slices.dry[slice]! * slices.kelvin[slice]!;
    dry += slices.dry[slice]!;
  }
  return {
    minute,
    coreKelvin: core,
    meanKelvin: warm / dry,
    bottomKelvin: bottom.kelvin,
    topKelvin: top.kelvin,
    bottomColour: colourOf(bottom.browning),
    topColour: colourOf(top.browning),
    set: 1 - Math.exp(-least),
    loss: inside.steam / mass,
    height: work.edge[slices.count]!,
    bottomCrust: crustFrom(inside, 0, 1),
    topCrust: crustFrom(inside, slices.count - 1, -1),
    bottomJoules: bottom.joules,
    topJoules: top.joules,
  };
}

/** Crust is what holds less than half of the water of the middle; the slice on its edge counts in part. */
const CRUST_SHARE = 0.5;

function crustFrom({ slices, work }: Inside, first: number, way: 1 | -1): number {
  const { count, water } = slices;
  const middle = water[Math.floor(count / 2)]!;
  let thickness = 0;
  for (let slice = first; 0 <= slice && slice < count; slice += way) {
    const dried = Math.min(1, Math.max(0, (1 - water[slice]! / middle) / CRUST_SHARE));
    thickness += dried * (work.edge[slice + 1]! - work.edge[slice]!);
    if (dried < 1) break;
  }
  return thickness;
}

const cutOf = ({ slices, work }: Inside, minute: number): InsideCut => ({
  minute,
  edges: Array.from(work.edge),
  kelvins: Array.from(slices.kelvin),
  waters: Array.from(slices.water),
});

/** First minute, with its share, at which a rising figure of the moments reaches this; undefined if never. */
export function minuteReached(
  moments: readonly InsideMoment[],
  figure: (moment: InsideMoment) => number,
  wanted: number,
): number | undefined {
  let before: InsideMoment | undefined;
  for (const moment of moments) {
    const now = figure(moment);
    if (wanted <= now) {
      if (before === undefined) return moment.minute;
      const then = figure(before);
      const share = now > then ? (wanted - then) / (now - then) : 1;
      return before.minute + share * (moment.minute - before.minute);
    }
    before = moment;
  }
  return undefined;
}

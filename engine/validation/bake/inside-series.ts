// The model of the inside beside the two measured series and the published times. Series (a), the
// small free loaf, fitted the model's numbers (bake/inside/tuning.ts) and its own radius; series
// (b), the tin loaf, and the times judge it. (b) fits only what its files leave out: half-width, film
// and where each probe sat.

import { latestForColour } from '../../src/bake/bread-inside.ts';
import {
  bakeInside,
  COLOUR_MARKS,
  type FacesAt,
  type InsideCut,
  type InsideRun,
  insidePhysics,
  minuteReached,
} from '../../src/bake/inside/index.ts';
import { fromFahrenheit, pascals } from '../../src/quantity/unit.ts';
import centre from './measured-small-loaf.json' with { type: 'json' };
import skin from './measured-small-loaf-skin.json' with { type: 'json' };
import tin from './measured-tin-loaf.json' with { type: 'json' };
import times from './published-bake-times.json' with { type: 'json' };

const ZERO = 273.15;
export const seaLevel = insidePhysics(pascals(101_325));

/** One measured point and ours, in the unit of its table. */
export interface Compared {
  readonly minute: number;
  readonly measured: number;
  readonly ours: number;
}

export const rms = (all: readonly Compared[]) =>
  Math.sqrt(all.reduce((sum, { measured, ours }) => sum + (measured - ours) ** 2, 0) / all.length);

const OVEN_KELVIN = ZERO + 190;

/** Air and walls of a laboratory oven; 10 W/(m2 K) in all, as the data's own study took it. */
const still =
  (kelvinAt: (minute: number) => number, film: number): FacesAt =>
  (seconds, bottom, top) => {
    for (const face of [bottom, top]) {
      face.film = film;
      face.airKelvin = kelvinAt(seconds / 60);
      face.steamShare = 0.02;
      face.isOpen = true;
    }
  };

/** Fitted with tuning.ts: the ball whose middle heats as that of the loaf. */
const SMALL_RADIUS = 0.0196;
const WATER = 0.5373; // its first moisture

export function smallLoaf(): Record<'centre' | 'skin' | 'moisture', readonly Compared[]> {
  const run = bakeInside({
    body: {
      shape: 'sphere',
      metres: SMALL_RADIUS,
      density: 400,
      water: WATER,
      rise: 1.3,
      startKelvin: ZERO + 24,
    },
    physics: seaLevel,
    faces: still(() => OVEN_KELVIN, 10),
    minutes: 15,
  });
  const at = (minute: number, figure: (index: number) => number) => {
    const low = Math.min(14, Math.floor(minute));
    return figure(low) + (figure(low + 1) - figure(low)) * (minute - low);
  };
  const core = (index: number) => run.moments[index]!.coreKelvin - ZERO;
  const top = (index: number) => run.moments[index]!.topKelvin - ZERO;
  const water = (index: number) => WATER - run.moments[index]!.loss * (1 + WATER);
  const compared = (rows: readonly (readonly number[])[], figure: (index: number) => number) =>
    rows
      .filter(([minute]) => minute! >= 1)
      .map(([minute, measured]) => ({
        minute: minute!,
        measured: measured!,
        ours: at(minute!, figure),
      }));
  return {
    centre: compared(centre.rows, core),
    skin: compared(skin.skin, top),
    moisture: compared(skin.moisture, water),
  };
}

export interface TinLoaf {
  readonly halfWidth: number;
  readonly film: number;
  readonly probes: readonly { readonly place: number; readonly compared: readonly Compared[] }[];
  /** Root of the mean square miss over the scatter of the probe, 2 K at least. */
  readonly overScatter: number;
}

/** A bar in a tin; of half-width and film the pair that misses least, then each probe's place. */
export function tinLoaf(): TinLoaf {
  let best: TinLoaf | undefined;
  for (const halfWidth of [0.038, 0.042, 0.046, 0.05, 0.054]) {
    for (const film of [12, 16, 22, 30, 45]) {
      const tried = tinLoafOf(halfWidth, film);
      if (best === undefined || tried.overScatter < best.overScatter) best = tried;
    }
  }
  if (best === undefined) throw new RangeError('nothing was tried');
  return best;
}

function tinLoafOf(halfWidth: number, film: number): TinLoaf {
  const minutes = tin.rows.slice(1).map(([minute]) => Math.round(minute! * 2) / 2);
  const run = bakeInside({
    body: {
      shape: 'cylinder',
      metres: halfWidth,
      density: 400,
      water: 0.7,
      rise: 1.2,
      startKelvin: ZERO + 29.5,
    },
    physics: seaLevel,
    faces: still((minute) => ZERO + 180 + Math.min(25, minute), film),
    minutes: 25,
    cutsAt: [...new Set(minutes.flatMap((each) => [Math.floor(each), Math.ceil(each)]))],
  });
  const probes = [1, 3, 5].map((column) => probeOf(run, column));
  const misses = probes.flatMap((probe) => probe.misses);
  const overScatter = Math.sqrt(misses.reduce((sum, each) => sum + each ** 2, 0) / misses.length);
  return { halfWidth, film, probes, overScatter };
}

function probeOf(run: InsideRun, column: number) {
  let best: { place: number; compared: Compared[]; misses: number[]; sum: number } | undefined;
  for (let place = 0; place < 0.9; place += 0.02) {
    const compared = tin.rows.slice(1).map((row) => ({
      minute: row[0]!,
      measured: row[column]!,
      ours: cutKelvin(run.cuts, row[0]!, place) - ZERO,
    }));
    const misses = compared.map(
      ({ measured, ours }, index) =>
        (ours - measured) / Math.max(2, tin.rows[index + 1]![column + 1]!),
    );
    const sum = misses.reduce((all, each) => all + each ** 2, 0);
    if (best === undefined || sum < best.sum) best = { place, compared, misses, sum };
  }
  if (best === undefined) throw new RangeError('no place was tried');
  return best;
}

/** Temperature at this share of the way out, between the cuts of whole minutes. */
function cutKelvin(cuts: readonly InsideCut[], minute: number, place: number): number {
  const before = cuts.findLast((cut) => cut.minute <= minute + 0.05)!;
  const after = cuts.find((cut) => cut.minute >= minute - 0.05)!;
  const share =
    after.minute > before.minute ? (minute - before.minute) / (after.minute - before.minute) : 0;
  const [low, high] = [kelvinAcross(before, place), kelvinAcross(after, place)];
  return low + (high - low) * share;
}

function kelvinAcross({ edges, kelvins }: InsideCut, place: number): number {
  const whole = edges.at(-1)!;
  const middles = kelvins.map((_, index) => (edges[index]! + edges[index + 1]!) / 2 / whole);
  const upper = middles.findIndex((middle) => place <= middle);
  if (upper <= 0) return upper === 0 ? kelvins[0]! : kelvins.at(-1)!;
  const [low, high] = [middles[upper - 1]!, middles[upper]!];
  const share = (place - low) / (high - low);
  return kelvins[upper - 1]! + (kelvins[upper]! - kelvins[upper - 1]!) * share;
}

/** One printed range of minutes, and ours: baked through, brown on top, done. */
export interface TimeRow {
  readonly name: string;
  readonly least: number;
  readonly most: number;
  readonly through: number;
  readonly brown: number;
  readonly done: number;
  readonly loss: number;
}

/** A kitchen oven: film 10, walls as hot as the air; a sheet or a stone at oven heat below. */
const KITCHEN = { film: 10, emissivity: 0.9, contact: 60 } as const;
const LONGEST = 120;

export function publishedTimes(): readonly TimeRow[] {
  return times.rows.map((row) => {
    const [name, , millimetres, density, rise, oven, least, most] = row as unknown as readonly [
      string,
      string,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    const kelvin = fromFahrenheit(oven);
    const run = bakeInside({
      body: {
        shape: 'slab',
        metres: millimetres / 1000,
        density,
        water: 0.75,
        rise,
        startKelvin: ZERO + 22,
      },
      physics: seaLevel,
      faces: kitchen(kelvin),
      minutes: LONGEST,
    });
    const { moments } = run;
    const through = minuteReached(moments, (now) => now.coreKelvin, ZERO + 94) ?? LONGEST;
    const brown = minuteReached(moments, (now) => now.topColour, COLOUR_MARKS.brown) ?? LONGEST;
    const done = Math.max(through, Math.min(brown, latestForColour(through)));
    const loss = moments[Math.min(LONGEST, Math.round(done))]!.loss;
    return { name, least, most, through, brown, done, loss };
  });
}

const kitchen =
  (kelvin: number): FacesAt =>
  (_, bottom, top) => {
    bottom.contact = KITCHEN.contact;
    bottom.contactKelvin = kelvin;
    top.film = KITCHEN.film;
    top.airKelvin = kelvin;
    top.emissivity = KITCHEN.emissivity;
    top.shiningFourth = kelvin ** 4;
    top.steamShare = 0.05;
    top.isOpen = true;
  };

// Which cold box holds what, how much ice it takes until the last serving, and how long the ice that
// goes in lasts. Food goes in cold: a cooler keeps, it does not chill.

import type { Camp } from '../../camp/camp.ts';
import { type Cooler, insideOf } from '../../camp/stores.ts';
import { foodWithKey } from '../../larder/larder.ts';
import {
  cubicMetres,
  fromCelsius,
  type Grams,
  grams,
  joules,
  type Kelvin,
  kelvin,
  kelvinDifference,
  type Minutes,
  metres,
  minutes,
  type Watts,
} from '../../quantity/unit.ts';
import type { ShoppingLine } from '../provisions.ts';
import { boxLeak, foodHeat, iceFigure, iceFor, iceHeat, openingHeat } from './heat.ts';

export interface IcePlan {
  /** From closed boxes to the last serving. */
  readonly minutes: Minutes;
  /** Outside, on the mean of the forecast; in the shade. */
  readonly air: Kelvin;
  readonly boxes: readonly ColdBox[];
  readonly ice: Grams;
}

export interface ColdBox {
  readonly cooler: Cooler;
  /** Nobody named it: a usual one, as large as its food wants. */
  readonly isAssumed: boolean;
  readonly holds: 'raw-meat' | 'ready' | 'both';
  readonly food: Grams;
  readonly leak: Watts;
  /** Until the last serving. */
  readonly iceNeeded: Grams;
  /** More, if the food went in as warm as a kitchen: why it goes in cold. */
  readonly iceIfWarm: Grams;
  /** How long the ice that goes in lasts; undefined where the cook names none. */
  readonly lasts?: Minutes;
  /** Room for food and ice over the room inside. */
  readonly fill: number;
}

/** Ice comes from a freezer and its water may get as warm as food may be: 40 °F, foodsafety-chart. */
const ICE = { from: fromCelsius(-5), to: fromCelsius(4) };
const WARM_KITCHEN = kelvinDifference(16); // from 20 to 4 °C; ours
const DAY = 1440;
const SECONDS = 60;

/** Undefined where nothing has to be kept cold. */
export function icePlanFor(asked: {
  readonly camp: Camp;
  readonly shopping: readonly ShoppingLine[];
  readonly lastServing: number;
}): IcePlan | undefined {
  const cold = asked.shopping.filter(isKeptCold);
  if (cold.length === 0) return undefined;
  const stay = minutesCold(asked.camp, asked.lastServing);
  const air = meanAir(asked.camp);
  const boxes = sharedOut(asked.camp, cold).map((each) => coldBox(each, stay, air));
  const ice = boxes.reduce((sum, { iceNeeded }) => sum + iceNeeded, 0);
  return { minutes: minutes(stay), air, boxes, ice: grams(ice) };
}

export const isKeptCold = ({ keep }: ShoppingLine) => keep === 'cold' || keep === 'frozen';

const USUAL_START = 0; // midnight before the day of the camp: boxes are closed in the evening; ours
const LEAST_STAY = 120;

const minutesCold = ({ stores }: Camp, lastServing: number) =>
  Math.max(LEAST_STAY, lastServing - (stores?.packedAt ?? USUAL_START));

const meanAir = ({ weather }: Camp): Kelvin =>
  kelvin(weather.reduce((sum, hour) => sum + hour.air, 0) / Math.max(1, weather.length));

interface Share {
  readonly cooler: Cooler;
  readonly isAssumed: boolean;
  readonly holds: ColdBox['holds'];
  readonly lines: readonly ShoppingLine[];
}

/** Raw meat in a box of its own, as far as there are two; a third and more stay with the drinks. */
function sharedOut({ stores }: Camp, cold: readonly ShoppingLine[]): readonly Share[] {
  const raw = cold.filter(({ shelf }) => shelf === 'meat');
  const ready = cold.filter(({ shelf }) => shelf !== 'meat');
  const both = raw.length > 0 && ready.length > 0;
  const [first, second] = stores?.coolers ?? [];
  if (first === undefined) {
    return [{ holds: 'raw-meat', lines: raw } as const, { holds: 'ready', lines: ready } as const]
      .filter(({ lines }) => lines.length > 0)
      .map((each) => ({ ...each, cooler: usualCooler(each.lines), isAssumed: true }));
  }
  if (both && second !== undefined) {
    const [small, large] = roomOf(first) <= roomOf(second) ? [first, second] : [second, first];
    const [less, more] = massOf(raw) <= massOf(ready) ? [raw, ready] : [ready, raw];
    return [share(small, less, raw), share(large, more, raw)];
  }
  const holds = both ? 'both' : raw.length > 0 ? 'raw-meat' : 'ready';
  return [{ cooler: first, isAssumed: false, holds, lines: cold }];
}

const share = (cooler: Cooler, lines: readonly ShoppingLine[], raw: readonly ShoppingLine[]) => ({
  cooler,
  isAssumed: false,
  holds: lines === raw ? ('raw-meat' as const) : ('ready' as const),
  lines,
});

const massOf = (lines: readonly ShoppingLine[]) =>
  lines.reduce((sum, line) => sum + (line.asBought ?? line.grams), 0);

const roomOf = ({ inside: { length, width, height } }: Cooler) => length * width * height;

const USUAL_WALL = metres(0.03); // the worked chest, iceChest

/** Room for its food and as much ice again by weight (common practice, no source). */
function usualCooler(lines: readonly ShoppingLine[]): Cooler {
  const perGram = (iceFigure('foodLitresPerKilogram') + iceFigure('blockLitresPerKilogram')) / 1e6; // m3
  const volume = cubicMetres(Math.max(0.01, massOf(lines) * perGram));
  return { name: 'a cooler', inside: insideOf(volume), wall: USUAL_WALL };
}

function coldBox({ cooler, isAssumed, holds, lines }: Share, stay: number, air: Kelvin): ColdBox {
  const warmer = kelvinDifference(Math.max(0, air - fromCelsius(0)));
  const leak = boxLeak(cooler.inside, cooler.wall, warmer);
  const openings = cooler.openings ?? iceFigure('usualOpenings');
  const perDay = leak * DAY * SECONDS + openings * openingHeat(cooler.inside);
  const food = massOf(lines);
  const iceNeeded = iceFor(joules((perDay * stay) / DAY), ICE);
  const warmth = lines.reduce((sum, line) => sum + warmthOf(line), 0);
  return {
    cooler,
    isAssumed,
    holds,
    food: grams(food),
    leak,
    iceNeeded,
    iceIfWarm: iceFor(joules(warmth), ICE),
    ...(cooler.ice === undefined || perDay <= 0
      ? {}
      : { lasts: minutes((iceHeat(cooler.ice, ICE) / perDay) * DAY) }),
    fill: roomNeeded(food, Math.max(iceNeeded, cooler.ice ?? 0)) / roomOf(cooler),
  };
}

const roomNeeded = (food: number, ice: number) =>
  (food * iceFigure('foodLitresPerKilogram') + ice * iceFigure('blockLitresPerKilogram')) / 1e6;

const MEAN_WATER = 0.7; // meat, milk, cheese: sr28 has 0.4 to 0.9; ours for a food that is not known

function warmthOf(line: ShoppingLine): number {
  const water =
    line.food === undefined ? MEAN_WATER : (foodWithKey(line.food)?.water ?? MEAN_WATER);
  return foodHeat(line.asBought ?? line.grams, water, WARM_KITCHEN);
}

// The rises of one dough on its day: when it is ready, with doubt, and what would hurry or slow it.
// Sources: yeastRate, gaenzle1998, starterChart, usualYeastRise; second rise common practice (D).

import type { ColdWait } from '../../menu/cold-wait.ts';
import type { Grams, Kelvin, Metres, Minutes } from '../../quantity/unit.ts';
import { fromCelsius, grams, kelvin, minutes } from '../../quantity/unit.ts';
import type { WeighedIngredient } from '../dough.ts';
import type { RiseEstimate } from '../formula.ts';
import { pressureRatioAt } from '../height.ts';
import { type DoughAt, doughOver, followMinutes, type PlaceAt, steadily } from './history.ts';
import type { Leaven } from './rate.ts';
import {
  LONGEST_RISE_MINUTES,
  placeAfter,
  type RiseAlong,
  riseAlong,
  workWithin,
} from './rise-along.ts';
import { type LeavenFound, leavenIn, shareForWork, workToDouble } from './work.ts';

export interface RisePlan {
  readonly leaven: Leaven;
  /** Instant yeast over flour, or flour in the starter over all flour. */
  readonly share: number;
  readonly mixed: Kelvin;
  /** Absent where the dough isn't risen within a day. */
  readonly estimate?: RiseEstimate;
  /** Share of a rise that is done at the end of the time looked at; 1 when risen. */
  readonly done: number;
  /** Dough and place each half hour of the first rise. */
  readonly along: readonly DoughAt[];
  readonly options: readonly RiseOption[];
  /** The writer's wait in the cold, and how cold the dough comes out of it. */
  readonly cold?: ColdWait & { readonly dough: Kelvin };
}

export interface RiseOption {
  readonly do:
    | 'more-leaven'
    | 'less-leaven'
    | 'warmer-dough'
    | 'colder-dough'
    | 'warm-box'
    | 'cold-night';
  /** First rise then; absent where it isn't risen within a day. */
  readonly first?: Minutes;
  /** Later by, less than 0 for sooner; absent where one of the two is not risen. */
  readonly later?: Minutes;
  /** Leaven over flour, dough after mixing, or the place, whichever the option changes. */
  readonly share?: number;
  readonly kelvin?: Kelvin;
  readonly minutes?: Minutes;
}

export interface RiseWish {
  readonly mixed: Kelvin;
  readonly mass: Grams;
  readonly place: PlaceAt;
  /** Where the shaped dough stands; the first place if not said. */
  readonly shapedPlace?: PlaceAt;
  /** Before the second rise, by the writer's clock; instead of the first where there is no other. */
  readonly cold?: ColdWait;
  readonly elevation: Metres;
  /** Coldest and warmest dough that its liquid can make; what cooks mix if not said. */
  readonly reach?: { readonly coldest: Kelvin; readonly warmest: Kelvin } | undefined;
}

export const SECOND_OF_FIRST = 0.5; // the second rise is shorter; common practice, no source
export const BAND = { least: 0.65, most: 1.6 }; // judged; published "faster" at height: 25 … 50 %

/**
 * First and second rise along the day, and six ways to move them.
 *
 * @param lines   the batch; yeast or a starter in it
 * @param wish    dough as mixed [K], its mass [g], the place over minutes [K], height [m]
 * @returns       undefined without leaven or flour
 */
export function risePlan(
  lines: readonly WeighedIngredient[],
  wish: RiseWish,
): RisePlan | undefined {
  const found = leavenIn(lines);
  if (found === undefined) return undefined;
  const base = wish.cold?.isFirstRise ? coldRise(found, wish, wish.cold) : firstRise(found, wish);
  const chilled = base.minutes === undefined ? base.dough : chilledDough(wish, base);
  const second = base.minutes === undefined ? undefined : secondRise(found, wish, base, chilled);
  const estimate = second && estimateOf(found, wish, base, second);
  return {
    ...found,
    mixed: wish.mixed,
    ...(estimate === undefined ? {} : { estimate }),
    // Once risen and then asleep in its shape it is no nearer to bread than its second rise got.
    done: Math.min(wish.cold?.isFirstRise ? 1 : base.done, second?.done ?? 1),
    along: base.along.filter(({ minute }) => minute % 30 === 0),
    options: wish.cold?.isFirstRise
      ? optionsFor(found, wish, base).filter((each) => each.do === 'warm-box')
      : optionsFor(found, wish, base),
    ...(wish.cold === undefined ? {} : { cold: { ...wish.cold, dough: chilled } }),
  };
}

function firstRise(found: LeavenFound, wish: RiseWish, band = 1): RiseAlong {
  const work = workFor(found, wish) * band;
  const { mixed, mass, place } = wish;
  return riseAlong({ leaven: found.leaven, work, start: { mixed, mass, place } });
}

/** The whole first rise in the cold, as long as the writer says, however far it comes. */
function coldRise(found: LeavenFound, wish: RiseWish, cold: ColdWait): RiseAlong {
  const { leaven } = found;
  const start = { mixed: wish.mixed, mass: wish.mass, place: steadily(cold.place) };
  const along: DoughAt[] = [];
  for (const at of doughOver(start)) {
    along.push(at);
    if (cold.minutes <= at.minute) break;
  }
  const done = workWithin(leaven, start, cold.minutes) / workFor(found, wish);
  return { minutes: cold.minutes, done, dough: along.at(-1)!.dough, along };
}

const workFor = (found: LeavenFound, { elevation }: RiseWish) =>
  workToDouble(found, pressureRatioAt(elevation));

/** As cold as the dough comes out; Newton's cooling in closed form. */
function chilledDough({ cold, mass }: RiseWish, { dough }: RiseAlong): Kelvin {
  if (cold === undefined || cold.isFirstRise) return dough;
  const kept = Math.exp(-cold.minutes / followMinutes(mass));
  return kelvin(cold.place + (dough - cold.place) * kept);
}

/** Undefined where its second rise is not done within a day. */
function estimateOf(
  found: LeavenFound,
  wish: RiseWish,
  base: RiseAlong,
  second: RiseAlong,
): RiseEstimate | undefined {
  const first = base.minutes!;
  if (second.minutes === undefined) return undefined;
  if (wish.cold?.isFirstRise) {
    return {
      dough: meanDough(base, first),
      first,
      second: second.minutes,
      least: first,
      most: first,
    };
  }
  return {
    dough: meanDough(base, first),
    first,
    second: second.minutes,
    least: firstRise(found, wish, BAND.least).minutes ?? minutes(first * BAND.least),
    most: firstRise(found, wish, BAND.most).minutes ?? minutes(LONGEST_RISE_MINUTES),
  };
}

/** Dough over the time of its rise, on the mean: one number for a card. */
function meanDough({ along }: RiseAlong, first: number): Kelvin {
  const during = along.filter(({ minute }) => minute <= first);
  return kelvin(during.reduce((sum, { dough }) => sum + dough, 0) / during.length);
}

/**
 * Shaped in smaller pieces, it goes on where the first rise ended, or as cold as it comes out of the
 * cold. What a cold first rise left undone is done now (ours).
 */
function secondRise(found: LeavenFound, wish: RiseWish, base: RiseAlong, mixed: Kelvin): RiseAlong {
  const work = workFor(found, wish) * (SECOND_OF_FIRST + Math.max(0, 1 - base.done));
  const waited = wish.cold === undefined || wish.cold.isFirstRise ? 0 : wish.cold.minutes;
  const place = placeAfter(wish.shapedPlace ?? wish.place, base.minutes! + waited);
  const start = { mixed, mass: grams(wish.mass / 2), place };
  return riseAlong({ leaven: found.leaven, work, start });
}

/** Tuned to be worth doing and to stay in what cooks do: half as much again, half; 4 K of dough. */
const STEP = { more: 1.5, less: 0.5, kelvin: 4 };
const WARM_BOX = { yeast: fromCelsius(30), sourdough: fromCelsius(27) }; // 80-85 °F, yeastHandout; 28 °C best
const COLD_NIGHT = { place: fromCelsius(4), minutes: minutes(12 * 60) };

function optionsFor(found: LeavenFound, wish: RiseWish, base: RiseAlong): readonly RiseOption[] {
  const { leaven, share } = found;
  const box = WARM_BOX[leaven];
  const { coldest, warmest } = reachOf(wish);
  const [warmer, colder] = [kelvin(wish.mixed + STEP.kelvin), kelvin(wish.mixed - STEP.kelvin)];
  const withShare = (times: number) => firstRise({ leaven, share: share * times }, wish).minutes;
  const withWish = (change: Partial<RiseWish>) => firstRise(found, { ...wish, ...change }).minutes;
  const options: readonly (RiseOption | undefined)[] = [
    { do: 'more-leaven', share: share * STEP.more, ...risen(withShare(STEP.more)) },
    warmer <= warmest
      ? { do: 'warmer-dough', kelvin: warmer, ...risen(withWish({ mixed: warmer })) }
      : undefined,
    { do: 'warm-box', kelvin: box, ...risen(withWish({ place: steadily(box) })) },
    { do: 'less-leaven', share: share * STEP.less, ...risen(withShare(STEP.less)) },
    coldest <= colder
      ? { do: 'colder-dough', kelvin: colder, ...risen(withWish({ mixed: colder })) }
      : undefined,
    coldNight(leaven, wish),
  ];
  return options.flatMap((option) => (option === undefined ? [] : [laterThan(base, option)]));
}

/** Doughs that cooks mix: not below what yeast wakes in, not where the doubling law ends. */
const MIXED_RANGE = { coldest: fromCelsius(10), warmest: fromCelsius(35) };

const reachOf = ({ reach }: RiseWish) => ({
  coldest: Math.max(MIXED_RANGE.coldest, reach?.coldest ?? 0),
  warmest: Math.min(MIXED_RANGE.warmest, reach?.warmest ?? MIXED_RANGE.warmest),
});

const risen = (first: Minutes | undefined) => (first === undefined ? {} : { first });

const laterThan = (base: RiseAlong, option: RiseOption): RiseOption =>
  option.first === undefined || base.minutes === undefined
    ? option
    : { ...option, later: minutes(option.first - base.minutes) };

/** The whole first rise in the cold over night, with as much leaven as is then just done. */
function coldNight(leaven: Leaven, { mixed, mass, elevation }: RiseWish): RiseOption {
  const { place, minutes: within } = COLD_NIGHT;
  const work = workWithin(leaven, { mixed, mass, place: steadily(place) }, within);
  const share = shareForWork(leaven, work, pressureRatioAt(elevation));
  const told = { do: 'cold-night', kelvin: place, minutes: within } as const;
  return share === undefined ? told : { ...told, share, first: within };
}

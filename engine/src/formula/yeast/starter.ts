// Keeping a starter for a day at the fire: fed the evening before, ripe when the dough is mixed.
// Sources: starterChart (grade B) for how long a feed takes, gaenzle1998 for what cold does to it.

import { type Grams, grams, type Minutes, minutes } from '../../quantity/unit.ts';
import { type PlaceAt, steadily } from './history.ts';
import { riseAlong } from './rise-along.ts';
import { ripeWork } from './work.ts';

/** One part of ripe starter to so many parts each of flour and of water, by weight. */
export type Feed = 1 | 2 | 3 | 4 | 5 | 10;
export const feeds: readonly Feed[] = [1, 2, 3, 4, 5, 10];

export interface StarterWish {
  /** How much is wanted for the dough, and some left to keep. */
  readonly wanted: Grams;
  /** From this feed until the dough is mixed. */
  readonly minutes: Minutes;
  readonly place: PlaceAt;
}

export interface StarterFeed {
  readonly feed: Feed;
  readonly starter: Grams;
  readonly flour: Grams;
  readonly water: Grams;
  /** After the feed; absent where it does not ripen in the cold. */
  readonly ripeAfter?: Minutes;
  /** Share of the ripening that is done when the dough is mixed; 1 is ripe. */
  readonly ripe: number;
  /** It has to be kept warm: it will not be ripe by then as it stands. */
  readonly needsWarmth: boolean;
}

/** Kept a little longer than ripe it is still good; common practice, no source. */
const PAST_RIPE_MINUTES = 120;
/** Stays in the jar for the next time. */
const KEPT_BACK_GRAMS = 30;

/**
 * Which feed is ripe at the time of mixing: the largest that is, since it stays ripe longest.
 *
 * @source starterChart: 1:1:1 to 1:10:10 at 20 °C (grade B)
 */
export function starterFeed(wish: StarterWish): StarterFeed {
  const all = feeds.map((feed) => feedOf(feed, wish));
  const inTime = all.filter(
    ({ ripeAfter }) => ripeAfter !== undefined && ripeAfter <= wish.minutes,
  );
  const fresh = inTime.filter(({ ripeAfter }) => wish.minutes - ripeAfter! <= PAST_RIPE_MINUTES);
  return fresh.at(-1) ?? inTime.at(-1) ?? all[0]!;
}

function feedOf(feed: Feed, { wanted, minutes: until, place }: StarterWish): StarterFeed {
  const all = wanted + KEPT_BACK_GRAMS;
  const starter = all / (1 + 2 * feed);
  const fed = starter * feed;
  const mass = grams(all);
  const work = ripeWork(flourShare(feed));
  const rise = riseAlong({ leaven: 'sourdough', work, start: { mixed: place(0), mass, place } });
  const isRipe = rise.minutes !== undefined && rise.minutes <= until;
  return {
    feed,
    starter: grams(starter),
    flour: grams(fed),
    water: grams(fed),
    ...(rise.minutes === undefined ? {} : { ripeAfter: rise.minutes }),
    ripe: isRipe ? 1 : Math.min(1, rise.done * (until / (rise.minutes ?? until))),
    needsWarmth: !isRipe,
  };
}

/** Flour that came with the ripe starter, half of which is flour, over all flour after the feed. */
export const flourShare = (feed: Feed): number => 0.5 / (0.5 + feed);

/** How long a feed takes at one temperature; absent where it is too cold or too hot. */
export function ripeAfter(feed: Feed, place: ReturnType<PlaceAt>): Minutes | undefined {
  const start = { mixed: place, mass: grams(200), place: steadily(place) };
  return riseAlong({ leaven: 'sourdough', work: ripeWork(flourShare(feed)), start }).minutes;
}

export interface StarterDay {
  /** Before mixing, in minutes; the first stands first. */
  readonly before: Minutes;
  readonly do: 'wake' | 'feed' | 'mix';
  readonly feed?: StarterFeed;
}

const EVENING_BEFORE = minutes(12 * 60);
const WAKE_BEFORE = minutes(24 * 60);

/**
 * What to do, counted back from mixing: woken a day before where it comes out of the cold, fed the
 * evening before.
 */
export function starterDays(
  wanted: Grams,
  { place, fromCold = true, evening = EVENING_BEFORE }: StarterUpkeep,
): readonly StarterDay[] {
  const feed = starterFeed({
    wanted,
    minutes: evening,
    place: (minute) => place(minute - evening),
  });
  const wake = starterFeed({
    wanted: feed.starter,
    minutes: minutes(WAKE_BEFORE - evening),
    place: (minute) => place(minute - WAKE_BEFORE),
  });
  return [
    ...(fromCold ? [{ before: WAKE_BEFORE, do: 'wake', feed: wake } as const] : []),
    { before: evening, do: 'feed', feed },
    { before: minutes(0), do: 'mix' },
  ];
}

export interface StarterUpkeep {
  /** By minutes from mixing: less than 0 is before it. */
  readonly place: PlaceAt;
  readonly fromCold?: boolean;
  readonly evening?: Minutes;
}

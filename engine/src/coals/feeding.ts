// When must coals be added, and how many? And the run of an oven that is fed so.
// Sources: burn.ts (strength ahead is known); published: add from 20 … 45 min on (coalLife).
// Weak spot: one rule of thumb of ours decides (SAG), tuned to keep within 25 F with few actions.

import { minutes } from '../quantity/unit.ts';
import { LAID_BURNT, meanStrength } from './burn.ts';
import type { Addition } from './coal-plan.ts';
import type { Room } from './room.ts';
import {
  type CoalGroup,
  minuteLater,
  type OvenMoment,
  type RunSetting,
  withCoals,
  withLoadIn,
} from './run.ts';

/** A whole run: one moment for each minute, first at coals on. */
export interface FedRun {
  readonly moments: readonly OvenMoment[];
  readonly additions: readonly Addition[];
  readonly loadInMinute: number;
  readonly outMinute: number;
}

/** Coals wanted at mid-life strength; a pot wants more on its way to the boil. */
export interface Need {
  readonly hold: number;
  readonly heatUp: number;
  /** The load has come up when it is this hot; 0 for a bake. */
  readonly upKelvin: number;
}

export interface FeedWish {
  readonly setting: RunSetting;
  readonly need: Need;
  /** Share of the first set that lies above. */
  readonly shareAbove: number;
  /** The same for what is added once a pot has come up: the method's own share. */
  readonly heldShareAbove: number;
  readonly room: Room;
  readonly stayMinutes: number;
  /** Coals are added with an eye to this; the stay, or longer. */
  readonly tendedMinutes: number;
  /** The empty oven is loaded when it is this hot; 0 for a load that starts in a cold oven. */
  readonly readyKelvin: number;
  /** Smallest number that can be told: 1, or half a shovel. */
  readonly handful: number;
  /** A pot that is browned first: lid off and coals below only for so long; 0 for all others. */
  readonly brownMinutes: number;
  /** Coals that go on the lid when browning is over. */
  readonly lidAfterBrowning: number;
}

/** Lid off while the load goes in [s]; common practice, no source. */
export const LOADING_SECONDS = 30;
/** Nobody tends one oven more often, and people think in fives. */
const EVERY_MINUTES = 5;
const PREHEAT_MOST_MINUTES = 30;
const FIRST_MINUTE = 15;
/** Between two additions; coals that burn away faster are tended sooner. */
const SPACING = { least: 5, most: 20, shareOfBurnout: 0.25 } as const;
const LOOK_AHEAD = 10;
/**
 * Coals laid later warm nothing that matters: iron holds half its heat for a quarter of an hour, a
 * pot its boil for longer. Coals that burn away in minutes leave it sooner.
 */
const LAST_BEFORE_OUT = {
  oven: { least: 10, most: 15, shareOfBurnout: 0.2 },
  pot: { least: 20, most: 25, shareOfBurnout: 0.4 },
} as const;
/** An addition is sized for this long ahead, within what one set can do. */
const FEED_AHEAD = { least: 15, most: 30, shareOfBurnout: 0.4 } as const;
/** How often a pot is tended; tuned to keep water within 3 K of its boil with few visits. */
const POT = { least: 5, most: 30, shareOfBurnout: 0.4, look: 15, sag: 0.75 } as const;
/** From here on ash lies thick enough to be cleared first; common practice, no source. */
const ASHY_MINUTE = 30;
/** Add when the coals ahead fall below this share of the need; tuned, see the header. */
const SAG = 0.8;

/** Runs the oven from coals on to load out, adding coals where they run short. */
export const fedRun = (wish: FeedWish, start: OvenMoment): FedRun => {
  const moments: OvenMoment[] = [];
  const additions: Addition[] = [];
  let loadInMinute = Number.POSITIVE_INFINITY;
  let moment = start;
  while (true) {
    if (moment.load === undefined && isReady(wish, moment)) {
      loadInMinute = moment.minute;
      moment = withLoadIn(moment, wish.setting.load);
    }
    const latestIn = Math.max(PREHEAT_MOST_MINUTES, wish.brownMinutes);
    const inMinute = Math.min(loadInMinute, latestIn);
    const outMinute = inMinute + wish.stayMinutes;
    const addition = additionAt(wish, moment, {
      tendedTo: inMinute + wish.tendedMinutes,
      last: additions.at(-1)?.minute ?? 0,
    });
    if (addition) additions.push(addition);
    if (addition) moment = withCoals(moment, laid(addition));
    moments.push(moment);
    if (moment.minute >= outMinute) return { moments, additions, loadInMinute, outMinute };
    const openSeconds = lidOffSeconds(wish, { minute: moment.minute, loadInMinute });
    moment = minuteLater(wish.setting, moment, { openSeconds });
  }
};

/** Seconds that the lid is off in this minute of a plan. */
export const lidOffSeconds = (
  { brownMinutes }: Pick<FeedWish, 'brownMinutes'>,
  at: { readonly minute: number; readonly loadInMinute: number },
): number => {
  if (at.minute < brownMinutes) return 60;
  return at.minute === at.loadInMinute ? LOADING_SECONDS : 0;
};

/** What is laid at coals on: while a pot browns its lid stays bare. */
export const laidFirst = (
  counts: Pick<Addition, 'above' | 'below'>,
  { brownMinutes }: Pick<FeedWish, 'brownMinutes'>,
): readonly CoalGroup[] => laid(brownMinutes > 0 ? { ...counts, above: 0 } : counts);

const isReady = (wish: FeedWish, moment: OvenMoment): boolean => {
  if (moment.minute < wish.brownMinutes) return false;
  if (wish.readyKelvin === 0) return true;
  if (moment.minute === 0 || moment.minute % EVERY_MINUTES !== 0) return false;
  return moment.ovenKelvin >= wish.readyKelvin || moment.minute >= PREHEAT_MOST_MINUTES;
};

/** Fresh coals of one addition. */
export const laid = (addition: Pick<Addition, 'above' | 'below'>): readonly CoalGroup[] => [
  { place: 'above', count: addition.above, burnt: LAID_BURNT },
  { place: 'below', count: addition.below, burnt: LAID_BURNT },
];

/** Mean strength of the coals of one place over the minutes ahead, as mid-life coals. */
export const aheadIn = (
  coals: readonly CoalGroup[],
  place: CoalGroup['place'],
  span: { readonly minutes: number; readonly burnoutMinutes: number },
): number => {
  const burns = span.minutes / span.burnoutMinutes;
  return coals
    .filter((group) => group.place === place)
    .reduce((sum, group) => sum + group.count * meanStrength(group.burnt, group.burnt + burns), 0);
};

interface Tending {
  readonly tendedTo: number;
  /** Minute of the last addition, 0 = coals on. */
  readonly last: number;
}

interface Tended {
  /** No addition before this minute, and none sooner after another. */
  readonly first: number;
  readonly spacing: number;
  /** Add when the coals of the `look` minutes ahead fall below `sag` of the need. */
  readonly look: number;
  readonly sag: number;
  /** What is added is to last for this long. */
  readonly ahead: number;
  /** Nothing is added when so little time is left. */
  readonly beforeOut: number;
}

const tendingOf = ({ need, setting: { burnoutMinutes } }: FeedWish): Tended => {
  if (need.upKelvin > 0) return potTending(burnoutMinutes);
  return {
    first: FIRST_MINUTE,
    spacing: inFives(within(SPACING, burnoutMinutes)),
    look: LOOK_AHEAD,
    sag: SAG,
    ahead: within(FEED_AHEAD, burnoutMinutes),
    beforeOut: within(LAST_BEFORE_OUT.oven, burnoutMinutes),
  };
};

interface Span {
  readonly least: number;
  readonly most: number;
  readonly shareOfBurnout: number;
}

const within = ({ least, most, shareOfBurnout }: Span, burnoutMinutes: number): number =>
  Math.min(most, Math.max(least, shareOfBurnout * burnoutMinutes));

const inFives = (minutes: number) => EVERY_MINUTES * Math.round(minutes / EVERY_MINUTES);

/**
 * Water holds a pot at its boil: too much heat only boils it off, too little is felt late. So it is
 * left alone for about half an hour, as long as its coals last.
 */
const potTending = (burnoutMinutes: number): Tended => {
  const spacing = inFives(within(POT, burnoutMinutes));
  return {
    first: spacing,
    spacing,
    look: POT.look,
    sag: POT.sag,
    ahead: spacing + EVERY_MINUTES,
    beforeOut: within(LAST_BEFORE_OUT.pot, burnoutMinutes),
  };
};

const additionAt = (
  wish: FeedWish,
  moment: OvenMoment,
  { tendedTo, last }: Tending,
): Addition | undefined => {
  const { minute } = moment;
  if (wish.brownMinutes > 0 && minute <= wish.brownMinutes) return afterBrowning(wish, moment);
  const left = tendedTo - minute;
  const { look, sag, ahead, beforeOut } = tendingOf(wish);
  if (!isTended(wish, moment, last) || left < beforeOut) return;
  const burnoutMinutes = wish.setting.burnoutMinutes;
  const span = { minutes: Math.min(ahead, left), burnoutMinutes };
  const need = needOver(wish, moment, span.minutes);
  const soon = { minutes: Math.min(look, left), burnoutMinutes };
  const standing = aheadIn(moment.coals, 'above', soon) + aheadIn(moment.coals, 'below', soon);
  if (standing >= sag * need) return;
  const share = isHeld(wish, moment) ? wish.heldShareAbove : wish.shareAbove;
  const above = addTo(wish, moment, { place: 'above', want: need * share, span });
  const below = addTo(wish, moment, { place: 'below', want: need * (1 - share), span });
  if (above + below === 0) return;
  return { minute: minutes(minute), above, below, clearAsh: minute >= ASHY_MINUTE };
};

/** The lid goes on with its coals, young ones, and those below are made up to bring the pot up. */
const afterBrowning = (wish: FeedWish, moment: OvenMoment): Addition | undefined => {
  const { brownMinutes, lidAfterBrowning: above, need, setting } = wish;
  if (moment.minute !== brownMinutes) return;
  const { ahead } = tendingOf(wish);
  const span = { minutes: ahead, burnoutMinutes: setting.burnoutMinutes };
  const want = need.heatUp * (1 - wish.shareAbove);
  const below = addTo(wish, moment, { place: 'below', want, span });
  if (above + below === 0) return;
  return { minute: minutes(moment.minute), above, below, clearAsh: moment.minute >= ASHY_MINUTE };
};

const isTended = (wish: FeedWish, { minute }: OvenMoment, last: number): boolean => {
  const { first, spacing } = tendingOf(wish);
  return minute >= first && minute % EVERY_MINUTES === 0 && minute - last >= spacing;
};

/** A pot that has come up and is only held. */
const isHeld = ({ need, setting }: FeedWish, { load }: OvenMoment): boolean =>
  need.upKelvin > 0 && load !== undefined && setting.load.temperature(load) >= need.upKelvin;

/** Mean need over the minutes ahead: a pot on its way up wants more until it is there. */
const needOver = (wish: FeedWish, moment: OvenMoment, spanMinutes: number): number => {
  const { need, setting } = wish;
  if (need.upKelvin === 0 || moment.load === undefined) return need.hold;
  const now = setting.load.temperature(moment.load);
  const start = setting.load.temperature(setting.load.start);
  if (now >= need.upKelvin) return need.hold;
  // As quick as it came so far; it started in cold iron, so this reckons rather too long.
  const pace = (now - start) / Math.max(1, moment.minute);
  const still = pace > 0 ? (need.upKelvin - now) / pace : spanMinutes;
  const share = Math.min(1, still / spanMinutes);
  return share * need.heatUp + (1 - share) * need.hold;
};

const addTo = (
  wish: FeedWish,
  moment: OvenMoment,
  to: {
    readonly place: CoalGroup['place'];
    readonly want: number;
    readonly span: { readonly minutes: number; readonly burnoutMinutes: number };
  },
): number => {
  const lacking = to.want - aheadIn(moment.coals, to.place, to.span);
  const fresh = meanStrength(LAID_BURNT, LAID_BURNT + to.span.minutes / to.span.burnoutMinutes);
  const wanted = Math.round(Math.max(0, lacking) / fresh / wish.handful) * wish.handful;
  const room = to.place === 'above' ? wish.room.lidAll : wish.room.floorAll;
  const free = Math.floor((room - standingRoom(moment.coals, to.place)) / wish.handful);
  return Math.max(0, Math.min(wanted, free * wish.handful));
};

// Seen from above a coal shrinks with the two-thirds power of its mass, that is with 1 - burnt.
export const standingRoom = (coals: readonly CoalGroup[], place: CoalGroup['place']): number =>
  coals
    .filter((group) => group.place === place)
    .reduce((sum, group) => sum + group.count * Math.max(0, 1 - group.burnt), 0);

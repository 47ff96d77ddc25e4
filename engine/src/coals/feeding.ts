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
  /** The empty oven is loaded when it is this hot; 0 for a load that starts in a cold oven. */
  readonly readyKelvin: number;
  /** Smallest number that can be told: 1, or half a shovel. */
  readonly handful: number;
}

/** Lid off while the load goes in [s]; common practice, no source. */
export const LOADING_SECONDS = 30;
/** Nobody tends one oven more often, and people think in fives. */
const EVERY_MINUTES = 5;
const PREHEAT_MOST_MINUTES = 30;
const FIRST_MINUTE = 15;
/** Between two additions; coals that burn away faster are tended every five minutes. */
const SPACING_MINUTES = 10;
const LOOK_AHEAD = 10;
const SHORT_BURNOUT = 30;
const LAST_BEFORE_OUT = 10; // coals laid later warm nothing that matters
/** An addition is sized for this long ahead, within what one set can do. */
const FEED_AHEAD = { least: 15, most: 30, shareOfBurnout: 0.4 } as const;
/** A pot's water carries it over a dip, so that it is tended less often; tuned as SAG. */
const POT_SAG = 0.7;
const POT_SPACING_MINUTES = 20;
/** From here on ash lies thick enough to be cleared first; common practice, no source. */
const ASHY_MINUTE = 30;
/** Add when the coals ahead fall below this share of the need; tuned, see the header. */
const SAG = 0.85;

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
    const outMinute = Math.min(loadInMinute, PREHEAT_MOST_MINUTES) + wish.stayMinutes;
    const addition = additionAt(wish, moment, { outMinute, last: additions.at(-1)?.minute ?? 0 });
    if (addition) additions.push(addition);
    if (addition) moment = withCoals(moment, laid(addition));
    moments.push(moment);
    if (moment.minute >= outMinute) return { moments, additions, loadInMinute, outMinute };
    const openSeconds = moment.minute === loadInMinute ? LOADING_SECONDS : 0;
    moment = minuteLater(wish.setting, moment, { openSeconds });
  }
};

const isReady = (wish: FeedWish, moment: OvenMoment): boolean => {
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
  readonly outMinute: number;
  /** Minute of the last addition, 0 = coals on. */
  readonly last: number;
}

const additionAt = (
  wish: FeedWish,
  moment: OvenMoment,
  { outMinute, last }: Tending,
): Addition | undefined => {
  const { minute } = moment;
  const left = outMinute - minute;
  if (!isTended(wish, moment, last) || left < LAST_BEFORE_OUT) return;
  const need = needAt(wish, moment);
  const burnoutMinutes = wish.setting.burnoutMinutes;
  const soon = { minutes: LOOK_AHEAD, burnoutMinutes };
  const standing = aheadIn(moment.coals, 'above', soon) + aheadIn(moment.coals, 'below', soon);
  if (standing >= (isHeld(wish, moment) ? POT_SAG : SAG) * need) return;
  const { least, most, shareOfBurnout } = FEED_AHEAD;
  const ahead = Math.min(most, Math.max(least, shareOfBurnout * burnoutMinutes));
  const span = { minutes: Math.min(ahead, left), burnoutMinutes };
  const share = isHeld(wish, moment) ? wish.heldShareAbove : wish.shareAbove;
  const above = addTo(wish, moment, { place: 'above', want: need * share, span });
  const below = addTo(wish, moment, { place: 'below', want: need * (1 - share), span });
  if (above + below === 0) return;
  return { minute: minutes(minute), above, below, clearAsh: minute >= ASHY_MINUTE };
};

const spacing = (wish: FeedWish, moment: OvenMoment): number => {
  if (wish.setting.burnoutMinutes < SHORT_BURNOUT) return EVERY_MINUTES;
  return isHeld(wish, moment) ? POT_SPACING_MINUTES : SPACING_MINUTES;
};

const isTended = (wish: FeedWish, moment: OvenMoment, last: number): boolean =>
  moment.minute >= FIRST_MINUTE &&
  moment.minute % EVERY_MINUTES === 0 &&
  moment.minute - last >= spacing(wish, moment);

/** A pot that has come up and is only held. */
const isHeld = ({ need, setting }: FeedWish, { load }: OvenMoment): boolean =>
  need.upKelvin > 0 && load !== undefined && setting.load.temperature(load) >= need.upKelvin;

const needAt = (wish: FeedWish, moment: OvenMoment): number =>
  wish.need.upKelvin > 0 && !isHeld(wish, moment) ? wish.need.heatUp : wish.need.hold;

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
const standingRoom = (coals: readonly CoalGroup[], place: CoalGroup['place']): number =>
  coals
    .filter((group) => group.place === place)
    .reduce((sum, group) => sum + group.count * Math.max(0, 1 - group.burnt), 0);

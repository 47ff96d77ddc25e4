// The run of an oven from coals on to load out, with the coals that are added on the way.
// Sources: making-up.ts for what bakes, pot-feeding.ts for a pot.

import type { Addition } from './coal-plan.ts';
import { laid } from './coals-ahead.ts';
import type { Counts, FeedWish } from './feed-wish.ts';
import { plannedAdditions } from './making-up.ts';
import { potAddition } from './pot-feeding.ts';
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

/** Lid off while the load goes in [s]; common practice, no source. */
export const LOADING_SECONDS = 30;
const PREHEAT_EVERY_MINUTES = 5; // people think in fives
const PREHEAT_MOST_MINUTES = 30;

/** Runs the oven from coals on to load out, adding coals where they run short. */
export const fedRun = (wish: FeedWish, start: OvenMoment): FedRun => {
  const { loadMinute } = wish;
  const outMinute = loadMinute + wish.stayMinutes;
  const tendedTo = loadMinute + wish.tendedMinutes;
  const isPot = wish.need.upKelvin > 0;
  const planned = isPot ? [] : plannedAdditions(wish);
  const moments: OvenMoment[] = [];
  const additions: Addition[] = [];
  let moment = start;
  while (true) {
    if (moment.minute === loadMinute) moment = withLoadIn(moment, wish.setting.load);
    const addition = isPot
      ? potAddition(wish, moment, { tendedTo, last: additions.at(-1)?.minute ?? 0 })
      : planned.find(({ minute }) => minute === moment.minute);
    if (addition) additions.push(addition);
    if (addition) moment = withCoals(moment, laid(addition));
    moments.push(moment);
    if (moment.minute >= outMinute)
      return { moments, additions, loadInMinute: loadMinute, outMinute };
    const openSeconds = lidOffSeconds(wish, { minute: moment.minute, loadInMinute: loadMinute });
    moment = minuteLater(wish.setting, moment, { openSeconds });
  }
};

/** Minute at which the empty oven is hot enough to be loaded, half an hour at the most. */
export const readyMinute = (
  setting: RunSetting,
  start: OvenMoment,
  readyKelvin: number,
): number => {
  let moment = start;
  while (moment.minute < PREHEAT_MOST_MINUTES) {
    for (let minute = 0; minute < PREHEAT_EVERY_MINUTES; minute++)
      moment = minuteLater(setting, moment);
    if (moment.ovenKelvin >= readyKelvin) return moment.minute;
  }
  return PREHEAT_MOST_MINUTES;
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
  counts: Counts,
  { brownMinutes }: Pick<FeedWish, 'brownMinutes'>,
): readonly CoalGroup[] => laid(brownMinutes > 0 ? { ...counts, above: 0 } : counts);

// When is a pot's fire made up, and with how many coals?
// Sources: burn.ts (strength ahead is known); published: add from 20 … 45 min on (coalLife).
// Weak spot: one rule of thumb of ours decides (POT), tuned to keep water within 3 K of its boil.

import { minutes } from '../quantity/unit.ts';
import type { Addition } from './coal-plan.ts';
import { aheadIn, freshAhead, type Span, standingRoom } from './coals-ahead.ts';
import { ASHY_MINUTE, type FeedWish } from './feed-wish.ts';
import type { CoalGroup, OvenMoment } from './run.ts';

const EVERY_MINUTES = 5; // people think in fives, and nobody tends one pot more often
/**
 * How often a pot is tended: its water holds it, so it is left alone for about half an hour, as long
 * as its coals last. Coals are added when those of the `look` minutes ahead fall below `sag` of the
 * need, and nothing is added when less than `leastLeft` minutes remain; tuned, see the header.
 */
const POT = {
  spacing: { least: 5, most: 30, shareOfBurnout: 0.4 },
  leastLeft: { least: 20, most: 25, shareOfBurnout: 0.4 },
  look: 15,
  sag: 0.75,
} as const;

export interface Tending {
  readonly tendedTo: number;
  /** Minute of the last addition, 0 = coals on. */
  readonly last: number;
}

/** What is added to a pot at this minute, if anything. */
export const potAddition = (
  wish: FeedWish,
  moment: OvenMoment,
  { tendedTo, last }: Tending,
): Addition | undefined => {
  const { minute, coals } = moment;
  if (wish.brownMinutes > 0 && minute <= wish.brownMinutes) return afterBrowning(wish, moment);
  const { burnoutMinutes } = wish.setting;
  const left = tendedTo - minute;
  const spacing = spacingFor(burnoutMinutes);
  if (minute % EVERY_MINUTES !== 0 || minute - last < spacing) return;
  if (left < within(POT.leastLeft, burnoutMinutes)) return;
  const span = { minutes: Math.min(spacing + EVERY_MINUTES, left), burnoutMinutes };
  const soon = { minutes: Math.min(POT.look, left), burnoutMinutes };
  const need = needOver(wish, moment, span.minutes);
  if (aheadIn(coals, 'above', soon) + aheadIn(coals, 'below', soon) >= POT.sag * need) return;
  const share = isHeld(wish, moment) ? wish.heldShareAbove : wish.shareAbove;
  const above = addTo(wish, moment, { place: 'above', want: need * share, span });
  const below = addTo(wish, moment, { place: 'below', want: need * (1 - share), span });
  return above + below > 0 ? addition(minute, above, below) : undefined;
};

const addition = (minute: number, above: number, below: number): Addition => ({
  minute: minutes(minute),
  above,
  below,
  clearAsh: minute >= ASHY_MINUTE,
});

const within = (
  { least, most, shareOfBurnout }: { least: number; most: number; shareOfBurnout: number },
  burnoutMinutes: number,
): number => Math.min(most, Math.max(least, shareOfBurnout * burnoutMinutes));

const spacingFor = (burnoutMinutes: number): number =>
  EVERY_MINUTES * Math.round(within(POT.spacing, burnoutMinutes) / EVERY_MINUTES);

/** The lid goes on with its coals, young ones, and those below are made up to bring the pot up. */
const afterBrowning = (wish: FeedWish, moment: OvenMoment): Addition | undefined => {
  const { brownMinutes, counts, need, setting } = wish;
  if (moment.minute !== brownMinutes) return;
  const { burnoutMinutes } = setting;
  const span = { minutes: spacingFor(burnoutMinutes) + EVERY_MINUTES, burnoutMinutes };
  const want = need.heatUp * (1 - wish.shareAbove);
  const below = addTo(wish, moment, { place: 'below', want, span });
  return counts.above + below > 0 ? addition(moment.minute, counts.above, below) : undefined;
};

/** A pot that has come up and is only held. */
const isHeld = ({ need, setting }: FeedWish, { load }: OvenMoment): boolean =>
  load !== undefined && setting.load.temperature(load) >= need.upKelvin;

/** Mean need over the minutes ahead: a pot on its way up wants more until it is there. */
const needOver = (wish: FeedWish, moment: OvenMoment, spanMinutes: number): number => {
  const { need, setting } = wish;
  if (moment.load === undefined) return need.hold;
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
  { room, handful }: FeedWish,
  { coals }: OvenMoment,
  to: { readonly place: CoalGroup['place']; readonly want: number; readonly span: Span },
): number => {
  const lacking = Math.max(0, to.want - aheadIn(coals, to.place, to.span));
  const wanted = Math.round(lacking / freshAhead(to.span) / handful) * handful;
  const most = to.place === 'above' ? room.lidAll : room.floorAll;
  const free = Math.floor((most - standingRoom(coals, to.place)) / handful) * handful;
  return Math.max(0, Math.min(wanted, free));
};

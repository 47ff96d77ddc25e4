// How many coals, and where, make a cook's layout hold its wish? Found by running it on with them.
// Sources: run.ts for the heat; splitByMethod for the sides; ringMethod (room.ts) for what fits.

import { LAID_BURNT } from './burn.ts';
import { type FireNow, liveCoals, runOn } from './fire-state.ts';
import { coalWidth, roomFor } from './room.ts';
import { type CoalGroup, type OvenMoment, withCoals } from './run.ts';
import { hasBareLid, isBaked, shareAboveFor } from './split.ts';

/** Coals by side: below zero they are taken off. */
export interface LayoutChange {
  readonly above: number;
  readonly below: number;
}

export interface AdviceWish {
  readonly now: FireNow;
  readonly ahead: { readonly minutes: number; readonly loadInMinute?: number };
  /** The change is made then; minute 0 is now. */
  readonly minute: number;
  /** And again so many minutes later, to the end; left out, once. */
  readonly everyMinutes?: number;
  /** Fewest whole coals of one change: half a shovel for wood. */
  readonly handful: number;
  /** 1 to add, -1 to take off. */
  readonly way: 1 | -1;
  /** Does what is run hold the wish? */
  readonly holds: (moments: readonly OvenMoment[]) => boolean;
  /** Too much of a good thing: the smallest that holds is then none. */
  readonly spoils?: (moments: readonly OvenMoment[]) => boolean;
}

/**
 * The smallest change of whole coals with which the wish is held, fresh ones of the usual age laid as
 * the method has them; undefined where nothing that fits, or that lies there, does it.
 *
 * @valid  more coals never make an oven cooler, so halving finds the smallest
 */
export const smallestChange = (wish: AdviceWish): LayoutChange | undefined => {
  const most = mostHandfuls(wish);
  const changeOf = (handfuls: number) => splitChange(wish, handfuls);
  if (most === 0 || !wish.holds(runWith(wish, changeOf(most)))) return;
  let [fails, holds] = [0, most];
  while (holds - fails > 1) {
    const middle = Math.floor((fails + holds) / 2);
    if (wish.holds(runWith(wish, changeOf(middle)))) holds = middle;
    else fails = middle;
  }
  const found = changeOf(holds);
  return wish.spoils?.(runWith(wish, found)) ? undefined : found;
};

/** All that could be laid there, and that heat which it gives. */
export const runFilled = (wish: AdviceWish): readonly OvenMoment[] =>
  runWith(wish, splitChange(wish, mostHandfuls(wish)));

const mostHandfuls = (wish: AdviceWish): number => {
  const { above, below } = spaceFor(wish);
  return Math.floor(above / wish.handful) + Math.floor(below / wish.handful);
};

/** What can be laid, or taken off, on each side. */
const spaceFor = ({ now, way }: AdviceWish): LayoutChange => {
  const { request, setting, moment } = now;
  const lying = { above: liveCoals(moment, 'above'), below: liveCoals(moment, 'below') };
  if (way < 0) return lying;
  const room = roomFor(setting.body, request.oven.diameter, coalWidth(request.fuel));
  const { method } = request.wish;
  const onLid = hasBareLid(method) ? 0 : Math.max(0, room.lidAll - lying.above);
  const under = method === 'keep-warm' ? 0 : Math.max(0, room.floorAll - lying.below);
  return { above: onLid, below: under };
};

/** Shared by the layout's own split, else the method's; what one side can not carry, the other does. */
const splitChange = (wish: AdviceWish, handfuls: number): LayoutChange => {
  const { handful, way } = wish;
  const space = spaceFor(wish);
  const [lid, floor] = [space.above, space.below].map((each) => Math.floor(each / handful));
  const wanted = Math.round(handfuls * shareOf(wish));
  const above = Math.min(lid ?? 0, Math.max(wanted, handfuls - (floor ?? 0)));
  return { above: way * handful * above, below: way * handful * (handfuls - above) };
};

/** More of a bread's coals below than this and its bottom is done first (splitByMethod: a third). */
export const MOST_BELOW_SHARE = 0.45;

const shareOf = ({ now, way }: AdviceWish): number => {
  const { method } = now.request.wish;
  const [above, below] = [liveCoals(now.moment, 'above'), liveCoals(now.moment, 'below')];
  const own = above / Math.max(1, above + below);
  if (way < 0) return own;
  const isOwn = isBaked(method) && above > 0 && below > 0 && 1 - own <= MOST_BELOW_SHARE;
  return isOwn ? own : shareAboveFor(method);
};

const runWith = (wish: AdviceWish, change: LayoutChange): readonly OvenMoment[] => {
  const { now, ahead } = wish;
  const moments: OvenMoment[] = [];
  let from = now.moment;
  for (const minute of changeMinutes(wish)) {
    const until = runOn(now.setting, from, { ...ahead, minutes: minute - from.minute });
    moments.push(...until.slice(0, -1));
    from = changed(until.at(-1) ?? from, fitting(wish, until.at(-1) ?? from, change));
  }
  return [
    ...moments,
    ...runOn(now.setting, from, { ...ahead, minutes: ahead.minutes - from.minute }),
  ];
};

const changeMinutes = ({ minute, everyMinutes, ahead }: AdviceWish): readonly number[] => {
  if (everyMinutes === undefined) return [minute];
  const times = Math.max(1, Math.ceil((ahead.minutes - minute - LATE_MINUTES) / everyMinutes));
  return Array.from({ length: times }, (_, time) => minute + time * everyMinutes);
};

const LATE_MINUTES = 10; // later ones are not felt before the end

/** A later set only as far as there is room for it by then. */
const fitting = (wish: AdviceWish, moment: OvenMoment, change: LayoutChange): LayoutChange => {
  if (wish.way < 0) return change;
  const space = spaceFor({ ...wish, now: { ...wish.now, moment } });
  return {
    above: Math.min(change.above, Math.floor(space.above)),
    below: Math.min(change.below, Math.floor(space.below)),
  };
};

const changed = (moment: OvenMoment, { above, below }: LayoutChange): OvenMoment => {
  const fresh: readonly CoalGroup[] = [
    { place: 'above', count: above, burnt: LAID_BURNT },
    { place: 'below', count: below, burnt: LAID_BURNT },
  ];
  const kept = taken(taken(moment, 'above', Math.max(0, -above)), 'below', Math.max(0, -below));
  return withCoals(kept, fresh);
};

/** Old and young alike, as they lie. */
const taken = (moment: OvenMoment, place: CoalGroup['place'], coals: number): OvenMoment => {
  const all = liveCoals(moment, place);
  const left = all > 0 ? Math.max(0, 1 - coals / all) : 1;
  return {
    ...moment,
    coals: moment.coals.map((group) =>
      group.place === place ? { ...group, count: group.count * left } : group,
    ),
  };
};

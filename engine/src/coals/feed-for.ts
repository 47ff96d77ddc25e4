// The wish for feeding an oven, from what is asked and what is laid.
// Source: count.ts.

import type { CoalRequest } from './coal-plan.ts';
import type { Counts, FeedWish } from './feed-wish.ts';
import type { HeatNeed } from './need.ts';
import type { Room } from './room.ts';
import type { RunSetting } from './run.ts';
import { isBaked, isHeatedFirst } from './split.ts';
import { handfulOf } from './whole-counts.ts';

/** Loaded when this near the wanted heat: a cook's eye is not finer. */
const READY_KELVIN = 3;

interface Laid extends Pick<FeedWish, 'counts' | 'sized' | 'loadMinute'> {
  readonly need: HeatNeed;
  readonly handful?: number | undefined;
}

export const feedWish = (
  request: CoalRequest,
  setting: RunSetting,
  { need, counts, sized, loadMinute, handful }: Laid,
): FeedWish => {
  const all = sized.above + sized.below;
  return {
    setting,
    need,
    counts,
    sized,
    shareAbove: all > 0 ? sized.above / all : need.shareAbove,
    heldShareAbove: need.shareAbove,
    room: feedRoom(request, need.room, counts),
    stayMinutes: Math.max(1, Math.round(request.wish.minutes)),
    tendedMinutes: Math.max(1, Math.round(request.wish.tendedFor ?? request.wish.minutes)),
    loadMinute,
    readyKelvin: readyKelvinFor(request),
    handful: handful ?? handfulOf(request),
    brownMinutes: Math.round(request.wish.brownFirst ?? 0),
  };
};

/** An oven that is heated first should be so hot when it is loaded; 0 for all others. */
export const readyKelvinFor = ({ wish }: Pick<CoalRequest, 'wish'>): number =>
  isHeatedFirst(wish) ? wish.wanted - READY_KELVIN : 0;

// Added coals keep to the ring under a bread as the first ones do; a pinned heap is kept up.
const feedRoom = (request: CoalRequest, room: Room, counts: Counts): Room =>
  isBaked(request.wish.method)
    ? { ...room, floorAll: Math.max(room.floorRing, counts.below) }
    : room;

// A boil and a fry have all their coals below: what does it cost when no more fit there?
// Source: splitByMethod (0 above). Weak spot: coals below stand as dense as SPREAD_PACKING lets them.

import type { NoticeValues } from '../notice/notice.ts';
import type { CoalRequest } from './coal-plan.ts';
import { laid } from './coals-ahead.ts';
import { type Counted, upMinute } from './count.ts';
import { runOn } from './fire-state.ts';
import { heldKelvin } from './hold.ts';
import { coalsUpWithLid, holdCaseFor, upDeadline } from './need.ts';
import { type RunSetting, startMoment } from './run.ts';
import { siteFor } from './site.ts';
import { isOpenMethod } from './split.ts';

/** Inside at the most, where a full floor never brings water to its boil; else undefined. */
export const boilOutOfReach = (request: CoalRequest, counted: Counted): number | undefined => {
  if (request.wish.method !== 'boil' || !counted.floorIsFull) return;
  const setting = siteFor(request);
  const dry = { ...holdCaseFor(request, setting, 0), sinkWatts: 0 };
  const { ovenKelvin } = heldKelvin(dry, counted.need.room.floorAll);
  return ovenKelvin < Math.min(request.air.boiling, request.wish.wanted) ? ovenKelvin : undefined;
};

/**
 * What a full floor does, and what would be quicker: for a boil so many coals on its lid until it is
 * up, for a fry the lid on until its floor is hot. Undefined where all that is wanted fits.
 */
export const floorLimit = (
  request: CoalRequest,
  setting: RunSetting,
  counted: Counted,
): NoticeValues | undefined => {
  const { wish } = request;
  if (!counted.floorIsFull) return;
  const values = {
    method: wish.method,
    fuel: request.fuel.kind,
    below: counted.counts.below,
    meanKelvin: counted.meanKelvin,
    wantedKelvin: wish.wanted,
  };
  if (isOpenMethod(wish.method))
    return isHotInTime(request, counted)
      ? undefined
      : { ...values, ...lidOn(request, setting, counted) };
  if (wish.method !== 'boil') return;
  const up = upMinute(counted.feed, counted.run);
  if (up !== undefined && up <= upDeadline(wish)) return;
  const all = coalsUpWithLid(request, setting, counted.need);
  const lidCoals = Math.max(0, Math.ceil(all - counted.need.room.floorAll));
  return { ...values, lidCoals, ...(up === undefined ? {} : { minute: up }) };
};

const isHotInTime = ({ wish }: CoalRequest, { meanKelvin, feed, run }: Counted): boolean =>
  meanKelvin >= wish.wanted - SHORT_KELVIN &&
  (run.moments[run.loadInMinute]?.ovenKelvin ?? 0) >= feed.readyKelvin - SHORT_KELVIN;

const SHORT_KELVIN = 7; // as in plan-notices.ts
const LOOKED_MINUTES = 45;
const NEAR_KELVIN = 3; // as near as a cook's eye, as in count.ts

/** Minutes until the floor is hot under a lid that is on; left out where that does not help. */
const lidOn = (request: CoalRequest, setting: RunSetting, { counts }: Counted): NoticeValues => {
  const start = startMoment({ ironKelvin: request.ironAtStart, coals: laid(counts) });
  const closed = { ...setting, isOpen: false };
  const hot = runOn(closed, start, { minutes: LOOKED_MINUTES }).find(
    ({ iron }) => iron.floor >= request.wish.wanted - NEAR_KELVIN,
  );
  return hot === undefined ? {} : { minute: hot.minute };
};

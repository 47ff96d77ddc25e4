// Coals on a lid that is off: they heat nothing, and belong below.
// Source: splitByMethod (a fry has none above); what lies under a floor: room.ts.

import { type Notice, notice } from '../notice/notice.ts';
import { type FireNow, type FireState, liveCoals } from './fire-state.ts';
import { coalWidth, roomFor } from './room.ts';
import { isOpenMethod } from './split.ts';

/** COALS_ABOVE_IDLE where a fry has coals above, with how many of them still lie below. */
export const idleAbove = (state: FireState, { moment, setting }: FireNow): readonly Notice[] => {
  const above = state.coals
    .filter(({ place }) => place === 'above')
    .reduce((sum, { pieces }) => sum + pieces, 0);
  if (!isOpenMethod(state.method) || above === 0) return [];
  const { floorAll } = roomFor(setting.body, state.oven.diameter, coalWidth(state.fuel));
  const free = Math.max(0, Math.floor(floorAll - liveCoals(moment, 'below')));
  const values = { above, below: Math.min(above, free), fuel: state.fuel.kind };
  return [notice('COALS_ABOVE_IDLE', 'doubt', { oven: state.oven.id }, values)];
};

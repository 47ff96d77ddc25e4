// Nothing glows any more: no move helps, another fire does. What to light, how long it takes, and
// what the oven loses meanwhile. Sources: lighting.ts (minutes to ash over), run.ts.
// Counted as layCoals counts a fire that is laid anew (count.ts), so that both doors say one number.

import { type Notice, type NoticeValues, notice } from '../notice/notice.ts';
import type { Kelvin } from '../quantity/unit.ts';
import { strengthAt } from './burn.ts';
import { laid } from './coals-ahead.ts';
import { countCoals } from './count.ts';
import { type FireNow, type FireState, runOn } from './fire-state.ts';
import { ashOverMinutes } from './lighting.ts';
import { type OvenMoment, type RunSetting, withCoals } from './run.ts';
import { isBaked, WANTED_HALF_RANGE } from './split.ts';
import { usualStay, wantedAtFire } from './usual-fire.ts';

/** Less than one young coal's heat: no fire to work with. */
const LEAST_COALS = 1;

/** Heat of all that glows, as mid-life coals. */
const glowing = ({ coals }: OvenMoment): number =>
  coals.reduce((sum, { count, burnt }) => sum + count * strengthAt(burnt), 0);

/**
 * COALS_NO_FIRE where nothing is left to work with: coals to light, when they have ashed over, how
 * far the oven falls till then and when it is at heat again. Else undefined; so too where nobody
 * said how old the coals are that were counted.
 */
export const noFire = (state: FireState, now: FireNow, said?: Kelvin): Notice | undefined => {
  if (state.agesAssumed !== undefined && state.coals.some(({ pieces }) => pieces > 0)) return;
  if (glowing(now.moment) >= LEAST_COALS) return;
  const wanted = wantedAtFire(state.method, state.air, said);
  const counts = countsFor(state, now, wanted);
  const wait = waitMinutes(state);
  const cooling = runOn(now.setting, now.moment, { minutes: wait });
  const ready = cooling.at(-1) ?? now.moment;
  return notice(
    'COALS_NO_FIRE',
    'doubt',
    { oven: state.oven.id },
    {
      fuel: state.fuel.kind,
      method: state.method,
      coals: Math.ceil((counts.above + counts.below) * (1 + LOST_SHARE)),
      ...counts,
      minutes: wait,
      ovenKelvin: now.moment.ovenKelvin,
      thenKelvin: ready.ovenKelvin,
      wantedKelvin: wanted,
      ...againAt(now.setting, withCoals(ready, laid(counts)), wanted),
    },
  );
};

/** Of each chimneyful a few break or roll away; common practice, as provisions count. */
const LOST_SHARE = 0.05;
const LOOKED_MINUTES = 60;

const waitMinutes = ({ fuel, place, air }: FireState): number =>
  fuel.kind === 'wood-coals'
    ? fuel.lead
    : ashOverMinutes({ elevation: place.elevation, wind: air.wind });

/** As many as the door of the counts lays for this heat and a usual stay, from cold. */
const countsFor = (
  { method, air }: FireState,
  { request, setting }: FireNow,
  wanted: Kelvin,
): { readonly above: number; readonly below: number } => {
  const stay = usualStay(method === 'none' ? 'bake' : method);
  const wish = { method, wanted, minutes: stay, preheat: isBaked(method) };
  const ironAtStart = method === 'keep-warm' ? wanted : air.temperature;
  const { above, below } = countCoals({ ...request, wish, ironAtStart }, setting).counts;
  return { above, below };
};

const againAt = (setting: RunSetting, from: OvenMoment, wanted: Kelvin): NoticeValues => {
  const hot = runOn(setting, from, { minutes: LOOKED_MINUTES }).find(
    ({ ovenKelvin }) => ovenKelvin >= wanted - WANTED_HALF_RANGE,
  );
  return hot === undefined ? {} : { minute: hot.minute };
};

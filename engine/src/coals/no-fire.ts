// Nothing glows any more: no move helps, another fire does. What to light, how long it takes, and
// what the oven loses meanwhile. Sources: lighting.ts (minutes to ash over), run.ts.
// Weak spot: what the food wants is not known here; a usual bake, or a boil, stands in.

import { type Notice, type NoticeValues, notice } from '../notice/notice.ts';
import { fromFahrenheit, type Kelvin, kelvin } from '../quantity/unit.ts';
import { strengthAt } from './burn.ts';
import { laid } from './coals-ahead.ts';
import { type FireNow, type FireState, runOn } from './fire-state.ts';
import { coalsToHold } from './hold.ts';
import { ashOverMinutes } from './lighting.ts';
import { holdCaseFor, roomOf, spilled } from './need.ts';
import { type OvenMoment, type RunSetting, withCoals } from './run.ts';
import { isPotMethod, shareAboveFor, WANTED_HALF_RANGE } from './split.ts';

/** Less than one young coal's heat: no fire to work with. */
const LEAST_COALS = 1;

/** Heat of all that glows, as mid-life coals. */
const glowing = ({ coals }: OvenMoment): number =>
  coals.reduce((sum, { count, burnt }) => sum + count * strengthAt(burnt), 0);

/**
 * COALS_NO_FIRE where nothing is left to work with: coals to light, when they have ashed over, how
 * far the oven falls till then and when it is at heat again. Else undefined.
 */
export const noFire = (state: FireState, now: FireNow): Notice | undefined => {
  if (glowing(now.moment) >= LEAST_COALS) return;
  const wanted = isPotMethod(state.method) ? kelvin(state.air.boiling + 4) : USUAL_HEAT;
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

const USUAL_HEAT = fromFahrenheit(350); // what most recipes and all charts ask for
/** Of each chimneyful a few break or roll away; common practice, as provisions count. */
const LOST_SHARE = 0.05;
const LOOKED_MINUTES = 60;

const waitMinutes = ({ fuel, place, air }: FireState): number =>
  fuel.kind === 'wood-coals'
    ? fuel.lead
    : ashOverMinutes({ elevation: place.elevation, wind: air.wind });

/** What holds the heat, as layCoals shares it, as far as it fits. */
const countsFor = ({ method }: FireState, { request, setting }: FireNow, wanted: Kelvin) => {
  const share = shareAboveFor(method);
  const room = roomOf(request, setting.body);
  const asked = { ...request, wish: { ...request.wish, wanted } };
  const held = coalsToHold(holdCaseFor(asked, setting, share));
  const all = Math.min(room.lidAll + room.floorAll, Math.max(1, Math.ceil(held)));
  const { above, below } = spilled({ below: all - Math.round(all * share), all }, room);
  return { above: Math.min(above, room.lidAll), below };
};

const againAt = (setting: RunSetting, from: OvenMoment, wanted: Kelvin): NoticeValues => {
  const hot = runOn(setting, from, { minutes: LOOKED_MINUTES }).find(
    ({ ovenKelvin }) => ovenKelvin >= wanted - WANTED_HALF_RANGE,
  );
  return hot === undefined ? {} : { minute: hot.minute };
};

// A dish is kept warm: what do the three or four coals of practice do, beside our count?
// Source: run.ts; "three or four on the lid, none below" is common practice, no source;
// 140 F as the heat that hot food is kept above: foodsafety-chart.

import { isRefusal } from '../notice/notice.ts';
import { type Kelvin, kelvin, type Minutes, minutes } from '../quantity/unit.ts';
import { LAID_AGE_MINUTES } from './burn.ts';
import type { CoalPlan, CoalRequest } from './coal-plan.ts';
import { fireNow, runOn } from './fire-state.ts';

export interface WarmWithFew {
  readonly coals: number;
  readonly hotEnough: Kelvin;
  /** The dish stays hot enough for so long; undefined: for all of `minutes`. */
  readonly until?: Minutes;
  readonly minutes: Minutes;
}

const FEW = 4;
const HOT_ENOUGH = kelvin(333.15); // 60 °C, 140 °F
const LOOKED_MINUTES = 180;

/** Laid once, none added; undefined where nothing is kept warm, or where ours are no more than theirs. */
export const warmWithFew = (request: CoalRequest, plan: CoalPlan): WarmWithFew | undefined => {
  const { wish, fuel } = request;
  if (wish.method !== 'keep-warm' || fuel.kind === 'wood-coals' || plan.above.pieces <= FEW) return;
  const { oven, air, place, screened, load, conditions, ironAtStart } = request;
  const now = fireNow({
    ...{ oven, air, place, screened, fuel, load, method: 'keep-warm' as const },
    ...(conditions === undefined ? {} : { conditions }),
    coals: [{ place: 'above', pieces: FEW, litMinutesAgo: minutes(LAID_AGE_MINUTES) }],
    ironNow: ironAtStart,
    loadInMinutesAgo: minutes(0),
  });
  if (isRefusal(now)) return;
  const cool = runOn(now.setting, now.moment, { minutes: LOOKED_MINUTES }).find(
    (moment) => moment.load !== undefined && load.temperature(moment.load) < HOT_ENOUGH,
  );
  return {
    coals: FEW,
    hotEnough: HOT_ENOUGH,
    minutes: minutes(LOOKED_MINUTES),
    ...(cool === undefined ? {} : { until: minutes(cool.minute) }),
  };
};

// How long does this load stay in, and what shows that it is done?

import { bandOf } from '../coals/index.ts';
import { isPot } from '../menu/heat-kind.ts';
import { type Notice, notice } from '../notice/notice.ts';
import { type Kelvin, minutes, ratio } from '../quantity/unit.ts';
import type { BakePlan, DoneTarget } from './bake-plan.ts';
import type { BakeRequest, CookTime } from './bake-request.ts';
import { breadTime } from './bread-time.ts';
import { cobblerTime } from './cobbler-time.ts';
import { doneTargetFor } from './done-target.ts';
import { fruitTime } from './fruit-time.ts';
import { COLOUR_MARKS } from './inside/index.ts';
import { figuresOfKind, isBaked, isBread } from './kinds.ts';
import { potTime } from './pot-time.ts';
import { roastTime } from './roast-time.ts';

/**
 * Minutes in the oven, the core to reach, the signs, the loss.
 *
 * Bread by thickness and lid; a pot by the recipe's simmer, lengthened for height and counted from
 * the boil; meat and fruit by conduction. The recipe's own minutes for a bread are never used.
 *
 * @notice  see codes.ts
 */
export function bakeFor(asked: BakeRequest): BakePlan {
  const { load, recipe, air } = asked;
  const target = doneTargetFor({
    recipe,
    air,
    ...(asked.leastCore === undefined ? {} : { leastCore: asked.leastCore }),
  });
  const time = withHeatDoubt(asked, target.done.core ?? asked.air.boiling);
  const withoutCore = isToldBySigns(asked, target.done);
  const about = { dish: load.dish, recipe: recipe.id, oven: load.oven };
  return {
    load: load.id,
    minutes: minutes(time.minutes),
    least: minutes(time.least),
    most: minutes(time.most),
    ...aimEarlyOf(asked, time),
    done: asItComesOut(withoutCore ? bySigns(target.done) : target.done, time),
    loss: ratio(figuresOfKind(recipe.kind).loss), // practice's: the model's is half of it
    ...(time.inside === undefined ? {} : { inside: time.inside }),
    ...(time.coreReadings === undefined ? {} : { coreReadings: time.coreReadings }),
    ...(time.taken === undefined ? {} : { taken: time.taken }),
    notices: [
      ...(withoutCore ? [] : target.notices),
      ...time.notices,
      ...pinNotices(asked, time),
    ].map((said) => ({
      ...said,
      about,
    })),
  };
}

/**
 * Nobody can read the core, its signs tell as well, and nothing in it needs more for its health than
 * what they show.
 */
function isToldBySigns({ hasThermometer, leastCore, recipe }: BakeRequest, done: DoneTarget) {
  const wanted = Math.min(done.wantedCore ?? 0, done.core ?? 0);
  const isSafe = leastCore === undefined || (isBaked(recipe) && leastCore <= wanted);
  return hasThermometer === false && isSafe && done.signs.some((sign) => sign !== 'core');
}

const bySigns = ({ core: _core, wantedCore: _wanted, ...done }: DoneTarget): DoneTarget => ({
  ...done,
  cappedByBoil: false,
  signs: done.signs.filter((sign) => sign !== 'core'),
});

/** A face that comes out dark is not looked for brown: the card would say two things of one crust. */
function asItComesOut(done: DoneTarget, { inside, minutes: out }: CookTime): DoneTarget {
  const last = inside?.moments[Math.min(inside.moments.length - 1, Math.round(out))];
  if (last === undefined) return done;
  const isDark = {
    top: COLOUR_MARKS.dark <= last.topColour,
    bottom: COLOUR_MARKS.dark <= last.bottomColour,
  };
  return {
    ...done,
    ...(done.top !== undefined && isDark.top ? { top: 'dark' } : {}),
    ...(done.bottom !== undefined && isDark.bottom ? { bottom: 'dark' } : {}),
  };
}

/** What can wait hot is begun early enough for the late end of its band. */
function aimEarlyOf({ recipe, pinnedMinutes }: BakeRequest, time: CookTime) {
  const early = time.most - time.minutes;
  const canWait = isPot(recipe) && early <= recipe.target.canWait;
  return pinnedMinutes === undefined && canWait && 0 < early ? { aimEarly: minutes(early) } : {};
}

/** Pinned minutes are kept; here they are judged against the band of our own. */
function pinNotices({ pinnedMinutes, leastCore }: BakeRequest, time: CookTime): readonly Notice[] {
  if (pinnedMinutes === undefined || time.most === 0) return [];
  const values = {
    pinnedMinutes,
    minutes: time.minutes,
    leastMinutes: time.least,
    mostMinutes: time.most,
  };
  if (pinnedMinutes < time.least) {
    const level = leastCore === undefined ? 'stop' : 'danger';
    return [notice('BAKE_PIN_SHORT', level, {}, values)];
  }
  return time.most < pinnedMinutes ? [notice('BAKE_PIN_LONG', 'doubt', {}, values)] : [];
}

/**
 * Our own doubt about the food, and beside it that of the heat: the minutes along each run of the
 * coals' factors, added in quadrature (coals/band.ts).
 */
function withHeatDoubt(asked: BakeRequest, core: Kelvin): CookTime {
  const time = timeOf(asked, core);
  const runs = asked.factorRuns ?? [];
  if (time.minutes === 0 || runs.length === 0) return time;
  const shifted = runs.map(({ curve }) => timeOf({ ...asked, curve, isRough: true }, core).minutes);
  const heat = bandOf(time.minutes, shifted);
  const { minutes } = time;
  return {
    ...time,
    least: Math.max(
      time.soonest ?? 1,
      minutes - Math.hypot(minutes - time.least, minutes - heat.low),
    ),
    most: minutes + Math.hypot(time.most - minutes, heat.high - minutes),
  };
}

function timeOf(asked: BakeRequest, core: Kelvin): CookTime {
  const { recipe } = asked;
  if (recipe.method === 'none' || recipe.method === 'keep-warm' || recipe.kind === 'cold-dish') {
    return { minutes: 0, least: 0, most: 0, notices: [] };
  }
  if (isPot(recipe)) return potTime(asked);
  if (isBread(recipe)) return breadTime(asked, core);
  if (recipe.kind === 'cobbler') return cobblerTime(asked);
  return recipe.kind === 'fruit' ? fruitTime(asked, core) : roastTime(asked, core);
}

// One line about a layout that was run on: it does, it is too hot, too cool, or it fades, and what
// to add or take. A bread is judged by its oven, a pot by its own boil.
// Source: run.ts; a heat that "does" is one step of the charts to each side.

import { type Notice, type NoticeValues, notice } from '../notice/notice.ts';
import type { Kelvin } from '../quantity/unit.ts';
import type { FireNow, FireState } from './fire-state.ts';
import { type AdviceWish, runFilled, smallestChange } from './layout-advice.ts';
import type { OvenMoment } from './run.ts';
import { isPotMethod, WANTED_HALF_RANGE } from './split.ts';

export interface RunLayout {
  readonly state: FireState;
  readonly wanted: Kelvin;
  readonly now: FireNow;
  readonly ahead: AdviceWish['ahead'];
  /** Every minute of the look. */
  readonly moments: readonly OvenMoment[];
}

export const layoutVerdict = (run: RunLayout): Notice =>
  isPotMethod(run.state.method) ? potVerdict(run) : ovenVerdict(run);

/** Minutes that count: those with the load in, from its first on. */
export const countedMoments = (
  moments: readonly OvenMoment[],
  { loadInMinute = 0 }: AdviceWish['ahead'],
): readonly OvenMoment[] => moments.filter((each) => each.minute > loadInMinute);

export const meanOven = (moments: readonly OvenMoment[]): number =>
  moments.reduce((sum, each) => sum + each.ovenKelvin, 0) / Math.max(1, moments.length);

/** It may start right and not last: looked for in its last third. */
const LAST_SHARE = 1 / 3;
const lastOf = (counted: readonly OvenMoment[]) =>
  counted.slice(Math.floor(counted.length * (1 - LAST_SHARE)));

/** Held for less than this of its time, it does not do at first either; ours. */
const AT_FIRST_SHARE = 0.25;

const ovenVerdict = (run: RunLayout): Notice => {
  const { wanted } = run;
  const about = { oven: run.state.oven.id };
  const counted = countedMoments(run.moments, run.ahead);
  const [lowest, highest] = [wanted - WANTED_HALF_RANGE, wanted + WANTED_HALF_RANGE];
  const mean = meanOven(counted);
  const values = { ...commonOf(run), meanKelvin: mean };
  const hottest = Math.max(...counted.map((each) => each.ovenKelvin));
  const meanAfter = (moments: readonly OvenMoment[]) =>
    meanOven(countedMoments(moments, run.ahead));
  const isKept = (moments: readonly OvenMoment[]) =>
    meanOven(lastOf(countedMoments(moments, run.ahead))) >= lowest;
  const held = counted.filter((each) => each.ovenKelvin >= lowest).length;
  const isAtFirst = hottest >= lowest && held >= AT_FIRST_SHARE * counted.length;
  if (isAtFirst && meanOven(lastOf(counted)) < lowest) {
    const last = counted.findLast((each) => each.ovenKelvin >= lowest)?.minute ?? 0;
    const advice = adviceFor(run, { way: 1, minute: readyBy(last), holds: isKept });
    return notice('COALS_LAYOUT_FADES', 'doubt', about, { ...values, minute: last, ...advice });
  }
  if (mean > highest) {
    const holds = (late: readonly OvenMoment[]) => meanAfter(late) <= highest;
    const advice = adviceFor(run, { way: -1, minute: 0, holds });
    return notice('COALS_LAYOUT_HOT', 'doubt', about, { ...values, ...advice });
  }
  if (mean < lowest) {
    const holds = (late: readonly OvenMoment[]) => meanAfter(late) >= lowest && isKept(late);
    const spoils = (late: readonly OvenMoment[]) => meanAfter(late) > highest;
    const advice = adviceFor(run, { way: 1, minute: 0, holds, spoils });
    return notice('COALS_LAYOUT_COOL', 'doubt', about, { ...values, ...advice });
  }
  return notice('COALS_LAYOUT_DOES', 'note', about, values);
};

/** As with-these-coals.ts has it: so near its boil a pot simmers. */
const NEAR_BOIL = 2;

const potVerdict = (run: RunLayout): Notice => {
  const about = { oven: run.state.oven.id };
  const up = upMinuteOf(run, run.moments);
  const end = run.moments.at(-1);
  const values = { ...commonOf(run), potKelvin: potOf(run, end), minutes: end?.minute ?? 0 };
  const isHeld = (moments: readonly OvenMoment[]) => isBoiling(run, moments.at(-1));
  if (up === undefined) {
    const advice = adviceFor(run, { way: 1, minute: 0, holds: isHeld });
    return notice('COALS_LAYOUT_COOL', 'doubt', about, { ...values, ...advice });
  }
  const hard = hardBoil(run, up);
  if (hard !== undefined) return notice('COALS_LAYOUT_HOT', 'doubt', about, { ...values, ...hard });
  if (isHeld(run.moments))
    return notice('COALS_LAYOUT_DOES', 'note', about, { ...values, minute: up });
  const last = run.moments.findLast((each) => isBoiling(run, each))?.minute ?? up;
  const advice = adviceFor(run, { way: 1, minute: readyBy(last), holds: isHeld });
  return notice('COALS_LAYOUT_FADES', 'doubt', about, { ...values, minute: last, ...advice });
};

/** A simmer over an oven two steps hotter than it wants boils hard, and catches; ours, no source. */
const HARD_KELVIN = 2 * WANTED_HALF_RANGE;

const hardBoil = (run: RunLayout, up: number): NoticeValues | undefined => {
  const isMild = (moments: readonly OvenMoment[]) =>
    meanOven(moments.filter((each) => each.minute >= up)) <= run.wanted + HARD_KELVIN;
  if (run.state.method !== 'simmer' || isMild(run.moments)) return;
  return { minute: up, ...adviceFor(run, { way: -1, minute: up, holds: isMild }) };
};

const potOf = ({ now }: RunLayout, moment: OvenMoment | undefined): number =>
  moment?.load === undefined
    ? now.request.air.temperature
    : now.request.load.temperature(moment.load);

const isBoiling = (run: RunLayout, moment: OvenMoment | undefined) =>
  potOf(run, moment) >= run.state.air.boiling - NEAR_BOIL;

const upMinuteOf = (run: RunLayout, moments: readonly OvenMoment[]) =>
  moments.find((each) => isBoiling(run, each))?.minute;

const commonOf = ({ state, wanted }: RunLayout): NoticeValues => ({
  method: state.method,
  wantedKelvin: wanted,
  fuel: state.fuel.kind,
});

const FELT_MINUTES = 10; // coals added are felt by then (moves.ts: 5 to 12 min)

/** Laid before the old ones have faded. */
const readyBy = (minute: number): number => Math.max(0, minute - FELT_MINUTES);

const WOOD_HANDFUL = 4; // half a shovel
const adviceFor = (
  run: RunLayout,
  change: Pick<AdviceWish, 'way' | 'minute' | 'holds' | 'spoils'>,
): NoticeValues => {
  const { now, ahead, state } = run;
  const handful = state.fuel.kind === 'wood-coals' ? WOOD_HANDFUL : 1;
  const { way, minute } = change;
  const once: AdviceWish = { now, ahead, handful, ...change };
  const again = { ...once, everyMinutes: EVERY_MINUTES };
  const canRepeat = way > 0 && ahead.minutes - minute > EVERY_MINUTES + FELT_MINUTES;
  const { spoils: _, ...anyhow } = once;
  for (const wish of [once, ...(canRepeat ? [again] : []), anyhow]) {
    const found = smallestChange(wish);
    if (found !== undefined)
      return {
        addAbove: Math.abs(found.above),
        addBelow: Math.abs(found.below),
        addMinute: minute,
        ...(wish.everyMinutes === undefined ? {} : { everyMinutes: wish.everyMinutes }),
      };
  }
  if (way < 0) return {};
  const filled = runFilled(canRepeat ? again : once);
  return {
    fullKelvin: meanOven(countedMoments(filled, ahead)),
    fullPotKelvin: potOf(run, filled.at(-1)),
  };
};

const EVERY_MINUTES = 30; // coalLife: add every half hour

// Will my own layout do? The cook's coals, run on from now, and one line about them.
// Source: run.ts; a heat that "does" is one step of the charts to each side.

import { isRefusal, type Notice, notice, type OrRefusal, refusal } from '../notice/notice.ts';
import { type Kelvin, kelvin, type Minutes } from '../quantity/unit.ts';
import { factorMoments } from './band.ts';
import { chartHeat, charts } from './charts.ts';
import type { CurvePoint, FactorRun } from './coal-plan.ts';
import { curveOf } from './curve.ts';
import { beliefsFor } from './factors.ts';
import { type FireNow, type FireState, fireNow, liveCoals, runOn } from './fire-state.ts';
import { idleAbove } from './idle-above.ts';
import { MOST_BELOW_SHARE } from './layout-advice.ts';
import { countedMoments, layoutVerdict, meanOven } from './layout-verdict.ts';
import { noFire } from './no-fire.ts';
import { COALS_RANGE, siteNotices } from './range.ts';
import { coalWidth, roomFor } from './room.ts';
import type { OvenMoment } from './run.ts';
import { isBaked, WANTED_HALF_RANGE } from './split.ts';

export interface LayoutQuestion extends FireState {
  /** Inside the oven, as the dish wants it. */
  readonly wanted: Kelvin;
  /** Looked at for so long from now. */
  readonly minutes: Minutes;
  /** From now, where the load is not in yet; left out, the oven stays as it is. */
  readonly loadInMinute?: Minutes;
}

export interface LayoutJudgement {
  /** Minute 0 is now. */
  readonly curve: readonly CurvePoint[];
  /** The same with one factor moved each: what makes its band. */
  readonly factorRuns: readonly FactorRun[];
  /** Mean inside from the load on (from now where none is set in). */
  readonly mean: Kelvin;
  /** What the most reprinted chart calls this many coals; undefined past its edges and for wood. */
  readonly chartHeat?: Kelvin;
  /** Minutes of that time within a step of the wanted heat. */
  readonly heldMinutes: number;
  /** The judgement first, then what makes it weaker. */
  readonly notices: readonly Notice[];
}

/**
 * The curve that a layout gives and one judgement of it: COALS_LAYOUT_DOES, _HOT, _COOL or _FADES.
 *
 * @refuses  as fireNow; COALS_TIME_IMPOSSIBLE
 */
export const judgeLayout = (question: LayoutQuestion): OrRefusal<LayoutJudgement> => {
  const { lowest, highest } = COALS_RANGE.stayMinutes;
  const length = Math.round(question.minutes);
  if (!(lowest <= length && length <= highest))
    return refusal('COALS_TIME_IMPOSSIBLE', ['minutes'], { oven: question.oven.id }, {});
  const now = fireNow(question, question.wanted);
  if (isRefusal(now)) return now;
  const { setting, moment, request } = now;
  const ahead = { minutes: length, ...loadAt(question) };
  const moments = runOn(setting, moment, ahead);
  const runs = factorMoments(setting, beliefsFor(request), (changed) =>
    runOn(changed, moment, ahead),
  );
  const counted = countedMoments(moments, ahead);
  const out = noFire(question, now, question.wanted);
  return {
    curve: curveOf(request.load, moments, runs),
    factorRuns: runs.map(({ factor, moments: moved }) => ({
      factor,
      curve: curveOf(request.load, moved, []),
    })),
    mean: kelvin(meanOven(counted)),
    ...chartHeatOf(question),
    heldMinutes: counted.filter((each) => isHeld(each, question.wanted)).length,
    notices: [
      out ?? layoutVerdict({ state: question, wanted: question.wanted, now, ahead, moments }),
      ...layoutNotices(question, now),
      ...siteNotices(request),
    ],
  };
};

const chartHeatOf = ({ oven, coals, fuel, method }: LayoutQuestion) => {
  const [reprinted] = charts;
  const laid = coals.reduce((sum, set) => sum + set.pieces, 0);
  if (reprinted === undefined || fuel.kind === 'wood-coals' || !isBaked(method)) return {};
  const heat = chartHeat(reprinted, { diameterMetres: oven.diameter, coals: laid });
  return heat === undefined ? {} : { chartHeat: heat };
};

const loadAt = ({ loadInMinute }: LayoutQuestion) =>
  loadInMinute === undefined ? {} : { loadInMinute: Math.max(0, Math.round(loadInMinute)) };

const isHeld = (moment: OvenMoment, wanted: Kelvin) =>
  Math.abs(moment.ovenKelvin - wanted) <= WANTED_HALF_RANGE;

const layoutNotices = (question: LayoutQuestion, now: FireNow) => {
  const { moment, request, setting } = now;
  const notices: Notice[] = [...idleAbove(question, now)];
  const about = { oven: question.oven.id };
  const [above, below] = [liveCoals(moment, 'above'), liveCoals(moment, 'below')];
  // What lies flat, whether or not the method would have it there.
  const room = roomFor(setting.body, request.oven.diameter, coalWidth(request.fuel));
  const fits = { lidFits: room.lidAll, floorFits: room.floorAll };
  const values = { above, below, ...fits, fuel: request.fuel.kind };
  if (isBaked(question.method) && below > MOST_BELOW_SHARE * (above + below))
    notices.push(notice('COALS_LAYOUT_BOTTOM_HEAVY', 'doubt', about, values));
  if (above > room.lidAll || below > room.floorAll)
    notices.push(notice('COALS_PIN_OVERFILLS', 'doubt', about, values));
  const laid = moment.coals.reduce((sum, group) => sum + group.count, 0);
  if (laid > 0 && above + below < laid)
    notices.push(notice('COALS_SPENT', 'doubt', about, { coals: laid - above - below }));
  return notices;
};

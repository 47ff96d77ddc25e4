// The coals of one dish in one oven: how many, where, when to add and turn, and what to expect.
// Sources: see count.ts, feeding.ts, charts.ts. The cook's pins are simulated, never rewritten.

import { type OrRefusal, refusal } from '../notice/notice.ts';
import { grams, kelvin, minutes, ratio } from '../quantity/unit.ts';
import { type FactorMoments, factorMoments } from './band.ts';
import { checksFor } from './checks.ts';
import type {
  Addition,
  Check,
  ChosenCounts,
  CoalPlan,
  CoalRequest,
  EnergyBalance,
  FactorRun,
  Move,
} from './coal-plan.ts';
import { boiledOffGrams, type Counted, coalsInAll, countCoals, recounted } from './count.ts';
import { curveOf } from './curve.ts';
import { type EvenHeat, evenHeat } from './even-heat.ts';
import { beliefsFor, believed } from './factors.ts';
import { boilOutOfReach } from './floor-limit.ts';
import { foodInMinute } from './food-in.ts';
import { fuelPiece, shovelsFor } from './fuel.ts';
import { finishAbove, type MoveWish, movesAt } from './moves.ts';
import { planNotices } from './plan-notices.ts';
import { coalTrouble, siteNotices } from './range.ts';
import { reckoningFor } from './reckoning.ts';
import { replayed } from './replay.ts';
import type { OvenMoment, RunSetting } from './run.ts';
import { type Settled, settled } from './settle.ts';
import { siteFor } from './site.ts';
import { isHeatedFirst, WANTED_HALF_RANGE } from './split.ts';

/** Farther off than this a full lid is no answer. */
const OUT_OF_REACH_KELVIN = 30;

/**
 * Whole coals above and below that hold the wanted heat while the load is in, with the minutes to
 * load, add and turn, and the curve with its band.
 *
 * @refuses  COALS_OVEN_OUTSIDE_RANGE, COALS_WIND_OUTSIDE_RANGE, COALS_HEAT_IMPOSSIBLE,
 *           COALS_TIME_IMPOSSIBLE, COALS_FUEL_IMPOSSIBLE, COALS_PIN_IMPOSSIBLE — see codes.ts
 * @refuses  COALS_HEAT_OUT_OF_REACH — full lid and floor stay 30 K below, or a boil that
 *           no coals below can keep; nearest is named
 * @valid    ovens 8 … 16 inch, air -20 … 45 °C, wind at the oven 0 … 15 m/s, -400 … 4500 m
 * @source   coalsOvenModelNotes, coalsBurnNotes, chartReprinted
 */
export const layCoals = (request: CoalRequest): OrRefusal<CoalPlan> => {
  const trouble = coalTrouble(request);
  if (trouble) return trouble;
  const setting = believedSite(request);
  const first = countCoals(request, setting);
  return (
    reachTrouble(request, first) ?? planFrom(request, setting, chosenFrom(request, setting, first))
  );
};

/** As much of a plan as the bake needs to tell its minutes. */
export type CoalDraft = Pick<CoalPlan, 'loadInMinute' | 'outMinute' | 'curve' | 'factorRuns'> & {
  /** Coals of the first set, before they are laid out. */
  readonly counts?: ChosenCounts;
};

/** By the judge, where there is one and nothing is pinned; else as counted. */
const chosenFrom = (request: CoalRequest, setting: RunSetting, first: Counted): Settled => {
  const { pins, chosen, judge } = request;
  const asFirst = { counted: first, chosen: first.counts };
  if (pins.above !== undefined || pins.below !== undefined) return asFirst;
  if (chosen !== undefined && judge === undefined)
    return { counted: recounted(request, setting, first, chosen), chosen };
  return judge === undefined ? asFirst : settled(request, setting, first, judge);
};

/**
 * The counts' curve alone, without band, checks, moves and reckoning: a third of the work, for
 * whoever asks several times before the minutes in the oven are settled.
 *
 * @refuses  as layCoals
 */
export const draftCoals = (request: CoalRequest): OrRefusal<CoalDraft> => {
  const trouble = coalTrouble(request);
  if (trouble) return trouble;
  const setting = believedSite(request);
  const first = countCoals(request, setting);
  const { counted, chosen } = chosenFrom(request, setting, first);
  const { outMinute } = counted.run;
  const draft = {
    loadInMinute: minutes(foodInMinute(counted)),
    outMinute: minutes(outMinute),
    curve: curveOf(request.load, counted.run.moments, []),
    counts: chosen,
  };
  return reachTrouble(request, first) ?? draft;
};

const reachTrouble = (request: CoalRequest, counted: Counted) => {
  const { pins, wish } = request;
  const isPinned = pins.above !== undefined || pins.below !== undefined;
  if (isPinned) return;
  const boil = boilOutOfReach(request, counted);
  if (boil !== undefined) return outOfReach(request, counted, boil);
  // A pot or a cold start that is slow wants time, not a refusal.
  if (!isHeatedFirst(wish)) return;
  if (wish.wanted - counted.meanKelvin <= OUT_OF_REACH_KELVIN) return;
  return outOfReach(request, counted, counted.meanKelvin);
};

const outOfReach = (request: CoalRequest, counted: Counted, nearestKelvin: number) =>
  refusal(
    'COALS_HEAT_OUT_OF_REACH',
    [`ovens.${request.oven.id}`, `loads.${request.loadId}`],
    { oven: request.oven.id },
    {
      wantedKelvin: request.wish.wanted,
      nearestKelvin,
      method: request.wish.method,
      above: counted.counts.above,
      below: counted.counts.below,
    },
  );

const planFrom = (
  request: CoalRequest,
  setting: RunSetting,
  { counted, chosen: { asCounted } }: Settled,
): CoalPlan => {
  const { run } = counted;
  const { outMinute, additions } = run;
  const runs = factorRunsOf(request, setting, counted);
  const isWood = request.fuel.kind === 'wood-coals';
  const even = evenHeat(request, setting, counted);
  const visits = [...even.turns, ...additions].map((act) => act.minute);
  const checks = checksFor({ request, setting, counted, visits });
  const all = coalsInAll(counted);
  const boiledOff = boiledOffGrams(counted);
  return {
    load: request.loadId,
    oven: request.oven.id,
    fuel: request.fuel.kind,
    method: request.wish.method,
    isPinned: request.pins.above !== undefined || request.pins.below !== undefined,
    ...answerOf(request),
    above: even.above,
    below: even.below,
    ...browningOf(counted, even),
    reckoning: reckoningFor(request, setting, counted),
    ...(asCounted === undefined ? {} : { asCounted }),
    loadInMinute: minutes(foodInMinute(counted)),
    outMinute: minutes(outMinute),
    wanted: wantedRange(request),
    curve: curveOf(request.load, run.moments, runs),
    factorRuns: runsShown(request, runs),
    turns: even.turns,
    additions: isWood ? additions.map(inShovels) : additions,
    checks,
    moves: generalMoves({ request, setting, counted }, checks),
    unevenness: even.unevenness,
    ...(boiledOff === undefined ? {} : { boiledOff: grams(boiledOff) }),
    fuelMass: grams(all * fuelPiece(request.fuel).takenGrams),
    coalsInAll: all,
    energy: energyOf(request, setting, run.moments.at(-1)),
    notices: [...siteNotices(request), ...planNotices(request, setting, counted)],
  };
};

/** A bake could choose, and did or did not. */
const answerOf = ({ chartLoad, judge, chosen, pins }: CoalRequest): Pick<CoalPlan, 'answer'> => {
  if (chartLoad === undefined || pins.above !== undefined || pins.below !== undefined) return {};
  return { answer: judge === undefined && chosen === undefined ? 'first' : 'settled' };
};

const browningOf = ({ feed }: Counted, { thenAbove }: EvenHeat) =>
  feed.brownMinutes > 0 ? { browning: { until: minutes(feed.brownMinutes), thenAbove } } : {};

const inShovels = (addition: Addition): Addition => ({
  ...addition,
  shovelsAbove: shovelsFor(addition.above),
  shovelsBelow: shovelsFor(addition.below),
});

/** Moves while the load is in, as at the first look; for a bake also the finish from above. */
const generalMoves = (
  wish: Omit<MoveWish, 'minute'>,
  checks: readonly Check[],
): readonly Move[] => {
  const { loadInMinute, outMinute } = wish.counted.run;
  const minute = Math.round((loadInMinute + outMinute) / 2);
  const look = checks.find((check) => check.oven === 'full');
  const { ifHot, ifCool } = look ?? movesAt({ ...wish, minute });
  const finish =
    wish.request.wish.method === 'bake'
      ? finishAbove({ ...wish, minute: Math.max(loadInMinute, outMinute - FINISH_MINUTES) })
      : undefined;
  return [...ifHot, ...ifCool, ...(finish ? [finish] : [])];
};

const FINISH_MINUTES = 8; // finishFromAbove: about eight minutes before the end

const wantedRange = ({ wish }: CoalRequest) => ({
  low: kelvin(wish.wanted - WANTED_HALF_RANGE),
  high: kelvin(wish.wanted + WANTED_HALF_RANGE),
});

/** The site with the factors as they are believed: the model's own, or what a logbook learnt. */
const believedSite = (request: CoalRequest): RunSetting =>
  believed(siteFor(request), beliefsFor(request));

const factorRunsOf = (request: CoalRequest, setting: RunSetting, counted: Counted) =>
  factorMoments(setting, beliefsFor(request), (changed) => replayed(request, changed, counted));

const runsShown = (request: CoalRequest, runs: readonly FactorMoments[]): readonly FactorRun[] =>
  runs.map(({ factor, moments }) => ({ factor, curve: curveOf(request.load, moments, []) }));

const energyOf = (
  request: CoalRequest,
  { body }: RunSetting,
  last: OvenMoment | undefined,
): EnergyBalance => {
  if (!last) throw new RangeError('a run has at least one moment');
  const start = request.ironAtStart;
  const ironJoules =
    body.lidCapacity * (last.iron.lid - start) +
    body.wallCapacity * (last.iron.wall - start) +
    body.floorCapacity * (last.iron.floor - start);
  const error = last.givenJoules - ironJoules - last.loadJoules - last.lossJoules;
  return {
    givenJoules: last.givenJoules,
    ironJoules,
    loadJoules: last.loadJoules,
    lossJoules: last.lossJoules,
    errorRatio: ratio(last.givenJoules > 0 ? error / last.givenJoules : 0),
  };
};

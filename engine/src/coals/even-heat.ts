// How do the coals of a counted plan lie, when is the food turned, and how even is its heat then?
// Chosen by computing what the food sees among a handful of layouts and turn schedules.
// Sources: placement.ts, turning.ts, unevenness.ts; turningRule for the longest dwell.

import type { CoalRequest, CoalSet, Turn, Unevenness } from './coal-plan.ts';
import { type Counted, firstCounts } from './count.ts';
import { evenest, evenestBelow } from './evenest.ts';
import type { Counts } from './feed-wish.ts';
import { FOOD_SHARE, type FoodView, facesSeen, foodSight, GAP_SHARE } from './food-sight.ts';
import { bakeMean, ironPlates, ROUGH_HOW } from './iron-plates.ts';
import { setAbove, setBelow } from './placement.ts';
import { coalWidth } from './room.ts';
import type { RunSetting } from './run.ts';
import { isBaked } from './split.ts';
import { turnSchedules, withVisits } from './turning.ts';
import { unevennessFor, worseOf } from './unevenness.ts';

export interface EvenHeat {
  readonly above: CoalSet;
  readonly below: CoalSet;
  /** A pot that is browned first: its lid's set, laid later. */
  readonly thenAbove: CoalSet;
  readonly turns: readonly Turn[];
  readonly unevenness: Unevenness;
}

export const evenHeat = (request: CoalRequest, setting: RunSetting, counted: Counted): EvenHeat => {
  const { run, counts } = counted;
  const plates = ironPlates(setting, bakeMean(setting, run.moments, run));
  const sets = setsOf(request, setting, { plates, counts });
  const isLaidLater = firstCounts(counted).above < counts.above;
  const view = viewOf(request, setting, { plates, ...sets });
  const turns = turnsOf(request, counted, view);
  return {
    above: isLaidLater ? setAbove({ ...wishOf(request, counts), pieces: 0 }) : sets.above,
    below: sets.below,
    thenAbove: sets.above,
    turns,
    unevenness: unevennessFor(view, run, turns),
  };
};

type Plates = FoodView['plates'];

const viewOf = (
  request: CoalRequest,
  { body }: RunSetting,
  laid: Pick<FoodView, 'plates' | 'above' | 'below'>,
): FoodView => ({
  ...laid,
  coalWidth: coalWidth(request.fuel),
  foodRadius: (FOOD_SHARE * body.floorDiameter) / 2,
  gapMetres: GAP_SHARE * request.oven.depth,
  windMetresPerSecond: request.air.wind,
  windFromRadians: (request.air.windFrom * Math.PI) / 180,
});

const wishOf = (request: CoalRequest, counts: Counts) => ({
  coalWidth: coalWidth(request.fuel),
  isWood: request.fuel.kind === 'wood-coals',
  pieces: counts.above,
  outerRadius: request.oven.diameter / 2,
});

const setsOf = (
  request: CoalRequest,
  setting: RunSetting,
  { plates, counts }: { readonly plates: Plates; readonly counts: Counts },
) => {
  const wish = wishOf(request, counts);
  const bare = setAbove({ ...wish, pieces: 0 });
  const view = viewOf(request, setting, { plates, above: bare, below: bare });
  const floor = {
    ...wish,
    pieces: counts.below,
    outerRadius: setting.body.floorDiameter / 2,
    isBaked: isBaked(request.wish.method),
  };
  return {
    above: setAbove(wish, (layouts) => evenest(layouts, view)),
    below: setBelow(floor, (layouts) => evenestBelow(layouts, view)),
  };
};

/** A further turn must take away more than this [K]: hands are short, and each lets heat out. */
const TURN_COST_KELVIN = 3;

const turnsOf = (request: CoalRequest, { run }: Counted, view: FoodView): readonly Turn[] => {
  if (!isBaked(request.wish.method)) return [];
  const visits = run.additions.map((addition) => addition.minute);
  const schedules = turnSchedules(run.loadInMinute, run.outMinute - run.loadInMinute).map((turns) =>
    withVisits(turns, visits, run),
  );
  const sight = foodSight(view, ROUGH_HOW);
  const costs = schedules.map(
    (turns) => worseOf(facesSeen(sight, run, turns)) + TURN_COST_KELVIN * turns.length,
  );
  return schedules[costs.indexOf(Math.min(...costs))] ?? [];
};

// The meal as a problem for the solver: dishes, ovens, hands, coals and the chores round them.

import { openHours } from '../camp/index.ts';
import { type Notice, notice } from '../notice/notice.ts';
import type { Problem, WorkUnit } from '../solver/problem.ts';
import { contradictionIn } from '../solver/temporal.ts';
import { Builder, type TaskMeaning } from './builder.ts';
import { callTasks, closingTasks, washTasks, waterTasks, wipeTasks } from './chores.ts';
import { crewsOf } from './crews.ts';
import type { TimetableRequest } from './day-sheet.ts';
import { batchTasks } from './dish-tasks.ts';
import { freeFromLags } from './free-first.ts';
import * as habits from './habits.ts';
import type { InHand } from './in-hand.ts';
import type { DishTasks, Making } from './making.ts';
import { mixedTogether } from './recipe-shape.ts';

export interface DayWork {
  readonly problem: Problem;
  /** By task index. */
  readonly meanings: readonly TaskMeaning[];
  readonly dishes: readonly DishTasks[];
  readonly notices: readonly Notice[];
  /** Indices of lags that only keep time in hand. */
  readonly cushions: ReadonlySet<number>;
}

/** What must be kept apart when time in hand is used up. */
export const firmProblem = ({ problem, cushions }: DayWork): Problem =>
  cushions.size === 0
    ? problem
    : { ...problem, lags: problem.lags.filter((_, index) => !cushions.has(index)) };

export interface DayWish {
  readonly isFreeFromFirst: boolean;
  readonly isLoose: boolean;
  /** None where not said. */
  readonly inHand?: InHand;
  /** No waves: what is proven must not rest on how ovens are walked. */
  readonly isByOven?: boolean;
  /** Ids of tasks before which whoever does them washes hands. */
  readonly washFirst?: ReadonlySet<string>;
  /** Loads before which a wave is cut in two: a round that has begun is walked in parts. */
  readonly cutBefore?: ReadonlySet<string>;
}

/** Room after the last serving or the last hour of hands, for lateness [min]. */
const ROOM_AFTER = 12 * 60;

export function dayWork(
  request: TimetableRequest,
  wish: DayWish = { isFreeFromFirst: true, isLoose: true },
): DayWork {
  const builder = new Builder();
  const crews = crewsOf(request.camp);
  const { isLoose, washFirst = new Set(), isByOven = false, cutBefore = new Set() } = wish;
  const { inHand = new Map() } = wish;
  const said = { uses: [], notices: [], isLoose, isByOven, cutBefore, inHand };
  const making: Making = { request, builder, crews, ...said };
  const dishes = mixedTogether(request.dishes).flatMap((batch) => batchTasks(making, batch));
  wipeTasks(making, dishes);
  waterTasks(making, dishes);
  callTasks(making, dishes);
  closingTasks(making, dishes);
  washTasks(making, washFirst);
  addStore(making);
  pinNotices(making);
  const problemOf = () => withReleases(builder.problem(clockOf(request), unitsOf(request)));
  freeFromLags(making, dishes, {
    contradiction: () => contradictionIn(problemOf(), { isDueFixed: true }),
    isFirst: wish.isFreeFromFirst,
  });
  const notices = [...making.notices, ...crews.notices()];
  const { meanings, cushions } = builder;
  return { problem: problemOf(), meanings, dishes, notices, cushions };
}

function clockOf(request: TimetableRequest) {
  const serves = request.dishes.map((work) => work.dish.serveAt);
  const pins = request.dishes.flatMap((work) => work.dish.pins.coalsOnAt ?? []);
  const froms = request.camp.hands.map((hand) => hand.from);
  const tos = request.camp.hands.map((hand) => hand.to);
  const from = Math.round(
    request.notBefore ?? Math.min(...froms, ...serves, ...pins.map((pin) => pin - 60)),
  );
  const to = Math.round(Math.max(...tos, ...serves, ...pins, from) + ROOM_AFTER);
  return { from, to };
}

/** Nothing manned before its people are there; no coals used before the first can be ready. */
function withReleases(problem: Problem): Problem {
  const there = problem.units.map((unit) => Math.min(...unit.windows.map((open) => open.from)));
  const soonest = (seats: Problem['tasks'][number]['seats']) =>
    Math.max(problem.from, ...seats.map((seat) => Math.min(...seat.map((unit) => there[unit]!))));
  const firstReady = new Map<number, number>();
  for (const store of problem.stores) {
    const ready = soonest(store.seats) + store.minutes + store.lead;
    for (const use of store.uses) firstReady.set(use.task, ready);
  }
  const tasks = problem.tasks.map((task, index) => ({
    ...task,
    release: Math.max(soonest(task.seats), firstReady.get(index) ?? problem.from),
  }));
  return { ...problem, tasks };
}

function unitsOf(request: TimetableRequest): readonly WorkUnit[] {
  return request.camp.hands.map((hand) => ({
    id: hand.id,
    windows: openHours(hand).map(({ from, to }) => ({
      from: Math.round(from),
      to: Math.round(to),
    })),
  }));
}

/** The uses of all loads, drawn from chimneyfuls or from a feeder fire that is kept going. */
function addStore(making: Making): void {
  const { request, builder, crews, uses } = making;
  if (uses.length === 0) return;
  const { fuel, gear } = request.camp;
  if (fuel.kind === 'wood-coals') {
    builder.stores.push({
      id: 'feeder',
      size: Number.MAX_SAFE_INTEGER,
      minutes: habits.LIGHT_FEEDER,
      lead: Math.max(0, Math.round(fuel.lead)),
      seats: crews.seats('steady'),
      team: 'fire',
      waitLiked: Number.POSITIVE_INFINITY,
      upkeep: {
        minutes: habits.TEND_FIRE,
        soonest: habits.TEND_SOONEST,
        most: habits.TEND_MOST,
        seats: crews.seats('steady'),
      },
      uses,
    });
    return;
  }
  if (gear.chimneys < 1) {
    making.notices.push(notice('TIMETABLE_NO_CHIMNEY', 'doubt'));
    addHeap(making);
    return;
  }
  builder.stores.push({
    id: 'chimney',
    size: Math.max(1, Math.round(gear.chimneyfulCoals)),
    minutes: habits.LIGHT_CHIMNEY,
    lead: Math.max(0, Math.round(request.ashOver)),
    seats: crews.seats('steady'),
    team: 'fire',
    holder: builder.pool('chimney', Math.max(1, gear.chimneys)),
    waitLiked: habits.COALS_WAIT_LIKED,
    uses,
  });
}

/** Without a chimney coals are lit in a heap on the ground: no draught, so it takes half as long again. */
function addHeap({ request, builder, crews, uses }: Making): void {
  builder.stores.push({
    id: 'heap',
    size: habits.HEAP_COALS,
    minutes: habits.LIGHT_CHIMNEY,
    lead: Math.max(0, Math.round(request.ashOver * habits.HEAP_SLOWER)),
    seats: crews.seats('steady'),
    team: 'fire',
    waitLiked: habits.COALS_WAIT_LIKED,
    uses,
  });
}

function pinNotices(making: Making): void {
  const { camp, dishes } = making.request;
  for (const { dish } of dishes) {
    const hand = dish.pins.hand;
    if (hand === undefined || camp.hands.some((each) => each.id === hand)) continue;
    const about = { dish: dish.id, hand };
    making.notices.push(notice('TIMETABLE_PIN_UNKNOWN_HAND', 'doubt', about));
  }
}

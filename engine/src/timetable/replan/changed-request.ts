// What the slips make of the request: later guests, a hand less, an oven less; and what only the cook
// can decide about it.

import type { CampOven } from '../../camp/camp.ts';
import { type Notice, notice } from '../../notice/notice.ts';
import { type ClockMinutes, clockMinutes } from '../../quantity/unit.ts';
import type { DaySheet, DishWork, LoadWork, TimetableRequest } from '../day-sheet.ts';
import type { Slip } from './slip.ts';

export interface Changed {
  /** With all that was planned: what is lost keeps its place in the order. */
  readonly request: TimetableRequest;
  readonly lost: Lost;
  readonly asks: readonly Notice[];
  /** By dish: so much later it is wanted now. */
  readonly later: ReadonlyMap<string, number>;
}

/** What is not cooked to its end. */
export interface Lost {
  readonly loads: ReadonlySet<string>;
  /** All of whose loads are lost. */
  readonly dishes: ReadonlySet<string>;
}

/** The request without what is lost: what the rest of the day is judged by. */
export const withoutLost = (request: TimetableRequest, lost: Lost): TimetableRequest => ({
  ...request,
  dishes: request.dishes
    .filter(({ dish }) => !lost.dishes.has(dish.id))
    .map((work) => ({ ...work, loads: work.loads.filter(({ load }) => !lost.loads.has(load.id)) })),
});

export function changedRequest(
  { request, sheet, now }: { request: TimetableRequest; sheet: DaySheet; now: ClockMinutes },
  slips: readonly Slip[],
): Changed {
  const { notBefore: _, ...asked } = request;
  const unplanned = new Set(
    sheet.notices.flatMap(({ code, about }) =>
      code === 'TIMETABLE_DISH_UNPLANNED' ? [about.dish] : [],
    ),
  );
  const dishes = asked.dishes.filter(({ dish }) => !unplanned.has(dish.id));
  const planned = { ...asked, dishes };
  const later = laterDishes(planned, sheet, now, slips);
  const waited = {
    ...planned,
    dishes: planned.dishes.map((work) => servedLater(work, later.get(work.dish.id) ?? 0)),
  };
  const manned = withoutHands(waited, slips, now);
  const dropped = slips.flatMap((slip) => (slip.kind === 'oven-dropped' ? [slip.oven] : []));
  const { request: moved, asks, lost } = withoutOvens(manned, dropped, { sheet, now });
  return { request: moved, asks, lost, later };
}

/** What is served already is served. */
function laterDishes(
  { dishes }: TimetableRequest,
  sheet: DaySheet,
  now: number,
  slips: readonly Slip[],
): ReadonlyMap<string, number> {
  return new Map(
    dishes.flatMap(({ dish }): readonly (readonly [string, number])[] => {
      const served = sheet.servings.find((each) => each.dish === dish.id)?.served ?? dish.serveAt;
      const by = slips.reduce((sum, slip) => {
        const isIts = slip.kind === 'guests-late' && (slip.dish ?? dish.id) === dish.id;
        return isIts ? sum + slip.minutes : sum;
      }, 0);
      return by === 0 || served < now ? [] : [[dish.id, by]];
    }),
  );
}

/** Who eats later has later to be in time for. */
const servedLater = (work: DishWork, by: number): DishWork => {
  const { serveAt, latestAt, ...dish } = work.dish;
  const latest = latestAt === undefined ? {} : { latestAt: clockMinutes(latestAt + by) };
  return { ...work, dish: { ...dish, serveAt: clockMinutes(serveAt + by), ...latest } };
};

/** Who is gone has no more hours. */
function withoutHands(
  request: TimetableRequest,
  slips: readonly Slip[],
  now: number,
): TimetableRequest {
  const gone = new Set(slips.flatMap((slip) => (slip.kind === 'hand-gone' ? [slip.hand] : [])));
  const hands = request.camp.hands.map((hand) => {
    if (!gone.has(hand.id)) return hand;
    const to = Math.min(hand.to, now);
    return { ...hand, from: clockMinutes(Math.min(hand.from, to)), to: clockMinutes(to) };
  });
  return { ...request, camp: { ...request.camp, hands } };
}

interface Day {
  readonly sheet: DaySheet;
  readonly now: number;
}

/** What is in it is lost; what was to go in gets another oven, if there is one that will do. */
function withoutOvens(
  request: TimetableRequest,
  dropped: readonly string[],
  day: Day,
): Omit<Changed, 'later'> {
  const asks: Notice[] = [];
  const lost = new Set<string>();
  const dishes = request.dishes.map((work): DishWork => {
    const loads = work.loads.map((each): LoadWork => {
      if (!dropped.includes(each.load.oven) || isOut(day, each)) return each;
      const about = { dish: work.dish.id, oven: each.load.oven };
      if (isIn(day, each)) {
        asks.push(notice('TIMETABLE_REPLAN_LOAD_LOST', 'stop', about));
        lost.add(each.load.id);
        return each;
      }
      const other = otherOven(request, dropped, each, day);
      if (other === undefined) {
        asks.push(notice('TIMETABLE_REPLAN_NO_OVEN', 'stop', about));
        lost.add(each.load.id);
        return each;
      }
      const values = { other: other.id };
      asks.push(notice('TIMETABLE_REPLAN_OTHER_OVEN', 'doubt', about, values));
      const load = { ...each.load, oven: other.id };
      return { ...each, load, coals: { ...each.coals, oven: other.id } };
    });
    return { ...work, loads };
  });
  const lostDishes = dishes.flatMap(({ dish, loads }) =>
    loads.length > 0 && loads.every(({ load }) => lost.has(load.id)) ? [dish.id] : [],
  );
  return {
    request: { ...request, dishes },
    asks,
    lost: { loads: lost, dishes: new Set(lostDishes) },
  };
}

const begins = ({ sheet }: Day, { load }: LoadWork, kind: 'load' | 'take-out') =>
  sheet.jobs.find((job) => job.load === load.id && job.kind === kind);

const isIn = (day: Day, load: LoadWork) =>
  (begins(day, load, 'load')?.start ?? Number.POSITIVE_INFINITY) < day.now;

const isOut = (day: Day, load: LoadWork) =>
  (begins(day, load, 'take-out')?.end ?? Number.POSITIVE_INFINITY) <= day.now;

/** As wide or wider, kept free of the same; the one that stands idle longest before it is needed. */
function otherOven(
  { camp }: TimetableRequest,
  dropped: readonly string[],
  { load }: LoadWork,
  { sheet, now }: Day,
): CampOven | undefined {
  const broken = camp.ovens.find((oven) => oven.id === load.oven);
  if (broken === undefined) return undefined;
  const busy = (oven: CampOven) =>
    sheet.spans.reduce(
      (sum, span) =>
        span.oven === oven.id ? sum + Math.max(0, span.to - Math.max(now, span.from)) : sum,
      0,
    );
  return camp.ovens
    .filter(
      (oven) =>
        !dropped.includes(oven.id) &&
        oven.diameter >= broken.diameter - 0.001 &&
        broken.keptFreeOf.every((kind) => oven.keptFreeOf.includes(kind)) &&
        (oven.keptFreeOf.length === 0 || broken.keptFreeOf.length > 0),
    )
    .toSorted((one, other) => busy(one) - busy(other) || one.diameter - other.diameter)[0];
}

/** The request without the pinned minutes of these dishes. */
export function unpinned(request: TimetableRequest, dishes: ReadonlySet<string>): TimetableRequest {
  return {
    ...request,
    dishes: request.dishes.map((work) => {
      if (!dishes.has(work.dish.id)) return work;
      const { coalsOnAt: _, ...pins } = work.dish.pins;
      return { ...work, dish: { ...work.dish, pins } };
    }),
  };
}

// What would help? One thing at a time is relaxed and the meal really planned again; only what makes
// all of it sound and on time is told. These are not the only things that help.

import { clockMinutes, minutes } from '../quantity/unit.ts';
import type { Advice, DaySheet, TimetableRequest } from './day-sheet.ts';

/**
 * Advice for a sheet that is late, in the order in which a cook would rather hear it.
 *
 * @param lateness  really plans a request and has it checked; undefined where no sound plan was found
 */
export function adviceFor(
  request: TimetableRequest,
  sheet: DaySheet,
  lateness: (eased: TimetableRequest) => number | undefined,
): readonly Advice[] {
  const each = Math.max(1, sheet.jobs.length);
  const most = Math.max(LEAST_TRIED, Math.floor(MOST_JOBS / each));
  return relaxations(request)
    .slice(0, most)
    .flatMap(({ request: eased, ...change }) => {
      const late = lateness(eased);
      return late === undefined ? [] : [{ ...change, lateBy: minutes(late) }];
    });
}

/** Jobs that may be planned anew for advice, all relaxations together; so many are always tried. */
const MOST_JOBS = 3000;
const LEAST_TRIED = 4;

interface Relaxation extends Omit<Advice, 'lateBy'> {
  readonly request: TimetableRequest;
}

/** The likeliest help first: the last ones are not tried on a very long day. */
function relaxations(request: TimetableRequest): readonly Relaxation[] {
  const isOnFire = request.dishes.some((work) => work.loads.length > 0);
  return [
    { change: 'one-more-hand', amount: 1, request: withHand(request) },
    { change: 'serve-later', amount: 15, request: servedLater(request, 15) },
    { change: 'serve-later', amount: 30, request: servedLater(request, 30) },
    ...oneMoreOven(request),
    { change: 'start-earlier', amount: 15, request: begunEarlier(request, 15) },
    { change: 'longer-hold', amount: 10, request: heldLonger(request, 10) },
    ...(isOnFire ? [oneMoreChimney(request)] : []),
  ];
}

function withHand(request: TimetableRequest): TimetableRequest {
  const { camp } = request;
  const extra = {
    id: 'one-more-hand',
    name: 'one more',
    skill: 'steady' as const,
    from: clockMinutes(Math.min(...camp.hands.map((hand) => hand.from))),
    to: clockMinutes(Math.max(...camp.hands.map((hand) => hand.to))),
  };
  return { ...request, camp: { ...camp, hands: [...camp.hands, extra] } };
}

function oneMoreChimney(request: TimetableRequest): Relaxation {
  const { camp } = request;
  const gear = { ...camp.gear, chimneys: camp.gear.chimneys + 1 };
  return {
    change: 'one-more-chimney',
    amount: 1,
    request: { ...request, camp: { ...camp, gear } },
  };
}

/** For each oven that holds several loads, another like it, which takes the last of them. */
function oneMoreOven(request: TimetableRequest): readonly Relaxation[] {
  const { camp, dishes } = request;
  return camp.ovens.flatMap((oven): readonly Relaxation[] => {
    const inIt = dishes.flatMap(({ loads }) => loads.filter(({ load }) => load.oven === oven.id));
    const last = inIt.at(-1);
    if (inIt.length < 2 || last === undefined) return [];
    const twin = { ...oven, id: `${oven.id}-one-more`, name: `another ${oven.name}` };
    const moved = { ...last, load: { ...last.load, oven: twin.id } };
    const eased = {
      ...request,
      camp: { ...camp, ovens: [...camp.ovens, twin] },
      dishes: dishes.map((work) => ({
        ...work,
        loads: work.loads.map((each) => (each === last ? moved : each)),
      })),
    };
    return [{ change: 'one-more-oven', amount: 1, oven: oven.id, request: eased }];
  });
}

/** Everybody comes sooner; where it is planned on the day itself, that hour has passed. */
function begunEarlier(request: TimetableRequest, by: number): TimetableRequest {
  const { camp, notBefore } = request;
  const hands = camp.hands.map((hand) => ({ ...hand, from: clockMinutes(hand.from - by) }));
  return {
    ...request,
    camp: { ...camp, hands },
    ...(notBefore === undefined ? {} : { notBefore: clockMinutes(notBefore - by) }),
  };
}

function servedLater(request: TimetableRequest, by: number): TimetableRequest {
  const dishes = request.dishes.map((work) => {
    const serveAt = clockMinutes(work.dish.serveAt + by);
    return { ...work, dish: { ...work.dish, serveAt } };
  });
  return { ...request, dishes };
}

/** Never past what food safety allows on a hot day. */
function heldLonger(request: TimetableRequest, by: number): TimetableRequest {
  const dishes = request.dishes.map((work) =>
    work.canWait + by <= SAFE_WAIT ? { ...work, canWait: minutes(work.canWait + by) } : work,
  );
  return { ...request, dishes };
}

/** Out in air above 90 °F food may stand for one hour (fsis-two-hours). */
const SAFE_WAIT = 60;

// What would help? One thing at a time is relaxed and the meal really planned again; only what makes
// it better is told, with the lateness of that plan. These are not the only things that help.

import { clockMinutes, minutes } from '../quantity/unit.ts';
import type { Advice, TimetableRequest } from './day-sheet.ts';

/**
 * @param worstFor  really plans a request; its worst lateness, infinite if it can't be carried out
 * @param lateNow   what a relaxation has to beat
 */
export function advise(
  request: TimetableRequest,
  worstFor: (eased: TimetableRequest) => number,
  lateNow: number,
): readonly Advice[] {
  return relaxations(request).flatMap(({ change, amount, request: eased }) => {
    const late = worstFor(eased);
    if (!Number.isFinite(late) || late >= lateNow) return [];
    return [{ change, amount, lateBy: minutes(late) }];
  });
}

interface Relaxation {
  readonly change: Advice['change'];
  readonly amount: number;
  readonly request: TimetableRequest;
}

function relaxations(request: TimetableRequest): readonly Relaxation[] {
  const { camp } = request;
  const extra = {
    id: 'one-more-hand',
    name: 'one more',
    skill: 'steady' as const,
    from: clockMinutes(Math.min(...camp.hands.map((hand) => hand.from))),
    to: clockMinutes(Math.max(...camp.hands.map((hand) => hand.to))),
  };
  const gear = { ...camp.gear, chimneys: camp.gear.chimneys + 1 };
  const list: Relaxation[] = [
    {
      change: 'one-more-hand',
      amount: 1,
      request: { ...request, camp: { ...camp, hands: [...camp.hands, extra] } },
    },
    { change: 'serve-later', amount: 15, request: servedLater(request, 15) },
    { change: 'serve-later', amount: 30, request: servedLater(request, 30) },
    { change: 'longer-hold', amount: 10, request: heldLonger(request, 10) },
  ];
  if (request.dishes.some((work) => work.loads.length > 0)) {
    list.push({
      change: 'one-more-chimney',
      amount: 1,
      request: { ...request, camp: { ...camp, gear } },
    });
  }
  return list;
}

function servedLater(request: TimetableRequest, by: number): TimetableRequest {
  const dishes = request.dishes.map((work) => {
    const serveAt = clockMinutes(work.dish.serveAt + by);
    return { ...work, dish: { ...work.dish, serveAt } };
  });
  return { ...request, dishes };
}

function heldLonger(request: TimetableRequest, by: number): TimetableRequest {
  const dishes = request.dishes.map((work) => ({ ...work, canWait: minutes(work.canWait + by) }));
  return { ...request, dishes };
}

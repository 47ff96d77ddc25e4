// What is proven not to be possible, whatever the order of the work. Proofs are made on the easiest
// day that we allow ourselves: dough at the quick end of its band, jobs loose, free-from in any order.
// Sources: bellman1958 (lags); adding up of work in a stretch of time is plain counting.
// Weakness: what is not proven here may be impossible all the same.

import { type Refusal, refusal } from '../notice/notice.ts';
import { minutes } from '../quantity/unit.ts';
import { contradictionIn, latestOnTime } from '../solver/temporal.ts';
import type { TimetableRequest } from './day-sheet.ts';
import { coalProofs } from './proof-coals.ts';
import { energyProofs } from './proof-energy.ts';
import { timeProofs } from './proof-lags.ts';
import { ovenProofs } from './proof-ovens.ts';
import { soonestStarts } from './soonest.ts';
import { type DayWork, dayWork } from './work.ts';

/** A day with the room that lags and serving times alone leave to every task. */
export interface ProofDay {
  readonly request: TimetableRequest;
  readonly day: DayWork;
  /** Soonest and latest start of each task with everything on time. */
  readonly soonest: Float64Array;
  readonly latest: Float64Array;
}

/** Every proof that this day can't be on time; the plainest kind that there is, and no other. */
export function provenTrouble(request: TimetableRequest): readonly Refusal[] {
  const past = servingsPast(request);
  if (past.length > 0) return past;
  const easy = easiest(request);
  const day = inAnyOrder(dayWork(easy, { isFreeFromFirst: false, isLoose: true, isByOven: true }));
  const clash = contradictionIn(day.problem, { isDueFixed: false });
  const soonest = soonestStarts(day.problem, { isDueFixed: false });
  const inTime = timeProofs({ request: easy, day, clash, soonest });
  if (inTime.length > 0) return inTime;
  const room = {
    request: easy,
    day,
    soonest: soonestStarts(day.problem, { isDueFixed: true }),
    latest: latestOnTime(day.problem, 0),
  };
  const proofs = [ovenProofs, coalProofs, energyProofs];
  for (const prove of proofs) {
    const found = prove(room);
    if (found.length > 0) return found;
  }
  return [];
}

/** Which load goes first into an oven is our own order; a proof must hold for either. */
function inAnyOrder(day: DayWork): DayWork {
  const wipes = new Set(
    day.meanings.flatMap(({ kind }, task) => (kind === 'wipe-oven' ? [task] : [])),
  );
  const lags = day.problem.lags.filter(({ from, to }) => !wipes.has(from) && !wipes.has(to));
  return { ...day, problem: { ...day.problem, lags } };
}

function easiest(request: TimetableRequest): TimetableRequest {
  const dishes = request.dishes.map((work) => {
    const { rise } = work;
    if (rise === undefined || rise.first <= 0) return work;
    const least = Math.min(rise.least, rise.first);
    const second = minutes((rise.second * least) / rise.first);
    return { ...work, rise: { ...rise, first: minutes(least), second } };
  });
  return { ...request, dishes };
}

function servingsPast(request: TimetableRequest): readonly Refusal[] {
  const now = request.notBefore;
  if (now === undefined) return [];
  return request.dishes.flatMap(({ dish }) => {
    if (now <= dish.serveAt) return [];
    const values = { servingClockMinutes: dish.serveAt, nowClockMinutes: now };
    const conflicts = [`menu.${dish.id}.serveAt`, 'now'];
    return [refusal('TIMETABLE_SERVING_PAST', conflicts, { dish: dish.id }, values)];
  });
}

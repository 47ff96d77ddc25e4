// A dough does not rise to the minute. When supper would be a little late, the first rise may be
// counted shorter, down to the quick end of its band and never more, and that is said.

import { type Notice, notice } from '../notice/notice.ts';
import { minutes } from '../quantity/unit.ts';
import type { DishWork, TimetableRequest } from './day-sheet.ts';

interface Hurried {
  readonly request: TimetableRequest;
  readonly notices: readonly Notice[];
}

/** Undefined where no dough can make good for so many minutes. */
export function hurryDough(request: TimetableRequest, lateMinutes: number): Hurried | undefined {
  if (!Number.isFinite(lateMinutes)) return undefined;
  const cut = 5 * Math.ceil(lateMinutes / 5);
  const canGive = (work: DishWork) =>
    work.rise !== undefined && work.rise.first - cut >= work.rise.least;
  if (!request.dishes.some(canGive)) return undefined;
  const notices: Notice[] = [];
  const dishes = request.dishes.map((work) => {
    if (work.rise === undefined || !canGive(work)) return work;
    const first = minutes(work.rise.first - cut);
    const values = { likelyMinutes: work.rise.first, hurriedMinutes: first };
    notices.push(notice('TIMETABLE_RISE_HURRIED', 'doubt', { dish: work.dish.id }, values));
    return { ...work, rise: { ...work.rise, first } };
  });
  return { request: { ...request, dishes }, notices };
}

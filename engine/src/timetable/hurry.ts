// A dough does not rise to the minute. When supper would be a little late, the first rise may be
// counted shorter, down to the quick end of its band and never more, and that is said.

import { type Notice, notice } from '../notice/notice.ts';
import { minutes } from '../quantity/unit.ts';
import type { DishWork, Job, TimetableRequest } from './day-sheet.ts';
import { mainRise } from './recipe-shape.ts';

/** The request with quicker dough; undefined where none can make good for so many minutes. */
export function hurryDough(
  request: TimetableRequest,
  lateMinutes: number,
): TimetableRequest | undefined {
  if (!Number.isFinite(lateMinutes)) return undefined;
  const cut = 5 * Math.ceil(lateMinutes / 5);
  const canGive = (work: DishWork) =>
    work.rise !== undefined && work.rise.first - cut >= work.rise.least;
  if (!request.dishes.some(canGive)) return undefined;
  const dishes = request.dishes.map((work) => {
    if (work.rise === undefined || !canGive(work)) return work;
    return { ...work, rise: { ...work.rise, first: minutes(work.rise.first - cut) } };
  });
  return { ...request, dishes };
}

/** No dough is that punctual; common practice, no source. */
const NOT_WORTH_SAYING = 3;

/** Said only of dough that the sheet really gives less time than likely, from mixing to shaping. */
export function hurryNotices(request: TimetableRequest, jobs: readonly Job[]): readonly Notice[] {
  return request.dishes.flatMap((work) => {
    const hurriedMinutes = risingMinutes(work, jobs);
    const likelyMinutes = work.rise?.first;
    if (likelyMinutes === undefined || hurriedMinutes === undefined) return [];
    if (hurriedMinutes >= likelyMinutes - NOT_WORTH_SAYING) return [];
    const values = { likelyMinutes, hurriedMinutes };
    return [notice('TIMETABLE_RISE_HURRIED', 'doubt', { dish: work.dish.id }, values)];
  });
}

/** From the end of mixing until the risen dough is handled, or left to itself no longer. */
function risingMinutes(work: DishWork, jobs: readonly Job[]): number | undefined {
  const rise = mainRise(work.recipe);
  const own = jobs.filter((job) => {
    const shared = String(job.values.with ?? '').split(' ');
    return job.dish === work.dish.id || shared.includes(work.dish.id);
  });
  const risen = own.find((job) => job.kind === 'rise' && job.say === rise?.say);
  const mixed = own.find((job) => job.kind === 'mix');
  if (risen === undefined || mixed === undefined) return undefined;
  const next = own.filter((job) => job.hands.length > 0 && job.start >= risen.end);
  const shaped = next.find((job) => job.kind !== 'wash-hands');
  return (shaped?.start ?? risen.end) - mixed.end;
}

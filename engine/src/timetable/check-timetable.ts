// Could this day sheet be cooked? Every rule restated at the level of the job, from the sheet and
// the request alone; shares no code with what plans it.

import { coalRules } from './check-coals.ts';
import { dishRules } from './check-dishes.ts';
import { handRules } from './check-hands.ts';
import { ovenRules } from './check-ovens.ts';
import { washRules } from './check-washing.ts';
import type { DaySheet, TimetableRequest, Violation } from './day-sheet.ts';

/** Everything that the sheet breaks; empty for one that can be cooked as it stands. */
export function checkTimetable(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  const unplanned = sheet.notices.flatMap((each) =>
    each.code === 'TIMETABLE_DISH_UNPLANNED' ? [each.about.dish] : [],
  );
  const dishes = request.dishes.filter((work) => !unplanned.includes(work.dish.id));
  const asked = { ...request, dishes };
  return [
    ...timeRules(asked, sheet),
    ...onlyPlanned(asked, sheet),
    ...handRules(asked, sheet),
    ...ovenRules(asked, sheet),
    ...coalRules(asked, sheet),
    ...dishRules(asked, sheet),
    ...washRules(asked, sheet),
  ];
}

/** No job of a dish that is set aside. */
function onlyPlanned(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  const planned = request.dishes.map((work) => work.dish.id);
  return sheet.jobs.flatMap((job) => {
    if (job.dish === undefined || planned.includes(job.dish)) return [];
    return [{ rule: 'only-planned-dishes', jobs: [job.id], found: job.dish, wanted: 'none' }];
  });
}

function timeRules(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  const now = request.notBefore ?? Number.NEGATIVE_INFINITY;
  return sheet.jobs.flatMap((job) => {
    const isWhole = Number.isInteger(job.start) && Number.isInteger(job.end);
    if (!isWhole || job.end < job.start) {
      return [{ rule: 'whole-minutes', jobs: [job.id], found: job.start, wanted: job.end }];
    }
    if (job.start >= now) return [];
    return [{ rule: 'not-before', jobs: [job.id], found: job.start, wanted: now }];
  });
}

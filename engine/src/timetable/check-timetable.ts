// Could this day sheet be cooked? Every rule restated at the level of the job, from the sheet and
// the request alone; shares no code with what plans it.

import { coalRules } from './check-coals.ts';
import { dishRules } from './check-dishes.ts';
import { handRules } from './check-hands.ts';
import { ovenRules } from './check-ovens.ts';
import type { DaySheet, TimetableRequest, Violation } from './day-sheet.ts';

/** Everything that the sheet breaks; empty for one that can be cooked as it stands. */
export function checkTimetable(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  return [
    ...timeRules(request, sheet),
    ...handRules(request, sheet),
    ...ovenRules(request, sheet),
    ...coalRules(request, sheet),
    ...dishRules(request, sheet),
  ];
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

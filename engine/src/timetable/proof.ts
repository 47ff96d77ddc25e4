// What is proven not to be possible, whatever the order: serving already past, lags that contradict
// each other or the serving time, more work than the hands have hours.

import { type Notice, notice } from '../notice/notice.ts';
import { contradictionIn, ORIGIN } from '../solver/temporal.ts';
import type { TimetableRequest } from './day-sheet.ts';
import type { DayWork } from './work.ts';

export function provenTrouble(request: TimetableRequest, day: DayWork): readonly Notice[] {
  const past = servingsPast(request);
  if (past.length > 0) return past;
  const clash = contradictionIn(day.problem, { isDueFixed: false });
  if (clash !== undefined) return [contradiction(day, clash, 'TIMETABLE_CONTRADICTION')];
  const soon = contradictionIn(day.problem, { isDueFixed: true });
  if (soon !== undefined) return [contradiction(day, soon, 'TIMETABLE_TOO_SOON')];
  return overworked(day);
}

function servingsPast(request: TimetableRequest): readonly Notice[] {
  const now = request.notBefore;
  if (now === undefined) return [];
  return request.dishes.flatMap(({ dish }) => {
    if (now <= dish.serveAt) return [];
    const values = { servingClockMinutes: dish.serveAt, nowClockMinutes: now };
    return [notice('TIMETABLE_SERVING_PAST', 'stop', { dish: dish.id }, values)];
  });
}

function contradiction(day: DayWork, cycle: readonly number[], code: string): Notice {
  const tasks = cycle.filter((task) => task !== ORIGIN);
  const dish = tasks.map((task) => day.meanings[task]!.dish).find((each) => each !== undefined);
  const jobs = tasks.map((task) => day.problem.tasks[task]!.id).join(' ');
  return notice(code, 'stop', dish === undefined ? {} : { dish }, { jobs });
}

/** Work of hands that can't be left against all hours of all hands: an energy check. */
function overworked(day: DayWork): readonly Notice[] {
  const { problem } = day;
  const wanted = problem.tasks.reduce((sum, task) => {
    return problem.groups[task.group]!.mayBeLeft ? sum : sum + task.minutes * task.seats.length;
  }, 0);
  const found = problem.units.reduce((sum, unit) => {
    const open = unit.windows.map((each) => each.to - Math.max(each.from, problem.from));
    return sum + open.reduce((all, minutes) => all + Math.max(0, minutes), 0);
  }, 0);
  if (wanted <= found) return [];
  const values = { workMinutes: wanted, handMinutes: found };
  return [notice('TIMETABLE_HOURS_TOO_SHORT', 'stop', {}, values)];
}

// The jobs of a sheet under the names that the day's problem gives its tasks now: where an oven is
// lost, what comes after it is counted anew.

import type { DaySheet, Job } from '../day-sheet.ts';
import { visitId } from '../round.ts';
import type { DayWork } from '../work.ts';

export function namedAs(day: DayWork, sheet: DaySheet): DaySheet {
  const known = new Set(
    day.problem.tasks.flatMap(({ id }, index) => {
      const visits = day.meanings[index]!.round?.wave.loads.length ?? 1;
      return Array.from({ length: visits }, (_, place) => visitId(id, place));
    }),
  );
  const free = sheet.jobs.filter(({ id }) => !known.has(id));
  const names = new Map<string, string>();
  const taken = new Set<Job>();
  const there = new Set(sheet.jobs.map(({ id }) => id));
  day.problem.tasks.forEach(({ id }, index) => {
    if (there.has(id)) return;
    const { kind, dish, load, say } = day.meanings[index]!;
    const same = free.find(
      (job) =>
        !taken.has(job) &&
        job.kind === kind &&
        job.dish === dish &&
        job.load === load &&
        job.say === say,
    );
    if (same === undefined || kind === 'wash-hands') return;
    taken.add(same);
    names.set(same.id, id);
  });
  if (names.size === 0) return sheet;
  const named = (id: string) => names.get(id) ?? id;
  return {
    ...sheet,
    jobs: sheet.jobs.map((job) => ({ ...job, id: named(job.id) })),
    lightings: sheet.lightings.map((each) => ({
      ...each,
      uses: each.uses.map(({ job, coals }) => ({ job: named(job), coals })),
    })),
  };
}

/** Jobs before which hands are washed as a job of its own on this sheet. */
export function washedBefore(sheet: DaySheet, day: DayWork): ReadonlySet<string> {
  const known = new Set(day.problem.tasks.map(({ id }) => id));
  const washes = sheet.jobs.filter(
    ({ kind, id }) => kind === 'wash-hands' && !known.has(id) && /-wash-hands-\d+$/.test(id),
  );
  return new Set(
    washes.flatMap((wash) => {
      const next = sheet.jobs
        .filter(
          (job) => job.hands[0] === wash.hands[0] && job.start >= wash.end && known.has(job.id),
        )
        .toSorted((one, other) => one.start - other.start)[0];
      return next === undefined ? [] : [next.id];
    }),
  );
}

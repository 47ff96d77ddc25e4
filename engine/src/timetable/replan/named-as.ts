// The jobs of a sheet under the names that the day's problem gives its tasks now: where an oven is
// lost, what comes after it is counted anew. Alike jobs of a load are matched in their order.

import type { DaySheet, Job } from '../day-sheet.ts';
import type { DayWork } from '../work.ts';

export function namedAs(day: DayWork, sheet: DaySheet): DaySheet {
  const jobs = new Map<string, Job[]>();
  for (const job of sheet.jobs) {
    if (numberOf(job.id) === undefined) continue;
    const key = keyOf(job);
    jobs.set(key, [...(jobs.get(key) ?? []), job]);
  }
  for (const list of jobs.values()) list.sort((a, b) => numberOf(a.id)! - numberOf(b.id)!);
  const names = new Map<string, string>();
  day.problem.tasks.forEach(({ id }, index) => {
    const same = jobs.get(keyOf(day.meanings[index]!))?.shift();
    if (same !== undefined) names.set(same.id, id);
  });
  const isSame = [...names].every(([was, is]) => was === is);
  return isSame ? sheet : renamed(sheet, names);
}

/** Numbered by the problem; what the sheet adds of its own (washes, lightings) is not. */
function numberOf(id: string): number | undefined {
  if (/^(?:lighting|tend-fire)-|-wash-(?!hands-\d+$)/.test(id)) return undefined;
  const [, number] = /^[^~]*-(\d+)$/.exec(id) ?? [];
  return number === undefined ? undefined : Number(number);
}

const keyOf = ({ kind, dish, load, say }: Pick<Job, 'dish' | 'load' | 'say'> & { kind: string }) =>
  JSON.stringify([kind, dish, load, say]);

/** The jobs of a round are named after the first of them; what has no task now is left out. */
function renamed(sheet: DaySheet, names: ReadonlyMap<string, string>): DaySheet {
  const named = (id: string) => {
    const [base = id, place] = id.split('~');
    const name = numberOf(base) === undefined ? base : names.get(base);
    return name === undefined ? undefined : place === undefined ? name : `${name}~${place}`;
  };
  return {
    ...sheet,
    jobs: sheet.jobs.flatMap((job) => {
      const id = named(job.id);
      const round = job.round === undefined ? undefined : named(job.round);
      return id === undefined ? [] : [{ ...job, id, ...(round === undefined ? {} : { round }) }];
    }),
    lightings: sheet.lightings.map((each) => ({
      ...each,
      uses: each.uses.flatMap(({ job, coals }) => {
        const id = named(job);
        return id === undefined ? [] : [{ job: id, coals }];
      }),
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

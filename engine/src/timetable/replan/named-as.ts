// The jobs of a sheet under the names that the day's problem gives its tasks now: where an oven is
// lost or a round is cut, what comes after it is counted anew. Alike jobs of a load are matched in
// their order. Offers are told under the old names again.

import type { DaySheet, Job } from '../day-sheet.ts';
import { taskOfVisit, visitId } from '../round.ts';
import type { DayWork } from '../work.ts';
import type { JobWord, Offer, ReplanAsked, Slip } from './slip.ts';

/** What the problem calls a job of the sheet. */
interface Name {
  readonly id: string;
  readonly round?: string;
}

/** By the id on the sheet; what has no task now is left out. */
export type Names = ReadonlyMap<string, Name>;

export function namesFor({ problem, meanings }: DayWork, sheet: DaySheet): Names {
  const jobs = numberedJobs(sheet);
  const names = new Map<string, Name>();
  problem.tasks.forEach(({ id }, index) => {
    const { round, ...meaning } = meanings[index]!;
    const loads = round?.wave.loads.map(({ load }) => load.id) ?? [meaning.load];
    loads.forEach((load, place) => {
      const same = jobs.get(keyOf({ ...meaning, load }))?.shift();
      if (same === undefined) return;
      const name = { id: visitId(id, place), ...(round === undefined ? {} : { round: id }) };
      names.set(same.id, name);
    });
  });
  return names;
}

/** Alike ones in the order of their tasks. */
function numberedJobs(sheet: DaySheet): Map<string, Job[]> {
  const jobs = new Map<string, Job[]>();
  for (const job of sheet.jobs) {
    if (numberOf(job.id) === undefined) continue;
    const key = keyOf(job);
    jobs.set(key, [...(jobs.get(key) ?? []), job]);
  }
  for (const list of jobs.values()) list.sort((a, b) => numberOf(a.id)! - numberOf(b.id)!);
  return jobs;
}

/** Numbered by the problem; what the sheet adds of its own (washes, lightings) is not. */
function numberOf(id: string): number | undefined {
  if (/^(?:lighting|tend-fire)-/.test(id) || washOf(id) !== undefined) return undefined;
  const [, number] = /-(\d+)$/.exec(taskOfVisit(id)) ?? [];
  return number === undefined ? undefined : Number(number);
}

/** A washing that the sheet put before a job is named after that job and the hand. */
function washOf(id: string) {
  const [, job, hand] = /^(.+)-wash-(?!(?:hands|up)-\d+$)(.+)$/.exec(id) ?? [];
  return job === undefined || hand === undefined ? undefined : { job, hand };
}

/** The name that a job's washing gets from the job's. */
function withWash(id: string, idOf: (id: string) => string): string {
  const wash = washOf(id);
  return wash === undefined ? idOf(id) : `${idOf(wash.job)}-wash-${wash.hand}`;
}

interface Keyed {
  readonly kind: string;
  readonly dish?: string | undefined;
  readonly load?: string | undefined;
  readonly say?: string | undefined;
}

const keyOf = ({ kind, dish, load, say }: Keyed) => JSON.stringify([kind, dish, load, say]);

/** What is asked, under the names of the problem. */
export function namedAs(asked: ReplanAsked, names: Names): ReplanAsked {
  const isSame = [...names].every(([was, { id }]) => was === id);
  if (isSame) return asked;
  const idOf = (id: string) => withWash(id, (job) => names.get(job)?.id ?? job);
  const slips = asked.slips.map(
    (slip): Slip => ('job' in slip ? { ...slip, job: idOf(slip.job) } : slip),
  );
  const known = asked.known?.map((word): JobWord => ({ ...word, job: idOf(word.job) }));
  const sheet = renamed(asked.sheet, names, idOf);
  return { ...asked, sheet, slips, ...(known === undefined ? {} : { known }) };
}

function renamed(sheet: DaySheet, names: Names, idOf: (id: string) => string): DaySheet {
  const named = (id: string): Name | undefined =>
    numberOf(id) === undefined ? { id: idOf(id) } : names.get(id);
  return {
    ...sheet,
    jobs: sheet.jobs.flatMap(({ round: _, ...job }) => {
      const name = named(job.id);
      return name === undefined ? [] : [{ ...job, ...name }];
    }),
    lightings: sheet.lightings.map((each) => ({
      ...each,
      uses: each.uses.flatMap(({ job, coals }) => {
        const name = named(job);
        return name === undefined ? [] : [{ job: name.id, coals }];
      }),
    })),
  };
}

/** What the sheet calls what the problem has another name for. */
export function oldIds(names: Names): (id: string) => string {
  const back = new Map([...names].map(([was, { id }]) => [id, was]));
  return (id) => withWash(id, (job) => back.get(job) ?? job);
}

/** An offer under the names of the sheet that everybody has in their head. */
export function namedBack(offer: Offer, names: Names, sheet: DaySheet): Offer {
  const back = new Map([...names].map(([was, { id }]) => [id, was]));
  const taken = new Set(sheet.jobs.map(({ id }) => id));
  const jobIdOf = (id: string): string => {
    const was = back.get(id);
    if (was !== undefined) return was;
    if (numberOf(id) === undefined || !taken.has(id)) return id;
    const fresh = freshId(id, taken);
    back.set(id, fresh);
    taken.add(fresh);
    return fresh;
  };
  const idOf = (id: string) => withWash(id, jobIdOf);
  return {
    ...offer,
    moves: offer.moves.map((move) => ({ ...move, job: idOf(move.job) })),
    violations: offer.violations.map((each) => ({ ...each, jobs: each.jobs.map(idOf) })),
    sheet: {
      ...offer.sheet,
      jobs: offer.sheet.jobs.map((job) => ({
        ...job,
        id: idOf(job.id),
        ...(job.round === undefined ? {} : { round: idOf(job.round) }),
      })),
      lightings: offer.sheet.lightings.map((each) => ({
        ...each,
        uses: each.uses.map(({ job, coals }) => ({ job: idOf(job), coals })),
      })),
    },
  };
}

/** The same with a number that no job of the sheet has. */
function freshId(id: string, taken: ReadonlySet<string>): string {
  const [base, visit = ''] = id.split(/(?=~)/);
  const stem = base!.replace(/\d+$/, '');
  let count = numberOf(id)! + taken.size;
  while (taken.has(`${stem}${count}${visit}`)) count += 1;
  return `${stem}${count}${visit}`;
}

/** Tasks before which hands are washed as a job of its own on this sheet. */
export function washedBefore(sheet: DaySheet, names: Names): ReadonlySet<string> {
  const washes = sheet.jobs.filter(
    ({ kind, id }) => kind === 'wash-hands' && !names.has(id) && numberOf(id) !== undefined,
  );
  return new Set(
    washes.flatMap((wash) => {
      const next = sheet.jobs
        .filter(
          (job) =>
            job.hands[0] === wash.hands[0] &&
            job.dish === wash.dish &&
            job.start >= wash.end &&
            names.has(job.id),
        )
        .toSorted((one, other) => one.start - other.start)[0];
      return next === undefined ? [] : [taskOfVisit(names.get(next.id)!.id)];
    }),
  );
}

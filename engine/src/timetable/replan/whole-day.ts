// The day as one sheet again: what was done as it was done, what comes as it is planned now.

import { type ClockMinutes, clockMinutes } from '../../quantity/unit.ts';
import type { Plan } from '../../solver/problem.ts';
import { withWashes } from '../clean-hands.ts';
import type { DaySheet, Job, Lighting, TimetableRequest } from '../day-sheet.ts';
import { dayDoubt } from '../doubt/doubt.ts';
import { layOut } from '../lay-out.ts';
import { litCoals } from '../lit-coals.ts';
import { planNotices } from '../plan-notices.ts';
import type { Lost } from './changed-request.ts';
import type { RestOfDay } from './rest-of-day.ts';
import type { DayState } from './state.ts';

export interface WholeAsked {
  readonly request: TimetableRequest;
  readonly sheet: DaySheet;
  readonly state: DayState;
  readonly rest: RestOfDay;
  readonly lit: ReadonlySet<string>;
  readonly lost: Lost;
  readonly now: number;
  readonly seed: number;
  readonly doubtRuns: number;
}

export function wholeDay(asked: WholeAsked, plan: Plan): DaySheet {
  const { request, rest, sheet, state, now, lost } = asked;
  const { day, held } = rest;
  const crews = plan.crews.map((crew, task) => held.get(task)?.crew ?? crew);
  const merged: Plan = { ...plan, crews };
  const laid = layOut(request, day, merged);
  const past = [...state.values()].flatMap(({ job, state: is, start, end }) =>
    is === 'open' || is === 'lost'
      ? []
      : [{ ...job, start: clockMinutes(start), end: clockMinutes(end) }],
  );
  const pastIds = new Set(
    [...state.values()].flatMap(({ job, state: is }) => (is === 'open' ? [] : [job.id])),
  );
  const servings = laid.servings.filter(({ dish }) => !lost.dishes.has(dish));
  const renamed = newLightings(asked, laid.lightings, merged);
  const coming = laid.jobs.flatMap((job): readonly Job[] => {
    if (pastIds.has(job.id) && !renamed.has(job.id)) return [];
    const lighting = renamed.get(job.id);
    return lighting === undefined ? [job] : [lightingJob(job, lighting)];
  });
  const { jobs, left } = washedFrom(request, { past, coming, now });
  const lightings = [...keptLightings(asked, renamed), ...renamed.values()].sort(
    (one, other) => one.at - other.at,
  );
  const first = Math.min(...lightings.map(({ at }) => at));
  const known = new Set([...held].flatMap(([task, { isPast }]) => (isPast ? [task] : [])));
  const isLate = servings.some(({ lateBy }) => lateBy > 0) || plan.broken.length > 0;
  return {
    status: isLate ? 'late' : 'planned',
    jobs,
    spans: laid.spans.filter(({ load }) => !lost.loads.has(load)),
    lightings,
    lit: litCoals(request, jobs, lightings),
    servings,
    ...(lightings.length === 0
      ? sheet.firstFire === undefined
        ? {}
        : { firstFire: sheet.firstFire }
      : { firstFire: clockMinutes(Math.min(first, sheet.firstFire ?? first)) }),
    advice: [],
    ...(asked.doubtRuns > 0
      ? {
          doubt: dayDoubt(request, day, merged, {
            seed: asked.seed,
            runs: asked.doubtRuns,
            known,
          }),
        }
      : {}),
    notices: [
      ...planNotices({
        request,
        day,
        plan: merged,
        servings,
        jobs,
        unwashed: left,
      }),
      ...day.notices,
    ],
  };
}

/** Washing is put in from now on only; nobody's past changes hands. */
function washedFrom(
  request: TimetableRequest,
  day: { readonly past: readonly Job[]; readonly coming: readonly Job[]; readonly now: number },
) {
  const byStart = (one: Job, other: Job) => one.start - other.start || (one.id < other.id ? -1 : 1);
  const all = [...day.past, ...day.coming].sort(byStart);
  const known = new Map(day.past.map((job) => [job.id, job]));
  const washed = withWashes(request, all);
  const jobs = washed.jobs.flatMap((job): readonly Job[] => {
    const was = known.get(job.id);
    if (was !== undefined) return [was];
    const isNewBefore = job.start < day.now && !all.some(({ id }) => id === job.id);
    return isNewBefore ? [] : [job];
  });
  const isOnce = (job: Job, at: number) => jobs.findIndex(({ id }) => id === job.id) === at;
  return {
    jobs: jobs.filter(isOnce).sort(byStart),
    left: washed.left,
  };
}

/** Coals that are lit, less what is lit for anew: a set may come from both. */
function keptLightings(
  { sheet, lit }: WholeAsked,
  renamed: ReadonlyMap<string, Lighting>,
): readonly Lighting[] {
  const sumBy = (lightings: readonly Lighting[]) => {
    const sums = new Map<string, number>();
    for (const { uses } of lightings)
      for (const { job, coals } of uses) sums.set(job, (sums.get(job) ?? 0) + coals);
    return sums;
  };
  const wanted = sumBy(sheet.lightings);
  const anew = sumBy([...renamed.values()]);
  const left = new Map([...wanted].map(([job, coals]) => [job, coals - (anew.get(job) ?? 0)]));
  return sheet.lightings
    .filter(({ id }) => lit.has(id))
    .map((each) => ({
      ...each,
      uses: each.uses.flatMap((use) => {
        const coals = Math.min(use.coals, left.get(use.job) ?? 0);
        left.set(use.job, (left.get(use.job) ?? 0) - coals);
        return coals > 0 ? [{ ...use, coals }] : [];
      }),
    }));
}

/** By the id that the plan gave them: with names and chimneys that fit what burns already. */
function newLightings(
  { sheet, lit, state }: WholeAsked,
  made: readonly Lighting[],
  plan: Plan,
): ReadonlyMap<string, Lighting> {
  const freeAt = new Map<number, number>();
  for (const { id, chimney, readyAt } of sheet.lightings) {
    if (chimney === undefined || !lit.has(id)) continue;
    freeAt.set(chimney, Math.max(freeAt.get(chimney) ?? 0, readyAt));
  }
  const taken = new Set(sheet.lightings.map(({ id }) => id));
  const batches = plan.batches.toSorted((one, other) => one.start - other.start);
  const names = new Set<string>();
  return new Map(
    made.map((each, at) => {
      const same = sheet.lightings.find(
        (old) =>
          state.get(old.id)?.state === 'open' &&
          !names.has(old.id) &&
          old.uses.some(({ job }) => uses(each, job)),
      );
      const id = same?.id ?? freshId(taken);
      names.add(id);
      taken.add(id);
      if (each.chimney === undefined) return [each.id, { ...each, id }] as const;
      const chimney = freeChimney(freeAt, each.at);
      freeAt.set(chimney, Math.max(each.readyAt, batches[at]?.emptiedAt ?? each.readyAt));
      return [each.id, { ...each, id, chimney }] as const;
    }),
  );
}

const uses = (lighting: Lighting, job: string) => lighting.uses.some((use) => use.job === job);

function freshId(taken: ReadonlySet<string>): string {
  let count = taken.size + 1;
  while (taken.has(`lighting-${count}`)) count += 1;
  return `lighting-${count}`;
}

function freeChimney(freeAt: ReadonlyMap<number, number>, at: ClockMinutes): number {
  let chimney = 1;
  while ((freeAt.get(chimney) ?? 0) > at) chimney += 1;
  return chimney;
}

function lightingJob(job: Job, { id, chimney }: Lighting): Job {
  const values = chimney === undefined ? job.values : { ...job.values, chimney };
  return { ...job, id, values };
}

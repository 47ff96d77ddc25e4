// The jobs that the day sheet has for one load: a card says their times, never its own.

import type { LoadPlan, MealDay } from '../../meal.ts';
import type { Job, JobKind, Lighting } from '../../timetable/day-sheet.ts';

/** Jobs of one load of one kind, soonest first. */
export const loadJobs = (plan: MealDay, loadId: string, kind: JobKind): readonly Job[] =>
  plan.daySheet.jobs
    .filter((job) => job.load === loadId && job.kind === kind)
    .sort((one, other) => one.start - other.start);

/** Clock minute of "coals on": the coals lie. Undefined where the timetable has no place for it. */
export function coalsOnAt(plan: MealDay, { load, coals }: LoadPlan): number | undefined {
  const [laying] = loadJobs(plan, load.id, 'lay-coals');
  if (laying !== undefined) return laying.end;
  const cooking = plan.daySheet.spans.find(
    (span) => span.load === load.id && span.state === 'cooking',
  );
  return cooking === undefined ? undefined : cooking.from - coals.loadInMinute;
}

/** How far a job may lie from the minute that the coals ask for and still be that job. */
const FARTHEST_MINUTES = 15;

/**
 * Minutes since coals on at which the day sheet has what the coals ask for at `planned`; that minute
 * itself where it has no such job.
 */
export function minuteOnSheet(
  plan: MealDay,
  part: LoadPlan,
  { kind, planned }: { readonly kind: JobKind; readonly planned: number },
): number {
  const zero = coalsOnAt(plan, part);
  if (zero === undefined) return planned;
  const asked = (job: Job) => Number(job.values.minute ?? job.start - zero);
  const job = nearestTo(loadJobs(plan, part.load.id, kind), planned, asked);
  const isIt = job !== undefined && Math.abs(asked(job) - planned) <= FARTHEST_MINUTES;
  return isIt ? job.start - zero : planned;
}

/** The first of those that lie nearest. */
export function nearestTo<Thing>(
  things: readonly Thing[],
  minute: number,
  minuteOf: (thing: Thing) => number,
): Thing | undefined {
  const far = (thing: Thing) => Math.abs(minuteOf(thing) - minute);
  return things.reduce<Thing | undefined>(
    (best, each) => (best === undefined || far(each) < far(best) ? each : best),
    undefined,
  );
}

export interface OwnLighting {
  readonly lighting: Lighting;
  /** So many of its coals are for this load. */
  readonly coals: number;
}

/** What is lit for one load, soonest first. */
export function lightingsOf(plan: MealDay, loadId: string): readonly OwnLighting[] {
  const own = new Set(plan.daySheet.jobs.flatMap(({ id, load }) => (load === loadId ? [id] : [])));
  return plan.daySheet.lightings
    .map((lighting) => ({
      lighting,
      coals: lighting.uses.reduce((sum, use) => sum + (own.has(use.job) ? use.coals : 0), 0),
    }))
    .filter(({ coals }) => coals > 0)
    .sort((one, other) => one.lighting.at - other.lighting.at);
}

// What comes before "coals on", and what else is done away from the oven: mixing, lighting. Times
// and counts are those of the day sheet.

import type { DishPlan, LoadPlan, MealDay } from '../../meal.ts';
import type { Job, JobKind, Lighting } from '../../timetable/day-sheet.ts';
import type { Say } from '../say.ts';
import { lightingsOf, type OwnLighting } from './load-jobs.ts';
import { sentenceCase } from './phrases.ts';

export interface FirstWork {
  /** Clock minute. */
  readonly at: number;
  readonly what: string;
  readonly note?: string;
}

const WORK: Partial<Readonly<Record<JobKind, string>>> = {
  weigh: 'weigh',
  prepare: 'prepare',
  mix: 'mix',
  fold: 'fold',
  shape: 'shape',
  grease: 'grease the oven',
  'wipe-oven': 'wipe the oven out',
  load: 'into the oven, lid on',
};

/** Work for one load off the coals, soonest first; what the whole dish shares is told with its first. */
export function firstWork(
  plan: MealDay,
  dish: DishPlan,
  part: LoadPlan,
  say: Say,
): readonly FirstWork[] {
  const isFirst = dish.loads[0]?.load.id === part.load.id;
  const own = plan.daySheet.jobs.filter(
    (job) => isOf(job, dish) && (job.load === part.load.id || (isFirst && job.load === undefined)),
  );
  return [
    ...own.flatMap((job) => workRow(job, part, say)),
    ...lightingsOf(plan, part.load.id).map((each) => lightingRow(plan, each, say)),
  ].sort((one, other) => one.at - other.at);
}

/** A dough that two dishes share is mixed once, under the name of the first. */
const isOf = ({ dish: id, values }: Job, { dish }: DishPlan) =>
  id === dish.id ||
  String(values.with ?? '')
    .split(' ')
    .includes(dish.id);

function workRow(job: Job, { coals }: LoadPlan, say: Say): readonly FirstWork[] {
  const work = WORK[job.kind];
  // A load that goes into a hot oven stands among the minutes that follow.
  if (work === undefined || (job.kind === 'load' && coals.loadInMinute > 0)) return [];
  return [{ at: job.start, what: sentenceCase(work), note: say.minutes(job.end - job.start) }];
}

function lightingRow(plan: MealDay, { lighting, coals }: OwnLighting, say: Say): FirstWork {
  const wood = plan.camp.fuel.kind === 'wood-coals';
  const isShared = coals < lighting.uses.reduce((sum, use) => sum + use.coals, 0);
  const share = wood || !isShared ? '' : `, ${coals} for here`;
  return {
    at: lighting.at,
    what: `${briefLighting(lighting, wood)}${share}`,
    note: `${wood ? 'coals ' : ''}ready ${say.clock(lighting.readyAt)}`,
  };
}

/** Short enough for one line of a card. */
const briefLighting = (lighting: Lighting, wood: boolean) =>
  wood || lighting.chimney === undefined
    ? lightingWord(lighting, wood)
    : `Light ${lighting.coals} in chimney ${lighting.chimney}`;

/** `Light chimney 1 with 41`; a heap where there is no chimney, a fire where there is wood. */
export function lightingWord(
  { chimney, coals }: Pick<Lighting, 'chimney' | 'coals'>,
  wood: boolean,
): string {
  if (wood) return 'Light the feeder fire';
  return chimney === undefined
    ? `Light ${coals} coals in a heap`
    : `Light chimney ${chimney} with ${coals} coals`;
}

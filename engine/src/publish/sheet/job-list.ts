// Jobs numbered in the order they start: the numbers on the drawing and in the list are the same.

import type { MealPlan } from '../../meal.ts';
import type { Job } from '../../timetable/day-sheet.ts';
import type { StepRow } from '../document.ts';
import type { Say } from '../say.ts';
import { jobBrief, jobSentence } from '../words/jobs.ts';
import { listed } from './phrases.ts';

export interface NumberedJob {
  readonly job: Job;
  readonly number: number;
}

/** Jobs that keep hands busy, numbered; rises, rests and simmers need nobody. */
export const numberedJobs = (plan: MealPlan): readonly NumberedJob[] =>
  [...plan.daySheet.jobs]
    .filter(({ hands }) => hands.length > 0)
    .sort((left, right) => left.start - right.start)
    .map((job, index) => ({ job, number: index + 1 }));

export interface RowManner {
  /** Say who does it, on a sheet that is not one person's own. */
  readonly isNamed: boolean;
  /** The dish card has the rest; a turn is brief anyway, being told once above the list. */
  readonly isBrief: boolean;
}

/** One job as a row. */
export function jobRow(
  { job, number }: NumberedJob,
  plan: MealPlan,
  say: Say,
  { isNamed, isBrief }: RowManner,
): StepRow {
  return {
    when: String(number),
    clock: say.clock(job.start),
    what: (isBrief || job.kind === 'turn' ? jobBrief : jobSentence)(job, plan, say),
    ...(isNamed ? { who: listed(job.hands.map((id) => say.hand(id).replace(/^the /i, ''))) } : {}),
    ...(job.kind === 'call' ? { strong: true } : {}),
    ...noteOf(job, say),
  };
}

/** Less than this and it is simply due. */
const LEAST_SLACK = 5;

function noteOf(job: Job, say: Say): { readonly note?: string } {
  const slack = job.latestStart - job.start;
  const lasts = job.end - job.start;
  const parts = [
    lasts >= 1 ? say.minutes(lasts) : undefined,
    slack < LEAST_SLACK
      ? undefined
      : slack < 1440
        ? `latest ${say.clock(job.latestStart)}`
        : undefined,
  ].filter((part) => part !== undefined);
  return parts.length === 0 ? {} : { note: parts.join(', ') };
}

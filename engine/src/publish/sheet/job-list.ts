// Jobs numbered in the order they start: the numbers on the drawing and in the list are the same.

import type { MealPlan } from '../../meal.ts';
import type { Job } from '../../timetable/day-sheet.ts';
import type { StepRow } from '../document.ts';
import type { Say } from '../say.ts';
import { jobSentence } from '../words/jobs.ts';
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

/** One job as a row; `isNamed` says who does it, on a sheet that is not one person's own. */
export function jobRow(
  { job, number }: NumberedJob,
  plan: MealPlan,
  say: Say,
  isNamed: boolean,
): StepRow {
  return {
    when: String(number),
    clock: say.clock(job.start),
    what: jobSentence(job, plan, say),
    ...(isNamed ? { who: listed(job.hands.map(say.hand)) } : {}),
    ...(job.kind === 'call' ? { strong: true } : {}),
    ...noteOf(job, say),
  };
}

function noteOf(job: Job, say: Say): { readonly note?: string } {
  const slack = job.latestStart - job.start;
  const lasts = job.end - job.start;
  const parts = [
    lasts >= 1 ? say.minutes(lasts) : undefined,
    slack < 0.5 ? undefined : slack < 1440 ? `not after ${say.clock(job.latestStart)}` : undefined,
  ].filter((part) => part !== undefined);
  return parts.length === 0 ? {} : { note: parts.join(', ') };
}

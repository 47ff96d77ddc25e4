// Jobs numbered in the order they start: the numbers on the drawing and in the list are the same.
// A round over many ovens is one job here: one number, one row, all its ovens named.

import type { MealPlan } from '../../meal.ts';
import type { Job } from '../../timetable/day-sheet.ts';
import { endOf, paceOf, startOf, type Walk, walksOf } from '../../timetable/walks.ts';
import type { StepRow } from '../document.ts';
import type { Say } from '../say.ts';
import { jobBrief, jobSentence } from '../words/jobs.ts';
import { listed } from './phrases.ts';

export interface NumberedJob {
  /** The first where it is a round. */
  readonly job: Job;
  readonly number: number;
  readonly walk: Walk;
}

/** Jobs that keep hands busy, numbered; rises, rests and simmers need nobody. */
export const numberedJobs = (plan: MealPlan): readonly NumberedJob[] =>
  walksOf(plan.daySheet.jobs.filter(({ hands }) => hands.length > 0)).map((walk, index) => ({
    job: walk.jobs[0]!,
    number: index + 1,
    walk,
  }));

/** What one pair of hands does of it: of a round that crews share, every second oven or so. */
export function ownPart(each: NumberedJob, hand: string): NumberedJob | undefined {
  const jobs = each.walk.jobs.filter(({ hands }) => hands.includes(hand));
  const [job] = jobs;
  return job === undefined ? undefined : { ...each, job, walk: { ...each.walk, jobs } };
}

export interface RowManner {
  /** Say who does it, on a sheet that is not one person's own. */
  readonly isNamed: boolean;
  /** The dish card has the rest; a turn is brief anyway, being told once above the list. */
  readonly isBrief: boolean;
}

/** One job as a row. */
export function jobRow(each: NumberedJob, plan: MealPlan, say: Say, manner: RowManner): StepRow {
  const { job, number, walk } = each;
  const hands = [...new Set(walk.jobs.flatMap((own) => own.hands))];
  return {
    when: String(number),
    clock: say.clock(job.start),
    what: walkWords(each, plan, say, manner),
    ...(manner.isNamed
      ? { who: listed(hands.map((id) => say.hand(id).replace(/^the /i, ''))) }
      : {}),
    ...(job.kind === 'call' ? { strong: true } : {}),
    ...noteOf(each, say),
  };
}

/** The job in words, every oven of a round named in one breath. */
export function walkWords(
  { job, walk }: Pick<NumberedJob, 'job' | 'walk'>,
  plan: MealPlan,
  say: Say,
  { isBrief }: Pick<RowManner, 'isBrief'>,
): string {
  const words = isBrief || job.kind === 'turn' ? jobBrief : jobSentence;
  if (walk.jobs.length === 1) return words(job, plan, say);
  const ovens = ovensOf(walk, say);
  const round: Say = { ...say, ovenName: (id) => (id === job.oven ? ovens : say.ovenName(id)) };
  const text = words(job, plan, round);
  return text.toLowerCase().includes(ovens.toLowerCase()) ? text : `${text} (${ovens})`;
}

const ovensOf = ({ jobs }: Walk, say: Say): string =>
  ovensInARow(jobs.flatMap(({ oven }) => (oven === undefined ? [] : [say.ovenName(oven)])));

/** `bread 1 to 5`; where the names are no row, all of them. */
export function ovensInARow(names: readonly string[]): string {
  const parts = names.map((name) => /^(.*?)(\d+)$/.exec(name));
  const [first] = parts;
  const isRow =
    names.length > 2 &&
    parts.every(
      (part, index) =>
        part !== null && part[1] === first?.[1] && Number(part[2]) === Number(first?.[2]) + index,
    );
  if (isRow) return `${names[0]} to ${parts.at(-1)?.[2] ?? ''}`;
  return listed(names);
}

/** Less than this and it is simply due. */
const LEAST_SLACK = 5;

function noteOf({ job, walk }: NumberedJob, say: Say): { readonly note?: string } {
  const slack = job.latestStart - job.start;
  const lasts = endOf(walk) - startOf(walk);
  const pace = paceOf(walk);
  const parts = [
    lasts >= 1 ? say.minutes(lasts) : undefined,
    pace > 0 ? `an oven every ${say.minutes(pace)}` : undefined,
    slack < LEAST_SLACK
      ? undefined
      : slack < 1440
        ? `latest ${say.clock(job.latestStart)}`
        : undefined,
  ].filter((part) => part !== undefined);
  return parts.length === 0 ? {} : { note: parts.join(', ') };
}

// Why does each job stand where it stands, and how late may it begin before supper is late?

import type { MealPlan } from '../../meal.ts';
import type { Job } from '../../timetable/day-sheet.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';
import { jobName, ovenWord } from '../words/jobs.ts';
import { doubtBlocks } from './doubt-part.ts';
import { numberedJobs } from './job-list.ts';

/** Folded under the list; too long for paper. */
export function reasonBlocks(plan: MealPlan, say: Say): readonly Block[] {
  const jobs = numberedJobs(plan);
  if (jobs.length === 0) return [];
  return [
    {
      type: 'why',
      question: 'How sure are these times?',
      isScreenOnly: true,
      blocks: doubtBlocks(plan, say),
    },
    {
      type: 'why',
      question: 'Why then, and how late may it begin?',
      isScreenOnly: true,
      blocks: [
        {
          type: 'table',
          caption: 'With the order of this sheet kept',
          head: ['', 'begins', 'job', 'why then', 'latest'],
          numeric: [],
          rows: jobs.map(({ job, number }) => [
            String(number),
            say.clock(job.start),
            jobWord(job, say),
            reason(job, plan, say),
            job.latestStart > job.start ? say.clock(job.latestStart) : 'now',
          ]),
        },
      ],
    },
  ];
}

/** Coals are on when they have all been laid. */
function coalsOnAt({ daySheet }: MealPlan, load: string | undefined, say: Say): string {
  const lay = daySheet.jobs.find((job) => job.kind === 'lay-coals' && job.load === load);
  return lay === undefined ? '' : ` at ${say.clock(lay.end)}`;
}

function jobWord(job: Job, say: Say): string {
  const about =
    job.oven === undefined
      ? job.dish === undefined
        ? undefined
        : say.dish(job.dish)
      : ovenWord(say.ovenName(job.oven));
  return about === undefined ? jobName(job) : `${jobName(job)}, ${about}`;
}

function reason({ because, load, values }: Job, plan: MealPlan, say: Say): string {
  const { kind, by } = because;
  const next = plan.daySheet.jobs.find(({ id }) => id === by);
  switch (kind) {
    case 'serving':
      return by === undefined || by === '' ? 'in time for serving' : `${say.dish(by)} is served`;
    case 'minute':
      return `minute ${Math.round(Number(values.minute))} after coals on${coalsOnAt(plan, load, say)}`;
    case 'since':
      return next === undefined
        ? 'as soon as it can be'
        : `as soon as ${jobWord(next, say)} is done, ${say.clock(next.end)}`;
    case 'before':
      return next === undefined
        ? 'before what follows it'
        : `before ${jobWord(next, say)} at ${say.clock(next.start)}`;
    case 'after':
      return next === undefined
        ? 'as soon as it can be'
        : `no sooner before ${jobWord(next, say)} than it may wait`;
    case 'hand':
      return by === undefined
        ? 'hands are busy after it'
        : `${say.hand(by)} has other work after it`;
    case 'oven':
      return by === undefined
        ? 'the oven is needed'
        : `${ovenWord(say.ovenName(by))} is needed again`;
    case 'coals':
      return next === undefined
        ? 'coals are needed'
        : `coals for ${jobWord(next, say)} at ${say.clock(next.start)}`;
    case 'chimney':
      return 'the chimney is needed again';
    case 'table':
      return 'the table is needed after it';
    case 'pin':
      return 'you pinned it';
    case 'now':
      return 'not before now';
    case 'arrival':
      return 'not before somebody is there';
  }
}

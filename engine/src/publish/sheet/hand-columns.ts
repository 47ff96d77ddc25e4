// Who does what, a column for each pair of hands, a row for each quarter hour: at a glance who is
// free and who is not. Four pairs of hands to a table, so that it is read on a phone and on a board.

import type { MealPlan } from '../../meal.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { type NumberedJob, numberedJobs, ownPart } from './job-list.ts';
import { sentenceCase } from './phrases.ts';
import { shortWork } from './short-work.ts';

const COLUMNS = 4;
const QUARTER = 15;
const quarterOf = (at: number) => Math.floor(at / QUARTER) * QUARTER;

export function handColumns(plan: MealPlan, say: Say): SheetDocument {
  const jobs = numberedJobs(plan);
  const working = plan.camp.hands.filter(({ id }) => jobs.some((each) => ownPart(each, id)));
  const count = Math.max(1, Math.ceil(working.length / COLUMNS));
  const wide = Math.ceil(working.length / count);
  const tables = Array.from({ length: count }, (_, index) =>
    working.slice(index * wide, (index + 1) * wide).map(({ id }) => id),
  ).filter((hands) => hands.length > 0);
  return {
    kind: 'hand-columns',
    title: 'Hands side by side',
    camp: plan.camp.title,
    eyebrow: plan.camp.date,
    blocks: [
      { type: 'paragraph', parts: [{ text: 'Minutes past the hour stand before each job.' }] },
      ...tables.flatMap((hands, index): readonly Block[] => [
        ...(index > 0 ? [{ type: 'page-break' } as const] : []),
        tableOf(hands, jobs, plan, say),
      ]),
    ],
  };
}

function tableOf(
  hands: readonly string[],
  jobs: readonly NumberedJob[],
  plan: MealPlan,
  say: Say,
): Block {
  const own = hands.map((hand) => jobs.flatMap((each) => ownPart(each, hand) ?? []));
  const quarters = [...new Set(own.flat().map(({ job }) => quarterOf(job.start)))];
  return {
    type: 'table',
    caption: '',
    head: ['', ...hands.map((hand) => sentenceCase(say.hand(hand).replace(/^the /i, '')))],
    rows: quarters
      .sort((one, other) => one - other)
      .map((from) => [
        say.clock(from),
        ...own.map((all) =>
          all
            .filter(({ job }) => quarterOf(job.start) === from)
            .map((each) => `:${minutePast(each.job.start)} ${shortWork(each, plan, say)}`)
            .join('\n'),
        ),
      ]),
    numeric: [],
  };
}

const minutePast = (at: number) => String(((Math.round(at) % 60) + 60) % 60).padStart(2, '0');

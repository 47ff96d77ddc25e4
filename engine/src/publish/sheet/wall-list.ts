// The wall list: the day by the clock in large type, to be read from where one stands. What only one
// pair of hands needs (greasing, looking, washing) stands on their own sheets.

import type { MealPlan } from '../../meal.ts';
import type { JobKind } from '../../timetable/day-sheet.ts';
import type { Block, SheetDocument, StepRow } from '../document.ts';
import type { Say } from '../say.ts';
import { byDay } from './by-day.ts';
import { type NumberedJob, numberedJobs } from './job-list.ts';
import { listed } from './phrases.ts';
import { linesBlocks } from './serving-part.ts';
import { shortWork } from './short-work.ts';

const OWN_BUSINESS: ReadonlySet<JobKind> = new Set([
  'wash-hands',
  'grease',
  'check',
  'stir',
  'probe',
]);

export function wallList(plan: MealPlan, say: Say): SheetDocument {
  const shown = numberedJobs(plan).filter(({ job }) => !OWN_BUSINESS.has(job.kind));
  const days = byDay(shown, ({ job }) => job.start, { date: plan.camp.date, say });
  return {
    kind: 'wall-list',
    title: 'Wall list',
    camp: plan.camp.title,
    eyebrow: `${plan.camp.place.name} · ${plan.camp.date}`,
    blocks:
      shown.length === 0
        ? [{ type: 'lead', parts: [{ text: 'Nothing to do in this plan.' }] }]
        : [
            ...days.flatMap((told): readonly Block[] => [
              ...told.heading,
              { type: 'steps', rows: rowsOf(told.items, plan, told.say) },
            ]),
            ...linesBlocks(plan, say),
          ],
  };
}

/** The clock once for all that begins at that minute. */
function rowsOf(shown: readonly NumberedJob[], plan: MealPlan, say: Say): readonly StepRow[] {
  let last = '';
  return shown.map((each): StepRow => {
    const clock = say.clock(each.job.start);
    const isNew = clock !== last;
    last = clock;
    const hands = [...new Set(each.walk.jobs.flatMap((job) => job.hands))];
    return {
      when: isNew ? clock : '',
      what: shortWork(each, plan, say),
      who: listed(hands.map((id) => say.hand(id).replace(/^the /i, ''))),
      ...(each.job.kind === 'call' ? { strong: true } : {}),
    };
  });
}

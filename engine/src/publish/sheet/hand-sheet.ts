// One person's own sheet: only what these hands do, in order.

import type { MealPlan } from '../../meal.ts';
import type { Block, SheetDocument, StepRow } from '../document.ts';
import type { Say } from '../say.ts';
import { byDay } from './by-day.ts';
import { turnOnce } from './day-sheet.ts';
import { stripBlocks } from './dish-card.ts';
import { jobRow, type NumberedJob, numberedJobs, ownPart } from './job-list.ts';
import { listed, sentenceCase } from './phrases.ts';

/**
 * The jobs of one pair of hands, numbered as on the day sheet.
 *
 * @throws RangeError — the camp has no such hand
 */
export function handSheet(plan: MealPlan, handId: string, say: Say): SheetDocument {
  const hand = plan.camp.hands.find(({ id }) => id === handId);
  if (hand === undefined) throw new RangeError(`the camp has no hand "${handId}"`);
  const jobs = numberedJobs(plan).flatMap((each) => ownPart(each, handId) ?? []);
  return {
    kind: 'hand-sheet',
    title: sentenceCase(hand.name),
    camp: plan.camp.title,
    eyebrow: `here ${say.clock(hand.from)} to ${say.clock(hand.to)}`,
    blocks: [
      ...(jobs.length === 0
        ? [{ type: 'lead', parts: [{ text: 'Nothing to do in this plan.' }] } as const]
        : [
            {
              type: 'lead',
              parts: [
                { text: jobs.length === 1 ? 'One job' : `${jobs.length} jobs`, strong: true },
                {
                  text: `, numbered as on the day sheet.${jobs.some(({ job }) => job.kind === 'turn') ? turnOnce(plan) : ''}`,
                },
              ],
            } as const,
            { type: 'heading', text: 'In order', half: true } as const,
            ...byDay(jobs, ({ job }) => job.start, { date: plan.camp.date, say }).flatMap(
              (told): readonly Block[] => [
                ...told.heading,
                {
                  type: 'steps',
                  rows: told.items.map((each) => ownRow(each, plan, handId, told.say)),
                },
              ],
            ),
          ]),
      ...stripBlocks(plan, say),
    ],
  };
}

/** One's own name is known; who helps is not. */
function ownRow(each: NumberedJob, plan: MealPlan, handId: string, say: Say): StepRow {
  const row = jobRow(each, plan, say, { isNamed: false, isBrief: false });
  const others = each.job.hands.filter((id) => id !== handId).map(say.hand);
  return others.length === 0 ? row : { ...row, what: `${row.what} (with ${listed(others)})` };
}

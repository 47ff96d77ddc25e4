// A card for the pocket of each pair of hands: four to a sheet of paper, cut along the lines. Long
// days run on to a second card and a third.

import type { MealPlan } from '../../meal.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { type NumberedJob, numberedJobs, ownPart } from './job-list.ts';
import { sentenceCase } from './phrases.ts';
import { shortWork } from './short-work.ts';

/**
 * Lines of letters that a card surely holds, and the letters of one. Measured on paper, Letter and A4, in
 * the widest letters that the sheets may be printed in (web/e2e/paper.test.ts).
 */
const LINES = 23;
const LETTERS = 36;

export function pocketCards(plan: MealPlan, say: Say): SheetDocument {
  const jobs = numberedJobs(plan);
  return {
    kind: 'pocket-cards',
    title: 'Pocket cards',
    camp: plan.camp.title,
    eyebrow: plan.camp.date,
    blocks: plan.camp.hands.flatMap(({ id, name }): readonly Block[] => {
      const own = jobs.flatMap((each) => ownPart(each, id) ?? []);
      const rows = own.map((each) => rowOf(each, plan, id, say));
      const cards = inCards(rows);
      return cards.map((card, index) => ({
        type: 'card',
        title: `${sentenceCase(name)}${cards.length > 1 ? `, ${index + 1} of ${cards.length}` : ''}`,
        blocks: [
          // First, so that a slip of the scissors or a torn corner takes no caution away.
          { type: 'paragraph', parts: [{ text: CARE }] },
          { type: 'steps', rows: card },
        ],
      }));
    }),
  };
}

const CARE =
  'No coals under a fly, in a tent or a car: carbon monoxide. Gloves and lifter for every lid. ' +
  'Hands washed before food.';

function rowOf(each: NumberedJob, plan: MealPlan, hand: string, say: Say) {
  const others = [...new Set(each.walk.jobs.flatMap((job) => job.hands))].filter(
    (id) => id !== hand,
  );
  const with_ = others.map((id) => say.hand(id).replace(/^the /i, ''));
  return {
    when: say.clock(each.job.start),
    what: `${shortWork(each, plan, say)}${with_.length === 0 ? '' : ` (with ${with_.join(', ')})`}`,
    ...(each.job.kind === 'call' ? { strong: true } : {}),
  };
}

type Row = ReturnType<typeof rowOf>;

/** As few cards as hold it all, and those alike full: no more lines on one than must be. */
function inCards(rows: readonly Row[]): readonly (readonly Row[])[] {
  const most = LINES;
  const count = filled(rows, most).length;
  const all = rows.reduce((sum, row) => sum + linesOf(row), 0);
  const rooms = Array.from({ length: most }, (_, at) => at + 1);
  const room = rooms.find((each) => each * count >= all && filled(rows, each).length === count);
  return filled(rows, room ?? most);
}

/** Words go over to the next line whole. */
function linesOf({ what }: Row): number {
  let [lines, used] = [1, 0];
  for (const { length } of what.split(' ')) {
    const isOver = used > 0 && used + 1 + length > LETTERS;
    lines += isOver ? 1 : 0;
    used = isOver || used === 0 ? length : used + 1 + length;
  }
  return lines;
}

function filled(rows: readonly Row[], room: number): readonly (readonly Row[])[] {
  const cards: Row[][] = [];
  let used = Number.POSITIVE_INFINITY;
  for (const row of rows) {
    if (used + linesOf(row) > room) {
      cards.push([]);
      used = 0;
    }
    cards.at(-1)!.push(row);
    used += linesOf(row);
  }
  return cards;
}

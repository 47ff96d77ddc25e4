// Serving lines of a big feed: which ovens stand on which line, and what is kept for latecomers.

import type { MealPlan } from '../../meal.ts';
import { servingLines } from '../../timetable/serving-lines.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';
import { ovenWord, shortName } from '../words/jobs.ts';
import { ovensInARow } from './job-list.ts';

/** Nothing for a camp that one line feeds. */
export function linesBlocks(plan: MealPlan, say: Say): readonly Block[] {
  const mouths = plan.camp.mouths.reduce((sum, { count }) => sum + count, 0);
  const found = servingLines({
    mouths,
    sheet: plan.daySheet,
    dishes: plan.dishes.map(({ dish, portions, loads }) => ({
      dish: dish.id,
      reserve: portions.reserve,
      loads: loads.map(({ load }) => ({ oven: load.oven, id: load.id, portions: load.portions })),
    })),
  });
  if (found === undefined) return [];
  const ovens = (ids: readonly string[]) =>
    ovensInARow(ids.map((id) => ovenWord(say.ovenName(id))));
  const rows = found.dishes.map(({ dish, ovens: byLine, kept, keptPortions }) => [
    shortName(say.dish(dish)),
    ...byLine.map((ids) => (ids.length === 0 ? 'a share' : ovens(ids))),
    kept.length === 0 ? '' : `${ovens(kept)}, ${Math.round(keptPortions)} portions`,
  ]);
  const lines = Array.from({ length: found.lines }, (_, index) => `line ${index + 1}`);
  return [
    { type: 'heading', text: found.lines === 1 ? 'Serving line' : 'Serving lines' },
    {
      type: 'paragraph',
      parts: [
        {
          text: `${mouths} mouths, ${found.lines} ${found.lines === 1 ? 'line' : 'lines'}: the last is served about 20 minutes after the call. What is kept stays shut for those who come late.`,
        },
      ],
    },
    {
      type: 'table',
      caption: '',
      head: ['', ...lines, 'kept for latecomers'],
      rows,
      numeric: [],
    },
  ];
}

// What stands in the way, in three grades that are never mixed: proven impossible, not found, and
// what would help, each item of which was planned anew and checked.

import type { MealPlan } from '../../meal.ts';
import type { Block } from '../document.ts';
import { refusalBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { advicePhrase } from './advice.ts';

export function gradeBlocks(plan: MealPlan, say: Say): readonly Block[] {
  return [...provenBlocks(plan, say), ...notFoundBlocks(plan), ...adviceBlocks(plan, say)];
}

function provenBlocks({ daySheet: { proven = [] } }: MealPlan, say: Say): readonly Block[] {
  if (proven.length === 0) return [];
  return [
    { type: 'heading', text: 'Can not be in time, proven', half: true },
    ...refusalBlocks(proven, say),
  ];
}

/** Said only where nothing is proven. */
function notFoundBlocks({ daySheet: { status } }: MealPlan): readonly Block[] {
  if (status !== 'late') return [];
  return [
    { type: 'heading', text: 'Not found in time', half: true },
    {
      type: 'paragraph',
      parts: [
        {
          text:
            'No plan was found in which everything is in time. That is no proof that there is ' +
            'none; this is the least late of those tried.',
        },
      ],
    },
  ];
}

function adviceBlocks(
  { daySheet: { advice, isAdvicePending, status } }: MealPlan,
  say: Say,
): readonly Block[] {
  if (isAdvicePending && status !== 'planned') {
    return [{ type: 'paragraph', parts: [{ text: 'Looking for what would help.' }] }];
  }
  if (advice.length === 0) return [];
  return [
    { type: 'heading', text: 'What would help', half: true },
    { type: 'list', tick: false, items: advice.map((each) => advicePhrase(each, say)) },
    {
      type: 'paragraph',
      parts: [{ text: 'Each was planned anew and checked. Other things may help too.' }],
    },
  ];
}

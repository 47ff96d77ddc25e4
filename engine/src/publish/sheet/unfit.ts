// Who must not eat what, told once a person and not once a dish.

import type { MealPlan } from '../../meal.ts';
import type { Notice } from '../../notice/notice.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';
import { unfitWord } from './free-from.ts';

/** One line a person: `Not for a guest with …: rolls (contains gluten), slaw (not kept apart).` */
export function unfitBlocks({ safety }: MealPlan, say: Say): readonly Block[] {
  const people = new Map<string, string[]>();
  for (const { who, dish, because } of safety.unfit) {
    people.set(who, [...(people.get(who) ?? []), `${say.dish(dish)} (${unfitWord(because)})`]);
  }
  return [...people].map(([who, dishes]) => ({
    type: 'notice',
    level: 'danger',
    text: `Not for ${who}: ${dishes.join('; ')}.`,
  }));
}

/** All who must not eat one dish, in one box on its card. */
export function unfitHere({ safety }: MealPlan, dish: string): readonly Block[] {
  const people = safety.unfit
    .filter((each) => each.dish === dish)
    .map(({ who, because }) => `${who} (${unfitWord(because)})`);
  return people.length === 0
    ? []
    : [{ type: 'notice', level: 'danger', text: `Not for ${people.join('; ')}.` }];
}

/** Cautions without those that `unfitBlocks` tells by person. */
export const withoutUnfit = (notices: readonly Notice[]) =>
  notices.filter(({ code }) => code !== 'SAFETY_UNFIT');

/** What is dangerous about today itself: fire and wind, not the standing rules of every day. */
export const aboutToday = ({ code }: Notice) => /^SAFETY_(FIRE|WIND)_/.test(code);

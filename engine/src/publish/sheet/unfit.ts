// Who must not eat what: one table for the meal, one line on the card of a dish.

import type { MealDay } from '../../meal.ts';
import type { Notice } from '../../notice/notice.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';
import { unfitWord } from './free-from.ts';
import { listed, sentenceCase } from './phrases.ts';

/** `person | not | why`: people of whom the same is said share a row, dishes with one reason too. */
export function unfitBlocks({ safety }: MealDay, say: Say): readonly Block[] {
  const dishes = new Map<string, { who: string; because: string; dishes: string[] }>();
  for (const { who, dish, because } of safety.unfit) {
    const key = `${who}|${because}`;
    const row = dishes.get(key) ?? { who, because, dishes: [] };
    row.dishes.push(say.dish(dish));
    dishes.set(key, row);
  }
  const rows = new Map<string, { who: string[]; not: string; why: string }>();
  for (const { who, because, dishes: names } of dishes.values()) {
    const not = listed(names);
    const key = `${not}|${because}`;
    const row = rows.get(key) ?? { who: [], not, why: unfitWord(because) };
    row.who.push(who);
    rows.set(key, row);
  }
  if (rows.size === 0) return [];
  return [
    { type: 'heading', text: 'Who must not eat what' },
    {
      type: 'table',
      caption: '',
      head: ['who', 'not', 'why'],
      numeric: [],
      rows: [...rows.values()]
        .map(({ who, not, why }) => [sentenceCase(listed(who)), not, why])
        .sort(([left = ''], [right = '']) => (left < right ? -1 : left > right ? 1 : 0)),
    },
  ];
}

/** All who must not eat one dish, in one box on its card. */
export function unfitHere({ safety }: MealDay, dish: string): readonly Block[] {
  const people = safety.unfit
    .filter((each) => each.dish === dish)
    .map(({ who, because }) => `${who} (${unfitWord(because)})`);
  return people.length === 0
    ? []
    : [{ type: 'notice', level: 'danger', text: `Not for ${people.join('; ')}.` }];
}

/** Cautions without those that the table or the "Not for" line tells by person. */
export const withoutUnfit = (notices: readonly Notice[]) =>
  notices.filter(
    ({ code, values }) =>
      code !== 'SAFETY_UNFIT' && !(code === 'MENU_CANNOT_EAT' && values.portions === 'kept'),
  );

/** What is dangerous about today itself: fire and wind, not the standing rules of every day. */
export const aboutToday = ({ code }: Notice) => /^SAFETY_(FIRE|WIND)_/.test(code);

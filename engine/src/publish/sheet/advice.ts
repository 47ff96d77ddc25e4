// What is short, and what one change would do: each line carries the result of a checked plan.

import type { Advice } from '../../timetable/day-sheet.ts';
import type { Say } from '../say.ts';
import { listed } from './phrases.ts';

export function advicePhrase(advice: Advice, say: Say): string {
  const left =
    advice.lateBy < 0.5
      ? 'everything is on time'
      : `the worst dish is ${say.minutes(advice.lateBy)} late`;
  return `${changePhrase(advice, say)}: ${left}${asidePhrase(advice, say)}.`;
}

/** Dishes that are not served even so. */
const asidePhrase = ({ aside = [] }: Advice, say: Say) =>
  aside.length === 0
    ? ''
    : `, but ${listed(aside.map((id) => say.dish(id)))} still ${aside.length > 1 ? 'find' : 'finds'} no place`;

function changePhrase({ change, amount, oven, dish }: Advice, say: Say): string {
  const more = amount > 1 ? `${say.count(amount)} more` : 'one more';
  const plural = amount > 1 ? 's' : '';
  switch (change) {
    case 'one-more-hand':
      return amount > 1 ? `With ${more} pairs of hands` : 'With one more pair of hands';
    case 'one-more-oven':
      return oven === undefined
        ? `With ${more} oven${plural}`
        : `With ${more} oven${plural} like ${say.ovenName(oven)}`;
    case 'one-more-chimney':
      return `With ${more} chimney${plural}`;
    case 'serve-later':
      return `Serving ${say.minutes(amount)} later`;
    case 'start-earlier':
      return `Starting ${say.minutes(amount)} earlier`;
    case 'longer-hold':
      return `If it may wait ${say.minutes(amount)} longer`;
    case 'without-pin':
      return `With the coals of ${say.dish(dish ?? '')} at another minute than the pinned one`;
  }
}

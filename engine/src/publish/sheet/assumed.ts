// What was assumed because the cook did not say: one line on every card, to read and to change.

import type { Assumption } from '../../meal.ts';
import { compassPoint } from '../drawing/around.ts';
import type { Say } from '../say.ts';
import { decimal } from '../speak-number.ts';

/**
 * `Assumed: charcoal pieces of 25 g, one chimney, …`; empty if nothing was assumed.
 *
 * @param also  what a door took for granted besides, in words
 */
export function assumedLine(
  assumed: readonly Assumption[],
  say: Say,
  also: readonly string[] = [],
): string {
  const phrases = [...saidOnce(assumed).map((each) => assumedPhrase(each, say)), ...also];
  return phrases.length === 0 ? '' : `Assumed, change what is wrong: ${phrases.join(', ')}.`;
}

/** Briquettes of 25 g are briquettes. */
const saidOnce = (assumed: readonly Assumption[]) =>
  assumed.some(({ what }) => what === 'piece-mass')
    ? assumed.filter(({ what, value }) => what !== 'fuel' || value === 'wood-coals')
    : assumed;

function assumedPhrase({ what, value }: Assumption, say: Say): string {
  const number = Number(value);
  switch (what) {
    case 'fuel':
      return value === 'wood-coals' ? 'wood coals' : String(value);
    case 'piece-mass':
      return `briquettes of ${decimal(number, 1)} g each`;
    case 'chimneys':
      return number === 1 ? 'one chimney' : `${value} chimneys`;
    case 'hands':
      return number === 1 ? 'one pair of hands' : `${value} pairs of hands`;
    case 'air':
      return `air at ${orWord(value, say.degrees)}`;
    case 'wind':
      return `wind: ${orWord(value, say.wind)}`;
    case 'wind-from':
      return `wind from the ${typeof value === 'number' ? compassPoint(value) : value}`;
    case 'ground':
      return `on ${value}`;
    case 'elevation':
      return `${orWord(value, say.height)} above the sea`;
    case 'depth':
      return `${orWord(value, say.length)} depth`;
    case 'greased':
      return 'oven greased';
    case 'cold-oven':
      return 'oven cold at the start';
    case 'screen':
      return number > 0 ? 'behind a wind screen' : 'no wind screen';
    case 'mouths':
      return number === 1 ? 'one mouth' : `${value} mouths`;
  }
}

const orWord = (value: number | string, speak: (number: number) => string) =>
  typeof value === 'number' ? speak(value) : value;

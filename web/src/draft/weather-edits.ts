// One word for the weather of the whole time: every hour of the file follows it. What one value
// can say moves all hours by as much, so that an evening that cools still cools.

import type { Edit } from './path.ts';
import { baseOf, movedBy } from './quantity-text.ts';

export type Hour = Readonly<Record<string, unknown>>;
export type Told = 'air' | 'wind' | 'windFrom' | 'rain' | 'sun';

/** What is one thing for every hour, as it is told; the others move. */
const SET_AS_TOLD: ReadonlySet<Told> = new Set(['windFrom', 'rain', 'sun']);
/** What an hour may leave out. */
const MAY_BE_LEFT_OUT: ReadonlySet<Told> = new Set(['rain', 'sun']);

const wordAt = (hour: Hour | undefined, key: string) => {
  const value = hour?.[key];
  return typeof value === 'string' ? value : '';
};

/** All hours say the same. */
export const isSteady = (hours: readonly Hour[], key: Told) =>
  new Set(hours.map((hour) => wordAt(hour, key))).size <= 1;

interface Plain {
  readonly key: Told;
  /** The hour that the one word stands for; the others follow it. */
  readonly at: number;
  readonly text: string;
}

/** What is to be changed where hour `at` is to say `text`. */
export function plainEdits(hours: readonly Hour[], plain: Plain): readonly Edit[] {
  const shift = shiftOf(hours, plain);
  return hours.flatMap((hour, index): readonly Edit[] => {
    const place = ['weather', index];
    if (SET_AS_TOLD.has(plain.key) || shift === undefined) {
      const isLeftOut = plain.text.trim() === '' && MAY_BE_LEFT_OUT.has(plain.key);
      return [[[...place, plain.key], isLeftOut ? undefined : plain.text]];
    }
    const least = plain.key === 'wind' ? 0 : undefined;
    const moved = (key: string) => movedBy(wordAt(hour, key), shift, least);
    const isIt = index === plain.at || hour[plain.key] === hours[plain.at]?.[plain.key];
    const told: Edit = [[...place, plain.key], isIt ? plain.text : moved(plain.key)];
    const isGusty = plain.key === 'wind' && wordAt(hour, 'gust') !== '';
    return isGusty ? [told, [[...place, 'gust'], moved('gust')]] : [told];
  });
}

/** In base units; undefined where one of the two can't be read: then all hours say the text. */
function shiftOf(hours: readonly Hour[], { key, at, text }: Plain): number | undefined {
  const [to, from] = [baseOf(text), baseOf(wordAt(hours[at], key))];
  return to === undefined || from === undefined ? undefined : to - from;
}

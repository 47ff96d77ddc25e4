// A camp of several days, told day by day: each day under its own name, its times without a word on
// which day they are of. A camp of one day is told as ever.

import type { Block } from '../document.ts';
import type { Say } from '../say.ts';
import { dateWord } from '../speak-time.ts';

const DAY_MINUTES = 1440;

export interface ToldDay<Item> {
  /** Days after the camp's date. */
  readonly day: number;
  readonly items: readonly Item[];
  /** Speaks of times as one does on that day. */
  readonly say: Say;
  /** Nothing where the whole is one day. */
  readonly heading: readonly Block[];
}

/** Things that begin at some minute, by the day on which they do. */
export function byDay<Item>(
  items: readonly Item[],
  startOf: (item: Item) => number,
  { date, say }: { readonly date: string; readonly say: Say },
): readonly ToldDay<Item>[] {
  const dayOf = (item: Item) => Math.floor(startOf(item) / DAY_MINUTES);
  const days = [...new Set(items.map(dayOf))].sort((one, other) => one - other);
  if (days.length < 2) return [{ day: 0, items, say, heading: [] }];
  return days.map((day) => ({
    day,
    items: items.filter((item) => dayOf(item) === day),
    say: { ...say, clock: (at) => say.clock(at - day * DAY_MINUTES) },
    heading: [{ type: 'heading', text: dateWord(date, day) }],
  }));
}

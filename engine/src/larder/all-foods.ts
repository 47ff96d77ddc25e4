// Every food we know, with the words that recipes use for it: the larder of the first door and the
// larger one that only reading a recipe or a camp file needs, so that the first door stays small.
// Sources: sr28; larderFromMemory for the larger table; its words are common practice, no source.

import more from '../../data/larder-more.json' with { type: 'json' };
import words from '../../data/larder-words.json' with { type: 'json' };
import type { Food } from './food.ts';
import { foodFromRow, foods, type LarderRow } from './larder.ts';

/** Foods from memory that no ready recipe uses. */
export const moreFoods: readonly Food[] = (more.rows as readonly LarderRow[]).map(foodFromRow);

const moreWords = new Map<string, readonly string[]>(
  words.rows.map((row) => [row.food, row.words]),
);

/** All of them, those of the release first. */
export const allFoods: readonly Food[] = [...foods, ...moreFoods].map((food) => ({
  ...food,
  alsoCalled: [...food.alsoCalled, ...(moreWords.get(food.key) ?? [])],
}));

const byKey: ReadonlyMap<string, Food> = new Map(allFoods.map((food) => [food.key, food]));

/** The food with this key, of all that we know. */
export const anyFoodWithKey = (key: string): Food | undefined => byKey.get(key);

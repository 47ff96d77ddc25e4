// One yeast for another: how much of each does the same work.
// Source: yeastKinds, factors that bakers print alike everywhere; no primary work was read. By dry
// matter alone (sr28: 31 and 95 %) active dry would be 0.33 of fresh: a quarter of it is dead.

import { foodOf } from '../../menu/needs.ts';
import type { Ingredient } from '../../menu/recipe.ts';

/** Work of one gram as grams of active dry yeast: fresh 0.4, instant 0.4/0.33. */
const DRY_PER_GRAM: Readonly<Record<string, number>> = {
  'active-dry-yeast': 1,
  'fresh-yeast': 0.4, // yeastKinds
  'instant-yeast': 0.4 / 0.33, // yeastKinds
};

export const yeastKeys: readonly string[] = Object.keys(DRY_PER_GRAM);

/** Active dry yeast that does the work of one gram of this one; 1 where the kind is not known. */
export const asDryYeast = (ingredient: Ingredient): number =>
  DRY_PER_GRAM[foodOf(ingredient)?.key ?? ''] ?? 1;

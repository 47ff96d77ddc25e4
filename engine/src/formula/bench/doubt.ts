// How far a cup or a spoon can miss. What is weighed is sure; what is scooped is not.
// Source: data/larder-doubt.json (herr41 beside sr28 where both weigh a cup, else common practice).

import { doubtOf as doubtOfMeasure } from '../../larder/weigh.ts';
import type { Ingredient } from '../../menu/recipe.ts';
import { isUnread, readAmount, sizeOfUnit } from '../../quantity/read.ts';

/** Half the spread of a measured amount, as a share of it; 0 where it was weighed. */
export const doubtOf = (ingredient: Ingredient): number =>
  isWeighed(ingredient) ? 0 : doubtOfMeasure(ingredient);

/** A recipe that gives a weight alone was weighed; one that gives a cup may be scooped. */
function isWeighed({ asWritten }: Ingredient): boolean {
  if (asWritten.trim() === '') return true;
  const amount = readAmount(asWritten);
  return !isUnread(amount) && sizeOfUnit(amount.unit).kind === 'mass';
}

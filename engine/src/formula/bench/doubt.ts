// How far a written amount can miss. What is weighed is sure; what is scooped is not; a range is open
// to both of its ends.
// Source: data/larder-doubt.json (herr41 beside sr28 where both weigh a cup, else common practice).

import { doubtOf as doubtOfMeasure } from '../../larder/weigh.ts';
import type { Ingredient } from '../../menu/recipe.ts';
import { isUnread, readAmount, sizeOfUnit } from '../../quantity/read.ts';

/**
 * Half the spread of an amount, as a share of it: 0 where one weight was written.
 *
 * @example  "3/4-1 cup" of milk → 0.17: a seventh either way for the range, 3 % for the cup
 */
export function doubtOf(ingredient: Ingredient): number {
  const { asWritten } = ingredient;
  if (asWritten.trim() === '') return 0; // a recipe that gives a weight alone was weighed
  const amount = readAmount(asWritten);
  if (isUnread(amount)) return doubtOfMeasure(ingredient);
  const measured = sizeOfUnit(amount.unit).kind === 'mass' ? 0 : doubtOfMeasure(ingredient);
  const [least, most] = [amount.low * (1 - measured), amount.high * (1 + measured)];
  return 0 < least + most ? (most - least) / (amount.low + amount.high) : measured;
}

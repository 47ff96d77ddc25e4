// How far a cup or a spoon can miss. What is weighed is sure; what is scooped is not.
// Sources: herr41 beside sr28, the same food weighed by two bodies. Weakness: spoons of leavening
// and salt have no published spread; theirs is assumed, no source.

import type { FoodPart } from '../../larder/food.ts';
import { foodOf } from '../../menu/needs.ts';
import type { Ingredient } from '../../menu/recipe.ts';
import { isUnread, readAmount, sizeOfUnit } from '../../quantity/read.ts';

/** Half the spread of a measured amount, as a share of it; 0 where it was weighed. */
export function doubtOf(ingredient: Ingredient): number {
  if (isWeighed(ingredient)) return 0;
  if (ingredient.part === 'fat') return isOil(ingredient) ? OIL : SOLID_FAT;
  return OF_PART[ingredient.part] ?? ANY;
}

/** A recipe that gives a weight alone was weighed; one that gives a cup may be scooped. */
export function isWeighed({ asWritten }: Ingredient): boolean {
  if (asWritten.trim() === '') return true;
  const amount = readAmount(asWritten);
  return !isUnread(amount) && sizeOfUnit(amount.unit).kind === 'mass';
}

const OIL = 0.04; // 209 and 218 g a cup, herr41 and sr28
const SOLID_FAT = 0.09; // 187 and 205 g
const ANY = 0.1; // assumed, no source
const OF_PART: { readonly [part in FoodPart]?: number } = {
  flour: 0.1, // 116 … 126 g by published ways, past 140 g dipped (no source)
  meal: 0.04, // 151 and 157 g
  water: 0.02, // assumed, no source: the line of a cup
  liquid: 0.02, // the same
  sugar: 0.04, // 196 and 200 g, brown 211 and 220 g
  egg: 0.12, // medium 44 g to extra large 56 g around 50 g, sr28 NDB 01123
  yeast: 0.26, // 142 and 192 g
};

function isOil(ingredient: Ingredient): boolean {
  return /\boil\b/.test(foodOf(ingredient)?.name ?? ingredient.name);
}

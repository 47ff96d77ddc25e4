// What a food is made of, per gram, and how a spoonful of it is weighed.

import type { Allergen } from '../camp/camp.ts';
import type { Grams, Ratio } from '../quantity/unit.ts';

/** Household measures that a food can be weighed by. */
export type Measure = 'cup' | 'tbsp' | 'tsp' | 'each';

export interface Food {
  /** Our key, `bread-flour`. */
  readonly key: string;
  /** As a cook says it, good on a shopping list and in a recipe. */
  readonly name: string;
  /** Nearest row for foods of several names: the cook's own word is the one to show. */
  readonly isSeveral?: true;
  /** USDA SR28 NDB number; undefined for a cook's own food. */
  readonly ndb?: string;
  /** Other words a recipe uses for it, lower case. */
  readonly alsoCalled: readonly string[];
  readonly part: FoodPart;
  /** Grams of one measure; a derived one (16 tbsp to the cup) is marked in the table, not here. */
  readonly measures: Readonly<Partial<Record<Measure, Grams>>>;
  /** What size of piece `each` weighs: large, medium. */
  readonly eachSize?: string;
  readonly water: Ratio;
  readonly fat: Ratio;
  readonly salt: Ratio;
  readonly sugar: Ratio;
  readonly protein: Ratio;
  /** Food energy of one gram [J]. */
  readonly energyJoules: number;
  readonly allergens: readonly Allergen[];
  /** May be there: read the label. */
  readonly checkLabel: readonly Allergen[];
  /** Where the row comes from: key in sources and grade. */
  readonly source: string;
}

/** What a food does in a dough or a pot. */
export type FoodPart =
  | 'flour'
  | 'meal'
  | 'water'
  | 'liquid'
  | 'fat'
  | 'salt'
  | 'sugar'
  | 'egg'
  | 'yeast'
  | 'powder'
  | 'soda'
  | 'acid'
  | 'dry-milk'
  | 'meat'
  | 'poultry'
  | 'bean'
  | 'grain'
  | 'vegetable'
  | 'fruit'
  | 'nut'
  | 'cheese'
  | 'spice'
  | 'other';

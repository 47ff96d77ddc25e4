// What goes into the bowl: the recipe as a formula, scaled to the batch, with what height changes.

import type { Ingredient } from '../menu/recipe.ts';
import type { Notice } from '../notice/notice.ts';
import type { CookMeasure } from '../quantity/cook-measure.ts';
import type { Grams, Kelvin, Minutes, Ratio } from '../quantity/unit.ts';

export interface Formula {
  readonly dish: string;
  readonly recipe: string;
  readonly lines: readonly FormulaLine[];
  /** Flour and meal together: the 100 % of baker's percentages; 0 for a dish without any. */
  readonly flour: Grams;
  /** Whole batch as it goes into the ovens. */
  readonly batch: Grams;
  /** All undefined where there is no flour. */
  readonly percentages?: FormulaPercentages;
  readonly handling?: Handling;
  /** Amounts that were changed for height; the old amount stays beside the new. */
  readonly changes: readonly FormulaChange[];
  readonly rise?: RiseEstimate;
  readonly notices: readonly Notice[];
}

export interface FormulaLine {
  readonly ingredient: Ingredient;
  /** Scaled, after changes. */
  readonly grams: Grams;
  /** Nearest honest household measure; undefined where the food has none. */
  readonly measure?: CookMeasure;
  /** Of flour + meal; undefined where there is none. */
  readonly bakersPercent?: number;
}

/** Shares of flour, 1 = 100 %. Water inside milk, eggs and butter counts as water. */
export interface FormulaPercentages {
  readonly hydration: Ratio;
  readonly fat: Ratio;
  readonly salt: Ratio;
  readonly sugar: Ratio;
  readonly powder: Ratio;
  readonly soda: Ratio;
  readonly yeast: Ratio;
}

export type Handling = 'stiff' | 'smooth' | 'tacky' | 'sticky' | 'drop-batter' | 'pour-batter';

export interface FormulaChange {
  readonly ingredient: string;
  readonly was: Grams;
  readonly now: Grams;
  readonly reason: 'height';
  readonly source: string;
}

/** How long the dough takes to double where it stands. */
export interface RiseEstimate {
  readonly dough: Kelvin;
  readonly first: Minutes;
  readonly second: Minutes;
  readonly least: Minutes;
  readonly most: Minutes;
}

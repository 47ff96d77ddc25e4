// What published quantity tables count on for one portion, to hold beside our own.

import table from '../../../data/published-portions.json' with { type: 'json' };
import type { FoodPart } from '../../larder/food.ts';
import { fromUnit } from '../../quantity/convert.ts';
import { type CubicMetres, type Grams, grams } from '../../quantity/unit.ts';
import type { Recipe } from '../recipe.ts';

export interface PublishedPortion {
  readonly key: string;
  /** What is weighed, and what the portion is, in the words of the trade. */
  readonly portion: string;
  readonly gramsEach: Grams;
  /** Undefined where the portion is counted in pieces. */
  readonly volume?: CubicMetres;
  readonly source: string;
  readonly grade: string;
}

type Row = (typeof table.rows)[number];

/** Every row of the tables, grams of one portion reckoned from pounds for 100. */
export const publishedPortions = (): readonly PublishedPortion[] => table.rows.map(portionFrom);

function portionFrom({ key, portion, poundsPer100, cups, source, grade }: Row): PublishedPortion {
  return {
    key,
    portion,
    gramsEach: grams(fromUnit(poundsPer100, 'pound') / 100), // armedForcesRecipes A-1
    ...(cups === 0 ? {} : { volume: fromUnit(cups, 'us-cup') }),
    source,
    grade,
  };
}

export interface PortionBeside extends PublishedPortion {
  /** The same parts of this recipe in one of its portions. */
  readonly ours: Grams;
}

/** The rows for this kind of dish, ours beside each; none where no table has it. */
export function publishedBeside(recipe: Recipe): readonly PortionBeside[] {
  return table.rows.flatMap((row) => {
    if (!row.kinds.includes(recipe.kind)) return [];
    const ours = partsOf(recipe, row.parts as readonly FoodPart[]) / recipe.portions;
    return 0 < ours && Number.isFinite(ours) ? [{ ...portionFrom(row), ours: grams(ours) }] : [];
  });
}

const partsOf = ({ ingredients }: Recipe, parts: readonly FoodPart[]) =>
  ingredients.reduce((sum, each) => sum + (parts.includes(each.part) ? each.grams : 0), 0);

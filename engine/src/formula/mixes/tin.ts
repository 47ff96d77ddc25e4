// The small tin: leavening, salt and sugar of a bread without its flour, so that flour is carried or
// bought plain and one spoon makes a bread of it.
// Sources: as scoop.ts and keeping.ts; how full a tin is shaken is judged.

import type { FoodPart } from '../../larder/food.ts';
import type { CookMeasure } from '../../quantity/cook-measure.ts';
import { type CubicMetres, cubicMetres, type Grams, grams } from '../../quantity/unit.ts';
import type { WeighedIngredient } from '../dough.ts';
import { type Keeping, tinKeeping } from './keeping.ts';
import { type Scoop, scoopOf } from './scoop.ts';

/** With its household measure, where it has one. */
export interface MeasuredIngredient extends WeighedIngredient {
  readonly measure?: CookMeasure;
}

export interface LeaveningTin {
  /** For one bake. */
  readonly contents: readonly WeighedIngredient[];
  readonly gramsEach: Grams;
  /** By the spoon for one bake; undefined where a part has no household measure. */
  readonly scoop?: Scoop;
  /** Flour that one bake takes, and whatever else is not in the tin. */
  readonly add: readonly MeasuredIngredient[];
  readonly tin: CubicMetres;
  /** Whole bakes that it holds. */
  readonly bakes: number;
  /** Carried when full. */
  readonly mass: Grams;
  readonly keeps: Keeping;
}

const IN_TIN: readonly FoodPart[] = ['powder', 'soda', 'salt', 'sugar'];
const isInTin = ({ ingredient: { name, part } }: WeighedIngredient) =>
  (IN_TIN.includes(part) && !/\b(honey|molasses|treacle|syrup|topping|fruit)\b/i.test(name)) ||
  /^cream of tartar$/i.test(name);

/** Room left over for shaking it well; judged. */
const FILL = 0.9;

/**
 * The tin of one bread; undefined for a bread that needs no powder or soda, or whose salts have no
 * household measure.
 *
 * @param lines  one bake, after any cut for height
 * @param tin    room in the tin          [m³]
 */
export function tinFor(
  lines: readonly WeighedIngredient[],
  tin: CubicMetres,
): LeaveningTin | undefined {
  const contents = lines.filter(isInTin);
  const raises = contents.some(({ ingredient }) => /powder|soda/.test(ingredient.part));
  const scoop = scoopOf(contents);
  if (!raises || scoop === undefined) return undefined;
  const gramsEach = grams(contents.reduce((sum, line) => sum + line.grams, 0));
  const bakes = Math.floor((tin * FILL) / scoop.room + 1e-9);
  return {
    contents,
    gramsEach,
    scoop,
    add: lines.filter((line) => !contents.includes(line)),
    tin: cubicMetres(tin),
    bakes,
    mass: grams(gramsEach * bakes),
    keeps: tinKeeping(),
  };
}

// One bread without a camp and without an oven: what goes into its bowl at this height, what raises
// it, and how it is carried dry. What `leaven`, `rise` and `mix` ask alike.
// Sources: as formula/ and formula/mixes/; the air and the height where nobody said them are ours.

import { doneTargetFor } from '../bake/index.ts';
import { boilingPointAt, pressureAtElevation } from '../camp/index.ts';
import {
  type DishLeavening,
  type DoughStands,
  dishLeavening,
  type Formula,
  formulaFor,
  type Keeping,
  keepingOf,
  type LeaveningTin,
  type MeasuredIngredient,
  type PowderKept,
  type Scoop,
  scoopOf,
  tinFor,
} from '../formula/index.ts';
import { asDish } from '../menu/fill-oven.ts';
import type { Recipe } from '../menu/recipe.ts';
import {
  type CubicMetres,
  cubicMetres,
  fromCelsius,
  type Kelvin,
  type Metres,
  metres,
} from '../quantity/unit.ts';
import { goesIntoBag } from './bags.ts';

/** Where nobody said it: mild air, the low ground that recipes are written for, a small tin. */
export const usualBread = {
  air: fromCelsius(18),
  elevation: metres(0),
  tin: cubicMetres(0.00025),
} as const;

export interface BreadWish {
  readonly recipe: Recipe;
  readonly air: Kelvin;
  readonly elevation: Metres;
  readonly powder?: PowderKept;
  readonly stands?: DoughStands;
}

export interface BreadAlone {
  readonly formula: Formula;
  readonly leavening: DishLeavening;
}

/** The recipe as it is written, once, in this air at this height; also where its crumb can't get so hot. */
export function breadAlone({ recipe, elevation, air: outside, ...more }: BreadWish): BreadAlone {
  const dish = asDish(recipe);
  const formula = formulaFor({ dish, recipe, factor: 1, elevation, air: outside });
  const leavening = dishLeavening({
    formula,
    recipe,
    elevation,
    serveAt: dish.serveAt,
    airAt: () => outside,
    ...more,
  });
  const air = { boiling: boilingPointAt(pressureAtElevation(elevation)) };
  const { notices } = doneTargetFor({ recipe, air });
  return { formula, leavening: { ...leavening, notices: [...leavening.notices, ...notices] } };
}

const RAISES: ReadonlySet<string> = new Set(['powder', 'soda', 'yeast']);

/** Whether anything in the bowl raises it. */
export const isRaised = ({ lines }: Pick<Formula, 'lines'>): boolean =>
  lines.some(({ ingredient }) => RAISES.has(ingredient.part));

export interface DryMix {
  /** One bag. */
  readonly contents: readonly MeasuredIngredient[];
  readonly add: readonly MeasuredIngredient[];
  readonly keeps: Keeping;
  readonly scoop?: Scoop;
  readonly tin?: LeaveningTin;
}

/** The same bread in bags, or as a tin without flour; undefined where it has no flour. */
export function dryMixOf(
  { lines }: Pick<Formula, 'lines'>,
  tinRoom: CubicMetres,
): DryMix | undefined {
  const contents = lines.filter(goesIntoBag);
  if (!contents.some(isGround)) return undefined; // salt and pepper alone are no mix
  const scoop = scoopOf(contents);
  const tin = tinFor(lines, tinRoom);
  return {
    contents,
    add: lines.filter((line) => !contents.includes(line)),
    keeps: keepingOf(contents.map((line) => line.ingredient)),
    ...(scoop === undefined ? {} : { scoop }),
    ...(tin === undefined ? {} : { tin }),
  };
}

const isGround = ({ ingredient: { part } }: MeasuredIngredient) =>
  part === 'flour' || part === 'meal';

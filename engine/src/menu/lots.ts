// What has to be laid into ovens: a dish's batch, as pots, as one round, or as so many pieces.

import { type Grams, grams } from '../quantity/unit.ts';
import { type Lie, lieOf } from './geometry.ts';
import { type InOven, inOvenOf } from './in-oven.ts';
import type { DishPortions } from './load.ts';
import type { MenuDish } from './menu.ts';
import { batchMass, scaledPieces } from './pieces.ts';
import type { Piece, Recipe } from './recipe.ts';

const BISCUIT_GRAMS = 54; // one 2 1/2 inch round, armedForcesRecipes D 001 00 (grade A)

/** One thing to be baked or cooked that may be shared over ovens. */
export interface Lot {
  readonly dish: MenuDish;
  readonly recipe: Recipe;
  readonly lie: Lie;
  readonly mass: Grams;
  readonly portions: number;
  /** 1 for a pot, a disc or one round. */
  readonly count: number;
  readonly inOven: InOven;
}

/** A dish's lots; several where its pieces differ (rolls and a round). */
export function lotsOf(dish: MenuDish, recipe: Recipe, portions: DishPortions): readonly Lot[] {
  const pieces = scaledPieces(recipe, dish, portions);
  if (0 < pieces.length) return pieces.map((piece) => lotOfPieces(dish, recipe, piece));
  const mass = batchMass(recipe, dish, portions);
  const lie = lieOf(recipe);
  const count = lie === 'pieces' ? Math.max(1, Math.round(mass / BISCUIT_GRAMS)) : 1;
  const inOven = inOvenOf(recipe, dish);
  return [{ dish, recipe, lie, mass, portions: portions.portions, count, inOven }];
}

function lotOfPieces(dish: MenuDish, recipe: Recipe, piece: Piece): Lot {
  const isSmall = piece.shape === 'roll' || piece.shape === 'biscuit';
  return {
    dish,
    recipe,
    lie: isSmall ? 'pieces' : 'round',
    mass: grams(piece.count * piece.gramsEach),
    portions: piece.count * piece.portionsEach,
    count: piece.count,
    inOven: inOvenOf(recipe, dish),
  };
}

/** A part of a lot; pieces stay whole, so the parts are named by count where there are pieces. */
export const partOfLot = (lot: Lot, part: number, count = lot.count): Lot => ({
  ...lot,
  mass: grams(lot.mass * part),
  portions: lot.portions * part,
  count,
});

// How much of a recipe a dish uses, and how the batch is divided.

import { type Grams, grams } from '../quantity/unit.ts';
import type { DishPortions } from './load.ts';
import type { MenuDish } from './menu.ts';
import type { Piece, Recipe } from './recipe.ts';

export const recipeMass = (recipe: Recipe): Grams =>
  grams(recipe.ingredients.reduce((sum, each) => sum + each.grams, 0));

/** The pieces of the recipe that this dish uses: all, unless the dish names some. */
export function dishPieces(recipe: Recipe, dish: MenuDish): readonly Piece[] {
  const wanted = dish.pieces;
  return wanted === undefined
    ? recipe.division
    : recipe.division.filter((piece) => wanted.includes(piece.shape));
}

/** Part of the recipe's dough that this dish uses, 0 … 1; by weight of its pieces. */
export function shareOfRecipe(recipe: Recipe, dish: MenuDish): number {
  const all = piecesMass(recipe.division);
  return all === 0 ? 1 : piecesMass(dishPieces(recipe, dish)) / all;
}

export const piecesMass = (pieces: readonly Piece[]) =>
  pieces.reduce((sum, piece) => sum + piece.count * piece.gramsEach, 0);

/** Ordinary portions that the dish's part of the recipe makes as written. */
export function writtenPortions(recipe: Recipe, dish: MenuDish): number {
  const pieces = dishPieces(recipe, dish);
  return dish.pieces === undefined || pieces.length === 0
    ? recipe.portions
    : pieces.reduce((sum, piece) => sum + piece.count * piece.portionsEach, 0);
}

/** The dish's whole batch: the recipe's mass, times its share of the dough, times the factor. */
export const batchMass = (recipe: Recipe, dish: MenuDish, portions: DishPortions): Grams =>
  grams(recipeMass(recipe) * shareOfRecipe(recipe, dish) * portions.factor);

/**
 * The dish's batch as whole pieces. All the dough is used: the number of pieces is rounded to the
 * nearest whole one and their weight follows. A single round stays one and grows; the ovens
 * decide whether it has to be cut.
 */
export function scaledPieces(recipe: Recipe, dish: MenuDish, portions: DishPortions) {
  const pieces = dishPieces(recipe, dish);
  const batch = batchMass(recipe, dish, portions);
  const written = piecesMass(pieces);
  return pieces.map((piece): Piece => {
    const part = (batch * piece.count * piece.gramsEach) / written;
    const count = piece.count === 1 ? 1 : Math.max(1, Math.round(piece.count * portions.factor));
    return {
      ...piece,
      count,
      gramsEach: grams(part / count),
      portionsEach: (piece.portionsEach * piece.count * portions.factor) / count,
    };
  });
}

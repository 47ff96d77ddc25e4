// How much of a recipe fills one oven at the thickness it is made for.
// Scaling from 8 to 16 inches keeps the thickness, so the baking time stays what it was.

import type { CampOven } from '../camp/camp.ts';
import { clockMinutes, type Grams, grams, ratio } from '../quantity/unit.ts';
import { discArea, floorOf, riseOf, workingMass } from './geometry.ts';
import { fitsIn, layIn, usualThickness } from './lay.ts';
import { type Lot, lotsOf, partOfLot } from './lots.ts';
import type { MenuDish } from './menu.ts';
import { recipeMass } from './pieces.ts';
import type { Recipe } from './recipe.ts';

/** A pot or loaf is not planned to the very brim. Judged. */
const COMFORTABLE_FILL = 0.9;
const MOST_PIECES = 100;

/**
 * Mass of the recipe that fills this oven: floor × thickness for doughs and batters, as many whole
 * pieces as lie flat, three quarters of the capacity for pots.
 */
export function massToFill(oven: CampOven, recipe: Recipe): Grams {
  const lot = wholeLot(recipe);
  if (lot === undefined) return recipeMass(recipe);
  if (lot.lie === 'pieces') return grams((mostIn(oven, lot) * lot.mass) / lot.count);
  if (lot.lie === 'pot') return grams(COMFORTABLE_FILL * workingMass(oven, recipe.kind));
  const thickness = recipe.target.thickness ?? usualThickness(recipe.kind);
  const { gramsPerCubicMetre } = riseOf(recipe.kind);
  const atThickness = discArea(floorOf(oven)) * thickness * gramsPerCubicMetre;
  return grams(Math.min(atThickness, comfortableMass(oven, lot, atThickness)));
}

/**
 * The most, up to a bound, that leaves a comfortable room under the lid; 30 halvings. What has
 * its thickness from the cook keeps it, so for that all room counts.
 */
function comfortableMass(oven: CampOven, lot: Lot, most: number): number {
  const full =
    lot.lie !== 'pieces' && lot.recipe.target.thickness !== undefined ? 1 : COMFORTABLE_FILL;
  let [fits, tooMuch] = [0, most];
  for (let halving = 0; halving < 30; halving++) {
    const mass = (fits + tooMuch) / 2;
    if (layIn(oven, partOfLot(lot, mass / lot.mass, 1)).fill <= full) fits = mass;
    else tooMuch = mass;
  }
  return fits;
}

/** Whole pieces that lie side by side under the lid; 1 even where that one does not go in. */
export function mostIn(oven: CampOven, lot: Lot): number {
  for (let count = MOST_PIECES; 1 < count; count--) {
    if (fitsIn(layIn(oven, partOfLot(lot, count / lot.count, count)))) return count;
  }
  return 1;
}

/** All of a recipe as it would be laid; undefined where it makes nothing. */
export const wholeLot = (recipe: Recipe): Lot | undefined =>
  lotsOf(asDish(recipe), recipe, WHOLE)[0];

/** A recipe as a dish of its own, asked about without a meal. */
export const asDish = (recipe: Recipe): MenuDish => ({
  id: recipe.id,
  name: recipe.name,
  recipe: recipe.id,
  serveAt: clockMinutes(0),
  freeFrom: false,
  pins: {},
});

const WHOLE = { dish: '', eaters: 1, portions: 1, reserve: 0, factor: ratio(1), notices: [] };

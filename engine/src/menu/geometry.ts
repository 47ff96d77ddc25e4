// The inside of an oven as food sees it: floor, depth, how much goes in.
// Legged ovens taper: the floor is about 0.84 of the nominal size (ovenSizing: a 12-inch oven has
// a floor of about 10 inches).

import riseTable from '../../data/rise.json' with { type: 'json' };
import type { CampOven } from '../camp/camp.ts';
import { cubicMetres, type Grams, grams, type Metres, metres } from '../quantity/unit.ts';
import type { Recipe, RecipeKind } from './recipe.ts';

const FLOOR_OF_NOMINAL = 0.84; // ovenSizing (grade B): 10/12, and a cone fitted to its quarts
export const WORKING_FILL = 0.75; // three quarters of capacity, potFill (grade B)
export const LEAST_HEADROOM_METRES = 0.012; // a finger; common practice, no source (10 … 15 mm)

/** Inside diameter of the floor; the owner's measurement wins. */
export const floorOf = (oven: CampOven): Metres =>
  oven.floorDiameter ?? metres(oven.diameter * FLOOR_OF_NOMINAL);

export const discArea = (diameterMetres: number) => (Math.PI / 4) * diameterMetres ** 2;

export interface RiseRow {
  readonly gramsPerCubicMetre: number;
  readonly rise: number;
  readonly profile: number;
  readonly busyMinutes: number;
}

/** Density, rise and shape of a kind of food, from data/rise.json. */
export function riseOf(kind: RecipeKind): RiseRow {
  const row = riseTable.rows.find((each) => each.kind === kind);
  if (row === undefined) throw new RangeError(`no rise row for ${kind}`);
  return { ...row, gramsPerCubicMetre: row.gramsPerCubicCentimetre * 1e6 };
}

/** How a batch lies in its oven. */
export type Lie = 'pieces' | 'round' | 'disc' | 'pot';

/** A pot is filled, a batter runs to the wall, a loaf stands as a round, rolls lie as pieces. */
export function lieOf(recipe: Recipe): Lie {
  switch (recipe.kind) {
    case 'corn-bread':
    case 'cobbler':
      return 'disc';
    case 'biscuit':
      return 'pieces';
    case 'yeast-bread':
    case 'quick-bread':
      return 'round';
    default:
      return 'pot';
  }
}

/** Mass that fills a pot to working fill. */
export const workingMass = (oven: CampOven, kind: RecipeKind): Grams =>
  grams(oven.capacity * WORKING_FILL * riseOf(kind).gramsPerCubicMetre);

export const volumeOf = (mass: Grams, kind: RecipeKind) =>
  cubicMetres(mass / riseOf(kind).gramsPerCubicMetre);

// How many does it feed? By volume and grams, never by the size on the lid: published figures for one
// 12-inch oven run from 5 to 14.
// Sources: armedForcesRecipes L-23 for a portion of stew; bread by common practice, no source.

import { fromUnit, inUnit } from '../../quantity/convert.ts';
import { type CubicMetres, cubicMetres, type Grams, grams } from '../../quantity/unit.ts';
import { riseOf } from '../geometry.ts';
import { kindOfFit } from './as-recipe.ts';
import type { OvenFit } from './fit.ts';

const STEW_CUPS = 1.25; // one portion, armedForcesRecipes L-23 (grade B)
const BREAD_GRAMS = 110; // dough for one, beside a dish; common practice, no source
const COBBLER_GRAMS = 180; // common practice, no source

/** Ordinary portions; rolls and biscuits are counted by the piece, two for one who eats. */
export function portionsIn(fit: OvenFit): number {
  if (fit.portions !== undefined) return fit.portions;
  switch (fit.what) {
    case 'pot':
    case 'dumplings':
      return stewPortions(fit);
    case 'rolls':
    case 'biscuits':
      return fit.pieces / 2;
    case 'wedges':
      return fit.pieces;
    case 'cobbler':
      return fit.mass / COBBLER_GRAMS;
    default:
      return fit.mass / BREAD_GRAMS;
  }
}

/** What one portion was taken to be: so much by volume, by weight, or so many pieces. */
export type PortionBasis =
  | { readonly by: 'volume'; readonly each: CubicMetres }
  | { readonly by: 'mass'; readonly each: Grams }
  | { readonly by: 'pieces'; readonly each: number };

export function portionBasis({ what }: Pick<OvenFit, 'what'>): PortionBasis {
  switch (what) {
    case 'pot':
    case 'dumplings':
      return { by: 'volume', each: fromUnit(STEW_CUPS, 'us-cup') };
    case 'rolls':
    case 'biscuits':
      return { by: 'pieces', each: 2 };
    case 'wedges':
      return { by: 'pieces', each: 1 };
    case 'cobbler':
      return { by: 'mass', each: grams(COBBLER_GRAMS) };
    default:
      return { by: 'mass', each: grams(BREAD_GRAMS) };
  }
}

function stewPortions({ layers, mass, what }: OvenFit): number {
  const stew = layers.find((layer) => layer.what === 'stew')?.mass ?? mass;
  const volume = cubicMetres(stew / riseOf(kindOfFit(what)).gramsPerCubicMetre);
  return inUnit(volume, 'us-cup') / STEW_CUPS;
}

// What a cook asks when it comes to room: this oven, this kind of food; how much goes in, and how?

import type { Grams, Metres, Ratio } from '../../quantity/unit.ts';
import type { InOvenWish } from '../in-oven.ts';
import type { Recipe } from '../recipe.ts';
import type { RecipeFit } from './recipe-fit.ts';

export const FIT_KINDS = [
  'round',
  'wedges',
  'biscuits',
  'rolls',
  'loaf',
  'tin-loaf',
  'batter',
  'pot',
  'dumplings',
  'cobbler',
] as const;

/**
 * 'round': a dough rolled out to the wall. 'wedges': the same, scored before it is baked. 'biscuits':
 * by a cutter. 'rolls': balls that grow together in rings. 'loaf': stands free. 'dumplings': on a
 * stew. 'cobbler': fruit under a topping.
 */
export type FitKind = (typeof FIT_KINDS)[number];

export interface FitAsk {
  readonly what: FitKind;
  /** A bread in place of the usual of this kind: its own thickness, its own pieces. */
  readonly recipe?: Recipe;
  /** As it is rolled out or poured; left out, what is usual. Not asked of rolls, loaves and pots. */
  readonly thickness?: Metres;
  /** Of the round that is cut; 2 1/2 inches where nobody says. */
  readonly cutter?: Metres;
  /** Of one roll or dumpling. */
  readonly pieceMass?: Grams;
  /** Into how many wedges a round is scored: 8 where nobody says. */
  readonly wedges?: number;
  readonly inOven?: InOvenWish;
}

/** A layer of a cobbler, or a stew and what floats on it; the lowest first. */
export interface FitLayer {
  readonly what: 'fruit' | 'topping' | 'stew' | 'dumplings';
  readonly mass: Grams;
  readonly height: Metres;
  readonly risenHeight: Metres;
}

/** So much of it in this oven: what was asked about, or the most that goes in. */
export interface OvenFit extends RecipeFit {
  readonly what: FitKind;
  readonly gramsEach: Grams;
  /** What is rolled out, rolled to this; what is poured, poured so deep. */
  readonly rolledTo?: Metres;
  /** Raw depth over the depth of the oven; a batter is poured no higher than two thirds. */
  readonly fullness: Ratio;
  readonly layers: readonly FitLayer[];
  /** It is so much as was asked about, not the most that goes in. */
  readonly isPart: boolean;
  /** What it was reckoned with: density raw over water, risen volume over raw. */
  readonly reckoned: { readonly heaviness: Ratio; readonly rise: Ratio };
  /** Of a recipe, as it counts them; left out, by weight and pieces. */
  readonly portions?: number;
}

// Into how many pieces is this bread cut, and how? By the portions that lie in the oven.
// Source: plane geometry; what is cut and what is broken by hand is common practice, no source.

import type { OvenLoad } from '../../menu/load.ts';
import type { MenuDish } from '../../menu/menu.ts';
import { dishPieces } from '../../menu/pieces.ts';
import type { Piece, Recipe } from '../../menu/recipe.ts';
import { type EvenCuts, evenRoundCuts, evenSquares } from './even-cuts.ts';

const MOST_PIECES = 60;

/** Undefined for rolls and biscuits, which are broken apart, and for a bread for one. */
export function cutsFor(asked: {
  readonly recipe: Recipe;
  readonly dish: MenuDish;
  readonly load: OvenLoad;
}): EvenCuts | undefined {
  const { recipe, dish, load } = asked;
  if (load.shape !== 'disc') return undefined;
  const written = dishPieces(recipe, dish).find(isCut);
  const pieces =
    written === undefined ? wholeNumber(load.portions) : Math.round(written.portionsEach);
  if (pieces < 2 || MOST_PIECES < pieces) return undefined;
  if (
    written?.shape === 'loaf' ||
    (written === undefined && standsTall(recipe)) ||
    isLongTin(recipe, load)
  )
    return longCuts(pieces, recipe, load);
  return evenRoundCuts(pieces);
}

/** A yeast loaf that nobody rolled out flat is sliced; wedges of it would all be crumb and tip. */
const standsTall = ({ kind, target }: Recipe): boolean =>
  kind === 'yeast-bread' && target.thickness === undefined;

const isCut = ({ portionsEach, shape }: Piece) =>
  Math.round(portionsEach) > 1 && (shape === 'round' || shape === 'loaf');

/** Nobody gets less than a portion for a rounding: down to the nearest whole piece. */
const wholeNumber = (portions: number) => Math.max(1, Math.round(portions));

/** A loaf's usual tin is long, a batter's round. */
function isLongTin({ kind }: Recipe, { inOven }: OvenLoad): boolean {
  if (inOven?.contact !== 'tin') return false;
  return inOven.tin === undefined ? kind === 'yeast-bread' : inOven.tin.isRound !== true;
}

function longCuts(pieces: number, { kind }: Recipe, { inOven }: OvenLoad): EvenCuts {
  const tin = inOven?.tin;
  return kind === 'corn-bread' && tin !== undefined
    ? evenSquares(pieces, tin)
    : { way: 'slices', pieces };
}

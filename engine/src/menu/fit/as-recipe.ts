// A question about room, as the recipe that menu/ lays everywhere else: one way to lie for both.
// Sources: 54 g and 2 1/2 inches by armedForcesRecipes D 001 00; a roll's dough from memory.

import { fromUnit } from '../../quantity/convert.ts';
import { type Grams, grams, type Metres, metres, minutes } from '../../quantity/unit.ts';
import { discArea, riseOf } from '../geometry.ts';
import { inOvenOf } from '../in-oven.ts';
import { usualThickness } from '../lay.ts';
import { piecesMass, recipeMass } from '../pieces.ts';
import type { Piece, Recipe, RecipeKind } from '../recipe.ts';
import type { FitAsk, FitKind } from './fit.ts';

const KIND: Readonly<Record<FitKind, RecipeKind>> = {
  round: 'quick-bread',
  wedges: 'biscuit',
  biscuits: 'biscuit',
  rolls: 'yeast-bread',
  loaf: 'yeast-bread',
  'tin-loaf': 'yeast-bread',
  batter: 'corn-bread',
  pot: 'stew',
  dumplings: 'stew',
  cobbler: 'cobbler',
};

const CUTTER_INCHES = 2.5; // armedForcesRecipes D 001 00 (grade A)
const ROLL_GRAMS = 60; // two ounces of dough; from memory, no source
const USUAL_WEDGES = 8;

/**
 * A dough draws together when it is cut and lies thicker than it was rolled.
 *
 * Tuned on one number: 54.2 g in a 2 1/2 inch round "rolled to half an inch" (armedForcesRecipes
 * D 001 00), where half an inch of such a dough would weigh 44.2 g. It buys that grams and cutters of
 * the cards agree; the second card (D-001, 53.7 g) is not used for it.
 */
const DRAWS_TOGETHER = 1.226;
const ROLLED: readonly FitKind[] = ['round', 'wedges', 'biscuits'];

/** How much thicker this lies than it was rolled out. */
export const drawsTogether = ({ what }: FitAsk): number =>
  ROLLED.includes(what) ? DRAWS_TOGETHER : 1;

/** How thick a kind of dough lies that was rolled out so; what is poured or proofs lies as it is told. */
export const liesAt = (kind: RecipeKind, rolled: Metres): Metres =>
  metres(rolled * (ROLLED.some((what) => KIND[what] === kind) ? DRAWS_TOGETHER : 1));

export const kindOfFit = (what: FitKind): RecipeKind => KIND[what];

export const kindOfAsk = ({ what, recipe }: FitAsk): RecipeKind => recipe?.kind ?? KIND[what];

/** A recipe as a question about room: it lies as its kind and its pieces have it. */
export const askAbout = (recipe: Recipe): FitAsk => ({ what: whatIs(recipe), recipe });

function whatIs(recipe: Recipe): FitKind {
  const isSmall = recipe.division[0] !== undefined && isSmallPiece(recipe.division[0]);
  switch (recipe.kind) {
    case 'yeast-bread':
      if (isSmall) return 'rolls';
      return inOvenOf(recipe).contact === 'tin' ? 'tin-loaf' : 'loaf';
    case 'quick-bread':
      return isSmall ? 'biscuits' : 'round';
    case 'biscuit':
      return isSmall || recipe.division.length === 0 ? 'biscuits' : 'round';
    case 'corn-bread':
      return 'batter';
    case 'cobbler':
      return 'cobbler';
    default:
      return 'pot';
  }
}

/** All of its dough is in its pieces. */
function ownPieceGrams(recipe: Recipe): Grams | undefined {
  const [piece] = recipe.division;
  if (piece === undefined || !isSmallPiece(piece)) return undefined;
  return grams((recipeMass(recipe) * piece.gramsEach) / piecesMass(recipe.division));
}

const isSmallPiece = ({ shape }: Piece) => shape === 'roll' || shape === 'biscuit';

/** As it is rolled out or poured: half an inch for what is cut, more for what stands by itself. */
export function thicknessOf(ask: FitAsk): Metres {
  const { what, thickness, recipe } = ask;
  if (thickness !== undefined) return thickness;
  if (recipe !== undefined) {
    const lies = recipe.target.thickness ?? usualThickness(recipe.kind);
    return metres(lies / drawsTogether(ask));
  }
  if (what === 'round' || what === 'biscuits') return metres(fromUnit(0.5, 'inch'));
  return metres(what === 'wedges' ? fromUnit(0.75, 'inch') : 0.03); // common practice, no source
}

/** As it lies in the oven. */
export const lyingThickness = (ask: FitAsk): Metres =>
  metres(thicknessOf(ask) * drawsTogether(ask));

/** Grams of one piece: a cut round by its size, a roll by what is usual, a wedge not yet. */
export function pieceGrams(ask: FitAsk): Grams | undefined {
  const own = ask.recipe === undefined ? undefined : ownPieceGrams(ask.recipe);
  if (own !== undefined) return own;
  if (ask.what === 'rolls') return ask.pieceMass ?? grams(ROLL_GRAMS);
  if (ask.what !== 'biscuits') return undefined;
  const { gramsPerCubicMetre } = riseOf(KIND.biscuits);
  return grams(
    discArea(ask.cutter ?? fromUnit(CUTTER_INCHES, 'inch')) *
      lyingThickness(ask) *
      gramsPerCubicMetre,
  );
}

export const wedgesOf = ({ wedges }: FitAsk): number =>
  Math.max(1, Math.round(wedges ?? USUAL_WEDGES));

const ANY_GRAMS = 1000;
const ANY_COUNT = 10;

/** A kilogram, or ten pieces, of what is asked about. */
export function recipeToFit(ask: FitAsk): Recipe {
  return ask.recipe === undefined ? usualToFit(ask) : ownToFit(ask.recipe, ask);
}

function ownToFit(recipe: Recipe, { thickness, inOven }: FitAsk): Recipe {
  const lies = thickness === undefined ? undefined : liesAt(recipe.kind, thickness);
  return {
    ...recipe,
    target: { ...recipe.target, ...(lies === undefined ? {} : { thickness: lies }) },
    inOven: { ...recipe.inOven, ...inOven },
  };
}

/** Portions in so much of a recipe. */
export const portionsOf = (recipe: Recipe, mass: Grams): number =>
  (recipe.portions * mass) / recipeMass(recipe);

function usualToFit(ask: FitAsk): Recipe {
  const each = pieceGrams(ask);
  const mass = each === undefined ? ANY_GRAMS : each * ANY_COUNT;
  const name = ask.what;
  const isThick = ['round', 'wedges', 'biscuits', 'batter'].includes(ask.what);
  return {
    id: name,
    name,
    kind: KIND[ask.what],
    method: ask.what === 'pot' || ask.what === 'dumplings' ? 'simmer' : 'bake',
    portions: ANY_COUNT,
    ingredients: [
      { name, grams: grams(mass), asWritten: '', part: 'other', allergens: [], checkLabel: [] },
    ],
    steps: [],
    target: {
      canWait: minutes(0),
      rest: minutes(0),
      isCold: false,
      ...(isThick ? { thickness: lyingThickness(ask) } : {}),
    },
    division: divisionOf(ask, each),
    contains: [],
    inOven: { ...ask.inOven, ...(ask.what === 'tin-loaf' ? { contact: 'tin' as const } : {}) },
  };
}

function divisionOf({ what }: FitAsk, each: Grams | undefined): readonly Piece[] {
  if (each !== undefined) {
    const shape = what === 'rolls' ? 'roll' : 'biscuit';
    return [{ shape, count: ANY_COUNT, gramsEach: each, portionsEach: 1 }];
  }
  return what === 'wedges'
    ? [{ shape: 'round', count: 1, gramsEach: grams(ANY_GRAMS), portionsEach: ANY_COUNT }]
    : [];
}

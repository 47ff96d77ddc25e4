// What menu/ offers, in the order of the job.

// What a menu is
export { menuCodes } from './codes.ts';
// What goes into an oven
export { askAbout } from './fit/as-recipe.ts';
export { type PortionBasis, portionBasis, portionsIn } from './fit/feeds.ts';
export {
  FIT_KINDS,
  type FitAsk,
  type FitKind,
  type FitLayer,
  type OvenFit,
} from './fit/fit.ts';
export { type Filled, filledBy } from './fit/recipe-fit.ts';
export { type SizeFit, sizesFor } from './fit/sizes.ts';
export {
  type BatchPart,
  type LeftOver,
  type SpreadBatch,
  spreadBatch,
} from './fit/spread-batch.ts';
export { howItLies, whatFits } from './fit/what-fits.ts';
// Which oven
export { floorOf, WORKING_FILL } from './geometry.ts';
// What lies between dough and iron
export {
  type ContactFigures,
  contactFigures,
  FLOOR_CONTACTS,
  type FloorContact,
  type InOven,
  type InOvenWish,
  inOvenOf,
  type Sticking,
  type Tin,
} from './in-oven.ts';
export type * from './load.ts';
export type * from './menu.ts';
// How much
export {
  type AppetiteRow,
  appetiteFactor,
  appetiteRows,
  hungerOf,
  type Latecomers,
  latecomersIn,
  mouthsIn,
} from './mouths/appetites.ts';
export {
  boiledVolume,
  type CookYield,
  cookYieldOf,
  rawByGuide,
  rawForCooked,
} from './mouths/cooked.ts';
export {
  type PortionBeside,
  type PublishedPortion,
  publishedBeside,
} from './mouths/published.ts';
export {
  inCups,
  portionVolume,
  type ServedWith,
  servedWith,
} from './mouths/serving-tools.ts';
// Is it a menu that can be cooked, and who can eat what
export { allergensIn, foodOf, labelsToCheck, type Unfit, unfitFor } from './needs.ts';
export { isKnownSize, nominalOven } from './nominal-oven.ts';
export { type PieceSize, piecesThatFit, placePieces } from './packing.ts';
export { batchMass, dishPieces, recipeMass, shareOfRecipe, writtenPortions } from './pieces.ts';
export { portionsFor } from './portions.ts';
// A recipe pasted as text
export {
  MOST_TEXT,
  type RecipeCorrections,
  type RecipeReadOptions,
  type RecipeText,
  readRecipeText,
} from './read-recipe.ts';
// The first door
export { readyRecipes, readyRecipeWithId } from './ready-recipes.ts';
export type * from './recipe.ts';
export { type DishToLay, type OvenShares, otherShares, shareOvens } from './share.ts';
export type { HeatRead, MinutesRead, SizeRead, YieldRead } from './text-facts.ts';
export type { GramsFrom, IngredientRead } from './text-ingredients.ts';
export type { KindGuess, KindReason } from './text-kind.ts';
export type { LineRole, TextPiece } from './text-lines.ts';
export { campForTonight } from './tonight.ts';
export type { Assumption, Tonight, TonightAnswers } from './tonight-answers.ts';
export { type MenuTrouble, menuTrouble } from './trouble.ts';

// What formula/ offers, in the order of the job.

// The bench: what it is as a dough, beside published ones, beside another version
export {
  type Balance,
  type BalancedFigure,
  balanceOf,
  type Remedy,
} from './bench/balance.ts';
export {
  characterOf,
  type DoughCharacter,
  type DoughFigure,
  type FigureName,
  figureNames,
} from './bench/character.ts';
export {
  type Comparison,
  compareVersions,
  type Difference,
  type Version,
} from './bench/compare.ts';
export { lineOf, withGrams } from './bench/line.ts';
export { measureOf, writtenGrams } from './bench/own-measure.ts';
export {
  type DishWithoutDough,
  dishWithoutDough,
  type PortionFigures,
  portionFigures,
} from './bench/portion.ts';
export { formulaCodes } from './codes.ts';
export { handlingFor, percentagesOf, type WeighedIngredient } from './dough.ts';
// Gas
export { doughTrouble } from './dough-trouble.ts';
export type * from './formula.ts';
export {
  gasOfPowder,
  gasOfSoda,
  gasOfSodaHeated,
  gasVolume,
  POWDER_GAS_SHARE,
  sodaNeutralised,
} from './gas.ts';
// Height
export { isTrimmed, leaveningCutAt } from './height.ts';
// Height, told from many tables
export {
  type HeightAdvice,
  type HeightCompared,
  heightCompared,
  quickBreadAdvice,
} from './height-advice.ts';
// What raises a dish
export {
  type DishLeavening,
  type DoughStands,
  dishLeavening,
  type LeaveningWish,
  stoppedValues,
} from './leaven/dish-leavening.ts';
export { type FizzTest, fizzStrength, fizzTests, insteadOfPowder } from './leaven/fizz.ts';
export { type GasReport, type GasWish, gasReport, sodaTakenByGram } from './leaven/gas-report.ts';
export { type PowderKept, powderNotices } from './leaven/powder-notices.ts';
// Leavening tables
export {
  type LeaveningAcid,
  leaveningAcid,
  leaveningAcids,
  type PowderStrength,
  powderStrength,
  type SourFood,
  sodaPerGram,
  sourFood,
} from './leaven/table.ts';
// Dry mixes and tins
export { type Keeping, keepingOf, tinKeeping } from './mixes/keeping.ts';
export { type Scoop, scoopOf } from './mixes/scoop.ts';
export { type LeaveningTin, type MeasuredIngredient, tinFor } from './mixes/tin.ts';
// Rise
export { doughTemperature, MIXED_DOUGH, riseFor } from './rise.ts';
// The batch
export { type FormulaWish, formulaFor } from './scale.ts';
// Swaps
export { type SwapFamily, type SwapOffer, swapName, swapsFor } from './swap/offers.ts';
export { type SwapAnswer, type SwapChange, type SwapWish, swapped } from './swap/swap.ts';
// Targets
export { type RoundedFormula, roundedFormula } from './target/round.ts';
export { solveTargets, type TargetAnswer, type TargetRefusal } from './target/solve.ts';
export type { FormulaTargets, HeldLine } from './target/wish.ts';
// Water for the dough
export {
  type DoughHeat,
  type DoughWater,
  doughTemperatureFrom,
  doughWater,
  handFriction,
  iceFor,
  ruleOfThree,
  waterTemperatureFor,
} from './water-temperature.ts';
export { type DoughAt, type PlaceAt, placeFrom, type Stay, steadily } from './yeast/history.ts';
export {
  asleepCelsius,
  bakersYeastRate,
  type Leaven,
  lactobacilliRate,
  leavenRate,
  wildYeastRate,
} from './yeast/rate.ts';
export { type RiseOption, type RisePlan, type RiseWish, risePlan } from './yeast/rise-plan.ts';
export {
  type Feed,
  ripeAfter,
  type StarterDay,
  type StarterFeed,
  starterDays,
  starterFeed,
} from './yeast/starter.ts';
export { isStarter, type LeavenFound, leavenIn } from './yeast/work.ts';

// What formula/ offers, in the order of the job.

export { formulaCodes } from './codes.ts';
export { handlingFor, percentagesOf, type WeighedIngredient } from './dough.ts';
export type * from './formula.ts';
// Gas
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
// Rise
export { doughTemperature, riseFor } from './rise.ts';
// The batch
export { type FormulaWish, formulaFor } from './scale.ts';
// Water for the dough
export {
  type DoughHeat,
  doughTemperatureFrom,
  handFriction,
  ruleOfThree,
  waterTemperatureFor,
} from './water-temperature.ts';

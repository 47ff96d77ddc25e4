// What quantity/ offers: units as types, exact conversions, and the way people write amounts.

// Conversions, exact
export { type ExactUnit, fromUnit, inUnit, type SiOf, type UnitName, units } from './convert.ts';
// As people say it
export {
  type CookMeasure,
  cookMeasureFor,
  cookMeasureText,
  type GramsPerMeasure,
} from './cook-measure.ts';
export { fractionSigns, fractionText } from './fraction.ts';
// As people write it
export {
  type Amount,
  type AmountUnit,
  isUnread,
  type LengthRead,
  readAmount,
  readLength,
  readNumber,
  readTemperature,
  sizeOfUnit,
  type TemperatureRead,
  type UnitSize,
  type Unread,
} from './read.ts';
// Which number is this?
export * from './unit.ts';
export {
  type AmountTerm,
  amountAt,
  type Fullness,
  fullness,
  type PieceSize as WrittenPieceSize,
  type Span,
  type WrittenAmount,
} from './written-amount.ts';
export { matchAt, numberAt, type WrittenNumber } from './written-number.ts';
export {
  type Manner,
  otherSize,
  sizeOfWritten,
  unitAt,
  type WrittenSize,
  type WrittenUnit,
} from './written-unit.ts';

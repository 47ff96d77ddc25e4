// How much of the SI unit is one of each unit that cooks write? Exactly, as ratios of integers.
// Sources: nist-hb44, nist-sp811, si-brochure. Readings of temperature are in unit.ts, because a
// reading has a zero and a difference has none; here is only the difference.

import type {
  CubicMetres,
  Grams,
  Joules,
  KelvinDifference,
  Metres,
  MetresPerSecond,
  Pascals,
  Seconds,
} from './unit.ts';

declare const si: unique symbol;

/** An exact size in the engine's unit: numerator over denominator. */
export interface ExactUnit<Si extends number> {
  readonly numerator: number;
  readonly denominator: number;
  readonly [si]?: Si;
}

const exactly = <Si extends number>(numerator: number, denominator: number): ExactUnit<Si> => ({
  numerator,
  denominator,
});

export const units = {
  // mass [g]: the pound of 1959 is 453.592 37 g, nist-hb44 app. C
  gram: exactly<Grams>(1, 1),
  kilogram: exactly<Grams>(1000, 1),
  milligram: exactly<Grams>(1, 1000),
  pound: exactly<Grams>(45_359_237, 100_000),
  ounce: exactly<Grams>(45_359_237, 1_600_000),

  // volume [m³]: the US gallon is 231 cubic inches, nist-hb44 app. C; 16 cups to it, nist-sp430
  litre: exactly<CubicMetres>(1, 1000),
  decilitre: exactly<CubicMetres>(1, 10_000),
  millilitre: exactly<CubicMetres>(1, 1_000_000),
  'us-gallon': exactly<CubicMetres>(473_176_473, 125_000_000_000),
  'us-quart': exactly<CubicMetres>(473_176_473, 500_000_000_000),
  'us-pint': exactly<CubicMetres>(473_176_473, 1_000_000_000_000),
  'us-cup': exactly<CubicMetres>(473_176_473, 2_000_000_000_000),
  'us-fluid-ounce': exactly<CubicMetres>(473_176_473, 16_000_000_000_000),
  'us-tablespoon': exactly<CubicMetres>(473_176_473, 32_000_000_000_000),
  'us-teaspoon': exactly<CubicMetres>(157_725_491, 32_000_000_000_000),
  // volume [m³]: the imperial gallon is 4.546 09 litres, 8 pints of 20 fluid ounces, nist-sp811 app. B
  'imperial-gallon': exactly<CubicMetres>(454_609, 100_000_000),
  'imperial-quart': exactly<CubicMetres>(454_609, 400_000_000),
  'imperial-pint': exactly<CubicMetres>(454_609, 800_000_000),
  'imperial-fluid-ounce': exactly<CubicMetres>(454_609, 16_000_000_000),

  // length [m]: the inch of 1959 is 25.4 mm, nist-hb44 app. C
  metre: exactly<Metres>(1, 1),
  centimetre: exactly<Metres>(1, 100),
  millimetre: exactly<Metres>(1, 1000),
  inch: exactly<Metres>(127, 5000),
  foot: exactly<Metres>(381, 1250),
  mile: exactly<Metres>(201_168, 125),

  // speed [m/s]
  'mile-per-hour': exactly<MetresPerSecond>(1397, 3125),
  'kilometre-per-hour': exactly<MetresPerSecond>(5, 18),
  knot: exactly<MetresPerSecond>(463, 900),

  // temperature, a difference only [K]
  'fahrenheit-difference': exactly<KelvinDifference>(5, 9),
  'celsius-difference': exactly<KelvinDifference>(1, 1),

  // energy [J]: Btu of the International Table, kilocalorie of food tables, nist-sp811 app. B
  btu: exactly<Joules>(105_505_585_262, 100_000_000),
  kilocalorie: exactly<Joules>(4184, 1),

  // pressure [Pa]: pound-force by standard gravity; mercury of 13 595.1 kg/m³, nist-sp811 app. B
  psi: exactly<Pascals>(8_896_443_230_521, 1_290_320_000),
  'inch-of-mercury': exactly<Pascals>(3_386_388_640_341, 1_000_000_000),
  hectopascal: exactly<Pascals>(100, 1),

  // time [s]
  hour: exactly<Seconds>(3600, 1),
  minute: exactly<Seconds>(60, 1),
} as const;

export type UnitName = keyof typeof units;
export type SiOf<Name extends UnitName> =
  (typeof units)[Name] extends ExactUnit<infer Si> ? Si : never;

/**
 * An amount in a cook's unit, in the engine's unit.
 *
 * @source    nist-hb44 appendix C; nist-sp811 appendix B.8 (exact by definition)
 * @example   fromUnit(1, 'us-cup') → 0.000 236 588 236 5 m³
 */
export function fromUnit<Name extends UnitName>(amount: number, name: Name): SiOf<Name> {
  const { numerator, denominator } = units[name];
  return ((amount * numerator) / denominator) as SiOf<Name>;
}

/** The other way: a quantity of the engine in a cook's unit. */
export function inUnit<Name extends UnitName>(quantity: SiOf<Name>, name: Name): number {
  const { numerator, denominator } = units[name];
  return (quantity * denominator) / numerator;
}

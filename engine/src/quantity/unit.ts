// Which number is this? Every quantity on a public signature carries its SI unit as a type.
// There is no unit mode: inside the engine all is SI, conversion happens at the edge.

declare const unit: unique symbol;

/** A number that is known to be in one unit. Two brands never mix by accident. */
export type Unit<Name extends string> = number & { readonly [unit]: Name };

/** Thermodynamic temperature [K]. A reading, never a difference. */
export type Kelvin = Unit<'kelvin'>;
/** A difference of two temperatures [K]. Never a reading. */
export type KelvinDifference = Unit<'kelvin difference'>;
export type Grams = Unit<'gram'>;
export type Metres = Unit<'metre'>;
export type SquareMetres = Unit<'square metre'>;
export type CubicMetres = Unit<'cubic metre'>;
/** Physical time [s]. */
export type Seconds = Unit<'second'>;
/** Length of work or waiting on the day sheet [min]. */
export type Minutes = Unit<'minute'>;
/** Minutes since 00:00 of the camp's own date, on the camp's own clock; may be negative or past 1440. */
export type ClockMinutes = Unit<'clock minute'>;
export type Watts = Unit<'watt'>;
export type Joules = Unit<'joule'>;
export type JoulesPerKelvin = Unit<'joule per kelvin'>;
export type Pascals = Unit<'pascal'>;
export type MetresPerSecond = Unit<'metre per second'>;
/** A plain fraction, 1 = all of it. */
export type Ratio = Unit<'ratio'>;
/** Compass direction [degrees], 0 = north, 90 = east, clockwise seen from above. */
export type Degrees = Unit<'degree'>;

export const kelvin = (value: number) => value as Kelvin;
export const kelvinDifference = (value: number) => value as KelvinDifference;
export const grams = (value: number) => value as Grams;
export const metres = (value: number) => value as Metres;
export const squareMetres = (value: number) => value as SquareMetres;
export const cubicMetres = (value: number) => value as CubicMetres;
export const seconds = (value: number) => value as Seconds;
export const minutes = (value: number) => value as Minutes;
export const clockMinutes = (value: number) => value as ClockMinutes;
export const watts = (value: number) => value as Watts;
export const joules = (value: number) => value as Joules;
export const joulesPerKelvin = (value: number) => value as JoulesPerKelvin;
export const pascals = (value: number) => value as Pascals;
export const metresPerSecond = (value: number) => value as MetresPerSecond;
export const ratio = (value: number) => value as Ratio;
export const degrees = (value: number) => value as Degrees;

const ZERO_CELSIUS_KELVIN = 273.15; // exact, SI brochure (BIPM, 9th ed.) 2.3.1

export const fromCelsius = (celsius: number) => kelvin(celsius + ZERO_CELSIUS_KELVIN);
export const toCelsius = (temperature: Kelvin) => temperature - ZERO_CELSIUS_KELVIN;
export const fromFahrenheit = (fahrenheit: number) => fromCelsius((fahrenheit - 32) / 1.8);
export const toFahrenheit = (temperature: Kelvin) => toCelsius(temperature) * 1.8 + 32;

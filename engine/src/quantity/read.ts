// What did the cook mean by "1 1/2 cups", "3/4-1 cup", "350 F" or "12 inch"?
// Units are read by the names people use in the United States and by SI symbols; a cup is the US
// customary cup (nist-sp430). Weakness: no words for numbers ("half a cup").

import { fromUnit } from './convert.ts';
import { fractionSigns } from './fraction.ts';
import {
  type CubicMetres,
  fromCelsius,
  fromFahrenheit,
  type Grams,
  type Kelvin,
  kelvin,
  type Metres,
} from './unit.ts';

export type AmountUnit =
  | 'g'
  | 'kg'
  | 'mg'
  | 'oz'
  | 'lb'
  | 'ml'
  | 'dl'
  | 'l'
  | 'tsp'
  | 'tbsp'
  | 'fl-oz'
  | 'cup'
  | 'pint'
  | 'quart'
  | 'gallon'
  | 'each';

export interface Amount {
  readonly low: number;
  /** Equal to `low` where no range was written. */
  readonly high: number;
  readonly unit: AmountUnit;
  /** What stood behind number and unit: `medium`, `bread flour`. */
  readonly rest: string;
}

/** Could not be read; nothing is guessed. (quantity/ knows no notices: the reader makes one.) */
export interface Unread {
  readonly unread: true;
  readonly why:
    | 'no-number'
    | 'not-a-fraction'
    | 'range-runs-down'
    | 'no-unit'
    | 'unknown-unit'
    | 'too-long';
  readonly text: string;
}

export const isUnread = <Value extends object>(outcome: Value | Unread): outcome is Unread =>
  'unread' in outcome;

/**
 * An amount as people write it: whole, decimal or fraction, alone or as a range, with its unit.
 *
 * @returns   numbers and unit; a bare number counts pieces (`2 medium` is two)
 * @example   '3/4-1 cup' → { low: 0.75, high: 1, unit: 'cup' }
 */
export function readAmount(text: string): Amount | Unread {
  const numbers = readNumbers(text);
  if (isUnread(numbers)) return numbers;
  const { low, high, rest } = numbers;
  for (const [pattern, unit] of AMOUNT_UNITS) {
    const found = pattern.exec(rest);
    if (found) return { low, high, unit, rest: rest.slice(found[0].length).trim() };
  }
  return {
    low,
    high,
    unit: 'each',
    rest: rest.replace(/^(each|pieces?|pcs?\.?)(?!\p{L})/iu, '').trim(),
  };
}

/** What one of a written unit is: grams of mass, cubic metres of volume, or pieces. */
export type UnitSize =
  | { readonly kind: 'mass'; readonly each: Grams }
  | { readonly kind: 'volume'; readonly each: CubicMetres }
  | { readonly kind: 'count' };

export function sizeOfUnit(unit: AmountUnit): UnitSize {
  if (unit === 'each') return { kind: 'count' };
  if (unit in MASS_NAMES) {
    return { kind: 'mass', each: fromUnit(1, MASS_NAMES[unit as keyof typeof MASS_NAMES]) };
  }
  const name = VOLUME_NAMES[unit as keyof typeof VOLUME_NAMES];
  return { kind: 'volume', each: fromUnit(1, name) };
}

const MASS_NAMES = {
  g: 'gram',
  kg: 'kilogram',
  mg: 'milligram',
  oz: 'ounce',
  lb: 'pound',
} as const;

const VOLUME_NAMES = {
  ml: 'millilitre',
  dl: 'decilitre',
  l: 'litre',
  tsp: 'us-teaspoon',
  tbsp: 'us-tablespoon',
  'fl-oz': 'us-fluid-ounce',
  cup: 'us-cup',
  pint: 'us-pint',
  quart: 'us-quart',
  gallon: 'us-gallon',
} as const;

export interface TemperatureRead {
  readonly low: Kelvin;
  readonly high: Kelvin;
}

/** A reading, `350 F`, `180 °C`, `325-350 °F`. A number without a unit is not guessed. */
export function readTemperature(text: string): TemperatureRead | Unread {
  const numbers = readNumbers(text.replace(/^\s*[-−]\s*(?=[\d.])/, MINUS), true);
  if (isUnread(numbers)) return numbers;
  const scale = /^(?:°|º|degrees?|deg\.?)?\s*(f|fahrenheit|c|celsius|centigrade|k|kelvin)\s*$/iu;
  const letter = scale.exec(numbers.rest)?.[1]?.charAt(0).toLowerCase();
  if (letter === undefined) return unread(text, numbers.rest === '' ? 'no-unit' : 'unknown-unit');
  const toKelvin = { f: fromFahrenheit, c: fromCelsius, k: kelvin }[letter as 'f' | 'c' | 'k'];
  return { low: toKelvin(numbers.low), high: toKelvin(numbers.high) };
}

export interface LengthRead {
  readonly low: Metres;
  readonly high: Metres;
}

/** A length, `12 inch`, `12"`, `25 mm`, `1 1/2 in`. A number without a unit is not guessed. */
export function readLength(text: string): LengthRead | Unread {
  const numbers = readNumbers(text);
  if (isUnread(numbers)) return numbers;
  const found = LENGTH_UNITS.find(([pattern]) => pattern.test(numbers.rest));
  if (!found) return unread(text, numbers.rest === '' ? 'no-unit' : 'unknown-unit');
  return { low: fromUnit(numbers.low, found[1]), high: fromUnit(numbers.high, found[1]) };
}

// --- Units by the names people use --------------------------------------------------------------

/** Longest names first; a unit must not run on into a word. A big T is a tablespoon. */
const AMOUNT_UNITS: readonly (readonly [RegExp, AmountUnit])[] = [
  [/^(?:fl\.?\s*oz\.?|fluid[\s-]+ounces?)(?!\p{L})/iu, 'fl-oz'],
  [/^(?:tbsps?\.?|tbs\.?|tablespoon(?:s|fuls?)?)(?!\p{L})/iu, 'tbsp'],
  [/^(?:tsps?\.?|teaspoon(?:s|fuls?)?)(?!\p{L})/iu, 'tsp'],
  [/^T\.?(?!\p{L})/u, 'tbsp'],
  [/^t\.?(?!\p{L})/u, 'tsp'],
  [/^(?:cups?|c\.?)(?!\p{L})/iu, 'cup'],
  [/^(?:pints?|pts?\.?)(?!\p{L})/iu, 'pint'],
  [/^(?:quarts?|qts?\.?)(?!\p{L})/iu, 'quart'],
  [/^(?:gallons?|gals?\.?)(?!\p{L})/iu, 'gallon'],
  [/^(?:ounces?|oz\.?)(?!\p{L})/iu, 'oz'],
  [/^(?:pounds?|lbs?\.?)(?!\p{L})/iu, 'lb'],
  [/^(?:kilograms?|kilos?|kg)(?!\p{L})/iu, 'kg'],
  [/^(?:milligrams?|mg)(?!\p{L})/iu, 'mg'],
  [/^(?:grams?|gr?\.?)(?!\p{L})/iu, 'g'],
  [/^(?:millilit(?:re|er)s?|ml)(?!\p{L})/iu, 'ml'],
  [/^(?:decilit(?:re|er)s?|dl)(?!\p{L})/iu, 'dl'],
  [/^(?:lit(?:re|er)s?|l)(?!\p{L})/iu, 'l'],
];

type LengthUnit = 'inch' | 'foot' | 'millimetre' | 'centimetre' | 'metre';

const LENGTH_UNITS: readonly (readonly [RegExp, LengthUnit])[] = [
  [/^-?\s*(?:inch(?:es)?|in\.?|"|″|”)\s*$/iu, 'inch'],
  [/^-?\s*(?:foot|feet|ft\.?|'|′|’)\s*$/iu, 'foot'],
  [/^(?:millimet(?:re|er)s?|mm)\s*$/iu, 'millimetre'],
  [/^(?:centimet(?:re|er)s?|cm)\s*$/iu, 'centimetre'],
  [/^(?:met(?:re|er)s?|m)\s*$/iu, 'metre'],
];

// --- Numbers ------------------------------------------------------------------------------------

interface Numbers {
  readonly low: number;
  readonly high: number;
  readonly rest: string;
}

const LONGEST_TEXT = 200;
const MINUS = '\u2212';
const SIGN_CLASS = `[${Object.keys(fractionSigns).join('')}]`;
const FRACTION = String.raw`\d{1,4}\s*[/⁄]\s*\d{1,4}`;
const DECIMAL = String.raw`(?:\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:[.,]\d+)?|\.\d+)`;
/** "1 1/2", "1-1/2", "1½", "3/4", "¾", "2.5", "1,000". The hyphened one can't run up as a range. */
const NUMBER = new RegExp(
  `^(?:(?<whole>\\d{1,5})(?:\\s*-\\s*|\\s+)(?<mixed>${FRACTION})|(?<signWhole>\\d{1,5})?\\s*(?<sign>${SIGN_CLASS})|(?<fraction>${FRACTION})|(?<decimal>${DECIMAL}))`,
  'u',
);

function readNumbers(text: string, mayBeNegative = false): Numbers | Unread {
  if (text.length > LONGEST_TEXT) return unread(text.slice(0, LONGEST_TEXT), 'too-long');
  const trimmed = text.trim().replace(/^(?:about|ca\.|~)\s*/iu, '');
  const isNegative = mayBeNegative && trimmed.startsWith(MINUS);
  const first = firstNumber(isNegative ? trimmed.slice(1) : trimmed);
  if (isUnread(first)) return { ...first, text };
  const low = isNegative ? -first.value : first.value;
  const after = /^\s*(?:[-–—]|to(?!\p{L}))\s*/iu.exec(first.rest);
  const second = after ? firstNumber(first.rest.slice(after[0].length)) : undefined;
  if (!second || (isUnread(second) && second.why === 'no-number')) {
    return { low, high: low, rest: first.rest.trim() };
  }
  if (isUnread(second)) return { ...second, text };
  if (second.value < low) return unread(text, 'range-runs-down');
  return { low, high: second.value, rest: second.rest.trim() };
}

/**
 * A number alone, as people write it, with its sign; undefined where more than that stands there.
 *
 * @example   '-3 3/4' → -3.75
 */
export function readNumber(text: string): number | undefined {
  const trimmed = text.length > LONGEST_TEXT ? '' : text.trim();
  const found = firstNumber(trimmed.replace(/^[-+\u2212]\s*/u, ''));
  if (isUnread(found) || found.rest !== '') return undefined;
  return /^[-\u2212]/u.test(trimmed) ? 0 - found.value : found.value;
}

interface OneNumber {
  readonly value: number;
  readonly rest: string;
}

function firstNumber(text: string): OneNumber | Unread {
  const found = NUMBER.exec(text);
  if (!found?.groups) return unread(text, 'no-number');
  const value = numberIn(found.groups);
  if (!Number.isFinite(value)) return unread(text, 'not-a-fraction');
  return { value, rest: text.slice(found[0].length) };
}

function numberIn(groups: Readonly<Record<string, string | undefined>>): number {
  const { whole, mixed, signWhole, sign, fraction, decimal } = groups;
  if (mixed !== undefined) return Number(whole) + quotient(mixed);
  if (sign !== undefined) return Number(signWhole ?? 0) + fractionSigns[sign]!;
  return fraction !== undefined ? quotient(fraction) : decimalValue(decimal ?? '');
}

function quotient(fraction: string): number {
  const [above, below] = fraction.split(/[/⁄]/u).map(Number);
  return below === 0 ? Number.NaN : above! / below!;
}

/** A comma before three digits parts thousands; any other comma is a decimal comma. */
function decimalValue(text: string): number {
  const isThousands = /^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(text);
  return Number(isThousands ? text.replaceAll(',', '') : text.replace(',', '.'));
}

const unread = (text: string, why: Unread['why']): Unread => ({ unread: true, why, text });

// How a quantity stands in a camp file: a number and its unit, `12 in`, `18 °C`, `7 m/s`.
// What each unit is worth is quantity/'s business; here are only the names that a file may use.

import {
  fractionSigns,
  fromCelsius,
  fromFahrenheit,
  fromUnit,
  inUnit,
  kelvin,
  readNumber,
  type SiOf,
  toCelsius,
  toFahrenheit,
  type UnitName,
} from '#engine';

export type QuantityKind =
  | 'length'
  | 'mass'
  | 'volume'
  | 'temperature'
  | 'speed'
  | 'duration'
  | 'share';

interface WrittenUnit {
  /** As we write it. */
  readonly sign: string;
  /** Other ways that are read, lower case. */
  readonly also: readonly string[];
  readonly toInside: (value: number) => number;
  readonly fromInside: (value: number) => number;
}

// 14 digits drop the dust of binary arithmetic that a factor of ours would leave.
const withoutDust = (value: number) => Number(value.toPrecision(14));

/** A unit that only a camp file needs: minutes are the timetable's unit, shares are ratios. */
const times = (sign: string, factor: number, also: readonly string[] = []): WrittenUnit => ({
  sign,
  also,
  toInside: (value) => withoutDust(value * factor),
  fromInside: (value) => value / factor,
});

const known = (sign: string, name: UnitName, also: readonly string[] = []): WrittenUnit => ({
  sign,
  also,
  toInside: (value) => fromUnit(value, name),
  fromInside: (value) => inUnit(value as SiOf<UnitName>, name),
});

const UNITS: Readonly<Record<QuantityKind, readonly WrittenUnit[]>> = {
  length: [
    known('m', 'metre', ['metre', 'metres', 'meter', 'meters']),
    known('cm', 'centimetre'),
    known('mm', 'millimetre'),
    known('in', 'inch', ['inch', 'inches', '"', '″']),
    known('ft', 'foot', ['foot', 'feet', "'", '′']),
  ],
  mass: [
    known('g', 'gram', ['gram', 'grams']),
    known('kg', 'kilogram', ['kilo', 'kilos', 'kilogram', 'kilograms']),
    known('oz', 'ounce', ['ounce', 'ounces']),
    known('lb', 'pound', ['lbs', 'pound', 'pounds']),
  ],
  volume: [
    known('l', 'litre', ['litre', 'litres', 'liter', 'liters']),
    known('ml', 'millilitre'),
    known('qt', 'us-quart', ['quart', 'quarts']),
    known('gal', 'us-gallon', ['gallon', 'gallons']),
    known('pt', 'us-pint', ['pint', 'pints']),
    known('cups', 'us-cup', ['cup']),
  ],
  temperature: [
    {
      sign: '°C',
      also: ['c', '° c', 'celsius'],
      toInside: fromCelsius,
      fromInside: (value) => toCelsius(kelvin(value)),
    },
    {
      sign: '°F',
      also: ['f', '° f', 'fahrenheit'],
      toInside: fromFahrenheit,
      fromInside: (value) => toFahrenheit(kelvin(value)),
    },
    { sign: 'K', also: ['kelvin'], toInside: (value) => value, fromInside: (value) => value },
  ],
  speed: [
    times('m/s', 1),
    known('km/h', 'kilometre-per-hour', ['kph', 'kmh']),
    known('mph', 'mile-per-hour'),
    known('kn', 'knot', ['kt', 'knot', 'knots']),
  ],
  duration: [
    times('min', 1, ['mins', 'minute', 'minutes']),
    times('h', 60, ['hour', 'hours', 'hr', 'hrs']),
    times('d', 1440, ['day', 'days']),
  ],
  share: [times('%', 0.01, ['percent', 'per cent'])],
};

/** What a number is written with, its sign left out. */
const DIGITS = `\\d.,/⁄${Object.keys(fractionSigns).join('')}`;
const QUANTITY = new RegExp(`^([-+−]?\\s*[${DIGITS}\\s]+?)\\s*([^${DIGITS}\\s].*)$`, 'u');

/** The quantity inside (SI; minutes for a duration), or undefined where it can't be read. */
export function readQuantity(kind: QuantityKind, text: string): number | undefined {
  if (text.length > 60) return undefined;
  if (kind === 'duration') return readDuration(text);
  return readOne(kind, text.trim());
}

function readOne(kind: QuantityKind, text: string): number | undefined {
  const parts = QUANTITY.exec(text);
  const value = readNumber(parts?.[1] ?? '');
  const unit = unitNamed(kind, parts?.[2] ?? '');
  return value === undefined ? undefined : unit?.toInside(value);
}

function unitNamed(kind: QuantityKind, name: string): WrittenUnit | undefined {
  const low = name.trim().replace(/\.$/, '').toLowerCase();
  return UNITS[kind].find((unit) => unit.sign.toLowerCase() === low || unit.also.includes(low));
}

/** Also `1 h 20 min`. */
function readDuration(text: string): number | undefined {
  const pair = /^(\d{1,3})\s*h\s+(\d{1,2})\s*min$/.exec(text.trim());
  return pair ? Number(pair[1]) * 60 + Number(pair[2]) : readOne('duration', text.trim());
}

/** The shortest text, in any of our units, that reads back as exactly this quantity. */
export function writeQuantity(kind: QuantityKind, inside: number): string {
  const exact = UNITS[kind]
    .map((unit) => shortestExact(kind, unit, inside))
    .filter((text) => text !== undefined)
    .filter((text) => !FEW_FEET.test(text))
    .sort((a, b) => a.length - b.length);
  return exact[0] ?? nearestText(kind, inside);
}

/** An oven is twelve inches, not one foot. */
const FEW_FEET = /^\d(\.\d+)? ft$/;

const MOST_DECIMALS = 6;
const MOST_DIGITS = 17;

/** Alike to within the last bits that a computed size is off by: `12 in`, not 0.30479999999999996 m. */
const isSame = (read: number | undefined, inside: number) =>
  read !== undefined && Math.abs(read - inside) <= 1e-14 * Math.abs(inside);

function shortestExact(kind: QuantityKind, unit: WrittenUnit, inside: number): string | undefined {
  const value = unit.fromInside(inside);
  for (let decimals = 0; decimals <= MOST_DECIMALS; decimals += 1) {
    const text = `${Number(value.toFixed(decimals))} ${unit.sign}`;
    if (isSame(readQuantity(kind, text), inside)) return text;
  }
  const text = `${Number(value.toPrecision(MOST_DIGITS))} ${unit.sign}`;
  return readQuantity(kind, text) === inside ? text : undefined;
}

/** No text is exact: twelve decimals of the first unit, far below anything a cook can tell. */
function nearestText(kind: QuantityKind, inside: number): string {
  const unit = UNITS[kind][0]!;
  return `${unit.fromInside(inside).toFixed(12).replace(/0+$/, '').replace(/\.$/, '')} ${unit.sign}`;
}

const FEW_DIGITS = 3;
const US_SIGNS = ['in', 'ft', 'oz', 'lb', 'qt', 'gal', 'pt', 'cups', '°F', 'mph'];
const isUs = ({ sign }: WrittenUnit) => US_SIGNS.includes(sign);

/** A quantity in the measures of another text: `-60 °C` beside `200 F` is `-76 °F`. */
export function inMeasuresOf(kind: QuantityKind, text: string, written: string): string {
  const inside = readQuantity(kind, text);
  const [own, others] = [text, written].map((each) =>
    unitNamed(kind, QUANTITY.exec(each.trim())?.[2] ?? ''),
  );
  if (inside === undefined || !own || !others || isUs(own) === isUs(others)) return text;
  const values = UNITS[kind]
    .filter((unit) => isUs(unit) === isUs(others))
    .map((unit) => ({ sign: unit.sign, value: unit.fromInside(inside) }));
  const handy = values.filter(({ value }) => 1 <= Math.abs(value));
  const said = handy.length === 0 ? values[0]! : handy.reduce(smaller);
  return `${Number(said.value.toPrecision(FEW_DIGITS))} ${said.sign}`;
}

const smaller = <Said extends { readonly value: number }>(one: Said, other: Said) =>
  Math.abs(other.value) < Math.abs(one.value) ? other : one;

/** For people: the units of a kind, `m, cm, mm, in or ft`. */
export function unitsInWords(kind: QuantityKind): string {
  const signs = UNITS[kind].map((unit) => unit.sign);
  return signs.length === 1 ? signs[0]! : `${signs.slice(0, -1).join(', ')} or ${signs.at(-1)}`;
}

/** For other tools: a loose pattern of the text, for the published JSON Schema. */
export function quantityPattern(kind: QuantityKind): string {
  const names = UNITS[kind].flatMap((unit) => [unit.sign, unit.sign.toLowerCase(), ...unit.also]);
  const words = [...new Set(names)].map((name) => name.replace(/[/.]/g, '\\$&')).join('|');
  const hours = kind === 'duration' ? '|^\\d{1,3}\\s*h\\s+\\d{1,2}\\s*min$' : '';
  return `^\\s*[-+−]?\\s*[${DIGITS} ]+\\s*(${words})\\.?\\s*$${hours}`;
}

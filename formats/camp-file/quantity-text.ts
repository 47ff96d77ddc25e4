// How a quantity stands in a camp file: a number and its unit, `12 in`, `18 °C`, `7 m/s`.
// Unit definitions are exact: SI brochure (BIPM, 9th ed.) and NIST Handbook 44 appendix C for the
// inch, pound, US gallon and what is derived from them; the knot is 1852 m in 3600 s.

import { fromCelsius, fromFahrenheit, toCelsius, toFahrenheit } from '#engine';
import { readNumber } from './number-text.ts';

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

// 14 digits drop the dust of binary arithmetic: 12 in is 0.3048 m, not 0.30479999999999996.
const withoutDust = (value: number) => Number(value.toPrecision(14));

const times = (sign: string, factor: number, also: readonly string[] = []): WrittenUnit => ({
  sign,
  also,
  toInside: (value) => withoutDust(value * factor),
  fromInside: (value) => value / factor,
});

const UNITS: Readonly<Record<QuantityKind, readonly WrittenUnit[]>> = {
  length: [
    times('m', 1, ['metre', 'metres', 'meter', 'meters']),
    times('cm', 0.01),
    times('mm', 0.001),
    times('in', 0.0254, ['inch', 'inches', '"', '″']),
    times('ft', 0.3048, ['foot', 'feet', "'", '′']),
  ],
  mass: [
    times('g', 1, ['gram', 'grams']),
    times('kg', 1000, ['kilo', 'kilos', 'kilogram', 'kilograms']),
    times('oz', 28.349523125, ['ounce', 'ounces']),
    times('lb', 453.59237, ['lbs', 'pound', 'pounds']),
  ],
  volume: [
    times('l', 0.001, ['litre', 'litres', 'liter', 'liters']),
    times('ml', 0.000001),
    times('qt', 0.000946352946, ['quart', 'quarts']),
    times('gal', 0.003785411784, ['gallon', 'gallons']),
    times('pt', 0.000473176473, ['pint', 'pints']),
    times('cups', 0.0002365882365, ['cup']),
  ],
  temperature: [
    {
      sign: '°C',
      also: ['c', '° c', 'celsius'],
      toInside: fromCelsius,
      fromInside: (value) => toCelsius(value as Parameters<typeof toCelsius>[0]),
    },
    {
      sign: '°F',
      also: ['f', '° f', 'fahrenheit'],
      toInside: fromFahrenheit,
      fromInside: (value) => toFahrenheit(value as Parameters<typeof toFahrenheit>[0]),
    },
    { sign: 'K', also: ['kelvin'], toInside: (value) => value, fromInside: (value) => value },
  ],
  speed: [
    times('m/s', 1),
    times('km/h', 1 / 3.6, ['kph', 'kmh']),
    times('mph', 0.44704),
    times('kn', 1852 / 3600, ['kt', 'knot', 'knots']),
  ],
  duration: [
    times('min', 1, ['mins', 'minute', 'minutes']),
    times('h', 60, ['hour', 'hours', 'hr', 'hrs']),
    times('d', 1440, ['day', 'days']),
  ],
  share: [times('%', 0.01, ['percent', 'per cent'])],
};

const QUANTITY = /^([-+−]?\s*[\d.,/½¼¾\s]+?)\s*([^\d.,/½¼¾\s].*)$/u;

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
    .sort((a, b) => a.length - b.length);
  return exact[0] ?? nearestText(kind, inside);
}

const MOST_DECIMALS = 6;

function shortestExact(kind: QuantityKind, unit: WrittenUnit, inside: number): string | undefined {
  for (let decimals = 0; decimals <= MOST_DECIMALS; decimals += 1) {
    const text = `${Number(unit.fromInside(inside).toFixed(decimals))} ${unit.sign}`;
    if (readQuantity(kind, text) === inside) return text;
  }
  return undefined;
}

/** No short text is exact: twelve decimals of the first unit, far below anything a cook can tell. */
function nearestText(kind: QuantityKind, inside: number): string {
  const unit = UNITS[kind][0]!;
  return `${unit.fromInside(inside).toFixed(12).replace(/0+$/, '').replace(/\.$/, '')} ${unit.sign}`;
}

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
  return `^\\s*[-+−]?\\s*[\\d.,/½¼¾ ]+\\s*(${words})\\.?\\s*$${hours}`;
}

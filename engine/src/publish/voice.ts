// How does this reader say a quantity? SI goes in, a cook's measures come out, rounded for people:
// oven temperatures to five degrees, coals whole, times to the minute. No Intl: the same everywhere.

import type { Camp } from '../camp/camp.ts';
import type { MenuDish } from '../menu/menu.ts';
import { inUnit } from '../quantity/convert.ts';
import type { Grams, Kelvin, Metres, MetresPerSecond } from '../quantity/unit.ts';
import { toCelsius, toFahrenheit } from '../quantity/unit.ts';
import type { Measures, Say } from './say.ts';
import {
  decimal,
  fraction,
  NO_BREAK,
  NOT_KNOWN,
  roundTo,
  thousands,
  volumeMetric,
  volumeUs,
} from './speak-number.ts';
import { clockWord, minutesWord } from './speak-time.ts';

/** What a voice needs of a plan: the names of this meal. */
export interface Names {
  readonly camp: Pick<Camp, 'ovens' | 'hands'>;
  readonly menu: { readonly dishes: readonly Pick<MenuDish, 'id' | 'name'>[] };
}

export interface SayOptions {
  readonly measures: Measures;
  readonly clock: '12' | '24';
  readonly plan: Names;
}

export interface VoiceOptions extends SayOptions {
  /** Handed in: a first screen loads only the sentences that it can come to say. */
  readonly sentenceFor: Say['sentenceFor'];
}

/** As `sayFor`, with the sentences that it is given. */
export function voiceFor({ measures, clock, plan, sentenceFor }: VoiceOptions): Say {
  const isUs = measures === 'us';
  return {
    measures,
    sentenceFor,
    oven: known((kelvin) => (isUs ? fahrenheit(kelvin, 5) : celsius(kelvin, 5))),
    degrees: known((kelvin) => (isUs ? fahrenheit(kelvin, 1) : celsius(kelvin, 1))),
    difference: known((kelvin) => (isUs ? differenceUs(kelvin) : differenceMetric(kelvin))),
    mass: known(isUs ? massUs : massMetric),
    length: known(isUs ? lengthUs : lengthMetric),
    height: known(isUs ? heightUs : heightMetric),
    volume: known(isUs ? volumeUs : volumeMetric),
    wind: known((speed) => windWord(speed, isUs)),
    clock: known((minutes) => clockWord(minutes, clock)),
    minutes: known(minutesWord),
    count: known((number) => fraction(number, 4)),
    percent: known(percentWord),
    dish: (id) => plan.menu.dishes.find((dish) => dish.id === id)?.name ?? id,
    ovenName: (id) => plan.camp.ovens.find((oven) => oven.id === id)?.name ?? id,
    hand: (id) => plan.camp.hands.find((hand) => hand.id === id)?.name ?? id,
  };
}

const known = (speak: (number: number) => string) => (number: number) =>
  Number.isFinite(number) ? speak(number) : NOT_KNOWN;

const fahrenheit = (kelvin: number, step: number) =>
  `${roundTo(toFahrenheit(kelvin as Kelvin), step)}${NO_BREAK}°F`;
const celsius = (kelvin: number, step: number) =>
  `${roundTo(toCelsius(kelvin as Kelvin), step)}${NO_BREAK}°C`;

/** Five degrees is as fine as a move of coals can be told; below ten the degree still matters. */
function differenceUs(kelvin: number): string {
  const degrees = kelvin * 1.8;
  return `${roundTo(degrees, Math.abs(degrees) < 10 ? 1 : 5)}${NO_BREAK}°F`;
}

const differenceMetric = (kelvin: number) => `${roundTo(kelvin, 1)}${NO_BREAK}°C`;

function massMetric(grams: number): string {
  if (Math.abs(grams) >= 9_950) return `${decimal(grams / 1000, 1)}${NO_BREAK}kg`;
  if (Math.abs(grams) >= 999.5) return `${decimal(grams / 1000, 2)}${NO_BREAK}kg`;
  return `${decimal(grams, Math.abs(grams) < 9.95 ? 1 : 0)}${NO_BREAK}g`;
}

function massUs(grams: number): string {
  const ounces = inUnit(grams as Grams, 'ounce');
  if (ounces < 0) return `-${massUs(-grams)}`;
  if (ounces < 0.95) return `${decimal(ounces, 2)}${NO_BREAK}oz`;
  if (ounces < 15.875) return `${fraction(ounces, 4)}${NO_BREAK}oz`;
  if (ounces >= 159.5) return `${fraction(ounces / 16, 2)}${NO_BREAK}lb`;
  const whole = Math.round(ounces);
  const rest = whole % 16;
  const pounds = `${(whole - rest) / 16}${NO_BREAK}lb`;
  return rest === 0 ? pounds : `${pounds}${NO_BREAK}${rest}${NO_BREAK}oz`;
}

function lengthUs(metres: number): string {
  const inches = inUnit(metres as Metres, 'inch');
  return Math.abs(inches) < 35.5
    ? `${fraction(inches, 8)}${NO_BREAK}in`
    : `${fraction(inches / 12, 2)}${NO_BREAK}ft`;
}

function lengthMetric(metres: number): string {
  if (Math.abs(metres) < 0.0095) return `${roundTo(metres * 1000, 1)}${NO_BREAK}mm`;
  if (Math.abs(metres) < 0.095) return `${decimal(metres * 100, 1)}${NO_BREAK}cm`;
  if (Math.abs(metres) >= 0.995) return `${decimal(metres, 1)}${NO_BREAK}m`;
  return `${roundTo(metres * 100, 1)}${NO_BREAK}cm`;
}

const heightStep = (number: number) => (Math.abs(number) < 100 ? 1 : 10);
const heightUs = (metres: number) => {
  const feet = inUnit(metres as Metres, 'foot');
  return `${thousands(roundTo(feet, heightStep(feet)))}${NO_BREAK}ft`;
};
const heightMetric = (metres: number) =>
  `${thousands(roundTo(metres, heightStep(metres)))}${NO_BREAK}m`;

const percentWord = (ratio: number) =>
  `${decimal(ratio * 100, Math.abs(ratio) < 0.0995 ? 1 : 0)}${NO_BREAK}%`;

/** Beaufort's names with the lower bound of each [m/s] (wmo306, code table 1100). */
const WIND_NAMES: readonly (readonly [number, string])[] = [
  [32.7, 'hurricane'],
  [28.5, 'violent storm'],
  [24.5, 'storm'],
  [20.8, 'strong gale'],
  [17.2, 'gale'],
  [13.9, 'near gale'],
  [10.8, 'strong breeze'],
  [8, 'fresh breeze'],
  [5.5, 'moderate breeze'],
  [3.4, 'gentle breeze'],
  [1.6, 'light breeze'],
  [0.3, 'light air'],
];

function windWord(metresPerSecond: number, isUs: boolean): string {
  const name = WIND_NAMES.find(([lowest]) => lowest <= metresPerSecond)?.[1] ?? 'calm';
  if (name === 'calm') return name;
  const milesPerHour = Math.round(inUnit(metresPerSecond as MetresPerSecond, 'mile-per-hour'));
  const number = isUs
    ? `${milesPerHour}${NO_BREAK}mph`
    : `${decimal(metresPerSecond, metresPerSecond < 5 ? 1 : 0)}${NO_BREAK}m/s`;
  return `${name}, ${number}`;
}

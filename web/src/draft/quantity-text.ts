// Quantities of a camp file in the reader's measures: `18 °C` is shown as `64 °F` to one who reads
// that way. Only shown: the file changes when the cook types, never by being looked at.
// Unit definitions are exact: NIST Handbook 44 appendix C.

import type { Measures } from '#engine';

export type TextKind =
  | 'air'
  | 'wind'
  | 'height'
  | 'oven-heat'
  | 'oven-size'
  | 'ten'
  | 'charcoal'
  | 'rain'
  | 'share'
  | 'small-length'
  | 'label-mass'
  | 'iron-mass';

interface Shown {
  readonly sign: string;
  readonly perBase: number;
  readonly offset?: number;
  readonly decimals: number;
}

interface Sign {
  readonly perBase: number;
  readonly offset?: number;
}

// Base units: °C, m/s, m, g, %.
const signs: Readonly<Record<string, Sign>> = {
  '°C': { perBase: 1 },
  '°F': { perBase: 1.8, offset: 32 },
  C: { perBase: 1 },
  F: { perBase: 1.8, offset: 32 },
  'm/s': { perBase: 1 },
  'km/h': { perBase: 3.6 },
  mph: { perBase: 1 / 0.44704 },
  m: { perBase: 1 },
  ft: { perBase: 1 / 0.3048 },
  in: { perBase: 1 / 0.0254 },
  cm: { perBase: 100 },
  mm: { perBase: 1000 },
  g: { perBase: 1 },
  kg: { perBase: 0.001 },
  oz: { perBase: 1 / 28.349523125 },
  lb: { perBase: 1 / 453.59237 },
  '%': { perBase: 1 },
};

const shownIn: Readonly<Record<TextKind, Readonly<Record<Measures, Shown>>>> = {
  air: {
    us: { sign: '°F', perBase: 1.8, offset: 32, decimals: 0 },
    metric: { sign: '°C', perBase: 1, decimals: 0 },
  },
  'oven-heat': {
    us: { sign: '°F', perBase: 1.8, offset: 32, decimals: 0 },
    metric: { sign: '°C', perBase: 1, decimals: 0 },
  },
  wind: {
    us: { sign: 'mph', perBase: 1 / 0.44704, decimals: 0 },
    metric: { sign: 'm/s', perBase: 1, decimals: 1 },
  },
  height: {
    us: { sign: 'ft', perBase: 1 / 0.3048, decimals: 0 },
    metric: { sign: 'm', perBase: 1, decimals: 0 },
  },
  'oven-size': {
    us: { sign: 'in', perBase: 1 / 0.0254, decimals: 1 },
    metric: { sign: 'cm', perBase: 100, decimals: 0 },
  },
  ten: {
    us: { sign: 'oz', perBase: 1 / 28.349523125, decimals: 1 },
    metric: { sign: 'g', perBase: 1, decimals: 0 },
  },
  charcoal: {
    us: { sign: 'lb', perBase: 1 / 453.59237, decimals: 1 },
    metric: { sign: 'kg', perBase: 0.001, decimals: 1 },
  },
  rain: {
    us: { sign: 'in', perBase: 1 / 0.0254, decimals: 2 },
    metric: { sign: 'mm', perBase: 1000, decimals: 1 },
  },
  share: {
    us: { sign: '%', perBase: 1, decimals: 0 },
    metric: { sign: '%', perBase: 1, decimals: 0 },
  },
  'small-length': {
    us: { sign: 'in', perBase: 1 / 0.0254, decimals: 2 },
    metric: { sign: 'cm', perBase: 100, decimals: 1 },
  },
  'iron-mass': {
    us: { sign: 'lb', perBase: 1 / 453.59237, decimals: 1 },
    metric: { sign: 'kg', perBase: 0.001, decimals: 2 },
  },
  // Labels tell grams in either measure.
  'label-mass': {
    us: { sign: 'g', perBase: 1, decimals: 1 },
    metric: { sign: 'g', perBase: 1, decimals: 1 },
  },
};

const NUMBER = String.raw`[-−]?\d+(?:\.\d+)?|(?:\d+\s+)?\d+\/\d+|\d*\s*[¼½¾]`;
const WRITTEN = new RegExp(`^\\s*(${NUMBER})\\s*(${Object.keys(signs).join('|')})\\s*$`);

/** In base units (°C, m/s, m, g, %); undefined where it is not plainly a number and a unit. */
export function baseOf(text: string): number | undefined {
  const [, number, sign] = WRITTEN.exec(text) ?? [];
  const written = signs[sign ?? ''];
  if (written === undefined) return undefined;
  const base = (numberOf(number ?? '') - (written.offset ?? 0)) / written.perBase;
  return Number.isFinite(base) ? base : undefined;
}

const SIGNS: Readonly<Record<string, string>> = { '¼': ' 1/4', '½': ' 1/2', '¾': ' 3/4' };

/** `8.5`, `8 1/2`, `8½`. */
function numberOf(text: string): number {
  const [, whole, over, under] =
    /^(?:(\d+)\s+)?(\d+)\/(\d+)$/.exec(text.replace(/[¼½¾]/u, (sign) => SIGNS[sign]!).trim()) ?? [];
  return under === undefined
    ? Number(text.replace('−', '-'))
    : Number(whole ?? 0) + Number(over) / Number(under);
}

/** The same quantity moved by so many base units, in the unit that it is written in. */
export function movedBy(text: string, base: number, least = Number.NEGATIVE_INFINITY): string {
  const [, , sign] = WRITTEN.exec(text) ?? [];
  const from = baseOf(text);
  if (sign === undefined || from === undefined) return text;
  const { perBase, offset = 0 } = signs[sign]!;
  return `${Number((Math.max(least, from + base) * perBase + offset).toFixed(2))} ${sign}`;
}

/** The text as this reader reads it; left alone where it is not plainly a number and a unit. */
export function shownText(text: string, kind: TextKind, measures: Measures): string {
  const base = baseOf(text);
  const shown = shownIn[kind][measures];
  if (base === undefined || isClean(text, shown.sign)) return text;
  const value = base * shown.perBase + (shown.offset ?? 0);
  return `${Number(value.toFixed(shown.decimals))} ${shown.sign}`;
}

/** In the reader's unit, and with no more decimals than a cook would write. */
const isClean = (text: string, sign: string) =>
  WRITTEN.exec(text)?.[2] === sign && !/\.\d{3}/.test(text);

/** `12`, `5.5`, `5,5`, `8 1/2`, `1/2`, `8½`. */
const BARE = /^\s*(?:[-−]?\d+(?:[.,]\d+)?|(?:\d+\s+)?\d+\/\d+|\d*\s*[¼½¾])\s*$/;

/** What was typed, with the reader's unit where only a number was. */
export function withUnit(text: string, kind: TextKind, measures: Measures): string {
  const isBare = BARE.test(text);
  return isBare ? `${text.trim().replace(',', '.')} ${shownIn[kind][measures].sign}` : text;
}

/** What a box takes, where a bare number is read in the reader's unit. */
export function unitHint(kind: TextKind, measures: Measures): string {
  const sign = unitSign(kind, measures);
  return `in ${sign === 'in' ? 'inches' : sign}, or write the unit`;
}

export const unitSign = (kind: TextKind, measures: Measures) => shownIn[kind][measures].sign;

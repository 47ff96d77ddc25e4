// Quantities of a camp file in the reader's measures: `18 °C` is shown as `64 °F` to one who reads
// that way. Only shown: the file changes when the cook types, never by being looked at.
// Unit definitions are exact: NIST Handbook 44 appendix C.

import type { Measures } from '#engine';

export type TextKind = 'air' | 'wind' | 'height' | 'oven-heat';

interface Shown {
  readonly sign: string;
  readonly perBase: number;
  readonly offset?: number;
  readonly decimals: number;
}

// Base units: °C, m/s, m.
const signs: Readonly<Record<string, { readonly perBase: number; readonly offset?: number }>> = {
  '°C': { perBase: 1 },
  '°F': { perBase: 1.8, offset: 32 },
  'm/s': { perBase: 1 },
  'km/h': { perBase: 3.6 },
  mph: { perBase: 1 / 0.44704 },
  m: { perBase: 1 },
  ft: { perBase: 1 / 0.3048 },
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
};

const WRITTEN = /^\s*([-−]?\d+(?:\.\d+)?)\s*(°C|°F|m\/s|km\/h|mph|m|ft)\s*$/;

/** The text as this reader reads it; left alone where it is not plainly a number and a unit. */
export function shownText(text: string, kind: TextKind, measures: Measures): string {
  const [, number, sign] = WRITTEN.exec(text) ?? [];
  const written = signs[sign ?? ''];
  const shown = shownIn[kind][measures];
  if (written === undefined || sign === shown.sign) return text;
  const base = (Number(number?.replace('−', '-')) - (written.offset ?? 0)) / written.perBase;
  const value = base * shown.perBase + (shown.offset ?? 0);
  return `${Number(value.toFixed(shown.decimals))} ${shown.sign}`;
}

/** What was typed, with the reader's unit where only a number was. */
export function withUnit(text: string, kind: TextKind, measures: Measures): string {
  const isBare = /^\s*[-−]?\d+(?:[.,]\d+)?\s*$/.test(text);
  return isBare ? `${text.trim().replace(',', '.')} ${shownIn[kind][measures].sign}` : text;
}

export const unitSign = (kind: TextKind, measures: Measures) => shownIn[kind][measures].sign;

// How quantities are spoken on screen and paper: the only place where SI turns into a cook's
// measures. A `Say` is made for one reader: measures, clock, language, and the names of this meal.

import type { About, NoticeValues } from '../notice/notice.ts';

export type Measures = 'us' | 'metric';

export interface Say {
  readonly measures: Measures;
  /** A reading: `350 °F`, `177 °C`; rounded for people (5 °F / 5 °C for ovens). */
  oven(kelvin: number): string;
  /** A reading to the degree: cores, boiling, air. */
  degrees(kelvin: number): string;
  /** A difference: `25 °F`, `14 °C`; takes kelvin. */
  difference(kelvin: number): string;
  mass(grams: number): string;
  /** Small lengths: inches with fractions, or cm / mm. */
  length(metres: number): string;
  /** Heights above sea: ft or m. */
  height(metres: number): string;
  volume(cubicMetres: number): string;
  wind(metresPerSecond: number): string;
  /** Clock minutes to `18:30` or `6:30 pm`; days before and after are said. */
  clock(clockMinutes: number): string;
  /** `1 h 20 min`. */
  minutes(minutes: number): string;
  count(number: number): string;
  percent(ratio: number): string;
  dish(id: string): string;
  ovenName(id: string): string;
  hand(id: string): string;
  /** Undefined for a code that this voice has no words for. */
  sentenceFor(code: string): Sentence | undefined;
}

/** One sentence for one code, without line breaks, plain words, the important thing first. */
export type Sentence = (values: NoticeValues, about: About, say: Say) => string;
export type Words = Readonly<Record<string, Sentence>>;

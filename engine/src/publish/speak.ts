// The usual voice: one that has a sentence for every code there is.

import { type Names, type SayOptions, voiceFor } from './voice.ts';
import { allWords } from './words/index.ts';

export type { Names, SayOptions };

/**
 * The voice of one reader: measures, clock and the names of this meal.
 *
 * A number that is not finite is said as "not known": a sheet never shows NaN.
 */
export const sayFor = (options: SayOptions) =>
  voiceFor({ ...options, sentenceFor: (code) => allWords[code] });

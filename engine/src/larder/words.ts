// The words of a line with the places where they stand, folded alike on both sides of a match:
// lower case, no accents, one of a kind.

import type { Span } from '../quantity/written-amount.ts';
import { singular } from './name.ts';

export interface Word extends Span {
  readonly word: string;
  /** Counted up at every comma, bracket, dash, "or", "and", "for", "with". */
  readonly part: number;
}

const MOST_WORDS = 40;
const WORD = /[\p{L}\p{N}][\p{L}\p{M}\p{N}]*(?:['’][\p{L}]{1,4})?/gu;
/** What stands between two words and sets the second one apart. */
const APART = /[,;:()[\]{}/+&.!?]| [-–—] /u;
const LINKS: ReadonlySet<string> = new Set(['or', 'and', 'for', 'with', 'to', 'plus', 'in', 'if']);

/** At most forty words of a text between two places; the rest is left to whoever asks. */
export function wordsIn(text: string, { from, to }: Span): readonly Word[] {
  const words: Word[] = [];
  let part = 0;
  let end = from;
  WORD.lastIndex = from;
  for (let found = WORD.exec(text); found !== null; found = WORD.exec(text)) {
    if (to <= found.index || MOST_WORDS <= words.length) break;
    const word = folded(found[0]);
    const isLink = LINKS.has(word);
    if (APART.test(text.slice(end, found.index)) || isLink) part += 1;
    end = Math.min(to, found.index + found[0].length);
    words.push({ word, from: found.index, to: end, part });
  }
  return words;
}

/** One word without accents and plural, as names are compared. */
export const folded = (word: string): string =>
  singular(
    word
      .normalize('NFD')
      .replace(/\p{M}/gu, '')
      .replace(/['’]\p{L}*$/u, '')
      .toLowerCase(),
  );

export const isLink = ({ word }: Word): boolean => LINKS.has(word);

// Which number stands at this place of a text, in figures or in words? "1 1/2", "2½", "1,5",
// "half a", "a third of a", "two and a half", "a dozen", and what a scanner makes of a half ("l/2").
// Weakness: words for numbers past twelve are not read.

import { fractionSigns } from './fraction.ts';

export interface WrittenNumber {
  readonly value: number;
  /** Where the text goes on behind it. */
  readonly to: number;
  /** Read through a scanner's mistake: `l/2` as 1/2. */
  readonly isMended?: true;
  /** `a` or `an` alone: only a number where a measure follows. */
  readonly isArticle?: true;
}

/** The number that begins at this place; undefined where none does. */
export const numberAt = (text: string, at: number): WrittenNumber | undefined =>
  mendedMixedAt(text, at) ?? figuresAt(text, at) ?? mendedPart(text, at) ?? wordsAt(text, at);

/** A pattern at one place of a text, never further on. */
export function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text) ?? undefined;
}

// --- Figures --------------------------------------------------------------------------------------

const SIGNS = `[${Object.keys(fractionSigns).join('')}]`;
const SLASHED = String.raw`\d{1,3} ?[/⁄] ?\d{1,3}(?!\d)`;
const PLAIN = String.raw`\d{1,3}(?:,\d{3})+(?!\d)(?:\.\d{1,4})?|\d{1,6}(?:[.,]\d{1,4})?|[.,]\d{1,4}`;
const FIGURES = new RegExp(
  `(?<whole>\\d{1,4})(?: ?- ?| {1,3}(?:and |& ?)?)(?<mixed>${SLASHED})|(?<signWhole>\\d{0,4})(?: (?:and |& ?)?)?(?<sign>${SIGNS})|(?<slashed>${SLASHED})|(?<plain>${PLAIN})`,
  'uy',
);

function figuresAt(text: string, at: number): WrittenNumber | undefined {
  const found = matchAt(FIGURES, text, at);
  if (found?.groups === undefined) return undefined;
  const value = worthOf(found.groups);
  return Number.isFinite(value) ? andAHalf(text, value, at + found[0].length) : undefined;
}

function worthOf({ whole, mixed, signWhole, sign, slashed, plain }: Record<string, string>) {
  if (mixed !== undefined) return Number(whole) + quotient(mixed);
  if (sign !== undefined) return Number(signWhole || 0) + fractionSigns[sign]!;
  return slashed !== undefined ? quotient(slashed) : decimal(plain ?? '');
}

function quotient(fraction: string): number {
  const [above, below] = fraction.split(/[/⁄]/u).map(Number);
  return below === 0 ? Number.NaN : above! / below!;
}

/** A comma before three digits parts thousands; any other comma is a decimal comma. */
const decimal = (text: string): number =>
  Number(
    /^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(text) ? text.replaceAll(',', '') : text.replace(',', '.'),
  );

// --- A scanner's figures ----------------------------------------------------------------------------

/** Common practice, no source: what scanned cookery pages make of 1, 1/2, 1/4 and 1/3. */
const MENDED: readonly (readonly [RegExp, number])[] = [
  [/(?:[lI|] ?\/ ?2|V[i2z]|Y[2z])(?![\p{L}\d])/uy, 1 / 2],
  [/(?:[lI|] ?\/ ?4|V4|Y4)(?![\p{L}\d])/uy, 1 / 4],
  [/(?:[lI|] ?\/ ?3|V3|Y3)(?![\p{L}\d])/uy, 1 / 3],
  [/[lI|](?= (?:c|cup|cups|tsp|tbsp|tablespoons?|teaspoons?|egg|lb|qt|pt|pint|quart)\b)/uy, 1],
];
const WHOLE_BEFORE = /(\d{1,3}|[lI|]) ?(?=[lI|VY])/uy;

/** `1 l/2`, before its 1 is read as a litre's. */
function mendedMixedAt(text: string, at: number): WrittenNumber | undefined {
  const before = matchAt(WHOLE_BEFORE, text, at);
  const part = before === undefined ? undefined : mendedPart(text, at + before[0].length);
  if (before === undefined || part === undefined || part.value === 1) return undefined;
  const whole = /\d/.test(before[1]!) ? Number(before[1]) : 1;
  return { value: whole + part.value, to: part.to, isMended: true };
}

function mendedPart(text: string, at: number): WrittenNumber | undefined {
  for (const [pattern, value] of MENDED) {
    const found = matchAt(pattern, text, at);
    if (found) return { value, to: at + found[0].length, isMended: true };
  }
  return undefined;
}

// --- Words ------------------------------------------------------------------------------------------

/** English, and the Spanish ones that recipes of the border use. */
const WHOLE_WORDS: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  un: 1,
  una: 1,
  dos: 2,
  tres: 3,
  cuatro: 4,
  cinco: 5,
  seis: 6,
};

const PART_WORDS: Readonly<Record<string, number>> = {
  half: 1 / 2,
  halves: 1 / 2,
  third: 1 / 3,
  thirds: 1 / 3,
  quarter: 1 / 4,
  quarters: 1 / 4,
  fourth: 1 / 4,
  fourths: 1 / 4,
  eighth: 1 / 8,
  eighths: 1 / 8,
  medio: 1 / 2,
  media: 1 / 2,
  tercio: 1 / 3,
  cuarto: 1 / 4,
};

const WHOLE = new RegExp(`(${Object.keys(WHOLE_WORDS).join('|')})(?![\\p{L}\\d])`, 'iuy');
const PART = new RegExp(
  `(${Object.keys(PART_WORDS).join('|')})(?![\\p{L}\\d])(?: (?:of )?(?:an?|the|de)(?![\\p{L}\\d]))?`,
  'iuy',
);
const DOZEN = / ?dozen(?!\p{L})(?: of(?!\p{L}))?/iuy;
const COUPLE = /(?:a )?couple(?: of)?(?!\p{L})/iuy;
const GAP = /[ -]/uy;

function wordsAt(text: string, at: number): WrittenNumber | undefined {
  const couple = matchAt(COUPLE, text, at);
  if (couple) return { value: 2, to: at + couple[0].length };
  const part = partAt(text, at);
  if (part) return dozens(text, part.value, part.to) ?? part;
  const word = matchAt(WHOLE, text, at);
  if (!word) return undefined;
  const name = word[1]!.toLowerCase();
  const value = WHOLE_WORDS[name]!;
  const to = at + word[0].length;
  const parts = matchAt(GAP, text, to) ? partAt(text, to + 1) : undefined;
  if (parts) return { value: value * parts.value, to: parts.to };
  const many = dozens(text, value, to);
  if (many) return many;
  const isArticle = name === 'a' || name === 'an' || name === 'un' || name === 'una';
  return isArticle ? { value, to, isArticle } : andAHalf(text, value, to);
}

function partAt(text: string, at: number): WrittenNumber | undefined {
  const found = matchAt(PART, text, at);
  return found
    ? { value: PART_WORDS[found[1]!.toLowerCase()]!, to: at + found[0].length }
    : undefined;
}

function dozens(text: string, value: number, to: number): WrittenNumber | undefined {
  const found = matchAt(DOZEN, text, to);
  return found ? { value: value * 12, to: to + found[0].length } : undefined;
}

const AND_PART =
  /,? (?:and|&|y) (?:(?:an?|one)[ -])?(half|quarter|third|three[ -]quarters|media|medio)(?!\p{L})/iuy;

/** "Two and a half"; also behind the measure, "a cup and a half". */
export function andAHalf(text: string, value: number, to: number): WrittenNumber {
  const found = matchAt(AND_PART, text, to);
  if (!found) return dozens(text, value, to) ?? { value, to };
  const name = found[1]!.toLowerCase();
  const part = name.startsWith('three') ? 3 / 4 : PART_WORDS[name]!;
  return { value: value + part, to: to + found[0].length };
}

// How much does a recipe's line say? "¾-1 cup", "2 (15 oz) cans", "1 lb 4 oz", "half a cup (60 g)",
// "a cup and a half", "a heaped tablespoon", "salt to taste". Nothing is weighed here: ranges stay
// ranges, and what a can or an egg weighs is the larder's business.
// Sources: none for heaped, scant and generous, which are common practice and carry a wide range.

import { andAHalf, matchAt, numberAt, type WrittenNumber } from './written-number.ts';
import {
  type Manner,
  sizeOfWritten,
  type UnitFound,
  unitAt,
  type WrittenUnit,
} from './written-unit.ts';

/** A piece of a text, from its first letter to behind its last. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

export type Fullness = 'level' | 'scant' | 'generous' | 'rounded' | 'heaped';
export type PieceSize = 'small' | 'medium' | 'large' | 'extra-large' | 'jumbo';

/** A number and its unit: `2 cups`. `low` and `high` are alike where no range was written. */
export interface AmountTerm {
  readonly low: number;
  readonly high: number;
  readonly unit: WrittenUnit;
  readonly full?: Fullness;
  readonly size?: PieceSize;
}

export interface WrittenAmount {
  readonly span: Span;
  /** Added together: `1 lb 4 oz`. */
  readonly terms: readonly AmountTerm[];
  /** What one can or packet holds: `2 (15 oz) cans`. */
  readonly pack?: AmountTerm;
  /** The same once more, in brackets or behind a stroke: `1 cup (125 g)`. */
  readonly same: readonly AmountTerm[];
  readonly isAbout: boolean;
  /** A scanner's figure was mended: see what stands in the span. */
  readonly isMended: boolean;
}

/**
 * The amount that begins at this place of a line.
 *
 * @param manner  whose cups: only to tell which of two units is the larger
 * @returns  undefined where no amount begins here; an article counts only before a measure
 * @example  '2 (15 oz) cans black beans' → 2 cans of 15 oz each
 */
export function amountAt(text: string, at: number, manner: Manner): WrittenAmount | undefined {
  const about = matchAt(ABOUT, text, at);
  const start = at + (about?.[0].length ?? 0);
  const first = termAt(text, start, manner);
  if (first === undefined) return undefined;
  const sum = moreTerms(text, first, manner);
  const same = sameAt(text, sum.to, manner);
  const of = matchAt(OF, text, same.to);
  const pack = first.pack ?? packBehind(first.term, same.terms);
  return {
    span: { from: at, to: same.to + (of?.[0].length ?? 0) },
    terms: sum.terms,
    ...(pack === undefined ? {} : { pack }),
    same: pack === same.terms[0] ? [] : same.terms,
    isAbout: about !== undefined,
    isMended: sum.isMended,
  };
}

const ABOUT =
  /(?:about|approximately|approx\.?|around|roughly|nearly|almost|circa|ca\.|~|up to|at least|full|from|between)(?: |(?<=~))/iuy;
const OF = / ?(?:of|de)(?: the)?(?!\p{L})/iuy;

interface TermFound {
  readonly term: AmountTerm;
  readonly to: number;
  readonly pack?: AmountTerm;
  readonly isMended: boolean;
}

function termAt(text: string, at: number, manner: Manner): TermFound | undefined {
  const early = qualifiedAt(text, at);
  const first = numberAt(text, early.to);
  if (first === undefined) return bareMeasure(text, early);
  const range = rangeAt(text, first);
  const pack = packAt(text, range.to);
  const middle = qualifiedAt(text, skipGap(text, pack?.to ?? range.to));
  const unit = unitAt(text, middle.to);
  if (unit === undefined) return pieces(text, range, { ...early, ...withSize(middle) });
  const half = range.low === range.high ? andAHalf(text, range.low, unit.to) : undefined;
  const isHalf = half !== undefined && half.to !== unit.to;
  const low = isHalf ? half.value : range.low;
  const to = isHalf ? half.to : unit.to;
  const far = isHalf || range.low !== range.high ? undefined : farEnd(text, unit, manner);
  return {
    term: {
      low,
      high: far === undefined ? (isHalf ? low : range.high) : Math.max(low, far.high),
      unit: unit.unit,
      ...fullOf(early, middle),
      ...sizeOf(early, middle),
    },
    to: far?.to ?? to,
    ...(pack === undefined ? {} : { pack: pack.term }),
    isMended: range.isMended,
  };
}

/** "Pinch of salt", "heaped tbsp flour": one of it. */
function bareMeasure(text: string, early: Qualified): TermFound | undefined {
  const unit = unitAt(text, early.to);
  const isWord = unit !== undefined && 3 <= unit.to - early.to && unit.unit !== 'each';
  if (!isWord || !matchAt(BARE_NEXT, text, unit.to)) return undefined;
  if (early.full === undefined && !BARE.has(unit.unit)) return undefined;
  const term = { low: 1, high: 1, unit: unit.unit, ...fullOf(early), ...sizeOf(early) };
  return { term, to: unit.to, isMended: false };
}

const BARE_NEXT = /(?= |$)/uy;
const BARE: ReadonlySet<WrittenUnit> = new Set([
  'pinch',
  'dash',
  'handful',
  'knob',
  'splash',
  'bunch',
  'sprig',
  'smidgen',
]);

/** Pieces without a unit; "a" alone counts only where a size follows it. */
function pieces(text: string, range: NumberRange, qualified: Qualified): TermFound | undefined {
  if (range.isArticle && qualified.size === undefined) return undefined;
  const sizes = sizeOf(qualified);
  const to = 'size' in sizes ? qualified.to : range.to;
  if (!matchAt(PIECE_NEXT, text, to)) return undefined;
  const term = { low: range.low, high: range.high, unit: 'each' as const, ...sizes };
  return { term, to, isMended: range.isMended };
}

/** Not "350°", "9x13", "12-inch" or "5 minutes". */
const PIECE_NEXT =
  /(?! ?(?:°|º|%|x ?\d|["”″'′]|-? ?(?:inch|in\b|cm|mm|minute|min\b|hour|hr|second|sec\b|degree|deg\b|people|person|serving|portion|[FC]\b|day|week)))/iuy;

// --- Ranges -----------------------------------------------------------------------------------------

interface NumberRange {
  readonly low: number;
  readonly high: number;
  readonly to: number;
  readonly isArticle: boolean;
  readonly isMended: boolean;
}

const RANGE = / ?(?:[-–—−]|to|or|and(?= \d)|a|o) ?(?=[\d\p{L}.,½¼¾⅓⅔⅛⅜⅝⅞|])/iuy;
const DASH = / ?[-–—−] ?/uy;

function rangeAt(text: string, first: WrittenNumber): NumberRange {
  const alone = {
    low: first.value,
    high: first.value,
    to: first.to,
    isArticle: first.isArticle === true,
    isMended: first.isMended === true,
  };
  const link = matchAt(RANGE, text, first.to);
  if (!link || (!matchAt(DASH, text, first.to) && !/ /.test(link[0]))) return alone;
  const second = numberAt(text, first.to + link[0].length);
  if (second === undefined || second.value <= first.value) return alone;
  const isMended = alone.isMended || second.isMended === true;
  return { low: first.value, high: second.value, to: second.to, isArticle: false, isMended };
}

const TO = / ?(?:[-–—−]|to|or) ?/iuy;

/** "1 cup to 1 1/4 cups", "1 tbsp to 1/4 cup": the far end in units of the near one. */
function farEnd(text: string, near: UnitFound, manner: Manner) {
  const link = matchAt(TO, text, near.to);
  const number = link ? numberAt(text, near.to + link[0].length) : undefined;
  const unit = number ? unitAt(text, skipGap(text, number.to)) : undefined;
  if (number === undefined || unit === undefined) return undefined;
  const [from, into] = [sizeOfWritten(unit.unit, manner), sizeOfWritten(near.unit, manner)];
  if (unit.unit === near.unit) return { high: number.value, to: unit.to };
  if (!('each' in from) || !('each' in into) || from.kind !== into.kind) return undefined;
  return { high: (number.value * from.each) / into.each, to: unit.to };
}

// --- Packs ------------------------------------------------------------------------------------------

const PACK_OPEN = / ?(?:x|×|\*)? ?[([]? ?/iuy;
const PACK_UNIT = / ?-? ?/uy;
const PACK_CLOSE = / ?-?(?: each)? ?[)\]]? ?/iuy;
const PACKED = new Set<WrittenUnit>([
  'can',
  'jar',
  'bag',
  'box',
  'bottle',
  'carton',
  'package',
  'packet',
  'envelope',
  'stick',
  'cake',
]);

/** `(15 oz)` before `cans`. */
function packAt(text: string, at: number) {
  const open = matchAt(PACK_OPEN, text, at);
  if (!open || open[0] === '') return undefined;
  const number = numberAt(text, at + open[0].length);
  const unit = number
    ? unitAt(text, number.to + (matchAt(PACK_UNIT, text, number.to)?.[0].length ?? 0))
    : undefined;
  if (number === undefined || unit === undefined) return undefined;
  const close = matchAt(PACK_CLOSE, text, unit.to);
  const to = unit.to + (close?.[0].length ?? 0);
  const container = unitAt(text, qualifiedAt(text, to).to);
  if (container === undefined || !PACKED.has(container.unit)) return undefined;
  return { term: { low: number.value, high: number.value, unit: unit.unit }, to };
}

// --- More of the same line ----------------------------------------------------------------------------

interface Sum {
  readonly terms: readonly AmountTerm[];
  readonly to: number;
  readonly isMended: boolean;
}

const PLUS = /,? (?:\+|plus|and|&|y) ?|,? ?\+ ?/iuy;
const SMALLER: Readonly<Partial<Record<WrittenUnit, WrittenUnit>>> = { lb: 'oz', kg: 'g', l: 'ml' };
const MOST_TERMS = 4;

function moreTerms(text: string, first: TermFound, manner: Manner): Sum {
  let sum: Sum = { terms: [first.term], to: first.to, isMended: first.isMended };
  while (sum.terms.length < MOST_TERMS) {
    const last = sum.terms.at(-1)!;
    const plus = matchAt(PLUS, text, sum.to);
    const at = plus ? sum.to + plus[0].length : skipComma(text, sum.to);
    const next = last.unit === 'each' ? undefined : termAt(text, at, manner);
    const isMore =
      next !== undefined &&
      next.term.unit !== 'each' &&
      (plus ? isLike(next.term, last, manner) : SMALLER[last.unit] === next.term.unit);
    if (!isMore) return sum;
    sum = {
      terms: [...sum.terms, next.term],
      to: next.to,
      isMended: sum.isMended || next.isMended,
    };
  }
  return sum;
}

const isLike = (one: AmountTerm, other: AmountTerm, manner: Manner) =>
  sizeOfWritten(one.unit, manner).kind === sizeOfWritten(other.unit, manner).kind;

/** "2 cans (15 oz each)": of a packet the bracket tells what one holds. */
const packBehind = (term: AmountTerm, same: readonly AmountTerm[]) =>
  PACKED.has(term.unit) && same.length === 1 ? same[0] : undefined;

const SAME_OPEN = / ?(?:[([] ?(?:or |about |approx\.? |ca\. |= ?|~)?|\/ ?|= ?|, or )/iuy;
const SAME_CLOSE = / ?(?:each)? ?[)\]]/iuy;

function sameAt(text: string, at: number, manner: Manner) {
  const open = matchAt(SAME_OPEN, text, at);
  const found = open ? termAt(text, at + open[0].length, manner) : undefined;
  const none = { terms: [] as readonly AmountTerm[], to: at };
  if (!open || found === undefined || found.term.unit === 'each') return none;
  const sum = moreTerms(text, found, manner);
  if (!/[([]/.test(open[0])) return { terms: sum.terms, to: sum.to };
  const second = matchAt(SAME_OPEN, text, sum.to);
  const other = second ? termAt(text, sum.to + second[0].length, manner) : undefined;
  const close = matchAt(SAME_CLOSE, text, other?.to ?? sum.to);
  if (!close) return none;
  const terms = other === undefined ? sum.terms : [...sum.terms, other.term];
  return { terms, to: (other?.to ?? sum.to) + close[0].length };
}

// --- Words between number and unit ----------------------------------------------------------------------

interface Qualified {
  readonly to: number;
  readonly full?: Fullness;
  readonly size?: PieceSize;
}

const QUALIFIER =
  /(?:(heap(?:ing|ed)|rounded|level|scant|generous|good|big|extra[- ]large|jumbo|large|lg\.?|medium(?:[- ]sized?)?|med\.?|small|sm\.?)(?!\p{L})) ?/iuy;

function qualifiedAt(text: string, at: number): Qualified {
  const found = matchAt(QUALIFIER, text, at);
  if (!found) return { to: at };
  const word = found[1]!.toLowerCase();
  const full = FULLNESS[word];
  const to = at + found[0].length;
  return full === undefined ? { to, size: sizeNamed(word) } : { to, full };
}

const FULLNESS: Readonly<Record<string, Fullness>> = {
  heaping: 'heaped',
  heaped: 'heaped',
  rounded: 'rounded',
  level: 'level',
  scant: 'scant',
  generous: 'generous',
  good: 'generous',
};

function sizeNamed(word: string): PieceSize {
  if (word.startsWith('extra')) return 'extra-large';
  if (word === 'jumbo') return 'jumbo';
  if (word.startsWith('sm')) return 'small';
  return word.startsWith('med') ? 'medium' : 'large';
}

const withSize = ({ to, full, size }: Qualified): Qualified => ({
  to,
  ...(full === undefined ? {} : { full }),
  ...(size === undefined ? {} : { size }),
});

const fullOf = (...all: readonly Qualified[]): Pick<AmountTerm, 'full'> => {
  const full = all.find((each) => each.full !== undefined)?.full;
  return full === undefined ? {} : { full };
};

const sizeOf = (...all: readonly Qualified[]): Pick<AmountTerm, 'size'> => {
  const size = all.find((each) => each.size !== undefined)?.size;
  return size === undefined ? {} : { size };
};

/** What a spoon holds over a level one; common practice, no source. */
export const fullness: Readonly<Record<Fullness, readonly [least: number, most: number]>> = {
  level: [1, 1],
  scant: [0.85, 0.95],
  generous: [1, 1.2],
  rounded: [1.2, 1.6],
  heaped: [1.5, 2],
};

const GAP = /[ -]{0,8}/uy;
const skipGap = (text: string, at: number) => at + (matchAt(GAP, text, at)?.[0].length ?? 0);
const COMMA = /[, ]{0,2}/uy;
const skipComma = (text: string, at: number) => at + (matchAt(COMMA, text, at)?.[0].length ?? 0);

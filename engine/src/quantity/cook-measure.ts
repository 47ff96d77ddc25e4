// A household measure as a person says it: a whole number and a fraction of a cup, spoon or piece.

import { fractionText } from './fraction.ts';
import type { Grams } from './unit.ts';

export interface CookMeasure {
  /** 2.75 for "2 3/4": an amount that a set of cups and spoons holds. */
  readonly amount: number;
  readonly measure: 'cup' | 'tbsp' | 'tsp' | 'each';
  /** "2/3 cup + 1 tbsp". */
  readonly plusTablespoons?: number;
  /** What size of piece is counted. */
  readonly size?: string;
  /** Said over wanted, less one; only where it is off by more than a tenth. */
  readonly off?: number;
}

export type GramsPerMeasure = Readonly<Partial<Record<CookMeasure['measure'], Grams>>>;

// Common practice, no source: what a set of cups and spoons can honestly measure, and what people
// call so. Four tablespoons are a quarter cup.
const CUP_PARTS = [0, 1 / 4, 1 / 3, 1 / 2, 2 / 3, 3 / 4, 1];
const LEAST_CUP = 1 / 4;
const TABLESPOONS = [1, 1.5, 2, 2.5, 3, 3.5];
// Three eighths are a quarter and an eighth: of soda and powder a step of a quarter is half of it.
const TEASPOONS = [
  1 / 8,
  1 / 4,
  3 / 8,
  1 / 2,
  5 / 8,
  3 / 4,
  1,
  1.25,
  1.5,
  1.75,
  2,
  2.25,
  2.5,
  2.75,
  4,
  5,
];
const MOST_CUPS_AND_SPOONS = 4; // past it nobody adds spoons to cups
const HALVES_BELOW = 4; // pieces: two and a half onions, but nine apples
/** A larger measure is taken while it misses by no more than this; ours. */
const GOOD_ENOUGH = 0.05;
const WORTH_SAYING = 0.1;
const USELESS = 0.5;

/**
 * The nearest amount that a cook's cups and spoons can measure, or so many pieces.
 *
 * Pieces where the food has them; else the largest measure that comes within 5 %, else the one that
 * comes nearest.
 *
 * @param mass             what is wanted      [g]
 * @param gramsPerMeasure  of this food; `each` only where it is to be counted
 * @param size             of the pieces
 * @returns   undefined where no measure of this food comes near: it is weighed, or it is a pinch
 * @example   450 g at 120 g a cup → 3¾ cups
 */
export function cookMeasureFor(
  mass: Grams,
  gramsPerMeasure: GramsPerMeasure,
  size?: string,
): CookMeasure | undefined {
  if (!(0 < mass) || !Number.isFinite(mass)) return undefined;
  const counted = countOf(mass, gramsPerMeasure.each, size);
  if (counted !== undefined) return judged(counted);
  const tiers = spooned(mass, gramsPerMeasure).map(nearest);
  const good = tiers.find((each) => each !== undefined && Math.abs(each.off) <= GOOD_ENOUGH);
  return judged(good ?? nearest(tiers.filter((each) => each !== undefined)));
}

interface Candidate {
  readonly said: CookMeasure;
  readonly off: number;
}

function judged(found: Candidate | undefined): CookMeasure | undefined {
  if (found === undefined || USELESS < Math.abs(found.off)) return undefined;
  const { said, off } = found;
  return WORTH_SAYING < Math.abs(off) ? { ...said, off } : said;
}

const nearest = (candidates: readonly Candidate[]) =>
  candidates.reduce<Candidate | undefined>(
    (best, each) => (best && Math.abs(best.off) <= Math.abs(each.off) ? best : each),
    undefined,
  );

function countOf(mass: number, each: number | undefined, size?: string): Candidate | undefined {
  if (each === undefined || !(0 < each)) return undefined;
  const step = mass / each < HALVES_BELOW ? 0.5 : 1;
  const amount = Math.round(mass / each / step) * step;
  if (amount === 0) return undefined;
  const said = { amount, measure: 'each', ...(size === undefined ? {} : { size }) } as const;
  return { said, off: (amount * each) / mass - 1 };
}

/** Cups first, then cups and spoons, then spoons. */
function spooned(
  mass: number,
  { cup, tbsp, tsp }: GramsPerMeasure,
): readonly (readonly Candidate[])[] {
  const of = (measure: 'tbsp' | 'tsp', one: number | undefined, amounts: readonly number[]) =>
    one === undefined || !(0 < one)
      ? []
      : amounts.map((amount) => ({ said: { amount, measure }, off: (amount * one) / mass - 1 }));
  return [...cupsOf(mass, cup, tbsp), of('tbsp', tbsp, TABLESPOONS), of('tsp', tsp, TEASPOONS)];
}

function cupsOf(
  mass: number,
  cup: number | undefined,
  tbsp: number | undefined,
): readonly (readonly Candidate[])[] {
  if (cup === undefined || !(0 < cup)) return [];
  const whole = Math.floor(mass / cup);
  const amounts = CUP_PARTS.map((part) => whole + part).filter((amount) => LEAST_CUP <= amount);
  const plain = amounts.map((amount) => ({
    said: { amount, measure: 'cup' } as const,
    off: (amount * cup) / mass - 1,
  }));
  const below = amounts.findLast((amount) => amount * cup <= mass);
  if (below === undefined || tbsp === undefined || MOST_CUPS_AND_SPOONS < below) return [plain];
  const both = [1, 2, 3].map((spoons) => ({
    said: { amount: below, measure: 'cup', plusTablespoons: spoons } as const,
    off: (below * cup + spoons * tbsp) / mass - 1,
  }));
  return [plain, both];
}

/**
 * As it stands in a recipe.
 *
 * @example   { amount: 2.75, measure: 'cup' } → "2¾ cups"
 */
export function cookMeasureText(said: CookMeasure, style: 'sign' | 'plain' = 'sign'): string {
  const { amount, measure, plusTablespoons, size, off } = said;
  const number = fractionText(amount, style);
  const unit = measure === 'each' ? size : measure === 'cup' && 1 < amount ? 'cups' : measure;
  const more = plusTablespoons === undefined ? '' : ` + ${plusTablespoons} tbsp`;
  const text = `${number}${unit === undefined ? '' : ` ${unit}`}${more}`;
  const isScant = measure === 'tsp' && amount <= MOST_SCANT && 0 < (off ?? 0);
  return isScant ? `scant ${text}` : `${text}${offText(off)}`;
}

/** A little less than a spoon is filled by eye up to one; of more the share is said. Ours. */
const MOST_SCANT = 1;

function offText(off: number | undefined): string {
  if (off === undefined) return '';
  return ` (${Math.round(100 * Math.abs(off))} % ${0 < off ? 'more' : 'less'})`;
}

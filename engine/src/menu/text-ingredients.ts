// The ingredients of a pasted recipe with the grams that are reckoned with, also where the text is
// silent: a liquid "to mix" is filled up to a usual dough, salt "to taste" is a pinch. What is
// assumed is said, and what could not be weighed is left unweighed until the cook weighs it.
// Sources: the filled-up liquid by the published range of biscuits, formula tables (grade B); the
// rest is ours.

import type { LineRead } from '../larder/read-line.ts';
import type { Span } from '../quantity/index.ts';
import { type Grams, grams } from '../quantity/unit.ts';
import type { TextPiece } from './text-lines.ts';
import type { Group } from './text-words.ts';

export type GramsFrom = 'weighed' | 'filled-up' | 'pinch' | 'unknown';

export interface IngredientRead {
  /** Number of its piece. */
  readonly piece: number;
  readonly line: LineRead;
  readonly group: Group;
  /** As it was written, amount and food. */
  readonly written: string;
  readonly grams: Grams;
  readonly from: GramsFrom;
}

/** Water to flour that an unmeasured liquid is filled up to; biscuits lie between 0.52 and 0.68. */
const FILL_TO = 0.62;
/**
 * Where the writer says what it is to become: by cups of liquid to cups of flour of two school
 * books, 237 g to 125 g; below that bakers say stiff. battersAndDoughs, hydrationClasses (grade B)
 */
const FILL_FOR: readonly (readonly [RegExp, number])[] = [
  [/\b(?:thin|pour(?:ing|able)?|runny)\b[^,;.]{0,20}\bbatter\b/iu, 1.26],
  [/\bbatter\b/iu, 0.95],
  [/\b(?:soft|sticky|wet|slack)\b[^,;.]{0,20}\bdough\b/iu, 0.67],
  [/\b(?:stiff|firm)\b[^,;.]{0,20}\bdough\b/iu, 0.55],
];
const PINCH_GRAMS = 0.4; // sr28 NDB 02047, a dash of salt
const GREASE_GRAMS = 10; // ours: a film in an oven of twelve inches

/** An amount that is written as nothing. */
export const isZero = ({ amount }: LineRead): boolean =>
  amount !== undefined && [...amount.terms, ...amount.same].every(({ high }) => high === 0);

/** Every ingredient of the text in order, told ones too. */
export function ingredientsFor(
  text: string,
  pieces: readonly TextPiece[],
): readonly IngredientRead[] {
  const lines = pieces.flatMap((piece, index) =>
    [...(piece.line === undefined ? [] : [piece.line]), ...(piece.told ?? [])].map((line) => ({
      piece: index,
      line,
      group: piece.group,
    })),
  );
  const missing = liquidMissing(
    lines.map(({ line }) => line),
    fillFor(lines.map(({ line }) => slice(text, line.span))),
  );
  return lines.map(({ piece, line, group }) => ({
    piece,
    line,
    group,
    written: slice(text, line.span),
    ...gramsFor(line, missing),
  }));
}

const slice = (text: string, { from, to }: Span) =>
  text.slice(from, to).replace(/\s+/gu, ' ').trim();

function gramsFor(line: LineRead, missing: number): Pick<IngredientRead, 'grams' | 'from'> {
  if (line.weight !== undefined && 0 < line.weight.likely) {
    return { grams: grams(Math.min(200_000, line.weight.likely)), from: 'weighed' };
  }
  const part = line.search.food?.part;
  const isLiquid = part === 'water' || part === 'liquid';
  if (line.amount === undefined && isLiquid && 0 < missing) {
    return { grams: grams(missing), from: 'filled-up' };
  }
  if (line.amount === undefined && (part === 'salt' || part === 'spice')) {
    return { grams: grams(PINCH_GRAMS), from: 'pinch' };
  }
  if (
    line.amount === undefined &&
    line.unmeasured === 'as-needed' &&
    (part === 'fat' || part === 'flour')
  ) {
    return { grams: grams(GREASE_GRAMS), from: 'pinch' };
  }
  return { grams: grams(0), from: 'unknown' };
}

const fillFor = (written: readonly string[]): number =>
  FILL_FOR.find(([word]) => written.some((each) => word.test(each)))?.[1] ?? FILL_TO;

/** Liquid that one unmeasured liquid still has to bring; 0 where there is none, or no flour. */
function liquidMissing(lines: readonly LineRead[], fillTo: number): number {
  const sum = (wanted: (line: LineRead) => number) =>
    lines.reduce((all, line) => all + (line.weight?.likely ?? 0) * wanted(line), 0);
  const flour = sum(({ search }) =>
    search.food?.part === 'flour' || search.food?.part === 'meal' ? 1 : 0,
  );
  const open = lines.filter(
    ({ amount, search }) =>
      amount === undefined && (search.food?.part === 'water' || search.food?.part === 'liquid'),
  );
  if (open.length === 0 || flour === 0) return 0;
  const there = sum(({ search }) => {
    const food = search.food;
    return food === undefined || food.part === 'flour' || food.part === 'meal' ? 0 : food.water;
  });
  return Math.max(0, fillTo * flour - there) / open.length;
}

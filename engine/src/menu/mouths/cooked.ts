// What is left of it once it is cooked: how much raw for so much on the plate, and back.
// Sources: data/cook-yields.json, each row with its own; rows from memory are grade D and say so.

import table from '../../../data/cook-yields.json' with { type: 'json' };
import { fromUnit, inUnit } from '../../quantity/convert.ts';
import { type CubicMetres, cubicMetres, type Grams, grams } from '../../quantity/unit.ts';

export interface CookYield {
  /** Cooked over raw, by weight; over 0, 1 at the most. */
  readonly factor: number;
  readonly source: string;
  readonly grade: string;
}

/** By the words of its name; undefined where no table that we read has it. */
export function cookYieldOf(name: string): CookYield | undefined {
  const row = rowFor(table.rows, name);
  return row && { factor: row.factor, source: row.source, grade: row.grade };
}

const rowFor = <Row extends { readonly words: readonly string[] }>(
  rows: readonly Row[],
  name: string,
): Row | undefined => {
  const words = name.toLowerCase();
  return rows.find((row) => row.words.every((word) => words.includes(word)));
};

/**
 * Raw meat for servings of so much cooked.
 *
 * @throws RangeError — a yield that is not over 0 and at most 1
 * @source usdaBuyingGuide (230 servings of 2 oz at 0.74)
 * @example 230 servings of 2 oz at 0.74 → 38.85 lb
 */
export function rawForCooked(asked: {
  readonly servings: number;
  readonly cookedEach: Grams;
  readonly factor: number;
}): Grams {
  const { servings, cookedEach, factor } = asked;
  if (!(0 < factor && factor <= 1))
    throw new RangeError(`a yield of ${factor}: wanted over 0 and at most 1`);
  return grams((servings * cookedEach) / factor); // usdaBuyingGuide
}

/**
 * The same as the buying guide has it: raw weight for 100 servings of an ounce, rounded up to the
 * next quarter pound, then multiplied.
 *
 * @source usdaBuyingGuide (8.5 lb for 100 servings of 1 oz)
 */
export function rawByGuide(asked: Parameters<typeof rawForCooked>[0]): Grams {
  const ounce = fromUnit(1, 'ounce');
  const hundred = rawForCooked({ ...asked, servings: 100, cookedEach: ounce });
  const rounded = Math.ceil(4 * inUnit(hundred, 'pound') - 1e-9) / 4; // usdaBuyingGuide
  return fromUnit((rounded * asked.servings * (asked.cookedEach / ounce)) / 100, 'pound');
}

/** Dry beans and rice, boiled: how much they become; undefined for anything else. */
export function boiledVolume(name: string, dry: Grams): CubicMetres | undefined {
  const row = rowFor(table.dry, name);
  if (row === undefined) return undefined;
  return cubicMetres(inUnit(dry, 'pound') * fromUnit(row.cupsPerPound, 'us-cup'));
}

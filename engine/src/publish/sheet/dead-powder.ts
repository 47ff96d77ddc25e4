// A powder that does not fizz is not weighed out: the card says what takes its place instead.

import type { DishLeavening } from '../../formula/index.ts';
import type { Ingredient } from '../../menu/recipe.ts';
import { decimal } from '../speak-number.ts';

export interface DeadPowder {
  readonly sodaGrams: number;
  readonly tartarGrams: number;
}

/** What makes the gas of a dead powder; undefined where the powder is not known to be dead. */
export function deadPowder(leavening: DishLeavening | undefined): DeadPowder | undefined {
  const found = leavening?.notices.find(({ code }) => code === 'FORMULA_POWDER_DEAD');
  if (found === undefined) return undefined;
  const { sodaGrams, tartarGrams } = found.values;
  return { sodaGrams: Number(sodaGrams), tartarGrams: Number(tartarGrams) };
}

export const isPowder = ({ part }: Ingredient) => part === 'powder';

/** Name and weight of what is weighed out instead. */
export const insteadRows = ({ sodaGrams, tartarGrams }: DeadPowder, columns: number) => [
  padded(['baking soda, instead of powder', `${decimal(sodaGrams, 1)} g`], columns),
  padded(['cream of tartar, instead of powder', `${decimal(tartarGrams, 1)} g`], columns),
];

export const padded = (cells: readonly string[], columns: number): readonly string[] =>
  Array.from({ length: columns }, (_, at) => cells[at] ?? '');

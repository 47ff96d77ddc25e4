// Dry acid that was put beside soda, as in powder made at camp, goes with the soda at a height, so
// that neither is left over. Milk, yoghurt and vinegar stay: they are there for more than their acid.
// Sources: neutralisingValues (grade A) by leaven/table.ts.

import { foodOf } from '../menu/needs.ts';
import { grams } from '../quantity/unit.ts';
import type { WeighedIngredient } from './dough.ts';
import type { FormulaChange } from './formula.ts';
import { isTrimmed } from './height.ts';
import { sodaTakenByGram } from './leaven/gas-report.ts';
import { sourFood } from './leaven/table.ts';

export interface HeightCut {
  readonly line: WeighedIngredient;
  readonly change?: FormulaChange;
}

/** Cream of tartar and the like: all of it is acid. */
export function isDryAcid({ ingredient }: WeighedIngredient): boolean {
  const key = foodOf(ingredient)?.key ?? '';
  const sour = sourFood(key);
  return sour === undefined ? 0 < sodaTakenByGram(ingredient) : sour.usual === 1;
}

/**
 * The same lines with each dry acid brought to what the soda now needs.
 *
 * Acid that was over before stays over (it was meant sour), soda that was over stays soapy: only
 * what the height would leave behind is taken out or put in.
 *
 * @source neutralisingValues (grade A)
 */
export function withAcidMet(
  before: readonly WeighedIngredient[],
  cuts: readonly HeightCut[],
): readonly HeightCut[] {
  const was = bowlOf(before);
  const now = bowlOf(cuts.map(({ line }) => line));
  if (!(0 < was.soda && 0 < was.dry) || now.soda === was.soda) return cuts;
  const met = Math.min(was.soda, was.room) * (now.soda / was.soda);
  const wanted =
    now.soda < was.soda
      ? was.dry - Math.max(0, was.room - now.soda - Math.max(0, was.room - was.soda))
      : was.dry + Math.max(0, met - was.room);
  const times = Math.max(0, wanted) / was.dry;
  if (Math.abs(times - 1) < SAME) return cuts;
  return cuts.map((cut) => (isFree(cut.line) ? changed(cut.line, times) : cut));
}

const SAME = 1e-9;
const isFree = (line: WeighedIngredient) => isDryAcid(line) && !isTrimmed(line.ingredient);

/** Soda, the soda that all acid of the bowl takes, and the part of it that dry acid takes [g]. */
function bowlOf(lines: readonly WeighedIngredient[]) {
  const sum = (some: readonly WeighedIngredient[], of: (line: WeighedIngredient) => number) =>
    some.reduce((all, line) => all + of(line), 0);
  const taken = (line: WeighedIngredient) => line.grams * sodaTakenByGram(line.ingredient);
  return {
    soda: sum(
      lines.filter(({ ingredient }) => ingredient.part === 'soda'),
      (line) => line.grams,
    ),
    room: sum(lines, taken),
    dry: sum(lines.filter(isFree), taken),
  };
}

function changed(line: WeighedIngredient, times: number): HeightCut {
  const now = grams(line.grams * times);
  return {
    line: { ...line, grams: now },
    change: {
      ingredient: line.ingredient.name,
      was: line.grams,
      now,
      reason: 'height',
      source: 'neutralisingValues',
    },
  };
}

// The gas that powder, soda and sour foods of a formula make together, and how it is kept.
// Sources: data/leavening.json (neutralisingValues, sodaChemistry, legalPowder; sour foods from
// memory, grade D: milk sours by the day, so a swap that leans on it is told as doubtful).

import table from '../../../data/leavening.json' with { type: 'json' };
import { foodOf } from '../../menu/needs.ts';
import { grams } from '../../quantity/unit.ts';
import { lineOf, withGrams } from '../bench/line.ts';
import { shareOf, type WeighedIngredient } from '../dough.ts';
import { gasOfPowder, gasOfSoda, gasOfSodaHeated, POWDER_GAS_SHARE } from '../gas.ts';

export interface Gas {
  readonly powder: number;
  /** Soda that finds acid, and soda that does not: half the gas, and it tastes of soap. */
  readonly sodaMet: number;
  readonly sodaLeft: number;
  /** Soda that the sour foods could still take. */
  readonly acidLeft: number;
  readonly total: number;
}

export function gasOf(lines: readonly WeighedIngredient[]): Gas {
  const sum = (of: (line: WeighedIngredient) => number) =>
    lines.reduce((all, line) => all + of(line) * line.grams, 0);
  const powder = sum((line) => shareOf(line.ingredient).powder);
  const soda = sum((line) => shareOf(line.ingredient).soda);
  const acid = sum(acidOf);
  const sodaMet = Math.min(soda, acid);
  const sodaLeft = soda - sodaMet;
  const total =
    gasOfPowder(grams(powder)) + gasOfSoda(grams(sodaMet)) + gasOfSodaHeated(grams(sodaLeft));
  return { powder, sodaMet, sodaLeft, acidLeft: acid - sodaMet, total };
}

/** Grams of soda that one gram of this sour food neutralises; 0 where it is not sour. */
export function acidOf({ ingredient }: WeighedIngredient): number {
  const key = foodOf(ingredient)?.key;
  const sour = table.sourFoods.find(({ food }) => food === key);
  const acid = table.acids.find((each) => each.key === sour?.acid);
  return sour === undefined || acid === undefined ? 0 : (sour.share[1]! * acid.value) / 100;
}

export const GAS_OF_SODA = gasOfSoda(grams(1));

/** How sour milk is, is known to a tenth at best: less of a change is none. Ours. */
const SAME_ACID = 0.9;

/**
 * The same gas after the sour foods changed: as much soda as now finds acid, no more soda without
 * acid than before, and powder for the rest. Where acid goes no soda stays without any: the recipe
 * had it for a sourness that is not in the bowl.
 *
 * @source  sodaChemistry (grade A), legalPowder (12 %, grade B)
 */
export function withGasKept(
  lines: readonly WeighedIngredient[],
  before: Gas,
): readonly WeighedIngredient[] {
  if (before.total === 0) return lines;
  const { sodaMet, acidLeft } = gasOf(lines);
  const acid = sodaMet + acidLeft;
  const isLessSour = acid < SAME_ACID * (before.sodaMet + before.acidLeft);
  const unmet = isLessSour ? 0 : before.sodaLeft;
  const left = gasOfSodaHeated(grams(unmet));
  const met = Math.min(acid, Math.max(0, before.total - left) / GAS_OF_SODA);
  const powder = (before.total - left - met * GAS_OF_SODA) / POWDER_GAS_SHARE;
  const withSoda = withPartGrams(lines, 'baking-soda', met + unmet);
  return withPartGrams(withSoda, 'baking-powder', Math.max(0, powder));
}

/** Brings the powder or the soda of a formula to this weight; a line at 0 is taken out. */
export function withPartGrams(
  lines: readonly WeighedIngredient[],
  key: 'baking-soda' | 'baking-powder',
  mass: number,
): readonly WeighedIngredient[] {
  const part = key === 'baking-soda' ? 'soda' : 'powder';
  const now = lines.reduce((sum, line) => sum + shareOf(line.ingredient)[part] * line.grams, 0);
  if (Math.abs(mass - now) < LEAST_LEAVENING) return lines;
  const at = lines.findIndex(({ ingredient }) => ingredient.part === part);
  const line = lines[at];
  if (line === undefined) return mass < now ? lines : [...lines, lineOf(key, mass - now)];
  const next = Math.max(0, line.grams + mass - now);
  return next < LEAST_LEAVENING
    ? lines.filter((_, other) => other !== at)
    : lines.map((each, other) => (other === at ? withGrams(each, next) : each));
}

const LEAST_LEAVENING = 0.05; // g; less can't be spooned (no source)

// The swap itself: how much of the new food does the work of the old one.
// Sources, one a family: sr28 (fat for fat, water and protein of milks, dry matter of eggs, sugar of
// syrups), sodaChemistry and neutralisingValues (leavening), yeastKinds, selfRisingFlour.

import type { Food } from '../../larder/food.ts';
import { foodWithKey } from '../../larder/larder.ts';
import { foodOf } from '../../menu/needs.ts';
import { lineOf, withGrams } from '../bench/line.ts';
import { selfRisingShare, type WeighedIngredient } from '../dough.ts';
import { acidOf, GAS_OF_SODA, gasOf, withGasKept, withPartGrams } from './gas.ts';
import type { MadeOf, SwapFamily } from './offers.ts';
import { asDryYeast } from './yeasts.ts';

export interface SwapDraft {
  readonly lines: readonly WeighedIngredient[];
  /** Where the ratio comes from. */
  readonly source: string;
}

interface Swap {
  readonly lines: readonly WeighedIngredient[];
  readonly at: number;
  readonly to: string;
  /** Part of the line that is swapped, 0 … 1. */
  readonly share: number;
}

/** The lines with the swap made, before water, fat and salt are brought back. */
export function draftOf(family: SwapFamily, swap: Swap): SwapDraft {
  switch (family) {
    case 'fat':
      return { lines: replaced(swap, (old, next) => old.fat / next.fat), source: 'sr28' };
    case 'sweet':
      return { lines: replaced(swap, (old, next) => old.sugar / next.sugar), source: 'sr28' };
    case 'egg':
      return {
        lines: replaced(swap, (old, next) => (1 - old.water) / (1 - next.water)),
        source: 'sr28',
      };
    case 'yeast': {
      const [old, next] = [swap.lines[swap.at]!, lineOf(swap.to, 1)];
      const ratio = asDryYeast(old.ingredient) / asDryYeast(next.ingredient);
      return { lines: replaced(swap, () => ratio), source: 'yeastKinds' };
    }
    case 'milk':
      return { lines: milkSwapped(swap), source: 'sr28' };
    case 'leavening':
      return leaveningSwapped(swap);
    case 'flour':
      return { lines: flourSwapped(swap), source: 'selfRisingFlour' };
  }
}

/** The new food in place of the old; where it is in the bowl already the two are one line. */
function replaced(
  { lines, at, to, share }: Swap,
  gramsPerGram: (old: Food, next: Food) => number,
): readonly WeighedIngredient[] {
  const line = lines[at]!;
  const [old, next] = [foodOf(line.ingredient)!, foodWithKey(to)!];
  const mass = line.grams * share * gramsPerGram(old, next);
  return placed({ lines, at, share }, 0 < mass ? lineOf(to, mass) : undefined);
}

function placed(
  { lines, at, share }: Pick<Swap, 'lines' | 'at' | 'share'>,
  next: WeighedIngredient | undefined,
): readonly WeighedIngredient[] {
  const key = next?.ingredient.food;
  const there = lines.findIndex(
    (line, other) => other !== at && foodOf(line.ingredient)?.key === key,
  );
  return lines.flatMap((line, other) => {
    if (other === there && next !== undefined) return [withGrams(line, line.grams + next.grams)];
    if (other !== at) return [line];
    const rest = share < 1 ? [withGrams(line, line.grams * (1 - share))] : [];
    return next === undefined || there !== -1 ? rest : [...rest, next];
  });
}

/**
 * Liquid for liquid by the water in it; dry and evaporated milk by protein, the part of milk that
 * is in all of them; plant drinks as the milk they stand for. The water follows when figures are
 * brought back; soda and powder follow the acid.
 *
 * @source  sr28 NDB 01077, 01154, 01092, 01096, 01088, 01094 (protein, water)
 */
function milkSwapped(swap: Swap): readonly WeighedIngredient[] {
  const before = gasOf(swap.lines);
  const old = foodOf(swap.lines[swap.at]!.ingredient)!;
  const next = foodWithKey(swap.to)!;
  // Dry milk stirred into water that is there: the water stays.
  const isStirredIn = old.part === 'water' && next.part === 'dry-milk';
  const lines = isStirredIn
    ? stirredIn(swap, asMilk(old) / asMilk(next))
    : replaced(swap, () => milkRatio(old, next));
  return changesAcid(swap.lines, lines) ? withGasKept(lines, before) : lines;
}

function stirredIn({ lines, at, to, share }: Swap, ratio: number): readonly WeighedIngredient[] {
  const mass = lines[at]!.grams * share * ratio;
  const there = lines.findIndex(({ ingredient }) => foodOf(ingredient)?.key === to);
  return there === -1
    ? [...lines, lineOf(to, mass)]
    : lines.map((line, other) => (other === there ? withGrams(line, line.grams + mass) : line));
}

function milkRatio(old: Food, next: Food): number {
  if (next.part === 'water' && !isWet(old)) return 0;
  // Dried from the very milk it stands for: as much of its dry matter is as much of its acid.
  const isSameMilk = [old, next].every(({ key }) => /^buttermilk/.test(key));
  if (isSameMilk) return (1 - old.water) / (1 - next.water); // sr28 NDB 01088, 01094
  return asMilk(old) / asMilk(next);
}

const WET = 0.8;
const isWet = (food: Food) => WET <= food.water;

/** Grams of whole milk that one gram stands for. */
function asMilk(food: Food): number {
  const milk = foodWithKey('milk')!;
  return isWet(food) ? food.water / milk.water : food.protein / milk.protein;
}

function changesAcid(one: readonly WeighedIngredient[], other: readonly WeighedIngredient[]) {
  const acid = (lines: readonly WeighedIngredient[]) =>
    lines.reduce((sum, line) => sum + acidOf(line) * line.grams, 0);
  return 0.01 < Math.abs(acid(one) - acid(other));
}

function leaveningSwapped(swap: Swap): SwapDraft {
  const { lines, at, to } = swap;
  if (to === 'baking-powder') return { lines: sodaToPowder(swap), source: 'sodaChemistry' };
  const source = 'neutralisingValues';
  if (to === ('soda-and-buttermilk' satisfies MadeOf))
    return { lines: withButtermilk(lines), source };
  const line = lines[at]!;
  const gas = gasOf([{ ...line, grams: (line.grams * swap.share) as typeof line.grams }]).total;
  const soda = gas / GAS_OF_SODA;
  const key =
    to === ('soda-and-vinegar' satisfies MadeOf) ? 'vinegar-distilled' : 'cream-of-tartar';
  const acid = lineOf(key, soda / acidOf(lineOf(key, 1)));
  const withSoda = placed(swap, lineOf('baking-soda', soda));
  return { lines: [...withSoda, acid], source };
}

/** Soda and what it leaves of its acid: powder with the same gas; the cream of tartar goes too. */
function sodaToPowder({ lines }: Swap): readonly WeighedIngredient[] {
  const before = gasOf(lines);
  const without = lines.filter(
    ({ ingredient }) => ingredient.part !== 'soda' && foodOf(ingredient)?.key !== 'cream-of-tartar',
  );
  const powder = before.powder + (before.total - gasOf(withPowderOnly(lines)).total) / 0.12; // legalPowder
  return withPartGrams(without, 'baking-powder', powder);
}

const withPowderOnly = (lines: readonly WeighedIngredient[]) =>
  lines.filter(({ ingredient }) => ingredient.part !== 'soda');

/** The largest liquid becomes buttermilk; soda for its acid, powder for the rest. */
function withButtermilk(lines: readonly WeighedIngredient[]): readonly WeighedIngredient[] {
  const liquids = lines.filter(({ ingredient }) => {
    const food = foodOf(ingredient);
    return food !== undefined && (food.part === 'water' || food.part === 'liquid');
  });
  const largest = liquids.reduce<WeighedIngredient | undefined>(
    (best, line) => (best === undefined || best.grams < line.grams ? line : best),
    undefined,
  );
  if (largest === undefined) return lines;
  return milkSwapped({ lines, at: lines.indexOf(largest), to: 'buttermilk-lowfat', share: 1 });
}

/** Flour, powder and salt of a self-rising flour, apart or together. */
function flourSwapped(swap: Swap): readonly WeighedIngredient[] {
  const { lines, at, to, share } = swap;
  const line = lines[at]!;
  const inside = selfRisingShare(foodWithKey('self-rising-flour'))!;
  if (to === ('powder-and-salt' satisfies MadeOf)) {
    const mass = line.grams * share;
    return [
      ...placed(swap, lineOf('all-purpose-flour', mass * inside.flour)),
      lineOf('baking-powder', mass * inside.powder),
      lineOf('salt', mass * inside.salt),
    ];
  }
  const mass = (line.grams * share) / inside.flour;
  const withFlour = placed(swap, lineOf('self-rising-flour', mass));
  const powder = gasOf(lines).powder;
  return withPartGrams(withFlour, 'baking-powder', powder);
}

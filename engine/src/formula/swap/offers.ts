// What can be swapped for what: the families of foods that do the same work.

import type { Food } from '../../larder/food.ts';
import { foodWithKey } from '../../larder/larder.ts';
import { foodOf } from '../../menu/needs.ts';
import { isDough, selfRisingShare, type WeighedIngredient } from '../dough.ts';
import { yeastKeys } from './yeasts.ts';

export type SwapFamily = 'fat' | 'milk' | 'leavening' | 'yeast' | 'flour' | 'egg' | 'sweet';

/** One line of the formula and what could stand in its place. */
export interface SwapOffer {
  readonly line: number;
  readonly family: SwapFamily;
  /** A key of the larder, or one of `madeOf` where several foods stand in for one. */
  readonly to: string;
}

/** Foods that stand in together for one. */
export const madeOf = {
  'soda-and-cream-of-tartar': 'baking soda and cream of tartar',
  'soda-and-vinegar': 'baking soda and vinegar',
  'soda-and-buttermilk': 'baking soda, with buttermilk for the liquid',
  'powder-and-salt': 'plain flour with baking powder and salt',
} as const;
export type MadeOf = keyof typeof madeOf;

/** A swap's other side in words. */
export const swapName = (to: string): string =>
  to in madeOf ? madeOf[to as MadeOf] : (foodWithKey(to)?.name ?? to);

export const isMadeOf = (to: string): to is MadeOf => to in madeOf;

const FATS = [
  'lard',
  'shortening',
  'butter-salted',
  'butter-unsalted',
  'margarine-stick',
  'oil-canola',
  'oil-olive',
  'sunflower-oil',
];
const MILKS = [
  'water',
  'milk',
  'milk-reduced-fat',
  'dry-milk',
  'dry-milk-instant',
  'milk-evaporated',
  'buttermilk-lowfat',
  'buttermilk-dried',
  'oat-drink',
  'soy-drink',
];
const EGGS = ['egg', 'egg-dried-whole'];
const SWEET = ['sugar', 'honey', 'molasses', 'maple-syrup', 'brown-sugar'];
const LEAST_FAT = 0.75;

/** Everything that can be swapped in these lines, in their order. */
export const swapsFor = (lines: readonly WeighedIngredient[]): readonly SwapOffer[] =>
  lines.flatMap((line, at) => {
    const family = familyOf(line);
    if (family === undefined) return [];
    const own = foodOf(line.ingredient)?.key;
    return targetsOf(family, line, lines)
      .filter((to) => to !== own)
      .map((to): SwapOffer => ({ line: at, family, to }));
  });

export function familyOf(line: WeighedIngredient): SwapFamily | undefined {
  const food = foodOf(line.ingredient);
  if (food === undefined || !isDough(line.ingredient)) return undefined;
  if (food.part === 'fat' && LEAST_FAT <= food.fat) return 'fat';
  if (food.part === 'water' || isMilk(food)) return 'milk';
  if (food.part === 'powder' || food.part === 'soda') return 'leavening';
  if (yeastKeys.includes(food.key)) return 'yeast';
  if (food.key === 'all-purpose-flour' || selfRisingShare(food) !== undefined) return 'flour';
  if (EGGS.includes(food.key)) return 'egg';
  return SWEET.includes(food.key) ? 'sweet' : undefined;
}

const isMilk = ({ key, part }: Food) =>
  MILKS.includes(key) ||
  ((part === 'liquid' || part === 'dry-milk') && /milk|drink|yogurt/.test(key));

function targetsOf(
  family: SwapFamily,
  { ingredient }: WeighedIngredient,
  lines: readonly WeighedIngredient[],
): readonly string[] {
  const food = foodOf(ingredient);
  switch (family) {
    case 'fat':
      return FATS;
    case 'milk':
      return MILKS;
    case 'yeast':
      return yeastKeys;
    case 'egg':
      return EGGS;
    case 'sweet':
      return SWEET;
    case 'leavening':
      return food?.part === 'soda'
        ? ['baking-powder']
        : ['soda-and-cream-of-tartar', 'soda-and-vinegar', 'soda-and-buttermilk'];
    case 'flour': {
      if (food?.key === 'self-rising-flour') return ['powder-and-salt'];
      const hasPowder = lines.some((line) => line.ingredient.part === 'powder');
      return food?.key === 'all-purpose-flour' && hasPowder ? ['self-rising-flour'] : [];
    }
  }
}

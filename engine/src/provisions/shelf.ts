// On which shelf is it found, and how is it kept? By what it is; the cook's words win.

import type { FoodPart } from '../larder/food.ts';
import type { Ingredient } from '../menu/recipe.ts';
import type { ShoppingLine } from './provisions.ts';

type Shelf = Pick<ShoppingLine, 'shelf' | 'keep'>;

export const SHELVES: readonly ShoppingLine['shelf'][] = [
  'dry',
  'spice',
  'tins',
  'produce',
  'meat',
  'cold',
  'other',
];

/** Shelf and keeping of one ingredient: common practice, no source. */
export function shelfOf(ingredient: Ingredient): Shelf {
  const words =
    `${ingredient.name} ${ingredient.food ?? ''} ${ingredient.note ?? ''}`.toLowerCase();
  const shelf = TINNED.test(words) ? TINS : freshShelfOf(ingredient, words);
  return /\bfrozen\b/.test(words) ? { ...shelf, keep: 'frozen' } : shelf;
}

const TINNED = /\b(canned|tinned|tin|tins|jar|jarred|evaporated|condensed)\b/;
const TINS: Shelf = { shelf: 'tins', keep: 'dry' };
const DRY: Shelf = { shelf: 'dry', keep: 'dry' };
const COLD: Shelf = { shelf: 'cold', keep: 'cold' };
const PRODUCE: Shelf = { shelf: 'produce', keep: 'cool' };
const MEAT: Shelf = { shelf: 'meat', keep: 'cold' };

function freshShelfOf(ingredient: Ingredient, words: string): Shelf {
  const { part } = ingredient;
  if (part === 'yeast' && /\bfresh\b/.test(words)) return COLD;
  if (part === 'fat') return /\boil\b|oil-/.test(words) ? DRY : COLD;
  if (part === 'acid') return /\blemon|lime\b/.test(words) ? PRODUCE : DRY;
  if (part === 'liquid') return /\b(stock|broth|rice|oat|coffee|juice)\b/.test(words) ? DRY : COLD;
  if (part === 'bean') return /\b(cooked|boiled)\b/.test(words) ? COLD : DRY;
  if (part === 'fruit') return /\b(raisins?|dried|currants?|dates)\b/.test(words) ? DRY : PRODUCE;
  if (part === 'vegetable') return /\b(paste|dried|dehydrated)\b/.test(words) ? TINS : PRODUCE;
  if (part === 'other' && ingredient.food === undefined) return { shelf: 'other', keep: 'cool' };
  return SHELF[part];
}

const SHELF: Readonly<Record<FoodPart, Shelf>> = {
  flour: DRY,
  meal: DRY,
  water: { shelf: 'other', keep: 'cool' },
  liquid: COLD,
  fat: COLD,
  salt: DRY,
  sugar: DRY,
  egg: COLD,
  yeast: DRY,
  powder: DRY,
  soda: DRY,
  acid: DRY,
  'dry-milk': DRY,
  meat: MEAT,
  poultry: MEAT,
  bean: DRY,
  grain: DRY,
  vegetable: PRODUCE,
  fruit: PRODUCE,
  nut: DRY,
  cheese: COLD,
  spice: { shelf: 'spice', keep: 'dry' },
  other: DRY,
};

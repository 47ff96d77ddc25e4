// What a recipe is as a dough: flour as 100 %, true hydration, fat, salt, sugar, leavening.
// Water inside milk, eggs, honey and butter counts as water; the water inside flour does not.

import type { Food, FoodPart } from '../larder/food.ts';
import { foodOf } from '../menu/needs.ts';
import type { Ingredient } from '../menu/recipe.ts';
import { type Grams, grams, ratio } from '../quantity/unit.ts';
import type { FormulaPercentages, Handling } from './formula.ts';

/** One ingredient with the grams that go into this batch. */
export interface WeighedIngredient {
  readonly ingredient: Ingredient;
  readonly grams: Grams;
}

export const isFlour = (ingredient: Ingredient) =>
  ingredient.part === 'flour' || ingredient.part === 'meal';

const NOT_DOUGH: readonly FoodPart[] = [
  'meat',
  'poultry',
  'bean',
  'grain',
  'vegetable',
  'fruit',
  'nut',
  'cheese',
];

/**
 * True for what makes the dough or batter; fruit, nuts and what is marked for the filling are not.
 * Recipes mark it in brackets: "sugar (fruit)".
 */
export const isDough = (ingredient: Ingredient) =>
  !NOT_DOUGH.includes(ingredient.part) && !/\((fruit|filling)\)/i.test(ingredient.name);

export const flourIn = (lines: readonly WeighedIngredient[]): Grams =>
  grams(lines.reduce((sum, each) => sum + shareOf(each.ingredient).flour * each.grams, 0));

/** Shares of flour; undefined where there is none. */
export function percentagesOf(lines: readonly WeighedIngredient[]): FormulaPercentages | undefined {
  const flour = flourIn(lines);
  if (!(0 < flour)) return undefined;
  const share = (of: keyof DoughShare) =>
    ratio(lines.reduce((sum, each) => sum + shareOf(each.ingredient)[of] * each.grams, 0) / flour);
  return {
    hydration: share('water'),
    fat: share('fat'),
    salt: share('salt'),
    sugar: share('sugar'),
    powder: share('powder'),
    soda: share('soda'),
    yeast: share('yeast'),
  };
}

/** What one gram of an ingredient brings into a dough [g]. */
export interface DoughShare {
  readonly flour: number;
  readonly water: number;
  readonly fat: number;
  readonly salt: number;
  readonly sugar: number;
  readonly powder: number;
  readonly soda: number;
  readonly yeast: number;
}

const NOTHING: DoughShare = {
  flour: 0,
  water: 0,
  fat: 0,
  salt: 0,
  sugar: 0,
  powder: 0,
  soda: 0,
  yeast: 0,
};

const OF_PART: { readonly [part in FoodPart]?: Partial<DoughShare> } = {
  flour: { flour: 1 },
  meal: { flour: 1 },
  water: { water: 1 },
  liquid: { water: 0.9 }, // most drinks and milks, sr28
  fat: { fat: 1 },
  salt: { salt: 1 },
  sugar: { sugar: 1 },
  egg: { water: 0.76, fat: 0.1 }, // sr28 NDB 01123
  powder: { powder: 1 },
  soda: { soda: 1 },
  yeast: { yeast: 1 },
};

/**
 * What one gram of this adds to a dough; nothing where it is fruit, meat or a filling.
 *
 * Sodium of powder and soda is no salt to the taste or the yeast, and the water in their crystals
 * is bound; tap water counts as all water; the water, fat and sugar inside flour do not count; a
 * food that we do not know counts by what it is there for. A starter is flour and water.
 *
 * @source sr28 for what is in a food; selfRisingFlour for what is mixed into it
 */
export function shareOf(ingredient: Ingredient): DoughShare {
  if (!isDough(ingredient)) return NOTHING;
  const starter = starterShare(ingredient);
  if (starter !== undefined) return starter;
  const { part } = ingredient;
  const food = foodOf(ingredient);
  if (part === 'flour' || part === 'meal') return selfRisingShare(food) ?? FLOUR;
  const own = { ...NOTHING, ...OF_PART[part] };
  if (part === 'powder' || part === 'soda' || part === 'water' || food === undefined) return own;
  const { water, fat, salt, sugar } = food;
  return { ...NOTHING, water, fat, salt, sugar, yeast: own.yeast };
}

const FLOUR: DoughShare = { ...NOTHING, flour: 1 };
const STARTER = /\b(starter|levain|poolish|biga|sponge)\b/i;
const STARTER_WATER = /(\d{2,3}) ?% (?:water|hydration)/i;

/** Equal parts unless the words say else ("starter, 80 % water"); common practice, no source. */
function starterShare({ name, note }: Ingredient): DoughShare | undefined {
  if (!STARTER.test(name)) return undefined;
  const said = STARTER_WATER.exec(`${name} ${note ?? ''}`)?.[1];
  const water = said === undefined ? 1 : Number(said) / 100;
  return { ...NOTHING, flour: 1 / (1 + water), water: water / (1 + water) };
}

/** Powder in self-rising flour: its least gas by law over that of powder by law, 0.5 / 12 %. */
export const POWDER_IN_SELF_RISING = 0.005 / 0.12; // selfRisingFlour, legalPowder
const SALT_OF_POWDER = 10600 / 38758; // sodium as table salt, sr28 NDB 18369

/**
 * Powder and salt that are mixed into a self-rising flour: powder by law, and the rest of its
 * sodium as salt (sr28 NDB 20082). Undefined for plain flour.
 */
export function selfRisingShare(food: Food | undefined): DoughShare | undefined {
  if (food === undefined || !/self-?rising/.test(food.key)) return undefined;
  const powder = POWDER_IN_SELF_RISING;
  const salt = Math.max(0, food.salt - powder * SALT_OF_POWDER);
  return { ...NOTHING, flour: 1 - powder - salt, powder, salt };
}

/**
 * How a dough or batter of this hydration feels; the one function for every sheet.
 *
 * Doughs part by what bread bakers call them: 57 % and less stiff, 58 to 65 smooth, to 72 tacky, past
 * it sticky. Batters by two school books of cookery, cups of liquid to cups of flour: 1 : 1 to 1 1/2
 * pours, 1 : 2 drops, 1 : 2 2/3 or 1 : 3 is a soft dough; at 237 g to 125 g that is 126, 95, 71 or
 * 63 %. Where books leave a gap the bound lies halfway between (ours).
 *
 * @source hydrationClasses for 57 and 65 %, battersAndDoughs (grade B); 72 % from memory (grade D)
 */
export function handlingFor(hydration: number): Handling {
  if (1.1 <= hydration) return 'pour-batter'; // between 95 and 126 %
  if (0.83 <= hydration) return 'drop-batter'; // between 71 and 95 %
  if (hydration < 0.575) return 'stiff';
  if (hydration <= 0.65) return 'smooth';
  return hydration < 0.72 ? 'tacky' : 'sticky';
}

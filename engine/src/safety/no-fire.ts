// If nobody may light: which dishes of this menu can still be eaten, from the same provisions, and which
// can't. Raw flour, meat, egg, dry beans and rice are never called food without heat.
// Sources: foodsafety-chart, fda-flour, fda-bad-bug-book, fsis-two-hours; what is eaten raw: common practice.

import type { Menu } from '../menu/menu.ts';
import type { Ingredient, Recipe } from '../menu/recipe.ts';

/** 'as-it-is': never needed fire. 'cold': safe cold. 'stove': over a stove with a valve. 'not': left out. */
export type NoFireWay = 'as-it-is' | 'cold' | 'stove' | 'not';

export interface NoFireDish {
  readonly dish: string;
  readonly way: NoFireWay;
  /** What in it wants heat. */
  readonly needsHeat: readonly string[];
  /** Cooked at home: cold only if it was kept cold all the way. */
  readonly keptCold: readonly string[];
}

export interface NoFireMenu {
  readonly dishes: readonly NoFireDish[];
  /** Foods of the dishes that are left out, which can be eaten as they are. */
  readonly asTheyAre: readonly string[];
}

/** The fallback for a day without fire. */
export function noFireMenu({ dishes, recipes }: Menu): NoFireMenu {
  const found = dishes.flatMap((dish) => {
    const recipe = recipes.find(({ id }) => id === dish.recipe);
    return recipe === undefined ? [] : [{ ...withoutFire(recipe), dish: dish.id, recipe }];
  });
  const leftOut = found.filter(({ way }) => way === 'not' || way === 'stove');
  const foods = leftOut.flatMap(({ recipe }) => recipe.ingredients.filter(isEatenAsItIs));
  return {
    dishes: found.map(({ recipe: _recipe, ...dish }) => dish),
    asTheyAre: [...new Set(foods.map(({ name }) => name))].sort(),
  };
}

function withoutFire(recipe: Recipe): Omit<NoFireDish, 'dish'> {
  const keptCold = recipe.ingredients.filter(isCookedAtHome).map(({ name }) => name);
  if (recipe.method === 'none') return { way: 'as-it-is', needsHeat: [], keptCold: [] };
  const needsHeat = recipe.ingredients.filter(wantsHeat).map(({ name }) => name);
  const isStove = ['simmer', 'boil', 'fry', 'keep-warm'].includes(recipe.method);
  const way = needsHeat.length === 0 ? 'cold' : isStove ? 'stove' : 'not';
  return { way, needsHeat, keptCold: way === 'cold' ? keptCold : [] };
}

/** Raw, and not safe or no food at all until it is hot. Where nobody knows, it wants heat. */
function wantsHeat(ingredient: Ingredient): boolean {
  const words = wordsOf(ingredient);
  if (READY.test(words) || isCookedAtHome(ingredient)) return false;
  switch (ingredient.part) {
    case 'flour':
    case 'meal':
    case 'meat':
    case 'poultry':
    case 'egg':
    case 'bean':
    case 'grain':
      return true;
    case 'vegetable':
      return COOKED_ONLY.test(words);
    case 'fruit':
      return /\b(plantain|quince|elderberr|rhubarb)/.test(words);
    case 'other':
      return ingredient.food === undefined && ingredient.own === undefined;
    default:
      return false;
  }
}

const wordsOf = ({ name, note }: Ingredient) => `${name} ${note ?? ''}`.toLowerCase();

/** Sealed tins, and what is sold to be eaten as it is. */
const READY =
  /\b(canned|tinned|tins?|jar|jarred|crackers?|tortillas?|crispbread|hard-?tack|roasted nuts?|ready to eat|smoked (ham|sausage)|salami|jerky|dried (beef|sausage)|breadcrumbs?|cooked ham)\b/;
const COOKED_AT_HOME = /\b(cooked|boiled|hard-boiled|baked|left-?over)\b/;
const isCookedAtHome = (ingredient: Ingredient) => {
  const words = wordsOf(ingredient);
  return COOKED_AT_HOME.test(words) && !READY.test(words) && !/\buncooked\b/.test(words);
};
/** Vegetables that nobody eats raw, some of them harmful so. */
const COOKED_ONLY =
  /\b(potato(es)?|yams?|cassava|taro|squash|pumpkin|aubergines?|eggplants?|green beans?|string beans?|kidney|parsnips?|turnips?|sprouts?|mushrooms?|nettles?|fiddleheads?)\b/;

const EATEN: readonly Ingredient['part'][] = ['fruit', 'cheese', 'nut'];
const isEatenAsItIs = (ingredient: Ingredient) => {
  const words = wordsOf(ingredient);
  if (wantsHeat(ingredient) || isCookedAtHome(ingredient)) return false;
  if (EATEN.includes(ingredient.part)) return true;
  if (ingredient.part === 'vegetable')
    return !/\b(garlic|onions?|paste|dried|ginger)\b/.test(words);
  return READY.test(words) && ['bean', 'meat', 'poultry', 'grain'].includes(ingredient.part);
};

// Who can't eat what: allergens and ways of eating against what is in a dish.

import type { Allergen, Camp, Need } from '../camp/camp.ts';
import { foodWithKey } from '../larder/larder.ts';
import { foodNamed } from '../larder/name.ts';
import type { Ingredient, Recipe } from './recipe.ts';

export interface Unfit {
  readonly who: string;
  /** The allergen, or the ingredient that breaks a way of eating. */
  readonly because: string;
}

/** One entry a person who can't eat it; a mere preference is not counted as can't. */
export function unfitFor(recipe: Recipe, camp: Camp): readonly Unfit[] {
  const unfit: Unfit[] = [];
  for (const need of camp.needs) {
    const because = need.strictness === 'preference' ? undefined : unfitBecause(need, recipe);
    if (because !== undefined) unfit.push({ who: need.who, because });
  }
  return unfit;
}

/** What in the recipe breaks this need; undefined where nothing does. */
export function unfitBecause(need: Need, recipe: Recipe): string | undefined {
  if (need.kind === 'vegetarian' || need.kind === 'vegan') {
    return recipe.ingredients.find((each) => isFromAnimal(each, need.kind === 'vegan'))?.name;
  }
  return allergensIn(recipe).find((allergen) => breaks(allergen, need.kind as Allergen));
}

/** Wheat holds gluten; for someone who avoids wheat other gluten is no matter. */
const breaks = (found: Allergen, need: Allergen) =>
  found === need || (need === 'gluten' && found === 'wheat');

/**
 * Allergens of a dish: as the ingredients say, as the cook says. What the larder knows for certain
 * is added once more, so that an ingredient that nobody filled in still errs on the safe side.
 */
export function allergensIn(recipe: Pick<Recipe, 'ingredients' | 'contains'>): readonly Allergen[] {
  const found = new Set<Allergen>(recipe.contains);
  for (const each of recipe.ingredients) {
    for (const allergen of [...each.allergens, ...(foodOf(each)?.allergens ?? [])]) {
      found.add(allergen);
    }
  }
  return [...found].sort();
}

/**
 * Allergens that may be in it: read the label. Never one that is surely in it, and only what the
 * ingredient says: the larder filled its doubts in when it was read, and a label clears them.
 */
export function labelsToCheck(
  recipe: Recipe,
): readonly { ingredient: string; allergen: Allergen }[] {
  const sure = allergensIn(recipe);
  return recipe.ingredients.flatMap((each) => {
    return [...new Set(each.checkLabel)]
      .filter((allergen) => !sure.includes(allergen))
      .map((allergen) => ({ ingredient: each.name, allergen }));
  });
}

/** The food of an ingredient: the cook's own, else the larder's by its key, else by its name. */
export const foodOf = ({ own, food, name }: Ingredient) =>
  own ?? (food === undefined ? foodNamed(name) : foodWithKey(food));

const FLESH: readonly Allergen[] = ['fish', 'crustacean', 'mollusc'];
const FLESH_FOODS = ['lard', 'stock-meat'];

function isFromAnimal(ingredient: Ingredient, alsoMilkAndEgg: boolean): boolean {
  const food = foodOf(ingredient);
  const allergens = [...ingredient.allergens, ...(food?.allergens ?? [])];
  if (ingredient.part === 'meat' || ingredient.part === 'poultry') return true;
  if (food?.part === 'meat' || food?.part === 'poultry') return true;
  if (FLESH_FOODS.includes(food?.key ?? '') || FLESH.some((each) => allergens.includes(each))) {
    return true;
  }
  return (
    alsoMilkAndEgg &&
    (allergens.includes('milk') || allergens.includes('egg') || food?.key === 'honey')
  );
}

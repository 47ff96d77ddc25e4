// Who can eat what, and how a dish is kept free for someone. A label that has not been read is
// never treated as "absent". Sources: falcpa-faster, eu-1169-2011, aafa-cast-iron.

import type { Allergen, Camp, Need } from '../camp/camp.ts';
import type { Menu, MenuDish } from '../menu/menu.ts';
import { allergensIn, labelsToCheck, unfitBecause } from '../menu/needs.ts';
import type { Recipe } from '../menu/recipe.ts';
import type { CampSafety } from './care.ts';

/** What a need looks for in a dish; wheat holds gluten, and gluten may stand for wheat. */
export function watchedBy(kind: Need['kind']): readonly Allergen[] {
  if (kind === 'vegan' || kind === 'vegetarian') return [];
  return kind === 'gluten' ? ['gluten', 'wheat'] : [kind];
}

/** Allergens that the mouths of this camp avoid. */
export function watchedIn(camp: Camp): readonly Allergen[] {
  const watched = camp.needs
    .filter((need) => need.strictness !== 'preference')
    .flatMap((need) => watchedBy(need.kind));
  return [...new Set(watched)].sort();
}

/** Of these, what somebody must not even meet in traces. */
export function strictIn(camp: Camp): readonly Allergen[] {
  const strict = camp.needs
    .filter((need) => need.strictness === 'strict')
    .flatMap((need) => watchedBy(need.kind));
  return [...new Set(strict)].sort();
}

/**
 * What a dish is kept free of: asked for by a need or by its oven, not in it, and no label open.
 * Empty for a dish that is not kept apart.
 */
export function freeFromOf(asked: {
  readonly dish: MenuDish;
  readonly recipe: Recipe;
  readonly camp: Camp;
}): readonly Allergen[] {
  const { dish, recipe, camp } = asked;
  if (!dish.freeFrom) return [];
  const inIt = allergensIn(recipe);
  const open = labelsToCheck(recipe).map((label) => label.allergen);
  const wanted = new Set([...watchedIn(camp), ...ovensKeptFree(camp, dish)]);
  return [...wanted].filter((each) => !inIt.includes(each) && !open.includes(each)).sort();
}

function ovensKeptFree(camp: Camp, dish: MenuDish): readonly Allergen[] {
  const oven = camp.ovens.find((candidate) => candidate.id === dish.pins.oven);
  return oven?.keptFreeOf ?? [];
}

/**
 * Dish by dish who can't eat it: an ingredient, a label that is not read, or, for someone who is
 * strict, a dish that is not kept apart. A preference is not counted as can't.
 */
export function unfitIn(camp: Camp, menu: Menu): CampSafety['unfit'] {
  return menu.dishes.flatMap((dish) => {
    const recipe = menu.recipes.find((candidate) => candidate.id === dish.recipe);
    if (recipe === undefined) return [];
    return camp.needs.flatMap((need) => {
      if (need.strictness === 'preference') return [];
      const because = unfitReason(need, dish, recipe);
      return because === undefined ? [] : [{ dish: dish.id, who: need.who, because }];
    });
  });
}

/** Why this need can't be met by this dish; undefined where it can. */
export function unfitReason(need: Need, dish: MenuDish, recipe: Recipe): string | undefined {
  const inIt = unfitBecause(need, recipe);
  if (inIt !== undefined) return inIt;
  const watched = watchedBy(need.kind);
  const label = labelsToCheck(recipe).find((each) => isOpenFor(need, each.allergen));
  if (label !== undefined) return `label not read: ${label.ingredient}`;
  if (need.kind === 'wheat' && allergensIn(recipe).includes('gluten')) {
    return 'label not read: gluten';
  }
  const isApart = dish.freeFrom || watched.length === 0;
  return need.strictness === 'strict' && !isApart ? NOT_KEPT_APART : undefined;
}

/** The dish holds nothing wrong, but shares tools, table and iron with dishes that do. */
export const NOT_KEPT_APART = 'not kept apart';

const isOpenFor = (need: Need, allergen: Allergen) => watchedBy(need.kind).includes(allergen);

// What each dish holds, may hold, or is kept free of; and in which order, with which oven and tools, so that
// it stays so. Sources: falcpa-faster, eu-1169-2011, aafa-cast-iron; first and with its own spoon: common practice.

import type { Allergen, Camp, CampOven } from '../camp/camp.ts';
import type { Menu, MenuDish } from '../menu/menu.ts';
import { allergensIn, labelsToCheck } from '../menu/needs.ts';
import type { Recipe } from '../menu/recipe.ts';
import { freeFromOf, strictIn } from './kept-apart.ts';

export interface DishApart {
  readonly dish: string;
  /** Surely in it; gluten wherever wheat is. */
  readonly holds: readonly Allergen[];
  /** May be in it, until the labels of these are read: counts as in it. */
  readonly labels: readonly {
    readonly allergen: Allergen;
    readonly ingredients: readonly string[];
  }[];
  /** Kept free of these: not in it, no label open, own oven and tools. */
  readonly free: readonly Allergen[];
  /** An oven that never meets them; undefined where the camp keeps none for it, or it needs none. */
  readonly oven?: CampOven;
  /** It wants such an oven and there is none. */
  readonly isOvenMissing: boolean;
}

/**
 * Dishes in the order in which they are made and served: kept free first, then those that hold least.
 * A label that nobody has read never counts as absent.
 */
export function separationPlan({ camp, menu }: { readonly camp: Camp; readonly menu: Menu }) {
  const dishes = menu.dishes.flatMap((dish): readonly DishApart[] => {
    const recipe = menu.recipes.find(({ id }) => id === dish.recipe);
    return recipe === undefined ? [] : [apartOf(dish, recipe, camp)];
  });
  const danger = ({ holds, labels }: DishApart) => holds.length + labels.length;
  return [...dishes].sort(
    (one, other) => other.free.length - one.free.length || danger(one) - danger(other),
  );
}

function apartOf(dish: MenuDish, recipe: Recipe, camp: Camp): DishApart {
  const free = freeFromOf({ dish, recipe, camp });
  const needsOven = recipe.method !== 'none' && free.length > 0;
  const oven = needsOven ? ovenFor(dish, free, camp) : undefined;
  return {
    dish: dish.id,
    holds: withGluten(allergensIn(recipe)),
    labels: openLabels(recipe),
    free,
    ...(oven === undefined ? {} : { oven }),
    isOvenMissing: needsOven && oven === undefined,
  };
}

/** Kept for all that the strict need, of what the dish is free of; for all of it where nobody is strict. */
function ovenFor(dish: MenuDish, free: readonly Allergen[], camp: Camp): CampOven | undefined {
  const strict = strictIn(camp).filter((each) => free.includes(each));
  const wanted = strict.length > 0 ? strict : free;
  const fits = (oven: CampOven) => wanted.every((each) => keptBy(oven).includes(each));
  const pinned = camp.ovens.find(({ id }) => id === dish.pins.oven);
  return pinned === undefined ? camp.ovens.find(fits) : fits(pinned) ? pinned : undefined;
}

/** Kept free of gluten is kept free of wheat. */
const keptBy = ({ keptFreeOf }: CampOven): readonly Allergen[] =>
  keptFreeOf.includes('gluten') ? [...keptFreeOf, 'wheat'] : keptFreeOf;

const withGluten = (found: readonly Allergen[]): readonly Allergen[] =>
  [...new Set<Allergen>(found.includes('wheat') ? [...found, 'gluten'] : found)].sort();

function openLabels(recipe: Recipe): DishApart['labels'] {
  const found = new Map<Allergen, string[]>();
  const surely = withGluten(allergensIn(recipe));
  for (const { allergen, ingredient } of labelsToCheck(recipe)) {
    if (surely.includes(allergen)) continue;
    found.set(allergen, [...(found.get(allergen) ?? []), ingredient]);
  }
  return [...found]
    .map(([allergen, ingredients]) => ({ allergen, ingredients: [...new Set(ingredients)] }))
    .sort((one, other) => (one.allergen < other.allergen ? -1 : 1));
}

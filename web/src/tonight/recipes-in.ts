// The recipes of a camp file, each as a file that holds no other: small enough to be remembered.

import type { OwnRecipe } from '../worker/messages.ts';

interface Named {
  readonly id: string;
  readonly name: string;
  readonly method?: string;
}

/** Recipes that need an oven; none where the file is half typed. */
export function recipesIn(text: string): readonly OwnRecipe[] {
  const file = JSON.parse(text) as Readonly<Record<string, unknown>>;
  const recipes: readonly unknown[] = Array.isArray(file.recipes) ? file.recipes : [];
  return recipes
    .filter(isNamed)
    .flatMap((recipe) =>
      recipe.method === 'none'
        ? []
        : [{ camp: onlyWith(file, recipe), recipe: recipe.id, name: recipe.name }],
    );
}

const isNamed = (value: unknown): value is Named =>
  typeof value === 'object' &&
  value !== null &&
  'id' in value &&
  typeof value.id === 'string' &&
  'name' in value &&
  typeof value.name === 'string';

/** Hands, ovens, mouths and weather are the front door's to ask. */
const onlyWith = (file: Readonly<Record<string, unknown>>, recipe: Named) =>
  JSON.stringify({
    emberwright: 'camp',
    version: file.version,
    id: 'own-recipe',
    title: recipe.name,
    place: { name: 'Here' },
    mouths: [{ count: 1 }],
    menu: [{ id: 'dish', recipe: recipe.id, serve: '18:00' }],
    recipes: [recipe],
    ...(file.foods === undefined ? {} : { foods: file.foods }),
  });

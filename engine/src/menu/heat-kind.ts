// Does it simmer, or does it bake? From the words of a recipe alone.

import type { Recipe, RecipeKind } from './recipe.ts';

const POTS: readonly RecipeKind[] = ['braise', 'stew', 'beans'];

/** Is it brought to the boil and kept there? A stew that is baked dry is still a pot of liquid. */
export const isPot = (recipe: { readonly kind: RecipeKind; readonly method: string }) =>
  recipe.method === 'simmer' || recipe.method === 'boil' || POTS.includes(recipe.kind);

/** Baked or roasted in dry heat, so that its oven may be hot before; a pot heats up with its own. */
export const canStartHot = (recipe: Pick<Recipe, 'kind' | 'method'>): boolean =>
  !isPot(recipe) && (recipe.method === 'bake' || recipe.method === 'roast');

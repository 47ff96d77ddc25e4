// Does it simmer, or does it bake? From the words of a recipe alone.

import { type Minutes, minutes } from '../quantity/unit.ts';
import type { Recipe, RecipeKind } from './recipe.ts';

const POTS: readonly RecipeKind[] = ['braise', 'stew', 'beans'];

/** Is it brought to the boil and kept there? A stew that is baked dry is still a pot of liquid. */
export const isPot = (recipe: { readonly kind: RecipeKind; readonly method: string }) =>
  recipe.method === 'simmer' || recipe.method === 'boil' || POTS.includes(recipe.kind);

/** Baked or roasted in dry heat, so that its oven may be hot before; a pot heats up with its own. */
export const canStartHot = (recipe: Pick<Recipe, 'kind' | 'method'>): boolean =>
  !isPot(recipe) && (recipe.method === 'bake' || recipe.method === 'roast');

const HEATS_IRON_MINUTES = 5; // coals under the pot before anything browns; common practice
const MOST_BROWNING_MINUTES = 60;

/**
 * Minutes from coals on until the lid goes on a pot that is browned first: the iron heats, every lot
 * is browned. 0 for all that is not browned; in fives, as people tend a fire.
 */
export const browningMinutes = (recipe: Pick<Recipe, 'kind' | 'method' | 'steps'>): Minutes => {
  const steps = recipe.steps.filter((step) => step.kind === 'brown' && step.hands > 0);
  if (steps.length === 0 || !isPot(recipe)) return minutes(0);
  const all = steps.reduce((sum, step) => sum + step.minutes, HEATS_IRON_MINUTES);
  return minutes(Math.min(MOST_BROWNING_MINUTES, 5 * Math.ceil(all / 5)));
};

/**
 * A step that works the dough in the oven it will bake in, in the recipe's own words: "in the cold,
 * wiped oven", "into greased ovens". An oven with dough in it can not have been heated empty.
 */
const IN_ITS_OVEN =
  /\b(?:in|into)(?: (?:the|a|an|its|each|their|your))?(?: [a-z]+,?){0,2} ovens?\b/i;
const HEATED = /\b(hot|heated|preheated|warmed) (camp )?ovens?\b/i;

/** Does it lie in its oven before the coals, for its last rise? */
export const risesInOven = (recipe: Pick<Recipe, 'steps'>): boolean =>
  recipe.steps.some(
    ({ kind, say }) =>
      (kind === 'shape' || kind === 'second-rise') && IN_ITS_OVEN.test(say) && !HEATED.test(say),
  );

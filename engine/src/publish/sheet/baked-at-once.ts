// Does the writer of a yeast bread bake it as soon as it is shaped? Then nothing may say that it proves.

import type { Recipe } from '../../menu/recipe.ts';

/** It is shaped, and no second rise is told or put in. */
export const isBakedAtOnce = ({ steps }: Pick<Recipe, 'steps'>): boolean =>
  steps.some(({ kind }) => kind === 'shape') && !steps.some(({ kind }) => kind === 'second-rise');

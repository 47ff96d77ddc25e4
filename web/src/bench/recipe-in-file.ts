// One recipe in a camp file as it is being typed.

import type { DraftFile } from '../draft/use-draft.ts';
import type { FileItem } from '../worker/proposal.ts';

const itemsOf = (value: unknown): readonly FileItem[] =>
  Array.isArray(value) ? (value as readonly FileItem[]) : [];

export const recipesIn = (file: DraftFile) => itemsOf(file.recipes);

/** Where it stands among the recipes; -1 where there is none of this id. */
export const recipeIndex = (file: DraftFile, id: string): number =>
  recipesIn(file).findIndex((recipe) => recipe.id === id);

export const recipeName = (file: DraftFile, id: string): string =>
  String(recipesIn(file)[recipeIndex(file, id)]?.name ?? 'A recipe');

export const ingredientsAt = (file: DraftFile, id: string): readonly FileItem[] =>
  itemsOf(recipesIn(file)[recipeIndex(file, id)]?.ingredients);

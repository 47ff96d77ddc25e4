// One recipe in a camp file as it is being typed.

import type { DraftFile } from '../draft/use-draft.ts';
import type { ProposedItem } from '../worker/bench-messages.ts';

export type FileItem = Readonly<Record<string, unknown>>;

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

/**
 * The changed recipe as the file holds it: whatever else a line says (a note, a label that was
 * read) stays with it; only weight and measure follow.
 */
export const itemsTaken = (
  old: readonly FileItem[],
  items: readonly ProposedItem[],
): readonly FileItem[] =>
  items.map(({ at, changed }) => {
    if (at === undefined) return changed;
    const kept = old[at] ?? {};
    if (Object.keys(changed).length === 0) return kept;
    const { measure: _old, ...others } = kept;
    return { ...others, ...changed };
  });

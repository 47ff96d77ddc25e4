// A proposal of the bench, taken over into the ingredients of a camp file.

import type { ProposedItem } from './bench-messages.ts';

/** One ingredient as the file holds it, half typed or not. */
export type FileItem = Readonly<Record<string, unknown>>;

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

// Lists inside a camp being changed, read with care: any of it may be half typed.

import { type Path, valueAt } from '../draft/path.ts';
import type { DraftFile } from '../draft/use-draft.ts';

export type Item = Readonly<Record<string, unknown>>;

/** The groups in a list of the draft; empty where there is no list. */
export function itemsAt(file: DraftFile, path: Path): readonly Item[] {
  const found = valueAt(file, path);
  if (!Array.isArray(found)) return [];
  return found.map((item) => (typeof item === 'object' && item !== null ? (item as Item) : {}));
}

export const wordOf = (value: unknown, otherwise = '') =>
  typeof value === 'string' || typeof value === 'number' ? String(value) : otherwise;

/** A short name that no other item of the list has. */
export function freshId(items: readonly Item[], stem: string): string {
  const taken = new Set(items.map((item) => item.id));
  let number = items.length + 1;
  while (taken.has(`${stem}-${number}`)) number += 1;
  return `${stem}-${number}`;
}

// What was pasted and corrected, kept in this browser so that nothing is lost on the way.

import type { RecipeCorrections } from '#engine';

export interface Pasted {
  readonly text: string;
  readonly corrections: RecipeCorrections;
}

const KEY = 'emberwright.pasted';
const NOTHING: Pasted = { text: '', corrections: {} };

export function rememberedPaste(storage: Pick<Storage, 'getItem'>): Pasted {
  try {
    const found: unknown = JSON.parse(storage.getItem(KEY) ?? 'null');
    return isPasted(found) ? found : NOTHING;
  } catch {
    return NOTHING;
  }
}

const isPasted = (found: unknown): found is Pasted =>
  typeof found === 'object' &&
  found !== null &&
  'text' in found &&
  typeof found.text === 'string' &&
  'corrections' in found &&
  typeof found.corrections === 'object' &&
  found.corrections !== null;

export function rememberPaste(storage: Pick<Storage, 'setItem'>, pasted: Pasted): void {
  try {
    storage.setItem(KEY, JSON.stringify(pasted));
  } catch {
    // A browser that keeps nothing: it lasts as long as the page.
  }
}

/** The line rewritten in its text; its own line end stays, and corrections by number go. */
export function withLine(
  pasted: Pasted,
  lines: readonly { readonly piece: number; readonly text: string }[],
  change: { readonly piece: number; readonly text: string },
): Pasted {
  const text = lines
    .map((line) => (line.piece === change.piece ? rewritten(line.text, change.text) : line.text))
    .join('');
  const { foods: _foods, roles: _roles, ...rest } = pasted.corrections;
  const isSameCount = !/[\r\n;]/.test(change.text);
  return { text, corrections: isSameCount ? pasted.corrections : rest };
}

function rewritten(old: string, written: string): string {
  const lead = /^\s*/.exec(old)?.[0] ?? '';
  const tail = /\s*$/.exec(old)?.[0] ?? '';
  return `${lead}${written}${tail}`;
}

/** A camp file with one more recipe, under a name that is not taken. */
export function withRecipe(camp: string, recipe: string): string {
  const file = JSON.parse(camp) as { readonly recipes?: readonly { readonly id?: unknown }[] };
  const added = JSON.parse(recipe) as { readonly id: string };
  const taken = new Set((file.recipes ?? []).map(({ id }) => id));
  let id = added.id;
  for (let next = 2; taken.has(id); next += 1) id = `${added.id}-${next}`;
  return JSON.stringify({ ...file, recipes: [...(file.recipes ?? []), { ...added, id }] });
}

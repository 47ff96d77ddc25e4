// What was pasted and corrected, kept in this browser so that nothing is lost on the way.

import type { RecipeCorrections } from '#engine';
import type { FileFoodItem } from '../worker/paste-messages.ts';
import { freeId } from './own-foods.ts';

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

interface CampParts {
  readonly recipes?: readonly { readonly id?: unknown }[];
  readonly foods?: readonly FileFoodItem[];
}

interface RecipeParts {
  readonly id: string;
  readonly ingredients?: readonly { readonly food?: unknown }[];
}

/** A camp file with one more recipe and its foods, each under a name that is not taken. */
export function withRecipe(
  camp: string,
  recipe: string,
  foods: readonly FileFoodItem[] = [],
): string {
  const file = JSON.parse(camp) as CampParts;
  const { id, ...added } = JSON.parse(recipe) as RecipeParts;
  const { all, renamed } = withFoods(file.foods ?? [], foods);
  const ingredients = (added.ingredients ?? []).map((each) => ({
    ...each,
    ...(renamed.has(each.food) ? { food: renamed.get(each.food) } : {}),
  }));
  const recipes = file.recipes ?? [];
  return JSON.stringify({
    ...file,
    recipes: [...recipes, { ...added, id: freeId(id, recipes), ingredients }],
    ...(all.length === 0 ? {} : { foods: all }),
  });
}

/** What the camp has already, label for label, is not written twice. */
function withFoods(held: readonly FileFoodItem[], added: readonly FileFoodItem[]) {
  const renamed = new Map<unknown, string>();
  const all = [...held];
  for (const { id, ...label } of added) {
    const same = held.find(({ id: _, ...each }) => JSON.stringify(each) === JSON.stringify(label));
    const name = same?.id ?? freeId(id, all);
    renamed.set(id, name);
    if (same === undefined) all.push({ ...label, id: name });
  }
  return { all, renamed };
}

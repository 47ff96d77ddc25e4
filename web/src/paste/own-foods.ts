// The foods of the cook's own camps, for a recipe that names them, and into a camp that takes it.

import type { FileFoodItem } from '../worker/paste-messages.ts';

const MOST_FOODS = 60;

/** Each once, under a name of its own: two camps may call two foods the same. */
export function ownFoodsIn(camps: readonly { readonly file: string }[]): readonly FileFoodItem[] {
  const all = camps.flatMap(({ file }) => foodsIn(file));
  const texts = new Set<string>();
  const found: FileFoodItem[] = [];
  for (const food of all) {
    const text = JSON.stringify(food);
    if (texts.has(text) || found.length === MOST_FOODS) continue;
    texts.add(text);
    found.push({ ...food, id: freeId(food.id, found) });
  }
  return found;
}

function foodsIn(file: string): readonly FileFoodItem[] {
  try {
    const { foods } = JSON.parse(file) as { readonly foods?: unknown };
    return Array.isArray(foods) ? foods.filter(isFood) : [];
  } catch {
    return [];
  }
}

const isFood = (food: unknown): food is FileFoodItem =>
  typeof food === 'object' && food !== null && 'id' in food && typeof food.id === 'string';

export function freeId(id: string, among: readonly { readonly id?: unknown }[]): string {
  const taken = new Set(among.map((each) => each.id));
  let free = id;
  for (let next = 2; taken.has(free); next += 1) free = `${id}-${next}`;
  return free;
}

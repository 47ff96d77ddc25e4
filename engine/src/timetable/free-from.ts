// What must a free-from dish keep away from, and which dishes bring it?

import type { Camp } from '../camp/camp.ts';
import type { DishWork } from './day-sheet.ts';

/** Names of what a dish holds, wheat counting as gluten. */
export function holdsOf(work: DishWork): ReadonlySet<string> {
  const held = new Set<string>(work.recipe.contains);
  for (const each of work.recipe.ingredients) for (const kind of each.allergens) held.add(kind);
  if (held.has('wheat')) held.add('gluten');
  return held;
}

/** What a free-from dish is kept free of: strict needs it can serve, or what its oven is kept for. */
export function keptFrom(camp: Camp, work: DishWork): readonly string[] {
  if (!work.dish.freeFrom) return [];
  const holds = holdsOf(work);
  const strict = camp.needs.filter((need) => need.strictness === 'strict').map((n) => n.kind);
  const ovens = work.loads.flatMap(
    ({ load }) => camp.ovens.find((oven) => oven.id === load.oven)?.keptFreeOf ?? [],
  );
  const all = [...new Set<string>([...strict, ...ovens])].filter((kind) => !holds.has(kind));
  return all.length > 0 ? all : ['gluten'];
}

export function bringsWhatIsKeptAway(away: readonly string[], work: DishWork): boolean {
  const holds = holdsOf(work);
  return away.some((kind) => holds.has(kind));
}

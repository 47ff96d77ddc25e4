// Names of ovens, and what an oven is kept free of, as they stand in a title line.

import type { CampOven } from '../../camp/camp.ts';
import type { DishPlan, MealDay } from '../../meal.ts';
import type { Say } from '../say.ts';

/** `Oven B, 12 in deep`; the size is not said twice. */
export function ovenTitle(oven: CampOven, say: Say): string {
  const size = `${say.length(oven.diameter)}${oven.style === 'deep' ? ' deep' : ''}`;
  const name = /^[A-Z0-9]{1,2}$/i.test(oven.name) ? `oven ${oven.name}` : oven.name;
  const isSaid = /\d+[- \u00a0]?(in\b|inch|cm\b)/.test(name);
  return isSaid ? name : `${name}, ${size}`;
}

/**
 * `GLUTEN-FREE OVEN · blue cord · own spoon`; undefined for an ordinary dish.
 *
 * Only what safety/ found to be free of is claimed; a wish that is not met is said as one.
 */
export function freeFromFlag(plan: MealDay, dish: DishPlan): string | undefined {
  if (!dish.dish.freeFrom) return undefined;
  const kept = dish.safety.freeFrom;
  if (kept.length === 0) return 'NOT SHOWN TO BE FREE OF ANYTHING: read the labels';
  const ovens = dish.loads.map(({ load }) => plan.camp.ovens.find(({ id }) => id === load.oven));
  const marks = [...new Set(ovens.flatMap((oven) => (oven?.mark ? [oven.mark] : [])))];
  const free = kept.map(freeWord).join(', ').toUpperCase();
  return [ovens.length === 0 ? free : `${free} OVEN`, ...marks, 'own spoon'].join(' · ');
}

export const freeWord = (allergen: string) => `${allergenWord(allergen)}-free`;

export const allergenWord = (allergen: string) =>
  allergen === 'tree-nut' ? 'tree nut' : allergen === 'soy' ? 'soya' : allergen;

/** Safety says what is in it, that a label is unread, or that it is not kept apart. */
export const unfitWord = (because: string) =>
  because.startsWith('label not read') || because.startsWith('not ')
    ? because
    : `contains ${allergenWord(because)}`;

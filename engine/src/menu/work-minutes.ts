// The longest way through a recipe's steps: no plan can be shorter with one dish.

import type { Recipe } from './recipe.ts';

/** Minutes from the first step to the last, waiting counted; steps in a circle count once. */
export function workMinutes({ steps }: Recipe): number {
  const ends = new Map<string, number>();
  for (let round = 0; round < steps.length; round++) {
    for (const step of steps) {
      if (ends.has(step.id)) continue;
      const befores = step.after.map((lag) => (ends.get(lag.step) ?? Number.NaN) + lag.least);
      const start = Math.max(0, ...befores);
      if (!Number.isNaN(start)) ends.set(step.id, start + step.minutes);
    }
  }
  return Math.max(0, ...ends.values());
}

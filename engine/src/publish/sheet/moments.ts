// When does each thing happen to one load? Minutes count from "coals on"; the clock stands beside.

import type { DishPlan, LoadPlan, MealDay } from '../../meal.ts';
import { inOvenOf } from '../../menu/index.ts';
import { coalsOnAt, minuteOnSheet } from './load-jobs.ts';

export interface Moments {
  /** Clock minute of "coals on"; undefined where the timetable has no place for the load. */
  readonly zero?: number;
  readonly inAt: number;
  readonly outAt: number;
  /** Likely range of being done, in minutes since coals on. */
  readonly outFrom: number;
  readonly outTo: number;
  readonly restMinutes: number;
}

/** The day sheet's minutes where it has the job; those of the coal plan elsewhere. */
export function momentsOf(plan: MealDay, dish: DishPlan, part: LoadPlan): Moments {
  const { coals, bake } = part;
  const zero = coalsOnAt(plan, part);
  const inAt =
    coals.loadInMinute > 0
      ? minuteOnSheet(plan, part, { kind: 'load', planned: coals.loadInMinute })
      : 0;
  const done = coals.outMinute - coals.loadInMinute + inAt;
  return {
    ...(zero === undefined ? {} : { zero }),
    inAt,
    outAt: minuteOnSheet(plan, part, { kind: 'take-out', planned: coals.outMinute }),
    outFrom: done + bake.least - bake.minutes,
    outTo: done + bake.most - bake.minutes,
    restMinutes: dish.recipe.target.rest,
  };
}

/** What the cook calls the thing that goes into the oven. */
export function loadNoun({ recipe }: Pick<DishPlan, 'recipe'>): string {
  switch (recipe.kind) {
    case 'yeast-bread':
    case 'quick-bread':
    case 'biscuit':
      return 'dough';
    case 'corn-bread':
      return 'batter';
    case 'cobbler':
      return 'cobbler';
    case 'roast':
      return 'roast';
    case 'fruit':
      return 'fruit';
    default:
      return 'pot';
  }
}

export const isBread = ({ recipe }: Pick<DishPlan, 'recipe'>) =>
  ['yeast-bread', 'quick-bread', 'biscuit', 'corn-bread'].includes(recipe.kind);

/** Baking paper, or a greased floor: never both. By the dish, the recipe, its words or its kind. */
export const isLined = ({ recipe, dish }: Pick<DishPlan, 'recipe' | 'dish'>): boolean =>
  inOvenOf(recipe, dish).contact === 'paper';

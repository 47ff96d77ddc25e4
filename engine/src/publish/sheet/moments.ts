// When does each thing happen to one load? Minutes count from "coals on"; the clock stands beside.

import type { DishPlan, LoadPlan, MealPlan } from '../../meal.ts';

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

export function momentsOf(
  plan: MealPlan,
  dish: DishPlan,
  { load, coals, bake }: LoadPlan,
): Moments {
  const { spans, jobs } = plan.daySheet;
  const cooking = spans.find((span) => span.load === load.id && span.state === 'cooking');
  const laying = jobs.find((job) => job.load === load.id && job.kind === 'lay-coals');
  const zero = cooking === undefined ? laying?.end : (cooking.from as number) - coals.loadInMinute;
  const spread = { least: bake.least - bake.minutes, most: bake.most - bake.minutes };
  return {
    ...(zero === undefined ? {} : { zero }),
    inAt: coals.loadInMinute,
    outAt: coals.outMinute,
    outFrom: coals.outMinute + spread.least,
    outTo: coals.outMinute + spread.most,
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

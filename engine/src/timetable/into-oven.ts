// What must be done before a load goes into its oven, and how long may it stand there meanwhile?

import type { RecipeStep, StepLag } from '../menu/recipe.ts';
import * as habits from './habits.ts';
import type { DishMaking, LoadTasks } from './making.ts';
import { isLaterTurn } from './oven-turns.ts';
import { isBread, lagsInto, lastSteps } from './recipe-shape.ts';

/** What must be done before this load goes in (or, for an oven with coals on, is ready to go in). */
export function linkBefore(dish: DishMaking, load: LoadTasks): void {
  const asked = lagsIntoOven(dish);
  const lasts = lastBefore(dish);
  linkEarlier(dish, load, { asked, lasts });
  for (const step of lasts) {
    const wish = asked.find((lag) => lag.step === step.id);
    const most = wish?.most ?? usualWait(dish, step);
    const room = { least: wish?.least ?? 0, ...(most === undefined ? {} : { most }) };
    const isWave = isLaterTurn(dish.making.request, dish.work, load.work);
    for (const from of dish.steps.get(step.id)?.last ?? []) {
      dish.making.builder.lag(from, load.load, isWave ? { least: room.least } : room);
    }
  }
}

/** What the recipe says of how long before the oven other steps may lie. */
export function lagsIntoOven({ work: { recipe } }: DishMaking): readonly StepLag[] {
  return recipe.steps.flatMap((step, index) =>
    step.kind === 'load' || step.kind === 'brown' || step.kind === 'cook'
      ? lagsInto(recipe, index)
      : [],
  );
}

/** The oven may also be timed by a step that others follow: baked within so long of mixing. */
function linkEarlier(
  { making, work, steps }: DishMaking,
  load: LoadTasks,
  wish: { readonly asked: readonly StepLag[]; readonly lasts: readonly RecipeStep[] },
): void {
  if (isLaterTurn(making.request, work, load.work)) return;
  for (const { step, least, most } of wish.asked) {
    if (wish.lasts.some(({ id }) => id === step)) continue;
    const room = most === undefined ? { least } : { least, most };
    for (const from of steps.get(step)?.last ?? []) making.builder.lag(from, load.load, room);
  }
}

function lastBefore(dish: DishMaking): readonly RecipeStep[] {
  const { recipe } = dish.work;
  const isIn = (step: RecipeStep) => dish.steps.has(step.id);
  const known = new Map(
    [...dish.phases].filter(([id]) => isIn(recipe.steps.find((s) => s.id === id)!)),
  );
  return lastSteps(recipe, known, 'before').filter(isIn);
}

function usualWait(dish: DishMaking, step: RecipeStep): number | undefined {
  if (step.kind === 'second-rise') return habits.SECOND_RISE_STRETCH;
  if (step.kind === 'mix' && isBread(dish.work)) return habits.BATTER_WAITS;
  if (step.kind === 'shape') return habits.SHAPED_WAITS;
  return undefined;
}

// From the oven to the table: rest, cutting, and how long a dish may wait once it is done.
// Done is: rested. The rest itself and the work that follows it (cutting) are no waiting.

import { handlingOf } from '../bake/index.ts';
import type { RecipeStep } from '../menu/recipe.ts';
import type { DishMaking, LoadTasks } from './making.ts';
import { isBread, isPot, lastSteps } from './recipe-shape.ts';

interface Served {
  /** The last tasks before it is served. */
  readonly lasts: readonly number[];
  /** It waits from the end of the last of these. */
  readonly dones: readonly number[];
}

/** The last tasks and their wait until served; pots wait in their oven, bread on the rack. */
export function linkServing(dish: DishMaking, loads: readonly LoadTasks[], served: number): Served {
  const { work, making } = dish;
  const { builder } = making;
  const isOnFire = loads.length > 0;
  const lastOf = lastSteps(work.recipe, dish.phases, isOnFire ? 'after' : 'before');
  const stepLasts = lastOf.flatMap((step) => dish.steps.get(step.id)?.last ?? []);
  const rests = new Map(firstsOf(loads).map((load) => [load.takeOut, restAfter(dish, load)]));
  const rested = [...rests.values()];
  const restOf = (load: LoadTasks) => rests.get(load.takeOut);
  const cut = cutAfter(dish, loads, [...rested, ...stepLasts]);
  const lasts = [...rested, ...stepLasts, ...(cut === undefined ? [] : [cut.task])];
  for (const last of lasts) builder.lag(last, served, { least: 0 });
  if (!making.isLoose) for (const load of firstsOf(loads)) outEarly(dish, load, served);
  if (isOnFire) for (const last of lasts) builder.cushion(last, served, inHand(dish));
  const dones = isOnFire ? restedTasks(dish, rested) : stepLasts;
  const after = isOnFire ? minutesAfterRest(dish) + (cut?.minutes ?? 0) : 0;
  const most = Math.max(0, work.canWait) + after;
  for (const done of dones) {
    const of = dones === rested ? loads.filter((load) => restOf(load) === done) : loads;
    const isEarly = of.length > 0 && of.every((load) => dish.earlyTurns.has(load.takeOut));
    if (work.dish.pins.coalsOnAt === undefined && !isEarly) {
      builder.lag(done, served, { least: 0, most });
    }
  }
  const price = isBread(work) ? 5 : isPot(work) ? 0.5 : 0.2;
  const out = isOnFire ? loads.map((load) => load.takeOut) : stepLasts;
  for (const from of out) builder.prices.push({ from, to: served, price });
  return { lasts, dones };
}

const inHand = ({ work, making }: DishMaking): number => making.inHand.get(work.dish.id) ?? 0;

const firstsOf = (loads: readonly LoadTasks[]) => loads.filter(({ after }) => after === 0);

/** A pot that may wait comes off early, by as much as its bake asks, so that a slow one is in time. */
function outEarly({ work, making }: DishMaking, load: LoadTasks, served: number): void {
  const { aimEarly = 0 } = load.work.bake;
  if (aimEarly <= 0 || !isPot(work) || work.dish.pins.coalsOnAt !== undefined) return;
  making.builder.cushion(load.takeOut, served, Math.round(Math.min(aimEarly, work.canWait)));
}

/** Rests after the oven, by the recipe or else by load; the taking out where nothing rests. */
function restedTasks(dish: DishMaking, byLoad: readonly number[]): readonly number[] {
  const tasks = restSteps(dish).flatMap((step) => dish.steps.get(step.id)?.last ?? []);
  return tasks.length > 0 ? tasks : byLoad;
}

const restSteps = (dish: DishMaking): readonly RecipeStep[] =>
  dish.work.recipe.steps.filter(
    (step) => step.kind === 'rest' && dish.phases.get(step.id) === 'after',
  );

/** Cutting and dressing that come after the rest, or after taking out where nothing rests. */
function minutesAfterRest(dish: DishMaking): number {
  const { steps } = dish.work.recipe;
  const rest = restSteps(dish).at(-1);
  const after = steps.slice(rest === undefined ? 0 : steps.indexOf(rest) + 1);
  return after.reduce((sum, step) => {
    if (dish.phases.get(step.id) !== 'after') return sum;
    const task = dish.steps.get(step.id)?.first[0] ?? -1;
    return sum + (dish.making.builder.tasks[task]?.minutes ?? 0);
  }, 0);
}

/** Rest that the target asks for where no step says so. */
function restAfter(dish: DishMaking, load: LoadTasks): number {
  const { recipe } = dish.work;
  if (restSteps(dish).length > 0 || recipe.target.rest <= 0) return load.takeOut;
  const rest = dish.making.builder.task({
    kind: 'rest',
    group: dish.group,
    minutes: recipe.target.rest,
    dish: dish.work.dish.id,
    load: load.work.load.id,
  });
  dish.making.builder.lag(load.takeOut, rest, { least: 0, most: 0 });
  return rest;
}

/**
 * A round or loaf that is written for more than one, and a batter, is cut, all of it, once it has
 * rested, where no step says so. What is written for nobody is broken at the table.
 */
function cutAfter(
  { work, making, group }: DishMaking,
  loads: readonly LoadTasks[],
  after: readonly number[],
): { readonly task: number; readonly minutes: number } | undefined {
  const { steps, division, kind } = work.recipe;
  const isDivided = kind === 'corn-bread' || division.some(({ portionsEach }) => portionsEach > 1);
  if (!isDivided || steps.some((step) => step.kind === 'cut')) return undefined;
  const minutes = loads.reduce((sum, load) => sum + cutMinutes(work, load), 0);
  if (minutes === 0) return undefined;
  const task = making.builder.task({
    kind: 'cut',
    group,
    minutes,
    seats: making.crews.seats('new', 1),
    dish: work.dish.id,
    team: `dish ${work.recipe.id}`,
  });
  for (const before of after) making.builder.lag(before, task, { least: 0 });
  return { task, minutes };
}

function cutMinutes({ recipe, dish }: DishMaking['work'], { work }: LoadTasks): number {
  const steps = handlingOf({ recipe, dish, load: work.load, isHot: false });
  const cuts = steps.filter((step) => step.work === 'cut');
  return cuts.reduce((sum, step) => sum + step.minutes, 0);
}

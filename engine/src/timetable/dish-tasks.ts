// A dish as tasks: the recipe's steps, the work round its ovens, hand-washing, serving.
// Dishes that are pieces of one dough are mixed once and stand in one group.

import { risesInOven } from '../menu/heat-kind.ts';
import type { RecipeStep } from '../menu/recipe.ts';
import type { DishWork } from './day-sheet.ts';
import { lagsIntoOven, linkBefore } from './into-oven.ts';
import type { DishMaking, DishTasks, LoadTasks, Making, StepTasks } from './making.ts';
import { ovenTasks } from './oven-tasks.ts';
import { isUsedAgain } from './oven-turns.ts';
import { isBread, lagsInto, phasesOf, sharedSteps } from './recipe-shape.ts';
import { linkServing } from './serving-tasks.ts';
import { stepTask } from './step-tasks.ts';
import { cutWaves, wavesOf } from './waves.ts';

/** Tasks of dishes made as one batch. */
export function batchTasks(making: Making, batch: readonly DishWork[]): readonly DishTasks[] {
  const first = batch[0]!;
  const group = making.builder.group({
    id: batch.map((work) => work.dish.id).join(' + '),
    towards: 'late',
    mayBeLeft: false,
    latePrice: latePrice(first),
  });
  const shared = batch.length > 1 ? sharedSteps(first.recipe) : new Set<string>();
  const steps: StepTasks = new Map();
  const makes: number[] = [];
  const massOf = (work: DishWork) => work.loads.reduce((sum, each) => sum + each.load.mass, 0);
  const whole = batch.reduce((sum, work) => sum + massOf(work), 0);
  const dishes = batch.map((work): DishMaking => {
    const share = batch.length > 1 && whole > 0 ? massOf(work) / whole : 1;
    const phases = phasesOf(work.recipe, work.loads.length > 0);
    return {
      making,
      group,
      work,
      phases,
      share,
      steps: new Map(steps),
      makes,
      earlyTurns: new Set(),
    };
  });
  const others = batch.slice(1).map((work) => work.dish.id);
  for (const step of first.recipe.steps) {
    if (!shared.has(step.id)) continue;
    stepTask(dishes[0]!, step, { shareOf: 1, with: others });
    for (const dish of dishes.slice(1)) dish.steps.set(step.id, dishes[0]!.steps.get(step.id)!);
  }
  return dishes.map((dish) => oneDish(dish, shared));
}

/** Bread first, it can least be late; a free-from dish before all. */
function latePrice(work: DishWork): number {
  return 1000 + (isBread(work) ? 2 : 0) + (work.dish.freeFrom ? 4 : 0);
}

function oneDish(dish: DishMaking, shared: ReadonlySet<string>): DishTasks {
  const { making, work, group } = dish;
  const { builder } = making;
  const served = builder.task({
    kind: 'served',
    group,
    minutes: 0,
    dish: work.dish.id,
    due: work.dish.serveAt,
  });
  const own = work.recipe.steps.filter(
    (step) => !shared.has(step.id) && dish.phases.get(step.id) !== 'oven',
  );
  const inOven = stepsInOven(work);
  for (const step of own) {
    if (dish.phases.get(step.id) === 'before' && !inOven.includes(step)) stepTask(dish, step);
  }
  const loads = wavesIn(making, work).flatMap((wave) =>
    ovenTasks(making, group, { dish: work, wave }, served),
  );
  for (const load of firstsOf(loads)) linkBefore(dish, load);
  workOnRisen(dish, inOven, loads);
  shapeIntoGreased(dish, loads);
  mapOvenSteps(dish, loads);
  for (const step of own) if (dish.phases.get(step.id) === 'after') stepTask(dish, step);
  const ends = linkServing(dish, loads, served);
  return { work, group, served, makes: [...dish.makes], ...ends, loads };
}

/** A second rise in an oven that waits for its coals, and the work that waits for that rise: a slash. */
function stepsInOven({ recipe, loads }: DishWork): readonly RecipeStep[] {
  if (loads.every((each) => each.coals.loadInMinute > 0)) return [];
  const inside: RecipeStep[] = [];
  recipe.steps.forEach((step, index) => {
    const follows = lagsInto(recipe, index).some((lag) => inside.some(({ id }) => id === lag.step));
    if (step.kind === 'second-rise' || (step.kind === 'shape' && follows)) inside.push(step);
  });
  return inside;
}

/** Between the rise in the oven and its coals. */
function workOnRisen(
  dish: DishMaking,
  inOven: readonly RecipeStep[],
  loads: readonly LoadTasks[],
): void {
  const risen = firstsOf(loads).filter(({ rise }) => rise !== undefined);
  const rises = risen.map(({ rise }) => rise!);
  for (const step of inOven) {
    if (step.kind === 'second-rise') {
      dish.steps.set(step.id, { first: rises, last: rises });
      continue;
    }
    stepTask(dish, step);
    const wish = lagsIntoOven(dish).find((lag) => lag.step === step.id);
    const room = wish?.most === undefined ? { least: 0 } : { least: 0, most: wish.most };
    for (const task of dish.steps.get(step.id)!.last)
      for (const { lay } of risen) dish.making.builder.lag(task, lay, room);
  }
}

/** Dough that is shaped in its oven for its last rise finds that oven greased and lined. */
function shapeIntoGreased({ making, work, steps }: DishMaking, loads: readonly LoadTasks[]): void {
  const shapes = work.recipe.steps.filter(
    (step) => step.kind === 'shape' && risesInOven({ steps: [step] }),
  );
  for (const shape of shapes.flatMap((step) => steps.get(step.id)?.first ?? [])) {
    for (const load of firstsOf(loads)) {
      if (load.risesInside) making.builder.lag(load.grease, shape, { least: 0 });
    }
  }
}

const wavesIn = ({ request, isByOven, cutBefore }: Making, work: DishWork) =>
  isByOven
    ? work.loads.map((load) => ({ loads: [load], pace: 0 }))
    : cutWaves(wavesOf(request, work), cutBefore);

/** One load for each wave: the tasks of the others are the same. */
const firstsOf = (loads: readonly LoadTasks[]) => loads.filter(({ after }) => after === 0);

function mapOvenSteps(dish: DishMaking, loads: readonly LoadTasks[]): void {
  for (const load of loads) {
    if (isUsedAgain(dish.making.request, dish.work, load.work)) dish.earlyTurns.add(load.takeOut);
  }
  for (const step of dish.work.recipe.steps) {
    if (dish.phases.get(step.id) !== 'oven') continue;
    const pick = (load: LoadTasks) =>
      step.kind === 'load' ? [load.load] : step.kind === 'brown' ? load.heats : [load.takeOut];
    const tasks = firstsOf(loads).flatMap(pick);
    dish.steps.set(step.id, { first: tasks, last: tasks });
  }
}

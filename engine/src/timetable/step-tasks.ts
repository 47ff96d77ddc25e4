// One step of a recipe as a task: its people, its place, what it follows, clean hands round it.

import type { RecipeStep, StepLag } from '../menu/recipe.ts';
import type { DishWork } from './day-sheet.ts';
import { bringsWhatIsKeptAway, keptFrom } from './free-from.ts';
import * as habits from './habits.ts';
import { APART_ROOM, apartPool, type DishMaking, tablePool } from './making.ts';
import { lagsInto, stepMinutes } from './recipe-shape.ts';

/** One step as a task, with its lags and the hand-washing it calls for. */
export function stepTask(
  dish: DishMaking,
  step: RecipeStep,
  wish: { readonly shareOf: number; readonly with: readonly string[] } = {
    shareOf: dish.share,
    with: [],
  },
): void {
  const { making, work } = dish;
  const isRest = step.kind === 'rest' && dish.phases.get(step.id) === 'after';
  const plain = isRest
    ? Math.max(step.minutes, work.recipe.target.rest)
    : Math.max(stepMinutes(work, step), cutMinutes(work, step));
  const minutes = step.hands > 0 ? Math.max(1, Math.ceil(plain * wish.shareOf)) : plain;
  const task = making.builder.task({
    kind: step.kind,
    group: dish.group,
    minutes,
    dish: work.dish.id,
    say: step.say,
    seats: making.crews.seats(step.skill, step.hands),
    takes: takesOf(dish, step),
    team: `dish ${work.recipe.id}`,
    needsTable: step.needsTable,
    ...(wish.with.length === 0 ? {} : { values: { with: wish.with.join(' ') } }),
  });
  dish.steps.set(step.id, { first: [task], last: [task] });
  if (step.hands > 0 && dish.phases.get(step.id) === 'before') dish.makes.push(task);
  linkStep(dish, step, task);
  washAround(dish, step, task);
}

/** What is cut for many takes as long as its pieces: the recipe's own minutes are those of one oven. */
function cutMinutes({ loads }: DishWork, { kind }: RecipeStep): number {
  if (kind !== 'cut' || loads.length < 2) return 0;
  const pieces = loads.reduce((sum, { load }) => sum + load.portions, 0);
  return Math.ceil(pieces * habits.CUT_PIECE_MINUTES);
}

function takesOf(dish: DishMaking, step: RecipeStep) {
  const { making, work } = dish;
  const table = step.needsTable ? [{ pool: tablePool(making), amount: 1 }] : [];
  if (step.hands <= 0 || dish.phases.get(step.id) !== 'before') return table;
  const free = making.request.dishes.filter((each) => each.dish.freeFrom);
  if (work.dish.freeFrom) return [...table, { pool: apartPool(making), amount: APART_ROOM }];
  const brings = free.some((each) =>
    bringsWhatIsKeptAway(keptFrom(making.request.camp, each), work),
  );
  return brings ? [...table, { pool: apartPool(making), amount: 1 }] : table;
}

function linkStep(dish: DishMaking, step: RecipeStep, task: number): void {
  const index = dish.work.recipe.steps.indexOf(step);
  for (const lag of lagsInto(dish.work.recipe, index)) {
    const wait = usualWait(dish, step, lag.step);
    const usual = wait === undefined ? {} : { most: wait };
    // Rest begins by itself when it is out; several ovens are not emptied in the same minute.
    const isOut = isCooling(dish, step) && dish.work.loads.length === 1;
    if (isOut) {
      restAtOnce(dish, task, lag);
      continue;
    }
    const room = { least: lag.least, ...(lag.most === undefined ? usual : { most: lag.most }) };
    for (const from of dish.steps.get(lag.step)?.last ?? []) {
      dish.making.builder.lag(from, task, dish.earlyTurns.has(from) ? { least: lag.least } : room);
    }
  }
}

const isCooling = (dish: DishMaking, step: RecipeStep) =>
  step.kind === 'rest' && dish.phases.get(step.id) === 'after';

function restAtOnce(dish: DishMaking, task: number, { step, least }: StepLag): void {
  for (const from of dish.steps.get(step)?.last ?? []) {
    dish.making.builder.lag(from, task, { least, most: least });
  }
}

/** Between two steps at most, where the recipe is silent. */
function usualWait(dish: DishMaking, step: RecipeStep, after: string): number | undefined {
  const kind = dish.work.recipe.steps.find((each) => each.id === after)?.kind;
  if (kind === 'rise') return habits.DOUGH_WAITS;
  // Dough rises from the moment that hands let go of it, over night too.
  const isRise = step.kind === 'rise' || step.kind === 'second-rise';
  if (isRise && (kind === 'mix' || kind === 'fold' || kind === 'shape')) return habits.SHAPED_WAITS;
  if (dish.phases.get(step.id) !== 'after') return undefined;
  if (step.kind === 'rest') return habits.OUT_TO_REST;
  return step.kind === 'cut' && kind === 'rest' ? habits.REST_TO_CUT : undefined;
}

const CLEAN_HANDS: ReadonlySet<RecipeStep['kind']> = new Set(['prepare', 'mix', 'fold', 'shape']);

/** Before food is handled, and after raw meat; by the same hand. */
function washAround(dish: DishMaking, step: RecipeStep, task: number): void {
  if (step.hands <= 0 || dish.phases.get(step.id) !== 'before') return;
  const isRaw = dish.work.recipe.ingredients.some(
    (each) => (each.part === 'meat' || each.part === 'poultry') && !dish.work.recipe.target.isCold,
  );
  const { builder, crews } = dish.making;
  const wash = () =>
    builder.task({
      kind: 'wash-hands',
      group: dish.group,
      minutes: habits.WASH_HANDS,
      dish: dish.work.dish.id,
      seats: crews.seats(step.skill, 1),
      sameAs: task,
      needsCare: true,
    });
  if (CLEAN_HANDS.has(step.kind)) {
    builder.lag(wash(), task, { least: 0, most: habits.WASH_TO_WORK });
  }
  if (step.kind === 'prepare' && isRaw) {
    builder.lag(task, wash(), { least: 0, most: habits.WASH_TO_WORK });
  }
}

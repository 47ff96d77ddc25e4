// A dish as tasks: the recipe's steps, the work round its ovens, hand-washing, serving.
// Dishes that are pieces of one dough are mixed once and stand in one group.

import type { RecipeStep } from '../menu/recipe.ts';
import type { DishWork } from './day-sheet.ts';
import { bringsWhatIsKeptAway, keptFrom } from './free-from.ts';
import * as habits from './habits.ts';
import {
  APART_ROOM,
  apartPool,
  type DishTasks,
  type LoadTasks,
  type Making,
  tablePool,
} from './making.ts';
import { ovenTasks } from './oven-tasks.ts';
import {
  isBread,
  isPot,
  lagsInto,
  lastSteps,
  type Phase,
  phasesOf,
  sharedSteps,
  stepMinutes,
} from './recipe-shape.ts';

/** First and last tasks of each step, by step id. */
type StepTasks = Map<
  string,
  { readonly first: readonly number[]; readonly last: readonly number[] }
>;

interface DishMaking {
  readonly making: Making;
  readonly group: number;
  readonly work: DishWork;
  readonly phases: ReadonlyMap<string, Phase>;
  /** Share of the whole batch that is this dish's, for work on pieces. */
  readonly share: number;
  readonly steps: StepTasks;
  readonly makes: number[];
}

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
    return { making, group, work, phases, share, steps: new Map(steps), makes };
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
  const isInOven = (step: RecipeStep) =>
    step.kind === 'second-rise' && work.loads.some((each) => each.coals.loadInMinute <= 0);
  for (const step of own) {
    if (dish.phases.get(step.id) === 'before' && !isInOven(step)) stepTask(dish, step);
  }
  const loads = work.loads.map((each) =>
    ovenTasks(making, group, { dish: work, work: each }, served),
  );
  for (const load of loads) linkBefore(dish, load);
  mapOvenSteps(dish, loads);
  for (const step of own) if (dish.phases.get(step.id) === 'after') stepTask(dish, step);
  const lasts = linkServing(dish, loads, served);
  return { work, group, served, makes: [...dish.makes], lasts, loads };
}

/** One step as a task, with its lags and the hand-washing it calls for. */
function stepTask(
  dish: DishMaking,
  step: RecipeStep,
  wish: { readonly shareOf: number; readonly with: readonly string[] } = {
    shareOf: dish.share,
    with: [],
  },
): void {
  const { making, work } = dish;
  const isRest = step.kind === 'rest' && dish.phases.get(step.id) === 'after';
  const plain = isRest ? Math.max(step.minutes, work.recipe.target.rest) : stepMinutes(work, step);
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
    const kind = dish.work.recipe.steps.find((each) => each.id === lag.step)?.kind;
    const isCooling = step.kind === 'rest' && dish.phases.get(step.id) === 'after';
    const wait = kind === 'rise' ? habits.DOUGH_WAITS : isCooling ? habits.OUT_TO_REST : undefined;
    const usual = wait === undefined ? {} : { most: wait };
    const room = { least: lag.least, ...(lag.most === undefined ? usual : { most: lag.most }) };
    for (const from of dish.steps.get(lag.step)?.last ?? []) {
      dish.making.builder.lag(from, task, room);
    }
  }
}

const CLEAN_HANDS: ReadonlySet<RecipeStep['kind']> = new Set(['prepare', 'mix', 'shape']);

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

/** What must be done before this load goes in (or, for an oven with coals on, is ready to go in). */
function linkBefore(dish: DishMaking, load: LoadTasks): void {
  const { recipe } = dish.work;
  const asked = recipe.steps.flatMap((step, index) =>
    step.kind === 'load' || step.kind === 'brown' || step.kind === 'cook'
      ? lagsInto(recipe, index)
      : [],
  );
  for (const step of lastBefore(dish)) {
    const wish = asked.find((lag) => lag.step === step.id);
    const most = wish?.most ?? usualWait(dish, step);
    const room = { least: wish?.least ?? 0, ...(most === undefined ? {} : { most }) };
    const isWave = dish.work.loads.indexOf(load.work) > 0 && hasEarlierWave(dish, load);
    for (const from of dish.steps.get(step.id)?.last ?? []) {
      dish.making.builder.lag(from, load.load, isWave ? { least: room.least } : room);
    }
  }
}

/** Baked in turns in one oven: the dough of a later turn has to wait its turn. */
function hasEarlierWave(dish: DishMaking, load: LoadTasks): boolean {
  const at = dish.work.loads.indexOf(load.work);
  return dish.work.loads.slice(0, at).some((each) => each.load.oven === load.work.load.oven);
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

function mapOvenSteps(dish: DishMaking, loads: readonly LoadTasks[]): void {
  for (const step of dish.work.recipe.steps) {
    if (dish.phases.get(step.id) !== 'oven') continue;
    const pick = (load: LoadTasks) =>
      step.kind === 'load' ? [load.load] : step.kind === 'brown' ? load.heats : [load.takeOut];
    const tasks = loads.flatMap(pick);
    dish.steps.set(step.id, { first: tasks, last: tasks });
  }
}

/** The last tasks and their wait until served; pots wait in their oven, bread on the rack. */
function linkServing(
  dish: DishMaking,
  loads: readonly LoadTasks[],
  served: number,
): readonly number[] {
  const { work, making } = dish;
  const { builder } = making;
  const isOnFire = loads.length > 0;
  const lastOf = lastSteps(work.recipe, dish.phases, isOnFire ? 'after' : 'before');
  const stepLasts = lastOf.flatMap((step) => dish.steps.get(step.id)?.last ?? []);
  const rested = loads.map((load) => restAfter(dish, load));
  for (const last of [...rested, ...stepLasts]) builder.lag(last, served, { least: 0 });
  const mayWait = Math.max(0, work.canWait) + (isOnFire ? minutesAfter(dish) : 0);
  for (const done of isOnFire ? loads.map((load) => load.takeOut) : stepLasts) {
    if (work.dish.pins.coalsOnAt !== undefined || isOneOfTurns(loads, done)) continue;
    builder.lag(done, served, { least: 0, most: mayWait });
  }
  const price = isBread(work) ? 5 : isPot(work) ? 0.5 : 0.2;
  const done = isOnFire ? loads.map((load) => load.takeOut) : stepLasts;
  for (const from of done) builder.prices.push({ from, to: served, price });
  return [...rested, ...stepLasts];
}

/** Rest and work between taking out and serving; not counted as waiting. */
function minutesAfter(dish: DishMaking): number {
  const { recipe } = dish.work;
  const after = recipe.steps.filter((step) => dish.phases.get(step.id) === 'after');
  const minutes = after.reduce(
    (sum, step) =>
      sum + (dish.making.builder.tasks[dish.steps.get(step.id)?.first[0] ?? -1]?.minutes ?? 0),
    0,
  );
  const isRestStep = after.some((step) => step.kind === 'rest');
  return minutes + (isRestStep ? 0 : Math.max(0, recipe.target.rest));
}

/** Rest that the target asks for where no step says so. */
function restAfter(dish: DishMaking, load: LoadTasks): number {
  const { recipe } = dish.work;
  const hasStep = recipe.steps.some(
    (step) => step.kind === 'rest' && dish.phases.get(step.id) === 'after',
  );
  if (hasStep || recipe.target.rest <= 0) return load.takeOut;
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

/** Baked in turns in one oven: only the last turn can be fresh. */
function isOneOfTurns(loads: readonly LoadTasks[], last: number): boolean {
  const at = loads.findIndex((load) => load.takeOut === last);
  return (
    at >= 0 && loads.slice(at + 1).some((load) => load.work.load.oven === loads[at]!.work.load.oven)
  );
}

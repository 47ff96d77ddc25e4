// The work round one oven load, timed by its coal plan: grease, load, lay coals, brown, take out.
// Minute zero is "coals on": the end of laying.

import { handlingOf, handMinutes } from '../bake/index.ts';
import type { RecipeStep } from '../menu/recipe.ts';
import { notice } from '../notice/notice.ts';
import { drawCoals } from './coal-draws.ts';
import type { DishWork } from './day-sheet.ts';
import * as habits from './habits.ts';
import { type LoadTasks, type Making, ovenPool } from './making.ts';
import { minuteTasks } from './minute-tasks.ts';
import {
  add,
  coalMinutes,
  cookMinutes,
  isHeavyOven,
  liftPeople,
  type OvenWork,
  shovels,
  stepOf,
} from './oven-work.ts';
import { isPot, stepMinutes } from './recipe-shape.ts';
import type { Wave } from './waves.ts';

export function ovenTasks(
  making: Making,
  group: number,
  pair: { readonly dish: DishWork; readonly wave: Wave },
  served: number,
): readonly LoadTasks[] {
  const work = pair.wave.loads[0]!;
  const oven = making.request.camp.ovens.find((each) => each.id === work.load.oven);
  const isHeavy = oven !== undefined && isHeavyOven(oven);
  const at: OvenWork = { making, group, ...pair, work, isHeavy };
  const loadIn = Math.round(work.coals.loadInMinute);
  const isPreheated = loadIn > 0;
  const rise = pair.dish.recipe.steps.find((step) => step.kind === 'second-rise');
  const risesInside = rise !== undefined && !isPreheated;
  const core = coreTasks(at, risesInside ? rise : undefined);
  const cook = { ...core, risesInside };
  minuteTasks(at, cook);
  const servedFromOven = isPot(pair.dish);
  const emptied = servedFromOven ? served : core.takeOut;
  return pair.wave.loads.map((each, place) => {
    const pool = ovenPool(making, each.load.oven);
    making.builder.holds.push({ id: each.load.id, pool, first: core.grease, last: emptied });
    const after = place * pair.wave.pace;
    return { work: each, dish: pair.dish.dish.id, after, ...cook, emptied, servedFromOven };
  });
}

function coreTasks(at: OvenWork, rise: RecipeStep | undefined) {
  const { builder } = at.making;
  const { work, dish } = at;
  const loadIn = Math.max(0, Math.round(work.coals.loadInMinute));
  const loadStep = stepOf(dish, 'load');
  const steps = handlingOf({ ...dish, load: work.load, isHot: loadIn > 0 });
  const loadMinutes = handMinutes(steps, 'in');
  const grease = add(at, 'grease', handMinutes(steps, 'before'), { skill: 'new' });
  const lay = layTask(at);
  const load = add(at, 'load', loadMinutes, {
    say: loadStep?.say,
    people: loadPeople(at),
    values: { minute: loadIn },
  });
  const minutes = cookMinutes(dish, work);
  let risen = load;
  const cook = add(at, 'cook', loadIn > 0 ? Math.max(1, minutes - loadMinutes) : minutes, {
    people: 0,
    say: stepOf(dish, 'cook')?.say,
  });
  const takeOut = takeOutTask(at, loadIn + minutes, handMinutes(steps, 'out'));
  if (loadIn > 0) {
    builder.lag(grease, lay, { least: 0, most: habits.GREASE_TO_OVEN });
    builder.lag(lay, load, { least: loadIn, most: loadIn + habits.OUT_LATE });
    builder.lag(load, cook, { least: 0, most: 0 });
  } else {
    builder.lag(grease, load, { least: 0, most: habits.GREASE_TO_OVEN });
    risen = riseInside(at, load, rise);
    const room = rise ? habits.SECOND_RISE_STRETCH : habits.COLD_LOAD_TO_COALS;
    builder.lag(risen, lay, { least: 0, most: room });
    builder.lag(lay, cook, { least: 0, most: 0 });
  }
  const isPinned = dish.dish.pins.bakeMinutes !== undefined;
  const breadLate = at.making.isLoose ? habits.OUT_LATE : habits.OUT_LATE - 1;
  const stretch = isPot(dish) ? habits.POT_OUT_LATE : breadLate;
  builder.lag(cook, takeOut, { least: 0, most: isPinned ? 0 : stretch });
  const inside = risen === load ? {} : { rise: risen };
  return { grease, lay, load, cook, takeOut, heats: brownTasks(at, cook), ...inside };
}

/** Two for a heavy oven, if a second is in camp by the time that it has to be loaded at the latest. */
function loadPeople(at: OvenWork): number {
  if (!at.isHeavy) return 1;
  const { dish, work, making } = at;
  const { outMinute, loadInMinute } = work.coals;
  const inside = loadInMinute > 0 ? outMinute - loadInMinute : outMinute;
  const latest = dish.dish.serveAt - Math.max(0, dish.recipe.target.rest) - inside - NEAR_LOADING;
  const { hands } = making.request.camp;
  const there = hands.filter((hand) => hand.from <= latest && latest <= hand.to);
  if (there.length >= 2 || hands.length < 2) return 2;
  making.notices.push(notice('TIMETABLE_LIFT_ALONE', 'doubt', { dish: dish.dish.id }));
  return 1;
}

/** Laying, loading and taking out round the minutes inside, about. */
const NEAR_LOADING = 12;

function layTask(at: OvenWork): number {
  const { above, below } = at.work.coals;
  const pin = at.dish.dish.pins.coalsOnAt;
  const many = above.pieces + below.pieces;
  const minutes = coalMinutes(many);
  const lay = add(at, 'lay-coals', minutes, {
    values: {
      above: above.pieces,
      below: below.pieces,
      ...shovels(above.shovels, below.shovels),
      minute: 0,
    },
    fixed: pin === undefined || at.work !== at.dish.loads[0] ? undefined : pin - minutes,
  });
  drawCoals(at, lay, { minute: -minutes, amount: many });
  return lay;
}

function takeOutTask(at: OvenWork, minute: number, usual: number): number {
  const step = stepOf(at.dish, 'take-out');
  const minutes = step ? Math.min(10, Math.max(1, step.minutes)) : usual;
  return add(at, 'take-out', minutes, {
    say: step?.say,
    people: liftPeople(at),
    values: { minute, ...(isLastFire(at) ? {} : { movesCoals: 1 }) },
  });
}

/** Nothing else is cooked at that hour or after: its coals are of no more use. */
function isLastFire({ making, dish, work }: OvenWork): boolean {
  return making.request.dishes.every(({ dish: other, loads }) =>
    loads.every((each) => each === work || other.serveAt < dish.dish.serveAt),
  );
}

function riseInside(at: OvenWork, load: number, rise: RecipeStep | undefined): number {
  if (rise === undefined) return load;
  const minutes = stepMinutes(at.dish, rise);
  const task = add(at, 'second-rise', minutes, { people: 0, say: rise.say });
  at.making.builder.lag(load, task, { least: 0, most: 0 });
  return task;
}

/**
 * Browning is hands at the open pot while the coals below heat it; it lies inside the cooking, before
 * the lid and its coals go on.
 */
function brownTasks(at: OvenWork, cook: number): readonly number[] {
  const { builder } = at.making;
  const steps = at.dish.recipe.steps.filter((step) => step.kind === 'brown' && step.hands > 0);
  let room = browningRoom(at);
  const tasks: number[] = [];
  for (const { say, hands: people, skill, minutes } of steps) {
    const length = Math.max(1, Math.min(minutes, room));
    const before = tasks.at(-1);
    const aim = before === undefined ? { aim: { from: cook, minutes: habits.BROWN_FROM } } : {};
    const brown = add(at, 'brown', length, { say, people, skill, ...aim });
    if (before === undefined) {
      const most = at.work.coals.browning === undefined ? habits.BROWN_BY : habits.BROWN_FROM + 5;
      builder.startLag(cook, brown, { least: 0, most });
    } else builder.lag(before, brown, { least: 0, most: habits.BROWN_NEXT });
    tasks.push(brown);
    room = Math.max(1, room - length);
  }
  return tasks;
}

/** Until the lid goes on, if it is off at first; else within the cooking. */
function browningRoom(at: OvenWork): number {
  const inside = cookMinutes(at.dish, at.work) - 1;
  const { browning } = at.work.coals;
  return browning === undefined ? inside : Math.min(inside, browning.until - habits.BROWN_FROM + 1);
}

// The work round one oven load, timed by its coal plan: grease, load, lay coals, check, turn, add,
// stir, probe, take out. Minute zero is "coals on": the end of laying.

import type { CampOven, Skill } from '../camp/camp.ts';
import type { RecipeStep, StepKind } from '../menu/recipe.ts';
import { notice } from '../notice/notice.ts';
import type { Task } from '../solver/problem.ts';
import type { DishWork, JobKind, LoadWork } from './day-sheet.ts';
import * as habits from './habits.ts';
import { type LoadTasks, type Making, ovenPool } from './making.ts';
import { isBread, isPot, stepMinutes } from './recipe-shape.ts';

interface OvenWork {
  readonly making: Making;
  readonly group: number;
  readonly dish: DishWork;
  readonly work: LoadWork;
  readonly isHeavy: boolean;
}

type Values = Readonly<Record<string, number | string>>;

export function ovenTasks(
  making: Making,
  group: number,
  pair: { readonly dish: DishWork; readonly work: LoadWork },
  served: number,
): LoadTasks {
  const oven = making.request.camp.ovens.find((each) => each.id === pair.work.load.oven);
  const at: OvenWork = { making, group, ...pair, isHeavy: isHeavy(oven) };
  const loadIn = Math.round(pair.work.coals.loadInMinute);
  const isPreheated = loadIn > 0;
  const rise = pair.dish.recipe.steps.find((step) => step.kind === 'second-rise');
  const risesInside = rise !== undefined && !isPreheated;
  const core = coreTasks(at, risesInside ? rise : undefined);
  const cook = { ...core, risesInside };
  minuteTasks(at, cook);
  const servedFromOven = isPot(pair.dish);
  const emptied = servedFromOven ? served : core.takeOut;
  const pool = ovenPool(making, pair.work.load.oven);
  making.builder.holds.push({
    id: pair.work.load.id,
    pool,
    first: core.grease,
    last: emptied,
  });
  return { work: pair.work, dish: pair.dish.dish.id, ...cook, emptied, servedFromOven };
}

export const isHeavy = (oven: CampOven | undefined) =>
  oven !== undefined && oven.style === 'deep' && oven.diameter >= habits.HEAVY_DIAMETER_METRES;

export const layMinutes = (work: LoadWork) =>
  work.coals.above.pieces + work.coals.below.pieces > habits.LAY_COALS_MANY ? 3 : 2;

/** Minutes in the oven: what the cook pinned, else the coal plan's. */
export const cookMinutes = (dish: DishWork, work: LoadWork) =>
  Math.max(
    1,
    Math.round(dish.dish.pins.bakeMinutes ?? work.coals.outMinute - work.coals.loadInMinute),
  );

function coreTasks(at: OvenWork, rise: RecipeStep | undefined) {
  const { builder } = at.making;
  const { work, dish } = at;
  const loadIn = Math.max(0, Math.round(work.coals.loadInMinute));
  const loadStep = stepOf(dish, 'load');
  const loadMinutes = work.load.shape === 'pieces' ? habits.LOAD_PIECES : habits.LOAD;
  const grease = add(at, 'grease', habits.GREASE, { skill: 'new' });
  const lay = layTask(at);
  const load = add(at, 'load', loadMinutes, {
    say: loadStep?.say,
    values: { minute: loadIn },
  });
  const minutes = cookMinutes(dish, work);
  const cook = add(at, 'cook', loadIn > 0 ? Math.max(1, minutes - loadMinutes) : minutes, {
    people: 0,
    say: stepOf(dish, 'cook')?.say,
  });
  const takeOut = takeOutTask(at, loadIn + minutes);
  if (loadIn > 0) {
    builder.lag(grease, lay, { least: 0, most: habits.GREASE_TO_OVEN });
    builder.lag(lay, load, { least: loadIn, most: loadIn + habits.OUT_LATE });
    builder.lag(load, cook, { least: 0, most: 0 });
  } else {
    builder.lag(grease, load, { least: 0, most: habits.GREASE_TO_OVEN });
    const heats = riseInside(at, load, rise);
    const room = rise ? habits.SECOND_RISE_STRETCH : habits.COLD_LOAD_TO_COALS;
    builder.lag(heats, lay, { least: 0, most: room });
    builder.lag(lay, cook, { least: 0, most: 0 });
  }
  const isPinned = dish.dish.pins.bakeMinutes !== undefined;
  const stretch = isPot(dish) ? habits.POT_OUT_LATE : habits.OUT_LATE;
  builder.lag(cook, takeOut, { least: 0, most: isPinned ? 0 : stretch });
  return { grease, lay, load, cook, takeOut, heats: brownTasks(at, cook) };
}

function layTask(at: OvenWork): number {
  const { above, below } = at.work.coals;
  const pin = at.dish.dish.pins.coalsOnAt;
  const minutes = layMinutes(at.work);
  const lay = add(at, 'lay-coals', minutes, {
    values: {
      above: above.pieces,
      below: below.pieces,
      ...shovels(above.shovels, below.shovels),
      minute: 0,
    },
    fixed: pin === undefined || at.work !== at.dish.loads[0] ? undefined : pin - minutes,
  });
  drawCoals(at, lay, { minute: -minutes, amount: above.pieces + below.pieces });
  return lay;
}

function takeOutTask(at: OvenWork, minute: number): number {
  const step = stepOf(at.dish, 'take-out');
  const minutes = step ? Math.min(10, Math.max(1, step.minutes)) : habits.TAKE_OUT;
  return add(at, 'take-out', minutes, {
    say: step?.say,
    people: liftPeople(at),
    values: { minute },
  });
}

function riseInside(at: OvenWork, load: number, rise: RecipeStep | undefined): number {
  if (rise === undefined) return load;
  const minutes = stepMinutes(at.dish, rise);
  const task = add(at, 'second-rise', minutes, { people: 0, say: rise.say });
  at.making.builder.lag(load, task, { least: 0, most: 0 });
  return task;
}

/** Browning is hands at the oven while its coals heat it; it lies inside the cooking. */
function brownTasks(at: OvenWork, cook: number): readonly number[] {
  const { builder } = at.making;
  const steps = at.dish.recipe.steps.filter((step) => step.kind === 'brown' && step.hands > 0);
  let room = cookMinutes(at.dish, at.work) - 1;
  const tasks: number[] = [];
  for (const { say, hands: people, skill, minutes } of steps) {
    const length = Math.min(minutes, room);
    const before = tasks.at(-1);
    const aim = before === undefined ? { aim: { from: cook, minutes: habits.BROWN_FROM } } : {};
    const brown = add(at, 'brown', length, { say, people, skill, ...aim });
    if (before === undefined) builder.startLag(cook, brown, { least: 0, most: habits.BROWN_BY });
    else builder.lag(before, brown, { least: 0, most: habits.BROWN_NEXT });
    tasks.push(brown);
    room = Math.max(1, room - length);
  }
  return tasks;
}

function minuteTasks(
  at: OvenWork,
  core: { readonly lay: number; readonly takeOut: number; readonly cook: number },
): void {
  const { coals, bake } = at.work;
  const loadIn = coals.loadInMinute;
  const out = Math.round(loadIn) + cookMinutes(at.dish, at.work);
  for (const turn of coals.turns) {
    const values = { minute: turn.minute, turn: turn.kind, angleDegrees: turn.angle };
    atMinute(at, core, { kind: 'turn', minutes: habits.TURN, minute: turn.minute, values });
  }
  for (const each of coals.additions) {
    const { above, below, minute } = each;
    const values = {
      minute,
      above,
      below,
      ...shovels(each.shovelsAbove, each.shovelsBelow),
      clearAsh: each.clearAsh ? 1 : 0,
    };
    const task = atMinute(at, core, {
      kind: 'add-coals',
      minutes: habits.ADD_COALS,
      minute,
      values,
    });
    if (task !== undefined) drawCoals(at, task, { minute, amount: above + below });
  }
  for (const check of coals.checks) {
    const latest = check.oven === 'empty' ? loadIn - habits.CHECK : out - habits.CHECK;
    const minute = Math.max(0, Math.min(check.minute, latest));
    const values = { minute, oven: check.oven };
    atMinute(at, core, { kind: 'check', minutes: habits.CHECK, minute, values, latest });
  }
  for (const minute of stirMinutes(at.dish, loadIn, out)) {
    const say = stepOf(at.dish, 'stir')?.say;
    atMinute(at, core, { kind: 'stir', minutes: habits.STIR, minute, values: { minute }, say });
  }
  if (bake.done.core !== undefined) {
    const values = { minute: out - 3, coreKelvin: bake.done.core };
    atMinute(at, core, {
      kind: 'probe',
      minutes: habits.PROBE,
      minute: out - 3,
      values,
      latest: out - habits.PROBE,
    });
  }
}

interface MinuteJob {
  readonly kind: JobKind;
  readonly minutes: number;
  readonly minute: number;
  readonly values: Values;
  readonly say?: string | undefined;
  /** Starts no later than this minute. */
  readonly latest?: number;
}

/** A job at a minute of the coals; it may slip a little, never past taking out. */
function atMinute(
  at: OvenWork,
  core: { readonly lay: number; readonly takeOut: number },
  job: MinuteJob,
): number | undefined {
  const minute = Math.round(job.minute);
  const out = Math.round(at.work.coals.loadInMinute) + cookMinutes(at.dish, at.work);
  if (minute < 0 || minute >= out) return undefined;
  const least = Math.max(0, minute - habits.EARLY);
  const most = Math.max(least, Math.min(minute + habits.LATE, Math.round(job.latest ?? out)));
  const layLength = at.making.builder.tasks[core.lay]!.minutes;
  const aim = { from: core.lay, minutes: layLength + Math.min(minute, most) };
  const task = add(at, job.kind, job.minutes, { values: job.values, say: job.say, aim });
  at.making.builder.lag(core.lay, task, { least, most });
  at.making.builder.lag(task, core.takeOut, { least: 0 });
  return task;
}

/** A pot is stirred every so often once browning is over (which is stirring enough). */
function stirMinutes(dish: DishWork, loadIn: number, out: number): readonly number[] {
  if (!isPot(dish) || isBread(dish)) return [];
  const browning = dish.recipe.steps.filter((step) => step.kind === 'brown' && step.hands > 0);
  const busy = browning.reduce((sum, step) => sum + step.minutes, 0);
  const from = loadIn + (browning.length > 0 ? habits.BROWN_FROM + busy : 0);
  const minutes: number[] = [];
  for (let at = from + habits.STIR_EVERY; at <= out - 10; at += habits.STIR_EVERY) {
    minutes.push(Math.round(at));
  }
  return minutes;
}

interface AddWish {
  readonly values?: Values;
  readonly say?: string | undefined;
  readonly people?: number;
  readonly skill?: Skill;
  readonly fixed?: number | undefined;
  readonly aim?: Task['aim'];
}

function add(at: OvenWork, kind: JobKind, minutes: number, wish: AddWish): number {
  const people = wish.people ?? 1;
  const hand = at.dish.dish.pins.hand;
  const seats = people > 0 ? at.making.crews.seats(wish.skill ?? 'steady', people, hand) : [];
  return at.making.builder.task({
    kind,
    minutes,
    seats,
    group: at.group,
    dish: at.dish.dish.id,
    load: at.work.load.id,
    oven: at.work.load.oven,
    team: `oven ${at.work.load.oven}`,
    ...(wish.values === undefined ? {} : { values: wish.values }),
    ...(wish.say === undefined ? {} : { say: wish.say }),
    ...(wish.fixed === undefined ? {} : { fixed: wish.fixed }),
    ...(wish.aim === undefined ? {} : { aim: wish.aim }),
    ...(kind === 'probe' ? { needsCare: true } : {}),
  });
}

/** Lit coals: they must outlast the stretch until more are added or the load comes out. */
function drawCoals(
  at: OvenWork,
  task: number,
  draw: { readonly minute: number; readonly amount: number },
): void {
  const amount = Math.round(draw.amount);
  if (amount <= 0) return;
  const out = Math.round(at.work.coals.loadInMinute) + cookMinutes(at.dish, at.work);
  const next = at.work.coals.additions.find((each) => each.minute > draw.minute + 1)?.minute ?? out;
  const needed = Math.min(next, out) - draw.minute;
  const isFed = at.making.request.camp.fuel.kind === 'wood-coals';
  sayIfOld(at, needed);
  const life = Math.floor(at.making.request.coalLife);
  const left = life - Math.ceil(needed);
  const waitMost = isFed
    ? Number.POSITIVE_INFINITY
    : Math.min(life, Math.max(habits.COALS_WAIT_ALWAYS, left));
  at.making.uses.push({ task, amount, waitMost });
}

/** Once for each load: coals that must last well past their life before fresh ones come. */
function sayIfOld(at: OvenWork, neededMinutes: number): void {
  const { notices, request } = at.making;
  const isKnown = notices.some(
    (each) => each.code === 'TIMETABLE_COALS_OLD' && each.about.task === at.work.load.id,
  );
  if (isKnown || neededMinutes <= request.coalLife + habits.COALS_WAIT_ALWAYS) return;
  const about = { dish: at.dish.dish.id, oven: at.work.load.oven, task: at.work.load.id };
  const values = { neededMinutes, lifeMinutes: request.coalLife };
  notices.push(notice('TIMETABLE_COALS_OLD', 'doubt', about, values));
}

const stepOf = (dish: DishWork, kind: StepKind) =>
  dish.recipe.steps.find((step) => step.kind === kind);

const liftPeople = (at: OvenWork) => (at.isHeavy ? 2 : 1);

const shovels = (above: number | undefined, below: number | undefined): Values => ({
  ...(above === undefined ? {} : { shovelsAbove: above }),
  ...(below === undefined ? {} : { shovelsBelow: below }),
});

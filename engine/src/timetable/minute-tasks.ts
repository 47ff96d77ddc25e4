// What is done at a minute of the coals: turns, additions, checks, stirring, the probe.

import { drawCoals } from './coal-draws.ts';
import type { DishWork, JobKind } from './day-sheet.ts';
import * as habits from './habits.ts';
import {
  add,
  coalMinutes,
  cookMinutes,
  liftPeople,
  type OvenWork,
  shovels,
  stepOf,
  type Values,
} from './oven-work.ts';
import { isBread, isPot } from './recipe-shape.ts';

/** Every turn, addition, check, stir and the probe of a load. */
export function minuteTasks(
  at: OvenWork,
  core: { readonly lay: number; readonly takeOut: number; readonly cook: number },
): void {
  const { coals, bake } = at.work;
  const loadIn = coals.loadInMinute;
  const out = Math.round(loadIn) + cookMinutes(at.dish, at.work);
  for (const turn of coals.turns) {
    const values = { minute: turn.minute, turn: turn.kind, angleDegrees: turn.angle };
    const people = turn.kind === 'lid-alone' ? 1 : liftPeople(at);
    atMinute(at, core, {
      kind: 'turn',
      minutes: habits.TURN,
      minute: turn.minute,
      values,
      people,
    });
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
      minutes: coalMinutes(above + below),
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
  readonly people?: number;
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
  const { values, say, people = 1 } = job;
  const task = add(at, job.kind, job.minutes, { values, say, people, aim });
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

// What is done at a minute of the coals: turns, additions, checks, stirring, the probe.

import type { Addition, Turn } from '../coals/coal-plan.ts';
import { drawCoals } from './coal-draws.ts';
import type { JobKind } from './day-sheet.ts';
import * as habits from './habits.ts';
import {
  add,
  coalMinutes,
  cookMinutes,
  liftPeople,
  type OvenWork,
  shovels,
  type Values,
} from './oven-work.ts';
import { stirJobs } from './stirring.ts';

interface Core {
  readonly lay: number;
  readonly takeOut: number;
  /** Browning in the open pot: the lid and its coals come after it. */
  readonly heats: readonly number[];
}

/** Every turn, addition, check, stir and the probe of a load. */
export function minuteTasks(at: OvenWork, core: Core): void {
  const first = at.making.builder.tasks.length;
  placeMinuteTasks(at, core);
  if (at.wave.loads.length > 1) chained(at, first);
}

/** On a round nobody overtakes: at each oven its jobs follow each other in the order of their minutes. */
function chained({ making: { builder } }: OvenWork, first: number): void {
  const own = builder.tasks
    .map((task, index) => ({ index, minute: task.aim?.minutes ?? 0 }))
    .slice(first)
    .sort((one, other) => one.minute - other.minute || one.index - other.index);
  own.slice(1).forEach(({ index }, at) => {
    builder.lag(own[at]!.index, index, { least: 0 });
  });
}

function placeMinuteTasks(at: OvenWork, core: Core): void {
  const { coals, bake } = at.work;
  const loadIn = coals.loadInMinute;
  const out = Math.round(loadIn) + cookMinutes(at.dish, at.work);
  for (const turn of coals.turns) atMinute(at, core, turnJob(at, turn));
  for (const each of coals.additions) addition(at, core, each);
  for (const check of coals.checks) {
    const latest = check.oven === 'empty' ? loadIn - habits.CHECK : out - habits.CHECK;
    const minute = Math.max(0, Math.min(check.minute, latest));
    const values = { minute, oven: check.oven };
    atMinute(at, core, { kind: 'check', minutes: habits.CHECK, minute, values, latest });
  }
  for (const job of stirJobs(at.dish, loadIn, out)) atMinute(at, core, job);
  if (bake.done.core !== undefined) {
    const values = { minute: out - 3, coreKelvin: bake.done.core };
    const latest = out - habits.PROBE;
    const probe = {
      kind: 'probe' as const,
      minutes: habits.PROBE,
      minute: out - 3,
      values,
      latest,
    };
    atMinute(at, core, probe);
  }
}

/** Turned before coals of the same minute are added, so that none roll off; the minute is theirs. */
function turnJob(at: OvenWork, turn: Turn): MinuteJob {
  const { minute } = turn;
  const meets = at.work.coals.additions.find((each) => {
    const ends = each.minute + coalMinutes(each.above + each.below);
    return each.minute - habits.TURN < minute && minute < ends;
  });
  const isBefore = meets !== undefined && minute <= meets.minute;
  const ends = meets && meets.minute + coalMinutes(meets.above + meets.below);
  return {
    kind: 'turn',
    minutes: habits.TURN,
    minute: ends === undefined ? minute : isBefore ? meets!.minute - habits.TURN : ends,
    room: at.making.isLoose ? habits.ABOUT : habits.TO_THE_MINUTE,
    values: { minute, turn: turn.kind, angleDegrees: turn.angle },
    people: turn.kind === 'lid-alone' ? 1 : liftPeople(at),
  };
}

function addition(at: OvenWork, core: Core, each: Addition): void {
  const { above, below, minute } = each;
  const { browning } = at.work.coals;
  const setsLid = browning !== undefined && minute === browning.until;
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
    room: at.making.isLoose ? habits.ABOUT : habits.TO_THE_MINUTE,
    values,
  });
  if (task === undefined) return;
  drawCoals(at, task, { minute, amount: above + below });
  const browned = core.heats.at(-1);
  if (browned !== undefined && setsLid) at.making.builder.lag(browned, task, { least: 0 });
}

export interface MinuteJob {
  readonly kind: JobKind;
  readonly minutes: number;
  readonly minute: number;
  readonly values: Values;
  readonly say?: string | undefined;
  readonly people?: number;
  /** Starts no later than this minute. */
  readonly latest?: number;
  readonly room?: { readonly early: number; readonly late: number };
}

/** A job at a minute of the coals; it may slip a little, never past taking out. */
function atMinute(at: OvenWork, core: Core, job: MinuteJob): number | undefined {
  const minute = Math.round(job.minute);
  const out = Math.round(at.work.coals.loadInMinute) + cookMinutes(at.dish, at.work);
  if (minute < 0 || minute >= out) return undefined;
  const { values, say, people = 1, room = habits.ABOUT } = job;
  const least = Math.max(0, minute - room.early);
  const most = Math.max(least, Math.min(minute + room.late, Math.round(job.latest ?? out)));
  const layLength = at.making.builder.tasks[core.lay]!.minutes;
  const aim = { from: core.lay, minutes: layLength + Math.min(minute, most) };
  const task = add(at, job.kind, job.minutes, { values, say, people, aim });
  at.making.builder.lag(core.lay, task, { least, most });
  at.making.builder.lag(task, core.takeOut, { least: 0 });
  return task;
}

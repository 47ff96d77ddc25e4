// One load from "coals on" to the plate: minutes, the clock beside them, and the state of the oven.

import type { DishPlan, LoadPlan, MealDay } from '../../meal.ts';
import type { JobKind, Serving } from '../../timetable/day-sheet.ts';
import type { StepRow } from '../document.ts';
import type { Say } from '../say.ts';
import { type FirstWork, firstWork } from './first-work.ts';
import { loadJobs, minuteOnSheet } from './load-jobs.ts';
import { isBread, loadNoun, type Moments, momentsOf } from './moments.ts';
import {
  additionPhrase,
  areAlike,
  endsBrowning,
  isWood,
  sentenceCase,
  turnBrief,
} from './phrases.ts';
import { waitsWord } from './served.ts';

interface Happening {
  readonly minute: number;
  readonly what: string;
  /** Short form for the curve. */
  readonly brief: string;
  readonly strong?: boolean;
  readonly note?: string;
}

/** Everything that happens to one load over its coals, soonest first. */
export function happenings(
  plan: MealDay,
  dish: DishPlan,
  part: LoadPlan,
  say: Say,
): readonly Happening[] {
  const moments = momentsOf(plan, dish, part);
  const all: Happening[] = [
    ...loadingRows(moments, loadNoun(dish)),
    ...coalRows(plan, part),
    ...probeRows(plan, part, moments),
    {
      minute: moments.outAt,
      what: `Out, if it is done: ${likely(moments, say)}`,
      brief: 'out',
      strong: true,
    },
  ];
  return all.sort((left, right) => left.minute - right.minute);
}

function loadingRows({ inAt }: Moments, noun: string): readonly Happening[] {
  const isCold = inAt === 0;
  const on = {
    minute: 0,
    what: 'Coals on, as drawn',
    brief: isCold ? `coals on, ${noun} in` : 'coals on',
    strong: true,
    note: isCold ? `${noun} in from the start` : 'oven still empty',
  };
  if (isCold) return [on];
  const what = `${sentenceCase(noun)} in, lid straight back`;
  return [on, { minute: inAt, what, brief: `${noun} in`, strong: true }];
}

/** Checks, turns and additions at the minutes that the day sheet has for them. */
function coalRows(plan: MealDay, part: LoadPlan): readonly Happening[] {
  const { coals } = part;
  const wood = isWood(coals);
  const at = (kind: JobKind, planned: number) => minuteOnSheet(plan, part, { kind, planned });
  return [
    ...coals.checks.map((check) => ({
      minute: at('check', check.minute),
      what: `Check the heat (${check.oven} oven)`,
      brief: 'check',
    })),
    ...coals.turns.map((turn) => ({
      minute: at('turn', turn.minute),
      what: areAlike(coals.turns) ? 'Turn, as drawn' : sentenceCase(turnBrief(turn)),
      brief: 'turn',
    })),
    ...coals.additions.map((addition) => ({
      minute: at('add-coals', addition.minute),
      what: `${endsBrowning(coals, addition) ? 'Lid on: add' : 'Add'} ${additionPhrase(addition, wood)}${addition.clearAsh ? ', ash cleared first' : ''}`,
      brief: `add ${additionPhrase(addition, wood)}`,
    })),
  ];
}

/** Browning and the probe, which only the day sheet has a time for. */
function probeRows(plan: MealDay, { load }: LoadPlan, { zero }: Moments): readonly Happening[] {
  if (zero === undefined) return [];
  const rows = (kind: JobKind, what: string, brief: string) =>
    loadJobs(plan, load.id, kind).map((job) => ({ minute: job.start - zero, what, brief }));
  return [
    ...rows('brown', 'Brown, lid off', 'brown'),
    ...rows('probe', 'Is it done? Look, press, probe', 'done?'),
  ];
}

/** What is done at one minute is one row: turn and coals are one trip to the fire. */
function byMinute(all: readonly Happening[]): readonly Happening[] {
  const rows: Happening[] = [];
  for (const each of all) {
    const last = rows.at(-1);
    const isSame =
      last !== undefined &&
      Math.round(last.minute) === Math.round(each.minute) &&
      last.strong === undefined &&
      each.strong === undefined &&
      each.note === undefined;
    if (isSame) rows[rows.length - 1] = { ...last, what: `${last.what}. ${each.what}` };
    else rows.push(each);
  }
  return rows;
}

/** `likely 18:24 to 18:38`. */
function likely(moments: Moments, say: Say): string {
  const { zero, outFrom, outTo } = moments;
  return zero === undefined
    ? `likely ${say.minutes(outFrom)} to ${say.minutes(outTo)} from coals on`
    : `likely ${say.clock(zero + outFrom)} to ${say.clock(zero + outTo)}`;
}

/** Rows of the "When" list: first the work before the coals; rest and serving follow the oven. */
export function whenRows(plan: MealDay, dish: DishPlan, part: LoadPlan, say: Say): StepRow[] {
  const moments = momentsOf(plan, dish, part);
  const { zero } = moments;
  const work = firstWork(plan, dish, part, say);
  const isBefore = ({ at }: { readonly at: number }) => zero === undefined || at < zero;
  const later = work
    .filter((each) => !isBefore(each))
    .map(({ at, ...rest }): Happening => ({ minute: at - (zero ?? 0), brief: '', ...rest }));
  const over = [...happenings(plan, dish, part, say), ...later];
  const rows = [
    ...beforeRows(work.filter(isBefore), say),
    ...byMinute(over.sort((one, other) => one.minute - other.minute)).map((each) =>
      minuteRow(each, zero, say),
    ),
    ...restRows(dish, moments, say),
  ];
  const serving = plan.daySheet.servings.find(({ dish: id }) => id === dish.dish.id);
  return serving === undefined
    ? rows
    : [...rows, servingRow(serving, waitsWord(plan, dish, say), say)];
}

/** Work before "coals on" has a clock time and no minute. */
const beforeRows = (work: readonly FirstWork[], say: Say): readonly StepRow[] =>
  work.map(({ at, what, note }) => ({
    when: 'before',
    clock: say.clock(at),
    what,
    ...(note === undefined ? {} : { note }),
  }));

function minuteRow(happening: Happening, zero: number | undefined, say: Say): StepRow {
  const { minute, what, strong, note } = happening;
  return {
    when: say.minutes(minute),
    ...(zero === undefined ? {} : { clock: say.clock(zero + minute) }),
    what,
    ...(strong === undefined ? {} : { strong }),
    ...(note === undefined ? {} : { note }),
  };
}

function restRows(dish: DishPlan, moments: Moments, say: Say): readonly StepRow[] {
  const { restMinutes, outAt, zero } = moments;
  if (restMinutes <= 0) return [];
  const bread = isBread(dish);
  const what = `${bread ? 'Cooled enough to cut' : 'Rested'}: ${say.minutes(restMinutes)} on ${bread ? 'a rack' : 'the board'}`;
  return [minuteRow({ minute: outAt + restMinutes, what, brief: '' }, zero, say)];
}

function servingRow(serving: Serving, waits: string, say: Say): StepRow {
  const { served, wanted } = serving;
  return {
    when: 'serve',
    clock: say.clock(served),
    what:
      served > wanted + 0.5
        ? `On the table, ${say.minutes(served - wanted)} later than wished`
        : 'On the table',
    strong: true,
    ...(waits === '' ? {} : { note: `it has waited ${waits}` }),
  };
}

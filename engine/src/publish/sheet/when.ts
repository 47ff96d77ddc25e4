// One load from "coals on" to the plate: minutes, the clock beside them, and the state of the oven.

import type { DishPlan, LoadPlan, MealPlan } from '../../meal.ts';
import type { Serving } from '../../timetable/day-sheet.ts';
import type { StepRow } from '../document.ts';
import type { Say } from '../say.ts';
import { isBread, loadNoun, momentsOf } from './moments.ts';
import { additionPhrase, areAlike, isWood, sentenceCase, turnBrief } from './phrases.ts';
import { waitsWord } from './served.ts';

interface Happening {
  readonly minute: number;
  readonly what: string;
  /** Short form for the curve. */
  readonly brief: string;
  readonly strong?: boolean;
  readonly note?: string;
}

/** Everything that happens to one load, soonest first. */
export function happenings(
  plan: MealPlan,
  dish: DishPlan,
  part: LoadPlan,
  say: Say,
): readonly Happening[] {
  const { coals } = part;
  const moments = momentsOf(plan, dish, part);
  const wood = isWood(coals);
  const noun = loadNoun(dish);
  const all: Happening[] = [
    {
      minute: 0,
      what: 'Coals on, as drawn',
      brief: moments.inAt === 0 ? `coals on, ${noun} in` : 'coals on',
      strong: true,
      note: moments.inAt === 0 ? `${noun} in from the start` : 'oven still empty',
    },
    ...coals.checks.map((check) => ({
      minute: check.minute,
      what: `Check the heat (${check.oven} oven)`,
      brief: 'check',
    })),
    ...(moments.inAt === 0
      ? []
      : [
          {
            minute: moments.inAt,
            what: `${sentenceCase(noun)} in, lid straight back`,
            brief: `${noun} in`,
            strong: true,
            note: `${noun} in`,
          },
        ]),
    ...coals.turns.map((turn) => ({
      minute: turn.minute,
      what: areAlike(coals.turns) ? 'Turn, as drawn' : sentenceCase(turnBrief(turn)),
      brief: 'turn',
    })),
    ...coals.additions.map((addition) => ({
      minute: addition.minute,
      what: `Add ${additionPhrase(addition, wood)}${addition.clearAsh ? ', ash cleared first' : ''}`,
      brief: `add ${additionPhrase(addition, wood)}`,
    })),
    {
      minute: moments.outAt,
      what: `Out, if it is done: ${likely(moments, say)}`,
      brief: 'out',
      strong: true,
    },
  ];
  return all.sort((left, right) => left.minute - right.minute);
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
      each.strong === undefined;
    if (isSame) rows[rows.length - 1] = { ...last, what: `${last.what}. ${each.what}` };
    else rows.push(each);
  }
  return rows;
}

/** `likely 18:24 to 18:38`. */
function likely(moments: ReturnType<typeof momentsOf>, say: Say): string {
  const { zero, outFrom, outTo } = moments;
  return zero === undefined
    ? `likely ${say.minutes(outFrom)} to ${say.minutes(outTo)} from coals on`
    : `likely ${say.clock(zero + outFrom)} to ${say.clock(zero + outTo)}`;
}

/** Rows of the "When" list; rest and serving follow the oven. */
export function whenRows(plan: MealPlan, dish: DishPlan, part: LoadPlan, say: Say): StepRow[] {
  const moments = momentsOf(plan, dish, part);
  const clockOf = (minute: number) =>
    moments.zero === undefined ? {} : { clock: say.clock(moments.zero + minute) };
  const rows = byMinute(happenings(plan, dish, part, say)).map(
    ({ minute, what, strong, note }): StepRow => ({
      when: say.minutes(minute),
      ...clockOf(minute),
      what,
      ...(strong === undefined ? {} : { strong }),
      ...(note === undefined ? {} : { note }),
    }),
  );
  if (moments.restMinutes > 0) {
    rows.push({
      when: say.minutes(moments.outAt + moments.restMinutes),
      ...clockOf(moments.outAt + moments.restMinutes),
      what: `${isBread(dish) ? 'Cooled enough to cut' : 'Rested'}: ${say.minutes(moments.restMinutes)} on ${isBread(dish) ? 'a rack' : 'the board'}`,
    });
  }
  const serving = plan.daySheet.servings.find(({ dish: id }) => id === dish.dish.id);
  if (serving !== undefined) rows.push(servingRow(serving, waitsWord(plan, dish, say), say));
  return rows;
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

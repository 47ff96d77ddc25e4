// Which wish of the cook stands behind a task? Paths into the camp file, for refusals.

import type { TimetableRequest } from './day-sheet.ts';
import type { DayWork } from './work.ts';

/** The step of the recipe that a task does; the dish itself for work that no recipe names. */
export function wishOf(day: DayWork, task: number): string | undefined {
  const { kind, dish, say } = day.meanings[task]!;
  const work = day.dishes.find((each) => each.work.dish.id === dish)?.work;
  if (work === undefined) return undefined;
  if (day.problem.tasks[task]!.fixed !== undefined) return `menu.${dish}.pins.coalsOnAt`;
  if (kind === 'served') return `menu.${dish}.serveAt`;
  const step = work.recipe.steps.find((each) => each.kind === kind && (!say || each.say === say));
  return step === undefined ? `menu.${dish}` : `recipes.${work.recipe.id}.steps.${step.id}`;
}

/** What keeps work from beginning sooner: the hour it is, or who comes first. */
export function startWish({ camp, notBefore }: TimetableRequest): string {
  const first = Math.min(...camp.hands.map((hand) => hand.from));
  if (notBefore !== undefined && notBefore >= first) return 'now';
  const hand = camp.hands.find((each) => each.from === first);
  return hand === undefined ? 'hands' : `hands.${hand.id}.from`;
}

export const unique = (paths: readonly (string | undefined)[]): readonly string[] =>
  [...new Set(paths)].filter((path) => path !== undefined);

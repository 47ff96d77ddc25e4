// When is a pot stirred, and what is said? Stirring is "stir"; words of the recipe are said where it
// means something else by them, such as a slurry that goes in once, near the end.

import type { RecipeStep } from '../menu/recipe.ts';
import type { DishWork } from './day-sheet.ts';
import * as habits from './habits.ts';
import type { MinuteJob } from './minute-tasks.ts';
import { isBread, isPot, lagsInto } from './recipe-shape.ts';

/** Stirs of one pot, and the recipe's own late ones, each once. */
export function stirJobs(dish: DishWork, loadIn: number, out: number): readonly MinuteJob[] {
  const lates = dish.recipe.steps.filter((step) => isLate(dish, step));
  const last = Math.min(out, ...lates.map((step) => lateMinute(step, out)));
  const plain = stirMinutes(dish, loadIn, last).map((minute) => ({
    kind: 'stir' as const,
    minutes: habits.STIR,
    minute,
    values: { minute },
    room: habits.STIR_ROOM,
  }));
  const own = lates.map((step) => ({
    kind: 'stir' as const,
    minutes: Math.max(habits.STIR, Math.min(step.minutes, out - loadIn - 1)),
    minute: lateMinute(step, out),
    values: { minute: lateMinute(step, out) },
    say: step.say,
    people: Math.max(1, step.hands),
    latest: Math.max(0, out - step.minutes),
    room: { early: 10, late: 4 },
  }));
  return [...plain, ...own];
}

/** Stirred in once it has cooked, not while it cooks. */
function isLate({ recipe }: DishWork, step: RecipeStep): boolean {
  if (step.kind !== 'stir' || step.hands <= 0) return false;
  return lagsInto(recipe, recipe.steps.indexOf(step)).some(
    (lag) => recipe.steps.find((each) => each.id === lag.step)?.kind === 'cook',
  );
}

const lateMinute = (step: RecipeStep, out: number) =>
  Math.max(0, Math.round(out - Math.max(habits.LAST_STIR, step.minutes + 3)));

/** Every so often once browning is over (which is stirring enough). */
function stirMinutes(dish: DishWork, loadIn: number, until: number): readonly number[] {
  if (!isPot(dish) || isBread(dish)) return [];
  const browning = dish.recipe.steps.filter((step) => step.kind === 'brown' && step.hands > 0);
  const busy = browning.reduce((sum, step) => sum + step.minutes, 0);
  const from = loadIn + (browning.length > 0 ? habits.BROWN_FROM + busy : 0);
  const minutes: number[] = [];
  for (let at = from + habits.STIR_EVERY; at <= until - 10; at += habits.STIR_EVERY) {
    minutes.push(Math.round(at));
  }
  return minutes;
}

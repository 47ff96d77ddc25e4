// Yeast does not read: where a rise is written much longer or shorter than this dough at this warmth is
// likely to take, the sheet goes by the reckoning, and says so.

import { type Notice, notice } from '../notice/notice.ts';
import type { DishWork, TimetableRequest } from './day-sheet.ts';
import { mainRise, stepMinutes } from './recipe-shape.ts';

/** So many times outside its band is no other kitchen any more, but another dough; judged. */
const FAR_OUT = 1.5;

/** One for each recipe, however many dishes are made of its dough. */
export function riseNotices({ dishes }: TimetableRequest): readonly Notice[] {
  const byRecipe = new Map(dishes.map((work) => [work.recipe.id, work]));
  return [...byRecipe.values()].flatMap(notAsWritten);
}

function notAsWritten(work: DishWork): readonly Notice[] {
  const { rise, recipe, dish } = work;
  const main = mainRise(recipe);
  if (rise === undefined || main === undefined) return [];
  const reckonedMinutes = stepMinutes(work, main);
  const spare = rise.first - reckonedMinutes; // soaking and folding, in which yeast works too
  const writtenMinutes = main.minutes + spare;
  const isNear = rise.least / FAR_OUT <= writtenMinutes && writtenMinutes <= rise.most * FAR_OUT;
  if (isNear) return [];
  const values = { writtenMinutes: main.minutes, reckonedMinutes };
  return [notice('TIMETABLE_RISE_NOT_AS_WRITTEN', 'doubt', { dish: dish.id }, values)];
}

// Which loads share an oven for one serving? They go in one after the other, in the order of the
// menu: only the last can come out fresh, and the dough of a later one has to wait its turn.

import type { DishWork, LoadWork, TimetableRequest } from './day-sheet.ts';
import { isBread } from './recipe-shape.ts';

/** Does the oven bake again for the same serving, this dish or another bread? */
export const isUsedAgain = (request: TimetableRequest, work: DishWork, load: LoadWork): boolean => {
  const turns = turnsOf(request, work, load);
  return turns.indexOf(load) < turns.length - 1;
};

export const isLaterTurn = (request: TimetableRequest, work: DishWork, load: LoadWork): boolean =>
  turnsOf(request, work, load).indexOf(load) > 0;

/** Breads served further apart than this are not turns of one serving [min]. */
const ONE_SERVING = 60;

function turnsOf(request: TimetableRequest, work: DishWork, load: LoadWork): readonly LoadWork[] {
  const isRival = (other: DishWork) =>
    other === work ||
    (isBread(other) &&
      isBread(work) &&
      Math.abs(other.dish.serveAt - work.dish.serveAt) < ONE_SERVING);
  const inOrder = request.dishes
    .filter(isRival)
    .toSorted((one, other) => one.dish.serveAt - other.dish.serveAt);
  return inOrder
    .flatMap((other) => other.loads)
    .filter((each) => each.load.oven === load.load.oven);
}

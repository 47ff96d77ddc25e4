// How many portions of a dish: mouths by appetite, the share that takes it, who can't eat it, who
// comes late. Sources: mouths/appetites.ts.

import type { Camp } from '../camp/camp.ts';
import { type Notice, notice } from '../notice/notice.ts';
import { ratio } from '../quantity/unit.ts';
import type { DishPortions } from './load.ts';
import type { MenuDish } from './menu.ts';
import {
  type Latecomers,
  latecomersIn,
  meanAppetite,
  mouthsIn,
  usualReserve,
} from './mouths/appetites.ts';
import { type Unfit, unfitFor } from './needs.ts';
import { writtenPortions } from './pieces.ts';
import type { Recipe } from './recipe.ts';

/**
 * Eaters, ordinary portions and the factor on the recipe.
 *
 * Where the cook says the portions, they are kept as they are: no appetite, no reserve. Else each
 * mouth counts by appetite, those who can't eat the dish are left out, and from twelve eaters on
 * a reserve is added; a reserve that the cook says wins. Latecomers eat what everybody eats: their
 * part of it is kept for them, and nothing is added.
 *
 * @notice MENU_CANNOT_EAT — someone is not counted
 * @notice MENU_RESERVE — some portions are held back
 * @notice MENU_LATECOMERS — some portions are kept for those who come late
 * @notice MENU_LATE_LONGER — they come later than the dish waits well
 * @notice MENU_FOOD_SHORT — the portions that the cook said feed clearly fewer than eat it
 * @source calorieNeeds, hardWorkRations (grade B); reserve: common practice, no source
 */
export function portionsFor(dish: MenuDish, recipe: Recipe, camp: Camp): DishPortions {
  const unfit = unfitFor(recipe, camp);
  const share = dish.share ?? 1;
  const mouths = mouthsIn(camp.mouths);
  const fit = Math.max(0, mouths - unfit.length);
  const eaters = Math.round(fit * share);
  const hunger = fit * meanAppetite(camp.mouths) * share;
  const wanted = dish.portions ?? hunger;
  const reserve =
    dish.portions === undefined ? Math.ceil(wanted * reserveShare(dish, eaters) - 1e-9) : 0;
  const portions = roundPortions(wanted + reserve, dish);
  const late = latecomersIn(camp.mouths);
  const kept = late === undefined ? 0 : Math.ceil((portions - reserve) * late.share - 1e-9);
  return {
    dish: dish.id,
    eaters,
    portions: finiteOr0(portions),
    reserve: finiteOr0(reserve),
    ...(0 < kept && 0 < eaters ? { late: finiteOr0(kept) } : {}),
    factor: ratio(finiteOr0(portions / writtenPortions(recipe, dish))),
    notices: [
      ...unfit.map((who) => cannotEat(dish, who)),
      ...(0 < reserve ? [reserveNotice(dish, reserve)] : []),
      ...(late === undefined || eaters === 0 ? [] : [lateNotice(dish, recipe, late, kept)]),
      ...shortNotices(dish, { wanted: hunger, eaters }),
    ],
  };
}

const finiteOr0 = (factor: number) => (Number.isFinite(factor) ? Math.max(0, factor) : 0);

/** Whole portions, upwards: nobody gets two thirds of a roll. The cook's own number is kept. */
const roundPortions = (portions: number, dish: MenuDish) =>
  dish.portions === undefined ? Math.ceil(portions - 1e-9) : portions;

/** The cook's own share, else what is usual for so many. */
const reserveShare = ({ reserve }: MenuDish, eaters: number) => reserve ?? usualReserve(eaters);

/** Ordinary mouths that so many portions feed, their reserve counted; at least one. */
export function mouthsFedBy(portions: number): number {
  let mouths = Math.max(1, Math.round(portions));
  while (1 < mouths && portions < mouths + Math.ceil(mouths * usualReserve(mouths))) mouths -= 1;
  return mouths;
}

/** Fewer portions than this part of what the eaters want is worth a word; ours. */
const CLEARLY_FEWER = 0.85;

function shortNotices(
  dish: MenuDish,
  { wanted, eaters }: { readonly wanted: number; readonly eaters: number },
): readonly Notice[] {
  const { portions } = dish;
  if (portions === undefined || !(portions < CLEARLY_FEWER * wanted)) return [];
  const values = { portions, wantedPortions: wanted, eaters };
  return [notice('MENU_FOOD_SHORT', 'doubt', { dish: dish.id }, values)];
}

const cannotEat = (dish: MenuDish, unfit: Unfit): Notice =>
  notice(
    'MENU_CANNOT_EAT',
    'note',
    { dish: dish.id },
    { ...unfit, portions: dish.portions === undefined ? 'less' : 'kept' },
  );

const reserveNotice = (dish: MenuDish, reserve: number): Notice =>
  notice('MENU_RESERVE', 'note', { dish: dish.id }, { portions: reserve });

/** A dish that waits as long is only kept; one that does not is told apart. */
function lateNotice(
  dish: MenuDish,
  recipe: Recipe,
  { mouths, minutes }: Latecomers,
  portions: number,
): Notice {
  const waits = dish.mayWait ?? recipe.target.canWait;
  const values = { mouths, portions, lateMinutes: minutes, waitsMinutes: waits };
  return minutes <= waits || recipe.target.isCold
    ? notice('MENU_LATECOMERS', 'note', { dish: dish.id }, values)
    : notice('MENU_LATE_LONGER', 'doubt', { dish: dish.id }, values);
}

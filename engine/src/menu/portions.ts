// How many portions of a dish: mouths by appetite, the share that takes it, who can't eat it.
// Sources: data/portions.json; most of it is common practice without a source, and says so.

import table from '../../data/portions.json' with { type: 'json' };
import type { Appetite, Camp, MouthGroup } from '../camp/camp.ts';
import { type Notice, notice } from '../notice/notice.ts';
import { ratio } from '../quantity/unit.ts';
import type { DishPortions } from './load.ts';
import type { MenuDish } from './menu.ts';
import { type Unfit, unfitFor } from './needs.ts';
import { writtenPortions } from './pieces.ts';
import type { Recipe } from './recipe.ts';

/**
 * Eaters, ordinary portions and the factor on the recipe.
 *
 * Where the cook says the portions, they are kept as they are: no appetite, no reserve. Else each
 * mouth counts by appetite, those who can't eat the dish are left out, and from twelve eaters on
 * a reserve is added.
 *
 * @notice MENU_CANNOT_EAT — someone is not counted
 * @notice MENU_RESERVE — some portions are held back
 * @notice MENU_FOOD_SHORT — the portions that the cook said feed clearly fewer than eat it
 * @source hardWorkRations, appetiteCommon (grade B and D)
 */
export function portionsFor(dish: MenuDish, recipe: Recipe, camp: Camp): DishPortions {
  const unfit = unfitFor(recipe, camp);
  const share = dish.share ?? 1;
  const mouths = mouthsIn(camp.mouths);
  const fit = Math.max(0, mouths - unfit.length);
  const eaters = Math.round(fit * share);
  const hunger = fit * meanAppetite(camp.mouths) * share;
  const wanted = dish.portions ?? hunger;
  const reserve = dish.portions === undefined ? Math.ceil(wanted * reserveFrom(eaters)) : 0;
  const portions = roundPortions(wanted + reserve, dish);
  return {
    dish: dish.id,
    eaters,
    portions: finiteOr0(portions),
    reserve: finiteOr0(reserve),
    factor: ratio(finiteOr0(portions / writtenPortions(recipe, dish))),
    notices: [
      ...unfit.map((who) => cannotEat(dish, who)),
      ...(0 < reserve ? [reserveNotice(dish, reserve)] : []),
      ...shortNotices(dish, { wanted: hunger, eaters }),
    ],
  };
}

const finiteOr0 = (factor: number) => (Number.isFinite(factor) ? Math.max(0, factor) : 0);

/** Whole portions, upwards: nobody gets two thirds of a roll. The cook's own number is kept. */
const roundPortions = (portions: number, dish: MenuDish) =>
  dish.portions === undefined ? Math.ceil(portions - 1e-9) : portions;

export const mouthsIn = (groups: readonly MouthGroup[]) =>
  groups.reduce((sum, group) => sum + group.count, 0);

/** Ordinary portions that one mouth of this appetite eats. */
export function appetiteFactor(appetite: Appetite): number {
  const row = table.appetites.find((each) => each.appetite === appetite);
  if (row === undefined) throw new RangeError(`no appetite ${appetite}`);
  return row.factor;
}

// Needs name people, not groups, so who is left out counts as a mean eater.
function meanAppetite(groups: readonly MouthGroup[]): number {
  const mouths = mouthsIn(groups);
  if (mouths === 0) return 0;
  return groups.reduce((sum, each) => sum + each.count * appetiteFactor(each.appetite), 0) / mouths;
}

const reserveFrom = (eaters: number) =>
  table.reserves.reduce((reserve, row) => (row.fromMouths <= eaters ? row.reserve : reserve), 0);

/** Ordinary mouths that so many portions feed, their reserve counted; at least one. */
export function mouthsFedBy(portions: number): number {
  let mouths = Math.max(1, Math.round(portions));
  while (1 < mouths && portions < mouths + Math.ceil(mouths * reserveFrom(mouths))) mouths -= 1;
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

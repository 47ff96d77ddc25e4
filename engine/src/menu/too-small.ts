// When nothing holds a batch: what would, and how much less would go in.

import ovenTable from '../../data/ovens.json' with { type: 'json' };
import type { CampOven } from '../camp/camp.ts';
import { type Refusal, refusal } from '../notice/notice.ts';
import { fromUnit } from '../quantity/convert.ts';
import { fitsIn, layIn } from './lay.ts';
import { type Lot, partOfLot } from './lots.ts';
import { nominalOven } from './nominal-oven.ts';

/** A refusal that names the biggest batch that fits and the smallest oven that would do. */
export function tooSmall(lot: Lot, ovens: readonly CampOven[], { pin }: { pin?: string }): Refusal {
  const about = { dish: lot.dish.id, recipe: lot.recipe.id };
  const conflicts = [`menu.${lot.dish.id}`, 'ovens'];
  if (pin !== undefined) {
    return refusal('MENU_PIN_UNKNOWN', [`menu.${lot.dish.id}.pins.oven`, 'ovens'], about, { pin });
  }
  if (ovens.length === 0) return refusal('MENU_NO_OVEN', conflicts, about);
  const biggest = Math.max(...ovens.map((oven) => biggestMass(lot, oven)));
  const enough = smallestOvenFor(lot);
  return refusal('MENU_OVEN_TOO_SMALL', conflicts, about, {
    massGrams: lot.mass,
    biggestGrams: Math.floor(biggest),
    ...(enough === undefined ? {} : { diameterMetres: enough.diameter, style: enough.style }),
  });
}

/** The largest part of the lot that this oven holds; bisection on the part, 40 halvings. */
export function biggestMass(lot: Lot, oven: CampOven): number {
  if (1 < lot.count) return biggestCount(lot, oven) * (lot.mass / lot.count);
  let [fits, tooMuch] = [0, 1];
  for (let halving = 0; halving < 40; halving++) {
    const part = (fits + tooMuch) / 2;
    if (fitsIn(layIn(oven, partOfLot(lot, part)))) fits = part;
    else tooMuch = part;
  }
  return lot.mass * fits;
}

function biggestCount(lot: Lot, oven: CampOven): number {
  for (let count = Math.min(lot.count, 100); 0 < count; count--) {
    if (fitsIn(layIn(oven, partOfLot(lot, count / lot.count, count)))) return count;
  }
  return 0;
}

function smallestOvenFor(lot: Lot): CampOven | undefined {
  return ovenTable.rows
    .map((row) => nominalOven(fromUnit(row.diameterInches, 'inch'), styleOf(row.style)))
    .filter((oven) => fitsIn(layIn(oven, lot)))
    .sort((a, b) => a.capacity - b.capacity)[0];
}

const styleOf = (style: string) => (style === 'deep' ? 'deep' : 'regular');

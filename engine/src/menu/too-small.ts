// When nothing holds a batch: what would, and how much less would go in.

import ovenTable from '../../data/ovens.json' with { type: 'json' };
import type { CampOven } from '../camp/camp.ts';
import { type Refusal, refusal } from '../notice/notice.ts';
import { fromUnit } from '../quantity/convert.ts';
import { type Metres, metres } from '../quantity/unit.ts';
import { discArea, floorOf, riseOf } from './geometry.ts';
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
  // A batter is as thick as its batch makes it: there the batch is too large, not the thickness.
  const thick = lot.lie === 'disc' ? undefined : tooThick(lot, ovens);
  if (thick !== undefined) return thick;
  const biggest = Math.max(...ovens.map((oven) => biggestMass(lot, oven)));
  const enough = smallestOvenThat((oven) => fitsIn(layIn(oven, lot)));
  return refusal('MENU_OVEN_TOO_SMALL', conflicts, about, {
    massGrams: lot.mass,
    biggestGrams: Math.floor(biggest),
    ...suggested(enough),
  });
}

const suggested = (oven: CampOven | undefined) =>
  oven === undefined ? {} : { diameterMetres: oven.diameter, style: oven.style };

/**
 * Where the cook has fixed a thickness at which not even a mouthful fits under any lid: how thick
 * it may be at most. Undefined where the thickness is not what is in the way.
 */
export function tooThick(lot: Lot, ovens: readonly CampOven[]): Refusal | undefined {
  const { thickness } = lot.recipe.target;
  if (thickness === undefined || !isThicknessKept(lot)) return undefined;
  const most = Math.max(...ovens.map((oven) => mostThickness(lot, oven)));
  if (thickness <= most) return undefined;
  const enough = smallestOvenThat((oven) => fitsAt(lot, oven, thickness));
  return refusal(
    'MENU_TOO_THICK',
    [`recipes.${lot.recipe.id}.target.thickness`, 'ovens'],
    { dish: lot.dish.id, recipe: lot.recipe.id },
    {
      thicknessMetres: thickness,
      mostMetres: most,
      ...suggested(enough),
    },
  );
}

const THICKEST_METRES = 0.5;
const MOUTHFUL = 0.001;

/** Does it lie as thick as the cook says? A pot and rolls of yeast dough take their own shape. */
export const isThicknessKept = ({ lie, count, recipe }: Lot): boolean =>
  lie === 'disc' ||
  (lie === 'round' && count === 1) ||
  (lie !== 'pot' && recipe.kind !== 'yeast-bread');

/** Bisection, 40 halvings. */
function mostThickness(lot: Lot, oven: CampOven): number {
  let [fits, tooMuch] = [0, THICKEST_METRES];
  for (let halving = 0; halving < 40; halving++) {
    const middle = (fits + tooMuch) / 2;
    if (fitsAt(lot, oven, metres(middle))) fits = middle;
    else tooMuch = middle;
  }
  return fits;
}

const fitsAt = (lot: Lot, oven: CampOven, thickness: Metres): boolean =>
  fitsIn(layIn(oven, ofThickness(lot, oven, thickness)));

/** A floor of batter, or a mouthful of a dough, so that only its thickness can be in the way. */
function ofThickness(lot: Lot, oven: CampOven, thickness: Metres): Lot {
  const { recipe } = lot;
  const floorful = discArea(floorOf(oven)) * thickness * riseOf(recipe.kind).gramsPerCubicMetre;
  const part = lot.lie === 'disc' ? floorful / lot.mass : MOUTHFUL / lot.count;
  const thick = { ...recipe, target: { ...recipe.target, thickness } };
  return { ...partOfLot(lot, part, 1), recipe: thick };
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

/** Only sizes that a source vouches for: nobody is sent to look for an oven from memory. */
function smallestOvenThat(holds: (oven: CampOven) => boolean): CampOven | undefined {
  return ovenTable.rows
    .filter((row) => row.grade !== 'D')
    .map((row) => nominalOven(fromUnit(row.diameterInches, 'inch'), styleOf(row.style)))
    .filter(holds)
    .sort((a, b) => a.capacity - b.capacity)[0];
}

const styleOf = (style: string) => (style === 'deep' ? 'deep' : 'regular');

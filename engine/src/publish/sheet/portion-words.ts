// One portion in words: grams, pieces or cups, and the ladle, scoop or knife that gives it.

import type { DishPlan } from '../../meal.ts';
import { volumeOf } from '../../menu/geometry.ts';
import {
  inCups,
  portionVolume,
  type ServedWith,
  servedWith,
} from '../../menu/mouths/serving-tools.ts';
import { dishPieces } from '../../menu/pieces.ts';
import type { Piece } from '../../menu/recipe.ts';
import { inUnit } from '../../quantity/convert.ts';
import { type CubicMetres, grams } from '../../quantity/unit.ts';
import type { Say } from '../say.ts';
import { decimal, fraction } from '../speak-number.ts';
import { listed } from './phrases.ts';

const POTS: ReadonlySet<string> = new Set([
  'stew',
  'braise',
  'beans',
  'fruit',
  'cold-dish',
  'cobbler',
]);

/** In the dish as it goes in; what boils away is not taken off. */
const gramsEach = ({ formula, portions }: DishPlan) =>
  portions.portions > 0 ? formula.batch / portions.portions : 0;

const volumeEach = ({ formula, portions, recipe }: DishPlan) =>
  portionVolume(volumeOf(formula.batch, recipe.kind), portions.portions);

/** `12 oz (1 1/4 cups)`, `2 1/2 oz`. */
export function portionWord(dish: DishPlan, say: Say): string {
  const mass = say.mass(grams(gramsEach(dish)));
  if (!POTS.has(dish.recipe.kind)) return mass;
  const volume = volumeEach(dish);
  return `${mass} (${say.measures === 'us' ? cupsWord(inCups(volume)) : say.volume(volume)})`;
}

function cupsWord(cups: number): string {
  const amount = fraction(cups, 4);
  return `${amount} ${cups > 1 && amount !== '1' ? 'cups' : 'cup'}`;
}

/** `one level ladle of 8 fl oz`, `2 rolls each`, `each round in 12`. */
export function servedWord(dish: DishPlan, say: Say): string {
  const { recipe, portions } = dish;
  if (POTS.has(recipe.kind)) return toolWord(dish, say);
  if (recipe.kind === 'roast') return 'slices by weight';
  const pieces = dishPieces(recipe, dish.dish);
  if (pieces.length === 0) return `cut in ${Math.max(1, Math.round(portions.portions))}`;
  return listed(pieces.map(pieceWord));
}

/** Less than a whole one is more than one of them each. */
function pieceWord({ shape, portionsEach }: Piece): string {
  if (1.5 <= portionsEach) return `each ${shape} in ${Math.round(portionsEach)}`;
  const each = Math.max(1, Math.round(1 / portionsEach));
  return `${each} ${each === 1 ? shape : PLURAL[shape]} each`;
}

const PLURAL = { roll: 'rolls', round: 'rounds', biscuit: 'biscuits', loaf: 'loaves' } as const;

/** Thick food by the scoop, what runs by the ladle. */
function toolWord(dish: DishPlan, say: Say): string {
  const isThick = dish.recipe.kind !== 'stew' && dish.recipe.kind !== 'braise';
  const volume = volumeEach(dish);
  const tools = isThick ? (['scoop', 'ladle'] as const) : (['ladle'] as const);
  const found = tools.map((tool) => servedWith(volume, tool)).find((each) => each !== undefined);
  return found === undefined ? '' : fillsWord(found, say);
}

function fillsWord({ tool, size, times, holds }: ServedWith, say: Say): string {
  const name = tool === 'scoop' ? `scoop no. ${size}` : `ladle of ${ladleSize(size, holds, say)}`;
  return `${times === 1 ? 'one' : times} level ${name}${tool === 'scoop' ? ` (${holdsWord(holds, say)})` : ''}`;
}

const ladleSize = (ounces: number, holds: number, say: Say) =>
  say.measures === 'us' ? `${ounces} fl oz` : say.volume(holds);

/** A quarter of a cup is too coarse for a scoop. */
const holdsWord = (holds: CubicMetres, say: Say) =>
  say.measures === 'us'
    ? `${decimal(inUnit(holds, 'us-fluid-ounce'), 1)} fl oz`
    : say.volume(holds);

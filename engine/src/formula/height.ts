// Leavening at a height: the same gas needs more room in thinner air.
// One law, 1 − P/P0, meets the extension tables for cakes within their own rounding and the wheat
// committee's "half a teaspoon less yeast in a tablespoon" (a sixth, 16.8 % at 5,000 ft).

import { pressureAtElevation } from '../camp/air.ts';
import type { Ingredient } from '../menu/recipe.ts';
import { type Grams, grams, type Metres, metres, type Ratio, ratio } from '../quantity/unit.ts';
import type { WeighedIngredient } from './dough.ts';
import type { FormulaChange } from './formula.ts';

const SEA_LEVEL_PASCALS = 101325; // ISO 2533:1975
/** Below 3,000 ft extension services change nothing (uwAltitude). */
export const NO_CUT_BELOW_METRES = 914;
/** Published adjustments end at 10,000 ft (purdyAltitude). */
export const HIGHEST_PUBLISHED_METRES = 3048;

/**
 * Part of the leavening that is left out for equal gas volume; 0 where the air is no thinner than it
 * is 3,000 ft above the place that the recipe was written for, less than 0 for a recipe from far
 * above, whose leavening was cut there.
 *
 * @param elevation  height above sea level            [m]   … 3048 published, law holds above
 * @param writtenAt  height that the recipe was written for; the sea where it does not say   [m]
 * @source           ussa1976 (grade A) with equal gas volume (derived)
 * @example          1524 m → 0.168; 1524 m, written at 1500 m → 0
 */
export function leaveningCutAt(elevation: Metres, writtenAt: Metres = SEA_LEVEL): Ratio {
  const thinner = pressureRatioAt(elevation) / pressureRatioAt(writtenAt);
  const isNear = NO_CUT_ABOVE_RATIO < thinner && thinner < 1 / NO_CUT_ABOVE_RATIO;
  return ratio(isNear ? 0 : 1 - thinner);
}

/** Air pressure here over that at sea level; never above 1, so that a dry sea bed adds nothing. */
export const pressureRatioAt = (elevation: Metres): number =>
  Math.min(1, pressureAtElevation(elevation) / SEA_LEVEL_PASCALS);

const SEA_LEVEL = metres(0);
/** The published 3,000 ft as a share of the air, so that it holds between any two heights. */
const NO_CUT_ABOVE_RATIO = pressureRatioAt(metres(NO_CUT_BELOW_METRES));

/** Does the writer say that this amount is already cut for height? */
export const isTrimmed = (ingredient: Ingredient) =>
  /\b(trimmed|cut|reduced|adjusted)\b.*\b(height|altitude)\b|about a quarter less/i.test(
    ingredient.note ?? '',
  );

export const isLeavening = (ingredient: Ingredient) =>
  ingredient.part === 'powder' || ingredient.part === 'soda' || ingredient.part === 'yeast';

/**
 * Soda of a gas less by this share. Soda past the acid gives half its gas by heat alone and tastes of
 * soap, so it goes first: where the acid limits the gas, cutting by the share alone would keep more
 * than that share of it.
 *
 * @source sodaChemistry (grade A)
 * @example 10 g with acid for 4 g, a tenth less gas → 8.6 g
 */
function sodaForGas(soda: Grams, cut: number, acidRoom: number): Grams {
  const met = Math.min(soda, acidRoom);
  const wanted = (met + (soda - met) / 2) * (1 - cut);
  return grams(wanted <= acidRoom ? wanted : acidRoom + 2 * (wanted - acidRoom));
}

/**
 * The line as it is to be weighed here, and the change if there is one.
 *
 * @param acidRoom  soda that the acid of the bowl leaves to this line   [g]
 */
export function cutForHeight(
  line: WeighedIngredient,
  elevation: Metres,
  writtenAt?: Metres,
  acidRoom = Number.POSITIVE_INFINITY,
): { readonly line: WeighedIngredient; readonly change?: FormulaChange } {
  const cut = leaveningCutAt(elevation, writtenAt);
  if (cut === 0 || !isLeavening(line.ingredient) || isTrimmed(line.ingredient)) return { line };
  const isSoda = line.ingredient.part === 'soda';
  const now = isSoda ? sodaForGas(line.grams, cut, acidRoom) : grams(line.grams * (1 - cut));
  const source = line.ingredient.part === 'yeast' ? 'coloradoWheat' : 'uwAltitude';
  const { name } = line.ingredient;
  return {
    line: { ...line, grams: now },
    change: { ingredient: name, was: line.grams, now, reason: 'height', source },
  };
}

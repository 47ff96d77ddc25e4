// The limits of one dish, and the cautions that stand on its card.

import type { Camp } from '../camp/camp.ts';
import type { Formula } from '../formula/formula.ts';
import type { FoodPart } from '../larder/food.ts';
import type { MenuDish } from '../menu/menu.ts';
import type { Recipe } from '../menu/recipe.ts';
import { type Kelvin, kelvin, type Minutes, minutes } from '../quantity/unit.ts';
import type { DishSafety } from './care.ts';
import { dishCautions } from './dish-cautions.ts';
import { foodLimits, outLimitIn } from './food-limits.ts';
import { FULL_BOIL, needsFullBoil } from './full-boil.ts';
import { freeFromOf } from './kept-apart.ts';
import { safeCoreFor } from './safe-core.ts';

/** Stricter of two authorities, whatever the event (foodsafety-chart, food-code-3-501). */
const { hotHold: HOT_HOLD, coldHold: COLD_HOLD } = foodLimits('home');

export { COLD_HOLD, HOT_HOLD };

/**
 * Least core, holds, the time it may stand out, and what must be minded.
 *
 * @source foodsafety-chart, food-code-3-401, fsis-two-hours, fda-bad-bug-book
 */
export function dishSafety(asked: {
  readonly dish: MenuDish;
  readonly recipe: Recipe;
  readonly formula: Formula;
  readonly camp: Camp;
}): DishSafety {
  const { dish, recipe, formula, camp } = asked;
  const least = safeCoreFor(recipe, formula);
  return {
    dish: dish.id,
    ...(least === undefined ? {} : { least }),
    hotHold: HOT_HOLD,
    coldHold: COLD_HOLD,
    ...(isPlainBread(recipe, formula) ? { isKeptDry: true } : {}),
    outLimit: outLimitFor(asked),
    ...(needsFullBoil(formula) ? { fullBoil: FULL_BOIL } : {}),
    freeFrom: freeFromOf({ dish, recipe, camp }),
    cautions: dishCautions({ ...asked, least }),
  };
}

const BREADS = ['yeast-bread', 'quick-bread', 'biscuit', 'corn-bread'];
/** A bread with these in it is perishable. */
const FILLINGS: readonly FoodPart[] = ['meat', 'poultry', 'cheese', 'bean', 'vegetable'];
const isPlainBread = (recipe: Recipe, formula: Formula): boolean =>
  BREADS.includes(recipe.kind) &&
  !formula.lines.some((line) => FILLINGS.includes(line.ingredient.part));

/**
 * Two hours out of hot and cold, one hour above 90 F (fsis-two-hours). Plain baked bread is dry
 * enough to stand a day: common practice, no source.
 */
function outLimitFor(asked: {
  readonly dish: MenuDish;
  readonly recipe: Recipe;
  readonly formula: Formula;
  readonly camp: Camp;
}): Minutes {
  const { dish, recipe, formula, camp } = asked;
  if (isPlainBread(recipe, formula)) return minutes(24 * 60);
  return outLimitIn(warmestNear(camp, dish.serveAt));
}

/** Warmest air of the forecast from three hours before serving to two after. */
function warmestNear(camp: Camp, serveAt: number): Kelvin {
  const near = camp.weather.filter((hour) => serveAt - 180 <= hour.at && hour.at <= serveAt + 120);
  const asked = near.length > 0 ? near : camp.weather;
  return kelvin(Math.max(...asked.map((hour) => hour.air)));
}

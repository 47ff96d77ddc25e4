// The conductor of this stage: a recipe as a formula for one batch, at one place.

import { householdMeasure } from '../larder/measure.ts';
import type { MenuDish } from '../menu/menu.ts';
import { foodOf } from '../menu/needs.ts';
import { shareOfRecipe } from '../menu/pieces.ts';
import type { Recipe, StepKind } from '../menu/recipe.ts';
import { grams, type Kelvin, type Metres } from '../quantity/unit.ts';
import { flourIn, handlingFor, isDough, percentagesOf, type WeighedIngredient } from './dough.ts';
import type { Formula, FormulaLine } from './formula.ts';
import { formulaNotices } from './formula-notices.ts';
import { cutForHeight, leaveningCutAt } from './height.ts';
import { isDryAcid, withAcidMet } from './height-acid.ts';
import { sodaTakenByGram } from './leaven/gas-report.ts';
import { doughTemperature, riseFor } from './rise.ts';

export interface FormulaWish {
  readonly dish: MenuDish;
  readonly recipe: Recipe;
  /** Recipe amounts times this. */
  readonly factor: number;
  readonly elevation: Metres;
  readonly air: Kelvin;
}

/**
 * The batch of one dish in grams and household measures, with baker's percentages.
 *
 * Scaling multiplies every line alike, so percentages do not depend on it; only height changes
 * lines one by one, and then the old amount stands beside the new.
 *
 * @notice FORMULA_* — see codes.ts
 * @source bakersPercent (grade B); height by height.ts; rise by rise.ts
 */
export function formulaFor(wish: FormulaWish): Formula {
  const { dish, recipe, elevation } = wish;
  const scaled = scaledLines(wish);
  const cuts = withAcidMet(
    scaled,
    scaled.map((line) =>
      cutForHeight(line, elevation, recipe.writtenAt, acidRoomFor(line, scaled, wish)),
    ),
  );
  const lines = cuts.map((cut) => cut.line);
  const flour = flourIn(lines);
  const percentages = percentagesOf(lines);
  const { dough, shaped } = doughTemperaturesOf(wish);
  const rise =
    recipe.kind === 'yeast-bread' ? riseFor(lines, { dough, shaped, elevation }) : undefined;
  return {
    dish: dish.id,
    recipe: recipe.id,
    lines: lines.map((line) => formulaLine(line, flour)),
    flour,
    batch: grams(lines.reduce((sum, line) => sum + line.grams, 0)),
    ...(percentages === undefined
      ? {}
      : { percentages, handling: handlingFor(percentages.hydration) }),
    changes: cuts.flatMap((cut) => (cut.change === undefined ? [] : [cut.change])),
    ...(rise === undefined ? {} : { rise }),
    notices: formulaNotices(wish, { lines, percentages, dough }),
  };
}

/** Before and after shaping: as warm as the recipe keeps it, or as the air allows. */
function doughTemperaturesOf({ recipe, air }: FormulaWish) {
  const keptAt = (kind: StepKind) =>
    recipe.steps.find((step) => step.kind === kind && step.keptAt !== undefined)?.keptAt;
  const dough = doughTemperature(air, keptAt('rise'));
  return { dough, shaped: doughTemperature(air, keptAt('second-rise')) };
}

/** Every line of the recipe times the factor and the dish's share of the dough; nothing else. */
export function scaledLines(wish: Pick<FormulaWish, 'dish' | 'recipe' | 'factor'>) {
  const times = wish.factor * shareOfRecipe(wish.recipe, wish.dish);
  return wish.recipe.ingredients.map(
    (ingredient): WeighedIngredient => ({ ingredient, grams: grams(ingredient.grams * times) }),
  );
}

/** Soda that the acid of the bowl takes up, shared out where there are two lines of soda. */
function acidRoomFor(
  line: WeighedIngredient,
  all: readonly WeighedIngredient[],
  { elevation, recipe }: FormulaWish,
): number {
  const isRaised = leaveningCutAt(elevation, recipe.writtenAt) < 0;
  if (isRaised && all.some(isDryAcid)) return Number.POSITIVE_INFINITY; // the acid is raised with it
  const room = all.reduce((sum, each) => sum + each.grams * sodaTakenByGram(each.ingredient), 0);
  const soda = all
    .filter(({ ingredient }) => ingredient.part === 'soda')
    .reduce((sum, each) => sum + each.grams, 0);
  return 0 < soda ? (room * line.grams) / soda : 0;
}

function formulaLine(line: WeighedIngredient, flour: number): FormulaLine {
  const food = foodOf(line.ingredient);
  const measure =
    food === undefined || line.ingredient.isUnweighed
      ? undefined
      : householdMeasure(food, line.grams, line.ingredient.asWritten);
  const isCounted = 0 < flour && isDough(line.ingredient) && !line.ingredient.isUnweighed;
  return {
    ingredient: line.ingredient,
    grams: line.grams,
    ...(measure === undefined ? {} : { measure }),
    ...(isCounted ? { bakersPercent: (100 * line.grams) / flour } : {}),
  };
}

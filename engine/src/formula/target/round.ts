// From exact grams to what a cook can weigh or spoon, and what the rounding costs.
// Source: none; a kitchen scale shows grams, cups and spoons as in quantity/cook-measure.ts.

import { householdMeasure } from '../../larder/measure.ts';
import { foodOf } from '../../menu/needs.ts';
import type { CookMeasure } from '../../quantity/cook-measure.ts';
import { type Grams, grams } from '../../quantity/unit.ts';
import {
  type DoughCharacter,
  type FigureName,
  figureNames,
  figureShare,
} from '../bench/character.ts';
import { withGrams } from '../bench/line.ts';
import { flourIn, type WeighedIngredient } from '../dough.ts';

export interface RoundedFormula {
  readonly lines: readonly RoundedLine[];
  readonly weighed: RoundingCost;
  readonly spooned: RoundingCost;
}

export interface RoundedLine {
  readonly line: WeighedIngredient;
  /** To the gram; to half a gram below ten. */
  readonly weighed: Grams;
  /** Undefined where this food has no measure: it is weighed there too. */
  readonly measure?: CookMeasure;
  readonly spooned: Grams;
}

/** What rounding changed: the batch, and the figures as shares of flour. */
export interface RoundingCost {
  readonly batch: number;
  readonly figures: Readonly<Record<FigureName, number>>;
}

export function roundedFormula(
  lines: readonly WeighedIngredient[],
  exact: DoughCharacter,
): RoundedFormula {
  const rounded = lines.map(roundedLine);
  const cost = (of: 'weighed' | 'spooned') =>
    costOf(
      rounded.map((each) => withGrams(each.line, each[of])),
      exact,
    );
  return { lines: rounded, weighed: cost('weighed'), spooned: cost('spooned') };
}

function roundedLine(line: WeighedIngredient): RoundedLine {
  const food = foodOf(line.ingredient);
  const measure =
    food === undefined ? undefined : householdMeasure(food, line.grams, line.ingredient.asWritten);
  const weighed = grams(scaleReading(line.grams));
  if (food === undefined || measure === undefined) return { line, weighed, spooned: weighed };
  const { cup, tbsp, tsp, each } = food.measures;
  const one = { cup, tbsp, tsp, each }[measure.measure] ?? 0;
  const spooned = measure.amount * one + (measure.plusTablespoons ?? 0) * (tbsp ?? 0);
  return { line, weighed, measure, spooned: grams(spooned) };
}

const scaleReading = (mass: number) => (mass < 10 ? Math.round(mass * 2) / 2 : Math.round(mass));

function costOf(lines: readonly WeighedIngredient[], exact: DoughCharacter): RoundingCost {
  const flour = flourIn(lines);
  const shareNow = (figure: FigureName) =>
    lines.reduce((sum, line) => sum + figureShare(line, figure) * line.grams, 0) / flour;
  const names = figureNames.map((name): [FigureName, number] => [
    name,
    0 < flour ? shareNow(name) - exact.figures[name].share : 0,
  ]);
  const batch = lines.reduce((sum, line) => sum + line.grams, 0);
  return {
    batch: batch - exact.batch,
    figures: Object.fromEntries(names) as RoundingCost['figures'],
  };
}

// What a portion holds of a dish that is no dough: a stew, beans, baked apples. Without flour there
// is nothing to count percentages against, so weights, water, fat and salt are told a portion.
// Sources: sr28 by the larder. Weakness: as it goes in; what boils off or is poured off is not known.

import { foodOf } from '../../menu/needs.ts';
import type { Ingredient, Recipe, RecipeKind } from '../../menu/recipe.ts';
import { type Refusal, refusal } from '../../notice/notice.ts';
import { type Grams, grams } from '../../quantity/unit.ts';
import { isFlour, type WeighedIngredient } from '../dough.ts';
import { doughTrouble } from '../dough-trouble.ts';

/** A dish on the bench that is no dough. */
export interface DishWithoutDough {
  readonly lines: readonly WeighedIngredient[];
  readonly figures: PortionFigures;
  /** It has some flour, to thicken: too little of it for a batter. */
  readonly isThickened: boolean;
  /** For whoever wishes for shares of flour, or swaps that keep them. */
  readonly refusal: Refusal;
}

export interface PortionFigures {
  readonly portions: number;
  /** Of the whole dish, as it goes in. */
  readonly whole: Grams;
  readonly water: Grams;
  readonly fat: Grams;
  readonly salt: Grams;
  /** Names of what no larder knows, or nobody weighed: counted by weight alone, or not at all. */
  readonly uncounted: readonly string[];
}

const NO_DOUGH: ReadonlySet<RecipeKind> = new Set<RecipeKind>([
  'braise',
  'stew',
  'beans',
  'roast',
  'fruit',
  'cold-dish',
]);

/** Undefined for breads, and for whatever has flour enough for a batter. */
export function dishWithoutDough({
  name,
  kind,
  portions,
  ingredients,
}: Pick<Recipe, 'name' | 'kind' | 'portions' | 'ingredients'>): DishWithoutDough | undefined {
  const lines = ingredients.map((ingredient) => ({ ingredient, grams: ingredient.grams }));
  const trouble = NO_DOUGH.has(kind) ? doughTrouble(lines) : undefined;
  if (trouble === undefined || trouble.code === 'FORMULA_AMOUNT_IMPOSSIBLE') return undefined;
  return {
    lines,
    figures: portionFigures(lines, portions),
    isThickened: lines.some((line) => 0 < line.grams && isFlour(line.ingredient)),
    refusal: refusal('FORMULA_NO_DOUGH', ['flour'], { recipe: name }),
  };
}

/**
 * Water, fat and salt of the whole dish; a portion is one of `portions`.
 *
 * Salt is all sodium counted as table salt, as the larder has it.
 *
 * @throws  RangeError — not a number of portions above nothing
 * @source  sr28
 */
export function portionFigures(
  lines: readonly WeighedIngredient[],
  portions: number,
): PortionFigures {
  if (!(0 < portions && Number.isFinite(portions))) throw new RangeError(`${portions} portions`);
  const sum = (of: keyof Content) =>
    grams(
      lines.reduce((all, line) => all + (contentOf(line.ingredient)?.[of] ?? 0) * line.grams, 0),
    );
  return {
    portions,
    whole: grams(lines.reduce((all, line) => all + line.grams, 0)),
    water: sum('water'),
    fat: sum('fat'),
    salt: sum('salt'),
    uncounted: lines
      .filter(({ ingredient }) => isUncounted(ingredient))
      .map(({ ingredient }) => ingredient.name),
  };
}

const isUncounted = (ingredient: Ingredient) =>
  ingredient.isUnweighed === true || contentOf(ingredient) === undefined;

interface Content {
  readonly water: number;
  readonly fat: number;
  readonly salt: number;
}

/** Of one gram; undefined for what no larder knows, unless its part says it all. */
function contentOf(ingredient: Ingredient): Content | undefined {
  const { part } = ingredient;
  if (part === 'water') return { water: 1, fat: 0, salt: 0 };
  const food = foodOf(ingredient);
  if (food !== undefined) return { water: food.water, fat: food.fat, salt: food.salt };
  return part === 'salt' ? { water: 0, fat: 0, salt: 1 } : undefined;
}

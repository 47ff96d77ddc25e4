// Dry mixes weighed at home: one bag a baked dish, the free-from bags first.

import { isBaked } from '../bake/kinds.ts';
import type { Allergen } from '../camp/camp.ts';
import type { FormulaLine } from '../formula/formula.ts';
import {
  type Keeping,
  keepingOf,
  type MeasuredIngredient,
  scoopOf,
  tinFor,
} from '../formula/index.ts';
import type { FoodPart } from '../larder/food.ts';
import { householdMeasure } from '../larder/measure.ts';
import { allergensIn, foodOf } from '../menu/needs.ts';
import type { Ingredient } from '../menu/recipe.ts';
import { fromUnit } from '../quantity/convert.ts';
import { grams } from '../quantity/unit.ts';
import type { DishToProvide } from './dish-to-provide.ts';
import type { Bag, TinForDish } from './provisions.ts';

/** Bags of all baked dishes; those kept free of something first, so that they are weighed first. */
export function bagsFor(dishes: readonly DishToProvide[]): readonly Bag[] {
  const bags = dishes.filter(({ recipe }) => isBaked(recipe)).flatMap(bagsOf);
  return [
    ...bags.filter((bag) => bag.freeFrom.length > 0),
    ...bags.filter((bag) => bag.freeFrom.length === 0),
  ];
}

/** One bag of dough; a cobbler has one for its fruit besides. */
function bagsOf(planned: DishToProvide): readonly Bag[] {
  const { dish, formula, recipe } = planned;
  const dry = formula.lines.filter((line) => goesIntoBag(line) && !isLeavening(line));
  const leavening = formula.lines.filter((line) => goesIntoBag(line) && isLeavening(line));
  const forFruit = recipe.kind === 'cobbler' ? dry.filter(isForFruit) : [];
  const forDough = dry.filter((line) => !forFruit.includes(line));
  const rest = formula.lines.filter((line) => !dry.includes(line) && !leavening.includes(line));
  const restOfFruit = recipe.kind === 'cobbler' ? rest.filter(isFruit) : [];
  return [
    bag(planned, `${dish.id}-dry`, {
      contents: forDough,
      leavening,
      added: rest.filter((line) => !restOfFruit.includes(line)),
    }),
    bag(planned, `${dish.id}-fruit`, { contents: forFruit, leavening: [], added: restOfFruit }),
  ].filter((each) => each.contents.length > 0);
}

const DRY: readonly FoodPart[] = [
  'flour',
  'meal',
  'salt',
  'sugar',
  'powder',
  'soda',
  'yeast',
  'dry-milk',
  'spice',
];

/** Honey and syrup are sugar, and fresh yeast is yeast, but neither goes into a bag of flour. */
export const goesIntoBag = ({ ingredient }: { readonly ingredient: Ingredient }) =>
  !/\b(honey|molasses|treacle|syrup|fresh|vanilla)\b/i.test(ingredient.name) &&
  (DRY.includes(ingredient.part) ||
    /\b(corn ?starch|oats|cream of tartar)\b/i.test(ingredient.name));

const RAISES: readonly FoodPart[] = ['powder', 'soda', 'yeast'];

/** Damp spoils it first, so it travels by itself in a dry tin (leavening-apart). */
const isLeavening = ({ ingredient }: { readonly ingredient: Ingredient }) =>
  RAISES.includes(ingredient.part);

const isForFruit = ({ ingredient }: FormulaLine) =>
  /\((fruit|filling)\)|starch/i.test(ingredient.name) ||
  (ingredient.part === 'spice' && !/topping/i.test(ingredient.name));

const isFruit = ({ ingredient }: FormulaLine) =>
  ingredient.part === 'fruit' || ingredient.part === 'acid';

interface BagLines {
  readonly contents: readonly FormulaLine[];
  readonly leavening: readonly FormulaLine[];
  readonly added: readonly FormulaLine[];
}

function bag(
  { dish, recipe, safety }: DishToProvide,
  id: string,
  { contents, leavening, added }: BagLines,
): Bag {
  return {
    id,
    dish: dish.id,
    contents: contents.map(weighed),
    total: grams(contents.reduce((sum, line) => sum + line.grams, 0)),
    ...(leavening.length === 0 ? {} : { fromTin: leavening.map(weighed) }),
    add: added.map(weighed),
    contains: allergensIn({
      ...recipe,
      contains: [],
      ingredients: [...contents, ...leavening].map((line) => line.ingredient),
    }),
    freeFrom: safety.freeFrom as readonly Allergen[],
    ...keptAndScooped(contents),
  };
}

function keptAndScooped(contents: readonly FormulaLine[]): Pick<Bag, 'keeps' | 'scoop'> {
  const scoop = scoopOf(contents);
  return {
    keeps: withoutPowder(keepingOf(contents.map((line) => line.ingredient))),
    ...(scoop === undefined ? {} : { scoop }),
  };
}

/** The powder travels in the tin: what ends such a bag is damp alone. */
const withoutPowder = (keeps: Keeping): Keeping =>
  /powder/.test(keeps.because) ? { ...keeps, because: 'damp creeps in' } : keeps;

/** One line of one bake, measured anew. */
function inOneOven({ ingredient, grams: all }: FormulaLine, bakes: number): MeasuredIngredient {
  const mass = grams(all / bakes);
  const food = foodOf(ingredient);
  const measure =
    food === undefined ? undefined : householdMeasure(food, mass, ingredient.asWritten);
  return { ingredient, grams: mass, ...(measure === undefined ? {} : { measure }) };
}

/** A tin that goes into a pocket: a quarter of a litre, about a cup. */
const POCKET_TIN = fromUnit(250, 'millilitre');

/** A tin for each bread that powder or soda raises; one bake is what goes into one oven. */
export function tinsFor(dishes: readonly DishToProvide[]): readonly TinForDish[] {
  return dishes
    .filter(({ recipe }) => isBaked(recipe))
    .flatMap(({ dish, formula, loads }) => {
      const bakes = Math.max(1, loads.length);
      const one = formula.lines.map((line) => inOneOven(line, bakes));
      const tin = tinFor(one, POCKET_TIN);
      return tin === undefined ? [] : [{ dish: dish.id, tin }];
    });
}

/** What nobody weighed is named so; a bag can not say how much. */
const weighed = (line: FormulaLine) => ({
  name: line.ingredient.isUnweighed
    ? `${line.ingredient.name}, ${line.ingredient.asWritten}`
    : line.ingredient.name,
  grams: line.grams,
  ...(line.measure === undefined ? {} : { measure: line.measure }),
});

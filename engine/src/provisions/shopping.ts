// The shopping list: lines of all dishes summed by food, shelf by shelf.

import table from '../../data/provisions-yields.json' with { type: 'json' };
import type { Allergen } from '../camp/camp.ts';
import type { FormulaLine } from '../formula/formula.ts';
import { householdMeasure } from '../larder/measure.ts';
import { foodNamed } from '../larder/name.ts';
import { foodOf, labelsToCheck } from '../menu/needs.ts';
import type { Ingredient } from '../menu/recipe.ts';
import { type Grams, grams } from '../quantity/unit.ts';
import type { DishToProvide } from './dish-to-provide.ts';
import type { ShoppingLine } from './provisions.ts';
import { boughtAs, foodKeyOf } from './same-food.ts';
import { SHELVES, shelfOf } from './shelf.ts';

/** One line a food, by shelf, then by name. Water is drawn, not bought. */
export function shoppingFor(dishes: readonly DishToProvide[]): readonly ShoppingLine[] {
  const byFood = new Map<string, Gathered>();
  const keys = rememberedKeys();
  for (const { dish, recipe, formula } of dishes) {
    const labels = labelsToCheck(recipe);
    for (const line of formula.lines) {
      if (line.ingredient.part === 'water' || !isWanted(line)) continue;
      const key = keys.of(line.ingredient);
      const gathered = byFood.get(key) ?? emptyFor(line);
      gathered.grams += line.grams;
      if (line.ingredient.isUnweighed) gathered.unweighed.add(line.ingredient.asWritten);
      gathered.edible += isEdiblePortion(line) ? line.grams : 0;
      gathered.dishes.add(dish.id);
      for (const label of labels) {
        if (label.ingredient === line.ingredient.name) gathered.checkLabel.add(label.allergen);
      }
      byFood.set(key, gathered);
    }
  }
  return [...byFood].map(([key, gathered]) => lineFrom(key, gathered)).sort(byShelfThenName);
}

/** A week's menu names the same foods again and again: each is looked up once. */
function rememberedKeys() {
  const known = new Map<Ingredient, string>();
  const of = (ingredient: Ingredient): string => {
    const found = known.get(ingredient) ?? foodKeyOf(ingredient);
    known.set(ingredient, found);
    return found;
  };
  return { of };
}

/** What nobody weighed still has to be bought. */
const isWanted = ({ grams: mass, ingredient }: FormulaLine) =>
  0 < mass || ingredient.isUnweighed === true;

interface Gathered {
  readonly line: FormulaLine;
  grams: number;
  /** Of these, weighed peeled or cut. */
  edible: number;
  /** Amounts as they are written, where they have no weight. */
  readonly unweighed: Set<string>;
  readonly dishes: Set<string>;
  readonly checkLabel: Set<Allergen>;
}

const emptyFor = (line: FormulaLine): Gathered => ({
  line,
  grams: 0,
  edible: 0,
  unweighed: new Set(),
  dishes: new Set(),
  checkLabel: new Set(),
});

function lineFrom(key: string, gathered: Gathered): ShoppingLine {
  const { line } = gathered;
  const food = foodOf(line.ingredient) ?? foodNamed(line.ingredient.name);
  const mass = grams(gathered.grams);
  const measure = food === undefined ? undefined : householdMeasure(food, mass);
  const bought = asBoughtFrom(gathered, food?.key);
  return {
    name: boughtAs(line.ingredient.name),
    key,
    ...(food === undefined ? {} : { food: food.key }),
    grams: mass,
    ...(bought === undefined ? {} : { asBought: bought }),
    ...(measure === undefined || mass === 0 ? {} : { measure }),
    ...(gathered.unweighed.size === 0 ? {} : { unweighed: [...gathered.unweighed] }),
    ...shelfOf(line.ingredient),
    dishes: [...gathered.dishes],
    checkLabel: [...gathered.checkLabel].sort(),
  };
}

/**
 * What to buy so that this much is left after peeling and trimming; undefined where no yield of it
 * is known.
 *
 * @param food  key in the larder, or the recipe's words where the larder does not know it
 * @source      afrs-a6: as purchased = edible portion x factor
 * @example     3 lb of 'cucumber' -> 3.57 lb
 */
export function asBought(food: string, edible: Grams): Grams | undefined {
  const words: readonly string[] = food.toLowerCase().match(/[a-z-]+/g) ?? [];
  const row = table.rows.find((candidate) => candidate.foods.some((each) => words.includes(each)));
  return row === undefined ? undefined : grams(edible * row.factor);
}

function asBoughtFrom(gathered: Gathered, food: string | undefined): Grams | undefined {
  if (gathered.edible <= 0) return undefined;
  const bought = asBought(food ?? gathered.line.ingredient.name, grams(gathered.edible));
  return bought === undefined ? undefined : grams(bought + gathered.grams - gathered.edible);
}

/** Does the recipe weigh it ready to cook? Its words say so; where they don't, as bought. */
const isEdiblePortion = (line: FormulaLine) =>
  /\b(peeled|pared|cored|trimmed|diced|cubed|sliced|shredded|grated|chopped|juice)\b/i.test(
    line.ingredient.name,
  ) && shelfOf(line.ingredient).shelf !== 'tins';

const byShelfThenName = (one: ShoppingLine, other: ShoppingLine) =>
  SHELVES.indexOf(one.shelf) - SHELVES.indexOf(other.shelf) || compare(one.name, other.name);

/** By code unit, so that the order is the same on every machine. */
const compare = (one: string, other: string) => (one < other ? -1 : one > other ? 1 : 0);

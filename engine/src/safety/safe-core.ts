// How hot must its middle get for health? Stricter of consumer chart and professional code.
// Figures: data/safety-cores.json.

import table from '../../data/safety-cores.json' with { type: 'json' };
import type { Allergen } from '../camp/camp.ts';
import type { Formula, FormulaLine } from '../formula/formula.ts';
import type { FoodPart } from '../larder/food.ts';
import type { Recipe } from '../menu/recipe.ts';
import { fromFahrenheit, minutes } from '../quantity/unit.ts';
import type { SafeCore } from './care.ts';

export type FoodClass =
  | 'ground-meat'
  | 'poultry'
  | 'whole-meat'
  | 'ham'
  | 'egg-dish'
  | 'casserole'
  | 'leftover'
  | 'wild-game'
  | 'shellfish'
  | 'fish';

/** Every class, as the table has them. */
export const foodClasses = table.rows.map(({ id }) => id) as readonly FoodClass[];

/** The row of one class of food. */
export function safeCoreOf(food: FoodClass): SafeCore {
  const row = table.rows.find((candidate) => candidate.id === food);
  if (row === undefined) throw new RangeError(`no safe core for ${food}`);
  return {
    core: fromFahrenheit(row.fahrenheit),
    rest: minutes(row.restMinutes),
    food,
    source: row.chart === null ? 'food-code-3-401' : 'foodsafety-chart',
  };
}

/** Hottest of all that apply; undefined where no meat, egg or re-heating is in it. */
export function safeCoreFor(recipe: Recipe, formula: Formula): SafeCore | undefined {
  const classes = classesOf(recipe, formula);
  if (classes.length === 0) return undefined;
  return classes.map(safeCoreOf).reduce((a, b) => (b.core > a.core ? b : a));
}

/** Classes of food that are in the dish as it is cooked. */
export function classesOf(recipe: Recipe, formula: Formula): readonly FoodClass[] {
  if (recipe.method === 'none') return [];
  const found = new Set<FoodClass>();
  for (const line of formula.lines) {
    const food = classOfLine(line);
    if (food !== undefined) found.add(food);
  }
  const isMixed = recipe.kind === 'stew' || recipe.kind === 'braise' || recipe.kind === 'beans';
  if (isMixed && [...found].some((food) => food !== 'egg-dish')) found.add('casserole');
  if (formula.lines.some((line) => isCookedBefore(line, recipe))) found.add('leftover');
  return [...found];
}

/** Cooked at home, not tinned: a sealed tin is sterile, a bag of beans in a cooler is not. */
function isCookedBefore({ ingredient }: FormulaLine, recipe: Recipe): boolean {
  const { name, part } = ingredient;
  if (/\b(canned|tinned|tin|jar|uncooked)\b/i.test(name)) return false;
  if (/\b(cooked|leftover|left-over)\b/i.test(name)) return true;
  return recipe.target.isCold && PERISHES.includes(part);
}

const PERISHES: readonly FoodPart[] = ['meat', 'poultry', 'egg', 'bean', 'grain', 'vegetable'];

function classOfLine(line: FormulaLine): FoodClass | undefined {
  const { name, part, allergens } = line.ingredient;
  const words = name.toLowerCase();
  if (STOCK.test(words)) return undefined;
  if (part === 'poultry' || /\b(chicken|turkey|duck|goose|quail)\b/.test(words)) return 'poultry';
  if (part === 'egg') return 'egg-dish';
  if (SHELLFISH.test(words) || allergens.some((each) => SHELLS.includes(each))) {
    return part === 'spice' || part === 'liquid' || SAUCE.test(words) ? undefined : 'shellfish';
  }
  if (GAME.test(words) && !SAUCE.test(words) && part !== 'spice') return 'wild-game';
  if (allergens.includes('fish') && part === 'meat') return 'fish';
  if (part !== 'meat') return undefined;
  if (/\bham\b/.test(words)) return 'ham';
  return GROUND.test(words) ? 'ground-meat' : 'whole-meat';
}

const SHELLS: readonly Allergen[] = ['crustacean', 'mollusc'];
const SHELLFISH =
  /\b(shrimps?|prawns?|crabs?|crayfish|crawfish|lobsters?|scallops?|clams?|mussels?|oysters?|squid)\b/;
const SAUCE =
  /\b(sauce|paste|powder|stock|broth|spice|seasoning|dressing|sage|berr(y|ies)|mushrooms?|crackers?|apples?)\b/;
/** Hunted, not farmed; pheasant and the like are poultry besides (food-code-3-401: as poultry). */
const GAME =
  /\b(venison|deer|elk|moose|caribou|reindeer|antelope|bear|boar|wild pig|hare|rabbit|squirrel|raccoon|grouse|pheasant|partridge|wild (duck|goose|turkey)|game meat|wild game)\b/;
const STOCK = /\b(stock|broth|bouillon|gravy|gelatine|lard|dripping)\b/;
const GROUND = /\b(ground|mince|minced|sausages?|burger|patty|patties|meatballs?|tenderi[sz]ed)\b/;

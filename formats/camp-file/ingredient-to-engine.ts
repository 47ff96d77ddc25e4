// One ingredient: its weight, what it does in the dough, and what it can do to someone.

import {
  type Allergen,
  type Amount,
  allergensNamed,
  amountAt,
  anyFoodWithKey,
  type Food,
  findFood,
  foodNamed,
  foodWithKey,
  fromUnit,
  type Grams,
  grams,
  gramsOf,
  type Ingredient,
  isUnread,
  type Notice,
  notice,
  openAllergensOf,
  readAmount,
  sizeOfUnit,
  weighAmount,
} from '#engine';
import { readQuantity, writeQuantity } from './quantity-text.ts';
import { type FileTrouble, type PathStep, trouble } from './trouble.ts';
import type { FileIngredient } from './v1.ts';

interface Where {
  readonly recipe: string;
  readonly path: readonly PathStep[];
  /** The cook's own foods. */
  readonly foods: readonly Food[];
}

interface ReadIngredient {
  readonly ingredient: Ingredient;
  readonly notices: readonly Notice[];
  readonly troubles: readonly FileTrouble[];
}

export function ingredientFromFile(written: FileIngredient, where: Where): ReadIngredient {
  const food = foodFor(written, where.foods);
  const isOwn = food !== undefined && isOfItsOwn(food, where.foods);
  const weighed = weightOf(written, food);
  const isUnweighed = weighed === undefined && written.unweighed === true;
  const about = { recipe: where.recipe, ingredient: written.name };
  const notices = [
    ...(food === undefined && written.contains === undefined
      ? [notice('FILE_FOOD_UNKNOWN', 'doubt', about)]
      : []),
    ...(weighed?.isReckoned
      ? [notice('FILE_WEIGHT_RECKONED', 'doubt', about, { massGrams: weighed.mass })]
      : []),
  ];
  return {
    ingredient: {
      name: written.name,
      grams: weighed?.mass ?? grams(0),
      ...(isUnweighed ? { isUnweighed: true as const } : {}),
      asWritten:
        written.measure ?? (isUnweighed ? 'some' : writeQuantity('mass', weighed?.mass ?? 0)),
      ...(food === undefined ? {} : { food: food.key }),
      ...(isOwn ? { own: food } : {}),
      part: written.part ?? food?.part ?? 'other',
      ...allergensOf(written, food),
      ...(written.note === undefined ? {} : { note: written.note }),
    },
    notices,
    troubles: weighed === undefined && !isUnweighed ? [weightMissing(written, where)] : [],
  };
}

/** Not one that the first door's larder has: it travels with the ingredient. */
const isOfItsOwn = (food: Food, own: readonly Food[]) =>
  own.includes(food) || foodWithKey(food.key) === undefined;

/** The cook's own food, else the larder's by its key, else by its name: the rarer foods as well. */
function foodFor({ food, name }: FileIngredient, own: readonly Food[]): Food | undefined {
  if (food !== undefined) {
    return own.find(({ key }) => key === food) ?? foodWithKey(food) ?? anyFoodWithKey(food);
  }
  const found = findFood(name, { from: 0, to: name.length }, { manner: 'us', own }).food;
  const isRare = found !== undefined && foodWithKey(found.key) === undefined;
  return isRare ? found : (foodNamed(name) ?? found);
}

/**
 * What the cook writes is added to what the larder knows: a file can make a food more dangerous,
 * and clear a doubt by a label that was read, but never talk an allergen away. Of a food that nobody
 * knows every allergen is a doubt, until the file says what it contains.
 */
function allergensOf(written: FileIngredient, food: Food | undefined) {
  const known = allergensNamed(`${written.name} ${written.note ?? ''}`, food);
  const allergens = together(known.allergens, written.contains);
  const cleared = [...allergens, ...(written.labelSaysFree ?? [])];
  const unread =
    food === undefined && written.contains === undefined ? openAllergensOf(written.name) : [];
  return {
    allergens,
    checkLabel: together([...known.checkLabel, ...unread], written.checkLabel).filter(
      (allergen) => !cleared.includes(allergen),
    ),
  };
}

const together = (known: readonly Allergen[], written: readonly Allergen[] = []) => [
  ...new Set([...known, ...written]),
];

interface Weighed {
  readonly mass: Grams;
  /** From a spoon or cup, not from a scale. */
  readonly isReckoned: boolean;
}

function weightOf(written: FileIngredient, food: Food | undefined): Weighed | undefined {
  const scale = readQuantity('mass', written.weight ?? '');
  if (scale !== undefined) return { mass: grams(scale), isReckoned: false };
  const amount = readAmount(written.measure ?? '');
  if (isUnread(amount) || amount.low !== amount.high) return weightAsRead(written, food);
  const mass = massOf(amount, food);
  if (mass === undefined) return weightAsRead(written, food);
  const isCredible = mass !== undefined && LEAST_GRAMS <= mass && mass <= MOST_GRAMS;
  return isCredible ? { mass, isReckoned: sizeOfUnit(amount.unit).kind !== 'mass' } : undefined;
}

/** A range, cans, sticks, "half a cup": the middle of what is meant. */
function weightAsRead({ measure = '' }: FileIngredient, food: Food | undefined) {
  const amount = amountAt(measure, 0, 'us');
  const weighed =
    amount === undefined || measure.slice(amount.span.to).trim() !== ''
      ? undefined
      : weighAmount(amount, food, { manner: 'us' });
  const mass = weighed?.likely;
  const isCredible = mass !== undefined && LEAST_GRAMS <= mass && mass <= MOST_GRAMS;
  return isCredible ? { mass, isReckoned: true } : undefined;
}

// The same bounds as "weight" has in the schema.
const LEAST_GRAMS = 0.01;
const MOST_GRAMS = 2_000_000;
const CUP = fromUnit(1, 'us-cup');

// A spoon of salt is weighed as a spoon: a cup of it packs differently.
const SPOONS = ['cup', 'tbsp', 'tsp', 'each'] as const;

/** Spoons, cups and pieces need the larder; a volume is told as cups of this food. */
function massOf(amount: Amount, food: Food | undefined): Grams | undefined {
  const size = sizeOfUnit(amount.unit);
  if (size.kind === 'mass') return grams(amount.low * size.each);
  if (food === undefined) return undefined;
  const own = SPOONS.find((spoon) => spoon === amount.unit);
  if (own !== undefined) return gramsOf(food, amount.low, own);
  return size.kind === 'count' ? undefined : gramsOf(food, (amount.low * size.each) / CUP, 'cup');
}

function weightMissing(written: FileIngredient, where: Where): FileTrouble {
  return trouble('FILE_WEIGHT_MISSING', [...where.path, 'weight'], {
    found: written.measure,
    wanted: 'a weight such as "450 g"',
  });
}

// Dishes and recipes of a checked camp file in the engine's terms, allergens filled in from the
// larder.

import {
  clockMinutes,
  type DishPins,
  type Food,
  grams,
  kelvin,
  type Menu,
  type MenuDish,
  metres,
  minutes,
  type Notice,
  type Piece,
  type Recipe,
  type RecipeTarget,
  ratio,
  type WriterCoals,
  type WriterSaid,
} from '#engine';
import { readClock } from './clock-text.ts';
import { USUAL } from './defaults.ts';
import { foodsFromFile } from './foods.ts';
import { given } from './given.ts';
import { inOvenFromFile } from './in-oven-text.ts';
import { ingredientFromFile } from './ingredient-to-engine.ts';
import { readQuantity } from './quantity-text.ts';
import { stepsFromFile } from './steps-to-engine.ts';
import type { FileTrouble } from './trouble.ts';
import type { CampFile, FileDish, FileRecipe } from './v1.ts';

export interface ReadMenu {
  readonly menu: Menu;
  readonly notices: readonly Notice[];
  readonly troubles: readonly FileTrouble[];
}

export function menuFromFile(file: CampFile): ReadMenu {
  const own = foodsFromFile(file.foods ?? []);
  const read = file.recipes.map((recipe, index) => recipeFromFile(recipe, index, own.foods));
  const names = new Map(file.recipes.map((recipe) => [recipe.id, recipe.name]));
  return {
    menu: {
      dishes: file.menu.map((dish) => dishFromFile(dish, names.get(dish.recipe))),
      recipes: read.map(({ recipe }) => recipe),
      ...(file.foods === undefined ? {} : { foods: own.labels }),
    },
    notices: [...own.notices, ...read.flatMap(({ notices }) => notices)],
    troubles: [...own.troubles, ...read.flatMap(({ troubles }) => troubles)],
  };
}

function dishFromFile(dish: FileDish, recipeName: string | undefined): MenuDish {
  return {
    id: dish.id,
    name: dish.name ?? recipeName ?? dish.id,
    recipe: dish.recipe,
    serveAt: clockMinutes(readClock(dish.serve)!),
    freeFrom: dish.freeFrom ?? false,
    pins: pinsFromFile(dish.pins ?? {}),
    ...given<Partial<MenuDish>>({
      latestAt: clockOrNot(dish.latest),
      portions: dish.portions,
      share: dish.share === undefined ? undefined : ratio(readQuantity('share', dish.share)!),
      reserve: dish.reserve === undefined ? undefined : ratio(readQuantity('share', dish.reserve)!),
      pieces: dish.pieces,
      mayWait: minutesOrNot(dish.mayWait),
      inOven: inOvenFromFile(dish.inOven),
    }),
  };
}

const clockOrNot = (text: string | undefined) =>
  text === undefined ? undefined : clockMinutes(readClock(text)!);

const minutesOrNot = (text: string | undefined) =>
  text === undefined ? undefined : minutes(readQuantity('duration', text)!);

const pinsFromFile = (pins: NonNullable<FileDish['pins']>): DishPins =>
  given<DishPins>({
    oven: pins.oven,
    coalsAbove: pins.coalsAbove,
    coalsBelow: pins.coalsBelow,
    coalsOnAt: clockOrNot(pins.coalsOn),
    bakeMinutes: minutesOrNot(pins.bake),
    preheat: pins.preheat,
    hand: pins.hand,
  });

interface ReadRecipe {
  readonly recipe: Recipe;
  readonly notices: readonly Notice[];
  readonly troubles: readonly FileTrouble[];
}

function recipeFromFile(recipe: FileRecipe, index: number, foods: readonly Food[]): ReadRecipe {
  const read = recipe.ingredients.map((ingredient, at) =>
    ingredientFromFile(ingredient, {
      recipe: recipe.id,
      path: ['recipes', index, 'ingredients', at],
      foods,
    }),
  );
  return {
    recipe: {
      id: recipe.id,
      name: recipe.name,
      kind: recipe.kind,
      method: recipe.method,
      portions: recipe.portions,
      ingredients: read.map(({ ingredient }) => ingredient),
      steps: stepsFromFile(recipe.steps ?? []),
      target: targetFromFile(recipe),
      division: (recipe.division ?? []).map(pieceFromFile),
      contains: recipe.contains ?? [],
      ...given<Partial<Recipe>>({ inOven: inOvenFromFile(recipe.inOven) }),
      ...(recipe.writtenAt === undefined
        ? {}
        : { writtenAt: metres(readQuantity('length', recipe.writtenAt)!) }),
    },
    notices: read.flatMap(({ notices }) => notices),
    troubles: read.flatMap(({ troubles }) => troubles),
  };
}

function pieceFromFile(piece: NonNullable<FileRecipe['division']>[number]): Piece {
  return {
    shape: piece.shape,
    count: piece.count,
    gramsEach: grams(readQuantity('mass', piece.each)!),
    portionsEach: piece.portionsEach ?? 1,
  };
}

function targetFromFile(recipe: FileRecipe): RecipeTarget {
  const target = recipe.target ?? {};
  const usualWait = recipe.method === 'none' ? USUAL.coldWaitMinutes : USUAL.hotWaitMinutes;
  return {
    canWait: minutesOrNot(target.canWait) ?? minutes(usualWait),
    rest: minutesOrNot(target.rest) ?? minutes(0),
    isCold: target.cookedBefore ?? false,
    ...given<Partial<RecipeTarget>>({
      oven: temperatureOrNot(target.oven),
      core: temperatureOrNot(target.core),
      coldOven: target.coldOven,
      minutesHint: target.took?.map((text) => minutes(readQuantity('duration', text)!)) as
        | RecipeTarget['minutesHint']
        | undefined,
      thickness:
        target.thickness === undefined
          ? undefined
          : metres(readQuantity('length', target.thickness)!),
      writer: target.writer === undefined ? undefined : writerFromFile(target.writer),
    }),
  };
}

type FileWriter = NonNullable<NonNullable<FileRecipe['target']>['writer']>;

function writerFromFile(writer: FileWriter): WriterSaid {
  const { oven, took, coalsAbove, coalsBelow, coals, coalsAboveShare } = writer;
  const laid = given<WriterCoals>({
    above: coalsAbove,
    below: coalsBelow,
    total: coals,
    aboveShare: coalsAboveShare,
  });
  return given<WriterSaid>({
    oven: oven && [temperatureOrNot(oven[0])!, temperatureOrNot(oven[1])!],
    minutes: minutesPair(took),
    firstRise: minutesPair(writer.firstRise),
    secondRise: minutesPair(writer.secondRise),
    core: temperatureOrNot(writer.core),
    coals: Object.keys(laid).length === 0 ? undefined : laid,
  });
}

const minutesPair = (pair: readonly [string, string] | undefined) =>
  pair && ([minutesOrNot(pair[0])!, minutesOrNot(pair[1])!] as const);

const temperatureOrNot = (text: string | undefined) =>
  text === undefined ? undefined : kelvin(readQuantity('temperature', text)!);

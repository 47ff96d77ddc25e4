// Ready recipes of our own, for the cook who has none at hand.

import table from '../../data/ready-recipes.json' with { type: 'json' };
import type { Skill } from '../camp/camp.ts';
import { allergensNamed } from '../larder/allergens.ts';
import type { FoodPart } from '../larder/food.ts';
import { foodWithKey } from '../larder/larder.ts';
import { fromCelsius, grams, metres, minutes } from '../quantity/unit.ts';
import type {
  HeatMethod,
  Ingredient,
  Piece,
  Recipe,
  RecipeKind,
  RecipeStep,
  RecipeTarget,
  StepKind,
} from './recipe.ts';

interface ReadyRecipeRow {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly method: string;
  readonly portions: number;
  readonly ingredients: readonly {
    readonly name: string;
    readonly grams: number;
    readonly asWritten: string;
    readonly food: string;
    readonly part: string;
  }[];
  readonly steps: readonly {
    readonly id: string;
    readonly kind: string;
    readonly say: string;
    readonly minutes: number;
    readonly hands: number;
    readonly skill: string;
    readonly needsTable: boolean;
    readonly after: readonly {
      readonly step: string;
      readonly least: number;
      readonly most?: number;
    }[];
  }[];
  readonly target: {
    readonly ovenCelsius?: number;
    readonly coreCelsius?: number;
    readonly minutesHint: readonly number[];
    readonly canWait: number;
    readonly rest: number;
    readonly thicknessMillimetres?: number;
    readonly isCold: boolean;
  };
  readonly division: readonly {
    readonly shape: string;
    readonly count: number;
    readonly gramsEach: number;
    readonly portionsEach: number;
  }[];
}

/** Ready recipes, bread first. */
export const readyRecipes: readonly Recipe[] = (table.rows as readonly ReadyRecipeRow[]).map(
  readyRecipeFromRow,
);

export const readyRecipeWithId = (id: string): Recipe | undefined =>
  readyRecipes.find((recipe) => recipe.id === id);

function readyRecipeFromRow(row: ReadyRecipeRow): Recipe {
  return {
    id: row.id,
    name: row.name,
    kind: row.kind as RecipeKind,
    method: row.method as HeatMethod,
    portions: row.portions,
    ingredients: row.ingredients.map(ingredientFromRow),
    steps: row.steps.map(stepFromRow),
    target: targetFromRow(row.target),
    division: row.division.map(
      (piece): Piece => ({
        ...piece,
        shape: piece.shape as Piece['shape'],
        gramsEach: grams(piece.gramsEach),
      }),
    ),
    contains: [],
  };
}

function ingredientFromRow(row: ReadyRecipeRow['ingredients'][number]): Ingredient {
  const words = allergensNamed(row.name, foodWithKey(row.food));
  return { ...row, ...words, grams: grams(row.grams), part: row.part as FoodPart };
}

function stepFromRow(row: ReadyRecipeRow['steps'][number]): RecipeStep {
  return {
    ...row,
    kind: row.kind as StepKind,
    minutes: minutes(row.minutes),
    skill: row.skill as Skill,
    after: row.after.map(({ step, least, most }) => ({
      step,
      least: minutes(least),
      ...(most === undefined ? {} : { most: minutes(most) }),
    })),
  };
}

function targetFromRow(row: ReadyRecipeRow['target']): RecipeTarget {
  const { ovenCelsius, coreCelsius, thicknessMillimetres } = row;
  return {
    ...(ovenCelsius === undefined ? {} : { oven: fromCelsius(ovenCelsius) }),
    ...(coreCelsius === undefined ? {} : { core: fromCelsius(coreCelsius) }),
    ...(thicknessMillimetres === undefined
      ? {}
      : { thickness: metres(thicknessMillimetres / 1000) }),
    minutesHint: [minutes(row.minutesHint[0] ?? 0), minutes(row.minutesHint[1] ?? 0)],
    canWait: minutes(row.canWait),
    rest: minutes(row.rest),
    isCold: row.isCold,
  };
}

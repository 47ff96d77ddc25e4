// What does a dish of this kind want where its recipe is silent? Figures: data/bake-kinds.json.

import table from '../../data/bake-kinds.json' with { type: 'json' };
import { richFigures, richnessOf } from '../menu/enriched.ts';
import type { Recipe, RecipeKind } from '../menu/recipe.ts';
import type { DoneSign, DoneTarget } from './bake-plan.ts';

export interface KindFigures {
  readonly kind: RecipeKind;
  readonly ovenCelsius: number;
  readonly coreCelsius: number | null;
  readonly loss: number;
  readonly preheat: boolean;
  readonly simmerMinutes: number | null;
  readonly top: NonNullable<DoneTarget['top']> | null;
  readonly bottom: NonNullable<DoneTarget['bottom']> | null;
  readonly signs: readonly DoneSign[];
}

const rows = table.rows as readonly KindFigures[];

/** The figures of one kind of dish. */
export function figuresOfKind(kind: RecipeKind): KindFigures {
  const row = rows.find((candidate) => candidate.kind === kind);
  if (row === undefined) throw new RangeError(`no figures for a dish of kind ${kind}`);
  return row;
}

/** The same for one dish: a yeast dough's oven and core follow its fat and sugar. */
export function figuresOfDish(recipe: Pick<Recipe, 'kind' | 'ingredients'>): KindFigures {
  const richness = richnessOf(recipe);
  const figures = figuresOfKind(recipe.kind);
  return richness === undefined ? figures : { ...figures, ...richFigures[richness] };
}

const BREADS: readonly RecipeKind[] = ['yeast-bread', 'quick-bread', 'biscuit', 'corn-bread'];

/** A dough that stands by itself. */
export const isBread = (recipe: { readonly kind: RecipeKind }) => BREADS.includes(recipe.kind);

/** Something with flour that is baked: a bag of dry mix is weighed for it at home. */
export const isBaked = (recipe: { readonly kind: RecipeKind }) =>
  isBread(recipe) || recipe.kind === 'cobbler';

/** Wet fruit that lies on the iron: a baked fruit, or the filling under a cobbler's topping. */
export const isWetFruit = (recipe: { readonly kind: RecipeKind }) =>
  recipe.kind === 'fruit' || recipe.kind === 'cobbler';

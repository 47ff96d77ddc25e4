// How rich is a yeast dough? Fat, sugar and egg beside its flour decide how it is baked.
// Sources: bakery-cores and enriched-ovens (grade D: practice), olderServiceCards and armedForcesRecipes for where cards lie.
// Weakness: a class has edges and a dough has none; the two edges are ours, between published ones.

import { foodOf } from './needs.ts';
import type { Ingredient, Recipe } from './recipe.ts';

/** Lean: flour, water, salt, yeast. Soft: some fat and sugar, a sandwich loaf. Rich: a sweet dough. */
export type Richness = 'lean' | 'soft' | 'rich';

/**
 * By fat and sugar together, the sugar of milk and the fat of eggs and milk with them. Published
 * lean breads have up to 3.5 % (field bread, 1941), a service card's white bread 8 %, its hot rolls
 * 26 %; the edges lie between.
 */
const EDGES = { soft: 0.05, rich: 0.18 };

/** Undefined for what yeast does not raise, or has no flour. */
export function richnessOf({
  kind,
  ingredients,
}: Pick<Recipe, 'kind' | 'ingredients'>): Richness | undefined {
  if (kind !== 'yeast-bread') return undefined;
  const flour = ingredients.reduce((sum, each) => sum + (isFlour(each) ? each.grams : 0), 0);
  if (!(0 < flour)) return undefined;
  return richnessFor(ingredients.reduce((sum, each) => sum + richIn(each), 0) / flour);
}

/** The class of a dough with so much fat and sugar beside its flour. */
export function richnessFor(fatAndSugar: number): Richness {
  if (fatAndSugar < EDGES.soft) return 'lean';
  return fatAndSugar < EDGES.rich ? 'soft' : 'rich';
}

const isFlour = ({ part }: Ingredient) => part === 'flour' || part === 'meal';

/** What is stirred into a dough makes it no richer: fruit, nuts, cheese, a filling in brackets. */
const RICH_PARTS: ReadonlySet<string> = new Set(['liquid', 'dry-milk', 'fat', 'sugar', 'egg']);

function richIn(ingredient: Ingredient): number {
  const { part, name, grams } = ingredient;
  if (!RICH_PARTS.has(part) || /\((fruit|filling)\)/i.test(name)) return 0;
  const food = foodOf(ingredient);
  if (food !== undefined) return (food.fat + food.sugar) * grams;
  return part === 'fat' || part === 'sugar' ? grams : 0;
}

interface RichFigures {
  readonly ovenCelsius: number;
  readonly coreCelsius: number;
}

/**
 * Cores: lean 200 to 210 °F, enriched 180 to 195 °F (bakery-cores); of that span the warm end for a
 * soft loaf and 190 °F for a rich one. Ovens: cards bake white bread at 400 to 450 °F; a sweet loaf
 * browns too soon there, and cooks bake it at 350 to 375 °F (enriched-ovens, grade D), the middle.
 */
export const richFigures: Readonly<Record<Richness, RichFigures>> = {
  lean: { ovenCelsius: 204, coreCelsius: 96 },
  soft: { ovenCelsius: 190, coreCelsius: 91 },
  rich: { ovenCelsius: 182, coreCelsius: 88 },
};

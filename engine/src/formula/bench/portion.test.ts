import { describe, expect, it } from 'vitest';
import { madeIngredient, madeRecipe } from '../../../validation/bake/made.ts';
import rows from '../../../validation/larder/sr28-rows.json' with { type: 'json' };
import { foodWithKey } from '../../larder/larder.ts';
import { readyRecipes, readyRecipeWithId } from '../../menu/ready-recipes.ts';
import type { Ingredient } from '../../menu/recipe.ts';
import { characterOf } from './character.ts';
import { dishWithoutDough } from './portion.ts';

/** Straight from the release: water, fat [g in 100 g] and sodium [mg in 100 g]. */
function released(key: string) {
  const { ndb } = foodWithKey(key)!;
  const row = rows.rows.find(([number]) => number === ndb)!;
  return { water: Number(row[4]), fat: Number(row[5]), sodium: Number(row[8]) };
}
const line = (key: string, mass: number): Ingredient =>
  madeIngredient(foodWithKey(key)!.name, mass, { food: key, part: foodWithKey(key)!.part });

describe('a dish without flour', () => {
  const pot = [line('carrot', 300), line('beef-chuck-stew-raw', 900), line('salt', 12)];
  const stew = madeRecipe({ kind: 'stew', portions: 6, ingredients: pot });

  it('tells water, fat and salt of a portion as sr28 NUT_DATA adds up, and its weight', () => {
    const { figures } = dishWithoutDough(stew)!;
    const [carrot, beef] = [released('carrot'), released('beef-chuck-stew-raw')];
    expect(figures.whole / figures.portions).toBeCloseTo(1212 / 6, 9);
    expect(figures.water / 6).toBeCloseTo(
      (3 * carrot.water + 9 * beef.water + 0.12 * released('salt').water) / 6,
      0,
    );
    expect(figures.fat / 6).toBeCloseTo((3 * carrot.fat + 9 * beef.fat) / 6, 1);
    // All sodium as table salt, 38 758 mg in 100 g (sr28 NDB 02047).
    const sodium = 3 * carrot.sodium + 9 * beef.sodium;
    expect(figures.salt).toBeCloseTo(12 + (100 * sodium) / 38758, 1);
    expect(figures.uncounted).toEqual([]);
  });

  it('names what nobody weighed or knows, and counts it for nothing', () => {
    const unknown = madeIngredient('moon dust', 50, { part: 'other' });
    const loose: Ingredient = { ...line('carrot', 0), isUnweighed: true };
    const ingredients = [...pot, unknown, loose];
    const { figures } = dishWithoutDough({ ...stew, ingredients })!;
    expect(figures.uncounted).toEqual(['moon dust', 'carrots']);
    expect(figures.fat).toBeCloseTo(dishWithoutDough(stew)!.figures.fat, 9);
  });

  it('stays one with a spoon of flour to thicken it, and says so', () => {
    const ingredients = [...pot, line('water', 700), line('all-purpose-flour', 60)];
    expect(dishWithoutDough({ ...stew, ingredients })?.isThickened).toBe(true);
    expect(dishWithoutDough(stew)?.isThickened).toBe(false);
  });

  it('is never a bread: among the ready ones a dish is the one or the other', () => {
    for (const recipe of readyRecipes) {
      const lines = recipe.ingredients.map((ingredient) => ({
        ingredient,
        grams: ingredient.grams,
      }));
      const isDough = !('refused' in characterOf(lines));
      expect(dishWithoutDough(recipe) === undefined, recipe.id).toBe(isDough);
    }
    const biscuits = readyRecipeWithId('biscuits')!;
    expect(dishWithoutDough({ ...biscuits, ingredients: [line('water', 10)] })).toBeUndefined();
  });
});

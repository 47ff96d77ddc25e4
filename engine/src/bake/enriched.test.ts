import { describe, expect, it } from 'vitest';
import cases from '../../validation/bake/enriched-done.json' with { type: 'json' };
import { madeAir, madeRecipe } from '../../validation/bake/made.ts';
import { lineOf } from '../formula/bench/line.ts';
import { readRecipeText } from '../menu/read-recipe.ts';
import type { Recipe } from '../menu/recipe.ts';
import { toCelsius } from '../quantity/unit.ts';
import { doneTargetFor } from './done-target.ts';
import { wantedOvenFor } from './heat-wish.ts';

type Row = readonly [string, Readonly<Record<string, number>>, number, number, [number, number]];
const rows = cases.rows as unknown as readonly Row[];

function doughOf(amounts: Row[1]): Recipe {
  const made = madeRecipe();
  const { oven: _, core: __, ...target } = made.target;
  return {
    ...made,
    target,
    ingredients: Object.entries(amounts).map(([key, percent]) => lineOf(key, percent).ingredient),
  };
}

function targetRead(text: string): Recipe['target'] {
  const read = readRecipeText(text);
  if ('refused' in read || read.recipe === undefined) throw new RangeError('no recipe');
  return read.recipe.target;
}

describe('a yeast dough where its recipe names no heat', () => {
  it.each(rows)(
    'is done as bakery-cores say and baked as enriched-ovens and cards do: %s',
    (...row) => {
      const [, amounts, least, most, oven] = row;
      const recipe = doughOf(amounts);
      const air = madeAir();
      const core = toCelsius(doneTargetFor({ recipe, air }).done.core!);
      expect([least <= core, core <= most]).toEqual([true, true]);
      const wanted = toCelsius(wantedOvenFor({ recipe, air }));
      expect([oven[0] <= wanted, wanted <= oven[1]]).toEqual([true, true]);
    },
  );

  it('keeps the heat that its writer names, however rich it is', () => {
    const recipe = doughOf(rows[3]![1]);
    const core = (273.15 + 93) as NonNullable<Recipe['target']['core']>;
    const said = { ...recipe, target: { ...recipe.target, core } };
    expect(doneTargetFor({ recipe: said, air: madeAir() }).done.core).toBe(core);
  });

  it('is read off a pasted text: a braid with eggs, butter and sugar is done at 180 to 195 °F', () => {
    const text =
      'Braid\n500 g bread flour\n200 g whole milk\n3 large eggs, beaten\n75 g unsalted butter\n' +
      '60 g sugar\n9 g salt\n7 g instant yeast';
    const { core: done, oven } = targetRead(text);
    const core = toCelsius(done!);
    expect([82 <= core, core <= 91]).toEqual([true, true]); // bakery-cores
    expect(toCelsius(oven!)).toBeLessThan(191); // enriched-ovens, 375 °F
    const lean = targetRead(text.replace(/3 large.*\n75 g.*\n60 g.*\n/, ''));
    expect(toCelsius(lean.core!)).toBe(96);
  });
});

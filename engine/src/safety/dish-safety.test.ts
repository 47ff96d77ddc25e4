import { describe, expect, it } from 'vitest';
import {
  madeCamp,
  madeDish,
  madeFormula,
  madeIngredient,
  madeRecipe,
} from '../../validation/bake/made.ts';
import chart from '../../validation/safety/core-chart.json' with { type: 'json' };
import type { Camp } from '../camp/camp.ts';
import type { MenuDish } from '../menu/menu.ts';
import type { Ingredient, Recipe } from '../menu/recipe.ts';
import { fromFahrenheit, metres } from '../quantity/unit.ts';
import { dishSafety } from './dish-safety.ts';

const safetyOf = (
  ingredients: readonly Ingredient[],
  own: Partial<Recipe> = {},
  camp: Camp = madeCamp(),
  dish: Partial<MenuDish> = {},
) =>
  dishSafety({
    dish: madeDish(dish),
    recipe: madeRecipe({ ingredients, ...own }),
    formula: madeFormula(ingredients),
    camp,
  });

const codes = (safety: { cautions: readonly { code: string }[] }) =>
  safety.cautions.map((each) => each.code);

describe('least core of a dish', () => {
  it('is the one of foodsafety-chart, row by row', () => {
    const rows = chart.rows as unknown as readonly [string, Ingredient['part'], number, number][];
    expect(rows).toHaveLength(7);
    for (const [name, part, fahrenheit, rest] of rows) {
      const { least } = safetyOf([madeIngredient(name, 1000, { part })], {
        kind: 'roast',
        method: 'roast',
      });
      expect(least?.core, name).toBeCloseTo(fromFahrenheit(fahrenheit), 9);
      expect(least?.rest, name).toBe(rest);
    }
  });

  it('is 165 F for meat in a pot and for food cooked before (foodsafety-chart)', () => {
    const beef = madeIngredient('beef chuck, cubed', 1000, { part: 'meat' });
    const stew = safetyOf([beef], { kind: 'stew', method: 'simmer' });
    expect(stew.least?.core).toBeCloseTo(fromFahrenheit(165), 9);
    const beans = madeIngredient('pinto beans, cooked at home', 1000, { part: 'bean' });
    const again = safetyOf([beans], { kind: 'stew', method: 'simmer' });
    expect(again.least?.core).toBeCloseTo(fromFahrenheit(165), 9);
  });

  it('is missing where no meat, egg or re-heating is in it, tinned fruit and stock included', () => {
    const fruit = madeIngredient('canned peaches', 1000, { part: 'fruit' });
    expect(safetyOf([fruit], { kind: 'cobbler' }).least).toBeUndefined();
    const stock = madeIngredient('chicken stock', 1000, { part: 'liquid' });
    expect(safetyOf([stock], { kind: 'stew', method: 'simmer' }).least).toBeUndefined();
  });
});

describe('holding', () => {
  it('is 140 F hot and 40 F cold, the stricter of foodsafety-chart and food-code-3-501', () => {
    const safety = safetyOf([]);
    expect(safety.hotHold).toBeCloseTo(fromFahrenheit(140), 9);
    expect(safety.coldHold).toBeCloseTo(fromFahrenheit(40), 9);
  });

  it('lasts 2 h outside both, 1 h when the air is above 90 F (fsis-two-hours)', () => {
    const [hour] = madeCamp().weather;
    const hot = madeCamp({ weather: [{ ...hour!, air: fromFahrenheit(95) }] });
    const stew = { kind: 'stew', method: 'simmer' } as const;
    expect(safetyOf([], stew).outLimit).toBe(120);
    expect(safetyOf([], stew, hot).outLimit).toBe(60);
  });
});

describe('foods with rules of their own', () => {
  it('dry kidney beans want a full boil of 30 min (fda-bad-bug-book), tinned ones do not', () => {
    const pot = { kind: 'beans', method: 'simmer' } as const;
    const dry = safetyOf([madeIngredient('red kidney beans, dry', 500, { part: 'bean' })], pot);
    expect(dry.fullBoil).toBe(30);
    expect(dry.cautions[0]?.code).toBe('SAFETY_KIDNEY_BEANS');
    const tinned = safetyOf([madeIngredient('kidney beans, canned', 500, { part: 'bean' })], pot);
    expect(tinned.fullBoil).toBeUndefined();
  });

  it('dry kidney beans above 5,000 ft are a danger of their own: no figure for heights was found (fda-bad-bug-book)', () => {
    const camp = madeCamp();
    const high = { ...camp, place: { ...camp.place, elevation: metres(2100) } };
    const beans = [madeIngredient('red kidney beans, dry', 500, { part: 'bean' })];
    const pot = { kind: 'beans', method: 'simmer' } as const;
    expect(codes(safetyOf(beans, pot, high))).toContain('SAFETY_BEANS_AT_HEIGHT');
    expect(codes(safetyOf(beans, pot, camp))).not.toContain('SAFETY_BEANS_AT_HEIGHT');
  });

  it('flour, honey, rice, garlic in oil and raw egg are named', () => {
    const flour = madeIngredient('bread flour', 500, { part: 'flour' });
    const honey = madeIngredient('honey', 50, { part: 'sugar' });
    expect(codes(safetyOf([flour, honey]))).toEqual(
      expect.arrayContaining(['SAFETY_RAW_FLOUR', 'SAFETY_HONEY']),
    );
    const cold = { kind: 'cold-dish', method: 'none' } as const;
    const sauce = [
      madeIngredient('garlic', 20, { part: 'vegetable' }),
      madeIngredient('oil', 100, { part: 'fat' }),
      madeIngredient('egg yolk', 40, { part: 'egg' }),
    ];
    expect(codes(safetyOf(sauce, cold))).toEqual(
      expect.arrayContaining(['SAFETY_EGG_NOT_COOKED', 'SAFETY_GARLIC_OIL', 'SAFETY_KEEP_COLD']),
    );
  });
});

describe('a dish that is kept apart', () => {
  const need = { who: 'a guest', kind: 'gluten', strictness: 'strict' } as const;
  const camp = madeCamp({ needs: [need] });
  const meal = (checkLabel: readonly 'gluten'[]) =>
    madeIngredient('a meal of our own mill', 500, { part: 'meal', checkLabel });

  it('is free of gluten and wheat only when no label is open', () => {
    const clean = safetyOf([meal([])], { kind: 'corn-bread' }, camp, { freeFrom: true });
    expect(clean.freeFrom).toEqual(['gluten', 'wheat']);
    const open = safetyOf([meal(['gluten'])], { kind: 'corn-bread' }, camp, { freeFrom: true });
    expect(open.freeFrom).not.toContain('gluten');
    expect(codes(open)).toContain('SAFETY_CHECK_LABEL');
  });

  it('wants an oven of its own, for seasoned iron is not to be shared (aafa-cast-iron)', () => {
    const found = safetyOf([meal([])], { kind: 'corn-bread' }, camp, { freeFrom: true });
    expect(codes(found)).toContain('SAFETY_NO_OVEN_KEPT_APART');
    expect(found.cautions[0]?.level).toBe('danger');
  });
});

describe('one core on a card', () => {
  const egg = madeIngredient('egg', 100, { part: 'egg', food: 'egg' });
  const beef = madeIngredient('beef chuck', 900, { part: 'meat' });
  const probe = (safety: ReturnType<typeof safetyOf>) =>
    safety.cautions.find(({ code }) => code === 'SAFETY_PROBE');

  it('asks no core for the egg of a bread that is done far hotter (foodsafety-chart: 160 F)', () => {
    const bread = safetyOf([egg], { kind: 'corn-bread', method: 'bake' });
    expect(probe(bread)).toBeUndefined();
    expect(bread.least?.core).toBeCloseTo(fromFahrenheit(160), 6);
  });

  it('says how, where the camp has no thermometer', () => {
    const camp = madeCamp();
    const without = { ...camp, gear: { ...camp.gear, thermometer: false } };
    const stew = safetyOf([beef], { kind: 'stew', method: 'simmer' }, without);
    expect(probe(stew)?.values.by).toBe('boil');
    const roast = safetyOf([beef], { kind: 'roast', method: 'roast' }, without);
    expect(probe(roast)?.values.by).toBe('borrow');
  });

  it('keeps plain bread neither hot nor cold, bread with meat in it both (common practice)', () => {
    const flour = madeIngredient('bread flour', 500, { part: 'flour' });
    expect(safetyOf([flour], { kind: 'yeast-bread' }).isKeptDry).toBe(true);
    expect(safetyOf([flour, beef], { kind: 'yeast-bread' }).isKeptDry).toBeUndefined();
  });
});

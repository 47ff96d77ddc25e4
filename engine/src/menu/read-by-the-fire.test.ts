import { describe, expect, it } from 'vitest';
import table from '../../validation/menu/recipes-by-the-fire.json' with { type: 'json' };
import { isRefusal } from '../notice/notice.ts';
import { fromCelsius, fromFahrenheit } from '../quantity/index.ts';
import { readRecipeText } from './read-recipe.ts';
import type { StepKind, WriterCoals } from './recipe.ts';

type Range = readonly [number, number];
interface Row {
  readonly hand: string;
  readonly text: string;
  readonly kind: string;
  readonly foods: readonly (readonly [string | null, number | null, number | null])[];
  readonly steps: readonly string[] | null;
  readonly writer: {
    readonly ovenFahrenheit?: Range;
    readonly ovenCelsius?: Range;
    readonly minutes?: Range;
    readonly coreFahrenheit?: number;
    readonly coreCelsius?: number;
    readonly coals?: WriterCoals;
  };
  readonly keptAtFahrenheit?: number;
  readonly claims?: readonly string[];
}
const rows = table.rows as unknown as readonly Row[];
const named = rows.map((row) => [row.hand, row] as const);

function read(text: string) {
  const found = readRecipeText(text);
  if (isRefusal(found)) throw new Error(found.code);
  return found;
}
const keys = (text: string) => read(text).ingredients.map(({ line }) => line.search.food?.key);
const weights = (text: string) =>
  read(text).ingredients.map(({ line, grams }) => [
    line.search.food?.key,
    Math.round(10 * grams) / 10,
  ]);

describe('recipes that say how they are baked', () => {
  it.each(named)('weigh what was counted by hand from sr28 WEIGHT: %s', (_hand, row) => {
    const found = read(row.text);
    expect(found.kind.kind).toBe(row.kind);
    expect(found.ingredients.map(({ line }) => line.search.food?.key ?? null)).toEqual(
      row.foods.map(([key]) => key),
    );
    for (const [at, [key, amount, each]] of row.foods.entries()) {
      if (amount === null || each === null) continue;
      const { grams } = found.ingredients[at]!;
      const off = amount === 0 ? grams : Math.abs(grams / (amount * each) - 1);
      expect([key, grams, off < 0.006]).toEqual([key, grams, true]);
    }
  });

  it.each(named)('keep what nobody can weigh without a weight, never a gram: %s', (_hand, row) => {
    const { recipe } = read(row.text);
    const left = recipe!.ingredients.filter(({ isUnweighed }) => isUnweighed);
    expect(left.length).toBe(row.foods.filter(([, amount]) => amount === 0).length);
    expect(left.every(({ grams }) => grams === 0)).toBe(true);
    expect(recipe!.ingredients.every((each) => each.isUnweighed || 0 < each.grams)).toBe(true);
  });

  it.each(named)('tell hands from waiting, step by step as counted: %s', (_hand, row) => {
    if (row.steps === null) return;
    const steps = read(row.text).recipe!.steps;
    expect(steps.map(({ kind }) => kind)).toEqual(row.steps.map((said) => said.split(' ')[0]));
    const waits: readonly StepKind[] = ['rise', 'second-rise', 'rest', 'cook'];
    for (const [at, { kind, minutes, hands }] of steps.entries()) {
      const said = row.steps[at]!.split(' ')[1];
      if (said !== undefined) expect([at, kind, minutes]).toEqual([at, kind, Number(said)]);
      expect([kind, hands]).toEqual([kind, waits.includes(kind) ? 0 : 1]);
    }
    const kept = steps.find(({ keptAt }) => keptAt !== undefined)?.keptAt;
    if (row.keptAtFahrenheit === undefined) expect(kept).toBeUndefined();
    else expect(kept).toBeCloseTo(fromFahrenheit(row.keptAtFahrenheit), 6);
  });

  it.each(named)("keep the writer's heat, minutes, core and coals: %s", (_hand, row) => {
    const { recipe, notices } = read(row.text);
    const said = recipe!.target.writer ?? {};
    const { ovenFahrenheit, ovenCelsius, minutes, coreFahrenheit, coreCelsius, coals } = row.writer;
    const oven = ovenFahrenheit?.map(fromFahrenheit) ?? ovenCelsius?.map(fromCelsius);
    const core =
      coreFahrenheit === undefined
        ? coreCelsius && fromCelsius(coreCelsius)
        : fromFahrenheit(coreFahrenheit);
    expect(said.oven?.map((each) => each.toFixed(6))).toEqual(oven?.map((each) => each.toFixed(6)));
    expect(said.minutes).toEqual(minutes);
    expect(said.core?.toFixed(6)).toBe(core?.toFixed(6));
    if (core !== undefined) expect(recipe!.target.core).toBe(said.core);
    expect(said.coals).toEqual(coals);
    const isTold = notices.some(({ code }) => code === 'MENU_TEXT_COALS');
    expect(isTold).toBe(coals !== undefined);
  });

  it.each(named)('hold a title against what goes in: %s', (_hand, row) => {
    const claims = read(row.text).notices.flatMap(({ code, values }) => {
      if (code === 'MENU_TITLE_CONTRADICTED') return [`${values.allergen} contradicted`];
      return code === 'MENU_TITLE_NOT_CHECKED' ? [`${values.allergen} open`] : [];
    });
    expect(claims).toEqual(row.claims ?? []);
  });
});

describe('coals as they are written', () => {
  const laid = (text: string) => read(`Bread\n2 cups flour\n1 cup milk\n${text}`).coals?.coals;
  it.each([
    ['17 coals on top, 8 below', { above: 17, below: 8 }],
    ['Bake with 8 coals underneath and 16-18 on the lid for 30 minutes', { above: 17, below: 8 }],
    ['Top: 16 Bottom: 8', { above: 16, below: 8 }],
    ['lid 17 coals / below 8 coals', { above: 17, below: 8 }],
    ['16/8 briquettes top/bottom', { above: 16, below: 8 }],
    ['Use 24 briquettes. Bake 30 minutes.', { total: 24 }],
    ['two thirds of the coals on the lid, bake 30 min', { aboveShare: 2 / 3 }],
    ['17 coals on top\n8 below', { above: 17, below: 8 }],
  ] as const)('are read side by side as they stand: %s', (text, coals) =>
    expect(laid(text)).toEqual(coals),
  );

  it.each(['Bake 20 minutes at 350 F on top of the fire', 'Cut into 8 wedges, serve on top'])(
    'are not read out of other numbers: %s',
    (text) => expect(laid(text)).toBeUndefined(),
  );

  it('are read, and a time is no heat: "Leave to rise 90 min" (no 90 °C)', () => {
    const { heat } = read('Loaf\n500 g bread flour\n300 g water\n7 g yeast\nLeave to rise 90 min.');
    expect(heat).toBeUndefined();
  });
});

describe('milk beside a dry word', () => {
  it.each([
    '3/4-1 cup milk (dry weather takes more)',
    '3/4-1 cup milk, for a dry flour',
    '3/4-1 cup milk, or water if dry',
    '3/4-1 cup milk, dry powder works too',
    'Add 3/4-1 cup milk to the dry ingredients',
    'Take 2 cups flour and a spoon of powder, then 3/4-1 cup milk to the dry things.',
  ])('stays milk, 0.875 × 244 g (sr28 NDB 01077): %s', (line) => {
    const found = weights(line.startsWith('3') ? `Bread\n2 cups flour\n${line}` : line);
    expect(found.find(([key]) => key === 'milk' || String(key).startsWith('dry'))).toEqual([
      'milk',
      213.5,
    ]);
  });

  it.each([
    ['1 cup milk, dry', 'dry-milk'],
    ['1 cup dry milk, instant', 'dry-milk-instant'],
    ['1 cup instant nonfat dry milk', 'dry-milk-instant'],
    ['1 cup milk powder', 'dry-milk'],
    ['1 cup milk, powdered', 'dry-milk'],
  ])('is dry where it is said so: %s', (line, key) => {
    expect(keys(`Bread\n2 cups flour\n${line}`)[1]).toBe(key);
  });
});

describe('two foods in one line', () => {
  it('are both weighed where each has its amount (sr28: cup of flour 125 g, teaspoon of salt 6 g)', () => {
    expect(weights('Bread\n2 cups flour and 1 tsp salt\n1 cup milk')).toEqual([
      ['all-purpose-flour', 250],
      ['salt', 6],
      ['milk', 244],
    ]);
    expect(weights('Bread\n2 cups flour plus 1 tbsp baking powder + 1 tsp salt')).toEqual([
      ['all-purpose-flour', 250],
      ['baking-powder', 13.8],
      ['salt', 6],
    ]);
  });

  it('share an amount "each" (sr28 NDB 02030: teaspoon of pepper 2.3 g)', () => {
    expect(weights('Stew\n1 lb beef\n1 tsp each salt and pepper')).toEqual([
      ['beef-chuck-stew-raw', 453.6],
      ['salt', 6],
      ['black-pepper', 2.3],
    ]);
  });

  it('are one where the line says "or"', () => {
    expect(keys('Bread\n2 cups flour\n1/2 cup butter or lard')).toEqual([
      'all-purpose-flour',
      'butter-salted',
    ]);
  });
});

import { describe, expect, it } from 'vitest';
import { demoCamps } from '#formats';
import { benchAnswer } from './bench.ts';
import type { BenchQuestion } from './bench-messages.ts';
import { type FileItem, itemsTaken } from './proposal.ts';

interface File {
  readonly recipes: readonly { readonly id: string; readonly ingredients: readonly FileItem[] }[];
}

const demo = demoCamps('2026-05-02').find(({ camp }) => camp.id === 'harrow-saddle')!;
const file = JSON.parse(JSON.stringify(demo.file)) as File;
const RECIPE = 'mountain-dough';
const ask = (more: Partial<BenchQuestion> = {}) =>
  benchAnswer({
    ask: 'bench',
    file: JSON.stringify(file),
    recipe: RECIPE,
    voice: { measures: 'metric', clock: '24' },
    ...more,
  });
const items = file.recipes.find(({ id }) => id === RECIPE)!.ingredients;

/** The camp with a proposal taken over, as the screen keeps it. */
const taken = (next: readonly FileItem[]): File => ({
  ...file,
  recipes: file.recipes.map((recipe) =>
    recipe.id === RECIPE ? { ...recipe, ingredients: next } : recipe,
  ),
});

describe('the bench of a recipe in a camp', () => {
  it('shows its lines with percent of flour: 960 g of water to 1500 g is 64 %', () => {
    const { lines, flourGrams, sheet } = ask();
    expect(flourGrams).toBe(1500);
    expect(lines?.find(({ name }) => name === 'water')?.percent).toBeCloseTo(64, 9);
    expect(sheet?.kind).toBe('bench');
  });

  it('has one cup for one flour, left and right: 1500 g are 11 cups of 137 g (sr28 NDB 20083)', () => {
    const { lines, sheet } = ask();
    const flour = lines!.find(({ isFlour }) => isFlour)!;
    expect(flour.measure).toBe('11 cups');
    const text = JSON.stringify(sheet).replaceAll('\u00a0', ' ');
    expect(text).toContain('1,500 g, 11 cups');
    expect(text).toContain('may be 1,350 g to 1,650 g'); // a tenth, common practice
    expect(text).toContain('own 12 1/2 cups would be 120 g a cup'); // what the camp's writer took
  });

  it('counts an own food by its label: 50 g of water in 100 g, as the label says', () => {
    const own = {
      ...{ id: 'wet-mix', name: 'Wet mix', part: 'liquid', label: 'eu', kilocalories: 200 },
      ...{ fat: 0, carbohydrate: 50, protein: 0, water: 50, contains: [] },
    };
    const next = [
      ...items.filter(({ name }) => name !== 'water'),
      { name: 'wet mix', weight: '960 g' },
    ];
    const text = JSON.stringify({ ...taken(next), foods: [own] });
    // 960 g of it, half of them water, to 1500 g of flour: 32 %; hand arithmetic.
    const { troubles, brief } = ask({ file: text });
    expect(troubles).toEqual([]);
    expect(brief).toMatch(/^32\s% water/);
  });

  it('takes a swap over without losing a note or a label of any line', () => {
    const noted = items.map((item, at) => ({
      ...item,
      note: `note ${at}`,
      labelSaysFree: ['soy'],
    }));
    const text = JSON.stringify(taken(noted));
    const line = items.findIndex(({ name }) => name === 'oil');
    const { swap } = ask({ file: text, swap: { line, to: 'butter-salted' } });
    const next = itemsTaken(noted, swap!.items);
    const kept = next.filter((item) => item.note !== undefined);
    expect(kept.length).toBe(items.length - 1);
    expect(kept.every((item) => 'labelSaysFree' in item)).toBe(true);
    const again = ask({ file: JSON.stringify(taken(next)) });
    expect(again.troubles).toEqual([]);
    expect(again.lines?.some(({ name }) => /butter/.test(name))).toBe(true);
    // The same water: 960 g and what the oil brought, none (sr28: oil 0, butter 15.87 % water).
    expect(again.brief).toMatch(/^64\s% water/);
  });

  it('takes a target over, and the camp that is kept has it', () => {
    const { target } = ask({
      targets: { batchGrams: 2000, figures: { hydration: 0.7 }, held: [] },
    });
    const again = ask({ file: JSON.stringify(taken(itemsTaken(items, target!.items))) });
    expect(again.troubles).toEqual([]);
    const mass = again.lines!.reduce((sum, { grams }) => sum + grams, 0);
    expect(Math.abs(mass - 2000)).toBeLessThan(1); // tenths of a gram are written
    expect(again.brief).toMatch(/^70\s% water/);
  });

  it('fills an oven of the camp as thick as is wished, by floor, thickness and 1.1 g/cm3', () => {
    // Rolled flat as one: a quick bread that is not divided.
    const flat = JSON.stringify({
      ...file,
      menu: [{ id: 'bread', recipe: RECIPE, serve: '18:00' }],
      recipes: file.recipes
        .filter(({ id }) => id === RECIPE)
        .map((recipe) => ({ ...recipe, kind: 'quick-bread', division: [] })),
    });
    const { ovens, troubles } = ask({ file: flat });
    expect(troubles).toEqual([]);
    expect(ovens!.length).toBeGreaterThan(0);
    const oven = ovens![0]!.id;
    const massAt = (thickMetres?: number) => {
      const fill = { oven, ...(thickMetres === undefined ? {} : { thickMetres }) };
      const { target } = ask({ file: flat, targets: { fill, figures: {}, held: [] } });
      const next = itemsTaken(items, target!.items);
      const weights = next.map(({ weight }) => Number.parseFloat(String(weight)));
      return {
        mass: weights.reduce((sum, each) => sum + each, 0),
        sheet: JSON.stringify(target!.sheet),
      };
    };
    const [thin, thick] = [massAt(0.0127), massAt(0.0254)];
    expect(thin.sheet).toMatch(/as you said/);
    expect(thin.sheet).not.toMatch(/the the/);
    // Twice as thick on one floor is twice as heavy (common practice, no source), as it lies flat.
    expect(thick.mass / thin.mass).toBeGreaterThan(1.5);
    expect(thick.mass / thin.mass).toBeLessThan(2.05);
    const against = ask({
      file: flat,
      targets: {
        fill: { oven, thickMetres: 0.0127 },
        batchGrams: 3 * thin.mass,
        figures: {},
        held: [],
      },
    });
    expect(JSON.stringify(against.target!.sheet)).toMatch(/MENU_MASS_AGAINST_FILL/);
    expect(against.target!.items).toEqual([]);
  });

  it('holds it beside what it was, and beside nothing where nothing changed', () => {
    const before = { file: JSON.stringify(file), recipe: RECIPE, name: 'As it was' };
    expect(JSON.stringify(ask({ beside: before }).sheet)).not.toMatch(/As it was/);
    const wetter = items.map((item) =>
      item.name === 'water' ? { ...item, weight: '1100 g', measure: '4 2/3 cups' } : item,
    );
    const { sheet } = ask({ file: JSON.stringify(taken(wetter)), beside: before });
    expect(JSON.stringify(sheet)).toMatch(/As it was/);
    expect(JSON.stringify(sheet)).toMatch(/Wetter/);
  });

  it('says what it can not read, and why a pot is no formula', () => {
    const broken = JSON.stringify(taken(items.map((item) => ({ ...item, weight: 'much' }))));
    expect(ask({ file: broken }).troubles.length).toBeGreaterThan(0);
    const { sheet } = ask({ recipe: 'saddle-stew' });
    expect(JSON.stringify(sheet)).toMatch(/no flour in this, so it has no baker’s percentages/);
    const wished = ask({
      recipe: 'saddle-stew',
      targets: { figures: { hydration: 0.62 }, held: [] },
    });
    expect(JSON.stringify(wished.target)).toMatch(/FORMULA_NO_DOUGH/);
  });
});

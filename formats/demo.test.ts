import { describe, expect, it } from 'vitest';
import { demoCamps, demoIds, demoSources } from './demo.ts';
import { fileCodes } from './index.ts';

const demos = demoCamps('2026-09-12'); // a Saturday
const demo = (id: string) => demos.find(({ camp }) => camp.id === id)!;
const recipeOf = (id: string, recipe: string) =>
  demo(id).menu.recipes.find((candidate) => candidate.id === recipe)!;

describe('the demo camps', () => {
  it('stand on the week after today, each on its own weekday, never today', () => {
    expect(demos.map(({ camp }) => [camp.id, camp.date])).toEqual([
      ['pilcrow-creek', '2026-09-19'],
      ['harrow-saddle', '2026-09-17'],
      ['pilcrow-creek-wood', '2026-09-19'],
      ['quillmoor-fair', '2026-09-19'],
    ]);
    expect(demoCamps('2024-02-24').map(({ camp }) => camp.date)).toContain('2024-02-29');
    expect(demoIds).toEqual(demos.map(({ camp }) => camp.id));
    expect(() => demoCamps('yesterday')).toThrow(RangeError);
  });

  it('know every food in them, so that every allergen is known', () => {
    const codes = demos.flatMap(({ notices }) =>
      notices
        .filter(({ code }) => code === 'FILE_FOOD_UNKNOWN')
        .map(({ about }) => about.ingredient),
    );
    expect(codes).toEqual([]);
  });

  it('mention nothing that has no sentence', () => {
    for (const { notices } of demos)
      for (const { code } of notices) expect(Object.keys(fileCodes)).toContain(code);
  });

  // Grams of the two written-out doughs and pots, added up by hand from their lines.
  it.each([
    ['pilcrow-creek', 'meadow-loaf', 792],
    ['pilcrow-creek', 'bean-salad', 755],
    ['pilcrow-creek', 'baked-apples', 997],
    ['harrow-saddle', 'saddle-stew', 7193],
    ['harrow-saddle', 'pinto-pot', 4183],
    ['harrow-saddle', 'mountain-dough', 2633],
    ['harrow-saddle', 'blue-cornbread', 1809],
    ['harrow-saddle', 'slaw-24', 3034],
    ['harrow-saddle', 'peach-cobbler', 3792],
    ['quillmoor-fair', 'barley-braise', 7032],
    ['quillmoor-fair', 'fair-cornbread', 1813],
  ])('%s weighs out %s at %i g', (id, recipe, total) => {
    const { ingredients } = recipeOf(id, recipe);
    expect(ingredients.reduce((sum, { grams }) => sum + grams, 0)).toBe(total);
  });

  it('divides the mountain dough into 24 rolls and one round and leaves nothing over', () => {
    const { division, portions } = recipeOf('harrow-saddle', 'mountain-dough');
    expect(division.reduce((sum, piece) => sum + piece.count * piece.gramsEach, 0)).toBe(2633);
    expect(division.reduce((sum, piece) => sum + piece.count * piece.portionsEach, 0)).toBeCloseTo(
      portions,
    );
  });

  it('feeds 24 at the saddle, 4 at the creek and 300 at the fair, whose hands are eight', () => {
    const mouths = (id: string) => demo(id).camp.mouths.reduce((sum, { count }) => sum + count, 0);
    expect(['harrow-saddle', 'pilcrow-creek', 'quillmoor-fair'].map(mouths)).toEqual([24, 4, 300]);
    const { hands, ovens } = demo('quillmoor-fair').camp;
    expect([hands.length, ovens.length]).toEqual([8, 24]);
  });

  it('keeps gluten out of the blue-cord oven and its bread', () => {
    const bread = recipeOf('harrow-saddle', 'blue-cornbread');
    const inIt = bread.ingredients.flatMap(({ allergens, checkLabel }) => [
      ...allergens,
      ...checkLabel,
    ]);
    expect(inIt).not.toContain('gluten');
    expect(inIt).not.toContain('wheat');
    expect(inIt).not.toContain('milk');
    const dish = demo('harrow-saddle').menu.dishes.find(({ id }) => id === 'cornbread');
    expect(dish).toMatchObject({ freeFrom: true, pins: { oven: 'E' } });
  });

  it('rests the loaf at least 20 minutes', () => {
    const { target, steps } = recipeOf('pilcrow-creek', 'meadow-loaf');
    expect(target.rest).toBe(20);
    expect(steps.find(({ kind }) => kind === 'rest')?.minutes).toBeGreaterThanOrEqual(20);
  });

  it('tells the wood camp without a briquette or a chimney anywhere in its file', () => {
    const text = JSON.stringify(demoSources.find(({ id }) => id === 'pilcrow-creek-wood'));
    expect(text).not.toMatch(/briquette|charcoal|pieceWeight|chimneyful/i);
    expect(demo('pilcrow-creek-wood').camp.fuel).toEqual({ kind: 'wood-coals', lead: 75 });
    expect(demo('pilcrow-creek-wood').camp.gear.chimneys).toBe(0);
  });

  it('cooks every dish: its steps end in one that follows all the others', () => {
    for (const { menu } of demos)
      for (const { id, steps } of menu.recipes) {
        const awaited = new Set(steps.flatMap(({ after }) => after.map(({ step }) => step)));
        const last = steps.filter((step) => !awaited.has(step.id));
        expect(last.length, id).toBe(1);
      }
  });
});

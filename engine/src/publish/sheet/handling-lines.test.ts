import { describe, expect, it } from 'vitest';
import { dishMade, recipeMade } from '../../../validation/menu/made.ts';
import type { HandlingStep } from '../../bake/index.ts';
import type { DishPlan, LoadPlan } from '../../meal.ts';
import type { RecipeKind } from '../../menu/recipe.ts';
import { grams } from '../../quantity/unit.ts';
import { sayFor } from '../speak.ts';
import { cutLines } from './handling-lines.ts';

const say = sayFor({
  measures: 'metric',
  clock: '24',
  plan: { camp: { ovens: [], hands: [] }, menu: { dishes: [] } },
});

function lines(kind: RecipeKind, shape: 'roll' | 'round', cuts?: HandlingStep['cuts']) {
  const division = [{ shape, count: 12, gramsEach: grams(60), portionsEach: 1 }];
  const recipe = recipeMade('bread', { flour: 500, water: 350 }, { kind, division });
  const dish = { recipe, dish: dishMade(recipe) } as DishPlan;
  const steps = cuts === undefined ? [] : [{ cuts } as HandlingStep];
  return cutLines({ dish, part: {} as LoadPlan, steps, say }).join(' ');
}

describe('how a bread is divided (common practice, no source)', () => {
  it('pulls rolls apart, and cuts them with nothing', () => {
    expect(lines('yeast-bread', 'roll')).toMatch(/^Pull them apart/);
    expect(lines('yeast-bread', 'round')).toBe('');
  });

  it('names the degrees of wedges', () => {
    const cuts = { way: 'wedges', pieces: 9, angleDegrees: 40 } as const;
    expect(lines('quick-bread', 'round', cuts)).toContain('40° each');
  });

  it('slices a loaf', () => {
    const cuts = { way: 'slices', pieces: 8 } as const;
    expect(lines('yeast-bread', 'round', cuts)).toContain('slices of one thickness');
  });
});

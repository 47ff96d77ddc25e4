import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { madeCamp, madeDish, madeIngredient, madeRecipe } from '../../validation/bake/made.ts';
import type { Allergen, CampOven } from '../camp/camp.ts';
import { allAllergens } from '../larder/allergens.ts';
import { nominalOven } from '../menu/nominal-oven.ts';
import { metres } from '../quantity/unit.ts';
import { separationPlan } from './separation.ts';

interface Asked {
  readonly contains?: readonly Allergen[];
  readonly labels?: readonly Allergen[];
  readonly freeFrom?: boolean;
  readonly id?: string;
}

const oven = (id: string, keptFreeOf: readonly Allergen[]): CampOven => ({
  ...nominalOven(metres(0.3048), 'regular'),
  id,
  name: id,
  keptFreeOf,
});

const planned = (asked: readonly Asked[], ovens: readonly CampOven[] = []) =>
  separationPlan({
    camp: madeCamp({ needs: [{ who: 'a guest', kind: 'gluten', strictness: 'strict' }], ovens }),
    menu: {
      dishes: asked.map(({ id = 'bread', freeFrom = false }) =>
        madeDish({ id, recipe: id, freeFrom }),
      ),
      recipes: asked.map(({ id = 'bread', contains = [], labels = [] }) =>
        madeRecipe({
          id,
          ingredients: [
            madeIngredient('our own thing', 100, { allergens: contains, checkLabel: labels }),
          ],
        }),
      ),
    },
  });

describe('what a dish holds', () => {
  it('is gluten wherever it is wheat (eu-1169-2011: cereals containing gluten)', () => {
    expect(planned([{ contains: ['wheat'] }])[0]?.holds).toEqual(['gluten', 'wheat']);
  });

  it('never lets a label that is not read stand for absent, whatever is asked', () => {
    const some = fc.subarray([...allAllergens]);
    fc.assert(
      fc.property(some, some, fc.boolean(), (contains, labels, freeFrom) => {
        const [dish] = planned([{ contains, labels, freeFrom }]);
        for (const each of contains) expect(dish?.free).not.toContain(each);
        for (const each of labels) expect(dish?.free).not.toContain(each);
        for (const each of labels) {
          const isTold =
            dish?.holds.includes(each) || dish?.labels.some(({ allergen }) => allergen === each);
          expect(isTold).toBe(true);
        }
      }),
      { seed: 63, numRuns: 200 },
    );
  });
});

describe('the order of the work', () => {
  it('makes the dish that is kept free first, then those that hold least (common practice)', () => {
    const plan = planned([
      { id: 'rolls', contains: ['wheat', 'milk'] },
      { id: 'fruit' },
      { id: 'corn-bread', contains: ['egg'], freeFrom: true },
    ]);
    expect(plan.map(({ dish }) => dish)).toEqual(['corn-bread', 'fruit', 'rolls']);
    expect(plan[0]?.free).toEqual(['gluten', 'wheat']);
  });
});

describe('the oven of a dish that is kept free', () => {
  const bread = [{ freeFrom: true }];

  it('is one that is kept for it, or is named as missing: seasoned iron is not shared (aafa-cast-iron)', () => {
    expect(planned(bread, [oven('A', []), oven('B', ['gluten'])])[0]?.oven?.id).toBe('B');
    expect(planned(bread, [oven('A', []), oven('B', ['milk'])])[0]).toMatchObject({
      isOvenMissing: true,
    });
  });

  it('is not asked for where nothing is kept apart', () => {
    expect(planned([{}], [])[0]?.isOvenMissing).toBe(false);
  });
});

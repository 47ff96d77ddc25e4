// What the work at the ovens wants. Truth: the tools that a cook's own description of the work names
// (the brief of the trade: gloves, lifter, rack, paper), common practice, no source.

import { describe, expect, it } from 'vitest';
import { dishMade, recipeMade } from '../../validation/menu/made.ts';
import type { InOvenWish } from '../menu/in-oven.ts';
import type { OvenLoad } from '../menu/load.ts';
import type { MenuDish } from '../menu/menu.ts';
import type { DishToProvide } from './dish-to-provide.ts';
import { kitFor } from './kit.ts';

const bread = recipeMade('bread', { flour: 500 }, { kind: 'quick-bread', method: 'bake' });

function provided(change: Partial<MenuDish>, loads: number): DishToProvide {
  const dish = dishMade(bread, change);
  const load = { shape: 'disc', thickness: 0.03, portions: 8 } as OvenLoad;
  const part = { load, coals: { loadInMinute: 12 } } as DishToProvide['loads'][number];
  return {
    dish,
    recipe: bread,
    loads: Array.from({ length: loads }, () => part),
  } as unknown as DishToProvide;
}
const kit = (...dishes: readonly DishToProvide[]) =>
  new Map(kitFor(dishes).map(({ tool, count }) => [tool, count]));
const lying = (inOven: InOvenWish, id = 'a') => ({ id, inOven });

describe('the kit at the ovens', () => {
  it('has gloves, lifter, stand and paper for a bread into a hot oven; no rack unless it is said', () => {
    const found = kit(provided({}, 1));
    for (const tool of [
      'gloves',
      'lid-lifter',
      'lid-stand',
      'baking-paper',
      'cooling-rack',
    ] as const)
      expect(found.get(tool), tool).toBe(1);
    expect(found.has('oven-rack')).toBe(false);
  });

  it('has a rack, a tin, paper for every oven, and one pair of gloves for all of them', () => {
    const found = kit(
      provided(lying({ contact: 'tin' }), 2),
      provided(lying({ contact: 'rack' }, 'b'), 1),
    );
    expect(found.get('oven-rack')).toBe(3);
    expect(found.get('tin')).toBe(2);
    expect(found.get('baking-paper')).toBe(1);
    expect(found.get('gloves')).toBe(1);
  });

  it('has everything a second time for a dish that is kept free of something', () => {
    const found = kit(provided({}, 1), provided({ id: 'free', freeFrom: true }, 1));
    expect(found.get('gloves')).toBe(2);
    expect(found.get('board')).toBe(2);
  });
});

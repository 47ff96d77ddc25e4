// A label that was read must count as read, all the way to who can eat what.

import { describe, expect, it } from 'vitest';
import { campSafety, labelsToCheck } from '#engine';
import pilcrowCreek from '../demo/pilcrow-creek.camp.json' with { type: 'json' };
import { fromEngine } from './from-engine.ts';
import { readCampFile } from './read.ts';
import type { FileIngredient } from './v1.ts';

/** The demo camp with one guest who needs gluten-free and a corn bread of this meal and milk. */
function campWith(cornmeal: Partial<FileIngredient>) {
  const read = readCampFile({
    ...pilcrowCreek,
    needs: [{ who: 'a guest', kind: 'gluten', strictness: 'avoid' }],
    menu: [{ id: 'bread', recipe: 'bread', serve: '13:00' }],
    recipes: [
      {
        id: 'bread',
        name: 'corn bread',
        kind: 'corn-bread',
        method: 'bake',
        portions: 4,
        ingredients: [
          { name: 'cornmeal', weight: '300 g', ...cornmeal },
          { name: 'milk', weight: '300 g' },
        ],
      },
    ],
  });
  if (!read.ok) throw new Error(JSON.stringify(read.troubles));
  return read;
}

const unfitIn = (cornmeal: Partial<FileIngredient>) => campSafety(campWith(cornmeal)).unfit;

describe('a label in the camp file', () => {
  it('that nobody has read keeps the dish from the guest (falcpa-faster: cornmeal is no wheat, but may meet it)', () => {
    expect(unfitIn({})).toEqual([
      { dish: 'bread', who: 'a guest', because: 'label not read: cornmeal' },
    ]);
  });

  it('that says free of it counts as read', () => {
    expect(unfitIn({ labelSaysFree: ['gluten', 'wheat'] })).toEqual([]);
  });

  it('counts as read where the words of the packet stand in the name or in the note', () => {
    expect(unfitIn({ name: 'cornmeal, certified gluten-free' })).toEqual([]);
    expect(unfitIn({ note: 'certified gluten-free' })).toEqual([]);
  });

  it('never talks away what is surely in it, by nature or by the cook’s own word', () => {
    const because = (cornmeal: Partial<FileIngredient>) =>
      unfitIn({ ...cornmeal, labelSaysFree: ['gluten', 'wheat'] }).map((each) => each.because);
    expect(because({ name: 'bread flour' })).toEqual(['gluten']);
    expect(because({ contains: ['wheat'] })).toEqual(['wheat']);
  });

  it('is still open for what it does not speak of', () => {
    const { menu } = campWith({ checkLabel: ['soy'], labelSaysFree: ['gluten'] });
    expect(labelsToCheck(menu.recipes[0]!)).toContainEqual({
      ingredient: 'cornmeal',
      allergen: 'soy',
    });
  });

  it('stays read when the camp is written and read again', () => {
    const { camp, menu } = campWith({ labelSaysFree: ['gluten', 'wheat'] });
    const again = readCampFile(fromEngine(camp, menu));
    expect(again.ok && campSafety(again).unfit).toEqual([]);
  });
});

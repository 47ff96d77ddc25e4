// Event, hand-wash line, bleach and allergy words in a camp file.

import { describe, expect, it } from 'vitest';
import pilcrowCreek from '../demo/pilcrow-creek.camp.json' with { type: 'json' };
import { fromEngine } from './from-engine.ts';
import { readCampFile } from './read.ts';

const filed = (more: object) => readCampFile({ ...structuredClone(pilcrowCreek), ...more });

describe('a public event in a camp file', () => {
  it('is read with its hand-wash line and the label of its bleach, and saved again', () => {
    const gear = { ...pilcrowCreek.gear, handWash: true, bleach: '8.25 %' };
    const once = filed({ event: 'public', gear });
    if (!once.ok) throw new Error(JSON.stringify(once.troubles));
    expect(once.camp).toMatchObject({ event: 'public', gear: { handWash: true, bleach: 0.0825 } });
    const again = readCampFile(fromEngine(once.camp, once.menu));
    if (!again.ok) throw new Error(JSON.stringify(again.troubles));
    expect(again.camp.gear).toEqual(once.camp.gear);
    expect(again.camp.event).toBe('public');
  });

  it('is left out by older files, which open as before', () => {
    const old = filed({});
    expect(old.ok && old.camp.event).toBeUndefined();
    expect(old.ok && old.camp.gear.bleach).toBeUndefined();
  });
});

describe('an unknown allergy word', () => {
  const nextFor = (kind: string) => {
    const read = filed({ needs: [{ who: 'a guest', kind, strictness: 'avoid' }] });
    return read.ok ? 'read' : read.troubles.map(({ next }) => next).join(' ');
  };

  it('is refused by name with the nearest known, by meaning or by letters', () => {
    expect(nextFor('dairy')).toContain('Did you mean "milk"?');
    expect(nextFor('shellfish')).toContain('"crustacean" and "mollusc"');
    expect(nextFor('glutten')).toContain('Did you mean "gluten"?');
    expect(nextFor('moonlight')).not.toContain('Did you mean');
  });
});

describe('a food that nobody knows', () => {
  const doubtsOf = (more: object) => {
    const [first, ...others] = pilcrowCreek.recipes;
    const ingredients = [{ name: 'moonlight mix', weight: '100 g', ...more }];
    const read = filed({
      recipes: [{ ...first, ingredients }, ...others],
      needs: [{ who: 'a guest', kind: 'milk', strictness: 'avoid' }],
    });
    if (!read.ok) throw new Error(JSON.stringify(read.troubles));
    return read.menu.recipes[0]?.ingredients[0]?.checkLabel ?? [];
  };

  it('is never taken as free of an allergen until its label is read', () => {
    expect(doubtsOf({})).toHaveLength(15);
    expect(doubtsOf({ labelSaysFree: ['milk'] })).not.toContain('milk');
    expect(doubtsOf({ name: 'moonlight mix, gluten-free' })).not.toContain('gluten');
    expect(doubtsOf({ contains: ['egg'] })).toEqual([]);
  });
});

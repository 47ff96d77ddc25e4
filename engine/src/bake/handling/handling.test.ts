// Into and out of the oven. Truth: plane geometry for the cuts; for the order of the work and its
// minutes common practice, no source, as the habits of the day sheet have had them from the first.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dishMade, recipeMade } from '../../../validation/menu/made.ts';
import type { FloorContact, InOven } from '../../menu/in-oven.ts';
import type { OvenLoad } from '../../menu/load.ts';
import type { Recipe } from '../../menu/recipe.ts';
import { grams, metres, minutes } from '../../quantity/unit.ts';
import { cutsFor } from './cuts-for.ts';
import { evenRoundCuts, evenSquares } from './even-cuts.ts';
import { handlingOf, handMinutes, stickingOf } from './handling.ts';

const bread = recipeMade(
  'bread',
  { flour: 500, water: 350 },
  {
    kind: 'quick-bread',
    method: 'bake',
    target: { canWait: minutes(20), rest: minutes(5), isCold: false },
  },
);
const inOven = (contact: FloorContact, more: Partial<InOven> = {}): InOven => ({
  contact,
  lid: 'cold',
  pieces: 'apart',
  ...more,
});
const load = (change: Partial<OvenLoad> = {}): OvenLoad =>
  ({
    shape: 'disc',
    thickness: metres(0.03),
    portions: 8,
    inOven: inOven('paper'),
    ...change,
  }) as OvenLoad;
const works = (recipe: Recipe, lying: OvenLoad, isHot = true) =>
  handlingOf({ recipe, dish: dishMade(recipe), load: lying, isHot }).map(({ work }) => work);

describe('even cuts of a round', () => {
  it('have equal areas, whatever their number (plane geometry)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), (pieces) => {
        const cuts = evenRoundCuts(pieces);
        if (cuts.way === 'wedges') {
          expect(cuts.angleDegrees * cuts.pieces).toBeCloseTo(360, 9);
          return;
        }
        const innerArea = Math.PI * cuts.innerOfWhole ** 2;
        const ringArea = Math.PI - innerArea;
        expect(cuts.inner + cuts.outer).toBe(pieces);
        expect(innerArea / cuts.inner).toBeCloseTo(ringArea / cuts.outer, 9);
      }),
      { seed: 17, numRuns: 200 },
    );
  });

  it('go across the middle where their number is even, and are wedges up to twelve', () => {
    expect(evenRoundCuts(8)).toEqual({ way: 'wedges', pieces: 8, across: 4, angleDegrees: 45 });
    expect(evenRoundCuts(5)).toEqual({ way: 'wedges', pieces: 5, angleDegrees: 72 });
    expect(evenRoundCuts(24)).toMatchObject({ way: 'ring-and-wedges', inner: 8, outer: 16 });
  });

  it('of a long cake are as square as whole rows allow: 12 of 9 × 13 inches are 4 by 3', () => {
    expect(evenSquares(12, { length: 13, width: 9 })).toMatchObject({ rows: 4, columns: 3 });
    expect(evenSquares(7, { length: 1, width: 1 })).toMatchObject({ pieces: 7 });
  });
});

describe('what is cut', () => {
  it('is a round by the portions of its recipe, a batter by those that lie in the oven', () => {
    const division = [
      { shape: 'round' as const, count: 1, gramsEach: grams(850), portionsEach: 6 },
    ];
    const asked = { dish: dishMade(bread), load: load() };
    expect(cutsFor({ ...asked, recipe: { ...bread, division } })?.pieces).toBe(6);
    expect(cutsFor({ ...asked, recipe: bread })?.pieces).toBe(8);
  });

  it('is not rolls and biscuits: they are broken apart', () => {
    const pieces = load({ shape: 'pieces' });
    expect(cutsFor({ recipe: bread, dish: dishMade(bread), load: pieces })).toBeUndefined();
  });

  it('is slices of a yeast loaf, wedges with their degrees of what is rolled flat or of soda bread (common practice, no source)', () => {
    const lying = load({});
    const cut = (recipe: Recipe) => cutsFor({ recipe, dish: dishMade(recipe), load: lying })?.way;
    const loaf = { ...bread, kind: 'yeast-bread' as const, division: [] };
    expect(cut(loaf)).toBe('slices');
    expect(cut({ ...loaf, target: { ...loaf.target, thickness: metres(0.015) } })).toBe('wedges');
    expect(cut({ ...loaf, kind: 'quick-bread' })).toBe('wedges');
    expect(cut({ ...loaf, kind: 'corn-bread' })).toBe('wedges');
  });

  it('is slices of a loaf from a long tin', () => {
    const tin = { length: metres(0.216), width: metres(0.114), height: metres(0.07) };
    const lying = load({ inOven: inOven('tin', { tin }) });
    const cuts = cutsFor({ recipe: bread, dish: dishMade(bread), load: lying });
    expect(cuts).toEqual({ way: 'slices', pieces: 8 });
  });
});

describe('into the oven and out of it', () => {
  it('is in this order for a dough on paper: wall, paper, in, lid off, tabs, bottom, rack, rest', () => {
    expect(works(bread, load())).toEqual([
      'grease-wall',
      'lay-paper',
      'load-hot',
      'lid-off',
      'lift-by-tabs',
      'see-bottom',
      'to-rack',
      'rest',
      'cut',
      'keep-warm',
    ]);
  });

  it('looks at the bottom crust of every bread, whatever it lay on', () => {
    for (const contact of ['iron', 'paper', 'rack', 'tin', 'meal'] as const) {
      for (const kind of ['yeast-bread', 'quick-bread', 'biscuit', 'corn-bread'] as const) {
        const found = works({ ...bread, kind }, load({ inOven: inOven(contact) }));
        expect(found, `${kind} on ${contact}`).toContain('see-bottom');
      }
    }
  });

  it('heats the lid by itself only over a cold oven: a hot one has done it', () => {
    const hot = load({ inOven: inOven('iron', { lid: 'hot' }) });
    expect(works(bread, hot, false)).toContain('heat-lid');
    expect(works(bread, hot, true)).not.toContain('heat-lid');
  });

  it('pricks a thin round, not a thick one', () => {
    expect(works(bread, load({ thickness: metres(0.012) }))).toContain('dock');
    expect(works(bread, load({ thickness: metres(0.03) }))).not.toContain('dock');
  });

  it('takes 2 minutes of greasing, 2 or 3 of loading, 2 of taking out; a tin more of all', () => {
    const steps = (lying: OvenLoad) =>
      handlingOf({ recipe: bread, dish: dishMade(bread), load: lying, isHot: true });
    const parts = ['before', 'in', 'out'] as const;
    const spent = (lying: OvenLoad) => parts.map((when) => handMinutes(steps(lying), when));
    expect(spent(load())).toEqual([2, 2, 2]);
    expect(spent(load({ shape: 'pieces', inOven: inOven('iron') }))).toEqual([2, 3, 2]);
    expect(spent(load({ inOven: inOven('tin') }))).toEqual([3, 2, 3]);
    expect(spent(load({ inOven: inOven('rack') }))).toEqual([3, 2, 2]);
  });

  it('tells the model what lies between: one contact a bread, and an open lid only where it is hot', () => {
    for (const contact of ['iron', 'paper', 'rack', 'tin', 'meal'] as const) {
      for (const isHot of [true, false]) {
        const steps = handlingOf({
          recipe: bread,
          dish: dishMade(bread),
          load: load({ inOven: inOven(contact) }),
          isHot,
        });
        const kinds = steps.flatMap(({ effect }) => effect?.kind ?? []);
        expect(kinds).toEqual(isHot ? ['contact', 'lid-off'] : ['contact']);
      }
    }
  });

  it('sticks often on bare iron, never on paper (common practice)', () => {
    const risk = (contact: FloorContact) =>
      stickingOf({ recipe: bread, dish: dishMade(bread), load: load({ inOven: inOven(contact) }) });
    expect([risk('iron'), risk('rack'), risk('paper')]).toEqual(['often', 'seldom', 'no']);
  });
});

import { describe, expect, it } from 'vitest';
import { madeDough, madeFormula, madeIngredient, madeRecipe } from '../../validation/bake/made.ts';
import {
  hotLoaf,
  practiceAsked,
  practiceMinutes,
  practiceRows,
  usualLoaf,
} from '../../validation/bake/practice-times.ts';
import { grams } from '../quantity/unit.ts';
import { bakeFor } from './bake-for.ts';
import type { BakeRequest } from './bake-request.ts';

describe('loaves and rolls as menu/ lays them', () => {
  it('bake rolls in the 15 to 25 min of common practice, no source', () => {
    for (const row of practiceRows.filter(({ name }) => name.startsWith('rolls'))) {
      expect(practiceMinutes(row), `${row.name}, ${row.fahrenheit} F`).toBeGreaterThanOrEqual(
        row.least - 0.5,
      );
      expect(practiceMinutes(row), `${row.name}, ${row.fahrenheit} F`).toBeLessThanOrEqual(
        row.most,
      );
    }
  });

  it('bake a round of 900 g within 15 % of 40 to 55 min, one of 700 g not a third sooner (common practice, no source)', () => {
    for (const row of practiceRows.filter(({ name }) => name.startsWith('round'))) {
      const bound = row.massGrams === 700 ? 0.3 : 0.15;
      expect(1 - practiceMinutes(row) / row.least, row.name).toBeLessThan(bound);
      expect(practiceMinutes(row), row.name).toBeLessThanOrEqual(row.most);
    }
  });
});

describe('a bread that comes out otherwise than wished', () => {
  const codes = (own: Partial<BakeRequest>) =>
    bakeFor({ ...practiceAsked(hotLoaf), ...own }).notices.map(({ code }) => code);

  it('says that a face is dark, and looks for dark where it says so', () => {
    const plan = bakeFor(practiceAsked(usualLoaf));
    const dark = plan.notices.filter(({ code }) => code === 'BAKE_FACE_DARK');
    expect(dark.length).toBeGreaterThan(0);
    for (const { values } of dark) expect(plan.done[values.face as 'top' | 'bottom']).toBe('dark');
  });

  const wetter = (waterGrams: number, kind: 'yeast-bread' | 'quick-bread' = 'yeast-bread') => {
    const flour = madeIngredient('flour', 500, { part: 'flour' });
    const water = madeIngredient('water', waterGrams, { part: 'water' });
    const formula = madeFormula([flour, water]);
    const hydration = waterGrams / 500;
    const percentages = { hydration, fat: 0, salt: 0, sugar: 0, powder: 0, soda: 0, yeast: 0.01 };
    return {
      recipe: madeRecipe({ kind }),
      formula: { ...formula, flour: grams(500), percentages },
    } as Partial<BakeRequest>;
  };

  it('says that a dough with the water of a batter will not stand, and how much would (battersAndDoughs)', () => {
    expect(codes(wetter(860))).toContain('BAKE_TOO_WET_TO_STAND');
    const wet = bakeFor({ ...practiceAsked(hotLoaf), ...wetter(860) });
    const said = wet.notices.find(({ code }) => code === 'BAKE_TOO_WET_TO_STAND');
    const most = Number(said?.values.mostGrams);
    expect(most).toBeGreaterThan(400);
    expect(codes(wetter(most))).not.toContain('BAKE_TOO_WET_TO_STAND');
  });

  it('lets a bannock with as much water as flour pass, and a wet dough in a tin', () => {
    expect(codes(wetter(500, 'quick-bread'))).not.toContain('BAKE_TOO_WET_TO_STAND');
    const inTin = madeDough({ millimetres: 40, rise: 1.3 });
    const load = { ...inTin, inOven: { contact: 'tin', lid: 'cold', pieces: 'apart' } } as const;
    expect(codes({ ...wetter(860), load })).not.toContain('BAKE_TOO_WET_TO_STAND');
  });
});

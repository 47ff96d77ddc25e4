import { describe, expect, it } from 'vitest';
import { fireWish, rememberAnswers, rememberedAnswers, usualAnswers } from './answers.ts';
import { doors } from './doors.ts';

function storageOf(): Pick<Storage, 'getItem' | 'setItem'> {
  const kept = new Map<string, string>();
  return {
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
  };
}

describe('answers at the fire', () => {
  it('are kept, but no count of briquettes becomes one of shovels', () => {
    const storage = storageOf();
    rememberAnswers(storage, undefined, { ...usualAnswers(undefined), above: 19 });
    expect(rememberedAnswers(storage, 'briquettes').above).toBe(19);
    expect(rememberedAnswers(storage, 'wood-coals')).toEqual(usualAnswers('wood-coals'));
  });

  it('start anew where what was kept can not be read', () => {
    const storage = { getItem: () => '{' };
    expect(rememberedAnswers(storage, undefined)).toEqual(usualAnswers(undefined));
  });

  it('carry coals of other ages and a hot oven to the doors that ask about them', () => {
    const others = [{ above: 4, below: 2, litMinutes: 5 }];
    const answers = { ...usualAnswers(undefined), others, ironKelvin: 439 };
    for (const door of ['layout', 'what-now'] as const)
      expect(fireWish(door, answers, { ovenInches: 12 })).toMatchObject({
        others,
        ironKelvin: 439,
      });
    expect(fireWish('left', answers, { ovenInches: 12 })).toEqual({
      ...{ door: 'left', coals: 22, litMinutes: 30 },
      ...{ ironKelvin: 439, isAgeAssumed: true },
    });
    expect(fireWish('left', { ...answers, litMinutes: 40 }, { ovenInches: 12 })).toEqual({
      ...{ door: 'left', coals: 22, litMinutes: 40, ironKelvin: 439 },
    });
    expect(fireWish('layout', { ...answers, others: [] }, { ovenInches: 12 })).not.toHaveProperty(
      'others',
    );
  });

  it('make a wish for each door, and never a larger oven on a smaller', () => {
    for (const door of doors)
      expect(fireWish(door, usualAnswers(undefined), { ovenInches: 12 })).toMatchObject({ door });
    expect(
      fireWish('stack', { ...usualAnswers(undefined), upperInches: 16 }, { ovenInches: 10 }),
    ).toMatchObject({
      upperInches: 10,
    });
  });
});

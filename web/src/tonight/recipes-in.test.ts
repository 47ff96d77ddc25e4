import { describe, expect, it } from 'vitest';
import { demoCamps, readCampFile } from '#formats';
import { recipesIn } from './recipes-in.ts';

describe('the recipes of a camp', () => {
  it('can each be read again from a file that holds no other', () => {
    for (const { file } of demoCamps('2026-05-02')) {
      const found = recipesIn(JSON.stringify(file));
      const hot = file.recipes.filter(({ method }) => method !== 'none');
      expect(found.map(({ recipe }) => recipe)).toEqual(hot.map(({ id }) => id));
      for (const { camp, recipe } of found) {
        const read = readCampFile(camp);
        expect(read.ok && read.menu.recipes.map(({ id }) => id)).toEqual([recipe]);
      }
    }
  });

  it('are none where the camp is half typed', () => {
    expect(recipesIn('{"recipes":"none yet"}')).toEqual([]);
    expect(recipesIn('{"recipes":[null,{"id":"loaf"}]}')).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { claimedFree } from './title-claims.ts';

describe('what a title says is not in it (words: common practice, no source)', () => {
  it.each([
    ['Gluten-free skillet bread', ['gluten']],
    ['GLUTEN FREE & DAIRY FREE rolls', ['gluten', 'milk']],
    ['Egg-free corn bread', ['egg']],
    ['Eggless cake', ['egg']],
    ['Cobbler without nuts', ['tree-nut']],
    ['Bread free from milk and eggs', ['milk', 'egg']],
    ['Egg and dairy free scones', ['milk', 'egg']],
    ['Peanut-free bars', ['peanut']],
    ['Egg bread', []],
    ['Nut loaf', []],
    ['Free-range egg bread', []],
  ])('is read from its words alone: %s', (title, wanted) => {
    expect([...claimedFree(title)].toSorted()).toEqual([...wanted].toSorted());
  });
});

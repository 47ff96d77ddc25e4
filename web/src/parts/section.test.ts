import { describe, expect, it } from 'vitest';
import { sectionOf } from './section.ts';

describe('the part of the app that is marked', () => {
  it.each([
    ['/', 'tonight'],
    ['/fire/stack', 'fire'],
    ['/dough', 'dough'],
    ['/dough/fits', 'dough'],
    ['/paste', 'dough'],
    ['/bench/camp/x/rolls', 'dough'],
    ['/camps', 'camps'],
    ['/camp/x/dish/rolls', 'camps'],
    ['/slip/demo/x', 'camps'],
    ['/nowhere', undefined],
  ])('of %s is %s', (path, section) => {
    expect(sectionOf(path)).toBe(section);
  });
});

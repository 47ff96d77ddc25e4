import { describe, expect, it } from 'vitest';
import { nearestWord, wordDistance } from './nearest.ts';

describe('how far one word is from another', () => {
  // The two pairs that textbooks on edit distance use, and a neighbour swap; from memory, and easily
  // counted by hand.
  it.each([
    ['kitten', 'sitting', 3],
    ['saturday', 'sunday', 3],
    ['ab', 'ba', 1],
    ['', 'oven', 4],
    ['oven', 'oven', 0],
  ])('turns "%s" into "%s" in %i steps', (from, to, steps) => {
    expect(wordDistance(from, to)).toBe(steps);
    expect(wordDistance(to, from)).toBe(steps);
  });

  it('suggests what was meant, and nothing for what was not', () => {
    const keys = ['diameter', 'depth', 'style', 'keptFreeOf'];
    expect(nearestWord('diametre', keys)).toBe('diameter');
    expect(nearestWord('kept_free_of', keys)).toBe('keptFreeOf');
    expect(nearestWord('burner', keys)).toBeUndefined();
    expect(nearestWord('x'.repeat(5000), keys)).toBeUndefined();
  });
});

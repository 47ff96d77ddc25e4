// Textbook problems by name, answered by the stepper and the root search that everything rests on.

import { describe, expect, it } from 'vitest';
import { textbookAnswer, textbookCases } from '../../validation/numerics/textbook.ts';

describe('a textbook problem (cengel, bergman2011)', () => {
  it.each(textbookCases)('$name: $asked is $answer within $rounding ($where)', (asked) => {
    expect(Math.abs(textbookAnswer(asked) - asked.answer)).toBeLessThanOrEqual(asked.rounding);
  });

  it('is one of seven answers to six problems', () => {
    expect(textbookCases.length).toBe(7);
    expect(new Set(textbookCases.map(({ name }) => name)).size).toBe(6);
  });
});

import { describe, expect, it } from 'vitest';
import { codeLists } from '../../index.ts';
import { fixturePlan } from '../fixture.ts';
import { refusalText } from '../notice-text.ts';
import { sayFor } from '../speak.ts';
import { allWords } from './index.ts';

const codes = Object.values(codeLists).flatMap((list) => Object.keys(list));

describe('sentences for codes', () => {
  it('has one for every code of every stage, and none for a code that is gone', () => {
    expect(codes.filter((code) => allWords[code] === undefined)).toEqual([]);
    expect(Object.keys(allWords).filter((code) => !codes.includes(code))).toEqual([]);
  });

  it('gives a code to one stage only', () => {
    expect(new Set(codes).size).toBe(codes.length);
  });

  it('names the code where the words are missing', () => {
    const say = sayFor({ measures: 'us', clock: '24', plan: fixturePlan() });
    const unknown = {
      refused: true,
      code: 'NOT_A_CODE',
      about: {},
      values: {},
      conflicts: [],
    } as const;
    expect(refusalText(unknown, say)).toContain('NOT_A_CODE');
  });
});

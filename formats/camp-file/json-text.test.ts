import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readJson } from './json-text.ts';

describe('reading JSON', () => {
  it('agrees with the platform on every value that JSON can hold (rfc8259)', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6 }), fc.constantFrom(0, 2, '\t'), (value, indent) => {
        const text = JSON.stringify(value, null, indent);
        const read = readJson(text);
        expect(read.troubles).toEqual([]);
        expect(JSON.stringify(read.value)).toBe(JSON.stringify(JSON.parse(text)));
      }),
      { seed: 8259, numRuns: 500 },
    );
  });

  it('refuses exactly what the platform refuses, in torn and misspelt text (rfc8259)', () => {
    const whole = '{"a":[1,-2.5e3,"x\\n\\u00e9",true,false,null],"b":{"c":""}}';
    const letters = ['', ',', '}', ']', '"', '\\', '0', '-', '.', ' ', 'e', '\u0001'];
    const place = fc.nat(whole.length);
    fc.assert(
      fc.property(place, place, fc.constantFrom(...letters), (from, to, letter) => {
        const text =
          whole.slice(0, from) + letter + whole.slice(Math.min(from + (to % 3), whole.length));
        expect(readJson(text).troubles.length === 0).toBe(parses(text));
      }),
      { seed: 8259, numRuns: 2000 },
    );
  });

  it.each([
    ['{\n  "a": 1,\n  "b" 2\n}', 'line 3, column 7', '":"'],
    ['{"a": }', 'line 1, column 7', 'a value'],
    ['{"a": 1,}', 'line 1, column 9', 'a key in double quotes'],
    ['{"a": 1} x', 'line 1, column 10', 'the end of the file'],
    ['[1 2]', 'line 1, column 4', '"," or "]"'],
    ['{"a": "b', 'line 1, column 7', 'a double quote that ends the text'],
    ['{"a": "\\x"}', 'line 1, column 8', 'an escape such as \\" or \\n'],
    ['', 'line 1, column 1', 'a value'],
    ['{"a": 1e999}', 'line 1, column 7', 'a number of ordinary size'],
  ])('names line and column of %j', (text, path, wanted) => {
    expect(readJson(text).troubles).toMatchObject([{ code: 'FILE_NOT_JSON', path, wanted }]);
  });

  it('complains of a key that stands twice, which would be lost silently', () => {
    const { troubles } = readJson('{"ovens": [{"id": "A", "id": "B"}]}');
    expect(troubles).toMatchObject([{ code: 'FILE_KEY_TWICE', path: 'ovens[0].id' }]);
  });

  it('says which top-level parts were whole before the text broke off', () => {
    expect(readJson('{"id": "x", "hands": [{"id": 1}], "ovens": [{"id"').complete).toEqual([
      'id',
      'hands',
    ]);
  });

  it('stops at a depth that no camp has', () => {
    expect(readJson('['.repeat(100_000)).troubles).toMatchObject([{ code: 'FILE_TOO_DEEP' }]);
  });

  it('keeps a key called __proto__ as a plain key', () => {
    const { value } = readJson('{"__proto__": {"polluted": true}}');
    expect(Object.keys(value as object)).toEqual(['__proto__']);
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });
});

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

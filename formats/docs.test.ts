import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readCampFile, readQuantity, troubleSentence } from './index.ts';

const page = readFileSync(new URL('../docs/camp-file.md', import.meta.url), 'utf8');

describe('docs/camp-file.md', () => {
  const example = /```json\n([\s\S]*?)```/.exec(page)?.[1] ?? '';

  it('shows a camp file that is read without a complaint', () => {
    const read = readCampFile(example);
    expect(read.ok ? [] : read.troubles).toEqual([]);
  });

  it('shows a complaint as the reader makes it', () => {
    const read = readCampFile(example.replace('"diameter"', '"diametre"'));
    const trouble = read.ok ? undefined : read.troubles.find(({ found }) => found.includes('key'));
    expect(trouble?.path).toBe('ovens[0].diametre');
    const said = page.replace(/\n> /g, ' ');
    const sentence = trouble === undefined ? '' : troubleSentence(trouble);
    expect(said).toContain(sentence.slice(0, sentence.indexOf('diameter, style')));
    expect(said).toContain(trouble?.next);
  });

  it('lists only quantities that are read', () => {
    const rows = {
      length: 'length',
      weight: 'mass',
      volume: 'volume',
      temperature: 'temperature',
    } as const;
    for (const [row, kind] of Object.entries(rows)) {
      const line = page.split('\n').find((text) => text.startsWith(`| ${row}`)) ?? '';
      const samples = [...line.matchAll(/`"([^"]+)"`/g)].map((match) => match[1] ?? '');
      expect(samples.length).toBeGreaterThan(1);
      for (const text of samples) expect(readQuantity(kind, text), text).toBeTypeOf('number');
    }
  });
});

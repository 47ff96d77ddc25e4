import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { campFileJsonSchema } from './camp-file/json-schema.ts';
import committed from './camp-file.schema.json' with { type: 'json' };
import { demoSources, smallDemoSources } from './demo.ts';
import { mutantOf } from './fuzz.ts';
import { fileCodes, fileWords, readCampFile } from './index.ts';

describe('the published JSON Schema (draft 2020-12)', () => {
  it('is the one that the reader uses: run formats/write-schema.ts after a change', () => {
    expect(committed).toEqual(JSON.parse(JSON.stringify(campFileJsonSchema())));
  });

  // The validator is built from the committed schema alone; our own rules are not in it.
  const validator = z.fromJSONSchema(committed as Parameters<typeof z.fromJSONSchema>[0]);

  it.each(demoSources.map((file) => [file.id, file] as const))('lets %s through', (_, file) => {
    expect(validator.safeParse(file).error?.issues ?? []).toEqual([]);
  });

  it('lets through whatever the reader reads: 500 broken camps (but an older version)', () => {
    let bothRead = 0;
    for (let seed = 1; seed <= 500; seed += 1) {
      const { text, done } = mutantOf(smallDemoSources[seed % smallDemoSources.length], seed);
      const read = readCampFile(text);
      if (!read.ok || read.notices.some((each) => each.code === 'FILE_MIGRATED')) continue;
      const file: unknown = JSON.parse(text.replace('\uFEFF', ''));
      const issues = validator.safeParse(file).error?.issues ?? [];
      expect(issues, `seed ${seed}: ${done.join(', ')}`).toEqual([]);
      bothRead += 1;
    }
    expect(bothRead).toBeGreaterThan(50);
  });

  it('stops a camp with an unknown key, a missing key, a wrong word or a bare number', () => {
    const [file] = demoSources;
    const { place: _, ...missing } = file!;
    const broken = [
      missing,
      { ...file, plaec: {} },
      { ...file, mouths: [{ count: '4' }] },
      { ...file, fuel: { kind: 'gas' } },
      { ...file, ovens: [{ id: 'A', diameter: 12 }] },
      { ...file, ovens: [{ id: 'A', diameter: '12 parsec' }] },
    ];
    for (const one of broken) expect(validator.safeParse(one).success).toBe(false);
  });
});

describe('codes of the camp file', () => {
  it('have each one sentence, and no sentence is left over', () => {
    expect(Object.keys(fileWords).sort()).toEqual(Object.keys(fileCodes).sort());
  });
});

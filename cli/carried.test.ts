// One sheet of what is carried, in the terminal, and feeds by room and weight.

import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { SHEET_NAMES } from './carried-sheet.ts';
import { heard, testShell, UNSAYABLE } from './heard.ts';
import { realShell } from './shell.ts';

const camp = join(mkdtempSync(join(tmpdir(), 'emberwright-')), 'creek.camp.json');
const command = (...words: readonly string[]) => heard(words, { ...testShell, columns: 100 });

beforeAll(() => {
  const made = heard(['demo', 'pilcrow-creek', camp], realShell());
  expect(made.exit).toBe(0);
});

describe('emberwright plan --sheet', () => {
  it.each(SHEET_NAMES)('prints %s alone, in both measures', (name) => {
    for (const measures of ['us', 'metric']) {
      const { out } = command('plan', camp, '--sheet', name, '--measures', measures);
      expect(out.trim()).not.toBe('');
      expect(out).not.toMatch(UNSAYABLE);
      expect(out).not.toContain('Next: --dish');
    }
  });

  it('says which sheets there are where the name is another', () => {
    const { exit, error } = command('plan', camp, '--sheet', 'crates');
    expect(exit).toBe(3);
    expect(error).toContain('"crates"');
    expect(error).toContain(SHEET_NAMES.join(', '));
  });
});

describe('emberwright fits, by room and weight', () => {
  it('a regular 12-inch pot of 6 quarts at three quarters is 18 cups, 14 of 1 1/4 (L-23, ovenSizing)', () => {
    const { flat } = command('fits', '--what', 'pot', '--oven', '12 in', '--measures', 'us');
    expect(Math.floor((6 * 4 * 0.75) / 1.25)).toBe(14); // cups in a quart: nist-hb44
    expect(flat).toMatch(/Feeds 14 ordinary appetites: 1 1\/4 cups each/);
    expect(flat).toMatch(/what is printed for a size of oven is not used/);
  });
});

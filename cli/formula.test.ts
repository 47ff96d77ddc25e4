// The formula bench at the command line: what is printed, what is refused, and how it ends.

import { describe, expect, it } from 'vitest';
import { readyRecipes } from '#engine';
import { run } from './run.ts';
import { realShell } from './shell.ts';

function command(...words: readonly string[]) {
  let out = '';
  let error = '';
  const exit = run(words, {
    ...realShell(),
    today: '2026-09-01',
    nowMinutes: 720,
    columns: 100,
    out: (text) => {
      out += text;
    },
    error: (text) => {
      error += text;
    },
  });
  return { exit, out, error, flat: out.replaceAll(/\s+/g, ' ') };
}

const UNSAYABLE = /NaN|undefined|Infinity|\[object|not known|no words yet/;

describe('emberwright formula', () => {
  it('prints every bread that stands ready, in both measures, with nothing unsayable', () => {
    for (const { id, ingredients } of readyRecipes) {
      if (!ingredients.some(({ part }) => part === 'flour')) continue;
      for (const measures of ['us', 'metric']) {
        const { exit, flat } = command('formula', id, '--measures', measures);
        expect([id, exit]).toEqual([id, 0]);
        expect(flat).not.toMatch(UNSAYABLE);
        expect(flat).toMatch(/For 100 of flour/);
      }
    }
  });

  it('meets 62 % water and 540 g: by hand 540 / 1.7825 g of flour for a bread with 10 % lard', () => {
    const { exit, flat } = command(
      'formula',
      'fire-bread',
      '--target',
      '62 % water',
      '--mass',
      '540 g',
    );
    expect(exit).toBe(0);
    expect(flat).toMatch(/Whole dough 540 g, 62 % water/);
    expect(flat).toMatch(/all-purpose flour 400 g 303 g/);
  });

  it('fills an oven at the thickness of the recipe, as the menu does', () => {
    const { exit, flat } = command(
      'formula',
      'fire-bread',
      '--target',
      '62 % water',
      '--fill',
      '10 in',
    );
    expect(exit).toBe(0);
    expect(flat).toMatch(/What rounding costs/);
  });

  it('names what fights and the nearest that works, and ends with 1', () => {
    const { exit, flat } = command(
      ...['formula', 'fire-bread', '--mass', '540 g', '--hold', 'flour=600 g'],
    );
    expect(exit).toBe(1);
    expect(flat).toMatch(/The held all-purpose flour and the whole mass can't stand together/);
    expect(flat).toMatch(/The nearest that works/);
  });

  it('refuses 300 % water and names the wettest batter', () => {
    const { exit, flat } = command('formula', 'fire-bread', '--target', '300 % water');
    expect(exit).toBe(1);
    expect(flat).toMatch(/nearest that is: 250 %/);
  });

  it('swaps shortening for butter and shouts milk where there was none', () => {
    const { exit, flat } = command('formula', 'fire-bread', '--swap', 'lard=butter');
    expect(exit).toBe(0);
    expect(flat).toMatch(/DANGER: This brings MILK into it/);
    expect(flat).toMatch(/lard 40 g none/);
  });

  it('holds two recipes side by side and says who says so', () => {
    const { exit, flat } = command('formula', 'fire-bread', '--beside', 'biscuits');
    expect(exit).toBe(0);
    expect(flat).toMatch(/Less fat: less tender/);
    expect(flat).toMatch(/Who says so/);
  });

  it.each([
    [['--swap', 'moon dust=butter'], 3],
    [['--swap', 'lard=moon dust'], 1],
    [['--target', 'wet'], 3],
    [['--hold', 'moon dust'], 3],
    [['--mass', 'much'], 3],
  ] as const)('ends as help says for what it can not read: %j', (words, exit) => {
    const done = command('formula', 'fire-bread', ...words);
    expect(done.exit).toBe(exit);
    expect(done.error).toMatch(/wanted|Stop/);
  });
});

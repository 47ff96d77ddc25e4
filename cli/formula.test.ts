// The formula bench at the command line: what is printed, what is refused, and how it ends.

import { describe, expect, it } from 'vitest';
import { readyRecipes } from '#engine';
import { heard, UNSAYABLE } from './heard.ts';
import { run } from './run.ts';
import { realShell } from './shell.ts';

const command = (...words: readonly string[]) => heard(words);

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

  it('fills an oven with what `fits` says goes in, and both say how thick', () => {
    for (const [thick, oven] of [
      ['1/2 in', '10 in'],
      ['3/4 in', '12 in'],
      ['2 cm', '30 cm'],
    ] as const) {
      const filled = command('formula', 'fire-bread', '--fill', oven, '--thick', thick);
      const fits = command('fits', '--what', 'round', '--oven', oven, '--thick', thick);
      const [, mass] = /=== (.*?) in all/.exec(fits.flat) ?? [];
      expect(filled.flat).toContain(`regular ${mass} Rolled`);
      expect(filled.flat).toMatch(/Rolled to .* \(as you said; it draws together to/);
      expect(fits.flat).toMatch(/Rolled .* \(draws together to/);
    }
    expect(command('formula', 'fire-bread', '--fill', '10 in').flat).toMatch(
      /Thick, raw 1 in \(as the recipe has it\)/,
    );
  });

  it('refuses a weight beside a full oven by both names, with the thickness at which both hold', () => {
    // 540 g on a floor of 8.4 inches (0.0358 m2) at 1.1 g/cm3 lies 13.7 mm thick.
    const done = command('formula', 'fire-bread', '--mass', '540 g', '--fill', '25.4 cm');
    expect(done.exit).toBe(1);
    const error = done.error.replaceAll('\u00a0', ' ');
    expect(error).toMatch(/whole mass of 540 g and a full 25 cm oven can't stand together/);
    expect(error).toMatch(/540 g fills it if it lies 1\.4 cm thick/);
    const agreed = ['--mass', '985 g', '--fill', '10 in'];
    expect(command('formula', 'fire-bread', ...agreed).exit).toBe(0);
  });

  it('names what fights and the nearest that works, and ends with 1', () => {
    const { exit, flat } = command(
      ...['formula', 'fire-bread', '--mass', '540 g', '--hold', 'flour=600 g'],
    );
    expect(exit).toBe(1);
    expect(flat).toMatch(/The held all-purpose flour and the whole mass can't stand together/);
    expect(flat).toMatch(/The nearest that works/);
  });

  it('holds two flours together, and tells by bakersPercent what goes with them', () => {
    const { exit, flat } = command(
      ...['formula', 'soda-bread', '--hold', 'all-purpose flour=300 g'],
      ...['--hold', 'wholemeal flour=200 g', '--target', '62 % water', '--target', '6 % fat'],
    );
    expect(exit).toBe(0);
    expect(flat).toMatch(/62 % water/);
    expect(flat).toMatch(/all-purpose flour 300 g 300 g/);
    expect(flat).toMatch(/wholemeal flour 200 g 200 g/);
    // 62 % of 500 g is 310 g of water, in buttermilk of 90.1 % (sr28 NDB 01088): 344 g.
    expect(flat).toMatch(/buttermilk 385 g 344 g/);
    const both = command('formula', 'soda-bread', '--hold', 'flour', '--target', '62 % water');
    expect(both.flat).toMatch(/all-purpose flour 300 g 300 g.*wholemeal flour 200 g 200 g/);
  });

  it('names both flours where they fight with the mass, and one flour held at two weights', () => {
    const mass = command(
      ...['formula', 'soda-bread', '--hold', 'all-purpose flour=300 g'],
      ...['--hold', 'wholemeal flour=400 g', '--mass', '600 g'],
    );
    expect(mass.exit).toBe(1);
    expect(mass.flat).toMatch(
      /held all-purpose flour, the held wholemeal flour and the whole mass can't stand together/,
    );
    expect(mass.flat).toMatch(/The nearest that works .*300 g .*400 g/);
    const twice = ['--hold', 'all-purpose flour=300 g', '--hold', 'all-purpose flour=200 g'];
    const done = command('formula', 'soda-bread', ...twice);
    expect(done.exit).toBe(3);
    expect(done.error).toMatch(/all-purpose flour held at 300 g and, .*, at 200 g/);
    const alike = ['--hold', 'all-purpose flour=300 g', '--hold', 'all-purpose flour=300 g'];
    expect(command('formula', 'soda-bread', ...alike).exit).toBe(0);
    const all = ['--hold', 'flour', '--hold', 'wholemeal flour=400 g'];
    expect(command('formula', 'soda-bread', ...all).error).toMatch(/whole wheat|wholemeal/);
  });

  it('refuses 300 % water and names the wettest that is published for its kind (bannocks)', () => {
    const { exit, flat } = command('formula', 'fire-bread', '--target', '300 % water');
    expect(exit).toBe(1);
    expect(flat).toMatch(/nearest in published fire breads: 100 %/);
    expect(flat).not.toMatch(UNSAYABLE);
    expect(flat).toMatch(/The nearest that works .*Whole dough .* 100 % water/);
  });

  it('refuses to hold the flour at nothing, and names the flour that the water would take', () => {
    const { exit, flat } = command('formula', 'fire-bread', '--hold', 'flour=0 g');
    expect(exit).toBe(1);
    expect(flat).toMatch(/There is no flour in this\. With the water in it, 49\d g/); // 312 g / 0.63
  });

  it('swaps shortening for butter and shouts milk where there was none', () => {
    const { exit, flat } = command('formula', 'fire-bread', '--swap', 'lard=butter');
    expect(exit).toBe(0);
    expect(flat).toMatch(/DANGER: This brings MILK into it/);
    expect(flat).toMatch(/lard 40 g none/);
  });

  it('knows a food with its hyphen and without', () => {
    const texts = ['self-rising', 'self rising flour'].map(
      (to) => command('formula', 'biscuits', '--swap', `flour=${to}`).flat,
    );
    expect(texts[0]).toMatch(/self-rising flour – [\d,]+ g/);
    expect(texts[1]).toBe(texts[0]);
  });

  it('names a slipped spoon, and soda that finds no acid (sodaChemistry)', () => {
    const stdin = (text: string) => {
      let out = '';
      run(['formula', '-'], {
        ...realShell(),
        columns: 100,
        readText: () => text,
        readBytes: () => new TextEncoder().encode(text),
        out: (more: string) => {
          out += more;
        },
        error: () => {},
      } as Parameters<typeof run>[1]);
      return out.replaceAll(/\s+/g, ' ');
    };
    expect(stdin('Salty\n2 cups flour\n1 cup water\n3 tbsp salt\n1 tbsp baking powder\n')).toMatch(
      /Saltier than any of the published fire breads: 21.6 %, not 1 %. Look for a slipped spoon/,
    );
    // Plain milk has next to no acid: all but a trace of 20 g stays.
    expect(stdin('Soda\n500 g flour\n400 g milk\n10 g salt\n20 g baking soda\n')).toMatch(
      /About (19|20)(\.\d)? g of soda finds no acid, .*Less soda, or buttermilk/,
    );
  });

  it('says of a stew that it has no flour, and what a portion holds; refuses shares of none', () => {
    const { flat } = command('formula', 'beef-stew');
    expect(flat).toMatch(/no flour in this, so it has no baker’s percentages/);
    expect(flat).toMatch(/A portion, one of 8/);
    expect(flat).toMatch(/Water in it.*Fat in it.*Salt in it/s);
    expect(flat).not.toMatch(/soft dough|baker's %/);
    const wished = command('formula', 'beef-stew', '--target', '62 % water');
    expect(wished.error).toMatch(/no dough in it/);
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
    [['--thick', '1/2 in'], 3],
    [['--fill', '10 in', '--thick', '0 in'], 3],
    [['--fill', '40 in'], 1],
    [['--fill', '8 in', '--thick', '4 in'], 1],
  ] as const)('ends as help says for what it can not read: %j', (words, exit) => {
    const done = command('formula', 'fire-bread', ...words);
    expect(done.exit).toBe(exit);
    expect(done.error).toMatch(/wanted|Stop/);
  });
});

import { describe, expect, it } from 'vitest';
import { readCampFile } from '#formats';
import { run } from './run.ts';
import { realShell } from './shell.ts';

const shell = { ...realShell(), today: '2026-09-01', nowMinutes: 720, columns: 100 };
const LETTER =
  'Ridge biscuits\nMy aunt swore by it.\n2 cups flour\n1 tbsp baking powder\n1/2 tsp salt\n' +
  '1/3 cup lard\n3/4 to 1 cup milk\n1 dollop moonshine\n\nMix. Pat 3/4 inch thick and cut rounds.\n' +
  'Bake 15 minutes at 425. Makes 12 biscuits.\n';

function command(text: string, ...words: readonly string[]) {
  let out = '';
  let error = '';
  const files = new Map<string, string>();
  const exit = run(words, {
    ...shell,
    readText: (path) => files.get(path) ?? text,
    write: (path, content) => void files.set(path, String(content)),
    out: (more) => {
      out += more;
    },
    error: (more) => {
      error += more;
    },
  });
  return { exit, out, error, files, flat: out.replaceAll(/\s+/g, ' ') };
}

describe('a bread that is none', () => {
  it.each([
    ['no flour', 'Odd bread\n0 cups flour\n1 cup water\n1 tsp salt\nBake 30 minutes.\n'],
    ['300 % water', 'Odd bread\n100 g flour\n300 g water\n2 g salt\nBake 30 minutes.\n'],
  ])('with %s is refused with what would do, and no coals are laid for it', (_, text) => {
    const { flat } = command(text, 'tonight', '--what', 'odd.txt', '--oven', '12 in');
    expect(flat).toContain('can not be planned as it stands');
    expect(flat).toMatch(/no flour in this|wetter than any batter/);
    expect(flat).not.toMatch(/on the rim/);
  });
});

describe('read-in', () => {
  it('says so where a second food stands behind "plus" and is not weighed', () => {
    const { flat } = command(
      LETTER.replace('1/3 cup lard', '1 cup water plus 2 T oil'),
      ...['read-in', 'letter.txt'],
    );
    expect(flat).toMatch(/oil stands in the same line and is not/);
  });

  it('shows each line, what it was read as and weighs by sr28, and what was not understood', () => {
    const { exit, flat } = command(LETTER, 'read-in', 'letter.txt', '--measures', 'metric');
    expect(exit).toBe(0);
    expect(flat).toContain('2 cups flour all-purpose flour 250 g 225 g to 275 g');
    expect(flat).toContain('Kind biscuit');
    expect(flat).toContain('Makes 6 portions, 12 biscuits');
    expect(flat).toContain('powder 5.5 %'); // 13.8 g of 250 g
    expect(flat).toMatch(/Not understood.*My aunt swore by it\./);
    expect(flat).toContain('moonshine');
  });

  it('takes the cook at their word for kind and portions, and refuses words that it does not know', () => {
    const told = command(LETTER, 'read-in', '-', '--kind', 'quick-bread', '--serves', '9');
    expect(told.flat).toContain('Kind quick bread');
    expect(told.flat).toContain('Makes 9 portions');
    expect(command(LETTER, 'read-in', '-', '--kind', 'pudding').exit).toBe(3);
    expect(command(LETTER, 'read-in', '-', '--serves', 'many').exit).toBe(3);
  });

  it('writes a recipe that a camp file takes', () => {
    const { files } = command(LETTER, 'read-in', 'letter.txt', '--save', 'biscuits.json');
    const recipe = JSON.parse(files.get('biscuits.json')!) as { readonly id: string };
    const camp = readCampFile({
      emberwright: 'camp',
      version: 1,
      id: 'one',
      title: 'One',
      place: { name: 'Here' },
      mouths: [{ count: 4 }],
      menu: [{ id: 'bread', recipe: recipe.id, serve: '18:00' }],
      recipes: [recipe],
    });
    expect(camp.ok).toBe(true);
  });

  it('says what is wrong with a text that is none, or far too long', () => {
    const empty = command('  \n', 'read-in', 'a.txt');
    expect([empty.exit, empty.error]).toEqual([2, expect.stringContaining('nothing to read')]);
    const huge = command('1 cup flour\n'.repeat(90_000), 'read-in', 'a.txt');
    expect([huge.exit, huge.error]).toEqual([2, expect.stringContaining('one recipe at a time')]);
    expect(command('nothing that is food', 'read-in', 'a.txt').exit).toBe(1);
  });
});

describe('tonight', () => {
  it('takes a recipe in plain text and says how much of it was read', () => {
    const { exit, out, error } = command(
      LETTER,
      'tonight',
      '--what',
      'letter.txt',
      '--oven',
      '12 in',
    );
    expect(exit).toBe(0);
    expect(out).toContain('Ridge biscuits');
    expect(error).toContain('6 ingredients, 2 places not understood');
  });
});

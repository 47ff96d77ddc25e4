import { describe, expect, it } from 'vitest';
import { readCampFile } from '#formats';
import { heard, testShell } from './heard.ts';

const LETTER =
  'Ridge biscuits\nMy aunt swore by it.\n2 cups flour\n1 tbsp baking powder\n1/2 tsp salt\n' +
  '1/3 cup lard\n3/4 to 1 cup milk\n1 dollop moonshine\n\nMix. Pat 3/4 inch thick and cut rounds.\n' +
  'Bake 15 minutes at 425. Makes 12 biscuits.\n';

function command(text: string, ...words: readonly string[]) {
  const files = new Map<string, string>();
  const said = heard(words, {
    ...testShell,
    readText: (path) => files.get(path) ?? text,
    write: (path, content) => void files.set(path, String(content)),
  });
  return { ...said, files };
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
  it('weighs a second food behind "plus" as well (two spoons of 13.6 g, sunflower oil)', () => {
    const { flat } = command(
      LETTER.replace('1/3 cup lard', '1 cup water plus 2 T oil'),
      ...['read-in', 'letter.txt', '--measures', 'metric'],
    );
    expect(flat).toMatch(/1 cup water water 237 g/);
    expect(flat).toMatch(/2 T oil sunflower oil 27 g/);
    expect(flat).not.toMatch(/stands in the same line/);
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

describe('what a pasted recipe says of its own baking, and what nobody can weigh', () => {
  const TOLD =
    'Gluten-free pan bread\n2 cups flour and 1 tsp salt\n1 tbsp baking powder\na lump of lard\n' +
    '3/4 cup milk\nMix. Let rest 10 minutes. Bake 30 min at 375 F, 17 coals on top, 8 below, until 200 F inside.\n';

  it("stands on the card beside ours, the writer's heat, minutes, middle and coals", () => {
    const { flat } = command(TOLD, 'tonight', '--what', 'told.txt', '--oven', '12 in');
    expect(flat).toContain('As the writer bakes it');
    expect(flat).toMatch(/Heat in the oven 375 °F/);
    expect(flat).toMatch(/Time in the oven 30 min \(here likely/);
    expect(flat).toMatch(/Done inside at 200 °F/);
    expect(flat).toMatch(/Coals 17 above and 8 below \(here \d+ above and \d+ below\)/);
  });

  it('is left out of the sum by its line, with what to do, and never a gram', () => {
    const { flat } = command(TOLD, 'tonight', '--what', 'told.txt', '--oven', '12 in');
    expect(flat).toMatch(
      /Lard \("a lump"\) has no weight: .* Write its grams, or add it as a food/,
    );
    expect(flat).toMatch(/lard not known recipe: a lump/);
  });

  it('is called what it is not, which is a danger', () => {
    const { flat } = command(TOLD, 'tonight', '--what', 'told.txt', '--oven', '12 in');
    expect(flat).toMatch(/called free of gluten, and it is NOT: all-purpose flour holds it/);
  });

  it('goes into a camp file and comes back the same', () => {
    const { files } = command(TOLD, 'read-in', 'told.txt', '--save', 'told.json');
    const recipe = JSON.parse(files.get('told.json')!);
    const { writer } = recipe.target;
    expect([writer.coalsAbove, writer.coalsBelow]).toEqual([17, 8]);
    const lard = recipe.ingredients.find(({ name }: { name: string }) => name === 'lard');
    expect([lard.unweighed, lard.weight]).toEqual([true, undefined]);
    const again = command(
      files.get('told.json')!,
      ...['tonight', '--what', 'told.json', '--oven', '12 in'],
    );
    expect(again.flat).toMatch(/Coals 17 above and 8 below/);
    expect(again.flat).toMatch(/lard not known recipe: a lump/);
  });
});

import { describe, expect, it } from 'vitest';
import { readCampFile } from '#formats';
import { answerTo } from '../worker/answer.ts';
import type { Answers } from '../worker/messages.ts';
import type { PasteQuestion } from '../worker/paste-messages.ts';
import { ownFoodsIn } from './own-foods.ts';
import { rememberedPaste, rememberPaste, withLine, withRecipe } from './pasted.ts';

const TEXT =
  'Ridge biscuits\n2 cups flour\n1 tbsp baking powder\n1 dollop moonshine\n1 cup milk\nMix. Cut rounds. Bake 15 min at 425 F. Makes 12 biscuits.';
const MILL = {
  ...{ id: 'mill', part: 'flour', label: 'eu', kilocalories: 348, fat: 1.4 },
  ...{ carbohydrate: 71, fibre: 3.2, protein: 11.5, salt: 0, contains: ['wheat'] },
  measures: { cup: '132 g' },
};
const voice = { measures: 'metric', clock: '24' } as const;
const paste = async (text: string, corrections = {}) =>
  (await answerTo({ ask: 'paste', text, corrections, voice })) as Answers['paste'];

async function read(text: string, corrections = {}) {
  const answer = await paste(text, corrections);
  if (!answer.ok) throw new Error(answer.text);
  return answer;
}

describe('a pasted recipe on screen', () => {
  it('has a line for every letter of it, each with what it was read as and whether to look', async () => {
    const { lines } = await read(TEXT);
    expect(lines.map(({ text }) => text).join('')).toBe(TEXT);
    expect(lines.map(({ state }) => state)).toEqual([
      'understood',
      'understood',
      'understood',
      'open',
      'understood',
      'understood',
    ]);
    expect(lines[1]?.readAs).toContain('all-purpose flour');
    expect(lines[1]?.choices.map(({ key }) => key)).toContain('bread-flour');
  });

  it('follows a line that is written otherwise, a food that is chosen and a line that is no step', async () => {
    const first = await read(TEXT);
    const changed = withLine({ text: TEXT, corrections: {} }, first.lines, {
      piece: 3,
      text: '1/4 tsp salt',
    });
    expect(changed.text).toBe(TEXT.replace('1 dollop moonshine', '1/4 tsp salt'));
    const next = await read(changed.text, { foods: { 1: 'bread-flour' }, roles: { 0: 'note' } });
    expect(next.lines.map(({ state }) => state)).not.toContain('open');
    expect(next.lines[1]?.food).toBe('bread-flour');
    expect(next.lines[0]?.role).toBe('note');
  });

  it('goes into tonight as a camp file that can be read, and into a camp under a free name', async () => {
    const { recipe, file } = await read(TEXT);
    expect(readCampFile(recipe!.camp).ok).toBe(true);
    const camp = withRecipe(withRecipe(recipe!.camp, file!), file!);
    const found = readCampFile(camp);
    expect(found.ok && found.menu.recipes.map(({ id }) => id)).toEqual([
      'ridge-biscuits',
      'ridge-biscuits-2',
      'ridge-biscuits-3',
    ]);
  });

  it('is planned for tonight with the amounts that were read', async () => {
    const { recipe } = await read(TEXT);
    const wish = {
      today: '2026-05-02',
      nowMinutes: 900,
      timeZone: 'UTC',
      what: recipe!,
      ovenInches: 12,
      ovenStyle: 'regular',
    } as const;
    const card = (await answerTo({ ask: 'tonight', wish, voice })) as Answers['tonight'];
    expect(card.canGrow).toBe(true);
    expect(JSON.stringify(card.card)).toMatch(/Ridge biscuits/);
    expect(JSON.stringify(card.card)).not.toMatch(/NaN|undefined/);
  });

  it('knows the foods of the cook’s own camps, and takes them along', async () => {
    const camp = {
      foods: [
        { ...MILL, name: 'Mill flour' },
        { ...MILL, name: 'Mill malt' },
      ],
    };
    const camps = [{ file: JSON.stringify(camp) }, { file: '{' }, { file: JSON.stringify(camp) }];
    const own = ownFoodsIn(camps);
    expect(own.map(({ id }) => id)).toEqual(['mill', 'mill-2']);
    const text =
      'Camp biscuits\n2 cups mill flour\n1 tbsp baking powder\n1 cup milk\nMix. Bake 15 min.';
    const answer = (await answerTo({
      ...{ ask: 'paste', text, corrections: {}, voice },
      foods: [{ id: 'half', name: 'Half typed' }, ...own],
    } as PasteQuestion)) as Answers['paste'];
    if (!answer.ok) throw new Error(answer.text);
    // 2 cups of 132 g, as the label of the test says.
    expect(answer.lines[1]).toMatchObject({ food: 'mill', state: 'understood' });
    expect(answer.lines[1]!.readAs).toMatch(/264\sg/);
    expect(answer.foods).toEqual([own[0]]);
    expect(readCampFile(answer.recipe!.camp).ok).toBe(true);
    const other = JSON.parse(answer.recipe!.camp);
    const taken = { ...other, foods: [{ ...own[0], name: 'Another' }] };
    const found = readCampFile(withRecipe(JSON.stringify(taken), answer.file!, answer.foods));
    expect(found.ok && found.menu.foods?.map(({ key }) => key)).toEqual(['mill', 'mill-2']);
    expect(found.ok && found.menu.recipes.at(-1)!.ingredients[0]!.own?.name).toBe('Mill flour');
    const again = withRecipe(answer.recipe!.camp, answer.file!, answer.foods);
    expect(JSON.parse(again).foods).toHaveLength(1);
  });

  it('says why where it can not be read at all', async () => {
    const answer = await paste('1 cup flour\n'.repeat(9000));
    expect(answer.ok ? '' : answer.text).toMatch(/one recipe at a time/);
  });

  it('is remembered, and forgotten where what was kept makes no sense', () => {
    const kept = new Map<string, string>();
    const storage = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
    };
    expect(rememberedPaste(storage).text).toBe('');
    rememberPaste(storage, { text: TEXT, corrections: { kind: 'biscuit' } });
    expect(rememberedPaste(storage)).toEqual({ text: TEXT, corrections: { kind: 'biscuit' } });
    for (const key of kept.keys()) kept.set(key, '{"text":7}');
    expect(rememberedPaste(storage).text).toBe('');
  });
});

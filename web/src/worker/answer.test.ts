import { describe, expect, it } from 'vitest';
import { readyRecipes, tonightWords } from '#engine';
import { readCampFile } from '#formats';
import { answerTo } from './answer.ts';
import type { Answers, TonightFood, TonightWish, Voice } from './messages.ts';

const metric: Voice = { measures: 'metric', clock: '24' };
const wishFor = (what: TonightFood, more: Partial<TonightWish> = {}): TonightWish => ({
  today: '2026-05-02',
  nowMinutes: 15 * 60,
  timeZone: 'UTC',
  what,
  ovenInches: 12,
  ovenStyle: 'regular',
  ...more,
});
const tonight = async (wish: TonightWish, voice = metric) =>
  (await answerTo({ ask: 'tonight', wish, voice })) as Answers['tonight'];
const grown = async (wish: TonightWish) =>
  (await answerTo({ ask: 'grow', wish })) as Answers['grow'];
const meal = async (file: string) =>
  (await answerTo({ ask: 'meal', file, voice: metric })) as Answers['meal'];
const demos = (await answerTo({ ask: 'demos', today: '2026-05-02' })) as Answers['demos'];

describe('the front door', () => {
  it('has a card for every ready recipe, on both fuels, and a camp that can be read again', async () => {
    for (const { id } of readyRecipes) {
      for (const fuel of ['briquettes', 'wood-coals'] as const) {
        const wish = wishFor({ readyRecipe: id }, { fuel, pieceGrams: 22 });
        const { card, canGrow } = await tonight(wish);
        expect(JSON.stringify(card)).not.toMatch(/NaN|undefined|Infinity|no words yet/);
        const codes = card.blocks.flatMap((block) => ('code' in block ? [block.code] : []));
        expect(codes.filter((code) => code && tonightWords[code] === undefined)).toEqual([]);
        expect(canGrow).toBe(true);
        expect(readCampFile((await grown(wish))?.file).ok).toBe(true);
      }
    }
  });

  it('fetches the other sentences where a card comes to say something unusual', async () => {
    const { card } = await tonight(
      wishFor({ readyRecipe: 'round-loaf' }, { height: { metres: 9500 } }),
    );
    expect(tonightWords.CAMP_ELEVATION_OUTSIDE_RANGE).toBeUndefined();
    expect(JSON.stringify(card)).toContain('No camp lies at 9,500\u00a0m');
  });

  it('has a card for a dough of one’s own, by kind, thickness and amount', async () => {
    const own = { kind: 'quick-bread', thicknessMetres: 0.03, massGrams: 900 } as const;
    const { card } = await tonight(wishFor(own));
    expect(card.title).toBe('Your quick bread');
    expect(JSON.stringify(card)).toContain('900');
    expect(card.blocks.find((block) => block.type === 'figures')).toBeDefined();
  });

  it('makes the recipe as written until the cook says another amount', async () => {
    for (const readyRecipe of ['soda-bread', 'round-loaf', 'rolls']) {
      const { portions } = readyRecipes.find(({ id }) => id === readyRecipe)!;
      const { amount } = await tonight(wishFor({ readyRecipe }));
      expect(amount).toMatchObject({ portions, written: portions });
      const other = await tonight(wishFor({ readyRecipe, portions: 6 }));
      expect(other.amount).toMatchObject({ portions: 6, written: portions });
      expect(other.amount?.mass).not.toBe(amount?.mass);
    }
  });

  it('serves as soon as it can be, where no time is wished', async () => {
    const { card } = await tonight(wishFor({ readyRecipe: 'round-loaf' }));
    expect(
      card.blocks.filter((block) => block.type === 'notice' && block.level === 'stop'),
    ).toEqual([]);
  });

  it('says in words why a wish is refused, and hands out no camp', async () => {
    const wish = wishFor({ readyRecipe: 'round-loaf' }, { eatAtMinutes: 60 });
    const { card, canGrow } = await tonight(wish);
    expect(canGrow).toBe(false);
    expect(await grown(wish)).toBeUndefined();
    expect(card.blocks[0]).toMatchObject({ type: 'notice', level: 'stop' });
    expect(JSON.stringify(card)).not.toMatch(/no words yet/);
  });
});

describe('a recipe of one’s own', () => {
  it('is taken from a camp file for the front door', async () => {
    const file = JSON.parse(demos[0]!.file) as { recipes: { id: string; name: string }[] };
    const { id, name } = file.recipes.find(({ name }) => /loaf/i.test(name))!;
    const { card, canGrow } = await tonight(wishFor({ camp: demos[0]!.file, recipe: id, name }));
    expect(card.title).toBe(name);
    expect(canGrow).toBe(true);
  });

  it('is refused in words where its camp file can no longer be read', async () => {
    const { card, canGrow } = await tonight(
      wishFor({ camp: '{', recipe: 'family-loaf', name: 'Family loaf' }),
    );
    expect(canGrow).toBe(false);
    expect(card.blocks[0]).toMatchObject({ type: 'notice', level: 'stop' });
  });
});

describe('a ready recipe', () => {
  it('can be put into any camp file as it is handed out', async () => {
    const file = JSON.parse(demos[0]!.file) as { recipes: { id: string }[] };
    for (const { id } of readyRecipes) {
      const recipe = await answerTo({ ask: 'ready-recipe', id });
      const others = file.recipes.filter((each) => each.id !== id);
      const added = JSON.stringify({ ...file, recipes: [...others, recipe] });
      expect(readCampFile(added).ok).toBe(true);
    }
  });
});

describe('a camp', () => {
  it('has every sheet, for each of the demo camps', async () => {
    for (const { file } of demos) {
      const { sheets, troubles } = await meal(file);
      expect(troubles).toEqual([]);
      const menu = (JSON.parse(file) as { menu: readonly { id: string }[] }).menu;
      expect(sheets?.dishCards.map(({ dish }) => dish)).toEqual(menu.map(({ id }) => id));
      expect(JSON.stringify(sheets)).not.toMatch(/NaN|undefined|Infinity/);
    }
  });

  it('is answered with the places that can’t be read, and no sheets', async () => {
    const file = JSON.parse(demos[0]!.file) as { mouths: unknown[] };
    file.mouths = [{ count: 'a few' }];
    const { sheets, troubles } = await meal(JSON.stringify(file));
    expect(sheets).toBeUndefined();
    expect(troubles).toMatchObject([{ path: 'mouths[0].count' }]);
  });
});

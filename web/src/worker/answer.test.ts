import { describe, expect, it } from 'vitest';
import { starters } from '#engine';
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
const tonight = (wish: TonightWish, voice = metric) =>
  answerTo({ ask: 'tonight', wish, voice }) as Answers['tonight'];
const meal = (file: string) => answerTo({ ask: 'meal', file, voice: metric }) as Answers['meal'];
const demos = answerTo({ ask: 'demos', today: '2026-05-02' }) as Answers['demos'];

describe('the front door', () => {
  it('has a card for every ready recipe, on both fuels, and a camp that can be read again', () => {
    for (const { id } of starters) {
      for (const fuel of ['briquettes', 'wood-coals'] as const) {
        const answer = tonight(wishFor({ starter: id }, { fuel, pieceGrams: 22 }));
        expect(JSON.stringify(answer.card)).not.toMatch(/NaN|undefined|Infinity|no words yet/);
        expect(readCampFile(answer.camp?.file).ok).toBe(true);
      }
    }
  });

  it('has a card for a dough of one’s own, by kind, thickness and amount', () => {
    const own = { kind: 'quick-bread', thicknessMetres: 0.03, massGrams: 900 } as const;
    const { card } = tonight(wishFor(own));
    expect(card.title).toBe('Your quick bread');
    expect(JSON.stringify(card)).toContain('900');
    expect(card.blocks.find((block) => block.type === 'figures')).toBeDefined();
  });

  it('serves as soon as it can be, where no time is wished', () => {
    const { card } = tonight(wishFor({ starter: 'round-loaf' }));
    expect(
      card.blocks.filter((block) => block.type === 'notice' && block.level === 'stop'),
    ).toEqual([]);
  });

  it('says in words why a wish is refused, and hands out no camp', () => {
    const { card, camp } = tonight(wishFor({ starter: 'round-loaf' }, { eatAtMinutes: 60 }));
    expect(camp).toBeUndefined();
    expect(card.blocks[0]).toMatchObject({ type: 'notice', level: 'stop' });
    expect(JSON.stringify(card)).not.toMatch(/no words yet/);
  });
});

describe('a camp', () => {
  it('has every sheet, for each of the demo camps', () => {
    for (const { file } of demos) {
      const { sheets, troubles } = meal(file);
      expect(troubles).toEqual([]);
      const menu = (JSON.parse(file) as { menu: readonly { id: string }[] }).menu;
      expect(sheets?.dishCards.map(({ dish }) => dish)).toEqual(menu.map(({ id }) => id));
      expect(JSON.stringify(sheets)).not.toMatch(/NaN|undefined|Infinity/);
    }
  });

  it('is answered with the places that can’t be read, and no sheets', () => {
    const file = JSON.parse(demos[0]!.file) as { mouths: unknown[] };
    file.mouths = [{ count: 'a few' }];
    const { sheets, troubles } = meal(JSON.stringify(file));
    expect(sheets).toBeUndefined();
    expect(troubles).toMatchObject([{ path: 'mouths[0].count' }]);
  });
});

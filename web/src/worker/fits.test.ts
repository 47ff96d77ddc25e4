// The room screen's answers. Truth: plane geometry, and the trade figure of half an inch of dough in
// a 10-inch oven (common practice, no source: 568 g within 15 %).

import { describe, expect, it } from 'vitest';
import type { SheetDocument } from '#engine';
import { answerTo } from './answer.ts';
import type { FitsQuestion } from './fits-messages.ts';

const TEN = { inches: 10, style: 'regular' } as const;

const ask = async (part: Partial<FitsQuestion>): Promise<SheetDocument> =>
  (await answerTo({
    ask: 'fits',
    what: { kind: 'round' },
    ovens: [TEN],
    isMost: !('amountGrams' in part) && part.ovens?.length !== 0 && (part.ovens?.length ?? 1) < 2,
    lying: { thickMetres: 0.0127 },
    voice: { measures: 'metric', clock: '24' },
    ...part,
  })) as SheetDocument;

const massOf = ({ blocks }: SheetDocument): number => {
  const figures = blocks.find((block) => block.type === 'figures')?.figures ?? [];
  const [, number = '', unit] = /([\d.]+)\s(k?g)/.exec(figures[0]?.figure ?? '') ?? [];
  return Number(number) * (unit === 'kg' ? 1000 : 1);
};
const textOf = (sheet: SheetDocument) => JSON.stringify(sheet);

describe('what fits, as the app asks it', () => {
  it('fills a 10-inch oven at half an inch with about 568 g (common practice, no source)', async () => {
    const mass = massOf(await ask({}));
    expect(Math.abs(mass / 568 - 1)).toBeLessThanOrEqual(0.15);
    const narrow = massOf(await ask({ ovens: [{ ...TEN, floorMetres: 0.15 }] }));
    const wide = massOf(await ask({ ovens: [{ ...TEN, floorMetres: 0.21 }] }));
    expect(wide / narrow).toBeCloseTo((0.21 / 0.15) ** 2, 1);
  });

  it('lays less than all in the middle, and says of too much what is left over', async () => {
    expect(textOf(await ask({ amountGrams: 300 }))).toMatch(/floor free around it/);
    const tooMuch = textOf(await ask({ amountGrams: 2500 }));
    expect(tooMuch).toMatch(/left over/);
    expect(tooMuch).toMatch(/The most that goes in/);
  });

  it('takes a ready bread, over two ovens or for a size, as much as its recipe makes', async () => {
    const what = { readyRecipe: 'soda-bread' };
    expect(textOf(await ask({ what, ovens: [TEN, TEN], lying: {} }))).toMatch(/Into each oven/);
    const sizes = await ask({ what, ovens: [], lying: {} });
    expect(sizes.title).toMatch(/soda bread.*which oven/i);
  });

  it('asks for what it needs, and stops where nothing fits or the recipe is gone', async () => {
    expect((await ask({ ovens: [] })).title).toBe('One answer more');
    expect((await ask({ what: { readyRecipe: 'none such' } })).title).toBe('One answer more');
    const tall = await ask({ what: { kind: 'batter' }, lying: { thickMetres: 0.14 } });
    expect(textOf(tall)).toMatch(/MENU_NOTHING_FITS/);
  });
});

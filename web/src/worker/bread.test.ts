import { describe, expect, it } from 'vitest';
import { readyRecipes, type SheetDocument } from '#engine';
import { answerTo } from './answer.ts';
import type { BreadQuestion } from './bread-messages.ts';
import type { Voice } from './messages.ts';

const us: Voice = { measures: 'us', clock: '12' };
const metric: Voice = { measures: 'metric', clock: '24' };

const asked = async (more: Partial<BreadQuestion>): Promise<SheetDocument> =>
  (await answerTo({
    ask: 'bread',
    door: 'leaven',
    what: { readyRecipe: 'biscuits' },
    spot: {},
    powder: {},
    dough: { stays: [] },
    bags: 1,
    voice: us,
    ...more,
  })) as SheetDocument;

const textOf = (sheet: SheetDocument) => JSON.stringify(sheet);

describe('one dough', () => {
  it.each(['leaven', 'rise', 'mix'] as const)(
    'is answered at the door %s for every ready recipe, in both measures',
    async (door) => {
      for (const { id } of readyRecipes)
        for (const voice of [us, metric]) {
          const text = textOf(await asked({ door, what: { readyRecipe: id }, voice }));
          expect(text).not.toMatch(/NaN|undefined|Infinity|no words yet|\[object/);
        }
    },
  );

  // 1 - P/P0 of the standard atmosphere (ussa1976) at 6,500 ft is 0.2136: 25 g become 19.7 g
  it('has its powder cut by the air that is missing at 6,500 ft (ussa1976)', async () => {
    const text = textOf(await asked({ spot: { metres: 6500 * 0.3048 } }));
    expect(text).toMatch(/19\.7 g/);
    const written = { metres: 6500 * 0.3048, writtenMetres: 6500 * 0.3048 };
    expect(textOf(await asked({ spot: written }))).not.toMatch(/19\.7 g/);
  });

  it('rises longer on a cold morning than in mild air', async () => {
    const rolls = { door: 'rise', what: { readyRecipe: 'rolls' } } as const;
    const cold = {
      stays: [
        { minutes: 120, kelvin: 278.15 },
        { minutes: 0, kelvin: 301.15 },
      ],
    };
    const mild = textOf(await asked(rolls));
    expect(textOf(await asked({ ...rolls, dough: cold }))).not.toBe(mild);
  });

  it('is weighed into as many bags as are asked for', async () => {
    expect(textOf(await asked({ door: 'mix', bags: 4 }))).toMatch(/Bags: 4 of/);
  });

  it('that neither rises nor is dry says so', async () => {
    const rise = await asked({ door: 'rise' });
    expect(rise.blocks[0]).toMatchObject({ type: 'notice', level: 'stop' });
    expect(textOf(rise)).toContain('neither yeast nor starter');
  });
});

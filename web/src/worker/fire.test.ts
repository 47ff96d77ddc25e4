import { describe, expect, it } from 'vitest';
import type { SheetDocument } from '#engine';
import { doors, fireWish, usualAnswers } from '../fire/answers.ts';
import { answerTo } from './answer.ts';
import type { FireSpot, Voice } from './messages.ts';

const spot: FireSpot = {
  today: '2026-05-02',
  timeZone: 'UTC',
  ovenInches: 12,
  ovenStyle: 'regular',
};
const us: Voice = { measures: 'us', clock: '12' };
const metric: Voice = { measures: 'metric', clock: '24' };

const asked = async (
  door: (typeof doors)[number],
  more: Partial<FireSpot> = {},
  voice: Voice = us,
  change: Partial<ReturnType<typeof usualAnswers>> = {},
): Promise<SheetDocument> => {
  const wish = fireWish(door, { ...usualAnswers(more.fuel), ...change }, more.ovenInches ?? 12);
  return (await answerTo({
    ask: 'fire',
    spot: { ...spot, ...more },
    wish,
    voice,
  })) as SheetDocument;
};

describe('the doors to the fire', () => {
  it.each(doors)('of %s answer for every size, on both fuels, in both measures', async (door) => {
    for (const ovenInches of [8, 12, 16])
      for (const fuel of ['briquettes', 'wood-coals'] as const) {
        const text = JSON.stringify(await asked(door, { ovenInches, fuel }));
        expect(text).not.toMatch(/NaN|undefined|Infinity|no words yet|\[object/);
        expect(text).toMatch(/°F/);
        if (fuel === 'wood-coals') expect(text).toMatch(/shovel/);
      }
    const said = JSON.stringify(await asked(door, {}, metric));
    expect(said).toMatch(/°C/);
    expect(said).not.toMatch(/°F/);
  });

  it('say what was assumed and carry the safety strip', async () => {
    for (const door of doors) {
      const { blocks } = await asked(door);
      expect(blocks.some((block) => block.type === 'strip')).toBe(true);
      expect(JSON.stringify(blocks)).toMatch(/Assumed, change what is wrong/);
    }
  });

  it('take food that is in already, and another wind, into account', async () => {
    const empty = JSON.stringify(await asked('layout'));
    const inside = JSON.stringify(await asked('layout', {}, us, { minutesIn: 20 }));
    const windy = JSON.stringify(await asked('layout', { wind: 'small-trees-sway' }));
    expect(new Set([empty, inside, windy]).size).toBe(3);
  });

  it('put no larger oven on a smaller one, and say in words what can not be', async () => {
    const sheet = await asked('stack', { ovenInches: 10 }, us, { upperInches: 14 });
    expect(sheet.title).toBe('Two ovens stacked');
    const high = await asked('coals', { height: { metres: 9000 } });
    expect(high.blocks[0]).toMatchObject({ type: 'notice', level: 'stop' });
  });
});

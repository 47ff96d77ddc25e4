import { describe, expect, it } from 'vitest';
import type { SheetDocument } from '#engine';
import { answerTo } from './answer.ts';
import type { FireSpot, FireWish, Voice } from './messages.ts';

const spot: FireSpot = {
  today: '2026-05-02',
  timeZone: 'UTC',
  ovenInches: 12,
  ovenStyle: 'regular',
};
const us: Voice = { measures: 'us', clock: '12' };
const metric: Voice = { measures: 'metric', clock: '24' };

const doors = ['what-now', 'layout', 'left', 'coals', 'stack'] as const;
const bake = { method: 'bake', heatKelvin: 450, minutes: 40 } as const;

function wishOf(door: FireWish['door'], isWood: boolean): FireWish {
  const laid = isWood ? { above: 2.5, below: 1 } : { above: 17, below: 8 };
  const lit = { litMinutes: 30 };
  switch (door) {
    case 'coals':
      return { door, ...bake };
    case 'layout':
      return { door, method: 'bake', heatKelvin: 450, ...lit, ...laid };
    case 'left':
      return { door, coals: isWood ? 3 : 22, ...lit };
    case 'what-now':
      return { door, symptom: 'bottom-dark', method: 'bake', minutesIn: 15, ...lit, ...laid };
    case 'stack':
      return { door, ...bake, method: 'bake', upperInches: 8 };
  }
}

const asked = async (
  door: FireWish['door'],
  more: Partial<FireSpot> = {},
  voice: Voice = us,
  change: object = {},
): Promise<SheetDocument> => {
  const wish = { ...wishOf(door, more.fuel === 'wood-coals'), ...change } as FireWish;
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

  it.each([
    { rainMillimetres: 10 },
    { sunRatio: 1 },
    { groundIs: 'wet' },
    { riserMetres: 0.1 },
    { lidGrams: 2600 },
    { hearth: 'fire-pan' },
  ] as const)('feel what is said of the place: %j', async (said) => {
    const plain = JSON.stringify(await asked('layout'));
    expect(JSON.stringify(await asked('layout', said))).not.toBe(plain);
  });

  it('refuse a lid heavier than its oven, and say why', async () => {
    const { blocks } = await asked('coals', { lidGrams: 19_000 });
    expect(blocks[0]).toMatchObject({ level: 'stop', code: 'COALS_CONDITIONS_IMPOSSIBLE' });
  });

  it('judge coals of several ages together, and an oven as hot as it is said to be', async () => {
    const others = [{ above: 4, below: 2, litMinutes: 5 }];
    const laid = { litMinutes: 50, minutesIn: 20 };
    const old = await asked('layout', {}, us, laid);
    const fed = await asked('layout', {}, us, { ...laid, others });
    const hot = await asked('layout', {}, us, { ...laid, others, ironKelvin: 439 });
    expect(fed.title).toContain('21 above and 10 below');
    expect(new Set([old, fed, hot].map((sheet) => JSON.stringify(sheet))).size).toBe(3);
    const cold = JSON.stringify(await asked('left'));
    expect(JSON.stringify(await asked('left', {}, us, { ironKelvin: 450 }))).not.toBe(cold);
  });

  it('say in words what can not be: a larger oven on a smaller one, a camp too high', async () => {
    const sheet = await asked('stack', { ovenInches: 10 }, us, { upperInches: 14 });
    expect(JSON.stringify(sheet)).toMatch(/larger than the oven under it/);
    const high = await asked('coals', { height: { metres: 9000 } });
    expect(high.blocks[0]).toMatchObject({ type: 'notice', level: 'stop' });
  });
});

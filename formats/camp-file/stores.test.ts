// Packs, larder, boxes, carriers and coolers in a camp file. What may not stand there is named by
// path, found, wanted and next.

import { describe, expect, it } from 'vitest';
import pilcrowCreek from '../demo/pilcrow-creek.camp.json' with { type: 'json' };
import { fromEngine } from './from-engine.ts';
import { readCampFile } from './read.ts';

const withStores = (stores: unknown, more: object = {}) => ({
  ...structuredClone(pilcrowCreek),
  ...more,
  stores,
});

const whole = {
  foods: [
    {
      food: 'bread flour',
      packs: [{ size: '5 lb', price: 4.2 }, { size: '25 kg' }],
      shop: 'the mill',
      have: '2 kg',
    },
    { food: 'carrots', usable: '82 %' },
  ],
  money: '€',
  box: { limit: '20 kg', weight: '1.5 kg' },
  carriers: [{ kind: 'mule', name: 'the grey', count: 2, limit: '60 kg' }],
  coolers: [{ volume: '36 qt', wall: '3 cm', openings: 10, ice: '10 lb' }],
  packedAt: '-1 20:00',
};

describe('the stores of a camp file', () => {
  it('are read, and saved again as the same stores', () => {
    const once = readCampFile(withStores(whole));
    if (!once.ok) throw new Error(JSON.stringify(once.troubles));
    expect(once.camp.stores).toMatchObject({
      money: '€',
      packedAt: -240,
      carriers: [{ kind: 'mule', name: 'the grey', count: 2, limit: 60_000 }],
    });
    expect(once.camp.stores?.foods[0]?.packs[0]?.size).toBeCloseTo(5 * 453.59237, 9); // nist-hb44
    const again = readCampFile(fromEngine(once.camp, once.menu));
    if (!again.ok) throw new Error(JSON.stringify(again.troubles));
    expect(again.camp.stores?.foods).toEqual(once.camp.stores?.foods);
    const [before, after] = [once, again].map(({ camp }) => camp.stores?.coolers[0]);
    expect(after?.inside.height).toBeCloseTo(before?.inside.height ?? 0, 9);
    expect(after?.ice).toBe(before?.ice);
  });

  it('keep a cooler of 36 quarts at 36 quarts, whatever its shape', () => {
    const read = readCampFile(withStores(whole));
    const { length, width, height } = (read.ok && read.camp.stores?.coolers[0]?.inside) || {
      length: 0,
      width: 0,
      height: 0,
    };
    expect(length * width * height * 1000).toBeCloseTo(36 * 0.946352946, 6); // nist-hb44
  });

  it.each([
    [
      'a pack of zero',
      { foods: [{ food: 'flour', packs: [{ size: '0 g' }] }] },
      'foods[0].packs[0].size',
      '0 g',
    ],
    [
      'a negative pack',
      { foods: [{ food: 'flour', packs: [{ size: '-1 kg' }] }] },
      'foods[0].packs[0].size',
      '-1 kg',
    ],
    [
      'a yield over one',
      { foods: [{ food: 'carrots', usable: '119 %' }] },
      'foods[0].usable',
      '119 %',
    ],
    [
      'a negative price',
      { foods: [{ food: 'flour', packs: [{ size: '1 kg', price: -1 }] }] },
      'foods[0].packs[0].price',
      '-1',
    ],
    [
      'a carrier who is no number',
      { carriers: [{ kind: 'mule', count: 0 }] },
      'carriers[0].count',
      '0',
    ],
    ['a beast that is not known', { carriers: [{ kind: 'ox' }] }, 'carriers[0].kind', 'ox'],
  ])(
    'refuse %s by its path, with what was found and what is wanted',
    (_name, stores, path, found) => {
      const read = readCampFile(withStores(stores));
      const troubles = read.ok ? [] : read.troubles;
      expect(troubles.map((each) => each.path)).toEqual([`stores.${path}`]);
      expect(troubles[0]?.found).toContain(found);
      expect(troubles[0]?.wanted).not.toBe('');
      expect(troubles[0]?.next).not.toBe('');
    },
  );

  it('refuse negative portions and a reserve over the whole in the same way', () => {
    const menu = structuredClone(pilcrowCreek.menu) as Record<string, unknown>[];
    menu[0] = { ...menu[0], portions: -4, reserve: '150 %' };
    const read = readCampFile(withStores({}, { menu }));
    const paths = read.ok ? [] : read.troubles.map(({ path }) => path);
    expect(paths.sort()).toEqual(['menu[0].portions', 'menu[0].reserve']);
  });

  it('may say that a group comes late', () => {
    const mouths = [{ count: 4 }, { count: 2, late: '45 min', who: 'the walkers' }];
    const read = readCampFile(withStores({}, { mouths }));
    if (!read.ok) throw new Error('not read');
    expect(read.camp.mouths[1]).toMatchObject({ late: 45, who: 'the walkers' });
    expect(fromEngine(read.camp, read.menu).mouths[1]).toMatchObject({ late: '45 min' });
  });
});

import { describe, expect, it } from 'vitest';
import { FIT_KINDS, isKnownSize, nominalOven, whatFits } from '../../menu/index.ts';
import { isRefusal } from '../../notice/notice.ts';
import { fromUnit } from '../../quantity/convert.ts';
import { fitSheet } from '../sheet/fits-sheet.ts';
import { sayFor } from '../speak.ts';
import { malformed, textsOutside } from './svg-check.ts';

describe('the room below the lid, from the side', () => {
  const names = { camp: { ovens: [], hands: [] }, menu: { dishes: [] } };

  it.each(FIT_KINDS)('of %s is well formed in every size and measure, its words inside', (what) => {
    for (const inches of [8, 10, 12, 14, 16]) {
      const diameter = fromUnit(inches, 'inch');
      expect(isKnownSize(diameter)).toBe(true);
      const fit = whatFits(nominalOven(diameter), { what });
      if (isRefusal(fit)) continue;
      for (const measures of ['us', 'metric'] as const) {
        const { blocks } = fitSheet({ fit }, sayFor({ measures, clock: '24', plan: names }));
        for (const block of blocks) {
          if (block.type !== 'drawing') continue;
          expect(malformed(block.svg)).toEqual([]);
          expect(textsOutside(block.svg)).toEqual([]);
          expect(block.svg).not.toMatch(/NaN|undefined/);
        }
      }
    }
  });
});

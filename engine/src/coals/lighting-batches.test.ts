import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minutes } from '../quantity/unit.ts';
import { lightingBatches } from './lighting-batches.ts';

const lighting = { readyMinutes: minutes(20), chimneyfulCoals: 100 };

describe('chimneyfuls for one oven', () => {
  it('are lit a lighting before their coals are laid, the first 15 to 25 min before coals on (chimneyMinutes)', () => {
    const batches = lightingBatches(
      [
        { minute: 0, coals: 25 },
        { minute: 35, coals: 10 },
      ],
      lighting,
    );
    expect(batches.map(({ minute }) => minute)).toEqual([-20, 15]);
    expect(batches[0]!.coals).toBe(27); // one in twenty breaks
  });

  it('leave no addition without its coals, and none lit too late (any plan)', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 120 }), { maxLength: 6 }),
        fc.integer({ min: 15, max: 60 }),
        (later, ready) => {
          const all = [0, ...later.toSorted((one, other) => one - other)];
          const needs = all.map((minute) => ({ minute, coals: 3 }));
          const batches = lightingBatches(needs, { ...lighting, readyMinutes: minutes(ready) });
          expect(batches.flatMap((batch) => batch.for)).toEqual(all);
          for (const batch of batches)
            for (const minute of batch.for)
              expect(batch.minute + ready).toBeLessThanOrEqual(minute);
          const coals = batches.reduce((sum, batch) => sum + batch.coals, 0);
          expect(coals).toBeGreaterThanOrEqual(3 * needs.length);
        },
      ),
      { seed: 20267, numRuns: 100 },
    );
  });
});

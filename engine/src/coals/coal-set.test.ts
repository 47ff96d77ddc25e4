import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LAID_BURNT } from './burn.ts';
import { coalsAdded, coalsMoved, coalsTaken, liveCoals, ringPart } from './coal-set.ts';
import { type CoalGroup, supplyOf } from './run.ts';

const SEED = 20265;
const groups = fc.array(
  fc.record({
    place: fc.constantFrom('above' as const, 'below' as const),
    count: fc.double({ min: 0.5, max: 20, noNaN: true }),
    burnt: fc.double({ min: 0, max: 1.3, noNaN: true }),
  }),
  { maxLength: 6 },
);
const half = { from: 0, to: Math.PI };

describe('a set of coals', () => {
  it('is exactly two half rings: same count, same heat (ringMethod)', () => {
    const first = ringPart({ place: 'above', closed: 17, arc: half });
    const second = ringPart({
      place: 'above',
      closed: 17,
      arc: { from: Math.PI, to: 2 * Math.PI },
    });
    const whole: CoalGroup = { place: 'above', count: 17, burnt: LAID_BURNT };
    expect(first.count).toBe(8.5);
    expect(supplyOf([first, second]).above).toBeCloseTo(supplyOf([whole]).above, 12);
  });

  it('keeps each age apart: young coals added to old give the sum of both', () => {
    const old: CoalGroup = { place: 'above', count: 10, burnt: 0.7 };
    const young = ringPart({ place: 'above', closed: 17, arc: half });
    const both = supplyOf(coalsAdded([old], [young])).above;
    expect(both).toBeCloseTo(supplyOf([old]).above + supplyOf([young]).above, 12);
  });

  it('loses what is taken and no more, and none when coals are only moved', () => {
    fc.assert(
      fc.property(groups, fc.double({ min: 0, max: 30, noNaN: true }), (coals, count) => {
        const from = { place: 'above' as const, count };
        const before = liveCoals(coals, 'above');
        const left = Math.max(0, before - count);
        expect(liveCoals(coalsTaken(coals, from), 'above')).toBeCloseTo(left, 9);
        const moved = coalsMoved(coals, from);
        expect(liveCoals(moved, 'above')).toBeCloseTo(left, 9);
        const all = before + liveCoals(coals, 'below');
        expect(liveCoals(moved, 'above') + liveCoals(moved, 'below')).toBeCloseTo(all, 9);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});

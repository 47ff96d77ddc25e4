import { describe, expect, it } from 'vitest';
import { coalRequest } from '../../validation/coals/requests.ts';
import { isRefusal } from '../notice/notice.ts';
import type { CoalPlan, CoalRequest } from './coal-plan.ts';
import { layCoals } from './lay-coals.ts';
import type { BakeJudge } from './settle.ts';
import { simpleLoad } from './simple-load.ts';

/** A dough of 900 g that takes all that it is offered: 40 W/m2K without the charts' cap. */
const dough = simpleLoad({
  massGrams: 900,
  heatCapacityJoulesPerGramKelvin: 2.8,
  startKelvin: 294.26,
  boilKelvin: 373.12,
  planAreaSquareMetres: 0.036,
});

const laid = (own: Partial<CoalRequest>): CoalPlan => {
  const plan = layCoals({ ...coalRequest({}), chartLoad: dough, load: dough, ...own });
  if (isRefusal(plan)) throw new Error(plan.code);
  return plan;
};

const sumOf = ({ above, below }: { above: { pieces: number }; below: { pieces: number } }) =>
  above.pieces + below.pieces;

/** A made judge: likes an oven whose lid stands so far over its floor, at its mean. */
const lidOverFloor =
  (wanted: number): BakeJudge =>
  ({ curve }) => {
    const mean =
      curve.reduce((sum, point) => sum + point.lid - point.floor, 0) / Math.max(1, curve.length);
    return { minutes: 30, fault: Math.abs(mean - wanted) };
  };

describe('coals that a bake has chosen', () => {
  it('are by the charts and the usual split without a judge, and say that this is a first answer', () => {
    const first = laid({});
    expect(first.answer).toBe('first');
    expect(first.above.pieces / sumOf(first)).toBeCloseTo(2 / 3, 1);
  });

  it('shift to the lid for a judge that wants a hotter lid, to the floor for one that does not', () => {
    const share = (wanted: number) => {
      const plan = laid({ judge: lidOverFloor(wanted) });
      expect(plan.answer).toBe('settled');
      return plan.above.pieces / sumOf(plan);
    };
    expect(share(60)).toBeGreaterThan(share(-30));
  });

  it('stay within a fifth more and a tenth less than the charts say, and 80 % above (splitByMethod, one cook)', () => {
    const first = sumOf(laid({}));
    for (const wanted of [-60, 0, 40, 120]) {
      const plan = laid({ judge: lidOverFloor(wanted) });
      expect(sumOf(plan)).toBeLessThanOrEqual(Math.ceil(first * 1.2) + 1);
      expect(sumOf(plan)).toBeGreaterThanOrEqual(Math.floor(first * 0.9) - 1);
      expect(plan.above.pieces / sumOf(plan)).toBeLessThan(0.83);
    }
  });

  it('add up with a line of their own in the reckoning', () => {
    const plan = laid({ judge: lidOverFloor(60) });
    const { chart, because, above, below } = plan.reckoning;
    const lines = because.reduce((sum, line) => sum + line.coals, 0);
    expect((chart?.above ?? 0) + (chart?.below ?? 0) + lines).toBe(above + below);
  });

  it('are never asked for where the cook has pinned a count', () => {
    const judge: BakeJudge = () => {
      throw new Error('asked');
    };
    const plan = laid({ judge, pins: { above: 15 } });
    expect(plan.above.pieces).toBe(15);
    expect(plan.answer).toBeUndefined();
  });

  it('are kept as chosen when they are laid again', () => {
    const plan = laid({ chosen: { above: 18, below: 6 } });
    expect([plan.above.pieces, plan.below.pieces]).toEqual([18, 6]);
    expect(plan.answer).toBe('settled');
  });
});

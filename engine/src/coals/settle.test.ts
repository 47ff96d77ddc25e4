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

  it('stay within a third more and a fifth less than the charts say, with one below between every two legs at least', () => {
    const first = sumOf(laid({}));
    for (const wanted of [-60, 0, 40, 120]) {
      const plan = laid({ judge: lidOverFloor(wanted) });
      expect(sumOf(plan)).toBeLessThanOrEqual(Math.ceil(first * 1.35) + 1);
      expect(sumOf(plan)).toBeGreaterThanOrEqual(Math.floor(first * 0.8) - 1);
      expect(plan.below.pieces).toBeGreaterThanOrEqual(3);
    }
  });

  it('go the way that the faces ask for: fewer below a dark bottom, more above a pale top', () => {
    const first = laid({});
    const faces =
      (top: number, bottom: number): BakeJudge =>
      ({ curve }) => {
        const [lid, floor] = (['lid', 'floor'] as const).map((part) =>
          curve.reduce((sum, point) => sum + point[part], 0),
        );
        const fault = (top * lid! + bottom * floor!) / curve.length;
        return { minutes: 30, fault, faces: { top, bottom } };
      };
    expect(laid({ judge: faces(0, 1) }).below.pieces).toBeLessThan(first.below.pieces);
    expect(laid({ judge: faces(-1, 0) }).above.pieces).toBeGreaterThan(first.above.pieces);
  });

  it('keep what was wrong with the counted ones, where a dark bottom was, and only there', () => {
    const likesCool =
      (darkBottom?: number): BakeJudge =>
      ({ curve }) => ({
        minutes: 30,
        fault: curve.reduce((sum, { floor }) => sum + floor, 0) / curve.length,
        faces: { top: 0, bottom: 1 },
        ...(darkBottom === undefined ? {} : { darkBottom }),
      });
    const plan = laid({ judge: likesCool(18) });
    expect(plan.asCounted).toMatchObject({ darkMinute: 18, doneMinute: 30 });
    expect(plan.asCounted?.below).toBeGreaterThan(plan.below.pieces);
    expect(laid({ judge: likesCool() }).asCounted).toBeUndefined();
  });

  it('are found in 30 runs at the most', () => {
    let asked = 0;
    const judge: BakeJudge = (oven) => {
      asked += 1;
      return lidOverFloor(300)(oven);
    };
    laid({ judge });
    expect(asked).toBeGreaterThan(4);
    expect(asked).toBeLessThanOrEqual(30);
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

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degrees, minutes } from '../quantity/unit.ts';
import {
  afterTurn,
  remainder,
  remainderOf,
  STAND_AT_START,
  type Stand,
  turnsFor,
  withVisits,
} from './turning.ts';

const turn = (kind: 'food' | 'oven-with-lid' | 'lid-alone', angle: number) => ({
  minute: minutes(10),
  kind,
  angle: degrees(angle),
});

describe('one turn', () => {
  it('of the oven carries the lid and its coals along', () => {
    expect(afterTurn(STAND_AT_START, turn('oven-with-lid', 90))).toEqual({ oven: 90, lid: 90 });
  });

  it('of the lid alone leaves the oven and its food where they are', () => {
    expect(afterTurn(STAND_AT_START, turn('lid-alone', 90))).toEqual({ oven: 0, lid: 90 });
  });

  it('of the food moves it a quarter against both sets of coals and leaves the lid over the ground', () => {
    expect(afterTurn(STAND_AT_START, turn('food', 90))).toEqual({ oven: 90, lid: 0 });
  });

  it('of the food is the oven with lid one way, then the lid alone back', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: 0, max: 359 }),
        (lid, angle) => {
          const start = { oven: degrees(30), lid: degrees(lid) };
          const twoMoves = afterTurn(
            afterTurn(start, turn('oven-with-lid', angle)),
            turn('lid-alone', -angle),
          );
          expect(afterTurn(start, turn('food', angle))).toEqual(twoMoves);
          expect(twoMoves.lid).toBe(lid);
        },
      ),
      { seed: 7, numRuns: 100 },
    );
  });

  it('of the oven while the lid is held still ends as a food turn does; the lid turned the other way after that stands a half turn from the oven (coalsOvenModelNotes 5.6)', () => {
    // Holding the lid over the ground is turning it back by as much as the oven carries it along.
    const held = afterTurn(
      afterTurn(STAND_AT_START, turn('oven-with-lid', 90)),
      turn('lid-alone', -90),
    );
    expect(held).toEqual({ oven: 90, lid: 0 });
    expect(held).toEqual(afterTurn(STAND_AT_START, turn('food', 90)));
    const apart = afterTurn(held, turn('lid-alone', -90));
    expect((apart.oven - apart.lid + 360) % 360).toBe(180);
  });

  it('of oven and lid alike leaves the food under the same coals of the lid, one of the food does not', () => {
    const underLid = (stand: Stand) => (stand.oven - stand.lid + 360) % 360;
    for (const angle of [45, 90, 180, 270]) {
      expect(underLid(afterTurn(STAND_AT_START, turn('oven-with-lid', angle)))).toBe(0);
      expect(underLid(afterTurn(STAND_AT_START, turn('food', angle)))).toBe(angle);
      expect(underLid(afterTurn(STAND_AT_START, turn('lid-alone', -angle)))).toBe(angle);
    }
  });

  it('four times a quarter brings everything back', () => {
    let stand = STAND_AT_START;
    for (const kind of ['food', 'food', 'food', 'food'] as const)
      stand = afterTurn(stand, turn(kind, 90));
    expect(stand).toEqual(STAND_AT_START);
  });
});

describe('what turning leaves of a one-sided heat', () => {
  it.each([
    [1, 1],
    [2, 0.71],
    [3, 0.33],
    [4, 0],
    [5, 0.2],
    [6, 0.24],
  ])('is, after %i equal dwells of quarter turns, %f (coalsOvenModelNotes 5.6)', (dwells, left) => {
    const angles = Array.from({ length: dwells }, (_, index) => index * 90);
    expect(remainder(angles)).toBeCloseTo(left, 2);
  });

  it.each([
    [1, 1],
    [2, 0],
    [3, 0.33],
    [4, 0],
  ])('is, after %i equal dwells of half turns, %f (coalsOvenModelNotes 5.6)', (dwells, left) => {
    const angles = Array.from({ length: dwells }, (_, index) => index * 180);
    expect(remainder(angles)).toBeCloseTo(left, 2);
  });
});

describe('turns of a bake', () => {
  it('leave no dwell above a quarter of an hour (turningRule) and even out nearly all', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 8, max: 240 }),
        fc.integer({ min: 0, max: 30 }),
        (stay, from) => {
          const turns = turnsFor(from, stay);
          const marks = [from, ...turns.map((each) => each.minute), from + stay];
          const dwells = marks.slice(1).map((mark, index) => mark - (marks[index] ?? 0));
          expect(Math.max(...dwells)).toBeLessThanOrEqual(16);
          const left = remainderOf(turns, { loadInMinute: from, outMinute: from + stay });
          expect(left).toBeLessThan(0.12);
        },
      ),
      { seed: 7, numRuns: 200 },
    );
  });

  it('come as one half turn in half an hour, as quarters in fours in an hour', () => {
    expect(turnsFor(20, 30).map((each) => [each.minute, each.angle])).toEqual([[35, 180]]);
    expect(turnsFor(20, 60).map((each) => [each.minute, each.angle])).toEqual([
      [35, 90],
      [50, 90],
      [65, 90],
    ]);
  });

  it('move to an addition that is near, so that one visit does both', () => {
    const stay = { loadInMinute: 20, outMinute: 80 };
    const at = (visits: readonly number[]) =>
      withVisits(turnsFor(20, 60), visits.map(minutes), stay).map((each) => each.minute);
    expect(at([45, 60])).toEqual([35, 50, 65]);
    expect(at([52])).toEqual([35, 52, 65]);
  });
});

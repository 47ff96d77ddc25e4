import { describe, expect, it } from 'vitest';
import table from '../../data/circle-packing.json' with { type: 'json' };
import published from '../../validation/menu/circle-packing.json' with { type: 'json' };
import cutters from '../../validation/menu/cutter-fit.json' with { type: 'json' };
import { fromUnit } from '../quantity/convert.ts';
import { floorForPieces, piecesThatFit, placePieces } from './packing.ts';

type Numbers = readonly number[];
const inch = (inches: number) => fromUnit(inches, 'inch');

describe('packings of equal rounds', () => {
  it('have the 37 ratios of birginGentil2009 table 1 to its four decimals', () => {
    expect(table.rows).toHaveLength(37);
    for (const [n, ratio] of published.rows as readonly Numbers[]) {
      expect(Math.abs(table.rows[n! - 1]!.ratio - ratio!), `n ${n}`).toBeLessThan(0.000051);
    }
  });

  it('meet the closed forms of small numbers (plane geometry)', () => {
    const closed: readonly (readonly [number, number])[] = [
      [2, 2],
      [3, 1 + 2 / Math.sqrt(3)],
      [4, 1 + Math.SQRT2],
      [5, 1 + 1 / Math.sin(Math.PI / 5)],
      [7, 3],
      [8, 1 + 1 / Math.sin(Math.PI / 7)],
    ];
    for (const [n, ratio] of closed) expect(table.rows[n - 1]!.ratio).toBeCloseTo(ratio, 8);
  });

  it('are reached by their centres: nothing overlaps, nothing sticks out', () => {
    for (const { n, ratio, centres } of table.rows) {
      expect(centres).toHaveLength(n);
      for (const [index, [x = 0, y = 0]] of centres.entries()) {
        expect(Math.hypot(x, y) + 1).toBeLessThan(ratio + 1e-6);
        for (const [otherX = 0, otherY = 0] of centres.slice(index + 1)) {
          expect(Math.hypot(x - otherX, y - otherY), `n ${n}`).toBeGreaterThan(2 - 1e-6);
        }
      }
    }
  });

  it('fit cut rounds on floors as worked from table 1 by hand', () => {
    for (const [cutter, floor, touching, gapped] of cutters.rows as readonly Numbers[]) {
      const size = { floorMetres: inch(floor!), pieceMetres: inch(cutter!) };
      const counts = [
        [piecesThatFit({ ...size, gapMetres: 0 }), touching],
        [piecesThatFit({ ...size, gapMetres: inch(0.25) }), gapped],
      ] as const;
      for (const [found, wanted] of counts) {
        const where = `${cutter} in ${floor}`;
        if (wanted === 38) expect(found, where).toBeGreaterThanOrEqual(37);
        else expect(found, where).toBe(wanted);
      }
    }
  });

  it('lie on the floor with the gap kept, for every number up to 60', () => {
    for (let count = 1; count <= 60; count++) {
      const size = { pieceMetres: 0.05, gapMetres: 0.005, floorMetres: 0.7 };
      const floor = floorForPieces(Math.min(count, 37), 0.05, 0.005);
      const floorMetres = count <= 37 ? floor + 1e-9 : size.floorMetres;
      const placed = placePieces(count, { ...size, floorMetres })!;
      expect(placed).toHaveLength(count);
      for (const [index, one] of placed.entries()) {
        expect(Math.hypot(one.x, one.y) + 0.025).toBeLessThan(floorMetres / 2 + 1e-6);
        for (const other of placed.slice(index + 1)) {
          expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThan(0.055 - 1e-6);
        }
      }
    }
  });

  it('refuse what does not fit and what is no size', () => {
    expect(placePieces(3, { floorMetres: 0.1, pieceMetres: 0.05, gapMetres: 0 })).toBeUndefined();
    const size = { floorMetres: 0.1, pieceMetres: 0.2, gapMetres: 0 };
    expect(piecesThatFit(size)).toBe(0);
    expect(piecesThatFit({ ...size, pieceMetres: Number.NaN })).toBe(0);
  });
});

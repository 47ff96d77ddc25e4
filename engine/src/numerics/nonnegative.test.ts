import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nonNegativeLeastSquares } from './nonnegative.ts';

/** Stationarity, feasibility and complementarity: together they prove the optimum. */
function expectOptimal(matrix: readonly (readonly number[])[], right: readonly number[]) {
  const x = nonNegativeLeastSquares({ matrix, right });
  const left = right.map(
    (value, row) => value - x.reduce((sum, v, i) => sum + matrix[row]![i]! * v, 0),
  );
  for (const [column, value] of x.entries()) {
    const slope = matrix.reduce((sum, row, at) => sum + row[column]! * left[at]!, 0);
    expect(value).toBeGreaterThanOrEqual(0);
    expect(slope).toBeLessThan(1e-6);
    if (value > 1e-6) expect(Math.abs(slope)).toBeLessThan(1e-6);
  }
}

describe('least squares without negative unknowns', () => {
  it('is the plain solution where that is positive (two equations by hand: x = 1, y = 2)', () => {
    const x = nonNegativeLeastSquares({
      matrix: [
        [2, 1],
        [1, 3],
      ],
      right: [4, 7],
    });
    expect([...x].map((value) => Math.round(value * 1e9) / 1e9)).toEqual([1, 2]);
  });

  it('holds an unknown at zero where the plain solution is negative (by hand: 2 and -1 become 0.5 and 0)', () => {
    const x = nonNegativeLeastSquares({
      matrix: [
        [1, 1],
        [1, 2],
      ],
      right: [1, 0],
    });
    expect(x[1]).toBe(0);
    expect(x[0]).toBeCloseTo(0.5, 12); // least squares of x = 1 and x = 0
  });

  it('meets the conditions of the optimum (lawson1974 ch. 23) on any small problem', () => {
    const number = fc.double({ min: -3, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 6 }).chain((columns) =>
          fc.array(fc.tuple(fc.array(number, { minLength: columns, maxLength: columns }), number), {
            minLength: 1,
            maxLength: 10,
          }),
        ),
        (rows) =>
          expectOptimal(
            [...rows.map(([row], at) => row.map((v, i) => v + (i === at ? 1e-3 : 0)))],
            rows.map(([, side]) => side),
          ),
      ),
      { seed: 11, numRuns: 300 },
    );
  });

  it('refuses rows of different length', () => {
    expect(() => nonNegativeLeastSquares({ matrix: [[1, 2], [1]], right: [1, 1] })).toThrow(
      RangeError,
    );
  });
});

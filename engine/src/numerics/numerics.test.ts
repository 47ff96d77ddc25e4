import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveDense } from './dense.ts';
import { interpolate } from './interpolate.ts';
import { randomFrom, wholeFrom } from './random.ts';
import { isNoRoot, type NoRoot, rootOf } from './root.ts';
import { solveChain } from './tridiagonal.ts';

const whyNot = (outcome: number | NoRoot) => (isNoRoot(outcome) ? outcome.noRoot : outcome);

describe('rootOf', () => {
  it.each<[string, (x: number) => number, number, number, number]>([
    ['x² = 2', (x) => x * x - 2, 0, 2, Math.SQRT2],
    ['sin x = 0 near 3', Math.sin, 3, 4, Math.PI],
    ['eˣ = 10', (x) => Math.exp(x) - 10, -50, 50, Math.LN10],
    ['x⁹ = 0, flat at its root', (x) => x ** 9, -1, 1.5, 0],
    ['a step at 1', (x) => (x < 1 ? -1 : 1), 0, 3, 1],
  ])('finds the closed form of %s within its tolerance', (_, rise, low, high, wanted) => {
    const root = rootOf(rise, { low, high, tolerance: 1e-10, mostRounds: 200 });
    const reach = wanted === 0 ? 1e-2 : 1e-9;
    expect(Math.abs((root as number) - wanted)).toBeLessThan(reach);
  });

  it('needs few rounds for a smooth function', () => {
    let rounds = 0;
    const rise = (x: number) => {
      rounds += 1;
      return x ** 3 - 2 * x - 5;
    };
    // Wallis's cubic, 2.094 551 481 542 326 5 (from memory; checked by substitution)
    const root = rootOf(rise, { low: 2, high: 3, tolerance: 1e-12 }) as number;
    expect(root ** 3 - 2 * root).toBeCloseTo(5, 10);
    expect(rounds).toBeLessThan(14);
  });

  it('finds the root of any rising cubic wherever it lies (seed 4711)', () => {
    const ends = fc.double({ min: -1e3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(ends, fc.double({ min: 0, max: 10, noNaN: true }), (place, bend) => {
        const rise = (x: number) => (x - place) * (1 + bend * (x - place) ** 2);
        const root = rootOf(rise, { low: -2e3, high: 2e3, tolerance: 1e-9 }) as number;
        expect(Math.abs(root - place)).toBeLessThan(1e-6);
      }),
      { seed: 4711 },
    );
  });

  it('says why there is none: same sign, not a number, too many rounds', () => {
    const question = { low: 0, high: 1, tolerance: 1e-9 };
    expect(whyNot(rootOf((x) => x + 1, question))).toBe('same-sign');
    expect(whyNot(rootOf(() => Number.NaN, question))).toBe('not-a-number');
    expect(whyNot(rootOf((x) => (x === 0 || x === 1 ? x - 0.5 : Number.NaN), question))).toBe(
      'not-a-number',
    );
    expect(whyNot(rootOf((x) => x - 0.3, { ...question, mostRounds: 0 }))).toBe('too-many-rounds');
    expect(() => rootOf((x) => x, { low: 1, high: 0, tolerance: 1 })).toThrow(RangeError);
  });
});

const matrices = fc.integer({ min: 1, max: 8 }).chain((size) =>
  fc.tuple(
    fc.array(fc.double({ min: -5, max: 5, noNaN: true }), {
      minLength: size * size,
      maxLength: size * size,
    }),
    fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: size, maxLength: size }),
  ),
);

describe('solveDense', () => {
  it('solves a system with whole answers, exchanging rows where it must', () => {
    const matrix = Float64Array.from([0, 2, 1, 1, 1, 1, 2, 1, -1]);
    expect(Array.from(solveDense(matrix, [7, 6, 1])!)).toEqual([1, 2, 3]);
  });

  it('gives answers that put back give the right side, for weighty diagonals (seed 4711)', () => {
    fc.assert(
      fc.property(matrices, ([entries, right]) => {
        const size = right.length;
        const matrix = Float64Array.from(entries, (entry, at) =>
          at % (size + 1) === 0 ? entry + 50 : entry,
        );
        const solution = solveDense(matrix, right)!;
        right.forEach((wanted, row) => {
          const got = solution.reduce(
            (sum, x, column) => sum + x * matrix[row * size + column]!,
            0,
          );
          expect(Math.abs(got - wanted)).toBeLessThan(1e-10);
        });
      }),
      { seed: 4711 },
    );
  });

  it('has no answer for a matrix without inverse, and throws on sizes that differ', () => {
    expect(solveDense(Float64Array.from([1, 2, 2, 4]), [1, 1])).toBeUndefined();
    expect(() => solveDense(new Float64Array(4), [1, 2, 3])).toThrow(RangeError);
  });
});

describe('solveChain', () => {
  it('solves -u″ = 1 on a rod with cold ends exactly: u = x(1 - x)/2 at every node', () => {
    const size = 99;
    const step = 1 / (size + 1);
    const row = (value: number) => new Array<number>(size).fill(value);
    const solution = solveChain({
      before: row(-1),
      middle: row(2),
      after: row(-1),
      right: row(step * step),
    })!;
    solution.forEach((value, index) => {
      const place = (index + 1) * step;
      expect(value).toBeCloseTo((place * (1 - place)) / 2, 12);
    });
  });

  it('agrees with elimination of the full matrix', () => {
    const random = randomFrom(4711);
    const row = () => Array.from({ length: 6 }, () => random() - 0.5);
    const chain = { before: row(), middle: row().map((x) => x + 3), after: row(), right: row() };
    const matrix = Float64Array.from({ length: 36 }, (_, at) => {
      const [down, across] = [Math.floor(at / 6), at % 6];
      const part = [chain.before, chain.middle, chain.after][across - down + 1];
      return part?.[down] ?? 0;
    });
    const wanted = solveDense(matrix, chain.right)!;
    solveChain(chain)!.forEach((value, at) => {
      expect(value).toBeCloseTo(wanted[at]!, 12);
    });
  });

  it('has no answer where a pivot vanishes, and throws on lengths that differ', () => {
    expect(solveChain({ before: [0], middle: [0], after: [0], right: [1] })).toBeUndefined();
    expect(() => solveChain({ before: [], middle: [1], after: [], right: [1] })).toThrow(
      RangeError,
    );
  });
});

describe('interpolate', () => {
  const [places, values] = [
    [0, 10, 40],
    [5, 15, 0],
  ];

  it('lies on the straight line between rows and on the rows themselves', () => {
    expect(interpolate(places, values, 5)).toEqual({ value: 10, isInside: true });
    expect(interpolate(places, values, 25)).toEqual({ value: 7.5, isInside: true });
    expect(interpolate(places, values, 10)).toEqual({ value: 15, isInside: true });
    expect(interpolate(places, values, 40)).toEqual({ value: 0, isInside: true });
  });

  it('does not go past its ends, and says so', () => {
    expect(interpolate(places, values, -1)).toEqual({ value: 5, isInside: false });
    expect(interpolate(places, values, 41)).toEqual({ value: 0, isInside: false });
  });

  it('throws on tables that are none', () => {
    expect(() => interpolate([], [], 1)).toThrow(RangeError);
    expect(() => interpolate([1, 1], [1, 2], 1)).toThrow(RangeError);
    expect(() => interpolate(places, values, Number.NaN)).toThrow(RangeError);
  });
});

describe('randomFrom', () => {
  it('gives the same numbers for the same seed and others for another', () => {
    const take = (seed: number) => Array.from({ length: 5 }, randomFrom(seed));
    expect(take(1)).toEqual(take(1));
    expect(take(1)).not.toEqual(take(2));
    expect(() => randomFrom(0.5)).toThrow(RangeError);
  });

  it('fills sixteen bins evenly: chi-squared of 16 000 numbers below the 99.9 % point 37.70', () => {
    const random = randomFrom(4711);
    const bins = new Array<number>(16).fill(0);
    for (let count = 0; count < 16_000; count += 1) {
      const bin = wholeFrom(random, 0, 15);
      bins[bin] = bins[bin]! + 1;
    }
    const chiSquared = bins.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
    expect(chiSquared).toBeLessThan(37.7);
  });
});

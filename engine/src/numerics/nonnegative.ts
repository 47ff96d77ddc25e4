// Least squares with unknowns that can't be negative.
// Source: lawson1974 ch. 23 (active sets). Weakness: normal equations, so a spread of weights past
// a million loses digits; problems here have fewer than fifty unknowns.

import { solveDense } from './dense.ts';

/** `rows × columns`, rows one after the other. */
export interface Rows {
  readonly matrix: readonly (readonly number[])[];
  readonly right: readonly number[];
}

/**
 * The x ≥ 0 that leaves the least sum of squares of `matrix · x − right`.
 *
 * One unknown after the other is let go from zero, the one that helps most; where that would
 * drive another below zero, that one goes back. Ends in a finite number of rounds; bounded.
 *
 * @throws   RangeError — rows of different length
 * @source   lawson1974 algorithm NNLS
 */
export function nonNegativeLeastSquares({ matrix, right }: Rows): Float64Array {
  const columns = matrix[0]?.length ?? 0;
  if (matrix.length !== right.length || matrix.some((row) => row.length !== columns)) {
    throw new RangeError('matrix and right side differ in size');
  }
  const normal = normalOf({ matrix, right }, columns);
  const x = new Float64Array(columns);
  const free = new Set<number>();
  for (let round = 0; round < 3 * columns; round += 1) {
    const next = mostHelpful(normal, x, free);
    if (next === undefined) return x;
    free.add(next);
    if (!settle(normal, x, free, next)) free.delete(next);
  }
  return x;
}

interface Normal {
  readonly size: number;
  readonly matrix: Float64Array;
  readonly right: Float64Array;
  readonly isStuck: Uint8Array;
}

function normalOf({ matrix, right }: Rows, size: number): Normal {
  const normal = new Float64Array(size * size);
  const side = new Float64Array(size);
  for (const [index, row] of matrix.entries()) {
    for (let one = 0; one < size; one += 1) {
      const factor = row[one]!;
      if (factor === 0) continue;
      side[one] = side[one]! + factor * right[index]!;
      for (let other = 0; other < size; other += 1) {
        normal[one * size + other] = normal[one * size + other]! + factor * row[other]!;
      }
    }
  }
  return { size, matrix: normal, right: side, isStuck: new Uint8Array(size) };
}

/** Ten times the rounding of a slope; and what counts as zero. */
const ROUNDING = 1e-15;
const ZERO = 1e-11;

/** The unknown at zero whose growth lessens the squares most; undefined at the optimum. */
function mostHelpful(normal: Normal, x: Float64Array, free: ReadonlySet<number>) {
  const { size, matrix, right, isStuck } = normal;
  let best: number | undefined;
  let most = 0;
  for (let one = 0; one < size; one += 1) {
    if (free.has(one) || isStuck[one] === 1) continue;
    let slope = right[one]!;
    for (const other of free) slope -= matrix[one * size + other]! * x[other]!;
    const own = Math.abs(right[one]!) + matrix[one * size + one]!;
    if (ROUNDING * own < slope && most < slope) [best, most] = [one, slope];
  }
  return best;
}

/** Solves for the free unknowns; those that would turn negative go back to zero. */
function settle(normal: Normal, x: Float64Array, free: Set<number>, added: number): boolean {
  for (let round = 0; round <= normal.size; round += 1) {
    const solved = solveFree(normal, [...free]);
    if (solved === undefined || (solved.get(added) ?? 1) <= 0) {
      normal.isStuck[added] = 1;
      return false;
    }
    const negative = [...solved].filter(([, value]) => value <= 0);
    const step = Math.min(1, ...negative.map(([at, value]) => x[at]! / (x[at]! - value)));
    for (const [at, value] of solved) x[at] = x[at]! + step * (value - x[at]!);
    if (negative.length === 0) {
      normal.isStuck.fill(0);
      return true;
    }
    for (const [at] of negative) {
      if (x[at]! > ZERO) continue;
      x[at] = 0;
      free.delete(at);
    }
  }
  return true;
}

function solveFree({ size, matrix, right }: Normal, free: readonly number[]) {
  const part = new Float64Array(free.length * free.length);
  for (const [row, one] of free.entries()) {
    for (const [column, other] of free.entries()) {
      part[row * free.length + column] = matrix[one * size + other]!;
    }
  }
  const solution = solveDense(
    part,
    free.map((one) => right[one]!),
  );
  if (solution === undefined || solution.some((value) => !Number.isFinite(value))) return undefined;
  return new Map(free.map((one, at) => [one, solution[at]!]));
}

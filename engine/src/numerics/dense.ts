// Small dense systems by Gaussian elimination with row exchanges.
// Source: golub2013 ch. 3 (LU with partial pivoting). Weakness: no estimate of the condition.

/** Rows one after the other, `size * size` numbers. */
export type DenseMatrix = Float64Array;

/**
 * Solves `matrix · x = right` for a small full matrix; neither argument is changed.
 *
 * @returns   x, or undefined where the matrix has no inverse to working precision
 * @throws    RangeError — the sizes do not fit together
 * @source    golub2013 alg. 3.4.1 and 3.1.1
 */
export function solveDense(
  matrix: DenseMatrix,
  right: ArrayLike<number>,
): Float64Array | undefined {
  const size = right.length;
  if (matrix.length !== size * size) throw new RangeError('matrix and right side differ in size');
  const factors = matrix.slice();
  const rows = new Int32Array(size);
  if (!factorDense(factors, size, rows)) return undefined;
  const solution = Float64Array.from(right);
  solveFactored(factors, size, rows, solution);
  return solution;
}

/**
 * Replaces a matrix by its triangular factors, in place.
 *
 * @param rows   filled with the row that was exchanged at each column
 * @returns      false where a column has no usable pivot
 */
export function factorDense(matrix: DenseMatrix, size: number, rows: Int32Array): boolean {
  for (let column = 0; column < size; column += 1) {
    const pivotRow = largestBelow(matrix, size, column);
    rows[column] = pivotRow;
    if (pivotRow !== column) swapRows(matrix, size, pivotRow, column);
    const pivot = matrix[column * size + column]!;
    if (pivot === 0 || !Number.isFinite(pivot)) return false;
    for (let row = column + 1; row < size; row += 1) eliminate(matrix, size, row, column, pivot);
  }
  return true;
}

/** Solves with factors from `factorDense`; the right side is overwritten by the answer. */
export function solveFactored(
  factors: DenseMatrix,
  size: number,
  rows: Int32Array,
  right: Float64Array,
): void {
  for (let row = 0; row < size; row += 1) {
    const other = rows[row]!;
    const moved = right[other]!;
    right[other] = right[row]!;
    right[row] = moved;
  }
  for (let row = 1; row < size; row += 1) {
    let sum = right[row]!;
    for (let column = 0; column < row; column += 1) {
      sum -= factors[row * size + column]! * right[column]!;
    }
    right[row] = sum;
  }
  for (let row = size - 1; row >= 0; row -= 1) {
    let sum = right[row]!;
    for (let column = row + 1; column < size; column += 1) {
      sum -= factors[row * size + column]! * right[column]!;
    }
    right[row] = sum / factors[row * size + row]!;
  }
}

function largestBelow(matrix: DenseMatrix, size: number, column: number): number {
  let best = column;
  for (let row = column + 1; row < size; row += 1) {
    const isLarger =
      Math.abs(matrix[row * size + column]!) > Math.abs(matrix[best * size + column]!);
    if (isLarger) best = row;
  }
  return best;
}

function swapRows(matrix: DenseMatrix, size: number, first: number, second: number): void {
  for (let column = 0; column < size; column += 1) {
    const kept = matrix[first * size + column]!;
    matrix[first * size + column] = matrix[second * size + column]!;
    matrix[second * size + column] = kept;
  }
}

function eliminate(
  matrix: DenseMatrix,
  size: number,
  row: number,
  column: number,
  pivot: number,
): void {
  const share = matrix[row * size + column]! / pivot;
  matrix[row * size + column] = share;
  if (share === 0) return;
  for (let next = column + 1; next < size; next += 1) {
    matrix[row * size + next] = matrix[row * size + next]! - share * matrix[column * size + next]!;
  }
}

// Chains in which each unknown touches only its two neighbours, solved in one pass and back.
// Source: golub2013 4.3. Weakness: no exchange of rows; meant for chains whose middle outweighs
// its neighbours, as heat and moisture in slices always give.

export interface Chain {
  /** Factor of the neighbour before; the first is not used. */
  readonly before: ArrayLike<number>;
  readonly middle: ArrayLike<number>;
  /** Factor of the neighbour after; the last is not used. */
  readonly after: ArrayLike<number>;
  readonly right: ArrayLike<number>;
}

/**
 * Solves before·x[i-1] + middle·x[i] + after·x[i+1] = right for all i.
 *
 * @returns   x, or undefined where a pivot vanishes
 * @throws    RangeError — lengths differ
 * @source    golub2013 4.3.6
 */
export function solveChain({ before, middle, after, right }: Chain): Float64Array | undefined {
  const size = middle.length;
  if (before.length !== size || after.length !== size || right.length !== size) {
    throw new RangeError('all four rows of a chain must have one length');
  }
  const carried = new Float64Array(size);
  const solution = new Float64Array(size);
  for (let row = 0; row < size; row += 1) {
    const factor = row === 0 ? 0 : before[row]!;
    const pivot = middle[row]! - factor * (row === 0 ? 0 : carried[row - 1]!);
    if (pivot === 0 || !Number.isFinite(pivot)) return undefined;
    carried[row] = row === size - 1 ? 0 : after[row]! / pivot;
    solution[row] = (right[row]! - factor * (row === 0 ? 0 : solution[row - 1]!)) / pivot;
  }
  for (let row = size - 2; row >= 0; row -= 1) {
    solution[row] = solution[row]! - carried[row]! * solution[row + 1]!;
  }
  return solution;
}

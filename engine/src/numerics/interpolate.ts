// A value between the rows of a table.
// Weakness: straight lines; outside the table the end row stands, and the answer says so.

export interface Interpolated {
  readonly value: number;
  readonly isInside: boolean;
}

/**
 * The value at a place in a table of rising places, along a straight line between rows.
 *
 * @param places   rising, at least one
 * @returns        the end's value outside, with `isInside` false
 * @throws         RangeError — no rows, lengths differ, places not rising, `at` is not a number
 */
export function interpolate(
  places: readonly number[],
  values: readonly number[],
  at: number,
): Interpolated {
  checkTable(places, values, at);
  const last = places.length - 1;
  if (at <= places[0]!) return { value: values[0]!, isInside: at === places[0] };
  if (places[last]! <= at) return { value: values[last]!, isInside: at === places[last] };
  const row = rowBefore(places, at);
  const share = (at - places[row]!) / (places[row + 1]! - places[row]!);
  return { value: values[row]! + share * (values[row + 1]! - values[row]!), isInside: true };
}

/** Halving; the row whose place is at or just before `at`. */
function rowBefore(places: readonly number[], at: number): number {
  let low = 0;
  let high = places.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (places[middle]! <= at) low = middle;
    else high = middle;
  }
  return low;
}

function checkTable(places: readonly number[], values: readonly number[], at: number): void {
  if (places.length === 0 || places.length !== values.length) {
    throw new RangeError('a table needs one value for each place, and at least one row');
  }
  if (Number.isNaN(at)) throw new RangeError('cannot look up what is not a number');
  const isRising = places.every((place, row) => row === 0 || places[row - 1]! < place);
  if (!isRising) throw new RangeError('places of a table must rise');
}

// How is a round cut into so many even pieces?
// Source: plane geometry; the limits of each way are judged, no source.

/** A way to cut: by eye it is possible, and every piece has the same area. */
export type EvenCuts = Wedges | RingAndWedges | Slices | Squares;

export interface Wedges {
  readonly way: 'wedges';
  readonly pieces: number;
  /** Straight across the middle; undefined where the number is odd, then each goes from the middle. */
  readonly across?: number;
  readonly angleDegrees: number;
}

/** A smaller round is cut out of the middle first, then both parts are cut like a cake. */
export interface RingAndWedges {
  readonly way: 'ring-and-wedges';
  readonly pieces: number;
  readonly inner: number;
  readonly outer: number;
  /** Diameter of the inner round over that of the whole. */
  readonly innerOfWhole: number;
}

export interface Slices {
  readonly way: 'slices';
  readonly pieces: number;
}

/** For a long tin: rows along its length, columns across. */
export interface Squares {
  readonly way: 'squares';
  readonly pieces: number;
  readonly rows: number;
  readonly columns: number;
}

/** Narrower wedges than these fall over and are all crust. */
const MOST_WEDGES = 12;

/** Wedges up to twelve; more than that around a smaller round in the middle. */
export function evenRoundCuts(pieces: number): Wedges | RingAndWedges {
  const count = Math.max(1, Math.round(pieces));
  if (count <= MOST_WEDGES) return wedges(count);
  const inner = innerPieces(count);
  return {
    way: 'ring-and-wedges',
    pieces: count,
    inner,
    outer: count - inner,
    innerOfWhole: Math.sqrt(inner / count), // areas of circles go by the square of the diameter
  };
}

const wedges = (pieces: number): Wedges => ({
  way: 'wedges',
  pieces,
  ...(pieces % 2 === 0 ? { across: pieces / 2 } : {}),
  angleDegrees: 360 / pieces,
});

/** About a third in the middle, an even number of them if that leaves the ring even too. */
function innerPieces(count: number): number {
  const third = Math.max(1, Math.round(count / 3));
  return count % 2 === 0 && third % 2 === 1 ? third + 1 : third;
}

/** As nearly square as whole rows and columns allow, on a cake of this length and width. */
export function evenSquares(
  pieces: number,
  { length, width }: { readonly length: number; readonly width: number },
): Squares {
  const count = Math.max(1, Math.round(pieces));
  let best: Squares = { way: 'squares', pieces: count, rows: count, columns: 1 };
  for (let columns = 1; columns <= count; columns += 1) {
    if (count % columns !== 0) continue;
    const next: Squares = { way: 'squares', pieces: count, rows: count / columns, columns };
    if (offSquare(next, length / width) < offSquare(best, length / width)) best = next;
  }
  return best;
}

const offSquare = ({ rows, columns }: Squares, lengthOverWidth: number): number =>
  Math.abs(Math.log((lengthOverWidth / rows) * columns));

// How many round pieces lie on a round floor, and where.
// Best-known packings of equal circles up to 37 (birginGentil2009); beyond that a hexagonal
// lattice, which is a valid packing but not the best one.

import table from '../../data/circle-packing.json' with { type: 'json' };
import { metres } from '../quantity/unit.ts';
import type { PlacedPiece } from './load.ts';

const MOST_PIECES = 400;

export interface PieceSize {
  readonly floorMetres: number;
  readonly pieceMetres: number;
  /** Kept between pieces; a piece may touch the wall. */
  readonly gapMetres: number;
}

/**
 * Most pieces that lie flat on the floor with the gap between them: D + g ≥ ratio (d + g).
 *
 * @source birginGentil2009 table 1 (grade A)
 */
export function piecesThatFit(size: PieceSize): number {
  const room = roomRatio(size);
  if (!(1 <= room)) return 0;
  const rows = table.rows.filter((row) => row.ratio <= room + 1e-9);
  const best = rows.at(-1)?.n ?? 0;
  return best < table.rows.length ? best : Math.max(best, hexagonal(room).length);
}

/** Centres of `count` pieces on the floor; undefined where so many don't fit. */
export function placePieces(count: number, size: PieceSize): readonly PlacedPiece[] | undefined {
  if (piecesThatFit(size) < count) return undefined;
  const row = table.rows.find((each) => each.n === count);
  const centres = row?.centres ?? hexagonal(roomRatio(size)).slice(0, count);
  const scale = scaleFor(row?.ratio, size);
  return centres.map(([x = 0, y = 0]) => ({
    x: metres(x * scale),
    y: metres(y * scale),
    diameter: metres(size.pieceMetres),
  }));
}

/** The smallest floor that holds this many pieces. */
export function floorForPieces(count: number, pieceMetres: number, gapMetres: number): number {
  const row = table.rows.find((each) => each.n === count);
  const ratio = row?.ratio ?? 1 + Math.sqrt(count / 0.78); // past the table; judged
  return ratio * (pieceMetres + gapMetres) - gapMetres;
}

const roomRatio = ({ floorMetres, pieceMetres, gapMetres }: PieceSize) =>
  (floorMetres + gapMetres) / (pieceMetres + gapMetres);

/** Spread the pieces as far apart as the floor allows: the outer ones touch the wall. */
function scaleFor(ratio: number | undefined, size: PieceSize): number {
  const touching = (size.pieceMetres + size.gapMetres) / 2;
  if (ratio === undefined || ratio <= 1) return touching;
  return (size.floorMetres - size.pieceMetres) / 2 / (ratio - 1);
}

/** Lattice points whose unit circles lie in a circle of radius `room`, from the middle outwards. */
function hexagonal(room: number): readonly (readonly [number, number])[] {
  const reach = Math.min(20, Math.ceil(room));
  const points: (readonly [number, number])[] = [];
  for (let row = -reach; row <= reach; row++) {
    for (let column = -reach; column <= reach; column++) {
      const x = 2 * column + (row % 2 === 0 ? 0 : 1);
      const y = row * Math.sqrt(3);
      if (Math.hypot(x, y) + 1 <= room + 1e-9) points.push([x, y]);
    }
  }
  return points.sort((a, b) => Math.hypot(...a) - Math.hypot(...b)).slice(0, MOST_PIECES);
}

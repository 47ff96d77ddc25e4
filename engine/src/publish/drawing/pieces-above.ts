// How do the pieces lie on the floor, seen from above? The floor as a circle, each piece where it is.

import type { PlacedPiece } from '../../menu/load.ts';
import { circle, ink, picture } from './svg.ts';

const WIDTH = 260;
const EDGE = 10;

export interface PiecesView {
  readonly floorMetres: number;
  readonly placed: readonly PlacedPiece[];
  readonly alt: string;
}

/** Undefined pieces draw an empty floor; everything is to scale. */
export function piecesAbove({ floorMetres, placed, alt }: PiecesView): string {
  const middle = WIDTH / 2;
  const scale = (WIDTH - 2 * EDGE) / Math.max(1e-3, floorMetres);
  return picture({
    width: WIDTH,
    height: WIDTH,
    kind: 'pieces',
    title: 'Floor from above',
    alt,
    children: [
      circle(middle, middle, middle - EDGE, { fill: 'none', stroke: ink.iron, 'stroke-width': 4 }),
      ...placed.map(({ x, y, diameter }) =>
        circle(middle + x * scale, middle + y * scale, (diameter / 2) * scale, {
          fill: ink.oat,
          stroke: ink.ink,
          'stroke-width': 1.5,
        }),
      ),
    ],
  });
}

// How do the pieces lie on the floor, seen from above? The floor as a circle, each piece where it is.

import type { PlacedPiece } from '../../menu/load.ts';
import { circle, ink, line, picture } from './svg.ts';

const WIDTH = 260;
const EDGE = 10;

export interface PiecesView {
  readonly floorMetres: number;
  readonly placed: readonly PlacedPiece[];
  /** Scored through in so many; 0 where it is not. */
  readonly wedges?: number;
  readonly alt: string;
}

/** Undefined pieces draw an empty floor; everything is to scale. */
export function piecesAbove({ floorMetres, placed, wedges = 0, alt }: PiecesView): string {
  const middle = WIDTH / 2;
  const scale = (WIDTH - 2 * EDGE) / Math.max(1e-3, floorMetres);
  return picture({
    width: WIDTH,
    height: WIDTH,
    kind: 'pieces',
    title: 'Floor from above',
    alt,
    children: [
      circle(middle, middle, middle - EDGE + 4, {
        fill: 'none',
        stroke: ink.soft,
        'stroke-width': 4,
      }),
      ...placed.map(({ x, y, diameter }) =>
        circle(middle + x * scale, middle + y * scale, (diameter / 2) * scale, {
          fill: ink.oat,
          stroke: ink.ink,
          'stroke-width': 1.5,
        }),
      ),
      ...scores(wedges, ((placed[0]?.diameter ?? 0) / 2) * scale),
    ],
  });
}

/** Cuts from the middle out. */
function scores(wedges: number, radius: number): readonly string[] {
  const middle = WIDTH / 2;
  return Array.from({ length: wedges }, (_, wedge) => {
    const angle = (2 * Math.PI * wedge) / wedges;
    const [x, y] = [middle + radius * Math.sin(angle), middle - radius * Math.cos(angle)];
    return line(middle, middle, x, y, { 'stroke-width': 1.5, 'stroke-dasharray': '5 3' });
  });
}

// How does one coal look from above? Ash grey with a glowing edge; a wood coal is a broken piece.

import type { CoalPlace } from '../../coals/coal-plan.ts';
import { element, group, ink, path, points, shortNumber } from './svg.ts';

/** Side of a usual briquette seen from above, for the drawing only (common practice, no source). */
export const BRIQUETTE_METRES = 0.044;

/** A little gap is left so that touching coals can be counted. */
const DRAWN_SHARE = 0.96;

export interface CoalDrawing {
  readonly fuel: 'briquettes' | 'wood-coals';
  readonly places: readonly CoalPlace[];
  /** A usual briquette where nothing is known. */
  readonly pieceWidth?: number | undefined;
  readonly centre: readonly [number, number];
  /** Drawing units to the metre. */
  readonly scale: number;
  /** Seen from the side a coal is a pillow: lower than it is wide. */
  readonly flat?: boolean;
  /** Drawn thin and empty: it lies before or behind the cut. */
  readonly isOutline?: boolean;
}

/** Every coal where it lies. Wood coals are broken pieces that no one can count. */
export const coals = ({
  fuel,
  places,
  centre,
  scale,
  flat = false,
  isOutline = false,
  pieceWidth,
}: CoalDrawing) =>
  group(
    { class: 'coals' },
    ...places.map((place, index) => {
      const x = centre[0] + place.x * scale;
      const y = centre[1] - place.y * scale;
      const side = (pieceWidth ?? BRIQUETTE_METRES) * scale * DRAWN_SHARE;
      const turned = (Math.atan2(-place.y, place.x) * 180) / Math.PI;
      return fuel === 'briquettes'
        ? isOutline
          ? outline(x, y, side)
          : briquette(x, y, side, flat ? 0 : turned, flat ? FLAT_SHARE : 1)
        : woodPieces(x, y, side, index, flat);
    }),
  );

/** A coal from the side is lower than wide. */
export const FLAT_SHARE = 0.62;

const outline = (x: number, y: number, side: number) =>
  element('rect', {
    x: x - side / 2,
    y: y - (side * FLAT_SHARE) / 2,
    width: side,
    height: side * FLAT_SHARE,
    rx: side * 0.2,
    fill: 'none',
    stroke: ink.ember,
    'stroke-width': 1.2,
    'stroke-opacity': '0.6',
  });

const briquette = (x: number, y: number, side: number, turned: number, height: number) =>
  group(
    { transform: `translate(${shortNumber(x)} ${shortNumber(y)}) rotate(${shortNumber(turned)})` },
    element('rect', {
      x: -side / 2,
      y: (-side * height) / 2,
      width: side,
      height: side * height,
      rx: side * 0.3,
      fill: ink.ash,
      stroke: ink.ember,
      'stroke-width': side * 0.09,
    }),
    path(`M${shortNumber(-side * 0.22)} 0H${shortNumber(side * 0.22)}`, {
      stroke: ink.soft,
      'stroke-width': side * 0.09,
    }),
  );

/** Two or three splinters around the place: shapes repeat, but never as one mark a coal. */
function woodPieces(x: number, y: number, side: number, index: number, flat: boolean): string {
  const count = 2 + (index % 2);
  return group(
    {},
    ...Array.from({ length: count }, (_, piece) => {
      const way = index * 2.4 + piece * 2.1; // steps that don't close on themselves
      const off = side * (0.2 + 0.05 * ((index + piece) % 3)); // no splinter far out of its place
      const size = side * ((flat ? 0.3 : 0.2) + 0.05 * ((index * 7 + piece * 3) % 3));
      // From the side they lie in one row on what carries them, whatever their size.
      const across = flat ? (piece - (count - 1) / 2) * side * 0.4 : off * Math.cos(way);
      const down = flat ? side * 0.31 - size * 0.62 : off * Math.sin(way);
      return splinter(x + across, y + down, flat ? size * 0.62 : size, index * 5 + piece);
    }),
  );
}

function splinter(x: number, y: number, radius: number, seed: number): string {
  const corners = 5 + (seed % 3);
  const outline = Array.from({ length: corners }, (_, corner): readonly [number, number] => {
    const angle = (corner / corners) * 2 * Math.PI + seed;
    const reach = radius * (0.75 + 0.35 * ((seed * 3 + corner * 5) % 4) * 0.4);
    return [x + reach * Math.cos(angle), y + reach * Math.sin(angle)];
  });
  return element('polygon', {
    points: points(outline),
    fill: ink.ash,
    stroke: ink.ember,
    'stroke-width': radius * 0.22,
    'stroke-linejoin': 'round',
  });
}

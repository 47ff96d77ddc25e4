// The iron of an oven from the side, cut open: wall and ears, legs, lid with its flange, and what it
// stands on. Shared by the drawing of one oven and that of two stacked.

import type { CampOven, Place } from '../../camp/camp.ts';
import { group, ink, line, path, shortNumber } from './svg.ts';

const LEG_METRES = 0.05; // about 2 inches, common practice, no source
export const WALL = 7;

/** Where the parts of an oven are on the page. */
export interface OvenShape {
  readonly scale: number;
  readonly left: number;
  readonly right: number;
  readonly lidY: number;
  readonly floorY: number;
  readonly groundY: number;
  readonly floorLeft: number;
  readonly floorRight: number;
}

/** An oven as wide as wanted, its lid at a height, the rest to its own scale. */
export function ovenShape(
  oven: CampOven,
  { left, width, lidY }: { readonly left: number; readonly width: number; readonly lidY: number },
): OvenShape {
  const scale = width / oven.diameter;
  const floorY = lidY + oven.depth * scale;
  const inset = ((oven.diameter - (oven.floorDiameter ?? (oven.diameter * 10) / 12)) / 2) * scale;
  return {
    scale,
    left,
    right: left + width,
    lidY,
    floorY,
    groundY: floorY + WALL + LEG_METRES * scale,
    floorLeft: left + inset,
    floorRight: left + width - inset,
  };
}

export const pot = ({ left, right, lidY, floorY, floorLeft, floorRight }: OvenShape) =>
  group(
    { class: 'pot' },
    path(
      `M${shortNumber(left)} ${shortNumber(lidY)}L${shortNumber(floorLeft)} ${shortNumber(floorY + WALL / 2)}` +
        `H${shortNumber(floorRight)}L${shortNumber(right)} ${shortNumber(lidY)}`,
      { fill: 'none', stroke: ink.ink, 'stroke-width': WALL, 'stroke-linejoin': 'round' },
    ),
    // The ears that the bail hangs in.
    path(`M${shortNumber(left - 2)} ${shortNumber(lidY + 12)}h-14v9h12`, {
      fill: 'none',
      stroke: ink.ink,
      'stroke-width': 4,
    }),
    path(`M${shortNumber(right + 2)} ${shortNumber(lidY + 12)}h14v9h-12`, {
      fill: 'none',
      stroke: ink.ink,
      'stroke-width': 4,
    }),
  );

const HANDLE_HEIGHT = 18;

/** A slightly domed lid whose flange stands up and keeps the coals in. */
export function lid({ left, right, lidY }: OvenShape, handleHeight = HANDLE_HEIGHT): string {
  const middle = (left + right) / 2;
  const top = lidY - 8;
  return group(
    { class: 'lid' },
    path(
      `M${shortNumber(left - 8)} ${shortNumber(lidY - 22)}V${shortNumber(top)}` +
        `Q${shortNumber(middle)} ${shortNumber(top - 13)} ` +
        `${shortNumber(right + 8)} ${shortNumber(top)}V${shortNumber(lidY - 22)}`,
      { fill: 'none', stroke: ink.ink, 'stroke-width': 6, 'stroke-linejoin': 'round' },
    ),
    path(
      `M${shortNumber(middle - 20)} ${shortNumber(top - 8)}v${-handleHeight}` +
        `q20 -13 40 0v${handleHeight}`,
      {
        fill: 'none',
        stroke: ink.ink,
        'stroke-width': 6,
      },
    ),
  );
}

export const legs = ({ floorLeft, floorRight, floorY, groundY }: OvenShape) =>
  group(
    { class: 'legs' },
    ...[floorLeft + 16, floorRight - 16].map((x) =>
      path(
        `M${shortNumber(x - 8)} ${shortNumber(floorY + 4)}h16` +
          `L${shortNumber(x + 4)} ${shortNumber(groundY)}h-8z`,
        { fill: ink.ink },
      ),
    ),
  );

export function hearth(kind: Place['hearth'], { left, right, groundY }: OvenShape): string {
  const from = left - 26;
  const to = right + 26;
  if (kind === 'ground') {
    const strokes = Array.from({ length: 20 }, (_, index) => {
      const x = from + 8 + (index * (to - from)) / 20;
      return line(x, groundY, x - 8, groundY + 9, { stroke: ink.soft, 'stroke-width': 1.2 });
    });
    return group(
      { class: 'ground' },
      line(from, groundY, to, groundY, { 'stroke-width': 2.5 }),
      ...strokes,
    );
  }
  const lip = kind === 'fire-pan' ? 16 : 0;
  const foot = kind === 'fire-pan' ? 14 : 26;
  return group(
    { class: kind },
    path(
      `M${shortNumber(from)} ${shortNumber(groundY - lip)}V${shortNumber(groundY + 2)}` +
        `H${shortNumber(to)}V${shortNumber(groundY - lip)}`,
      { fill: 'none', stroke: ink.ink, 'stroke-width': 4 },
    ),
    ...[from + 30, to - 30].map((x) =>
      line(x, groundY + 3, x, groundY + 3 + foot, { 'stroke-width': 5 }),
    ),
  );
}

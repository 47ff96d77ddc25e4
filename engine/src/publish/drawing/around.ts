// What stands around an oven seen from above: wind, screen, cook. North is up in every drawing.

import type { Degrees } from '../../quantity/unit.ts';
import { circle, group, ink, line, path, shortNumber, textWidth, words } from './svg.ts';

export interface Around {
  readonly centre: readonly [number, number];
  /** Outside of what is drawn of the oven. */
  readonly radius: number;
  readonly windFrom: Degrees;
  readonly isStill: boolean;
  readonly screened: boolean;
}

const COMPASS = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const;
export const compassPoint = (from: number) => COMPASS[((Math.round(from / 45) % 8) + 8) % 8] ?? 'N';

/** Unit vector on the page, towards a compass direction; north is up. */
const towards = (degrees: number): readonly [number, number] => [
  Math.sin((degrees * Math.PI) / 180),
  -Math.cos((degrees * Math.PI) / 180),
];

/** Three strokes from the wind's side, pointing the way it blows; nothing in still air. */
export function windArrow({ centre, radius, windFrom, isStill }: Around): string {
  if (isStill) return '';
  const [ux, uy] = towards(windFrom);
  const [sx, sy] = [-uy, ux];
  const strokes = [-8, 0, 8].map((aside) => {
    const near = radius + (aside === 0 ? 9 : 18);
    const far = radius + (aside === 0 ? 37 : 33);
    const x = centre[0] + sx * aside;
    const y = centre[1] + sy * aside;
    return line(x + ux * far, y + uy * far, x + ux * near, y + uy * near, {
      stroke: ink.steel,
      'stroke-width': 2.4,
      'stroke-linecap': 'round',
    });
  });
  const tip = radius + 8;
  const barbs = [-1, 1].map((side) =>
    line(
      centre[0] + ux * tip,
      centre[1] + uy * tip,
      centre[0] + ux * (tip + 8) + sx * side * 6,
      centre[1] + uy * (tip + 8) + sy * side * 6,
      { stroke: ink.steel, 'stroke-width': 2.4, 'stroke-linecap': 'round' },
    ),
  );
  return group({ class: 'wind' }, ...strokes, ...barbs);
}

/**
 * Where the cook stands: across the wind, so that neither smoke nor sparks blow into the face and
 * the shadow of the body is not a second screen (common practice, no source).
 */
export const cookStandsAt = (windFrom: number) => (windFrom + 90) % 360;

export function cookMark({ centre, radius, windFrom, isStill }: Around): string {
  const [ux, uy] = towards(isStill ? 180 : cookStandsAt(windFrom));
  const x = centre[0] + ux * (radius + 15);
  const y = centre[1] + uy * (radius + 15);
  const [sx, sy] = [-uy, ux];
  const foot = (side: number) =>
    path(
      `M${shortNumber(x + sx * side * 5)} ${shortNumber(y + sy * side * 5)}` +
        `l${shortNumber(-ux * 11)} ${shortNumber(-uy * 11)}`,
      { stroke: ink.ink, 'stroke-width': 6, 'stroke-linecap': 'round' },
    );
  const width = textWidth('you', 14, true);
  const out = 14;
  return group(
    { class: 'cook' },
    foot(-1),
    foot(1),
    words({
      x: Math.max(width / 2, Math.min(2 * centre[0] - width / 2, x + ux * (out + width * 0.3))),
      y: y + uy * out + 4,
      text: 'you',
      size: 14,
      bold: true,
      anchor: 'middle',
    }),
  );
}

/** The screen as a thick arc on the wind's side; the gap in it is its open side. */
export function windScreen({ centre, radius, windFrom, screened }: Around): string {
  if (!screened) return '';
  const reach = radius + 6;
  const [fromX, fromY] = towards(windFrom - 68);
  const [toX, toY] = towards(windFrom + 68);
  const at = (x: number, y: number) =>
    `${shortNumber(centre[0] + x * reach)} ${shortNumber(centre[1] + y * reach)}`;
  return path(
    `M${at(fromX, fromY)}A${shortNumber(reach)} ${shortNumber(reach)} 0 0 1 ${at(toX, toY)}`,
    { class: 'screen', fill: 'none', stroke: ink.ink, 'stroke-width': 5 },
  );
}

/** A dot at the rim where the lid's chalk mark is: the witness of a turn. */
export const chalkMark = (x: number, y: number) =>
  circle(x, y, 3.4, { class: 'chalk', fill: ink.sheet, stroke: ink.ink, 'stroke-width': 1 });

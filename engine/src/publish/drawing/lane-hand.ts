// One pair of hands over the day: an outlined box for work, a hatched one for work at the fire.

import { LANE, type LaneAxis, stack } from './lane-axis.ts';
import type { Patterns } from './pattern.ts';
import { element, fits, group, ink, textWidth, words } from './svg.ts';

export interface WorkBox {
  readonly from: number;
  readonly to: number;
  /** The number of the job in the list; 0 draws none. */
  readonly number: number;
  readonly text: string;
  readonly isFire: boolean;
}

interface HandLane {
  readonly work: readonly WorkBox[];
  readonly axis: LaneAxis;
  readonly top: number;
  readonly patterns: Patterns;
}

export function handLane({ work, axis, top, patterns }: HandLane) {
  const boxes = stack(work, (box) => [box.from, box.to]);
  const rows = Math.max(1, ...boxes.map(({ row }) => row + 1));
  const boxesBottom = top + rows * (LANE.box + 3);
  const named = boxes.map(({ thing, row }) =>
    boxOf(thing, axis, top + row * (LANE.box + 3), patterns),
  );
  const outside = stack(
    named.filter((box) => !box.isNamed && box.number > 0),
    (box) => [box.middle - box.width / 2 - 2, box.middle + box.width / 2 + 2],
  );
  const numbers = outside.map(({ thing, row }) =>
    words({
      x: thing.middle,
      y: boxesBottom + 11 + row * LANE.numberRow,
      text: String(thing.number),
      size: 11.5,
      anchor: 'middle',
      halo: true,
    }),
  );
  const numberRows = outside.reduce((most, { row }) => Math.max(most, row + 1), 0);
  return {
    svg: group({ class: 'hand' }, ...named.map(({ svg }) => svg), ...numbers),
    bottom: boxesBottom + numberRows * LANE.numberRow + 4,
  };
}

function boxOf(box: WorkBox, axis: LaneAxis, y: number, patterns: Patterns) {
  const x = axis.x(box.from);
  const width = Math.max(3, axis.x(box.to) - x);
  const named = [`${box.number} ${box.text}`, `${box.number}`].find((text) =>
    fits(text, width - 6, 12),
  );
  const label = box.number === 0 ? undefined : named;
  const numberWide = textWidth(String(box.number), 11.5);
  const middle = x + width / 2;
  return {
    number: box.number,
    isNamed: label !== undefined,
    middle: Math.max(axis.left + numberWide / 2, Math.min(middle, axis.right - numberWide / 2)),
    width: numberWide,
    svg: group(
      {},
      element('rect', {
        x,
        y,
        width,
        height: LANE.box,
        rx: 1.5,
        fill: box.isFire ? patterns.hatch : ink.sheet,
        stroke: ink.ink,
        'stroke-width': 1.1,
      }),
      label === undefined ? '' : nameIn(label, x, y, box.isFire),
    ),
  };
}

/** On hatching a name stands on a plate of its own. */
const nameIn = (text: string, x: number, y: number, isFire: boolean) =>
  group(
    {},
    isFire
      ? element('rect', {
          x: x + 2.5,
          y: y + 3.5,
          width: textWidth(text, 12) + 2,
          height: LANE.box - 7,
          fill: ink.sheet,
        })
      : '',
    words({ x: x + 4, y: y + 15, text, size: 12 }),
  );

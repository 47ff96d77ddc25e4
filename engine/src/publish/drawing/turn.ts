// What does a turn look like from above? The states one after the other, with the two witnesses: the
// handle and chalk mark of the lid, and the ears of the oven. The wedge goes with the food.

import type { Turn } from '../../coals/coal-plan.ts';
import { type Frame, PHONE_WIDTH } from './frame.ts';
import {
  circle,
  element,
  group,
  ink,
  path,
  picture,
  points,
  shortNumber,
  words,
  wrap,
} from './svg.ts';

export interface TurnDrawing {
  readonly turn: Pick<Turn, 'kind' | 'angle'>;
  /** A caption for each state: before, after the first move, after the second if there is one. */
  readonly captions: readonly string[];
  readonly alt: string;
}

const CELL = 210;
const CENTRE_Y = 92;
const LID = 54;
const OVEN = 66;
/** Still 7 points where the drawing is half as wide as a sheet of paper. */
const CAPTION = 18;
const CAPTION_ROW = 20;

interface Cell {
  readonly width: number;
  /** Of the ovens against their size on paper. */
  readonly scale: number;
  readonly size: number;
  readonly row: number;
}

const cellFor = (frame: Frame, states: number): Cell =>
  frame === 'sheet'
    ? { width: CELL, scale: 1, size: CAPTION, row: CAPTION_ROW }
    : { width: PHONE_WIDTH / states, scale: PHONE_WIDTH / states / CELL, size: 13, row: 16 };

const linesOf = (caption: string, index: number, { width, size }: Cell) =>
  wrap(caption, width - 6, size, index > 0);

const rowsOf = (captions: readonly string[], cell: Cell) =>
  Math.max(...captions.map((text, index) => linesOf(text, index, cell).length));

export function turnDrawing({ turn, captions, alt }: TurnDrawing, frame: Frame = 'sheet'): string {
  const states = statesOf(turn);
  const cell = cellFor(frame, states.length);
  return picture({
    width: cell.width * states.length,
    height: FOOT * cell.scale + cell.row * rowsOf(captions, cell),
    kind: 'turn',
    title: 'The turn, seen from above',
    alt,
    children: states.map((state, index) =>
      stateDrawing(state, index, { cell, caption: captions[index] ?? '' }),
    ),
  });
}

interface State {
  /** Degrees clockwise from the start. */
  readonly oven: number;
  readonly lid: number;
  /** The move that led here. */
  readonly moved?: { readonly what: 'oven' | 'lid'; readonly by: number };
}

function statesOf({ kind, angle }: TurnDrawing['turn']): readonly State[] {
  const before: State = { oven: 0, lid: 0 };
  if (kind === 'lid-alone')
    return [before, { oven: 0, lid: angle, moved: { what: 'lid', by: angle } }];
  const both: State = { oven: angle, lid: angle, moved: { what: 'oven', by: angle } };
  if (kind === 'oven-with-lid') return [before, both];
  return [before, both, { oven: angle, lid: 0, moved: { what: 'lid', by: -angle } }];
}

/** Where the captions begin, below the ovens. */
const FOOT = 182;

interface Captioned {
  readonly cell: Cell;
  readonly caption: string;
}

function stateDrawing(state: State, index: number, { cell, caption }: Captioned): string {
  const middle = cell.width * (index + 0.5);
  const lines = linesOf(caption, index, cell);
  return group(
    { class: 'state' },
    cell.scale === 1
      ? ovenAbove(state, middle)
      : element(
          'g',
          { transform: `scale(${cell.scale.toFixed(3)})` },
          ovenAbove(state, middle / cell.scale),
        ),
    ...lines.map((text, line) =>
      words({
        x: middle,
        y: (FOOT + 16) * cell.scale + line * cell.row,
        text,
        size: cell.size,
        bold: index > 0,
        anchor: 'middle',
      }),
    ),
  );
}

function ovenAbove({ oven, lid, moved }: State, x: number): string {
  return [
    ears(x, oven),
    circle(x, CENTRE_Y, OVEN, { fill: ink.sheet, stroke: ink.ink, 'stroke-width': 5 }),
    wedge(x, oven),
    circle(x, CENTRE_Y, LID, { fill: ink.oat, stroke: ink.ink, 'stroke-width': 2 }),
    handle(x, lid),
    dot(x, lid),
    moved === undefined ? '' : arrow(x, moved.what === 'oven' ? OVEN + 15 : LID - 13, moved),
  ].join('');
}

/** A point at an angle clockwise from north. */
const at = (x: number, degrees: number, radius: number): readonly [number, number] => [
  x + radius * Math.sin((degrees * Math.PI) / 180),
  CENTRE_Y - radius * Math.cos((degrees * Math.PI) / 180),
];

const ears = (x: number, turned: number) =>
  [90, 270]
    .map((side) => {
      const [cx, cy] = at(x, turned + side, OVEN + 5);
      return circle(cx, cy, 7, { fill: 'none', stroke: ink.ink, 'stroke-width': 4 });
    })
    .join('');

/** Between lid and wall, so that it is seen to stay behind when the lid goes back. */
function wedge(x: number, turned: number): string {
  const corners = [
    at(x, turned, LID + 1),
    at(x, turned - 9, OVEN - 3),
    at(x, turned + 9, OVEN - 3),
  ];
  return element('polygon', { class: 'food', points: points(corners), fill: ink.ink });
}

function handle(x: number, turned: number): string {
  const [x1, y1] = at(x, turned + 90, 19);
  const [x2, y2] = at(x, turned + 270, 19);
  return element('line', {
    x1,
    y1,
    x2,
    y2,
    stroke: ink.ink,
    'stroke-width': 9,
    'stroke-linecap': 'round',
  });
}

function dot(x: number, turned: number): string {
  const [cx, cy] = at(x, turned, LID - 7);
  return circle(cx, cy, 4.5, {
    class: 'chalk',
    fill: ink.sheet,
    stroke: ink.ink,
    'stroke-width': 1,
  });
}

/** From where it was to where it is, short of both so that the witnesses stay free. */
function arrow(x: number, radius: number, { what, by }: NonNullable<State['moved']>): string {
  const start = what === 'oven' ? 0 : -by;
  const way = Math.sign(by);
  const from = start + way * 9;
  const to = start + by - way * 9;
  const [x1, y1] = at(x, from, radius);
  const [x2, y2] = at(x, to, radius);
  const sweep = by > 0 ? 1 : 0;
  const large = Math.abs(to - from) > 180 ? 1 : 0;
  const colour = what === 'oven' ? ink.ember : ink.ink;
  const head = [
    at(x, to + way * 7, radius),
    at(x, to - way * 5, radius - 7),
    at(x, to - way * 5, radius + 7),
  ];
  return group(
    { class: 'arrow' },
    path(
      `M${shortNumber(x1)} ${shortNumber(y1)}A${radius} ${radius} 0 ${large} ${sweep} ${shortNumber(x2)} ${shortNumber(y2)}`,
      { fill: 'none', stroke: colour, 'stroke-width': 4.5 },
    ),
    element('polygon', { points: points(head), fill: colour }),
  );
}

// Who does what when, which oven is busy, how many coals are lit: lanes over the clock.
// A name that doesn't fit in its box becomes a number, and the list under the drawing spells it out.

import { LANE, type LaneAxis, laneAxis, stack } from './lane-axis.ts';
import { handLane, type WorkBox } from './lane-hand.ts';
import { type LitPoint, litLane } from './lane-lit.ts';
import { ovenLane, type SpanBar } from './lane-oven.ts';
import { group, ink, line, picture, textWidth, words, wrap } from './svg.ts';

export interface DayDrawing {
  readonly from: number;
  readonly to: number;
  readonly clockAt: (minute: number) => string;
  readonly hands: readonly { readonly name: string; readonly work: readonly WorkBox[] }[];
  readonly ovens: readonly { readonly name: string; readonly spans: readonly SpanBar[] }[];
  readonly lit: readonly LitPoint[];
  /** False for wood coals: shape without numbers. */
  readonly countsCoals: boolean;
  readonly servings: readonly { readonly at: number; readonly text: string }[];
  readonly words: { readonly name: string; readonly lit: string; readonly onOvens: string };
  /** The boxes are explained once, under the last strip. */
  readonly hasKey: boolean;
  readonly alt: string;
}

const SERVING_ROW = 15;
/** Top and bottom of what is drawn. */
type Reach = readonly [number, number];

interface Drawn {
  readonly svg: string;
  readonly bottom: number;
}

/** The whole day on one wide drawing. */
export function dayDrawing(day: DayDrawing): string {
  const axis = laneAxis(day.from, day.to);
  const servings = servingNames(axis, day);
  const top = 32 + servings.rows * SERVING_ROW;
  let y: number = top;
  const lanes: string[] = [];
  const put = (name: string, drawn: Drawn, heavy: boolean) => {
    lanes.push(laneName(name, y), drawn.svg, rule(drawn.bottom, heavy));
    y = drawn.bottom + LANE.gap;
  };
  for (const hand of day.hands) put(hand.name, handLane(hand.work, axis, y), false);
  y += LANE.gap;
  for (const oven of day.ovens) put(oven.name, ovenLane(oven.spans, axis, y), true);
  if (day.lit.length > 0) {
    y += LANE.gap;
    put(
      day.words.name,
      litLane({ lit: day.lit, countsCoals: day.countsCoals, axis, top: y, words: day.words }),
      false,
    );
  }
  const keys = day.hasKey ? keyRow(y) : { svg: '', bottom: y };
  return picture({
    width: LANE.width,
    height: keys.bottom + 6,
    kind: 'day',
    title: 'Day sheet',
    alt: day.alt,
    children: [
      hours(axis, [top, y], day),
      servingLines(axis, [top, y], day),
      ...lanes,
      servings.svg,
      keys.svg,
    ],
  });
}

function laneName(name: string, y: number): string {
  const lines = wrap(name, LANE.left - 12, 13, true);
  return lines
    .map((text, index) => words({ x: 0, y: y + 17 + index * 15, text, size: 13, bold: true }))
    .join('');
}

const rule = (y: number, heavy: boolean) =>
  line(0, y, LANE.right, y, {
    stroke: heavy ? ink.ink : ink.line,
    'stroke-width': heavy ? 1.6 : 1,
  });

function hours(axis: LaneAxis, [top, bottom]: Reach, day: DayDrawing): string {
  return group(
    { class: 'hours' },
    ...axis.ticks.flatMap((minute) => [
      line(axis.x(minute), top - 8, axis.x(minute), bottom, {
        stroke: ink.line,
        'stroke-width': 1,
      }),
      words({
        x: axis.x(minute),
        y: top - 14,
        text: day.clockAt(minute),
        size: 12,
        anchor: axis.x(minute) > LANE.right - 40 ? 'end' : 'middle',
        fill: ink.soft,
      }),
    ]),
  );
}

const servingLines = (axis: LaneAxis, [top, bottom]: Reach, { servings }: DayDrawing) =>
  group(
    { class: 'servings' },
    ...servings.map(({ at }) =>
      line(axis.x(at), top - 26, axis.x(at), bottom, { stroke: ink.ember, 'stroke-width': 2.5 }),
    ),
  );

/** Names of the servings over their lines, in as many rows as they need. */
function servingNames(axis: LaneAxis, { servings }: DayDrawing) {
  const named = servings.map((serving) => {
    const width = textWidth(serving.text, 13, true);
    return {
      ...serving,
      x: Math.max(0, Math.min(axis.x(serving.at) - 3, LANE.right - width)),
      width,
    };
  });
  const placed = stack(named, ({ x, width }) => [x, x + width + 8]);
  return {
    rows: placed.reduce((most, { row }) => Math.max(most, row + 1), 0),
    svg: group(
      {},
      ...placed.map(({ thing, row }) =>
        words({
          x: thing.x,
          y: 12 + row * SERVING_ROW,
          text: thing.text,
          size: 13,
          bold: true,
          fill: ink.ember,
        }),
      ),
    ),
  };
}

/** How to read the boxes, said once. */
function keyRow(y: number): Drawn {
  const top = y + 6;
  const entries: readonly (readonly [string, string])[] = [
    ['work', 'hands at work'],
    ['fire', 'work at the fire'],
    ['heating', 'oven heating empty'],
    ['cooking', 'cooking'],
    ['holding', 'kept hot'],
    ['second-rise', 'dough rising in it'],
  ];
  const step = LANE.right / entries.length;
  const drawn = entries.map(([kind, text], index) =>
    group(
      {},
      keyBox(kind, index * step, top),
      words({ x: index * step + 34, y: top + 12, text, size: 12, fill: ink.soft }),
    ),
  );
  return { svg: group({ class: 'key' }, ...drawn), bottom: top + 18 };
}

function keyBox(kind: string, x: number, y: number): string {
  const axis: LaneAxis = { x: (minute) => minute, ticks: [] };
  return kind === 'work' || kind === 'fire'
    ? handLane([{ from: x, to: x + 28, number: 0, text: '', isFire: kind === 'fire' }], axis, y - 4)
        .svg
    : ovenLane([{ from: x, to: x + 28, state: kind as SpanBar['state'], text: '' }], axis, y - 4)
        .svg;
}

// Who does what when, which oven is busy, how many coals are lit: lanes over the clock.
// A name that doesn't fit in its box becomes a number, and the list under the drawing spells it out.

import { LANE, type LaneAxis, type LaneFrame, laneAxis, stack, WIDE } from './lane-axis.ts';
import { type FireLane, fireLane } from './lane-fire.ts';
import { handLane, type WorkBox } from './lane-hand.ts';
import { type KeyWords, keyRows } from './lane-key.ts';
import { type LitPoint, litLane } from './lane-lit.ts';
import { ovenLane, type SpanBar } from './lane-oven.ts';
import { patternsFor } from './pattern.ts';
import { fits, group, ink, line, picture, textWidth, words, wrap } from './svg.ts';

export interface DayDrawing {
  readonly from: number;
  readonly to: number;
  readonly clockAt: (minute: number) => string;
  readonly hands: readonly { readonly name: string; readonly work: readonly WorkBox[] }[];
  readonly ovens: readonly { readonly name: string; readonly spans: readonly SpanBar[] }[];
  /** A feeder fire that is kept up; left out where coals are lit by chimneyfuls. */
  readonly fire?: FireLane & { readonly name: string };
  readonly lit: readonly LitPoint[];
  /** False for wood coals: shape without numbers. */
  readonly countsCoals: boolean;
  readonly servings: readonly { readonly at: number; readonly text: string }[];
  readonly words: { readonly name: string; readonly lit: string; readonly onOvens: string };
  readonly keys: KeyWords;
  /** The boxes are explained once, under the last strip. */
  readonly hasKey: boolean;
  readonly alt: string;
  /** Left out, as wide as landscape paper; without room beside the lanes their names stand above. */
  readonly frame?: LaneFrame;
}

const SERVING_ROW = 15;
/** More ovens than this stand in thin lanes. */
const MANY_OVENS = 10;
/** A lane's name above it, where there is no room beside it. */
const NAME_ROW = 16;
/** Top and bottom of what is drawn. */
type Reach = readonly [number, number];

interface Drawn {
  readonly svg: string;
  readonly bottom: number;
}

/** The whole day, or a stretch of it, on one drawing. */
export function dayDrawing(day: DayDrawing): string {
  const axis = laneAxis(day.from, day.to, day.frame);
  const patterns = patternsFor(`${day.from}-${day.to}-${axis.width}`);
  const servings = servingNames(axis, day);
  const top = 32 + servings.rows * SERVING_ROW;
  const lanes = new Lanes(axis, top);
  for (const { name, work } of day.hands) {
    lanes.put(name, false, (y) => handLane({ work, axis, top: y, patterns }));
  }
  lanes.skip();
  const isThin =
    day.ovens.length > MANY_OVENS && day.ovens.every(({ name }) => isShort(name, axis));
  for (const { name, spans } of day.ovens) {
    const drawn = (y: number) => ovenLane({ spans, axis, top: y, patterns, isThin });
    if (isThin) lanes.putThin(name, drawn);
    else lanes.put(name, true, drawn);
  }
  if (day.fire !== undefined) {
    const { fire } = day;
    lanes.skip();
    lanes.put(fire.name, false, (y) => fireLane(fire, { axis, top: y }));
  }
  if (day.lit.length > 0) {
    const { lit, countsCoals } = day;
    const name = axis.left === WIDE.left ? day.words.name : litName(day);
    lanes.skip();
    lanes.put(name, false, (y) => litLane({ lit, countsCoals, axis, top: y, words: day.words }));
  }
  const keys = day.hasKey
    ? keyRows(lanes.y, { axis, patterns, keys: day.keys })
    : { svg: '', bottom: lanes.y };
  return picture({
    width: axis.width,
    height: keys.bottom + 6,
    kind: 'day',
    title: 'Day sheet',
    alt: day.alt,
    children: [
      patterns.defs,
      hours(axis, [top, lanes.y], day),
      servingLines(axis, [top, lanes.y], day),
      ...lanes.drawn,
      servings.svg,
      keys.svg,
    ],
  });
}

const litName = ({ words: say }: DayDrawing) => `${say.name}: ${say.lit}, ${say.onOvens} (bold)`;

/** Lanes under each other, from a height on. */
class Lanes {
  readonly drawn: string[] = [];
  readonly #axis: LaneAxis;
  y: number;

  constructor(axis: LaneAxis, top: number) {
    this.#axis = axis;
    this.y = top;
  }

  skip() {
    this.y += LANE.gap;
  }

  put(name: string, isHeavy: boolean, draw: (top: number) => Drawn) {
    const isAbove = this.#axis.left < WIDE.left;
    const lane = draw(this.y + (isAbove ? NAME_ROW : 0));
    const names = laneName(
      name,
      this.y - (isAbove ? 4 : 0),
      isAbove ? this.#axis.width : WIDE.left,
    );
    this.drawn.push(names, lane.svg, rule(this.#axis, lane.bottom, isHeavy));
    this.y = lane.bottom + LANE.gap;
  }

  /** Close to the one before. */
  putThin(name: string, draw: (top: number) => Drawn) {
    const isAbove = this.#axis.left < WIDE.left;
    const lane = draw(this.y);
    const at = { y: this.y + 9.8, text: name, size: 11 };
    const text = isAbove ? words({ ...at, x: 0, size: 10 }) : words({ ...at, x: 0, bold: true });
    this.drawn.push(lane.svg, text);
    this.y = lane.bottom + 2;
  }
}

/** Goes on one line beside a thin lane. */
const isShort = (name: string, { left }: LaneAxis) =>
  left < WIDE.left ? fits(name, left, 10) : fits(name, left - 6, 11, true);

function laneName(name: string, y: number, room: number): string {
  const lines = wrap(name, room - 12, 13, true);
  return lines
    .map((text, index) => words({ x: 0, y: y + 17 + index * 15, text, size: 13, bold: true }))
    .join('');
}

const rule = (axis: LaneAxis, y: number, heavy: boolean) =>
  line(0, y, axis.right, y, {
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
        anchor: anchorAt(axis, axis.x(minute)),
        fill: ink.soft,
      }),
    ]),
  );
}

const anchorAt = ({ width }: LaneAxis, x: number) =>
  x > width - 30 ? 'end' : x < 30 ? 'start' : 'middle';

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
      x: Math.max(0, Math.min(axis.x(serving.at) - 3, axis.right - width)),
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

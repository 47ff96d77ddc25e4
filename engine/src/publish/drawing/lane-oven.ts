// One oven over the day: heating dashed, cooking solid, kept hot dotted, rising in it an empty outline.
// Many ovens stand in thin lanes close to each other, so that a wave is seen as one slope.

import type { OvenSpan } from '../../timetable/day-sheet.ts';
import { LANE, type LaneAxis, stack } from './lane-axis.ts';
import type { Patterns } from './pattern.ts';
import { element, fits, group, ink, textWidth, words } from './svg.ts';

export interface SpanBar {
  readonly from: number;
  readonly to: number;
  readonly state: OvenSpan['state'];
  readonly text: string;
}

interface OvenLane {
  readonly spans: readonly SpanBar[];
  readonly axis: LaneAxis;
  readonly top: number;
  readonly patterns: Patterns;
  /** One of many: a name only where it fits into its bar. */
  readonly isThin?: boolean;
}

const lookOf = (
  state: OvenSpan['state'],
  { dots }: Patterns,
): Readonly<Record<string, string | number>> =>
  ({
    heating: { fill: ink.sheet, stroke: ink.ink, 'stroke-dasharray': '4 3' },
    cooking: { fill: ink.iron, stroke: ink.ink },
    holding: { fill: dots, stroke: ink.ink },
    'second-rise': { fill: ink.sheet, stroke: ink.soft, 'stroke-dasharray': '1.5 2.5' },
  })[state];

export function ovenLane({ spans, axis, top, patterns, isThin = false }: OvenLane) {
  const tall = isThin ? LANE.thinBox : LANE.box;
  const placed = spans.map((span) => {
    const x = axis.x(span.from);
    return { span, x, width: Math.max(3, axis.x(span.to) - x) };
  });
  const bars = placed.map(({ span, x, width }) =>
    element('rect', {
      x,
      y: top,
      width,
      height: tall,
      rx: 1.5,
      'stroke-width': isThin ? 0.8 : 1.2,
      ...lookOf(span.state, patterns),
    }),
  );
  const isInside = ({ span, width }: (typeof placed)[number]) =>
    fits(span.text, width - 10, isThin ? THIN_LETTERS : 12, true);
  const inside = placed.filter((bar) => bar.span.text !== '' && isInside(bar));
  const below = stack(
    isThin ? [] : placed.filter((bar) => !isInside(bar) && bar.span.text !== ''),
    ({ x, span }) => {
      const from = startOf(axis, x, span.text);
      return [from, from + textWidth(span.text, 12) + 6];
    },
  );
  const rows = below.reduce((most, { row }) => Math.max(most, row + 1), 0);
  return {
    svg: group(
      { class: 'oven' },
      ...bars,
      ...inside.map(({ span, x }) => (isThin ? thinPlate(span, x, top) : plate(span, x, top))),
      ...below.map(({ thing, row }) =>
        words({
          x: startOf(axis, thing.x, thing.span.text),
          y: top + LANE.box + 12 + row * LANE.numberRow,
          text: thing.span.text,
          size: 12,
          halo: true,
        }),
      ),
    ),
    bottom: isThin ? top + tall : top + LANE.box + rows * LANE.numberRow + 4,
  };
}

const THIN_LETTERS = 9.5;

/** On a solid bar the name stands on a plate of its own, so that it reads on any ground. */
const plate = ({ state, text }: SpanBar, x: number, top: number) =>
  group(
    { class: 'name' },
    state === 'cooking'
      ? element('rect', {
          x: x + 3,
          y: top + 3,
          width: textWidth(text, 12, true) + 4,
          height: LANE.box - 6,
          fill: ink.sheet,
        })
      : '',
    words({ x: x + 5, y: top + 15, text, size: 12, bold: true }),
  );

const thinPlate = ({ text }: SpanBar, x: number, top: number) =>
  group(
    { class: 'name' },
    element('rect', {
      x: x + 3,
      y: top + 1.2,
      width: textWidth(text, THIN_LETTERS, true) + 4,
      height: LANE.thinBox - 2.4,
      fill: ink.sheet,
    }),
    words({ x: x + 5, y: top + 9.3, text, size: THIN_LETTERS, bold: true }),
  );

/** Under its bar, pushed left where it would run over the edge. */
const startOf = (axis: LaneAxis, x: number, text: string) =>
  Math.max(axis.left, Math.min(x, axis.right - textWidth(text, 12)));

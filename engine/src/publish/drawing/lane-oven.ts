// One oven over the day: heating dashed, cooking solid, kept hot oat, rising in it an empty outline.

import type { OvenSpan } from '../../timetable/day-sheet.ts';
import { LANE, type LaneAxis, stack } from './lane-axis.ts';
import { element, fits, group, ink, textWidth, words } from './svg.ts';

export interface SpanBar {
  readonly from: number;
  readonly to: number;
  readonly state: OvenSpan['state'];
  readonly text: string;
}

const LOOK: Readonly<Record<OvenSpan['state'], Readonly<Record<string, string | number>>>> = {
  heating: { fill: ink.sheet, stroke: ink.ink, 'stroke-dasharray': '4 3' },
  cooking: { fill: ink.iron, stroke: ink.ink },
  holding: { fill: ink.oat, stroke: ink.ink },
  'second-rise': { fill: ink.sheet, stroke: ink.soft, 'stroke-dasharray': '1.5 2.5' },
};

export function ovenLane(spans: readonly SpanBar[], axis: LaneAxis, top: number) {
  const placed = spans.map((span) => {
    const x = axis.x(span.from);
    return { span, x, width: Math.max(3, axis.x(span.to) - x) };
  });
  const bars = placed.map(({ span, x, width }) =>
    element('rect', {
      x,
      y: top,
      width,
      height: LANE.box,
      rx: 1.5,
      'stroke-width': 1.2,
      ...LOOK[span.state],
    }),
  );
  const inside = placed.filter((bar) => bar.span.text !== '' && isInside(bar));
  const below = stack(
    placed.filter((bar) => !isInside(bar) && bar.span.text !== ''),
    ({ x, span }) => {
      const from = startOf(x, span.text);
      return [from, from + textWidth(span.text, 12) + 6];
    },
  );
  const rows = below.reduce((most, { row }) => Math.max(most, row + 1), 0);
  return {
    svg: group(
      { class: 'oven' },
      ...bars,
      ...inside.map(({ span, x }) => plate(span, x, top)),
      ...below.map(({ thing, row }) =>
        words({
          x: startOf(thing.x, thing.span.text),
          y: top + LANE.box + 12 + row * LANE.numberRow,
          text: thing.span.text,
          size: 12,
          halo: true,
        }),
      ),
    ),
    bottom: top + LANE.box + rows * LANE.numberRow + 4,
  };
}

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

const isInside = ({ span, width }: { readonly span: SpanBar; readonly width: number }) =>
  fits(span.text, width - 10, 12, true);

/** Under its bar, pushed left where it would run over the edge. */
const startOf = (x: number, text: string) =>
  Math.max(LANE.left, Math.min(x, LANE.right - textWidth(text, 12)));

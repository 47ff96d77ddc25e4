// A feeder fire over the day: kindling dashed until its first coals, then burning, with a mark and the
// number of the job wherever wood is put on. It is kept up until the last coals are raked from it.

import { LANE, type LaneAxis, stack } from './lane-axis.ts';
import { element, group, ink, line, textWidth, words } from './svg.ts';

export interface FireBar {
  readonly from: number;
  /** First coals. */
  readonly readyAt: number;
  readonly to: number;
}

export interface FireLane {
  readonly bars: readonly FireBar[];
  readonly feeds: readonly { readonly at: number; readonly number: number }[];
}

export function fireLane(
  { bars, feeds }: FireLane,
  { axis, top }: { readonly axis: LaneAxis; readonly top: number },
) {
  const bar = (from: number, to: number, look: Readonly<Record<string, string | number>>) =>
    from >= to
      ? ''
      : element('rect', {
          x: axis.x(from),
          y: top,
          width: Math.max(2, axis.x(to) - axis.x(from)),
          height: LANE.box,
          rx: 1.5,
          'stroke-width': 1.2,
          stroke: ink.ink,
          ...look,
        });
  const numbers = stack(feeds, ({ at, number }) => {
    const half = textWidth(String(number), 12) / 2 + 2;
    return [axis.x(at) - half, axis.x(at) + half];
  });
  const rows = numbers.reduce((most, { row }) => Math.max(most, row + 1), 0);
  return {
    svg: group(
      { class: 'fire' },
      ...bars.flatMap(({ from, readyAt, to }) => [
        bar(from, Math.min(readyAt, to), { fill: ink.sheet, 'stroke-dasharray': '4 3' }),
        bar(Math.max(from, readyAt), to, { fill: ink.ember, 'fill-opacity': '0.3' }),
      ]),
      ...feeds.map(({ at }) =>
        line(axis.x(at), top, axis.x(at), top + LANE.box, {
          stroke: ink.ember,
          'stroke-width': 2.5,
        }),
      ),
      ...numbers.map(({ thing, row }) =>
        words({
          x: axis.x(thing.at),
          y: top + LANE.box + 12 + row * LANE.numberRow,
          text: String(thing.number),
          size: 12,
          anchor: 'middle',
          halo: true,
        }),
      ),
    ),
    bottom: top + LANE.box + rows * LANE.numberRow + 4,
  };
}

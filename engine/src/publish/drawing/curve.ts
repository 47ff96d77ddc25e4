// How hot will it be inside, minute by minute? The curve with its band, the range that is wanted,
// and everything the cook does, marked by letters that the legend under the drawing spells out.

import type { CoalPlan } from '../../coals/coal-plan.ts';
import type { Kelvin } from '../../quantity/unit.ts';
import { toCelsius, toFahrenheit } from '../../quantity/unit.ts';
import type { Measures } from '../say.ts';
import { type Frame, PHONE_TEXT, PHONE_WIDTH } from './frame.ts';
import {
  circle,
  element,
  group,
  ink,
  line,
  picture,
  points,
  textWidth,
  words,
  wrap,
} from './svg.ts';

export interface CurveEvent {
  readonly minute: number;
  readonly text: string;
}

export interface CurveDrawing {
  readonly coals: Pick<CoalPlan, 'curve' | 'wanted' | 'outMinute'>;
  readonly measures: Measures;
  /** What happens when; soonest first. */
  readonly events: readonly CurveEvent[];
  /** Clock time at a minute since coals on. */
  readonly clockAt: (minute: number) => string;
  readonly words: { readonly axis: string; readonly wanted: string; readonly band: string };
  readonly alt: string;
}

interface Plot {
  readonly width: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Of axis numbers and legend; of what stands beside them. */
  readonly size: number;
  readonly small: number;
  readonly row: number;
  readonly mostSteps: number;
  /** Heads above the plot that do not share a line. */
  readonly headRow: number;
}

const PLOTS: Readonly<Record<Frame, Plot>> = {
  sheet: {
    width: 640,
    left: 52,
    right: 626,
    top: 82,
    bottom: 252,
    size: 17,
    small: 16.5,
    row: 22,
    mostSteps: 6,
    headRow: 0,
  },
  phone: {
    width: PHONE_WIDTH,
    left: 36,
    right: PHONE_WIDTH - 13,
    top: 122,
    bottom: 282,
    size: PHONE_TEXT,
    small: 13,
    row: 18,
    mostSteps: 4,
    headRow: 20,
  },
};

interface Axes extends Plot {
  readonly x: (minute: number) => number;
  readonly y: (kelvin: number) => number;
  readonly lastMinute: number;
  readonly ticks: readonly { readonly value: number; readonly y: number }[];
}

export function curveDrawing(drawing: CurveDrawing, frame: Frame = 'sheet'): string {
  const axes = axesOf(drawing, PLOTS[frame]);
  const legend = legendRows(
    drawing.events.map((event, index) => `${letter(index)}  ${event.text}`),
    axes,
  );
  return picture({
    width: axes.width,
    height: axes.bottom + 56 + legend.rows * axes.row,
    kind: 'curve',
    title: 'Temperature in the oven',
    alt: drawing.alt,
    children: [
      words({ x: 4, y: 16, text: drawing.words.axis, size: axes.size, bold: true }),
      grid(axes, drawing),
      band(axes, drawing),
      wantedRange(axes, drawing),
      element('polyline', {
        points: points(drawing.coals.curve.map((at) => [axes.x(at.minute), axes.y(at.oven)])),
        fill: 'none',
        stroke: ink.ember,
        'stroke-width': 3,
        'stroke-linejoin': 'round',
      }),
      ...marks(axes, drawing),
      legend.drawn,
    ],
  });
}

const letter = (index: number) => String.fromCharCode(65 + (index % 26));

function axesOf({ coals, measures }: CurveDrawing, plot: Plot): Axes {
  const { left, right, top, bottom } = plot;
  const toDegrees = (kelvin: number) =>
    measures === 'us' ? toFahrenheit(kelvin as Kelvin) : toCelsius(kelvin as Kelvin);
  const step = measures === 'us' ? 100 : 50;
  const all = coals.curve.flatMap((at) => [at.low, at.high]);
  const degrees = [...all, coals.wanted.low, coals.wanted.high].map(toDegrees);
  const lowest = Math.floor(Math.min(...degrees) / step) * step;
  const highest = Math.max(lowest + step, Math.ceil(Math.max(...degrees) / step) * step);
  const lastMinute = Math.max(coals.outMinute, coals.curve.at(-1)?.minute ?? 0, 10);
  const yOf = (value: number) => bottom - ((value - lowest) / (highest - lowest)) * (bottom - top);
  const count = Math.round((highest - lowest) / step);
  return {
    ...plot,
    x: (minute) => left + (Math.min(minute, lastMinute) / lastMinute) * (right - left),
    y: (kelvin) => yOf(toDegrees(kelvin)),
    lastMinute,
    ticks: Array.from({ length: count + 1 }, (_, index) => {
      const value = lowest + index * step;
      return { value, y: yOf(value) };
    }),
  };
}

function grid(axes: Axes, { clockAt }: CurveDrawing): string {
  const { x, ticks, lastMinute, left, right, bottom, size, small } = axes;
  const step =
    [10, 15, 30, 60, 120, 240].find((minutes) => lastMinute / minutes <= axes.mostSteps) ?? 480;
  const minutes = Array.from({ length: Math.floor(lastMinute / step) + 1 }, (_, i) => i * step);
  return group(
    { class: 'grid' },
    ...ticks.flatMap(({ value, y }) => [
      line(left, y, right, y, { stroke: ink.line, 'stroke-width': 1 }),
      words({
        x: left - (axes.headRow > 0 ? 5 : 8),
        y: y + 6,
        text: String(value),
        size,
        anchor: 'end',
        fill: ink.soft,
      }),
    ]),
    ...minutes.flatMap((minute) => {
      const anchor = x(minute) > right - 40 ? 'end' : 'middle';
      return [
        line(x(minute), bottom, x(minute), bottom + 5, { stroke: ink.soft }),
        words({ x: x(minute), y: bottom + 20, text: `${minute}`, size, bold: true, anchor }),
        words({
          x: x(minute),
          y: bottom + 39,
          text: clockAt(minute),
          size: small,
          anchor,
          fill: ink.soft,
        }),
      ];
    }),
    words({ x: 2, y: bottom + 20, text: 'min', size: small, fill: ink.soft }),
  );
}

function band({ x, y }: Axes, { coals }: CurveDrawing): string {
  const upper = coals.curve.map((at): readonly [number, number] => [x(at.minute), y(at.high)]);
  const lower = coals.curve.map((at): readonly [number, number] => [x(at.minute), y(at.low)]);
  return element('polygon', {
    class: 'band',
    points: points([...upper, ...lower.reverse()]),
    fill: ink.oat,
    stroke: ink.soft,
    'stroke-width': 0.7,
    'stroke-opacity': '0.6',
  });
}

/** Two dashed lines and a bar at the edge: told from the band without colour. */
function wantedRange(axes: Axes, { coals, words: say }: CurveDrawing): string {
  const { y, left, right, small, headRow } = axes;
  const high = y(coals.wanted.high);
  const low = y(coals.wanted.low);
  const dash = { stroke: ink.steel, 'stroke-width': 1.8, 'stroke-dasharray': '9 5' };
  const key = (x: number, row: number, text: string) =>
    words({ x: x + 28, y: 16 + row, text, size: small, fill: ink.soft });
  const isStacked = headRow > 0;
  const bandX = isStacked ? 4 : right - textWidth(say.band, small) - 32;
  const wantedX = isStacked ? 4 : bandX - textWidth(say.wanted, small) - 44;
  const [wantedRow, bandRow] = [headRow, 2 * headRow];
  return group(
    { class: 'wanted' },
    line(left, high, right, high, dash),
    line(left, low, right, low, dash),
    line(right, high, right, low, { stroke: ink.steel, 'stroke-width': 4 }),
    line(wantedX, 12 + wantedRow, wantedX + 22, 12 + wantedRow, dash),
    key(wantedX, wantedRow, say.wanted),
    element('rect', {
      x: bandX,
      y: 6 + bandRow,
      width: 22,
      height: 11,
      fill: ink.oat,
      stroke: ink.soft,
    }),
    key(bandX, bandRow, say.band),
  );
}

/** Letters above the plot; two that would touch stand one over the other. */
function marks({ x, top, bottom, small }: Axes, { events }: CurveDrawing): readonly string[] {
  const lastAt: number[] = [];
  return events.map((event, index) => {
    const at = x(event.minute);
    let row = lastAt.findIndex((last) => at - last >= 23);
    if (row === -1) row = lastAt.length < 2 ? lastAt.length : 0;
    lastAt[row] = at;
    const y = top - 13 - row * 23;
    return group(
      { class: 'event' },
      line(at, y + 10, at, bottom, { 'stroke-width': 1.2, stroke: ink.ink }),
      circle(at, y, 10.5, { fill: ink.sheet, stroke: ink.ink, 'stroke-width': 1.3 }),
      words({
        x: at,
        y: y + small / 3,
        text: letter(index),
        size: small,
        bold: true,
        anchor: 'middle',
      }),
    );
  });
}

/** Legend in as many columns as the longest entry allows; what is wider than one goes on below. */
function legendRows(entries: readonly string[], { width, bottom, size, row }: Plot) {
  const room = width - 8;
  const lines = entries.flatMap((entry) =>
    wrap(entry, room, size).map((text, part) => (part === 0 ? text : `     ${text}`)),
  );
  const widest = Math.max(0, ...lines.map((text) => textWidth(text, size))) + 18;
  const columns = Math.max(1, Math.min(3, Math.floor(room / widest)));
  const rows = Math.ceil(lines.length / columns);
  const drawn = lines.map((text, index) =>
    words({
      x: 4 + Math.floor(index / rows) * (room / columns),
      y: bottom + 66 + (index % rows) * row,
      text,
      size,
    }),
  );
  return { rows, drawn: drawn.join('') };
}

// How hot will it be inside, minute by minute? The curve with its band, the range that is wanted,
// and everything the cook does, marked by letters that the legend under the drawing spells out.

import type { CoalPlan } from '../../coals/coal-plan.ts';
import type { Kelvin } from '../../quantity/unit.ts';
import { toCelsius, toFahrenheit } from '../../quantity/unit.ts';
import type { Measures } from '../say.ts';
import { circle, element, group, ink, line, picture, points, textWidth, words } from './svg.ts';

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

const WIDTH = 640;
const LEFT = 52;
const RIGHT = WIDTH - 14;
const TOP = 82;
const BOTTOM = 252;
const LEGEND_ROW = 22;

interface Axes {
  readonly x: (minute: number) => number;
  readonly y: (kelvin: number) => number;
  readonly lastMinute: number;
  readonly ticks: readonly { readonly value: number; readonly y: number }[];
}

export function curveDrawing(drawing: CurveDrawing): string {
  const axes = axesOf(drawing);
  const legend = legendRows(
    drawing.events.map((event, index) => `${letter(index)}  ${event.text}`),
  );
  return picture({
    width: WIDTH,
    height: BOTTOM + 56 + legend.rows * LEGEND_ROW,
    kind: 'curve',
    title: 'Temperature in the oven',
    alt: drawing.alt,
    children: [
      words({ x: 4, y: 16, text: drawing.words.axis, size: 17, bold: true }),
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

function axesOf({ coals, measures }: CurveDrawing): Axes {
  const toDegrees = (kelvin: number) =>
    measures === 'us' ? toFahrenheit(kelvin as Kelvin) : toCelsius(kelvin as Kelvin);
  const step = measures === 'us' ? 100 : 50;
  const all = coals.curve.flatMap((at) => [at.low, at.high]);
  const degrees = [...all, coals.wanted.low, coals.wanted.high].map(toDegrees);
  const lowest = Math.floor(Math.min(...degrees) / step) * step;
  const highest = Math.max(lowest + step, Math.ceil(Math.max(...degrees) / step) * step);
  const lastMinute = Math.max(coals.outMinute, coals.curve.at(-1)?.minute ?? 0, 10);
  const yOf = (value: number) => BOTTOM - ((value - lowest) / (highest - lowest)) * (BOTTOM - TOP);
  const count = Math.round((highest - lowest) / step);
  return {
    x: (minute) => LEFT + (Math.min(minute, lastMinute) / lastMinute) * (RIGHT - LEFT),
    y: (kelvin) => yOf(toDegrees(kelvin)),
    lastMinute,
    ticks: Array.from({ length: count + 1 }, (_, index) => {
      const value = lowest + index * step;
      return { value, y: yOf(value) };
    }),
  };
}

function grid({ x, ticks, lastMinute }: Axes, { clockAt }: CurveDrawing): string {
  const step = [10, 15, 30, 60, 120, 240].find((minutes) => lastMinute / minutes <= 6) ?? 480;
  const minutes = Array.from({ length: Math.floor(lastMinute / step) + 1 }, (_, i) => i * step);
  return group(
    { class: 'grid' },
    ...ticks.flatMap(({ value, y }) => [
      line(LEFT, y, RIGHT, y, { stroke: ink.line, 'stroke-width': 1 }),
      words({
        x: LEFT - 8,
        y: y + 6,
        text: String(value),
        size: 17,
        anchor: 'end',
        fill: ink.soft,
      }),
    ]),
    ...minutes.flatMap((minute) => {
      const anchor = x(minute) > RIGHT - 40 ? 'end' : 'middle';
      return [
        line(x(minute), BOTTOM, x(minute), BOTTOM + 5, { stroke: ink.soft }),
        words({ x: x(minute), y: BOTTOM + 20, text: `${minute}`, size: 17, bold: true, anchor }),
        words({
          x: x(minute),
          y: BOTTOM + 39,
          text: clockAt(minute),
          size: 16.5,
          anchor,
          fill: ink.soft,
        }),
      ];
    }),
    words({ x: 4, y: BOTTOM + 20, text: 'min', size: 16.5, fill: ink.soft }),
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
function wantedRange({ y }: Axes, { coals, words: say }: CurveDrawing): string {
  const high = y(coals.wanted.high);
  const low = y(coals.wanted.low);
  const dash = { stroke: ink.steel, 'stroke-width': 1.8, 'stroke-dasharray': '9 5' };
  const key = (x: number, text: string) =>
    words({ x: x + 28, y: 16, text, size: 16.5, fill: ink.soft });
  const bandX = RIGHT - textWidth(say.band, 16.5) - 32;
  const wantedX = bandX - textWidth(say.wanted, 16.5) - 44;
  return group(
    { class: 'wanted' },
    line(LEFT, high, RIGHT, high, dash),
    line(LEFT, low, RIGHT, low, dash),
    line(RIGHT, high, RIGHT, low, { stroke: ink.steel, 'stroke-width': 4 }),
    line(wantedX, 12, wantedX + 22, 12, dash),
    key(wantedX, say.wanted),
    element('rect', { x: bandX, y: 6, width: 22, height: 11, fill: ink.oat, stroke: ink.soft }),
    key(bandX, say.band),
  );
}

/** Letters above the plot; two that would touch stand one over the other. */
function marks({ x }: Axes, { events }: CurveDrawing): readonly string[] {
  const lastAt: number[] = [];
  return events.map((event, index) => {
    const at = x(event.minute);
    let row = lastAt.findIndex((last) => at - last >= 23);
    if (row === -1) row = lastAt.length < 2 ? lastAt.length : 0;
    lastAt[row] = at;
    const y = TOP - 13 - row * 23;
    return group(
      { class: 'event' },
      line(at, y + 10, at, BOTTOM, { 'stroke-width': 1.2, stroke: ink.ink }),
      circle(at, y, 10.5, { fill: ink.sheet, stroke: ink.ink, 'stroke-width': 1.3 }),
      words({ x: at, y: y + 6, text: letter(index), size: 16.5, bold: true, anchor: 'middle' }),
    );
  });
}

/** Legend in as many columns as the longest entry allows. */
function legendRows(entries: readonly string[]) {
  const widest = Math.max(0, ...entries.map((entry) => textWidth(entry, 17))) + 18;
  const columns = Math.max(1, Math.min(3, Math.floor((WIDTH - 8) / widest)));
  const rows = Math.ceil(entries.length / columns);
  const drawn = entries.map((entry, index) =>
    words({
      x: 4 + Math.floor(index / rows) * ((WIDTH - 8) / columns),
      y: BOTTOM + 66 + (index % rows) * LEGEND_ROW,
      text: entry,
      size: 17,
    }),
  );
  return { rows, drawn: drawn.join('') };
}

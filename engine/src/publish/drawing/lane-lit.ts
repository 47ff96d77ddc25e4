// Coals lit and coals needed on ovens over the day: a stepped shape, and the numbers under it.

import type { LaneAxis } from './lane-axis.ts';
import { group, ink, line, path, shortNumber, words } from './svg.ts';

export interface LitPoint {
  readonly at: number;
  /** Waiting in chimney or pile, and on the ovens. */
  readonly lit: number;
  readonly onOvens: number;
}

export interface LitLane {
  readonly lit: readonly LitPoint[];
  readonly countsCoals: boolean;
  readonly axis: LaneAxis;
  readonly top: number;
  readonly words: { readonly lit: string; readonly onOvens: string };
}

const TALL = 48;
/** Less room beside the lane holds no words: they stand above it. */
const NAME_ROOM = 100;

export function litLane({ lit, countsCoals, axis, top, words: say }: LitLane) {
  const most = Math.max(1, ...lit.map((at) => at.lit));
  const base = top + TALL;
  const steps = (value: (at: LitPoint) => number) => {
    const first = lit[0];
    if (first === undefined) return '';
    const parts = lit.map(
      (at) => `H${shortNumber(axis.x(at.at))}V${shortNumber(base - (value(at) / most) * TALL)}`,
    );
    return `M${shortNumber(axis.x(first.at))} ${base}${parts.join('')}H${shortNumber(axis.x(lit.at(-1)?.at ?? first.at))}V${base}z`;
  };
  const shape = group(
    { class: 'lit' },
    path(
      steps((at) => at.lit),
      { fill: 'none', stroke: ink.ink, 'stroke-width': 1.3, 'stroke-dasharray': '4 2.5' },
    ),
    path(
      steps((at) => at.onOvens),
      { fill: ink.ember, 'fill-opacity': '0.55', stroke: ink.ember, 'stroke-width': 1 },
    ),
    line(axis.left, base, axis.right, base, { stroke: ink.soft, 'stroke-width': 1 }),
  );
  if (!countsCoals) return { svg: shape, bottom: base + 4 };
  const rows = numberRows(lit, axis, base);
  return {
    svg: group({}, shape, ...rows, ...(axis.left < NAME_ROOM ? [] : rowNames(base, say))),
    bottom: base + 38,
  };
}

const rowNames = (base: number, say: LitLane['words']) =>
  [say.lit, say.onOvens].map((text, row) =>
    words({ x: 0, y: base + 15 + 16 * row, text, size: 12, fill: ink.soft }),
  );

/** Lit above, on the ovens below: what lasts longest is told first, and nothing that would touch. */
function numberRows(lit: readonly LitPoint[], axis: LaneAxis, base: number): readonly string[] {
  const last = lit.at(-1)?.at ?? 0;
  const lasting = lit
    .map((at, index) => ({ at, lasts: (lit[index + 1]?.at ?? last) - at.at }))
    .sort((left, right) => right.lasts - left.lasts);
  const taken: number[] = [];
  return lasting.flatMap(({ at }) => {
    const x = axis.x(at.at);
    if (taken.some((other) => Math.abs(other - x) < 27)) return [];
    taken.push(x);
    const anchor = x > axis.right - 12 ? 'end' : 'middle';
    return [
      words({
        x,
        y: base + 15,
        text: String(Math.round(at.lit)),
        size: 12,
        anchor,
        halo: true,
      }),
      words({
        x,
        y: base + 31,
        text: String(Math.round(at.onOvens)),
        size: 12,
        bold: true,
        anchor,
        halo: true,
      }),
    ];
  });
}

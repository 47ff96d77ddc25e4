// How to read the boxes and bars of the lanes, said once under them.

import type { LaneAxis } from './lane-axis.ts';
import { handLane } from './lane-hand.ts';
import { ovenLane, type SpanBar } from './lane-oven.ts';
import type { Patterns } from './pattern.ts';
import { group, ink, textWidth, words } from './svg.ts';

/** Kind of box and what it stands for, in the order of the key. */
export type KeyWords = readonly (readonly [kind: string, text: string])[];

interface KeyAsked {
  readonly axis: LaneAxis;
  readonly patterns: Patterns;
  readonly keys: KeyWords;
}

const BOX = 28;
const ROW = 24;

/** As many to a row as go in. */
export function keyRows(y: number, { axis, patterns, keys }: KeyAsked) {
  let [x, row] = [0, 0];
  const drawn = keys.map(([kind, text]) => {
    const wide = BOX + 8 + textWidth(text, 12) + 18;
    if (x > 0 && x + wide > axis.width) [x, row] = [0, row + 1];
    const top = y + 6 + row * ROW;
    const entry = group(
      {},
      keyBox(kind, x + 1, top, patterns),
      words({ x: x + BOX + 8, y: top + 12, text, size: 12, fill: ink.soft }),
    );
    x += wide;
    return entry;
  });
  return { svg: group({ class: 'key' }, ...drawn), bottom: y + 6 + row * ROW + 20 };
}

function keyBox(kind: string, x: number, y: number, patterns: Patterns): string {
  const axis: LaneAxis = {
    x: (minute) => minute,
    ticks: [],
    width: x + BOX,
    left: x,
    right: x + BOX,
  };
  const at = { axis, top: y - 4, patterns };
  const [from, to] = [x, x + BOX];
  return kind === 'work' || kind === 'fire'
    ? handLane({ work: [{ from, to, number: 0, text: '', isFire: kind === 'fire' }], ...at }).svg
    : ovenLane({ spans: [{ from, to, state: kind as SpanBar['state'], text: '' }], ...at }).svg;
}

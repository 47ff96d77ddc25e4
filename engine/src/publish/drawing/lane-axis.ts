// Where does a minute lie on the day sheet?

/** Measures of every lane. */
export const LANE = { box: 22, thinBox: 12, gap: 5, numberRow: 14 } as const;

/** Where the lanes lie in their drawing; their names stand beside them or, on a phone, above. */
export interface LaneFrame {
  readonly width: number;
  readonly left: number;
  readonly right: number;
}

/** Wide enough for landscape paper. */
export const WIDE: LaneFrame = { width: 1100, left: 150, right: 1092 };
/** As wide as a small phone, so that it is read at its own size. */
export const NARROW: LaneFrame = { width: 360, left: 46, right: 357 };

export interface LaneAxis extends LaneFrame {
  readonly x: (minute: number) => number;
  /** Whole hours, or halves on a short day. */
  readonly ticks: readonly number[];
}

export function laneAxis(from: number, to: number, frame: LaneFrame = WIDE): LaneAxis {
  const most = Math.max(3, (frame.right - frame.left) / TICK_APART);
  const step = [15, 30, 60, 120, 240, 480].find((minutes) => (to - from) / minutes <= most) ?? 1440;
  const first = Math.ceil(from / step) * step;
  const span = Math.max(1, to - from);
  const { left, right } = frame;
  return {
    ...frame,
    x: (minute) => left + ((minute - from) / span) * (right - left),
    ticks: Array.from(
      { length: Math.max(0, Math.floor((to - first) / step) + 1) },
      (_, index) => first + index * step,
    ),
  };
}

/** A clock time and some air [px]. */
const TICK_APART = 72;

/** Rows so that things that overlap stand under each other; soonest first in each. */
export function stack<Thing>(
  things: readonly Thing[],
  extent: (thing: Thing) => readonly [number, number],
): readonly { readonly thing: Thing; readonly row: number }[] {
  const ends: number[] = [];
  return [...things]
    .sort((left, right) => extent(left)[0] - extent(right)[0])
    .map((thing) => {
      const [from, to] = extent(thing);
      const free = ends.findIndex((end) => end <= from + 0.01);
      const row = free === -1 ? ends.length : free;
      ends[row] = to;
      return { thing, row };
    });
}

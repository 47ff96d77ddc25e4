// Where does a minute lie on the day sheet?

/** Measures of the drawing; wide enough for landscape paper. */
export const LANE = {
  width: 1100,
  left: 150,
  right: 1092,
  box: 22,
  gap: 5,
  numberRow: 14,
} as const;

export interface LaneAxis {
  readonly x: (minute: number) => number;
  /** Whole hours, or halves on a short day. */
  readonly ticks: readonly number[];
}

export function laneAxis(from: number, to: number): LaneAxis {
  const step = [30, 60, 120, 240, 480].find((minutes) => (to - from) / minutes <= 13) ?? 1440;
  const first = Math.ceil(from / step) * step;
  const span = Math.max(1, to - from);
  return {
    x: (minute) => LANE.left + ((minute - from) / span) * (LANE.right - LANE.left),
    ticks: Array.from(
      { length: Math.max(0, Math.floor((to - first) / step) + 1) },
      (_, index) => first + index * step,
    ),
  };
}

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

// Roughly when an oven is taken, so that two dishes are not given it at once.
// The timetable knows better; this only has to keep the shares sensible.

import { riseOf } from './geometry.ts';
import type { Lot } from './lots.ts';

const WIPE_MINUTES = 10; // wiping, greasing, cooling enough to line; common practice, no source

/** Minutes of the camp's clock in which an oven is taken. */
export interface Span {
  readonly oven: string;
  readonly dish: string;
  readonly from: number;
  readonly to: number;
  /** May be done this much earlier and wait. */
  readonly mayWait: number;
  readonly keptFree: boolean;
}

export function busySpan(lot: Lot, oven: string, turn: number): Span {
  const { target, kind } = lot.recipe;
  const hint = target.minutesHint;
  const cooks =
    lot.dish.pins.bakeMinutes ?? (hint ? (hint[0] + hint[1]) / 2 : riseOf(kind).busyMinutes);
  const taken = cooks + WIPE_MINUTES;
  const out = lot.dish.serveAt - target.rest - turn * taken;
  return {
    oven,
    dish: lot.dish.id,
    from: out - taken,
    to: out,
    mayWait: Math.max(0, lot.dish.mayWait ?? target.canWait),
    keptFree: lot.dish.freeFrom,
  };
}

/** Minutes that two dishes are in each other's way, the earlier one moved as far as it may wait. */
export function overlapMinutes(one: Span, other: Span): number {
  const [early, late] = one.to <= other.to ? [one, other] : [other, one];
  return Math.max(0, Math.min(early.to - late.from - early.mayWait, early.to - early.from));
}

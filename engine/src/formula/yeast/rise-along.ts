// A rise along the day: the sum of the leaven's speed over the dough's temperature, until it is done.
// Sources: as rate.ts and work.ts. Weak spot: flour, salt and handling are not in it; a mark on the
// bowl and a wet finger know better.

import { type Kelvin, type Minutes, minutes } from '../../quantity/unit.ts';
import { type DoughAt, type DoughStart, doughOver, type PlaceAt } from './history.ts';
import { type Leaven, leavenRate } from './rate.ts';

export interface RiseAsked {
  readonly leaven: Leaven;
  /** Minutes at the leaven's standard speed. */
  readonly work: number;
  readonly start: DoughStart;
}

export interface RiseAlong {
  /** Undefined where it isn't done within a day. */
  readonly minutes?: Minutes;
  /** Share of the work that was done: 1 when risen. */
  readonly done: number;
  /** Dough when it is risen, or at the end of the time looked at. */
  readonly dough: Kelvin;
  /** Each five minutes, from mixing on. */
  readonly along: readonly DoughAt[];
}

/** No dough is looked at for longer than a day. */
export const LONGEST_RISE_MINUTES = 24 * 60;

/**
 * Until the work is done: the trapezoidal sum of speed over time, straight within the last step.
 * At one temperature it is the work over the speed, exactly.
 */
export function riseAlong({ leaven, work, start }: RiseAsked): RiseAlong {
  const along: DoughAt[] = [];
  let done = 0;
  for (const at of doughOver(start)) {
    const before = along.at(-1);
    along.push(at);
    if (before === undefined) {
      if (work <= 0) return { minutes: at.minute, done: 1, dough: at.dough, along };
      continue;
    }
    const step = at.minute - before.minute;
    const part = (step * (leavenRate(leaven, before.dough) + leavenRate(leaven, at.dough))) / 2;
    if (part > 0 && done + part >= work) {
      const ready = before.minute + (step * (work - done)) / part;
      return { minutes: minutes(ready), done: 1, dough: at.dough, along };
    }
    done += part;
    if (at.minute >= LONGEST_RISE_MINUTES) break;
  }
  return { done: done / work, dough: along.at(-1)!.dough, along };
}

/** Work that is done in so many minutes, however much that is. */
export function workWithin(leaven: Leaven, start: DoughStart, within: number): number {
  let done = 0;
  let before: DoughAt | undefined;
  for (const at of doughOver(start)) {
    if (before !== undefined) {
      const step = Math.min(at.minute, within) - before.minute;
      done += (step * (leavenRate(leaven, before.dough) + leavenRate(leaven, at.dough))) / 2;
    }
    if (within <= at.minute) break;
    before = at;
  }
  return done;
}

/** The place as it is from a later minute on. */
export const placeAfter =
  (place: PlaceAt, later: number): PlaceAt =>
  (minute) =>
    place(minute + later);

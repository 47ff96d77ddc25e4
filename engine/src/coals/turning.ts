// Turning, exactly: where do the food and the lid stand after a row of turns, and what is evened?
// Sources: turningRule, coalsOvenModelNotes 5.6 (|sum i^k|/n).

import { type Degrees, degrees, type Minutes, minutes } from '../quantity/unit.ts';
import type { Turn } from './coal-plan.ts';
import { visitNear } from './visits.ts';

/** Angles over the ground, clockwise seen from above, 0 … 360. */
export interface Stand {
  /** Oven and the food in it. */
  readonly oven: Degrees;
  /** Lid and the coals on it. */
  readonly lid: Degrees;
}

export const STAND_AT_START: Stand = { oven: degrees(0), lid: degrees(0) };

const whole = (angle: number): Degrees => degrees(((angle % 360) + 360) % 360);

/**
 * Where oven and lid stand after one turn. Turning the oven carries the lid and its coals along; a
 * food turn is oven with lid one way, then the lid alone back, so the lid stands as before and the
 * food has moved against both sets of coals.
 */
export const afterTurn = (stand: Stand, turn: Pick<Turn, 'kind' | 'angle'>): Stand => {
  if (turn.kind === 'lid-alone') return { ...stand, lid: whole(stand.lid + turn.angle) };
  const together = { oven: whole(stand.oven + turn.angle), lid: whole(stand.lid + turn.angle) };
  if (turn.kind === 'oven-with-lid') return together;
  return afterTurn(together, { kind: 'lid-alone', angle: degrees(-turn.angle) });
};

/**
 * How much of a one-sided heat the food still sees after equal dwells: 1 = all, 0 = evened out.
 *
 * @source  coalsOvenModelNotes 5.6: |sum over dwells of exp(i angle)| / n, first harmonic only
 */
export const remainder = (angles: readonly number[]): number => {
  if (angles.length === 0) return 1;
  const radians = angles.map((angle) => (angle * Math.PI) / 180);
  const along = radians.reduce((sum, angle) => sum + Math.cos(angle), 0);
  const across = radians.reduce((sum, angle) => sum + Math.sin(angle), 0);
  return Math.hypot(along, across) / angles.length;
};

const LONG_BAKE_MINUTES = 30; // two dwells of a quarter hour; longer takes quarter turns
const LONGEST_DWELL_MINUTES = 15; // turningRule: at least every quarter of an hour
const LEAST_TO_TURN_MINUTES = 8;

/**
 * Food turns for a bake by rule: one half turn where one is enough, else quarter turns in fours, no
 * dwell above a quarter of an hour. Quarters in fours and halves in twos even out a one-sided heat.
 */
export const turnsFor = (loadInMinute: number, stayMinutes: number): readonly Turn[] => {
  if (stayMinutes < LEAST_TO_TURN_MINUTES) return [];
  const isLong = stayMinutes > LONG_BAKE_MINUTES;
  const dwells = isLong ? 4 * Math.ceil(stayMinutes / (4 * LONGEST_DWELL_MINUTES)) : 2;
  return evenTurns({ loadInMinute, stayMinutes, dwells, angle: isLong ? 90 : 180 });
};

const evenTurns = (wish: {
  readonly loadInMinute: number;
  readonly stayMinutes: number;
  readonly dwells: number;
  readonly angle: number;
}): readonly Turn[] =>
  Array.from({ length: wish.dwells - 1 }, (_, index) => ({
    minute: minutes(Math.round(wish.loadInMinute + ((index + 1) * wish.stayMinutes) / wish.dwells)),
    kind: 'food' as const,
    angle: degrees(wish.angle),
  }));

const SHORTEST_DWELL_MINUTES = 12; // oftener is more hands and more heat let out than it evens; ours
const MOST_SCHEDULES = 4;
/** A schedule that leaves more of a one-sided heat is not worth computing. */
const MOST_REMAINDER = 0.35;

/** The rule's turns first, then others with dwells of 12 to 15 minutes, a handful. */
export const turnSchedules = (
  loadInMinute: number,
  stayMinutes: number,
): readonly (readonly Turn[])[] => {
  const rule = turnsFor(loadInMinute, stayMinutes);
  const stay = { loadInMinute, outMinute: loadInMinute + stayMinutes };
  const fewest = Math.max(2, Math.ceil(stayMinutes / LONGEST_DWELL_MINUTES));
  const counts = [fewest, fewest + 1, fewest + 2].filter(
    (dwells) => stayMinutes / dwells >= SHORTEST_DWELL_MINUTES && dwells !== rule.length + 1,
  );
  const others = counts
    .flatMap((dwells) =>
      [90, 180].map((angle) => evenTurns({ loadInMinute, stayMinutes, dwells, angle })),
    )
    .filter((turns) => remainderOf(turns, stay) < MOST_REMAINDER);
  return [rule, ...others].slice(0, MOST_SCHEDULES);
};

/** Turns moved so that no visit to the oven is within five minutes of another; see visits.ts. */
export const withVisits = (
  turns: readonly Turn[],
  visits: readonly Minutes[],
  stay: { readonly loadInMinute: number; readonly outMinute: number },
): readonly Turn[] => {
  const moved: Turn[] = [];
  for (const turn of turns) {
    const before = moved.at(-1)?.minute ?? stay.loadInMinute;
    const free = visits.filter((minute) => minute > before);
    const minute = visitNear(turn.minute, [...free, before], {
      after: before,
      before: stay.outMinute,
    });
    if (minute !== undefined) moved.push({ ...turn, minute: minutes(minute) });
  }
  return moved;
};

/** Share of a one-sided heat left by these turns, dwells weighed by their minutes. */
export const remainderOf = (
  turns: readonly Turn[],
  stay: { readonly loadInMinute: number; readonly outMinute: number },
): number => {
  let along = 0;
  let across = 0;
  let stand = STAND_AT_START;
  let from = stay.loadInMinute;
  const ends = [...turns.map((turn) => turn.minute), stay.outMinute];
  for (const [index, end] of ends.entries()) {
    along += (end - from) * Math.cos((stand.oven * Math.PI) / 180);
    across += (end - from) * Math.sin((stand.oven * Math.PI) / 180);
    const turn = turns[index];
    if (turn) stand = afterTurn(stand, turn);
    from = end;
  }
  const whole = stay.outMinute - stay.loadInMinute;
  return whole > 0 ? Math.hypot(along, across) / whole : 1;
};

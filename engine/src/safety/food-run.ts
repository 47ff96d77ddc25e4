// A run of readings that somebody wrote down: how long was it neither hot nor cold, did it cool fast
// enough, and what was its heat worth? Readings are joined by straight lines.

import { type Kelvin, kelvin, type Minutes, minutes } from '../quantity/unit.ts';
import type { SafeCore } from './care.ts';
import type { FoodLimits } from './food-limits.ts';
import { type CoreReading, lethalityOf } from './lethality.ts';

/**
 * Minutes that it spent between the cold and the hot limit, all told.
 *
 * @throws RangeError  readings that run backwards
 * @source fsis-two-hours
 */
export function minutesOut(readings: readonly CoreReading[], limits: FoodLimits): Minutes {
  const spans = pairs(readings).map(
    ([from, to]) =>
      minutesBelow(from, to, limits.hotHold) - minutesBelow(from, to, limits.coldHold),
  );
  return minutes(spans.reduce((sum, span) => sum + span, 0));
}

export type Cooled = 'cold' | 'cooling' | 'reheat' | 'throw-away';

/**
 * Was it cooled in two stages? Time counts from when it falls below the hot limit. Not at the middle mark
 * in time: reheat it and begin once more; not cold in time, or later still: throw it away.
 *
 * @source food-code-3-501-14
 */
export function cooledIn(readings: readonly CoreReading[], limits: FoodLimits): Cooled {
  const { between, toBetween, inAll } = limits.cooling;
  const last = readings.at(-1);
  const from = whenBelow(readings, limits.hotHold);
  if (last === undefined || from === undefined) return 'cooling';
  const atBetween = whenBelow(readings, between) ?? last.minute;
  const atCold = whenBelow(readings, limits.coldHold) ?? last.minute;
  const isCold = last.core <= limits.coldHold;
  if (atCold - from > inAll) return 'throw-away';
  if (atBetween - from > toBetween) return 'reheat';
  return isCold ? 'cold' : 'cooling';
}

export interface CoreRun {
  /** Only the core decides: it has been at least so hot at one reading. */
  readonly isSafe: boolean;
  readonly hottest: Kelvin;
  /** Salmonella, in powers of ten: what the whole run was worth. Explains; never decides. */
  readonly logReduction: number;
}

/** What the log of a probe says (foodsafety-chart decides, lethality-worksheet explains). */
export function coreRun(readings: readonly CoreReading[], least: SafeCore): CoreRun | undefined {
  if (readings.length === 0) return undefined;
  const hottest = kelvin(Math.max(...readings.map(({ core }) => core)));
  return {
    isSafe: least.core <= hottest,
    hottest,
    logReduction: lethalityOf(readings).logReduction,
  };
}

function pairs(readings: readonly CoreReading[]) {
  return readings.slice(1).map((to, index) => {
    const from = readings[index]!;
    if (to.minute < from.minute) {
      throw new RangeError(`reading at ${to.minute} min comes after ${from.minute} min`);
    }
    return [from, to] as const;
  });
}

/** Minutes of one straight line that lie below a mark. */
function minutesBelow(from: CoreReading, to: CoreReading, mark: Kelvin): number {
  const took = to.minute - from.minute;
  const low = Math.min(from.core, to.core);
  const high = Math.max(from.core, to.core);
  if (high <= mark) return took;
  if (mark <= low) return 0;
  return (took * (mark - low)) / (high - low);
}

/** When it first was at or under a mark. */
function whenBelow(readings: readonly CoreReading[], mark: Kelvin): number | undefined {
  const [first] = readings;
  if (first !== undefined && first.core <= mark) return first.minute;
  for (const [from, to] of pairs(readings)) {
    if (to.core <= mark) {
      return from.minute + ((to.minute - from.minute) * (from.core - mark)) / (from.core - to.core);
    }
  }
  return undefined;
}

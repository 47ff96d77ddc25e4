// What is read and written down for one dish, in the order of the day: cold on the way, boiled, done, hot
// until served, gone by, cooled, heated again. Times of the day come from whoever has a timetable.
// Sources: foodsafety-chart, food-code-3-401, food-code-3-501, food-code-3-501-14, food-code-3-403,
// fsis-two-hours, fda-bad-bug-book.

import type { EventKind } from '../camp/camp.ts';
import { type ClockMinutes, clockMinutes, type Kelvin, type Minutes } from '../quantity/unit.ts';
import type { DishSafety } from './care.ts';
import { foodLimits } from './food-limits.ts';

export interface FoodCheck {
  readonly kind:
    | 'carried-cold'
    | 'full-boil'
    | 'core'
    | 'rest'
    | 'hot-until-served'
    | 'cold-until-served'
    | 'gone-by'
    | 'cooled-between'
    | 'cooled'
    | 'heated-again';
  /** When it is due; undefined where it counts from something that nobody has planned. */
  readonly at?: ClockMinutes;
  readonly least?: Kelvin;
  readonly most?: Kelvin;
  /** So long: a rest, a boil, from hot to here. */
  readonly lasts?: Minutes;
  /** Key of the bibliography. */
  readonly source: string;
}

export interface FoodTimes {
  /** Off the fire; undefined for a dish without fire. */
  readonly out?: ClockMinutes;
  readonly served: ClockMinutes;
}

/** Checks of one dish; none for plain bread, which is kept dry. */
export function foodClock(asked: {
  readonly safety: DishSafety;
  /** Its raw part, or the whole of a cold dish, is carried in a cooler. */
  readonly isPerishable: boolean;
  readonly times: FoodTimes;
  readonly event?: EventKind | undefined;
}): readonly FoodCheck[] {
  const { safety, isPerishable, times } = asked;
  const carried: readonly FoodCheck[] = isPerishable
    ? [{ kind: 'carried-cold', most: safety.coldHold, source: 'food-code-3-501' }]
    : [];
  if (safety.isKeptDry) return carried;
  return [
    ...carried,
    ...cookedChecks(safety, times),
    ...waitingChecks(safety, times),
    ...leftChecks(asked),
  ];
}

function cookedChecks(safety: DishSafety, { out }: FoodTimes): readonly FoodCheck[] {
  const { least, fullBoil } = safety;
  const at = out === undefined ? {} : { at: out };
  return [
    ...(fullBoil === undefined
      ? []
      : [{ kind: 'full-boil', lasts: fullBoil, source: 'fda-bad-bug-book' } as const]),
    ...(least === undefined || out === undefined
      ? []
      : [{ kind: 'core', ...at, least: least.core, source: least.source } as const]),
    ...(least === undefined || out === undefined || !(least.rest > 0)
      ? []
      : [{ kind: 'rest', ...at, lasts: least.rest, source: least.source } as const]),
  ];
}

function waitingChecks(safety: DishSafety, { out, served }: FoodTimes): readonly FoodCheck[] {
  const from = out ?? served;
  return [
    out === undefined
      ? { kind: 'cold-until-served', at: served, most: safety.coldHold, source: 'food-code-3-501' }
      : { kind: 'hot-until-served', at: served, least: safety.hotHold, source: 'foodsafety-chart' },
    {
      kind: 'gone-by',
      at: clockMinutes(from + safety.outLimit),
      lasts: safety.outLimit,
      source: 'fsis-two-hours',
    },
  ];
}

/** What is left of a hot dish; a cold one that stood on the table is thrown away. */
function leftChecks({ times, event }: Parameters<typeof foodClock>[0]): readonly FoodCheck[] {
  if (times.out === undefined) return [];
  const { cooling, coldHold, reheat } = foodLimits(event ?? 'home');
  const source = 'food-code-3-501-14';
  return [
    { kind: 'cooled-between', most: cooling.between, lasts: cooling.toBetween, source },
    { kind: 'cooled', most: coldHold, lasts: cooling.inAll, source },
    { kind: 'heated-again', least: reheat.core, lasts: reheat.within, source: 'food-code-3-403' },
  ];
}

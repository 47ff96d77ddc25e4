// A dish that no plan serves within hours of its wish, or only on the next day, is no plan at all: it
// is set aside with its reason, so that the rest of the day stays one that can be cooked.

import { type Notice, notice } from '../notice/notice.ts';
import type { Plan } from '../solver/problem.ts';
import type { Serving, TimetableRequest } from './day-sheet.ts';
import type { DayWork } from './work.ts';

/** Later than this it is another meal [min]; a judgement. */
const HOPELESSLY_LATE = 360;
const DAY = 24 * 60;

/** What no hurry mends: its order, its oven, the hours of the day. */
const BEYOND_HELP: ReadonlySet<Plan['broken'][number]['rule']> = new Set(['lag', 'hold', 'time']);

export interface Hopeless {
  readonly dish: string;
  readonly lateBy: number;
  readonly served: number;
  readonly rule: string;
}

/** The dish to set aside first; undefined where all can be served, or there is but one. */
export function hopelessDish(
  request: TimetableRequest,
  day: DayWork,
  made: { readonly plan: Plan; readonly servings: readonly Serving[] },
): Hopeless | undefined {
  if (request.dishes.length < 2) return undefined;
  const hopeless = request.dishes.flatMap(({ dish }): readonly Hopeless[] => {
    const { coalsOnAt, hand } = dish.pins;
    const serving = made.servings.find((each) => each.dish === dish.id);
    if (dish.serveAt < (request.notBefore ?? dish.serveAt)) return [];
    if (serving === undefined || coalsOnAt !== undefined || hand !== undefined) return [];
    const { lateBy, served, wanted } = serving;
    const broken = made.plan.broken.find(
      ({ rule, task }) => BEYOND_HELP.has(rule) && day.meanings[task]!.dish === dish.id,
    );
    const isNextDay = Math.floor(served / DAY) > Math.floor(wanted / DAY);
    if (lateBy <= HOPELESSLY_LATE && !isNextDay && broken === undefined) return [];
    // Where a rule is broken, the minute is none at which anybody could serve it.
    return [{ dish: dish.id, lateBy, served, rule: broken?.rule ?? 'late' }];
  });
  return hopeless.toSorted((one, other) => other.lateBy - one.lateBy)[0];
}

/** `isProven`: why it can't be stands in a proof of its own. */
export function unplannedNotice(
  { dish, lateBy, served, rule }: Hopeless,
  { isProven }: { readonly isProven: boolean },
): Notice {
  const values = { lateMinutes: lateBy, servedClockMinutes: served };
  const why = isProven ? 'proven' : rule;
  return notice('TIMETABLE_DISH_UNPLANNED', 'stop', { dish }, { ...values, rule: why });
}

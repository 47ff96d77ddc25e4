// A dish that no plan serves within hours of its wish, or only on the next day, is no plan at all: it
// is set aside with its reason, so that the rest of the day stays one that can be cooked.

import { type Notice, notice } from '../notice/notice.ts';
import type { Plan } from '../solver/problem.ts';
import type { Serving, TimetableRequest } from './day-sheet.ts';
import type { DayWork } from './work.ts';

/** Later than this nobody waits [min]; a judgement. */
const HOPELESSLY_LATE = 180;
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
    return [
      { dish: dish.id, lateBy, served, rule: lateBy > 0 ? 'late' : (broken?.rule ?? 'late') },
    ];
  });
  return hopeless.toSorted((one, other) => other.lateBy - one.lateBy)[0];
}

export function unplannedNotice({ dish, lateBy, served, rule }: Hopeless): Notice {
  const values = { lateMinutes: lateBy, servedClockMinutes: served, rule };
  return notice('TIMETABLE_DISH_UNPLANNED', 'stop', { dish }, values);
}

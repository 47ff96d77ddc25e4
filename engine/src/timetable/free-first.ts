// A free-from dish is made first: its first work comes before any work of a dish that brings what
// it is kept free of. Where the dish would spoil by waiting, that is said instead, and no such
// work is done at the same time (the pool 'apart' sees to it).

import { notice } from '../notice/notice.ts';
import { bringsWhatIsKeptAway, keptFrom } from './free-from.ts';
import type { DishTasks, Making } from './making.ts';

export function freeFromLags(
  making: Making,
  dishes: readonly DishTasks[],
  wish: {
    /** Do the lags and the serving times contradict each other as they stand? */
    readonly contradiction: () => readonly number[] | undefined;
    /** False: not first, and said so. */
    readonly isFirst: boolean;
  },
): void {
  const { builder, request } = making;
  const { contradiction, isFirst } = wish;
  const isLateAnyway = contradiction() !== undefined;
  for (const free of dishes) {
    const away = keptFrom(request.camp, free.work);
    if (away.length === 0) continue;
    const others = dishes.filter(
      (other) => other.group !== free.group && bringsWhatIsKeptAway(away, other.work),
    );
    const before = builder.lags.length;
    for (const first of firstMakes(making, free)) {
      for (const make of others.flatMap((other) => other.makes)) {
        builder.lag(first, make, { least: 0 });
      }
    }
    if (builder.lags.length === before) continue;
    if (isFirst && (isLateAnyway || contradiction() === undefined)) continue;
    builder.lags.length = before;
    const about = { dish: free.work.dish.id };
    making.notices.push(notice('TIMETABLE_FREE_FROM_NOT_FIRST', 'danger', about));
  }
}

/** Weighing if it is weighed at camp; else the first work there is. */
function firstMakes(making: Making, dish: DishTasks): readonly number[] {
  const weighs = dish.makes.filter((task) => making.builder.meanings[task]?.kind === 'weigh');
  return weighs.length > 0 ? weighs : dish.makes.slice(0, 1);
}

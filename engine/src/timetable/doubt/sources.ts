// What of a day is not known to the minute: how long each load bakes, each dough rises, coals take to
// ash over. Bands come from the stages that reckoned them; hands are taken to be as quick as written.
// Sources: chimneyMinutes (band of ashing over); bakes and rises bring their own 80 % bands.
// Weakness: how much the bakes of one day err together is judged; slow hands are not counted.

import type { TimetableRequest } from '../day-sheet.ts';
import type { DayWork } from '../work.ts';

/** One thing that may take longer or shorter. */
export interface DoubtSource {
  readonly kind: 'bake' | 'rise' | 'ash-over';
  /** Left out for the fire, which is all dishes'. */
  readonly dish?: string;
}

/** A task of the problem whose length is drawn. */
export interface DrawnTask {
  readonly source: DoubtSource;
  readonly task: number;
  /** Likely length less the planned one; where a dough is hurried it is likely to take longer. */
  readonly likelyMore: number;
  /** Eighty in a hundred lie no further below or above the likely length [min]. */
  readonly below: number;
  readonly above: number;
}

/** Ninety in a hundred of a normal draw lie below so many standard deviations. */
export const NINETY = 1.2816; // normal distribution

/** Ashing over: 15 to 25 min where 20 is usual (chimneyMinutes), taken as eighty in a hundred. */
export const ASH_OVER_SHARE = 0.25;

export function drawnTasks(request: TimetableRequest, day: DayWork): readonly DrawnTask[] {
  const byTask = new Map<number, DrawnTask>();
  for (const each of [...bakes(day), ...rises(request, day)]) byTask.set(each.task, each);
  return [...byTask.values()];
}

/** What the cook has pinned comes out when it was said. */
function bakes(day: DayWork): readonly DrawnTask[] {
  return day.dishes.flatMap(({ work, loads }) =>
    loads.flatMap((load): readonly DrawnTask[] => {
      if (work.dish.pins.bakeMinutes !== undefined) return [];
      const { minutes, least, most } = load.work.bake;
      const source = { kind: 'bake' as const, dish: work.dish.id };
      const band = { below: Math.max(0, minutes - least), above: Math.max(0, most - minutes) };
      return [{ source, task: load.cook, likelyMore: 0, ...band }];
    }),
  );
}

/** All that one dough does by itself is drawn together: quick once, quick again. */
function rises(request: TimetableRequest, day: DayWork): readonly DrawnTask[] {
  return day.meanings.flatMap(({ kind, dish }, task): readonly DrawnTask[] => {
    if (kind !== 'rise' && kind !== 'second-rise') return [];
    const asked = request.dishes.find((work) => work.dish.id === dish)?.rise;
    const { minutes } = day.problem.tasks[task]!;
    if (asked === undefined || asked.first <= 0 || minutes < SHORT_RISE) return [];
    const planned = day.dishes.find((each) => each.work.dish.id === dish)?.work.rise ?? asked;
    const likelyMore = kind === 'rise' ? asked.first - planned.first : 0;
    const share = kind === 'rise' ? 1 : asked.second / asked.first;
    const below = share * Math.max(0, asked.first - asked.least);
    const above = share * Math.max(0, asked.most - asked.first);
    return [{ source: { kind: 'rise', dish: dish ?? '' }, task, likelyMore, below, above }];
  });
}

/** A soak or a bench rest written as a rise keeps its minutes [min]; a judgement. */
const SHORT_RISE = 20;

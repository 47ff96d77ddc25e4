// The oven with its error under control, and whatever a hand does at whatever minute: the run that
// the planner's one-minute steps are held against, and the one for odd minutes.
// Sources: network.ts, burn.ts; numerics/stiff.ts for the method (sandu1997).
// Weak spot: where a load begins to give heat back is told to the half minute of a sample.

import {
  ashKnockedOff,
  type CoalSide,
  coalsAdded,
  coalsMoved,
  coalsTaken,
  liveCoals,
} from './coal-set.ts';
import { type CourseSpan, type SpanEnd, spanRun } from './course-span.ts';
import type { CoalGroup, OvenMoment, RunSetting } from './run.ts';

/** Something done to the oven at one minute, whole or not. */
export type Act = { readonly minute: number } & (
  | { readonly do: 'add'; readonly coals: readonly CoalGroup[] }
  | { readonly do: 'take' | 'move'; readonly place: CoalSide; readonly count: number }
  | { readonly do: 'knock-ash'; readonly place?: CoalSide }
  | { readonly do: 'lift-lid'; readonly seconds: number }
  | { readonly do: 'load-in' | 'load-out' }
  | { readonly do: 'change'; readonly setting: Partial<RunSetting> }
);

export interface CourseWish {
  readonly setting: RunSetting;
  readonly start: OvenMoment;
  readonly acts: readonly Act[];
  /** Minutes that are wanted, rising; the last one ends the run. */
  readonly at: readonly number[];
  readonly relativeTolerance?: number;
  readonly absoluteKelvin?: number;
  /** Tried steps between two events at most. */
  readonly mostSteps?: number;
}

export interface OvenCourse {
  /** As asked, each after the acts of its minute; where the stepper stopped, the last is that state. */
  readonly moments: readonly OvenMoment[];
  readonly steps: number;
  readonly status: SpanEnd['status'];
  /** Coals that were said to lie there at the start and are ash already. */
  readonly spentAtStart: number;
}

/** Cuts between two acts; past them the load is run on as it is. */
const MOST_CUTS = 50;

/** A thousandth of what a thermometer shows; what the planner's runs are held against. */
const USUAL = { relativeTolerance: 1e-6, absoluteKelvin: 1e-4, mostSteps: 2000 } as const;

/**
 * The oven's moments under error control: it lands on every act, on every coal's end and on every
 * change of the lid, and never ends in an endless step.
 *
 * @returns   the wanted moments; `status` other than 'done' where steps ran out, with what there is
 * @throws    RangeError — an act before the start, minutes out of order, or a run of no length
 * @source    sandu1997 (numerics/stiff.ts)
 * @accuracy  see oven-course.test.ts against validation/numerics/stiff-lumped.json and 1-second runs
 */
export const ovenCourse = (wish: CourseWish): OvenCourse => {
  const { start, acts } = wish;
  checkMinutes(wish);
  const edges = edgesOf(wish);
  const moments: OvenMoment[] = [];
  let span: CourseSpan = {
    ...{ ...USUAL, ...wish },
    moment: start,
    openUntil: Number.NEGATIVE_INFINITY,
  };
  let steps = 0;
  let status: SpanEnd['status'] = 'done';
  for (const edge of edges) {
    for (let cuts = 0; span.moment.minute < edge && status === 'done'; cuts += 1) {
      const wanted = wish.at.filter((minute) => span.moment.minute < minute && minute < edge);
      const run = spanRun(span, { wanted, edge, mayCut: cuts < MOST_CUTS });
      steps += run.steps;
      status = run.status;
      moments.push(...run.moments);
      span = { ...span, moment: run.last };
      if (span.moment.minute < edge && wish.at.includes(span.moment.minute)) moments.push(run.last);
    }
    for (const act of acts) if (act.minute === edge) span = acted(span, act);
    if (status !== 'done' || wish.at.includes(edge)) moments.push(span.moment);
    if (status !== 'done') break;
  }
  const spentAtStart = spentCoals(start.coals);
  return { moments, steps, status, spentAtStart };
};

const spentCoals = (coals: readonly CoalGroup[]) =>
  coals.reduce((sum, group) => sum + group.count, 0) -
  liveCoals(coals, 'above') -
  liveCoals(coals, 'below');

const checkMinutes = ({ start, acts, at }: CourseWish): void => {
  const end = at.at(-1);
  if (end === undefined || !(end >= start.minute)) throw new RangeError('a run needs an end');
  if (at.some((minute, index) => !(minute >= (at[index - 1] ?? start.minute))))
    throw new RangeError('wanted minutes must rise from the start on');
  if (acts.some((act) => !(act.minute >= start.minute)))
    throw new RangeError('nothing can be done before the start');
};

/** Minutes at which the rates jump, the start and the end with them. */
const edgesOf = ({ start, acts, at }: CourseWish): readonly number[] => {
  const end = at.at(-1) ?? start.minute;
  const lids = acts.flatMap((act) => (act.do === 'lift-lid' ? [lidOnAgain(act)] : []));
  const all = [start.minute, ...acts.map((act) => act.minute), ...lids, end];
  return [...new Set(all.filter((minute) => minute <= end))].sort((one, other) => one - other);
};

const lidOnAgain = (act: { readonly minute: number; readonly seconds: number }) =>
  act.minute + Math.max(0, act.seconds) / 60;

const acted = (span: CourseSpan, act: Act): CourseSpan => {
  const { moment } = span;
  const withCoals = (coals: readonly CoalGroup[]) => ({ ...span, moment: { ...moment, coals } });
  switch (act.do) {
    case 'add':
      return withCoals(coalsAdded(moment.coals, act.coals));
    case 'take':
      return withCoals(coalsTaken(moment.coals, act));
    case 'move':
      return withCoals(coalsMoved(moment.coals, act));
    case 'knock-ash':
      return withCoals(ashKnockedOff(moment.coals, act.place));
    case 'lift-lid':
      return { ...span, openUntil: Math.max(span.openUntil, lidOnAgain(act)) };
    case 'load-in':
      return { ...span, moment: { ...moment, load: span.setting.load.start } };
    case 'load-out':
      return { ...span, moment: { ...moment, load: undefined } };
    case 'change':
      return { ...span, setting: { ...span.setting, ...act.setting } };
  }
};

// What does the fire want in each quarter hour? Chimneys to light, coals to lay and to add, ovens to
// turn, and what stands lit and waiting when the quarter ends.

import { type ClockMinutes, clockMinutes } from '../quantity/unit.ts';
import type { DaySheet, Job, Lighting } from './day-sheet.ts';
import { startOf, walksOf } from './walks.ts';

export interface Quarter {
  readonly from: ClockMinutes;
  readonly lights: readonly Lighting[];
  readonly lays: readonly Job[];
  readonly adds: readonly Job[];
  readonly turns: readonly Job[];
  /** Wood put on the feeder fire. */
  readonly feeds: readonly Job[];
  /** Lit, ashed over and not yet on an oven: the most that wait at once in it. */
  readonly standingBy: number;
  /** On ovens at its end. */
  readonly onOvens: number;
}

const QUARTER = 15;
const quarterOf = (at: number) => Math.floor(at / QUARTER) * QUARTER;

/** From the first fire to the last coals; a quarter in which nothing is done is left out. */
export function fireWatch({ jobs, lightings, lit }: DaySheet): readonly Quarter[] {
  // A walk belongs to the quarter in which it begins.
  const walks = walksOf(jobs.filter(({ kind }) => AT_THE_FIRE.has(kind)));
  const starts = [...walks.map(startOf), ...lightings.map(({ at }) => at)];
  const quarters = [...new Set(starts.map(quarterOf))].sort((one, other) => one - other);
  return quarters.map((from) => {
    const isIn = (at: number) => quarterOf(at) === from;
    const here = walks.filter((walk) => isIn(startOf(walk))).flatMap((walk) => walk.jobs);
    const of = (kind: Job['kind']) => here.filter((job) => job.kind === kind);
    const before = lit.findLast(({ at }) => at <= from);
    const during = lit.filter(({ at }) => from < at && at < from + QUARTER);
    const waiting = [before, ...during].map((then) => then?.waiting ?? 0);
    return {
      from: clockMinutes(from),
      lights: lightings.filter(({ at }) => isIn(at)),
      lays: of('lay-coals'),
      adds: of('add-coals'),
      turns: of('turn'),
      feeds: of('tend-fire'),
      standingBy: Math.max(...waiting),
      onOvens: (during.at(-1) ?? before)?.onOvens ?? 0,
    };
  });
}

const AT_THE_FIRE: ReadonlySet<Job['kind']> = new Set([
  'lay-coals',
  'add-coals',
  'turn',
  'tend-fire',
]);

/** Whole coals that these jobs take. */
export const coalsOf = (jobs: readonly Job[]): number =>
  jobs.reduce((sum, { values }) => sum + Number(values.above ?? 0) + Number(values.below ?? 0), 0);

/** The same in shovels, for wood coals. */
export const shovelsOf = (jobs: readonly Job[]): number =>
  jobs.reduce(
    (sum, { values }) => sum + Number(values.shovelsAbove ?? 0) + Number(values.shovelsBelow ?? 0),
    0,
  );

// Which jobs are one walk? Those of a round over a wave follow each other, oven by oven; any other
// job is a walk by itself.

import type { Job } from './day-sheet.ts';

export interface Walk {
  readonly id: string;
  /** In the order of the ovens; at least one. */
  readonly jobs: readonly Job[];
}

/** Walks in the order in which they begin. */
export function walksOf(jobs: readonly Job[]): readonly Walk[] {
  const walks = new Map<string, Job[]>();
  for (const job of jobs) {
    const id = job.round ?? job.id;
    walks.set(id, [...(walks.get(id) ?? []), job]);
  }
  return [...walks]
    .map(([id, own]) => ({ id, jobs: own.toSorted((one, other) => one.start - other.start) }))
    .sort((one, other) => one.jobs[0]!.start - other.jobs[0]!.start);
}

export const startOf = ({ jobs }: Walk): number => Math.min(...jobs.map(({ start }) => start));
export const endOf = ({ jobs }: Walk): number => Math.max(...jobs.map(({ end }) => end));

/** Minutes from one oven to the next; 0 for a walk of one. */
export function paceOf({ jobs }: Walk): number {
  const [first, second] = jobs;
  return first === undefined || second === undefined ? 0 : second.start - first.start;
}

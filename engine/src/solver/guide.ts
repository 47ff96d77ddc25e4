// What a step of the search wants tried: how late each task at most, done by whom, batches parted
// where. Partly what stood before, partly chance; anything may come out all the same.

import type { Draft, Guide } from './draft.ts';
import type { Batch, Problem } from './problem.ts';

/** A guide that is written anew for every step. */
export type OpenGuide = { -readonly [Key in keyof Guide]: Guide[Key] };

/** What stood before a step. */
export interface Stood {
  readonly starts: readonly (number | undefined)[];
  readonly crews: readonly (readonly number[])[];
  readonly lateBy: readonly number[];
  readonly batches: readonly Batch[];
}

/** Chances. @tuned on drawn meals, seeds 1 to 20 of small and medium; more chance finds less */
const TUNED = {
  /** That a group's tasks, some of them, stay no later than they stood. */
  same: 0.5,
  /** That a task goes earlier, and by how much at most [min]. */
  earlier: 0.05,
  far: 25,
  /** That a group keeps most of its units; that one unit is wanted for all of it. */
  own: 0.5,
  one: 0.25,
  /** That batches of which no use was taken off stay; that all are parted as they were. */
  kept: 0.5,
  parted: 0.6,
  /** That a use parts batches where it did not, or no longer does; that another unit makes it. */
  otherwise: 0.05,
};

export function newGuide(problem: Problem): OpenGuide {
  return {
    kept: [],
    reach: Number.POSITIVE_INFINITY,
    isOld: false,
    isSplit: true,
    apart: problem.stores.map((store) => new Uint8Array(store.uses.length)),
    makers: problem.stores.map((store) => new Int32Array(store.uses.length).fill(-1)),
    caps: new Float64Array(problem.tasks.length).fill(Number.POSITIVE_INFINITY),
    units: new Int32Array(problem.tasks.length).fill(-1),
  };
}

interface Step {
  readonly groups: readonly number[];
  readonly before: Stood;
  readonly random: () => number;
}

/** For the groups that were taken off; the draft holds what is left. */
export function guideFor(draft: Draft, guide: OpenGuide, step: Step): void {
  guideSupply(draft, guide, step);
  for (const group of step.groups) {
    guideTimes(draft, guide, { ...step, group });
    guideUnits(draft, guide, { ...step, group });
  }
}

type GroupStep = Step & { readonly group: number };

function guideTimes(draft: Draft, { caps }: OpenGuide, step: GroupStep): void {
  const { before, random, group } = step;
  const same = random() < TUNED.same ? random() : 0;
  for (const task of draft.nets[group]!.members) {
    const start = before.starts[task];
    const chance = random();
    if (start !== undefined && chance < TUNED.earlier) {
      caps[task] = start - Math.round(TUNED.far * random() ** 2);
    } else if (start !== undefined && chance < TUNED.earlier + same) caps[task] = start;
    else caps[task] = Number.POSITIVE_INFINITY;
  }
}

function guideUnits(draft: Draft, { units }: OpenGuide, step: GroupStep): void {
  const { before, random, group } = step;
  const { members } = draft.nets[group]!;
  const chance = random();
  const own = chance < TUNED.own ? 0.5 + 0.5 * random() : 0;
  const isOne = TUNED.own <= chance && chance < TUNED.own + TUNED.one;
  const one = isOne ? unitFor(draft.problem, members, random) : -1;
  for (const task of members) {
    units[task] = random() < own ? (before.crews[task]?.[0] ?? -1) : one;
  }
}

/** Somebody who may do one of the tasks. */
function unitFor(problem: Problem, members: readonly number[], random: () => number): number {
  const task = members[Math.floor(random() * members.length)]!;
  return pick(problem.tasks[task]!.seats[0], random);
}

function pick(seat: readonly number[] | undefined, random: () => number): number {
  return seat?.[Math.floor(random() * seat.length)] ?? -1;
}

function guideSupply(draft: Draft, guide: OpenGuide, { before, random }: Step): void {
  const { stores } = draft.problem;
  const liked = Math.min(30, stores[0]?.waitLiked ?? 0);
  const isParted = random() < TUNED.parted;
  guide.kept = random() < TUNED.kept ? draft.batches : [];
  guide.reach = isParted ? ANY : random() < 0.4 ? liked : Math.round(3 * liked * random());
  guide.isSplit = isParted || random() < 0.7;
  guide.isOld = random() < 0.1;
  for (const apart of guide.apart) apart.fill(0);
  for (const makers of guide.makers) makers.fill(-1);
  if (isParted) for (const batch of before.batches) partAs(guide, batch, random);
  guide.apart.forEach((apart, store) => {
    for (let use = 0; use < apart.length; use += 1) {
      if (random() < TUNED.otherwise) apart[use] = 1 - apart[use]!;
      if (random() >= TUNED.otherwise) continue;
      guide.makers[store]![use] = pick(stores[store]!.seats[0], random);
    }
  });
}

const ANY = Number.POSITIVE_INFINITY;

/** Its latest use begins a batch again, and mostly the same unit makes it. */
function partAs(guide: OpenGuide, { store, uses, crew }: Batch, random: () => number): void {
  const latest = uses[0];
  const first = uses.at(-1);
  if (latest !== undefined) guide.apart[store]![latest.use] = 1;
  if (first !== undefined && random() < 0.7) guide.makers[store]![first.use] = crew[0] ?? -1;
}

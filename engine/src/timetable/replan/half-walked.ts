// Which rounds are walked in part? What is begun of one stands, the rest of it is a round of its own;
// an oven of a wave that was lost, or walked apart already, is cut out too.

import type { DaySheet, Job, TimetableRequest } from '../day-sheet.ts';
import { walksOf } from '../walks.ts';
import { wavesOf } from '../waves.ts';
import type { DayWork } from '../work.ts';
import type { Names } from './named-as.ts';
import type { ReplanAsked } from './slip.ts';
import type { DayState } from './state.ts';

/** Loads before which a wave is cut: they do not stand as the one before them does. */
export function cutsIn(
  { dishes, ...day }: TimetableRequest,
  sheet: DaySheet,
  state: DayState,
): ReadonlySet<string> {
  const request = { ...day, dishes };
  const standing = (load: string) => standOf(sheet, load, state);
  return new Set(
    dishes.flatMap((work) =>
      wavesOf(request, work).flatMap(({ loads }) =>
        loads.slice(1).flatMap(({ load }, at) => {
          const before = loads[at]!.load.id;
          return standing(before) === standing(load.id) ? [] : [load.id];
        }),
      ),
    ),
  );
}

/** Rounds that are being walked at this minute, by the problem's tasks. */
export interface Walking {
  /** Ids of the tasks in which they go on: whoever walks goes on walking. */
  readonly goneOn: ReadonlySet<string>;
  /** By begun task: its people go on to the next oven at this minute, whoever is at the last one. */
  readonly freeAt: ReadonlyMap<number, number>;
}

export function walkingIn(
  { problem }: DayWork,
  { sheet, slips }: ReplanAsked,
  { state, names }: { readonly state: DayState; readonly names: Names },
): Walking {
  const goneOn = new Set<string>();
  const freeAt = new Map<number, number>();
  const gone = slips.flatMap((slip) => (slip.kind === 'hand-gone' ? [slip.hand] : []));
  for (const { jobs } of walksOf(sheet.jobs)) {
    const isOpen = ({ id }: Job) => (state.get(id)?.state ?? 'open') === 'open';
    const next = jobs.find(isOpen);
    const last = jobs.findLast((job) => !isOpen(job));
    const isLess = jobs.some(({ hands }) => hands.some((hand) => gone.includes(hand)));
    if (next === undefined || last === undefined || isLess) continue;
    const taskOf = ({ id }: Job) => names.get(id)?.round ?? '';
    goneOn.add(taskOf(next));
    const begun = problem.tasks.findIndex(({ id }) => id === taskOf(last));
    if (begun >= 0) freeAt.set(begun, next.start);
  }
  return { goneOn, freeAt };
}

/** How every job of a load stands, and with which round it goes. */
function standOf({ jobs }: DaySheet, load: string, state: DayState): string {
  const own = jobs.filter((job) => job.load === load).toSorted(byRound);
  return JSON.stringify(
    own.map(({ id, kind, round }) => {
      const is = state.get(id)?.state ?? 'open';
      const isBegun = is === 'done' || is === 'running';
      return [kind, round, isBegun ? 'begun' : is];
    }),
  );
}

const roundKey = ({ id, round = id }: Job) => `${round} ${id}`;
const byRound = (one: Job, other: Job) => (roundKey(one) < roundKey(other) ? -1 : 1);

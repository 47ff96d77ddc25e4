// The day as it is cooked: every job at its time on the sheet or, where what comes before it is late,
// as soon as that is done. The order on each hand and each oven is the sheet's.
// Weakness: nobody swaps jobs when something runs late; a cook who does is sooner than this says.

import type { Plan } from '../../solver/problem.ts';
import { linksOf } from '../sequence.ts';
import type { DayWork } from '../work.ts';

export interface Arc {
  readonly from: number;
  readonly to: number;
  /** From start to start. */
  readonly least: number;
  /** It counts from the end of the first: longer by what that takes longer. */
  readonly isFromEnd: boolean;
}

export interface DayNetwork {
  readonly lengths: readonly number[];
  /** Not before this; nothing for what comes out of an oven when it is done. */
  readonly floors: readonly number[];
  /** In the order of the sheet. */
  readonly arcs: readonly Arc[];
  readonly batches: readonly { readonly readyAt: number; readonly tasks: readonly number[] }[];
}

export function networkOf(day: DayWork, plan: Plan): DayNetwork {
  const { problem } = day;
  const takeOuts = new Map(
    day.dishes.flatMap(({ loads }) => loads.map((load) => [load.takeOut, load] as const)),
  );
  const minuteJobs = new Set(
    [...takeOuts.values()].flatMap(({ lay, takeOut }) =>
      problem.lags.flatMap(({ from, to }) => (to === takeOut && from !== lay ? [from] : [])),
    ),
  );
  const served = new Set(day.dishes.map((dish) => dish.served));
  const arcs = linksOf(problem, plan).flatMap((link): readonly Arc[] => {
    const { from, to, why } = link;
    const isPlaced = plan.starts[from] !== undefined && plan.starts[to] !== undefined;
    if (why === 'most' || !isPlaced) return [];
    const out = takeOuts.get(to);
    // Bread that is done comes out, whatever look was still to be taken.
    if (out !== undefined && minuteJobs.has(from) && from !== out.cook) return [];
    const length = problem.tasks[from]!.minutes;
    // A pot comes off early only to have time in hand.
    const isHand = takeOuts.has(from) && served.has(to);
    const least = isHand ? Math.min(link.least, length) : link.least;
    return [
      { from, to, least: least - (least >= length ? length : 0), isFromEnd: least >= length },
    ];
  });
  return {
    lengths: problem.tasks.map((task) => task.minutes),
    floors: problem.tasks.map((_, task) =>
      takeOuts.has(task) || isRest(day, task) ? Number.NEGATIVE_INFINITY : (plan.starts[task] ?? 0),
    ),
    arcs: arcs.toSorted((one, other) => plan.starts[one.from]! - plan.starts[other.from]!),
    batches: plan.batches.map(({ store, readyAt, uses }) => ({
      readyAt,
      tasks: uses.map(({ use }) => problem.stores[store]!.uses[use]!.task),
    })),
  };
}

const isRest = ({ meanings, problem }: DayWork, task: number) =>
  meanings[task]!.kind === 'rest' &&
  problem.tasks[task]!.seats.length === 0 &&
  problem.lags.some(({ to }) => to === task);

export interface Changes {
  /** Minutes longer than planned, by task. */
  readonly longer: Float64Array;
  /** Each batch of coals is ready so much later. */
  readonly readyLater: readonly number[];
}

/** Starts of all tasks; the pass over the arcs is repeated until nothing moves. */
export function runDay(network: DayNetwork, changes: Changes, starts: Float64Array): void {
  const { floors, arcs, batches } = network;
  starts.set(floors);
  batches.forEach(({ readyAt, tasks }, at) => {
    const ready = readyAt + changes.readyLater[at]!;
    for (const task of tasks) if (starts[task]! < ready) starts[task] = ready;
  });
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    let isMoved = false;
    for (const { from, to, least, isFromEnd } of arcs) {
      const bound = starts[from]! + least + (isFromEnd ? changes.longer[from]! : 0);
      if (bound <= starts[to]!) continue;
      starts[to] = bound;
      isMoved = true;
    }
    if (!isMoved) return;
  }
}

/** Arcs stand nearly in order, so that two or three rounds do; a bound all the same. */
const MOST_ROUNDS = 50;

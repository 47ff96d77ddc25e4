// The day as it is cooked: every job at its time on the sheet or, where what comes before it is late,
// as soon as that is done and whoever the sheet names is free. Hands take what is ready first; ovens
// keep the order of the sheet. Source: parallel dispatching, kolischSprecher1997 names the scheme.
// Weakness: nobody helps out with another's job; a cook who does is sooner than this says.

import type { Plan } from '../../solver/problem.ts';
import { linksOf } from '../sequence.ts';
import { type DayWork, firmProblem } from '../work.ts';

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
  /** By the task that they come out of. */
  readonly arcsFrom: readonly (readonly Arc[])[];
  /** How many arcs come into each task. */
  readonly waits: Uint16Array;
  /** Who is busy with it; nobody for what goes on by itself or takes no time. */
  readonly crews: readonly (readonly number[])[];
  readonly hands: number;
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
  const arcs = linksOf(firmProblem(day), plan).flatMap((link): readonly Arc[] => {
    const { from, to, why } = link;
    const isPlaced = plan.starts[from] !== undefined && plan.starts[to] !== undefined;
    if (why === 'most' || why === 'hand' || !isPlaced) return [];
    const out = takeOuts.get(to);
    // Bread that is done comes out, whatever look was still to be taken.
    if (out !== undefined && minuteJobs.has(from) && from !== out.cook) return [];
    const length = problem.tasks[from]!.minutes;
    const { least } = link;
    const each = day.meanings[from]!.round?.minutes ?? length;
    return [{ from, to, least, isFromEnd: least >= each }];
  });
  const waits = new Uint16Array(problem.tasks.length);
  for (const { to } of arcs) waits[to]! += 1;
  return {
    lengths: problem.tasks.map((task) => task.minutes),
    floors: problem.tasks.map((_, task) =>
      takeOuts.has(task) || isRest(day, task) ? Number.NEGATIVE_INFINITY : (plan.starts[task] ?? 0),
    ),
    arcsFrom: problem.tasks.map((_, task) => arcs.filter(({ from }) => from === task)),
    waits,
    crews: problem.tasks.map((task, index) => (task.minutes > 0 ? plan.crews[index]! : [])),
    hands: problem.units.length,
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

/** Starts of all tasks: the one that is ready first goes first, with its own hands. */
export function runDay(network: DayNetwork, changes: Changes, starts: Float64Array): void {
  const { floors, arcsFrom, batches, waits, crews, lengths } = network;
  starts.set(floors);
  batches.forEach(({ readyAt, tasks }, at) => {
    const ready = readyAt + changes.readyLater[at]!;
    for (const task of tasks) if (starts[task]! < ready) starts[task] = ready;
  });
  const left = waits.slice();
  const free = new Float64Array(network.hands);
  const open = floors.flatMap((_, task) => (left[task] === 0 ? [task] : []));
  while (open.length > 0) {
    const task = takeSoonest(open, starts);
    for (const unit of crews[task]!) starts[task] = Math.max(starts[task]!, free[unit]!);
    const end = starts[task]! + Math.max(0, lengths[task]! + changes.longer[task]!);
    for (const unit of crews[task]!) free[unit] = end;
    for (const { to, least, isFromEnd } of arcsFrom[task]!) {
      const bound = starts[task]! + least + (isFromEnd ? changes.longer[task]! : 0);
      if (bound > starts[to]!) starts[to] = bound;
      left[to]! -= 1;
      if (left[to] === 0) open.push(to);
    }
  }
}

function takeSoonest(open: number[], starts: Float64Array): number {
  let best = 0;
  for (let at = 1; at < open.length; at += 1) {
    if (starts[open[at]!]! < starts[open[best]!]!) best = at;
  }
  const task = open[best]!;
  open[best] = open.at(-1)!;
  open.pop();
  return task;
}

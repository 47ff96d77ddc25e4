// The pure shift: everything in the order of the sheet, by the same hands, in the same ovens, only as
// much later as it must be. Longest paths over lags and that order; nothing is searched.
// Source: bellman1958.

import type { Batch, Plan, Upkeep } from '../../solver/problem.ts';
import type { DaySheet, Job, Lighting } from '../day-sheet.ts';
import { crewBySheet, type RestOfDay } from './rest-of-day.ts';
import type { DayState } from './state.ts';

export interface ShiftAsked {
  readonly rest: RestOfDay;
  readonly state: DayState;
  readonly sheet: DaySheet;
  readonly now: number;
  /** Lightings whose coals are still to be lit. */
  readonly unlit: readonly Lighting[];
  /** Dishes that are wanted later: their work moves along. */
  readonly later: ReadonlyMap<string, number>;
}

/** What moves: a task, a lighting or a feeding of the fire. */
interface Node {
  readonly planned: number;
  readonly floor: number;
  readonly minutes: number;
  readonly isFixed: boolean;
  readonly crew: readonly number[];
}

interface Arc {
  readonly from: number;
  readonly to: number;
  readonly least: number;
}

/** Undefined where the order of the sheet can't be kept. */
export function shiftedPlan(asked: ShiftAsked): Plan | undefined {
  const { rest, unlit } = asked;
  const { tasks } = rest.day.problem;
  const nodes = nodesOf(asked);
  const isComplete = tasks.every(
    ({ group }, index) =>
      nodes.has(index) || rest.day.problem.groups[group]!.mayBeLeft || index >= tasks.length,
  );
  if (!isComplete) return undefined;
  const arcs = [
    ...lagArcs(asked, nodes),
    ...handArcs(asked, nodes),
    ...roomArcs(asked, nodes),
    ...coalArcs(asked, nodes),
  ];
  const starts = settled(nodes, arcs);
  return starts === undefined
    ? undefined
    : planFrom(asked, nodes, starts, tasks.length + unlit.length);
}

const storeOf = ({ rest }: ShiftAsked) => rest.day.problem.stores[0];

function nodesOf(asked: ShiftAsked): ReadonlyMap<number, Node> {
  const { rest, state, now, unlit } = asked;
  const { problem } = rest.day;
  const nodes = new Map<number, Node>();
  problem.tasks.forEach((task, index) => {
    const planned = plannedStart(asked, index);
    if (planned === undefined) return;
    const held = rest.held.get(index);
    const crew = held?.crew ?? crewBySheet({ day: rest.day, state }, index);
    const isFixed = task.fixed !== undefined;
    const floor = isFixed ? task.fixed! : Math.max(planned, task.release ?? now, now);
    nodes.set(index, { planned, floor, minutes: task.minutes, isFixed, crew });
  });
  const minutes = storeOf(asked)?.minutes ?? 0;
  const byId = new Map(problem.units.map(({ id }, unit) => [id, unit]));
  const crewOf = (job: Job | undefined) => (job?.hands ?? []).flatMap((id) => byId.get(id) ?? []);
  unlit.forEach((each, at) => {
    const job = asked.sheet.jobs.find(({ id }) => id === each.id);
    const planned = each.at + mostLater(asked.later);
    const floor = Math.max(each.at, now);
    const node = { planned, floor, minutes, isFixed: false, crew: crewOf(job) };
    nodes.set(problem.tasks.length + at, node);
  });
  tendsOf(asked).forEach((job, at) => {
    const floor = Math.max(job.start, now);
    const length = job.end - job.start;
    const node = { planned: job.start, floor, minutes: length, isFixed: false, crew: crewOf(job) };
    nodes.set(problem.tasks.length + unlit.length + at, node);
  });
  return nodes;
}

/** Feedings that belong to a fire which is not lit yet; of one that burns they are tasks. */
function tendsOf({ rest, sheet, state, unlit }: ShiftAsked): readonly Job[] {
  const isTask = rest.day.problem.tasks.some(({ id }) => id.startsWith('tend-fire'));
  if (isTask || unlit.length === 0) return [];
  return sheet.jobs.filter(
    (job) => job.kind === 'tend-fire' && state.get(job.id)?.state === 'open',
  );
}

/** Chores and fires go with the dish that moves most. */
const mostLater = (later: ShiftAsked['later']) => Math.max(0, ...later.values());

function plannedStart(asked: ShiftAsked, index: number): number | undefined {
  const { rest, state, sheet, later } = asked;
  const { problem, meanings } = rest.day;
  const task = problem.tasks[index]!;
  if (task.fixed !== undefined) return task.fixed;
  const { kind, dish } = meanings[index]!;
  const by = dish === undefined ? mostLater(later) : (later.get(dish) ?? 0);
  if (kind === 'served') {
    const served = sheet.servings.find((each) => each.dish === dish)?.served;
    return served === undefined ? undefined : Math.max(served + by, task.due ?? served);
  }
  const known = state.get(task.id);
  if (known === undefined) return undefined;
  return kind === 'call' ? Math.max(known.start, task.due ?? known.start) : known.start + by;
}

function lagArcs({ rest }: ShiftAsked, nodes: ReadonlyMap<number, Node>): readonly Arc[] {
  return rest.day.problem.lags.flatMap((lag): readonly Arc[] => {
    if (!nodes.has(lag.from) || !nodes.has(lag.to)) return [];
    const there = { from: lag.from, to: lag.to, least: lag.least };
    return lag.most === undefined
      ? [there]
      : [there, { from: lag.to, to: lag.from, least: -lag.most }];
  });
}

const inOrder = (nodes: ReadonlyMap<number, Node>, members: readonly number[]) =>
  members.toSorted(
    (one, other) => nodes.get(one)!.planned - nodes.get(other)!.planned || one - other,
  );

/** One thing after the other on each pair of hands; the call is nobody's time. */
function handArcs({ rest }: ShiftAsked, nodes: ReadonlyMap<number, Node>): readonly Arc[] {
  return rest.day.problem.units.flatMap((_, unit) => {
    const own = [...nodes].flatMap(([at, { crew, minutes }]) =>
      crew.includes(unit) && minutes > 0 ? [at] : [],
    );
    return chained(nodes, inOrder(nodes, own));
  });
}

const chained = (nodes: ReadonlyMap<number, Node>, order: readonly number[]): readonly Arc[] =>
  order.slice(1).map((to, at) => {
    const from = order[at]!;
    return { from, to, least: nodes.get(from)!.minutes };
  });

/** Tables, lids and ovens: what did not overlap stays in its order. */
function roomArcs({ rest }: ShiftAsked, nodes: ReadonlyMap<number, Node>): readonly Arc[] {
  const { problem } = rest.day;
  return problem.pools.flatMap(({ capacity }, pool): readonly Arc[] => {
    const users = problem.tasks.flatMap(({ takes, minutes }, at) =>
      nodes.has(at) && minutes > 0 && takes.some((take) => take.pool === pool) ? [at] : [],
    );
    const order = inOrder(nodes, users);
    const holds = problem.holds
      .filter((hold) => hold.pool === pool && nodes.has(hold.first) && nodes.has(hold.last))
      .toSorted((a, b) => nodes.get(a.first)!.planned - nodes.get(b.first)!.planned);
    const held = holds.slice(1).map((hold, at) => {
      const before = holds[at]!.last;
      return { from: before, to: hold.first, least: nodes.get(before)!.minutes };
    });
    const apart = order.slice(capacity).map((to, at) => {
      const from = order[at]!;
      return { from, to, least: nodes.get(from)!.minutes };
    });
    return [...held, ...apart];
  });
}

/** Lit in time for their uses and not too long before; one chimneyful after the other. */
function coalArcs(asked: ShiftAsked, nodes: ReadonlyMap<number, Node>): readonly Arc[] {
  const { rest, unlit } = asked;
  const store = storeOf(asked);
  if (store === undefined) return [];
  const first = rest.day.problem.tasks.length;
  const made = store.minutes + store.lead;
  const uses = unlit.flatMap((each, at) =>
    usesOf(asked, each).flatMap(({ use }): readonly Arc[] => {
      const { task, waitMost } = store.uses[use]!;
      if (!nodes.has(task)) return [];
      const there = { from: first + at, to: task, least: made };
      if (!Number.isFinite(waitMost)) return [there];
      return [there, { from: task, to: first + at, least: -(made + waitMost) }];
    }),
  );
  const chimneys = unlit.flatMap((each, at): readonly Arc[] => {
    const next = unlit.findIndex((other, index) => index > at && other.chimney === each.chimney);
    const isShared = each.chimney !== undefined && next >= 0;
    return isShared ? [{ from: first + at, to: first + next, least: made }] : [];
  });
  return [...uses, ...chimneys];
}

/** Uses of a lighting that are still to be supplied, one for each task. */
function usesOf(asked: ShiftAsked, lighting: Lighting) {
  const store = storeOf(asked);
  const { tasks } = asked.rest.day.problem;
  const amounts = new Map<number, number>();
  for (const { job, coals } of lighting.uses) {
    const id = job.split('~')[0]!;
    const use = store?.uses.findIndex((each) => tasks[each.task]!.id === id) ?? -1;
    if (use >= 0) amounts.set(use, (amounts.get(use) ?? 0) + coals);
  }
  return [...amounts].map(([use, amount]) => ({ use, amount }));
}

/** Undefined where something that stands would have to move, or nothing comes to rest. */
function settled(
  nodes: ReadonlyMap<number, Node>,
  arcs: readonly Arc[],
): ReadonlyMap<number, number> | undefined {
  const starts = new Map([...nodes].map(([at, { floor }]) => [at, floor]));
  for (let round = 0; round <= nodes.size; round += 1) {
    let isMoved = false;
    for (const { from, to, least } of arcs) {
      const bound = starts.get(from)! + least;
      if (bound <= starts.get(to)!) continue;
      if (nodes.get(to)!.isFixed) return undefined;
      starts.set(to, bound);
      isMoved = true;
    }
    if (!isMoved) return starts;
  }
  return undefined;
}

function planFrom(
  asked: ShiftAsked,
  nodes: ReadonlyMap<number, Node>,
  starts: ReadonlyMap<number, number>,
  firstTend: number,
): Plan {
  const { rest, unlit } = asked;
  const { problem } = rest.day;
  const store = storeOf(asked);
  const batches = unlit.flatMap((each, at): readonly Batch[] => {
    const uses = usesOf(asked, each);
    if (store === undefined || uses.length === 0) return [];
    const start = starts.get(problem.tasks.length + at)!;
    const readyAt = start + store.minutes + store.lead;
    const { crew } = nodes.get(problem.tasks.length + at)!;
    return [{ store: 0, start, readyAt, emptiedAt: readyAt, crew, uses }];
  });
  const upkeeps = tendsOf(asked).map(
    (_, at): Upkeep => ({
      store: 0,
      batch: 0,
      start: starts.get(firstTend + at)!,
      crew: nodes.get(firstTend + at)!.crew,
    }),
  );
  const lateBy = problem.groups.map((_, group) =>
    Math.max(
      0,
      ...problem.tasks.map((task, index) =>
        task.group === group && task.due !== undefined ? (starts.get(index) ?? 0) - task.due : 0,
      ),
    ),
  );
  const left = leftGroups(asked, nodes, starts);
  const isLeft = (task: number) => left.includes(problem.tasks[task]!.group);
  return {
    starts: problem.tasks.map((_, index) => (isLeft(index) ? undefined : starts.get(index))),
    crews: problem.tasks.map((_, index) => (isLeft(index) ? [] : (nodes.get(index)?.crew ?? []))),
    batches,
    upkeeps,
    lateBy,
    left,
    broken: [],
  };
}

/** What was left before, and chores that now come when those who do them have gone. */
function leftGroups(
  { rest }: ShiftAsked,
  nodes: ReadonlyMap<number, Node>,
  starts: ReadonlyMap<number, number>,
): readonly number[] {
  const { problem } = rest.day;
  const isGone = (task: number) => {
    const end = (starts.get(task) ?? 0) + problem.tasks[task]!.minutes;
    const { crew = [] } = nodes.get(task) ?? {};
    return crew.some((unit) => problem.units[unit]!.windows.every(({ to }) => to < end));
  };
  return problem.groups.flatMap(({ mayBeLeft }, group) => {
    const own = problem.tasks.flatMap((task, index) => (task.group === group ? [index] : []));
    const isLeft = own.some((task) => !starts.has(task) || (mayBeLeft && isGone(task)));
    return isLeft ? [group] : [];
  });
}

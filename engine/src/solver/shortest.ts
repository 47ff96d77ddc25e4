// How soon can everything be done? Tasks over lags and pools, nothing else: the plain project whose
// best answers are published. Passes go backwards and forwards in turn, each pressed against the
// other; the order of the tasks is searched by the same population as meals.

import { type EvolveWish, evolve, type Passed, type Placing } from './evolve.ts';
import { type Forced, forcedOrders } from './forced.ts';
import { PoolGrid, type Taking } from './pools.ts';
import {
  followersIn,
  type Net,
  netOf,
  type Outcome,
  orderByKeys,
  type Room,
  serialPass,
} from './serial.ts';
import { APART, type Arc, longestPaths } from './temporal.ts';

/** The first task comes before all, the last after all; both take no time. */
export interface Project {
  readonly minutes: readonly number[];
  readonly takes: readonly (readonly Taking[])[];
  /** start(to) - start(from) >= least; a lag at most is one backwards with a negative least. */
  readonly arcs: readonly Arc[];
  readonly capacities: readonly number[];
  /** Longest span that is looked at. */
  readonly horizon: number;
}

/** Starts, counted from the first task. */
export type Starts = Float64Array;

export type Shortest =
  | {
      /** 'proven': no plan is shorter. 'found': the shortest that was found. */
      readonly status: 'proven' | 'found';
      readonly span: number;
      readonly starts: Starts;
      readonly passes: number;
      /** No plan is shorter than this. */
      readonly bound: number;
    }
  /** Proven: no plan exists at all. */
  | { readonly status: 'impossible'; readonly why: Exclude<Forced, { paths: Float64Array }> }
  /** None found, which proves nothing. */
  | { readonly status: 'none-found'; readonly passes: number };

/** The shortest plan found within the passes allowed. */
export function searchShortest(project: Project, wish: ProjectWish): Shortest {
  const paths = longestPaths(project.minutes.length, project.arcs);
  const forced = forcedOrders(project, paths);
  if (!('paths' in forced)) return { status: 'impossible', why: forced };
  const bound = leastSpan(project, forced.paths);
  const stopAt = Math.max(bound, wish.enough ?? bound);
  const found = evolve(projectPlacing(project, forced.paths), { ...wish, bound: stopAt });
  const { shape: starts, cost: span } = found.best;
  const { passes } = found;
  if (starts === undefined) return { status: 'none-found', passes };
  return { status: span <= bound ? 'proven' : 'found', span, starts, passes, bound };
}

export interface ProjectWish extends Omit<EvolveWish<Starts | undefined>, 'bound'> {
  /** A span that is short enough to stop at. */
  readonly enough?: number;
}

/** No plan is shorter: the longest path, and the work of each pool over what there is of it. */
function leastSpan(project: Project, paths: Float64Array): number {
  const count = project.minutes.length;
  const work = project.capacities.map((capacity, pool) => {
    const all = project.takes.reduce((sum, takes, task) => {
      const amount = takes.find((take) => take.pool === pool)?.amount ?? 0;
      return sum + amount * project.minutes[task]!;
    }, 0);
    return Math.ceil(all / capacity);
  });
  return Math.max(paths[count - 1]!, ...work);
}

/** A project seen from its end or its beginning: passes always go backwards in it. */
interface Side {
  readonly net: Net;
  readonly followers: readonly Int32Array[];
  readonly leaders: readonly Int32Array[];
  /** Latest start by the horizon alone. */
  readonly latest: Float64Array;
}

function projectPlacing(project: Project, straight: Float64Array): Placing<Starts | undefined> {
  const count = project.minutes.length;
  const mirrored = mirror(straight, project.minutes);
  const sides = [sideOf(mirrored, project), sideOf(straight, project)];
  const grid = new PoolGrid(project.capacities, { from: 0, to: project.horizon });
  const room = roomIn(project, grid);
  const weights = Float64Array.from(project.minutes, (minutes, task) => {
    const shares = project.takes[task]!.map(
      ({ pool, amount }) => amount / project.capacities[pool]!,
    );
    return minutes * shares.reduce((sum, share) => sum + share, 0);
  });
  // Mirrored: what has the longest tail is placed first, as it is by its latest start.
  const hint = Float64Array.from(project.minutes, (_, task) => straight[task * count + count - 1]!);
  return {
    count,
    senses: 2,
    weights,
    hint,
    pass: (keys, sense) => onePass(project, sides[sense]!, { grid, room, keys, sense }),
  };
}

function onePass(
  project: Project,
  side: Side,
  given: {
    readonly grid: PoolGrid;
    readonly room: ProjectRoom;
    readonly keys: Float64Array;
    readonly sense: number;
  },
): Passed<Starts | undefined> {
  const { grid, room, keys, sense } = given;
  const { horizon, minutes } = project;
  const count = minutes.length;
  const order = orderByKeys(keys, side);
  const { starts, outcome, passes } = pulledPass(side, { order, grid, room });
  if (outcome !== 'placed') return { cost: LOST, keys, shape: undefined, passes };
  let first = horizon;
  for (let task = 0; task < count; task += 1) first = Math.min(first, starts[task]!);
  const shape = new Float64Array(count);
  const next = new Float64Array(count);
  for (let task = 0; task < count; task += 1) {
    const start = starts[task]!;
    shape[task] = sense === 1 ? start - first : horizon - start - minutes[task]!;
    next[task] = -start;
  }
  return { cost: horizon - first, keys: next, shape, passes };
}

/** Dearer than any plan. */
const LOST = 1_000_000_000;

/** A task that a lag at most leaves no room for has its partner pulled earlier, and all is redone. */
function pulledPass(
  side: Side,
  given: { readonly order: Int32Array; readonly grid: PoolGrid; readonly room: ProjectRoom },
) {
  const { grid, order, room } = given;
  const { starts } = room;
  const latest = side.latest.slice();
  const floors = new Float64Array(latest.length);
  let passes = 0;
  let outcome: Outcome = 'stuck';
  while (passes <= PULLS * latest.length) {
    passes += 1;
    grid.clear();
    starts.fill(Number.NaN);
    const bounds = { soonest: new Float64Array(latest.length), latest: latest.slice() };
    outcome = serialPass(side.net, bounds, { order, floors, room });
    if (outcome === 'placed' || outcome === 'stuck') break;
    latest[outcome.local] = starts[outcome.local]! - outcome.by;
  }
  return { starts, outcome, passes };
}

/** For each task. @tuned on the samples of RCPSP/max: more found no more plans */
const PULLS = 3;

/** Starts are kept in one array that every pass writes anew. */
interface ProjectRoom extends Room {
  readonly starts: Float64Array;
}

function roomIn(project: Project, grid: PoolGrid): ProjectRoom {
  const { minutes, takes } = project;
  const starts = new Float64Array(minutes.length);
  return {
    starts,
    startOf: (local) => starts[local],
    startFor: (local, bounds, floor) =>
      grid.latestRoom(takes[local]!, minutes[local]!, {
        floor,
        ceiling: bounds.latest[local]!,
      }) ?? 'stuck',
    stand: (local, start) => {
      starts[local] = start;
      for (const { pool, amount } of takes[local]!) {
        grid.mark(pool, start, start + minutes[local]!, amount);
      }
    },
  };
}

/** m = -(start + minutes): what came after comes before. */
function mirror(paths: Float64Array, minutes: readonly number[]): Float64Array {
  const count = minutes.length;
  const turned = new Float64Array(count * count).fill(APART);
  for (let from = 0; from < count; from += 1) {
    for (let to = 0; to < count; to += 1) {
      const least = paths[from * count + to]!;
      if (least === APART) continue;
      turned[to * count + from] = from === to ? 0 : least + minutes[to]! - minutes[from]!;
    }
  }
  return turned;
}

function sideOf(paths: Float64Array, { minutes, horizon }: Project): Side {
  const count = minutes.length;
  const net = netOf(count, paths);
  const followers = followersIn(net);
  const leaders = followersIn(net).map((_, task) =>
    Int32Array.from(followers.flatMap((after, before) => (after.includes(task) ? [before] : []))),
  );
  const latest = Float64Array.from(minutes, (each) => horizon - each);
  return { net, followers, leaders, latest };
}

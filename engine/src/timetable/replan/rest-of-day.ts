// What is left of the day as a problem of its own: what is done or runs stands where it is and takes
// its hands with it, nothing else begins before now, lit coals keep the use they were lit for.

import type { Hand } from '../../camp/camp.ts';
import type { Lag, Problem, Store, Stretch, Task } from '../../solver/problem.ts';
import type { TaskMeaning } from '../builder.ts';
import type { Job, Lighting } from '../day-sheet.ts';
import * as habits from '../habits.ts';
import { visitId } from '../round.ts';
import type { DayWork } from '../work.ts';
import type { Lost } from './changed-request.ts';
import type { Walking } from './half-walked.ts';
import type { DayState, JobState } from './state.ts';

export interface RestAsked {
  readonly day: DayWork;
  readonly state: DayState;
  readonly lightings: readonly Lighting[];
  readonly jobs: readonly Job[];
  readonly hands: readonly Hand[];
  readonly now: number;
  /** Groups that keep their planned minutes too. */
  readonly kept: ReadonlySet<number>;
  /** What is done may wait longer for what comes than the rules of the house say. */
  readonly isEased: boolean;
  readonly lost: Lost;
  /** By dish, as the sheet had it. */
  readonly servedAt: ReadonlyMap<string, number>;
  /** Lightings whose coals are to be had. */
  readonly lit: ReadonlySet<string>;
  readonly walking: Walking;
}

export interface RestOfDay {
  readonly day: DayWork;
  /** Where a task stands and who does it, for all that is not planned again. */
  readonly held: ReadonlyMap<number, Held>;
}

export interface Held {
  readonly start: number;
  readonly minutes: number;
  readonly crew: readonly number[];
  /** Begun: it may not even be told differently. */
  readonly isPast: boolean;
}

export function restOfDay(asked: RestAsked): RestOfDay {
  const held = heldTasks(asked);
  const { day, now } = asked;
  const { problem } = day;
  const stock = litStock(asked, held);
  const tasks = problem.tasks.map((task, index) => restTask(asked, { task, index, held, stock }));
  const blockers = burningChimneys(asked);
  const tends = tendTasks(asked);
  const extra = [...blockers, ...tends];
  const first = problem.groups.length;
  const groups = [
    ...problem.groups,
    ...extra.map(({ isFirm }, at) => ({
      id: `extra ${at}`,
      towards: 'late' as const,
      mayBeLeft: !isFirm,
      latePrice: isFirm ? 100_000 : 1,
    })),
  ];
  const starts = [...held.values()].map(({ start }) => start);
  const rest: Problem = {
    ...problem,
    from: Math.min(problem.from, now, ...starts, ...blockers.map(({ task }) => task.fixed ?? now)),
    tasks: [...tasks, ...extra.map(({ task }, at) => ({ ...task, group: first + at }))],
    lags: restLags(asked, held),
    units: problem.units.map((unit, index) => ({
      ...unit,
      windows: openWindows(unit.windows, busyOf(asked, held, index), now),
    })),
    stores: stock.stores,
    groups,
  };
  const meanings = [...day.meanings, ...extra.map(({ meaning }) => meaning)];
  return { day: { ...day, problem: rest, meanings, cushions: new Set() }, held };
}

/** A round goes from oven to oven: its task begins with the first and has the people of all. */
function heldTasks(asked: RestAsked): ReadonlyMap<number, Held> {
  const { day, state, kept, lost, now } = asked;
  const { problem } = day;
  const held = new Map<number, Held>();
  problem.tasks.forEach((task, index) => {
    const known = state.get(task.id);
    const { kind, dish } = day.meanings[index]!;
    const isLost = known?.state === 'lost' || (kind === 'served' && lost.dishes.has(dish ?? ''));
    if (isLost) {
      held.set(index, { start: known?.start ?? now, minutes: 0, crew: [], isPast: true });
      return;
    }
    const served = kind === 'served' ? servedAlready(asked, index) : undefined;
    if (served !== undefined) {
      held.set(index, { start: served, minutes: 0, crew: [], isPast: true });
      return;
    }
    if (known === undefined) return;
    const isPast = known.state !== 'open';
    if (!isPast && !kept.has(task.group)) return;
    const crew = crewBySheet(asked, index);
    held.set(index, {
      start: known.start,
      minutes: Math.max(0, realMinutes(asked, index, known)),
      crew,
      isPast,
    });
  });
  return held;
}

/** A round is as long as its task says, and longer by what its latest oven is. */
function realMinutes(asked: RestAsked, task: number, { start, end }: JobState): number {
  const { round } = asked.day.meanings[task]!;
  if (round === undefined) return end - start;
  const late = visitsTo(asked, task).map((visit, place) =>
    visit === undefined ? 0 : visit.end - (start + place * round.wave.pace + round.minutes),
  );
  return asked.day.problem.tasks[task]!.minutes + Math.max(...late);
}

/** On the table before now, all that comes before it being done. */
function servedAlready({ day, state, servedAt, now }: RestAsked, task: number): number | undefined {
  const { problem, meanings } = day;
  const at = servedAt.get(meanings[task]!.dish ?? '');
  const before = problem.lags.flatMap(({ from, to }) => (to === task ? [from] : []));
  const isDone = before.every((from) => state.get(problem.tasks[from]!.id)?.state === 'done');
  return at !== undefined && at < now && isDone ? at : undefined;
}

type Told = Pick<RestAsked, 'day' | 'state'>;

function visitsTo({ day, state }: Told, task: number) {
  const visits = day.meanings[task]!.round?.wave.loads.length ?? 1;
  const { id } = day.problem.tasks[task]!;
  return Array.from({ length: visits }, (_, place) => state.get(visitId(id, place)));
}

/** Who does it by the sheet; of a round, the crews of its first ovens. */
export function crewBySheet(told: Told, task: number): readonly number[] {
  const units = new Map(told.day.problem.units.map(({ id }, index) => [id, index]));
  const crews = told.day.meanings[task]!.round?.crews ?? 1;
  const hands = visitsTo(told, task)
    .slice(0, crews)
    .flatMap((each) => each?.job.hands ?? []);
  return hands.flatMap((id) => units.get(id) ?? []);
}

interface Stock {
  readonly stores: readonly Store[];
  /** By task: between these minutes its lit coals are good. */
  readonly good: ReadonlyMap<number, { readonly from: number; readonly to: number }>;
}

/** Uses whose coals are laid already, or are lit for them and will not be too old. */
function litStock({ day, lightings, lit }: RestAsked, held: RestOfDay['held']): Stock {
  const { problem, meanings } = day;
  const good = new Map<number, { from: number; to: number }>();
  const stores = problem.stores.map((store) => ({
    ...store,
    uses: store.uses.filter((use) => {
      if (held.get(use.task)?.isPast) return false;
      const visits = meanings[use.task]!.round?.wave.loads.length ?? 1;
      const { id } = problem.tasks[use.task]!;
      const ids = Array.from({ length: visits }, (_, place) => visitId(id, place));
      const from = lightings.filter((each) => lit.has(each.id));
      const given = from.flatMap((each) =>
        each.uses.flatMap(({ job, coals }) => (ids.includes(job) ? [{ coals, each }] : [])),
      );
      const coals = given.reduce((sum, each) => sum + each.coals, 0);
      if (coals < use.amount) return true;
      good.set(use.task, {
        from: Math.max(...given.map(({ each }) => each.readyAt)),
        to: Math.min(...given.map(({ each }) => each.readyAt + use.waitMost)),
      });
      return false;
    }),
  }));
  return { stores: stores.filter(({ uses }) => uses.length > 0), good };
}

function restTask(
  asked: RestAsked,
  wish: {
    readonly task: Task;
    readonly index: number;
    readonly held: RestOfDay['held'];
    readonly stock: Stock;
  },
): Task {
  const { now, state, day } = asked;
  const { task, index, held, stock } = wish;
  const stands = held.get(index);
  if (stands !== undefined) {
    const { id, group } = task;
    return { id, group, minutes: stands.minutes, fixed: stands.start, seats: [], takes: [] };
  }
  const good = stock.good.get(index);
  const minutes = lengthIn(state, task, index, day);
  const release = Math.max(
    now,
    task.release ?? now,
    good?.from ?? now,
    firstReady(stock, index, now),
  );
  const { sameAs, ...rest } = task;
  const walkers = asked.walking.goneOn.has(task.id) ? crewBySheet(asked, index) : [];
  const isWalked = walkers.length > 0 && walkers.length === task.seats.length;
  return {
    ...rest,
    ...(isWalked ? { seats: walkers.map((unit) => [unit]) } : {}),
    minutes,
    release,
    ...(sameAs === undefined || held.has(sameAs) ? {} : { sameAs }),
    ...(good === undefined ? {} : { latest: Math.max(release, good.to) }),
  };
}

/** Coals that are still to be lit are ready so soon, if somebody begins now. */
function firstReady({ stores }: Stock, task: number, now: number): number {
  const store = stores.find(({ uses }) => uses.some((use) => use.task === task));
  return store === undefined ? now : now + store.minutes + store.lead;
}

/** What comes after these has its minute, whatever slips. */
const TIMED: ReadonlySet<string> = new Set(['cook', 'lay-coals', 'take-out']);

/** As long as the sheet and the slips have it: a hurried rise, a slow one. */
function lengthIn(state: DayState, task: Task, index: number, day: DayWork): number {
  const known = state.get(task.id);
  if (known === undefined || day.meanings[index]!.round !== undefined) return task.minutes;
  return Math.max(0, known.end - known.start);
}

/** Between what is held nothing can be asked; what has waited too long already is let go on. */
function restLags(
  { day, now, state, isEased }: RestAsked,
  held: RestOfDay['held'],
): readonly Lag[] {
  const { problem, meanings } = day;
  return problem.lags.flatMap((lag): readonly Lag[] => {
    const before = held.get(lag.from);
    if (held.has(lag.to)) return before === undefined && !held.get(lag.to)!.isPast ? [lag] : [];
    const from = problem.tasks[lag.from]!;
    const length = from.minutes;
    const each = meanings[lag.from]!.round?.minutes ?? length;
    const real = before?.minutes ?? lengthIn(state, from, lag.from, day);
    const longer = lag.least >= each ? real - length : 0;
    const least = lag.least + longer;
    if (lag.most === undefined) return [{ ...lag, least }];
    const most = lag.most + longer;
    const isTimed = TIMED.has(meanings[lag.from]!.kind) && meanings[lag.to]!.kind !== 'add-coals';
    const isLetGo =
      before !== undefined && (before.start + most < now || (isEased && before.isPast && !isTimed));
    return isLetGo ? [{ from: lag.from, to: lag.to, least }] : [{ ...lag, least, most }];
  });
}

/** When a pair of hands is taken by what is not planned again. */
function busyOf(asked: RestAsked, held: RestOfDay['held'], unit: number): readonly Stretch[] {
  const { day, state, jobs } = asked;
  const id = day.problem.units[unit]!.id;
  const ids = new Set(day.problem.tasks.map((task) => task.id));
  const own = [...held.entries()].flatMap(([task, { crew, start, minutes }]) =>
    crew.includes(unit) && day.meanings[task]!.kind !== 'call'
      ? [{ from: start, to: Math.min(start + minutes, asked.walking.freeAt.get(task) ?? Infinity) }]
      : [],
  );
  const others = jobs.flatMap((job) => {
    const known = state.get(job.id);
    const isTask = ids.has(job.id) || job.round !== undefined;
    if (isTask || known?.state !== 'running' || !job.hands.includes(id)) return [];
    return [{ from: known.start, to: known.end }];
  });
  return [...own, ...others];
}

function openWindows(
  windows: readonly Stretch[],
  busy: readonly Stretch[],
  now: number,
): readonly Stretch[] {
  let open = windows
    .map(({ from, to }) => ({ from: Math.max(from, now), to: Math.max(to, now) }))
    .filter(({ from, to }) => from < to);
  for (const each of busy) {
    open = open.flatMap(({ from, to }) => {
      const parts = [
        { from, to: Math.min(to, each.from) },
        { from: Math.max(from, each.to), to },
      ];
      return parts.filter((part) => part.from < part.to);
    });
  }
  return open.length > 0 ? open : [{ from: now, to: now }];
}

interface Extra {
  readonly task: Omit<Task, 'group'>;
  readonly meaning: TaskMeaning;
  readonly isFirm: boolean;
}

/** Chimneys whose coals are not ready yet hold no others. */
function burningChimneys({ day, lightings, lit, now }: RestAsked): readonly Extra[] {
  const holder = day.problem.stores.find((store) => store.holder !== undefined)?.holder;
  if (holder === undefined) return [];
  return lightings.flatMap((each): readonly Extra[] => {
    if (!lit.has(each.id) || each.readyAt <= now) return [];
    const fixed = Math.min(each.at, now);
    const task = {
      id: `burning-${each.id}`,
      minutes: each.readyAt - fixed,
      fixed,
      seats: [],
      takes: [{ pool: holder, amount: 1 }],
    };
    return [{ task, meaning: { kind: 'served' }, isFirm: true }];
  });
}

/** A feeder fire that burns already is fed on, about when the sheet says. */
function tendTasks({ day, jobs, lit, now }: RestAsked): readonly Extra[] {
  const upkeep = day.problem.stores.find((store) => store.upkeep !== undefined)?.upkeep;
  if (upkeep === undefined || lit.size === 0) return [];
  return jobs.flatMap((job): readonly Extra[] => {
    if (job.kind !== 'tend-fire' || job.start < now) return [];
    const release = Math.max(now, job.start - 5);
    const task = {
      id: job.id,
      minutes: upkeep.minutes,
      release,
      latest: Math.max(release, job.start + habits.TEND_UNFED - habits.TEND_MOST),
      seats: upkeep.seats,
      takes: [],
    };
    return [{ task, meaning: { kind: 'tend-fire' }, isFirm: false }];
  });
}

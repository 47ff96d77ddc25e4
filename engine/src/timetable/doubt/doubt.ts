// How likely is supper in time, between which minutes is each dish done, and where would a few minutes
// more help most? The day is run many times with drawn bakes, rises and coals (seed passed in).
// Sources: method of drawing standard normals boxMuller1958; bands see sources.ts.
// Weakness: the order of the sheet is kept in every run (network.ts).

import { type ClockMinutes, clockMinutes } from '../../quantity/unit.ts';
import type { Plan } from '../../solver/problem.ts';
import { randomFrom } from '../../solver/random.ts';
import type { TimetableRequest } from '../day-sheet.ts';
import type { DayWork } from '../work.ts';
import { type Changes, type DayNetwork, networkOf, runDay } from './network.ts';
import { ASH_OVER_SHARE, type DoubtSource, type DrawnTask, drawnTasks, NINETY } from './sources.ts';

export type { DoubtSource } from './sources.ts';

export interface DayDoubt {
  readonly seed: number;
  readonly runs: number;
  /** Share of the runs in which every dish is on the table within `grace` of its time, or by its own
   * latest (a turn-in window). */
  readonly inTime: number;
  /** So late is still in time [min]. */
  readonly grace: number;
  readonly dishes: readonly DishDoubt[];
  /** Soonest first: one for each hour at which something is served. */
  readonly meals: readonly MealDoubt[];
  /** What more room would bring, most first; nothing that brings next to nothing. */
  readonly buys: readonly Buy[];
}

export interface DishDoubt {
  readonly dish: string;
  /** Cooked and rested: ten in a hundred sooner, half, ten in a hundred later. */
  readonly soonest: ClockMinutes;
  readonly likely: ClockMinutes;
  readonly latest: ClockMinutes;
  readonly inTime: number;
}

export interface MealDoubt {
  readonly wanted: ClockMinutes;
  /** All of it on the table: ten in a hundred sooner, half, ten in a hundred later. */
  readonly soonest: ClockMinutes;
  readonly likely: ClockMinutes;
  readonly latest: ClockMinutes;
  readonly inTime: number;
  /** What counts as in time: the first and the last of its dishes' own limits. */
  readonly limits: { readonly soonest: ClockMinutes; readonly latest: ClockMinutes };
  /** The dish that is last in most of the late runs. */
  readonly lastIfLate?: string;
}

export interface Buy extends DoubtSource {
  /** Begun so much sooner [min]. */
  readonly sooner: number;
  /** Share of the runs in time then, all else as it was. */
  readonly inTime: number;
  /** The last dish is so much less late on average [min]. */
  readonly saved: number;
}

export interface DoubtWish {
  readonly seed: number;
  readonly runs: number;
  /** Tasks that have begun or are done: nothing is drawn for them. */
  readonly known?: ReadonlySet<number>;
}

/** Nobody calls that late [min]; a judgement. */
const GRACE = 5;
/** Begun so much sooner: an oven or a fire; a dough, whose band is wider [min]. */
const SOONER = { bake: 10, 'ash-over': 10, rise: 20 } as const;
/** Only what is last in the late runs is looked at. */
const MOST_BUYS = 3;
/** Less is nothing to act on [min]. */
const WORTH_SAVING = 1;
/** Half of what bakes err by is the day's own: its coals, its wind, its cook. Judged. */
const TOGETHER = Math.sqrt(0.5);

export function dayDoubt(
  request: TimetableRequest,
  day: DayWork,
  plan: Plan,
  wish: DoubtWish,
): DayDoubt {
  const runs = Math.max(1, Math.round(wish.runs));
  const dayRuns = new DayRuns(request, day, plan, { ...wish, runs });
  const plain = dayRuns.served();
  const inTime = shareInTime(plain, dayRuns);
  return {
    seed: wish.seed,
    runs,
    inTime,
    grace: GRACE,
    dishes: day.dishes.map(({ work }, at) => {
      const ready = plain.map((run) => run.ready[at]!);
      return { dish: work.dish.id, ...bandOf(ready), inTime: shareInTime(plain, dayRuns, [at]) };
    }),
    meals: mealsOf(plain, dayRuns),
    buys: buysOf(dayRuns, plain),
  };
}

/** Most first. What goes into the dishes that are last when it is late, and the fire. */
function buysOf(of: DayRuns, plain: readonly Run[]): readonly Buy[] {
  const late = meanLateness(plain, of);
  const blame = blameOf(plain, of);
  const asked = of.sources
    .filter(({ dish }) => dish === undefined || (blame.get(dish) ?? 0) > 0)
    .toSorted((one, other) => weightOf(blame, other) - weightOf(blame, one))
    .slice(0, MOST_BUYS);
  return asked
    .flatMap((source): readonly Buy[] => {
      const then = of.served(source);
      const saved = late - meanLateness(then, of);
      if (saved < WORTH_SAVING) return [];
      return [{ ...source, sooner: SOONER[source.kind], inTime: shareInTime(then, of), saved }];
    })
    .sort((one, other) => other.saved - one.saved);
}

/** Of the dish that is last, past its time. */
const meanLateness = (runs: readonly Run[], { wanted }: DayRuns) =>
  runs.reduce(
    (sum, run) => sum + Math.max(0, ...run.served.map((served, at) => served - wanted[at]!)),
    0,
  ) / runs.length;

const weightOf = (blame: ReadonlyMap<string, number>, { dish }: DoubtSource) =>
  dish === undefined ? Number.POSITIVE_INFINITY : (blame.get(dish) ?? 0);

/** In how many runs each dish is late. */
const blameOf = (runs: readonly Run[], of: DayRuns): ReadonlyMap<string, number> =>
  new Map(
    of.day.dishes.map(({ work }, at) => [
      work.dish.id,
      runs.filter((run) => !isInTime(run, at, of)).length,
    ]),
  );

interface Run {
  /** By dish. */
  readonly ready: readonly number[];
  readonly served: readonly number[];
}

/** The same draws for every question, so that answers differ only by what is asked. */
class DayRuns {
  readonly day: DayWork;
  readonly wanted: readonly number[];
  /** Until when it is still in time: the cook's own latest, or a little past its time. */
  readonly limits: readonly number[];
  readonly sources: readonly DoubtSource[];
  readonly #network: DayNetwork;
  readonly #drawn: readonly DrawnTask[];
  readonly #normals: readonly Float64Array[];
  readonly #ashOver: number;

  constructor(request: TimetableRequest, day: DayWork, plan: Plan, wish: DoubtWish) {
    this.day = day;
    this.wanted = day.dishes.map(({ work }) => work.dish.serveAt);
    this.limits = day.dishes.map(({ work }) => work.dish.latestAt ?? work.dish.serveAt + GRACE);
    this.#network = networkOf(day, plan);
    this.#drawn = drawnTasks(request, day).filter(({ task }) => !wish.known?.has(task));
    this.#ashOver = plan.batches.length > 0 ? leadOf(day) * ASH_OVER_SHARE : 0;
    const own = new Map(this.#drawn.map(({ source }) => [`${source.kind} ${source.dish}`, source]));
    this.sources = [...own.values(), ...(this.#ashOver > 0 ? [{ kind: 'ash-over' as const }] : [])];
    this.#normals = normals(wish, this.#drawn.length + 2);
  }

  /** Every run; `eased` begins so much sooner that its length counts ten minutes less. */
  served(eased?: DoubtSource): readonly Run[] {
    const { lengths } = this.#network;
    const starts = new Float64Array(lengths.length);
    const longer = new Float64Array(lengths.length);
    return this.#normals.map((draws) => {
      this.#drawn.forEach((each, at) => {
        const cut = isSame(each.source, eased) ? SOONER[each.source.kind] : 0;
        longer[each.task] = Math.max(
          -lengths[each.task]!,
          each.likelyMore + deviation(each, this.#zOf(each, draws, at)) - cut,
        );
      });
      runDay(this.#network, this.#changes(longer, draws[1]!, eased), starts);
      return this.#runFrom(starts);
    });
  }

  #changes(longer: Float64Array, normal: number, eased: DoubtSource | undefined): Changes {
    const cut = eased?.kind === 'ash-over' ? SOONER['ash-over'] : 0;
    const later = (normal / NINETY) * this.#ashOver - cut;
    return { longer, readyLater: this.#network.batches.map(() => later) };
  }

  /** Bakes of a day err partly together; a dough errs by itself, the same in all its rises. */
  #zOf({ source, task }: DrawnTask, draws: Float64Array, at: number): number {
    if (source.kind === 'bake') {
      return TOGETHER * draws[0]! + Math.sqrt(1 - TOGETHER * TOGETHER) * draws[at + 2]!;
    }
    const group = this.day.problem.tasks[task]!.group;
    const first = this.#drawn.findIndex(
      (each) => each.source.kind === 'rise' && this.day.problem.tasks[each.task]!.group === group,
    );
    return draws[first + 2]!;
  }

  #runFrom(starts: Float64Array): Run {
    const { lengths } = this.#network;
    const { dishes } = this.day;
    return {
      ready: dishes.map(({ dones, served }) =>
        dones.length === 0
          ? starts[served]!
          : Math.max(...dones.map((task) => starts[task]! + lengths[task]!)),
      ),
      served: dishes.map(({ served }) => starts[served]!),
    };
  }
}

const isSame = (one: DoubtSource, other: DoubtSource | undefined) =>
  other !== undefined && one.kind === other.kind && one.dish === other.dish;

const leadOf = ({ problem }: DayWork) => Math.max(0, ...problem.stores.map(({ lead }) => lead));

function deviation({ below, above }: DrawnTask, z: number): number {
  return (z / NINETY) * (z < 0 ? below : above);
}

/** Standard normals for each run, with their mirror images; none beyond 2.5. */
function normals({ seed, runs }: DoubtWish, count: number): readonly Float64Array[] {
  const random = randomFrom(seed);
  const all: Float64Array[] = [];
  while (all.length < runs) {
    const draws = Float64Array.from({ length: count }, () => {
      const radius = Math.sqrt(-2 * Math.log(Math.max(1e-12, random())));
      const z = radius * Math.cos(2 * Math.PI * random()); // boxMuller1958
      return Math.min(2.5, Math.max(-2.5, z));
    });
    all.push(
      draws,
      draws.map((z) => -z),
    );
  }
  return all.slice(0, runs);
}

const isInTime = (run: Run, at: number, { limits }: DayRuns) => run.served[at]! <= limits[at]!;

function shareInTime(
  runs: readonly Run[],
  of: DayRuns,
  dishes: readonly number[] = of.wanted.map((_, at) => at),
): number {
  const good = runs.filter((run) => dishes.every((at) => isInTime(run, at, of)));
  return good.length / runs.length;
}

function bandOf(minutes: readonly number[]) {
  const sorted = minutes.toSorted((one, other) => one - other);
  const at = (share: number) =>
    clockMinutes(
      Math.round(sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!),
    );
  return { soonest: at(0.1), likely: at(0.5), latest: at(0.9) };
}

function mealsOf(runs: readonly Run[], of: DayRuns): readonly MealDoubt[] {
  const hours = [...new Set(of.wanted)].sort((one, other) => one - other);
  return hours.map((wanted) => {
    const dishes = of.wanted.flatMap((hour, at) => (hour === wanted ? [at] : []));
    // Waiting is not being late: what is done early is on the table at its hour.
    const done = runs.map((run) => Math.max(...dishes.map((at) => run.served[at]!)));
    const last = lastIfLate(runs, of, dishes);
    return {
      wanted: clockMinutes(wanted),
      ...bandOf(done),
      inTime: shareInTime(runs, of, dishes),
      limits: limitsOf(dishes.map((at) => of.limits[at]!)),
      ...(last === undefined ? {} : { lastIfLate: last }),
    };
  });
}

const limitsOf = (limits: readonly number[]) => ({
  soonest: clockMinutes(Math.min(...limits)),
  latest: clockMinutes(Math.max(...limits)),
});

function lastIfLate(
  runs: readonly Run[],
  of: DayRuns,
  dishes: readonly number[],
): string | undefined {
  const counts = new Map<number, number>();
  for (const run of runs) {
    if (dishes.every((at) => isInTime(run, at, of))) continue;
    const last = dishes.reduce((most, at) => (run.served[at]! > run.served[most]! ? at : most));
    counts.set(last, (counts.get(last) ?? 0) + 1);
  }
  const [most] = [...counts].sort((one, other) => other[1] - one[1]);
  return most === undefined ? undefined : of.day.dishes[most[0]]!.work.dish.id;
}

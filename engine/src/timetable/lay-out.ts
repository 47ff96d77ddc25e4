// The solver's plan as a day sheet: jobs, what each oven holds, lightings, lit coals, servings.

import { clockMinutes, minutes } from '../quantity/unit.ts';
import type { Plan, Problem, StoreUse } from '../solver/problem.ts';
import type { DaySheet, Job, Lighting, OvenSpan, Serving, TimetableRequest } from './day-sheet.ts';
import { reasonsFor } from './explain.ts';
import * as habits from './habits.ts';
import { litCoals } from './lit-coals.ts';
import type { DishTasks, LoadTasks } from './making.ts';
import { type Round, roundMinutes, visitId, visitsOf } from './round.ts';
import { type DayWork, firmProblem } from './work.ts';

type Laid = Pick<DaySheet, 'jobs' | 'spans' | 'lightings' | 'lit' | 'servings' | 'firstFire'>;

export function layOut(request: TimetableRequest, day: DayWork, plan: Plan): Laid {
  const idOf = (task: number) => day.problem.tasks[task]!.id;
  const lightings = lightingsOf(day, plan, idOf);
  const jobs = [
    ...taskJobs(day, plan, idOf),
    ...lightingJobs(day, plan, lightings),
    ...tendJobs(day, plan),
  ].sort((a, b) => a.start - b.start || (a.id < b.id ? -1 : 1));
  const firstFire = Math.min(...lightings.map((lighting) => lighting.at));
  return {
    jobs,
    spans: day.dishes.flatMap((dish) => dish.loads.flatMap((load) => spansOf(day, plan, load))),
    lightings,
    lit: litCoals(request, jobs, lightings),
    servings: day.dishes.map((dish) => servingOf(day, plan, dish)),
    ...(lightings.length === 0 ? {} : { firstFire: clockMinutes(firstFire) }),
  };
}

function taskJobs(day: DayWork, plan: Plan, idOf: (task: number) => string): readonly Job[] {
  const { problem, meanings } = day;
  const reasons = reasonsFor(firmProblem(day), plan, { meanings, idOf });
  return problem.tasks.flatMap((task, index): readonly Job[] => {
    const { kind, dish, load, oven, say, values, needsTable, needsCare, round } = meanings[index]!;
    const start = plan.starts[index];
    if (kind === 'served' || start === undefined) return [];
    const job: Job = {
      id: idOf(index),
      kind,
      ...(dish === undefined ? {} : { dish }),
      ...(load === undefined ? {} : { load }),
      ...(oven === undefined ? {} : { oven }),
      start: clockMinutes(start),
      end: clockMinutes(start + task.minutes),
      hands: plan.crews[index]!.map((unit) => problem.units[unit]!.id),
      needsTable: needsTable ?? false,
      ...(say === undefined ? {} : { say }),
      values: values ?? {},
      latestStart: clockMinutes(reasons.latestStart[index]!),
      because: reasons.because[index]!,
      needsCare: needsCare ?? false,
    };
    return round === undefined ? [job] : visitJobs(job, round);
  });
}

/** The jobs that the ovens of a round see of it. */
const visitJobs = (job: Job, round: Round): readonly Job[] =>
  visitsOf(round, job.hands).map(({ place, load, oven, after, hands }) => ({
    ...job,
    id: visitId(job.id, place),
    load,
    oven,
    start: clockMinutes(job.start + after),
    end: clockMinutes(job.start + after + round.minutes),
    hands,
    latestStart: clockMinutes(job.latestStart + after),
    ...(round.wave.loads.length > 1 ? { round: job.id } : {}),
  }));

function lightingsOf(
  day: DayWork,
  plan: Plan,
  idOf: (task: number) => string,
): readonly Lighting[] {
  const inOrder = [...plan.batches].sort((a, b) => a.start - b.start);
  const freeAt: number[] = [];
  const share = sharedOut(day, idOf);
  return inOrder.map((batch, index) => {
    const store = day.problem.stores[batch.store]!;
    const uses = batch.uses.flatMap((each) => share(store.uses[each.use]!, each.amount));
    const found = freeAt.findIndex((minute) => minute <= batch.start);
    const chimney = found < 0 ? freeAt.length : found;
    if (store.holder !== undefined) freeAt[chimney] = batch.emptiedAt;
    return {
      id: `lighting-${index + 1}`,
      ...(store.holder === undefined ? {} : { chimney: chimney + 1 }),
      at: clockMinutes(batch.start),
      readyAt: clockMinutes(batch.readyAt),
      coals: withSpare(
        uses.reduce((sum, use) => sum + use.coals, 0),
        store,
      ),
      uses: uses.reverse(),
    };
  });
}

/** Coals for a round, oven by oven in its order, out of one batch after the other. */
function sharedOut(day: DayWork, idOf: (task: number) => string) {
  const given = new Map<number, number>();
  return ({ task, amount: whole }: StoreUse, amount: number) => {
    const { round } = day.meanings[task]!;
    if (round === undefined) return [{ job: idOf(task), coals: amount }];
    const each = whole / round.wave.loads.length;
    const from = given.get(task) ?? 0;
    given.set(task, from + amount);
    return round.wave.loads.flatMap((_, place) => {
      const coals = Math.min(from + amount, (place + 1) * each) - Math.max(from, place * each);
      return coals > 0 ? [{ job: visitId(idOf(task), place), coals }] : [];
    });
  };
}

/** A tenth more than is needed, if it goes in, and never fewer than draw in a chimney: whole coals. */
function withSpare(needed: number, { size, holder }: Problem['stores'][number]): number {
  const draws = Math.max(habits.DRAWS_FROM, Math.ceil(size * habits.DRAWS_SHARE));
  const wished = Math.ceil(needed * (1 + habits.SPARE_SHARE));
  return Math.max(needed, Math.min(Math.max(wished, holder === undefined ? 0 : draws), size));
}

/** Lighting is hands' work like any other; it may slip as far as its coals' first use allows. */
function lightingJobs(day: DayWork, plan: Plan, lightings: readonly Lighting[]): readonly Job[] {
  const inOrder = [...plan.batches].sort((a, b) => a.start - b.start);
  return inOrder.map((batch, index) => {
    const store = day.problem.stores[batch.store]!;
    const lighting = lightings[index]!;
    const first = Math.min(...batch.uses.map((use) => plan.starts[store.uses[use.use]!.task]!));
    const isFeeder = store.upkeep !== undefined;
    return {
      id: lighting.id,
      kind: isFeeder ? 'light-feeder' : 'light-chimney',
      start: lighting.at,
      end: clockMinutes(batch.start + store.minutes),
      hands: batch.crew.map((unit) => day.problem.units[unit]!.id),
      needsTable: false,
      values: {
        coals: lighting.coals,
        ...(lighting.chimney === undefined ? {} : { chimney: lighting.chimney }),
        readyClockMinutes: lighting.readyAt,
      },
      latestStart: clockMinutes(batch.start + Math.max(0, first - batch.readyAt)),
      because: { kind: 'coals', by: lighting.uses[0]?.job ?? '' },
      needsCare: false,
    };
  });
}

/** Wood on the feeder fire, by a steady hand; ten minutes later does no harm. */
function tendJobs(day: DayWork, plan: Plan): readonly Job[] {
  return plan.upkeeps.map(({ store, start, crew }, index) => ({
    id: `tend-fire-${index + 1}`,
    kind: 'tend-fire',
    start: clockMinutes(start),
    end: clockMinutes(start + (day.problem.stores[store]!.upkeep?.minutes ?? 0)),
    hands: crew.map((unit) => day.problem.units[unit]!.id),
    needsTable: false,
    values: {},
    latestStart: clockMinutes(start + habits.TEND_UNFED - habits.TEND_MOST),
    because: { kind: 'coals' },
    needsCare: false,
  }));
}

function spansOf(day: DayWork, plan: Plan, load: LoadTasks): readonly OvenSpan[] {
  const { tasks } = day.problem;
  const shift = (task: number) => (day.meanings[task]!.round === undefined ? 0 : load.after);
  const start = (task: number) => (plan.starts[task] ?? 0) + shift(task);
  const end = (task: number) =>
    start(task) + (day.meanings[task]!.round?.minutes ?? tasks[task]!.minutes);
  const isHot = load.work.coals.loadInMinute > 0;
  const span = (state: OvenSpan['state'], from: number, to: number): readonly OvenSpan[] =>
    from >= to
      ? []
      : [
          {
            oven: load.work.load.oven,
            dish: load.dish,
            load: load.work.load.id,
            state,
            from: clockMinutes(from),
            to: clockMinutes(to),
          },
        ];
  const cooksFrom = isHot ? start(load.load) : end(load.lay);
  return [
    ...(load.risesInside ? span('second-rise', end(load.load), end(load.lay)) : []),
    ...(isHot ? span('heating', end(load.lay), cooksFrom) : []),
    ...span('cooking', cooksFrom, start(load.takeOut)),
    ...(load.servedFromOven ? span('holding', start(load.takeOut), start(load.emptied)) : []),
  ];
}

function servingOf(day: DayWork, plan: Plan, dish: DishTasks): Serving {
  const { tasks } = day.problem;
  const wanted = dish.work.dish.serveAt;
  const served = plan.starts[dish.served] ?? wanted;
  const lengthOf = (task: number) => {
    const { round } = day.meanings[task]!;
    return round === undefined ? tasks[task]!.minutes : Math.round(roundMinutes(round));
  };
  const ends = dish.dones.map((task) => (plan.starts[task] ?? served) + lengthOf(task));
  const ready = ends.length > 0 ? Math.max(...ends) : served;
  const after = dish.lasts.filter((task) => (plan.starts[task] ?? 0) >= ready);
  const busy = after.reduce((sum, task) => sum + tasks[task]!.minutes, 0);
  return {
    dish: dish.work.dish.id,
    wanted,
    ready: clockMinutes(ready),
    served: clockMinutes(served),
    lateBy: minutes(Math.max(0, served - wanted)),
    waits: minutes(Math.max(0, served - ready - busy)),
  };
}

// Proofs by lags alone: steps or pins that contradict each other; a serving before its dish can be
// ready however many help, and what of it is too long: a rise, or the wait for the first coals.

import { type Refusal, refusal } from '../notice/notice.ts';
import type { Problem } from '../solver/problem.ts';
import { contradictionIn, ORIGIN } from '../solver/temporal.ts';
import type { TimetableRequest } from './day-sheet.ts';
import { soonestStarts } from './soonest.ts';
import { startWish, unique, wishOf } from './wishes.ts';
import type { DayWork } from './work.ts';

interface Asked {
  readonly request: TimetableRequest;
  readonly day: DayWork;
  /** Lags that add up to more than nothing, serving times aside. */
  readonly clash: readonly number[] | undefined;
  readonly soonest: Float64Array;
}

export function timeProofs(asked: Asked): readonly Refusal[] {
  const { request, day, clash } = asked;
  if (clash !== undefined) return [contradiction(request, day, clash)];
  const single = day.dishes.flatMap((_, at) => tooSoon(asked, at));
  if (single.length > 0) return single;
  const joint = contradictionIn(day.problem, { isDueFixed: true });
  return joint === undefined ? [] : [jointlyTooSoon(request, day, joint)];
}

function contradiction(request: TimetableRequest, day: DayWork, cycle: readonly number[]): Refusal {
  const pinned = pinIn(day, cycle);
  const about = pinned === undefined ? aboutOf(day, cycle) : { dish: pinned.id };
  return refusal('TIMETABLE_CONTRADICTION', wishesIn(request, day, cycle), about, {
    steps: stepsIn(day, cycle),
    ...(pinned === undefined ? {} : { pinnedClockMinutes: pinned.at }),
  });
}

/** The minute for coals that somebody pinned, where it is one of the times that clash. */
function pinIn(day: DayWork, cycle: readonly number[]) {
  const own = cycle.find((task) => task !== ORIGIN && day.problem.tasks[task]!.fixed !== undefined);
  const id = own === undefined ? undefined : day.meanings[own]!.dish;
  const at = day.dishes.find(({ work }) => work.dish.id === id)?.work.dish.pins.coalsOnAt;
  return id === undefined || at === undefined ? undefined : { id, at };
}

function jointlyTooSoon(
  request: TimetableRequest,
  day: DayWork,
  cycle: readonly number[],
): Refusal {
  const values = { steps: stepsIn(day, cycle) };
  const conflicts = wishesIn(request, day, cycle);
  return refusal('TIMETABLE_TOO_SOON', conflicts, aboutOf(day, cycle), values);
}

function aboutOf(day: DayWork, cycle: readonly number[]) {
  const dish = cycle.flatMap((task) =>
    task === ORIGIN ? [] : (day.meanings[task]!.dish ?? []),
  )[0];
  return dish === undefined ? {} : { dish };
}

const wishesIn = (request: TimetableRequest, day: DayWork, cycle: readonly number[]) =>
  unique(cycle.map((task) => (task === ORIGIN ? startWish(request) : wishOf(day, task))));

/** Kinds of work in the order of the cycle, each once. */
const stepsIn = (day: DayWork, cycle: readonly number[]) =>
  unique(
    cycle.map((task) => {
      const kind = task === ORIGIN ? undefined : day.meanings[task]!.kind;
      return kind === 'served' ? 'serving' : kind;
    }),
  ).join(' ');

function tooSoon({ request, day, soonest }: Asked, at: number): readonly Refusal[] {
  const { work, served } = day.dishes[at]!;
  const soonestMinutes = soonest[served]!;
  const { serveAt, id } = work.dish;
  if (soonestMinutes <= serveAt) return [];
  const values = { servingClockMinutes: serveAt, soonestClockMinutes: soonestMinutes };
  const about = { dish: id };
  const serving = `menu.${id}.serveAt`;
  const begin = startWish(request);
  const begins = beginsAt(request);
  if (serveAt < begins) {
    const conflicts = [serving, begin];
    const told = { ...values, firstClockMinutes: begins };
    return [refusal('TIMETABLE_BEFORE_FIRST_TASK', conflicts, about, told)];
  }
  const rise = tooLongRise(day, at, serveAt - begins);
  if (rise !== undefined) {
    const conflicts = unique([wishOf(day, rise), serving, begin]);
    const riseMinutes = day.problem.tasks[rise]!.minutes;
    const told = { ...values, riseMinutes, thereMinutes: serveAt - begins };
    return [refusal('TIMETABLE_RISE_TOO_LONG', conflicts, about, told)];
  }
  const readyClockMinutes = coalsTooLate(day, served, serveAt);
  if (readyClockMinutes !== undefined) {
    const conflicts = [serving, begin, 'gear.chimneys'];
    return [
      refusal('TIMETABLE_COALS_TOO_LATE', conflicts, about, { ...values, readyClockMinutes }),
    ];
  }
  return [
    refusal(
      'TIMETABLE_TOO_SOON',
      [serving, begin, `recipes.${work.recipe.id}.steps`],
      about,
      values,
    ),
  ];
}

/** Now, or when the first of the hands comes. */
const beginsAt = ({ camp, notBefore }: TimetableRequest) =>
  Math.max(notBefore ?? Number.NEGATIVE_INFINITY, Math.min(...camp.hands.map((hand) => hand.from)));

function tooLongRise(day: DayWork, at: number, there: number): number | undefined {
  const { work } = day.dishes[at]!;
  const found = day.meanings.findIndex(({ kind, dish }, task) => {
    const isRise = kind === 'rise' || kind === 'second-rise';
    return isRise && dish === work.dish.id && day.problem.tasks[task]!.minutes > there;
  });
  return found < 0 ? undefined : found;
}

/** When the first coals are ready, if the dish would be in time had they been lit already. */
function coalsTooLate(day: DayWork, served: number, serveAt: number): number | undefined {
  const { problem } = day;
  const uses = new Set(problem.stores.flatMap((store) => store.uses.map(({ task }) => task)));
  const releases = [...uses].map((task) => problem.tasks[task]!.release ?? problem.from);
  if (releases.length === 0) return undefined;
  const tasks = problem.tasks.map((task, index) =>
    uses.has(index) ? { ...task, release: problem.from } : task,
  );
  const lit: Problem = { ...problem, tasks };
  return soonestStarts(lit, { isDueFixed: false })[served]! <= serveAt
    ? Math.min(...releases)
    : undefined;
}

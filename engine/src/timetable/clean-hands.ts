// Who needs to wash before what? Read off the finished jobs, hand by hand: what sticks to hands (what
// a free-from dish is kept free of, raw meat, charcoal) until they are washed, and what may not be
// touched with it. Common practice, no source; the wash itself is one minute with soap.

import type { Skill } from '../camp/camp.ts';
import { openHours } from '../camp/index.ts';
import { clockMinutes } from '../quantity/unit.ts';
import type { DishWork, Job, TimetableRequest } from './day-sheet.ts';
import { holdsOf, keptFrom } from './free-from.ts';
import * as habits from './habits.ts';

export interface Unwashed {
  readonly job: Job;
  readonly hand: string;
  /** When this hand's work before it ends. */
  readonly freeFrom: number;
}

interface Washed {
  readonly jobs: readonly Job[];
  readonly left: readonly Unwashed[];
}

/** The jobs with every washing that finds a minute, and what finds none; cleaner hands help out. */
export function withWashes(request: TimetableRequest, jobs: readonly Job[]): Washed {
  let [shared, best] = [jobs, washedWherePossible(request, jobs)];
  for (let swaps = 0; swaps < MOST_SWAPS && best.left.length > 0; swaps += 1) {
    const before = best.left.length;
    const better = best.left
      .flatMap((need) => handedOver(request, shared, need))
      .map((each) => ({ shared: each, washed: washedWherePossible(request, each) }))
      .find(({ washed }) => washed.left.length < before);
    if (better === undefined) break;
    [shared, best] = [better.shared, better.washed];
  }
  return best;
}

const MOST_SWAPS = 8;

/** The job in the hands of each other who is free, there and as skilled; washed-for jobs stay. */
function handedOver(
  { camp, dishes }: TimetableRequest,
  jobs: readonly Job[],
  { job, hand }: Unwashed,
): readonly (readonly Job[])[] {
  const pins = dishes.find((work) => work.dish.id === job.dish)?.dish.pins;
  if (pins?.hand !== undefined || HAND_BOUND.has(job.kind)) return [];
  const rank = (id: string) => RANKS.indexOf(camp.hands.find((each) => each.id === id)!.skill);
  const isFree = (id: string) =>
    !jobs.some((each) => each.hands.includes(id) && each.start < job.end && job.start < each.end);
  const able = camp.hands.filter(
    (each) =>
      openHours(each).some(({ from, to }) => from <= job.start && job.end <= to) &&
      rank(each.id) >= rank(hand) &&
      isFree(each.id),
  );
  return able.map((each) => {
    const hands = job.hands.map((id) => (id === hand ? each.id : id));
    const given = { ...job, hands, latestStart: job.start };
    return jobs.map((other) => (other === job ? given : other));
  });
}

const RANKS: readonly Skill[] = ['new', 'steady', 'camp-cook'];
/** Begun by washing of the same hands. */
const HAND_BOUND: ReadonlySet<Job['kind']> = new Set([
  'prepare',
  'mix',
  'fold',
  'shape',
  'wash-hands',
]);

function washedWherePossible(request: TimetableRequest, jobs: readonly Job[]): Washed {
  const needs = request.camp.hands.flatMap((hand) => unwashed(request, jobs, hand.id));
  const hasRoom = ({ job, freeFrom }: Unwashed) => job.start - freeFrom >= habits.WASH_HANDS;
  const washes = needs.filter(hasRoom).map(washJob);
  if (washes.length === 0) return { jobs, left: needs };
  const all = [...jobs, ...washes].sort((a, b) => a.start - b.start || (a.id < b.id ? -1 : 1));
  return { jobs: all, left: needs.filter((need) => !hasRoom(need)) };
}

function washJob({ job, hand }: Unwashed): Job {
  return {
    id: `${job.id}-wash-${hand}`,
    kind: 'wash-hands',
    ...(job.dish === undefined ? {} : { dish: job.dish }),
    start: clockMinutes(job.start - habits.WASH_HANDS),
    end: job.start,
    hands: [hand],
    needsTable: false,
    values: {},
    latestStart: clockMinutes(job.start - habits.WASH_HANDS),
    because: { kind: 'before', by: job.id },
    needsCare: true,
  };
}

interface OnHands {
  readonly kinds: Set<string>;
  /** Dish whose raw meat it is. */
  raw: string | undefined;
  hasCoal: boolean;
}

function unwashed(
  request: TimetableRequest,
  jobs: readonly Job[],
  hand: string,
): readonly Unwashed[] {
  const own = jobs
    .filter((job) => job.hands.includes(hand) && job.kind !== 'call')
    .sort((a, b) => a.start - b.start);
  const needs: Unwashed[] = [];
  let on: OnHands = clean();
  let freeFrom = Number.NEGATIVE_INFINITY;
  for (const job of own) {
    const work = request.dishes.find((each) => each.dish.id === job.dish);
    if (isDirtyFor(request, on, job, work)) {
      needs.push({ job, hand, freeFrom });
      on = clean();
    }
    if (job.kind === 'wash-hands') on = clean();
    else touch(on, job, work);
    freeFrom = job.end;
  }
  return needs;
}

const clean = (): OnHands => ({ kinds: new Set(), raw: undefined, hasCoal: false });

const DOUGH: ReadonlySet<Job['kind']> = new Set(['prepare', 'mix', 'fold', 'shape']);
const COAL: ReadonlySet<Job['kind']> = new Set([
  'lay-coals',
  'add-coals',
  'light-chimney',
  'light-feeder',
  'tend-fire',
  'ash-out',
]);
const RAW: ReadonlySet<Job['kind']> = new Set(['prepare', 'mix', 'shape', 'load', 'brown']);
const READY: ReadonlySet<Job['kind']> = new Set(['cut', 'dress']);
/** With tongs, lifter, spoon or probe: nothing of the food comes to the hands. */
const OUTSIDE: ReadonlySet<Job['kind']> = new Set([
  'grease',
  'lay-coals',
  'add-coals',
  'turn',
  'check',
  'stir',
  'probe',
]);

function isDirtyFor(
  request: TimetableRequest,
  on: OnHands,
  job: Job,
  work: DishWork | undefined,
): boolean {
  if (job.kind === 'wash-hands' || work === undefined) return false;
  const isRaw = on.raw !== undefined && (on.raw !== job.dish || READY.has(job.kind));
  if (isRaw || (on.hasCoal && DOUGH.has(job.kind))) return true;
  return keptFrom(request.camp, work).some((kind) => on.kinds.has(kind));
}

function touch(on: OnHands, job: Job, work: DishWork | undefined): void {
  if (COAL.has(job.kind)) on.hasCoal = true;
  if (work === undefined || OUTSIDE.has(job.kind)) return;
  for (const kind of holdsOf(work)) on.kinds.add(kind);
  if (RAW.has(job.kind) && bringsRawMeat(work)) on.raw = work.dish.id;
}

export const bringsRawMeat = ({ recipe }: DishWork): boolean =>
  !recipe.target.isCold &&
  recipe.ingredients.some(({ part }) => part === 'meat' || part === 'poultry');

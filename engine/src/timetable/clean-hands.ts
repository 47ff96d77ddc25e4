// Who needs to wash before what? Read off the finished jobs, hand by hand: what sticks to hands (what
// a free-from dish is kept free of, raw meat, raw flour and egg, charcoal, the dirt of wiping and washing up)
// until they are washed, and what may not be touched with it. Source: food-code-2-301 (hands are washed
// after whatever soils them and before food); the wash itself is one minute with soap.

import type { Skill } from '../camp/camp.ts';
import { openHours } from '../camp/index.ts';
import { clockMinutes } from '../quantity/unit.ts';
import type { DishWork, Job, TimetableRequest } from './day-sheet.ts';
import { holdsOf, keptFrom } from './free-from.ts';
import * as habits from './habits.ts';
import { isPot } from './recipe-shape.ts';

export interface Unwashed {
  readonly job: Job;
  readonly hand: string;
  /** The last minute at which this hand can have washed by; undefined where its work leaves none. */
  readonly washBy: number | undefined;
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
  const washes = needs.flatMap(washJob);
  if (washes.length === 0) return { jobs, left: needs };
  const all = [...jobs, ...washes].sort((a, b) => a.start - b.start || (a.id < b.id ? -1 : 1));
  return { jobs: all, left: needs.filter(({ washBy }) => washBy === undefined) };
}

function washJob({ job, hand, washBy }: Unwashed): readonly Job[] {
  if (washBy === undefined) return [];
  const start = clockMinutes(washBy - habits.WASH_HANDS);
  return [
    {
      id: `${job.id}-wash-${hand}`,
      kind: 'wash-hands',
      ...(job.dish === undefined ? {} : { dish: job.dish }),
      start,
      end: clockMinutes(washBy),
      hands: [hand],
      needsTable: false,
      values: {},
      latestStart: start,
      because: { kind: 'before', by: job.id },
      needsCare: true,
    },
  ];
}

interface OnHands {
  readonly kinds: Set<string>;
  /** Dish whose raw meat it is. */
  raw: string | undefined;
  /** Flour and egg that have not been through the fire. */
  hasDough: boolean;
  /** Charcoal and ash. */
  hasCoal: boolean;
  /** The dirt of a used oven or of the wash-up. */
  hasDirt: boolean;
  hasGrease: boolean;
  /** Where among the hand's jobs something last stuck to it. */
  since: number;
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
  own.forEach((job, at) => {
    const work = request.dishes.find((each) => each.dish.id === job.dish);
    if (isDirtyFor(request, on, job, work)) {
      needs.push({ job, hand, washBy: lastGap(own.slice(on.since, at + 1)) });
      on = clean();
    }
    if (job.kind === 'wash-hands') on = clean();
    else if (touch(on, job, work)) on.since = at;
  });
  return needs;
}

/** The end of the last idle minute between these jobs of one hand, not long before the last of them. */
function lastGap(own: readonly Job[]): number | undefined {
  const soonest = own.at(-1)!.start - habits.WASH_TO_WORK;
  for (let at = own.length - 1; at > 0 && own[at]!.start >= soonest; at -= 1) {
    if (own[at]!.start - own[at - 1]!.end >= habits.WASH_HANDS) return own[at]!.start;
  }
  return undefined;
}

const clean = (): OnHands => ({
  kinds: new Set(),
  raw: undefined,
  hasDough: false,
  hasCoal: false,
  hasDirt: false,
  hasGrease: false,
  since: 0,
});

const COAL: ReadonlySet<Job['kind']> = new Set([
  'lay-coals',
  'add-coals',
  'light-chimney',
  'light-feeder',
  'tend-fire',
  'ash-out',
]);
const DIRTY: ReadonlySet<Job['kind']> = new Set(['wipe-oven', 'wash-up']);
const RAW: ReadonlySet<Job['kind']> = new Set(['prepare', 'mix', 'shape', 'load', 'brown']);
const DOUGH: ReadonlySet<Job['kind']> = new Set(['mix', 'fold', 'shape', 'load']);
/** Eaten as it is: nothing that sticks to hands is killed any more. */
const READY: ReadonlySet<Job['kind']> = new Set(['cut', 'dress']);
/** Food in the hands; what goes into a pot is poured or tipped. */
const FOOD: ReadonlySet<Job['kind']> = new Set(['prepare', 'mix', 'fold', 'shape']);
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
  const isReady = READY.has(job.kind);
  if (isReady && (on.hasDough || on.hasGrease || on.raw !== undefined)) return true;
  if (on.raw !== undefined && on.raw !== job.dish) return true;
  const isHandled = isReady || FOOD.has(job.kind);
  if (on.hasDirt && isHandled) return true;
  // An oven may be wiped, greased and filled in one go; not with charcoal on the hands.
  if (on.hasCoal && (isHandled || (job.kind === 'load' && !isPot(work)))) return true;
  return keptFrom(request.camp, work).some((kind) => on.kinds.has(kind));
}

/** What sticks after this job; true where anything does. */
function touch(on: OnHands, job: Job, work: DishWork | undefined): boolean {
  const [isCoal, isDirt, isGrease] = [
    COAL.has(job.kind),
    DIRTY.has(job.kind),
    job.kind === 'grease',
  ];
  on.hasCoal ||= isCoal;
  on.hasDirt ||= isDirt;
  on.hasGrease ||= isGrease;
  if (work === undefined || OUTSIDE.has(job.kind)) return isCoal || isDirt || isGrease;
  for (const kind of holdsOf(work)) on.kinds.add(kind);
  if (RAW.has(job.kind) && bringsRawMeat(work)) on.raw = work.dish.id;
  on.hasDough ||= DOUGH.has(job.kind) && !work.recipe.target.isCold;
  return true;
}

export const bringsRawMeat = ({ recipe }: DishWork): boolean =>
  !recipe.target.isCold &&
  recipe.ingredients.some(({ part }) => part === 'meat' || part === 'poultry');

// What would help? One thing at a time is relaxed and the meal really planned again; only what makes
// all of it sound and on time is told. These are not the only things that help.

import type { CampOven } from '../camp/camp.ts';
import { clockMinutes, minutes } from '../quantity/unit.ts';
import type {
  Advice,
  DaySheet,
  DishWork,
  LoadWork,
  SurerDay,
  TimetableRequest,
} from './day-sheet.ts';

/** What came of a day that was planned and passed the checker. */
export interface Outcome {
  /** Worst minutes late of what is served. */
  readonly lateBy: number;
  /** Dishes that were set aside. */
  readonly aside: readonly string[];
}

/**
 * Advice for a sheet that is late or has a dish set aside, in the order in which a cook would rather
 * hear it: what makes all of it in time first, then what helps.
 *
 * @param outcomeOf  really plans a request and has it checked; undefined where no sound plan was found
 */
export function adviceFor(
  request: TimetableRequest,
  sheet: DaySheet,
  outcomeOf: (eased: TimetableRequest) => Outcome | undefined,
): readonly Advice[] {
  const now = outcomeIn(sheet);
  let left = Math.max(LEAST_TRIED, Math.floor(MOST_JOBS / Math.max(1, sheet.jobs.length)));
  const found: Advice[] = [];
  for (const { steps, ...change } of relaxations(request, needed(sheet), now.aside)) {
    let best: Advice | undefined;
    for (const { amount, request: eased } of steps) {
      if (left <= 0 || (best !== undefined && isWhole(best))) break;
      left -= 1;
      const outcome = outcomeOf(eased);
      if (outcome === undefined || !isBetter(outcome, now) || isNoHelp(outcome)) continue;
      const made = adviceOf({ ...change, amount }, outcome);
      if (best === undefined || isWhole(made)) best = made;
    }
    if (best !== undefined) found.push(best);
  }
  return [...found.filter(isWhole), ...found.filter((each) => !isWhole(each))];
}

/**
 * Days that are surer than this one: with time in hand as things are, else with everybody there so
 * much sooner.
 *
 * @param chanceOf  the share in time of a plan with so many minutes in hand that was made and checked
 */
export function surerDays(
  request: TimetableRequest,
  { doubt }: DaySheet,
  chanceOf: (request: TimetableRequest, inHand: number) => number | undefined,
): readonly SurerDay[] {
  const now = doubt?.inTime ?? 1;
  const sooner = [QUARTER, 2 * QUARTER].filter((by) => canBeginEarlier(request, by));
  const asked = [0, ...sooner].map((startEarlier) => {
    const eased = startEarlier === 0 ? request : begunEarlier(request, startEarlier);
    const inTime = chanceOf(eased, QUARTER) ?? 0;
    return { inHand: minutes(QUARTER), startEarlier: minutes(startEarlier), inTime };
  });
  let best = now;
  return asked.filter(({ inTime }) => {
    const isSurer = inTime >= best + SURER_BY;
    if (isSurer) best = inTime;
    return isSurer;
  });
}

/** Less is within what the runs themselves are unsure of (120 of them). */
const SURER_BY = 0.05;

const isWhole = ({ lateBy, aside }: Advice) => lateBy === 0 && aside === undefined;

function adviceOf(
  change: Pick<Advice, 'change' | 'amount' | 'oven' | 'dish'>,
  { lateBy, aside }: Outcome,
): Advice {
  const late = { ...change, lateBy: minutes(lateBy) };
  return aside.length === 0 ? late : { ...late, aside };
}

function outcomeIn({ servings, notices }: DaySheet): Outcome {
  const aside = notices.flatMap(({ code, about }) =>
    code === 'TIMETABLE_DISH_UNPLANNED' ? [about.dish ?? ''] : [],
  );
  return { lateBy: Math.max(0, ...servings.map(({ lateBy }) => lateBy)), aside };
}

/** Fewer dishes without a supper, or as few and clearly less late. */
function isBetter(outcome: Outcome, now: Outcome): boolean {
  const dishes = now.aside.length - outcome.aside.length;
  if (dishes !== 0) return dishes > 0;
  // All on time and nothing aside, and still not planned: a rule is broken that now is kept.
  const isMended = now.lateBy > 0 || now.aside.length === 0;
  return outcome.lateBy === 0 ? isMended : outcome.lateBy <= now.lateBy - WORTH_SAYING;
}

/** Who is told to change something does not want to wait for hours even so. */
const isNoHelp = ({ lateBy }: Outcome) => lateBy > MOST_LEFT;

/** Longer nobody waits for what comes late after all [min]; a judgement. */
const MOST_LEFT = 60;

/** Less than this is no help to anybody [min]. */
const WORTH_SAYING = 15;

/** So many minutes are missing: the worst lateness, also of a dish that was set aside for it. */
function needed({ servings, notices }: DaySheet): number {
  const aside = notices.flatMap(({ code, values }) =>
    code === 'TIMETABLE_DISH_UNPLANNED' ? [Number(values.lateMinutes ?? 0)] : [],
  );
  const all = [...servings.map(({ lateBy }) => Number(lateBy)), ...aside];
  return Math.max(0, ...all.filter((each) => each <= MOST_MOVED));
}

/** Nobody comes or eats more than this sooner or later than wished [min]. */
const MOST_MOVED = 300;

/** In quarters of an hour: as much as is missing, and up to two more where that is not enough. */
function quarters(missing: number): readonly number[] {
  const least = Math.max(1, Math.ceil(missing / QUARTER));
  return [least, least + 1, least + 2]
    .map((each) => each * QUARTER)
    .filter((each) => each <= MOST_MOVED);
}

const QUARTER = 15;

/** Jobs that may be planned anew for advice, all relaxations together; so many are always tried. */
const MOST_JOBS = 3000;
const LEAST_TRIED = 4;

/** One kind of relaxation, with what of it is tried until all is in time. */
interface Relaxation extends Pick<Advice, 'change' | 'oven' | 'dish'> {
  readonly steps: readonly { readonly amount: number; readonly request: TimetableRequest }[];
}

/** The likeliest help first: the last ones are not tried on a very long day. */
function relaxations(
  request: TimetableRequest,
  missing: number,
  aside: readonly string[],
): readonly Relaxation[] {
  const isOnFire = request.dishes.some((work) => work.loads.length > 0);
  const one = (eased: TimetableRequest) => [{ amount: 1, request: eased }];
  const moved = (move: (request: TimetableRequest, by: number) => TimetableRequest) =>
    quarters(missing).map((amount) => ({ amount, request: move(request, amount) }));
  const sooner = moved(begunEarlier).filter(({ amount }) => canBeginEarlier(request, amount));
  return [
    ...request.dishes.flatMap(({ dish }) => withoutPin(request, dish.id)),
    { change: 'one-more-hand', steps: one(withHand(request)) },
    { change: 'start-earlier', steps: sooner },
    { change: 'serve-later', steps: moved(servedLater) },
    ...oneMoreOven(request, aside),
    { change: 'longer-hold', steps: [{ amount: 10, request: heldLonger(request, 10) }] },
    ...(isOnFire ? [oneMoreChimney(request)] : []),
  ];
}

function withHand(request: TimetableRequest): TimetableRequest {
  const { camp } = request;
  const extra = {
    id: 'one-more-hand',
    name: 'one more',
    skill: 'steady' as const,
    from: clockMinutes(Math.min(...camp.hands.map((hand) => hand.from))),
    to: clockMinutes(Math.max(...camp.hands.map((hand) => hand.to))),
  };
  return { ...request, camp: { ...camp, hands: [...camp.hands, extra] } };
}

function oneMoreChimney(request: TimetableRequest): Relaxation {
  const { camp } = request;
  const gear = { ...camp.gear, chimneys: camp.gear.chimneys + 1 };
  const eased = { ...request, camp: { ...camp, gear } };
  return { change: 'one-more-chimney', steps: [{ amount: 1, request: eased }] };
}

/** For each oven that holds several loads, another like it: for a dish set aside, else for the last. */
function oneMoreOven(request: TimetableRequest, aside: readonly string[]): readonly Relaxation[] {
  return request.camp.ovens.flatMap((oven): readonly Relaxation[] => {
    const inIt = request.dishes.flatMap(({ dish, loads }) =>
      loads.flatMap((work) => (work.load.oven === oven.id ? [{ dish: dish.id, work }] : [])),
    );
    if (inIt.length < 2) return [];
    const wanted = inIt.filter(({ dish }) => aside.includes(dish));
    const moves = [...new Set([...wanted.slice(0, 1), inIt.at(-1)!, inIt[0]!])];
    const steps = moves.map(({ work }) => ({ amount: 1, request: withTwin(request, oven, work) }));
    return [{ change: 'one-more-oven', oven: oven.id, steps }];
  });
}

/** Another oven like this one, with this load in it. */
function withTwin(request: TimetableRequest, oven: CampOven, moved: LoadWork): TimetableRequest {
  const { camp, dishes } = request;
  const twin = { ...oven, id: `${oven.id}-one-more`, name: `another ${oven.name}` };
  const inTwin = { ...moved, load: { ...moved.load, oven: twin.id } };
  return {
    ...request,
    camp: { ...camp, ovens: [...camp.ovens, twin] },
    dishes: dishes.map((work) => ({
      ...work,
      loads: work.loads.map((each) => (each === moved ? inTwin : each)),
    })),
  };
}

function withoutPin(request: TimetableRequest, dish: string): readonly Relaxation[] {
  if (request.dishes.every((work) => work.dish.id !== dish || isFree(work))) return [];
  const dishes = request.dishes.map((work) => {
    if (work.dish.id !== dish) return work;
    const { coalsOnAt: _, ...pins } = work.dish.pins;
    return { ...work, dish: { ...work.dish, pins } };
  });
  return [{ change: 'without-pin', dish, steps: [{ amount: 1, request: { ...request, dishes } }] }];
}

const isFree = ({ dish }: DishWork) => dish.pins.coalsOnAt === undefined;

/** Everybody comes sooner. */
function begunEarlier(request: TimetableRequest, by: number): TimetableRequest {
  const { camp } = request;
  const hands = camp.hands.map((hand) => ({ ...hand, from: clockMinutes(hand.from - by) }));
  return { ...request, camp: { ...camp, hands } };
}

/** An hour that has passed is none at which anybody can begin. */
const canBeginEarlier = ({ camp, notBefore }: TimetableRequest, by: number): boolean =>
  notBefore === undefined || Math.min(...camp.hands.map(({ from }) => from)) - by >= notBefore;

function servedLater(request: TimetableRequest, by: number): TimetableRequest {
  const dishes = request.dishes.map((work) => {
    const serveAt = clockMinutes(work.dish.serveAt + by);
    return { ...work, dish: { ...work.dish, serveAt } };
  });
  return { ...request, dishes };
}

/** Never past what food safety allows on a hot day. */
function heldLonger(request: TimetableRequest, by: number): TimetableRequest {
  const dishes = request.dishes.map((work) =>
    work.canWait + by <= SAFE_WAIT ? { ...work, canWait: minutes(work.canWait + by) } : work,
  );
  return { ...request, dishes };
}

/** Out in air above 90 °F food may stand for one hour (fsis-two-hours). */
const SAFE_WAIT = 60;

// Something slipped: what now? The past and every pin stand; the same order later is tried first, then
// only the dishes that are hit are planned anew, then all that is left. At most two offers, each of
// them checked.
// Weakness: lit coals keep the oven they were lit for, unless they would be too old for it.

import { type Notice, notice } from '../../notice/notice.ts';
import { minutes } from '../../quantity/unit.ts';
import type { Plan } from '../../solver/problem.ts';
import { searchPlan } from '../../solver/search.ts';
import type { DaySheet, TimetableRequest } from '../day-sheet.ts';
import { RUNS } from '../doubt/runs.ts';
import { servedWhenDone } from '../served-when-done.ts';
import { type DayWish, type DayWork, dayWork } from '../work.ts';
import { type Changed, changedRequest, unpinned, withoutLost } from './changed-request.ts';
import { cutsIn, type Walking, walkingIn } from './half-walked.ts';
import { changeCost, movesBetween } from './moves.ts';
import { type Names, namedAs, namedBack, namesFor, oldIds, washedBefore } from './named-as.ts';
import { type RestOfDay, restOfDay } from './rest-of-day.ts';
import { shiftedPlan } from './shift.ts';
import type { Offer, ReplanAsked, Replanned } from './slip.ts';
import { type DayState, dayState } from './state.ts';
import { violationsAhead } from './violations-ahead.ts';
import { wholeDay } from './whole-day.ts';

/**
 * What can be done from now on, as at most two whole days.
 *
 * @returns  least change first, then least late where that is sooner; none is sound where the
 *           `violations` of the only offer say so. `asks` are for the cook to decide.
 * @notice   TIMETABLE_REPLAN_PIN and its like, in `asks`
 */
export function replan(asked: ReplanAsked): Replanned {
  const changed = changedRequest(asked, asked.slips);
  const offers = offersFor(asked, changed);
  const pins = pinnedAhead(asked, changed.request);
  if (offers.some(isSound) || pins.length === 0) return { offers, asks: changed.asks };
  const freed = { ...changed, request: unpinned(changed.request, new Set(pins)) };
  const better = offersFor(asked, freed);
  if (!better.some(isSound)) return { offers, asks: changed.asks };
  return {
    offers: better,
    asks: [...changed.asks, ...pins.map((dish) => pinAsk(changed, dish, better))],
  };
}

/** Dishes with a pinned minute that has not come, or came and went with nothing laid. */
function pinnedAhead(
  { sheet, now, slips }: ReplanAsked,
  { dishes }: TimetableRequest,
): readonly string[] {
  return dishes.flatMap(({ dish }) => {
    const lay = sheet.jobs.find((job) => job.kind === 'lay-coals' && job.dish === dish.id);
    const behind = Math.max(0, ...slips.map((slip) => (slip.kind === 'behind' ? slip.minutes : 0)));
    const isAhead = lay === undefined || lay.end > now - behind;
    return dish.pins.coalsOnAt !== undefined && isAhead ? [dish.id] : [];
  });
}

function pinAsk({ request }: Changed, dish: string, offers: readonly Offer[]): Notice {
  const pinned = request.dishes.find((work) => work.dish.id === dish)?.dish.pins.coalsOnAt ?? 0;
  const lay = offers[0]?.sheet.jobs.find((job) => job.kind === 'lay-coals' && job.dish === dish);
  const values = { pinnedClockMinutes: pinned, foundClockMinutes: lay?.end ?? pinned };
  return notice('TIMETABLE_REPLAN_PIN', 'stop', { dish }, values);
}

/** A day that could be offered. */
interface Candidate extends Omit<Offer, 'kind'> {
  readonly cost: number;
}

interface Ground {
  readonly asked: ReplanAsked;
  readonly request: TimetableRequest;
  readonly day: DayWork;
  readonly sheet: DaySheet;
  readonly state: DayState;
  readonly later: Changed['later'];
  readonly isEased: boolean;
  readonly lost: Changed['lost'];
  readonly walking: Walking;
}

function offersFor(asked: ReplanAsked, { request, later, lost }: Changed): readonly Offer[] {
  const wish = { isFreeFromFirst: isFreeFromFirst(asked.sheet), isLoose: true };
  const stateWith = stateIn(asked, { request, lost }, wish);
  const cutBefore = cutsIn(request, asked.sheet, stateWith({ isEased: false }));
  const { day, names } = namedDay(asked, request, { ...wish, cutBefore });
  const known = namedAs(asked, names);
  const groundWith = (isEased: boolean): Ground => {
    const was = stateWith({ isEased });
    const state = stateAs(was, known.sheet, names);
    const walking = walkingIn(day, asked, { state: was, names });
    return { asked: known, request, day, sheet: known.sheet, state, later, lost, isEased, walking };
  };
  const strict = groundWith(false);
  const lit = litNow(strict);
  const candidates = [...candidatesWith(strict, lit)];
  if (!candidates.some(isSound)) candidates.push(...candidatesWith(groundWith(true), lit));
  // Where coals that burn already would be too old by then, the day is tried with new ones.
  if (!candidates.some(isSound) && lit.size > 0) {
    candidates.push(...candidatesWith(groundWith(true), new Set()));
  }
  return chosen(candidates).map((each) => namedBack(each, names, asked.sheet));
}

interface NamedDay {
  readonly day: DayWork;
  readonly names: Names;
}

/** The day's problem with every washing of the sheet in it, and what it calls the jobs. */
function namedDay({ sheet }: ReplanAsked, request: TimetableRequest, wish: DayWish): NamedDay {
  const bare = dayWork(request, wish);
  const names = namesFor(bare, sheet);
  const washFirst = washedBefore(sheet, names);
  if (washFirst.size === 0) return { day: bare, names };
  const day = dayWork(request, { ...wish, washFirst });
  return { day, names: namesFor(day, sheet) };
}

/** How the day stands, oven by oven, under the names of the sheet. */
function stateIn(
  asked: ReplanAsked,
  { request, lost }: Pick<Changed, 'request' | 'lost'>,
  wish: DayWish,
) {
  const { day, names } = namedDay(asked, request, { ...wish, isByOven: true });
  const known = namedAs(asked, names);
  const jobs = new Map(asked.sheet.jobs.map((job) => [job.id, job]));
  const idOf = oldIds(names);
  return ({ isEased }: { readonly isEased: boolean }): DayState =>
    new Map(
      [...dayState(known, day, { isEased, lost })].flatMap(([id, each]) => {
        const was = idOf(id);
        const job = jobs.get(was);
        return job === undefined ? [] : [[was, { ...each, job }] as const];
      }),
    );
}

/** The same under the names of the problem. */
function stateAs(state: DayState, sheet: DaySheet, names: Names): DayState {
  const idOf = oldIds(names);
  return new Map(
    sheet.jobs.flatMap((job) => {
      const is = state.get(idOf(job.id));
      return is === undefined ? [] : [[job.id, { ...is, job }] as const];
    }),
  );
}

const isSound = ({ violations }: Pick<Offer, 'violations'>) => violations.length === 0;

const isFreeFromFirst = (sheet: DaySheet) =>
  !sheet.notices.some(({ code }) => code === 'TIMETABLE_FREE_FROM_NOT_FIRST');

/** Lightings that were lit and caught: what is laid already has caught, whatever is said. */
function litNow({ sheet, state, asked }: Ground): ReadonlySet<string> {
  const isOpen = (id: string) => (state.get(id)?.state ?? 'open') === 'open';
  const failed = asked.slips.flatMap((slip) =>
    slip.kind === 'chimney-failed' ? [slip.lighting] : [],
  );
  return new Set(
    sheet.lightings.flatMap(({ id, uses }) => {
      const isFailed = failed.includes(id) && uses.every(({ job }) => isOpen(job));
      return isFailed || isOpen(id) ? [] : [id];
    }),
  );
}

function candidatesWith(ground: Ground, lit: ReadonlySet<string>): readonly Candidate[] {
  const all = restWith(ground, lit, new Set());
  const shifts = [ground.later, new Map<string, number>()].slice(0, ground.later.size > 0 ? 2 : 1);
  const shifted = shifts
    .map((later) => shiftWith(ground, all, { lit, later }))
    .find((plan) => plan !== undefined);
  const found: Candidate[] = [];
  if (shifted !== undefined)
    found.push(candidate(ground, { how: 'shift', rest: all, lit }, shifted));
  const kept = untouched(ground, shifted);
  if (kept.size > 0) {
    const part = restWith(ground, lit, kept);
    const plan = searched(ground, part);
    found.push(candidate(ground, { how: 'affected', rest: part, lit }, plan));
  }
  const isQuiet = found.some((each) => isSound(each) && each.lateBy === 0);
  if (isQuiet) return found;
  found.push(candidate(ground, { how: 'all', rest: all, lit }, searched(ground, all)));
  return found;
}

const restWith = (
  { day, state, sheet, request, asked, isEased, lost, walking }: Ground,
  lit: ReadonlySet<string>,
  kept: ReadonlySet<number>,
): RestOfDay =>
  restOfDay({
    day,
    state,
    lightings: sheet.lightings,
    jobs: sheet.jobs,
    hands: request.camp.hands,
    now: asked.now,
    kept,
    lit,
    isEased,
    lost,
    walking,
    servedAt: new Map(sheet.servings.map(({ dish, served }) => [dish, served])),
  });

function shiftWith(
  { sheet, state, asked }: Ground,
  rest: RestOfDay,
  wish: { readonly lit: ReadonlySet<string>; readonly later: ReadonlyMap<string, number> },
): Plan | undefined {
  const unlit = sheet.lightings.filter(({ id }) => !wish.lit.has(id));
  const shift = { rest, state, sheet, now: asked.now, unlit, later: wish.later };
  return shiftedPlan(shift) ?? shiftedPlan({ ...shift, rest: offItsMinute(rest) });
}

/** A look or a turn at an oven that is behind comes a little after its minute: the checker has the
 * last word on how little. */
function offItsMinute({ day, held }: RestOfDay): RestOfDay {
  const lags = day.problem.lags.map((lag) => {
    const { most: _, ...least } = lag;
    return held.get(lag.from)?.isPast ? least : lag;
  });
  return { day: { ...day, problem: { ...day.problem, lags } }, held };
}

function searched({ asked }: Ground, { day }: RestOfDay): Plan {
  const effort = { seed: asked.seed ?? 1, decodes: asked.decodes ?? DECODES };
  return servedWhenDone(day, searchPlan(day.problem, effort).plan);
}

/** As many as for a first plan. */
const DECODES = 16;

/** Groups of dishes in which nothing has to move; without a shift to tell by, none. */
function untouched({ day, state }: Ground, shifted: Plan | undefined): ReadonlySet<number> {
  if (shifted === undefined) return new Set();
  const moved = new Set<number>();
  day.problem.tasks.forEach((task, index) => {
    const known = state.get(task.id);
    if (known?.state !== 'open') return;
    if (shifted.starts[index] !== known.start) moved.add(task.group);
  });
  const dishes = day.dishes.map(({ group }) => group).filter((group) => !moved.has(group));
  return moved.size === 0 ? new Set() : new Set(dishes);
}

function candidate(
  ground: Ground,
  made: { readonly how: Offer['how']; readonly rest: RestOfDay; readonly lit: ReadonlySet<string> },
  plan: Plan,
): Candidate {
  const { asked, sheet: old, state, lost } = ground;
  const request = withoutLost(ground.request, lost);
  const sheet = wholeDay(
    {
      ...made,
      request: ground.request,
      lost,
      sheet: old,
      state,
      now: asked.now,
      seed: asked.seed ?? 1,
      doubtRuns: RUNS / 4,
    },
    plan,
  );
  const moves = movesBetween(old, sheet, state);
  return {
    how: made.how,
    request,
    sheet,
    lateBy: minutes(Math.max(0, ...sheet.servings.map(({ lateBy }) => lateBy))),
    moves,
    violations: violationsAhead({ request, state, asked }, sheet),
    cost: changeCost(moves),
  };
}

function chosen(candidates: readonly Candidate[]): readonly Offer[] {
  const sound = candidates.filter(isSound);
  if (sound.length === 0) {
    const least = candidates.toSorted(
      (one, other) => one.violations.length - other.violations.length || one.lateBy - other.lateBy,
    )[0];
    return least === undefined ? [] : [offer('least-late', least)];
  }
  const change = sound.toSorted(
    (one, other) => one.cost - other.cost || one.lateBy - other.lateBy,
  )[0]!;
  const late = sound.toSorted(
    (one, other) => one.lateBy - other.lateBy || one.cost - other.cost,
  )[0]!;
  if (late.lateBy >= change.lateBy) return [offer('least-change', change)];
  return [offer('least-change', change), offer('least-late', late)];
}

function offer(kind: Offer['kind'], { cost: _, ...made }: Candidate): Offer {
  return { kind, ...made };
}

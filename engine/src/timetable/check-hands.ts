// The checker's word on people and the table: hours, one thing at a time, skill, lifts, room.

import type { Skill } from '../camp/camp.ts';
import type { RecipeStep } from '../menu/recipe.ts';
import type { DaySheet, Job, TimetableRequest, Violation } from './day-sheet.ts';

export function handRules(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  return [
    ...request.camp.hands.flatMap((hand) => oneThingAtATime(sheet, hand.id)),
    ...sheet.jobs.flatMap((job) => [
      ...withinHours(request, job),
      ...manned(request, sheet, job),
      ...skilled(request, job),
    ]),
    ...tableRoom(request, sheet),
  ];
}

function oneThingAtATime(sheet: DaySheet, hand: string): readonly Violation[] {
  const own = sheet.jobs
    .filter((job) => job.hands.includes(hand) && job.start < job.end)
    .toSorted((a, b) => a.start - b.start);
  return own.slice(1).flatMap((job, at) => {
    const before = own[at]!;
    if (before.end <= job.start) return [];
    const jobs = [before.id, job.id];
    return [{ rule: 'one-thing-at-a-time', jobs, found: job.start, wanted: before.end }];
  });
}

function withinHours(request: TimetableRequest, job: Job): readonly Violation[] {
  return job.hands.flatMap((id) => {
    const hand = request.camp.hands.find((each) => each.id === id);
    const isIn = hand !== undefined && hand.from <= job.start && job.end <= hand.to;
    const isAway = hand?.away?.some(({ from, to }) => from < job.end && job.start < to) ?? false;
    const isThere = isIn && !isAway;
    // Calling takes no time and whoever is nearest shouts.
    if (isThere || (hand !== undefined && job.kind === 'call')) return [];
    return [{ rule: 'hours', jobs: [job.id], found: job.start, wanted: id }];
  });
}

const WAITING: ReadonlySet<Job['kind']> = new Set(['rise', 'second-rise', 'rest', 'cook', 'hold']);

function stepOf(request: TimetableRequest, job: Job): RecipeStep | undefined {
  const work = request.dishes.find((each) => each.dish.id === job.dish);
  return work?.recipe.steps.find((step) => step.kind === job.kind && step.say === job.say);
}

/** As many as the step says, as far as there are so many; a heavy oven is lifted by two. */
function manned(request: TimetableRequest, sheet: DaySheet, job: Job): readonly Violation[] {
  const step = stepOf(request, job);
  const isLift = isLifted(job) && isHeavy(request, job.oven) && !isSaidAlone(sheet, job);
  const isWork = !WAITING.has(job.kind) && (step === undefined || step.hands > 0);
  const asked = job.load === undefined || job.kind === 'brown' ? Math.ceil(step?.hands ?? 0) : 0;
  const wanted = Math.max(asked, isLift ? 2 : 0, isWork ? 1 : 0);
  const least = Math.min(wanted, request.camp.hands.length);
  const found = new Set(job.hands).size;
  if (found >= least && found === job.hands.length) return [];
  return [{ rule: isLift ? 'two-person-lift' : 'hands', jobs: [job.id], found, wanted: least }];
}

/** Loading, taking out, and any turn that moves the oven itself. */
const isLifted = (job: Job) =>
  job.kind === 'take-out' ||
  job.kind === 'load' ||
  (job.kind === 'turn' && job.values.turn !== 'lid-alone');

const isSaidAlone = (sheet: DaySheet, job: Job) =>
  job.kind === 'load' &&
  sheet.notices.some(
    (each) => each.code === 'TIMETABLE_LIFT_ALONE' && each.about.dish === job.dish,
  );

function isHeavy(request: TimetableRequest, id: string | undefined): boolean {
  const oven = request.camp.ovens.find((each) => each.id === id);
  if (oven === undefined) return false;
  // 14 inches, with a millimetre for the owner's tape.
  const inches = (oven.diameter + 0.001) / 0.0254;
  return inches >= 16 || (inches >= 14 && oven.style === 'deep');
}

/** Lids, coals and fire: never a new hand alone (unless pinned, or there is nobody else). */
const AT_THE_FIRE: ReadonlySet<Job['kind']> = new Set([
  'lay-coals',
  'add-coals',
  'turn',
  'check',
  'load',
  'take-out',
  'stir',
  'probe',
  'light-chimney',
  'light-feeder',
  'tend-fire',
  'ash-out',
]);

function skilled(request: TimetableRequest, job: Job): readonly Violation[] {
  const order: readonly Skill[] = ['new', 'steady', 'camp-cook'];
  const best = (ids: readonly string[]) =>
    Math.max(
      -1,
      ...request.camp.hands.filter((h) => ids.includes(h.id)).map((h) => order.indexOf(h.skill)),
    );
  const pinned = request.dishes.find((each) => each.dish.id === job.dish)?.dish.pins.hand;
  if (job.hands.length === 0 || (pinned !== undefined && job.hands.includes(pinned))) return [];
  const step = stepOf(request, job);
  const isOvenWork = job.load !== undefined && job.kind !== 'brown';
  const asked = step === undefined || isOvenWork ? 0 : order.indexOf(step.skill);
  const wanted = Math.max(asked, AT_THE_FIRE.has(job.kind) ? 1 : 0);
  const most = best(request.camp.hands.map((hand) => hand.id));
  const found = best(job.hands);
  if (found >= Math.min(wanted, most)) return [];
  return [{ rule: 'skill', jobs: [job.id], found: order[found] ?? 'none', wanted: order[wanted]! }];
}

function tableRoom(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  const tables = Math.max(1, request.camp.gear.tables);
  const at = sheet.jobs.filter((job) => job.needsTable && job.start < job.end);
  return at.flatMap((job) => {
    const there = at.filter((other) => other.start <= job.start && job.start < other.end);
    if (there.length <= tables) return [];
    const jobs = there.map((other) => other.id);
    return [{ rule: 'table', jobs, found: there.length, wanted: tables }];
  });
}

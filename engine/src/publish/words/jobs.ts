// What each job on the day sheet is called, and what is done in it. Coals are told from the coal
// plan of the load, so that a wood camp hears shovels and rings.

import type { DishPlan, LoadPlan, MealDay } from '../../meal.ts';
import { fromCelsius } from '../../quantity/unit.ts';
import { coolMinutes, TOUCH_LIMIT } from '../../safety/index.ts';
import type { Job, JobKind } from '../../timetable/day-sheet.ts';
import type { Say } from '../say.ts';
import { lightingWord } from '../sheet/first-work.ts';
import { nearestTo } from '../sheet/load-jobs.ts';
import { isLined, loadNoun, momentsOf } from '../sheet/moments.ts';
import {
  additionPhrase,
  areAlike,
  endsBrowning,
  isWood,
  laidWord,
  placementLine,
  turnBrief,
} from '../sheet/phrases.ts';

/** One or two words for a box on a drawing. */
const JOB_NAME: Readonly<Record<JobKind, string>> = {
  weigh: 'weigh',
  prepare: 'prepare',
  mix: 'mix',
  fold: 'fold',
  rise: 'rise',
  shape: 'shape',
  'second-rise': 'second rise',
  load: 'load',
  brown: 'brown',
  cook: 'cook',
  stir: 'stir',
  'take-out': 'take out',
  rest: 'rest',
  cut: 'cut',
  dress: 'dress',
  hold: 'hold',
  'wash-hands': 'wash hands',
  'fetch-water': 'fetch water',
  'light-chimney': 'light',
  'light-feeder': 'light feeder fire',
  grease: 'grease',
  'lay-coals': 'lay coals',
  check: 'check',
  turn: 'turn',
  'add-coals': 'add coals',
  'wipe-oven': 'wipe oven',
  probe: 'probe',
  call: 'call',
  'wash-up': 'wash up',
  'ash-out': 'ash out',
  'tend-fire': 'feed the fire',
};

/** A dough is shaped with hands or with a blade: the recipe's own word says which. */
export const jobName = ({ kind, say }: Pick<Job, 'kind' | 'say'>): string =>
  (kind === 'shape'
    ? /^(slash|score|dock|prick)\b/i.exec(say ?? '')?.[1]?.toLowerCase()
    : undefined) ?? JOB_NAME[kind];

const FIRE_JOBS: ReadonlySet<JobKind> = new Set<JobKind>([
  'light-chimney',
  'light-feeder',
  'tend-fire',
  'lay-coals',
  'check',
  'turn',
  'add-coals',
  'ash-out',
]);

export const isFireJob = (kind: JobKind) => FIRE_JOBS.has(kind);

/** The whole job in one sentence, the dish or oven named. */
export function jobSentence(job: Job, plan: MealDay, say: Say): string {
  const part = partOf(job, plan);
  const subject = sentence(subjectOf(job, say));
  if (part !== undefined) {
    const ours = ovenWork(job, plan, part, say);
    if (ours !== undefined) return `${subject}: ${ours}`;
  }
  const text = `${ownWords(job, plan, say)}${job.values.movesCoals === 1 ? COALS_ON : ''}`.replace(
    '..',
    '.',
  );
  return subject === '' || text.toLowerCase().includes(subject.toLowerCase())
    ? text
    : `${subject}: ${text}`;
}

/** Coals that still glow when an oven comes off them. */
const COALS_ON = '. Its coals go to the heap or to another oven.';

/** The recipe's words; not twice over where two dishes are shaped from one dough. */
function ownWords(job: Job, plan: MealDay, say: Say): string {
  if (job.say === undefined || job.say.trim() === '') return plainWork(job, plan);
  const { jobs } = plan.daySheet;
  const isTold = (each: Job) =>
    each.kind === job.kind && each.say === job.say && each.dish !== job.dish;
  const told = jobs.slice(0, jobs.indexOf(job)).find(isTold);
  if (told === undefined || !ONE_TELLING.has(job.kind)) return job.say;
  return `${sentence(jobName(job))} its part, as for ${say.dish(told.dish ?? '')}`;
}

const ONE_TELLING: ReadonlySet<JobKind> = new Set<JobKind>(['shape', 'cut']);

/** The same for a list that the dish cards stand beside. */
export function jobBrief(job: Job, plan: MealDay, say: Say): string {
  const part = partOf(job, plan);
  const brief = part === undefined ? undefined : briefWork(job, plan, part);
  const shortSay: Say = { ...say, dish: (id) => shortName(say.dish(id)) };
  return brief === undefined
    ? jobSentence(job, plan, shortSay)
    : `${sentence(subjectOf(job, shortSay))}: ${brief}`;
}

/** `cornbread (gluten-free)` without what stands behind it: the list of dishes says it. */
export const shortName = (name: string) => name.replace(/ *\([^)]*\)$/, '') || name;

function briefWork(job: Job, plan: MealDay, { dish, part }: Part): string | undefined {
  const { coals } = part;
  switch (job.kind) {
    case 'lay-coals':
      return `lay ${laidWord(coals.above, 'above', isWood(coals))}, ${laidWord(coals.below, 'below', isWood(coals))}`;
    case 'turn':
      return areAlike(plan.dishes.flatMap(({ loads }) => loads.flatMap((each) => each.coals.turns)))
        ? 'turn'
        : undefined;
    case 'check': {
      const check = nearest(coals.checks, minuteAsked(job, plan, { dish, part }));
      return `check the heat, ${check?.oven === 'full' ? `${loadNoun(dish)} in` : 'oven still empty'}`;
    }
    default:
      return undefined;
  }
}

/** Coals are laid on an oven, dough is shaped for a dish; neither name is said where it is known. */
function subjectOf(job: Job, say: Say): string {
  const oven = job.oven === undefined ? undefined : ovenWord(say.ovenName(job.oven));
  const dish = job.dish === undefined ? undefined : say.dish(job.dish);
  if (LIGHTING.has(job.kind)) return '';
  if (IRON_JOBS.has(job.kind)) return oven ?? dish ?? '';
  if (job.kind === 'load' || job.kind === 'take-out') {
    return [oven, dish].filter((word) => word !== undefined).join(', ');
  }
  return dish ?? oven ?? '';
}

const LIGHTING: ReadonlySet<JobKind> = new Set<JobKind>([
  'light-chimney',
  'light-feeder',
  'tend-fire',
  'ash-out',
]);
const IRON_JOBS: ReadonlySet<JobKind> = new Set<JobKind>([
  'lay-coals',
  'turn',
  'add-coals',
  'check',
  'grease',
  'wipe-oven',
]);

export const ovenWord = (name: string) => (/^[A-Z0-9]{1,2}$/i.test(name) ? `Oven ${name}` : name);

interface Part {
  readonly dish: DishPlan;
  readonly part: LoadPlan;
}

function partOf(job: Job, plan: MealDay): Part | undefined {
  for (const dish of plan.dishes) {
    const part = dish.loads.find(({ load }) => load.id === job.load);
    if (part !== undefined) return { dish, part };
  }
  return undefined;
}

function ovenWork(job: Job, plan: MealDay, { dish, part }: Part, say: Say): string | undefined {
  const { coals } = part;
  const wood = isWood(coals);
  const minute = minuteAsked(job, plan, { dish, part });
  switch (job.kind) {
    case 'lay-coals':
      return `lay the coals. ${placementLine(coals.above, 'above', wood)}. ${placementLine(coals.below, 'below', wood)}.`;
    case 'turn':
      return turnBrief(nearest(coals.turns, minute) ?? USUAL_TURN);
    case 'add-coals': {
      const addition = nearest(coals.additions, minute);
      if (addition === undefined) return 'add coals';
      return `${endsBrowning(coals, addition) ? 'lid on, ' : ''}add ${additionPhrase(addition, wood)}${addition.clearAsh ? ', ash cleared first' : ''}`;
    }
    case 'check': {
      const check = nearest(coals.checks, minute);
      return `check the heat, ${check?.oven === 'full' ? `${loadNoun(dish)} in` : 'oven still empty'}, as the dish card says`;
    }
    case 'probe': {
      const core = part.bake.done.core;
      return core === undefined || !plan.camp.gear.thermometer
        ? 'is it done? Look, press, as the dish card says'
        : `probe the middle: ${say.degrees(core)} or more, bottom crust too`;
    }
    default:
      return undefined;
  }
}

/** The minute of the coals that the job was made for; it may stand a little beside it. */
function minuteAsked(job: Job, plan: MealDay, { dish, part }: Part): number {
  const { minute } = job.values;
  return minute === undefined
    ? job.start - (momentsOf(plan, dish, part).zero ?? job.start)
    : Number(minute);
}

const USUAL_TURN = { kind: 'food', angle: 90, minute: 0 } as unknown as Parameters<
  typeof turnBrief
>[0];

const nearest = <Thing extends { readonly minute: number }>(
  things: readonly Thing[],
  minute: number,
) => nearestTo(things, minute, (each) => each.minute);

function plainWork(job: Job, plan: MealDay): string {
  switch (job.kind) {
    case 'wash-hands':
      return 'Wash hands, soap and water';
    case 'fetch-water':
      return 'Fetch water';
    case 'light-chimney': {
      const { lightings } = plan.daySheet;
      // Several chimneys are lit in the same minute: its own name first, the minute only without one.
      const lighting =
        lightings.find(({ id }) => id === job.id) ?? lightings.find(({ at }) => at === job.start);
      return lighting === undefined ? 'Light a chimney' : lightingWord(lighting, false);
    }
    case 'light-feeder':
      return 'Light the feeder fire';
    case 'tend-fire':
      return 'Put wood on the feeder fire';
    case 'grease':
      return greaseWork(plan.dishes.find(({ dish }) => dish.id === job.dish));
    case 'wipe-oven':
      return wipeWork(job, plan);
    case 'call':
      return 'Call: food is ready';
    case 'wash-up':
      return 'Wash up';
    case 'ash-out':
      return 'Ash out: drown, stir, drown, feel; into the lidded can';
    default:
      return sentence(jobName(job));
  }
}

/** An oven that bakes again at once is wiped hot; by the cool-down clock it is too hot to touch for long. */
function wipeWork(job: Job, { camp, daySheet, dishes }: MealDay): string {
  const oven = camp.ovens.find(({ id }) => id === job.oven);
  const emptied = daySheet.spans
    .filter(({ oven: id, to }) => id === job.oven && to <= job.start)
    .reduce((last, { to }) => Math.max(last, to), Number.NEGATIVE_INFINITY);
  const air = dishes.flatMap(({ loads }) => loads)[0]?.air.temperature;
  const cool =
    oven === undefined || air === undefined
      ? undefined
      : coolMinutes({ iron: USUAL_IRON, air, limit: TOUCH_LIMIT, diameter: oven.diameter });
  return job.start - emptied < (cool ?? Number.POSITIVE_INFINITY)
    ? 'Scrape and wipe the oven out hot: gloves, cloth in tongs, no water'
    : 'Wipe the oven out';
}

/** As bread comes out of it, 200 °C: common practice, no source. */
const USUAL_IRON = fromCelsius(200);

function greaseWork(dish: DishPlan | undefined): string {
  if (dish === undefined) return 'Grease the oven';
  if (loadNoun(dish) === 'pot') return 'Wipe the oven with oil';
  return isLined(dish) ? 'Grease the oven, paper on its floor' : 'Grease the oven';
}

const sentence = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

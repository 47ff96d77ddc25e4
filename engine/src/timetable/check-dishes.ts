// The checker's word on dishes: the recipe's order, clean hands, free-from first, fresh and served.

import type { RecipeStep, StepKind } from '../menu/recipe.ts';
import type { DaySheet, DishWork, Job, Serving, TimetableRequest, Violation } from './day-sheet.ts';

export function dishRules(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  return [
    ...request.dishes.flatMap((work) => [
      ...recipeOrder(sheet, work),
      ...intoOven(sheet, work),
      ...everyStep(sheet, work),
      ...served(sheet, work),
      ...cutOnceRested(sheet, work),
      ...risenEnough(sheet, work),
      ...freeFromFirst(request, sheet, work),
    ]),
    ...cleanHands(sheet),
    ...called(request, sheet),
  ];
}

/** Timed by the coal plan and checked there. */
const AT_OVEN: ReadonlySet<StepKind> = new Set([
  'load',
  'brown',
  'cook',
  'stir',
  'take-out',
  'hold',
  'second-rise',
]);

function jobsOf(sheet: DaySheet, work: DishWork, step: RecipeStep): readonly Job[] {
  return sheet.jobs.filter((job) => {
    const isShared = String(job.values.with ?? '')
      .split(' ')
      .includes(work.dish.id);
    const isOwn = job.dish === work.dish.id || isShared;
    return isOwn && job.kind === step.kind && job.say === step.say;
  });
}

function recipeOrder(sheet: DaySheet, work: DishWork): readonly Violation[] {
  const steps = work.recipe.steps.filter((step) => !AT_OVEN.has(step.kind));
  return steps.flatMap((step) =>
    step.after.flatMap((lag) => {
      const before = work.recipe.steps.find((each) => each.id === lag.step);
      const isTimed = before?.kind !== 'second-rise' && AT_OVEN.has(before?.kind ?? 'cook');
      if (before === undefined || isTimed) return [];
      return jobsOf(sheet, work, step).flatMap((job) =>
        jobsOf(sheet, work, before).flatMap((earlier) => {
          const found = job.start - earlier.end;
          const isRight = lag.least <= found && found <= (lag.most ?? Number.POSITIVE_INFINITY);
          if (isRight) return [];
          const wanted = found < lag.least ? lag.least : (lag.most ?? 0);
          return [{ rule: 'recipe-order', jobs: [earlier.id, job.id], found, wanted }];
        }),
      );
    }),
  );
}

const BAKES: ReadonlySet<StepKind> = new Set(['load', 'brown', 'cook']);

/** No longer before the oven than the recipe lets it; what waits its turn in an oven can't be. */
function intoOven(sheet: DaySheet, work: DishWork): readonly Violation[] {
  const { steps } = work.recipe;
  const firstOf = (kind: StepKind | 'lay-coals') =>
    sheet.jobs.find((job) => job.dish === work.dish.id && job.kind === kind);
  const [load, lay] = [firstOf('load'), firstOf('lay-coals')];
  if (load === undefined || lay === undefined || waitsItsTurn(sheet, work, load)) return [];
  return steps.flatMap((step) =>
    (BAKES.has(step.kind) ? step.after : []).flatMap(({ step: id, most }) => {
      const before = steps.find((each) => each.id === id);
      if (most === undefined || before === undefined || AT_OVEN.has(before.kind)) return [];
      return jobsOf(sheet, work, before).flatMap((earlier) => {
        const into = earlier.end > load.start ? lay : load;
        const found = into.start - earlier.end;
        const jobs = [earlier.id, into.id];
        return found <= most ? [] : [{ rule: 'recipe-order', jobs, found, wanted: most }];
      });
    }),
  );
}

/** Its oven bakes for the same serving before it: the dough waits, and the sheet says how long. */
const waitsItsTurn = (sheet: DaySheet, work: DishWork, load: Job) => {
  const wantedOf = (dish: string | undefined) =>
    sheet.servings.find((each) => each.dish === dish)?.wanted ?? Number.NaN;
  return sheet.jobs.some(
    (job) =>
      job.kind === 'load' &&
      job.oven === load.oven &&
      job.start < load.start &&
      Math.abs(wantedOf(job.dish) - wantedOf(work.dish.id)) < 60,
  );
};

function everyStep(sheet: DaySheet, work: DishWork): readonly Violation[] {
  return work.recipe.steps.flatMap((step) => {
    if (work.loads.length > 0 && AT_OVEN.has(step.kind)) return [];
    const found = jobsOf(sheet, work, step).length;
    return found === 1 ? [] : [{ rule: 'every-step-once', jobs: [step.id], found, wanted: 1 }];
  });
}

function served(sheet: DaySheet, work: DishWork): readonly Violation[] {
  const serving = sheet.servings.find((each) => each.dish === work.dish.id);
  const jobs = [work.dish.id];
  if (serving === undefined) return [{ rule: 'served', jobs, found: 'none', wanted: 'once' }];
  const violations: Violation[] = [];
  const own = sheet.jobs.filter((job) => job.dish === work.dish.id);
  const done = Math.max(serving.wanted - 1440, ...own.map((job) => job.end));
  const late = Math.max(0, serving.served - work.dish.serveAt);
  if (serving.served < done) {
    violations.push({ rule: 'served-before-done', jobs, found: serving.served, wanted: done });
  }
  if (late !== serving.lateBy) {
    violations.push({ rule: 'lateness-told', jobs, found: serving.lateBy, wanted: late });
  }
  if (late > 0 && sheet.status === 'planned') {
    violations.push({ rule: 'on-time', jobs, found: serving.served, wanted: work.dish.serveAt });
  }
  return [...violations, ...fresh(sheet, work, serving)];
}

/** Cooked and rested, a dish waits no longer than it may and as long as told; cutting is no wait. */
function fresh(sheet: DaySheet, work: DishWork, serving: Serving): readonly Violation[] {
  const own = sheet.jobs.filter((job) => job.dish === work.dish.id);
  const out = own.filter((job) => job.kind === 'take-out').map((job) => job.end);
  if (out.length === 0) return [];
  const lastOut = Math.max(...out);
  const rests = own.filter((job) => job.kind === 'rest' && job.start >= Math.min(...out));
  const rested = Math.max(lastOut, ...rests.map((job) => job.end));
  const isWork = (job: Job) => job.kind !== 'hold' && job.kind !== 'wash-hands';
  const after = own.filter((job) => job.start >= rested && isWork(job));
  const busy = after.reduce((sum, job) => sum + (job.end - job.start), 0);
  const found = serving.served - rested - busy;
  const jobs = [work.dish.id];
  const violations: Violation[] = [];
  if (Math.abs(found - serving.waits) > 0) {
    violations.push({ rule: 'waiting-told', jobs, found: serving.waits, wanted: found });
  }
  const isSaid = sheet.notices.some(
    (each) =>
      each.about.dish === work.dish.id &&
      (each.code === 'TIMETABLE_PIN_WAITS' || each.code === 'TIMETABLE_OVEN_WAITS'),
  );
  if (found > work.canWait && !isSaid) {
    violations.push({ rule: 'can-wait', jobs, found, wanted: work.canWait });
  }
  return violations;
}

/** Bread that has rested is cut within five minutes, unless the recipe lets it stand. */
function cutOnceRested(sheet: DaySheet, work: DishWork): readonly Violation[] {
  const { steps } = work.recipe;
  return steps.flatMap((cut) => {
    const lag = cut.after.find((each) => steps.find((s) => s.id === each.step)?.kind === 'rest');
    if (cut.kind !== 'cut' || lag === undefined || work.loads.length === 0) return [];
    const rest = jobsOf(sheet, work, steps.find((step) => step.id === lag.step)!)[0];
    const job = jobsOf(sheet, work, cut)[0];
    if (rest === undefined || job === undefined) return [];
    const found = job.start - rest.end;
    const wanted = lag.most ?? Math.max(5, lag.least + 5);
    return found <= wanted ? [] : [{ rule: 'cut-once-rested', jobs: [job.id], found, wanted }];
  });
}

/** Yeast works from mixing on: until the dough is shaped it has at least the quick end of its band. */
function risenEnough(sheet: DaySheet, work: DishWork): readonly Violation[] {
  const { rise } = work;
  const own = sheet.jobs.filter(
    (job) =>
      job.dish === work.dish.id ||
      String(job.values.with ?? '')
        .split(' ')
        .includes(work.dish.id),
  );
  const mixed = own.find((job) => job.kind === 'mix');
  const rises = own.filter((job) => job.kind === 'rise').map((job) => job.end);
  if (rise === undefined || mixed === undefined || rises.length === 0) return [];
  const found = Math.max(...rises) - mixed.end;
  const wanted = Math.floor(rise.least);
  return found >= wanted ? [] : [{ rule: 'risen-enough', jobs: [mixed.id], found, wanted }];
}

const HANDLES: ReadonlySet<Job['kind']> = new Set(['prepare', 'mix', 'fold', 'shape']);

/** Washed within ten minutes before food is handled, by somebody who handles it. */
function cleanHands(sheet: DaySheet): readonly Violation[] {
  const washes = sheet.jobs.filter((job) => job.kind === 'wash-hands');
  return sheet.jobs.flatMap((job) => {
    if (!HANDLES.has(job.kind) || job.hands.length === 0) return [];
    const isClean = washes.some(
      (wash) =>
        wash.dish === job.dish &&
        job.hands.includes(wash.hands[0] ?? '') &&
        job.start - 10 <= wash.end &&
        wash.end <= job.start,
    );
    // A heated step after the oven (dressing, cutting) is done with tools.
    const isAfterOven = sheet.jobs.some(
      (other) => other.dish === job.dish && other.kind === 'take-out' && other.end <= job.start,
    );
    if (isClean || isAfterOven) return [];
    return [{ rule: 'clean-hands', jobs: [job.id], found: 'none', wanted: 'wash-hands' }];
  });
}

const MAKES: ReadonlySet<Job['kind']> = new Set(['weigh', 'prepare', 'mix', 'fold', 'shape']);

function freeFromFirst(
  request: TimetableRequest,
  sheet: DaySheet,
  work: DishWork,
): readonly Violation[] {
  if (!work.dish.freeFrom) return [];
  const makes = (id: string) =>
    sheet.jobs.filter((job) => job.dish === id && MAKES.has(job.kind) && job.hands.length > 0);
  const own = makes(work.dish.id);
  const away = mustKeepAway(request, work);
  const others = request.dishes.filter((each) => each !== work && holdsAny(each, away));
  const rivals = others.flatMap((each) => makes(each.dish.id));
  const isSaid = sheet.notices.some(
    (each) => each.code === 'TIMETABLE_FREE_FROM_NOT_FIRST' && each.about.dish === work.dish.id,
  );
  if (own.length === 0) return [];
  const first = Math.min(...own.map((job) => job.end));
  return rivals.flatMap((rival) => {
    const meets = own.find((job) => job.start < rival.end && rival.start < job.end);
    if (meets !== undefined) {
      const jobs = [meets.id, rival.id];
      return [{ rule: 'free-from-apart', jobs, found: rival.start, wanted: meets.end }];
    }
    if (isSaid || first <= rival.start) return [];
    return [{ rule: 'free-from-first', jobs: [rival.id], found: rival.start, wanted: first }];
  });
}

/** What strict needs and its oven's mark keep away, unless the dish itself holds it. */
function mustKeepAway(request: TimetableRequest, work: DishWork): readonly string[] {
  const needs = request.camp.needs.flatMap((n) => (n.strictness === 'strict' ? [n.kind] : []));
  const marks = request.camp.ovens.flatMap((oven) =>
    work.loads.some(({ load }) => load.oven === oven.id) ? oven.keptFreeOf : [],
  );
  const kept = [...needs, ...marks].filter((kind) => !holdsAny(work, [kind]));
  return kept.length > 0 ? kept : ['gluten'];
}

function holdsAny(work: DishWork, kinds: readonly string[]): boolean {
  const held = [
    ...work.recipe.contains,
    ...work.recipe.ingredients.flatMap((each) => each.allergens),
  ];
  const names = held.flatMap((kind): string[] => (kind === 'wheat' ? ['wheat', 'gluten'] : [kind]));
  return names.some((name) => kinds.includes(name));
}

function called(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  const calls = sheet.jobs.filter((job) => job.kind === 'call');
  return request.dishes.flatMap(({ dish }) => {
    const own = calls.filter((job) => String(job.values.dishes).split(' ').includes(dish.id));
    const isDone = sheet.servings.find((each) => each.dish === dish.id)?.served ?? 0;
    const call = own[0];
    if (own.length === 1 && call !== undefined && call.start >= isDone) return [];
    return [{ rule: 'called', jobs: [dish.id], found: own.length, wanted: 1 }];
  });
}

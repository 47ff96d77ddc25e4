// The checker's word on clean hands between two jobs: from wheat to a dish kept free of it, from raw
// meat to anything else, from charcoal, wiping and washing up to food, from anything raw or greasy to
// what is eaten as it is, there is a washing between. Source: food-code-2-301.

import { isPot } from '../bake/index.ts';
import type { DaySheet, DishWork, Job, TimetableRequest, Violation } from './day-sheet.ts';

export function washRules(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  return request.camp.hands.flatMap(({ id }) => {
    const own = sheet.jobs
      .filter((job) => job.hands.includes(id))
      .toSorted((a, b) => a.start - b.start || a.end - b.end);
    return own.flatMap((job, at) => {
      // Told to wash all the same, at the cost of a minute, is as good as washed.
      const told = own.slice(0, at).findLastIndex((each) => isSaid(sheet, each, id));
      const washed = own.slice(0, at).findLastIndex((each) => each.kind === 'wash-hands');
      const sinceThen = own.slice(Math.max(washed + 1, told), at);
      const rule = dirtyRule(request, sinceThen, job);
      if (rule === undefined || isSaid(sheet, job, id)) return [];
      const jobs = [...sinceThen.map((each) => each.id), job.id];
      return [{ rule, jobs, found: 'none', wanted: 'wash-hands' }];
    });
  });
}

const isSaid = (sheet: DaySheet, job: Job, hand: string) =>
  sheet.notices.some(
    ({ code, about }) =>
      code === 'TIMETABLE_HANDS_NOT_WASHED' && about.task === job.id && about.hand === hand,
  );

function dirtyRule(
  request: TimetableRequest,
  since: readonly Job[],
  job: Job,
): Violation['rule'] | undefined {
  const dishOf = (each: Job) => request.dishes.find((work) => work.dish.id === each.dish);
  const work = dishOf(job);
  if (work === undefined || job.kind === 'wash-hands' || job.kind === 'call') return undefined;
  const isRaw = since.some((each) => {
    const of = dishOf(each);
    const isOther = each.dish !== job.dish || job.kind === 'cut' || job.kind === 'dress';
    return of !== undefined && isOther && handlesRaw(of, each);
  });
  if (isRaw) return 'washed-after-raw-meat';
  const isSooty = since.some((each) => /coals|chimney|feeder|fire|ash-out/.test(each.kind));
  const isSoiled = since.some((each) => /^(wipe-oven|wash-up)$/.test(each.kind));
  const isEatenSo = /^(cut|dress)$/.test(job.kind);
  const isInHands = isEatenSo || /^(prepare|mix|fold|shape)$/.test(job.kind);
  const isFilled = job.kind === 'load' && !isPot(work.recipe);
  if (isSooty && (isInHands || isFilled)) return 'washed-after-coals';
  if (isSoiled && isInHands) return 'washed-after-dirt';
  const isDoughy = since.some((each) => {
    const of = dishOf(each);
    const isRawDough = /^(mix|fold|shape|load)$/.test(each.kind);
    return each.kind === 'grease' || (of !== undefined && isRawDough && !of.recipe.target.isCold);
  });
  if (isEatenSo && isDoughy) return 'washed-before-ready-to-eat';
  const away = work.dish.freeFrom ? awayFrom(request, work) : [];
  const isTouched = since.some((each) => {
    const of = dishOf(each);
    // Coals, lids and probes are worked with tongs, lifter and spoon.
    const isFood = !/^(grease|lay-coals|add-coals|turn|check|stir|probe|call)$/.test(each.kind);
    return of !== undefined && isFood && allergensIn(of).some((kind) => away.includes(kind));
  });
  return isTouched ? 'washed-before-free-from' : undefined;
}

const handlesRaw = ({ recipe }: DishWork, job: Job) =>
  /^(prepare|mix|shape|load|brown)$/.test(job.kind) &&
  !recipe.target.isCold &&
  recipe.ingredients.some((each) => each.part === 'meat' || each.part === 'poultry');

/** Strict needs and the marks of its ovens, or gluten; never what the dish itself holds. */
function awayFrom({ camp }: TimetableRequest, work: DishWork): readonly string[] {
  const used = work.loads.map(({ load }) => load.oven);
  const marks = camp.ovens.flatMap((each) => (used.includes(each.id) ? each.keptFreeOf : []));
  const strict = camp.needs.flatMap((each) => (each.strictness === 'strict' ? [each.kind] : []));
  const own = allergensIn(work);
  const kept = [...marks, ...strict].filter((kind) => !own.includes(kind));
  return kept.length === 0 ? ['gluten'] : kept;
}

function allergensIn({ recipe }: DishWork): readonly string[] {
  const named = [...recipe.contains, ...recipe.ingredients.flatMap((each) => each.allergens)];
  return named.includes('wheat') ? [...named, 'gluten'] : named;
}

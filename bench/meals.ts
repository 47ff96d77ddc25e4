// Meals drawn by seed: how far is the plan of so much work from the best there is? The best, and the
// proof of it, come from a constraint solver on a model of its own. The search was tuned on seeds 1 to
// 40; the seeds here are others. A gap counts what a plan costs up to the last serving: what is priced
// after that is the same in every plan. Seconds are of this process's own work, not of the wall clock.
import assert from 'node:assert/strict';
import { costOf } from '../engine/src/solver/cost.ts';
import type { Problem } from '../engine/src/solver/problem.ts';
import { type Found, searchPlan } from '../engine/src/solver/search.ts';
import { bindingOf, sayBinding } from './meals/binding.ts';
import { assertMealKept, mealCost } from './meals/check-meal.ts';
import { drawMeal, type Meal, SCALES, type Size, scaleFor } from './meals/draw-meal.ts';
import { askOracle } from './meals/oracle.ts';
import { plannedIn, secondsOf, shownIn } from './meals/planned-in.ts';

const say = (text: string) => process.stdout.write(`  ${text}\n`);

const FIRST_SEED = 1001;
/** Aims of the project at one second: mean and worst gap in per cent. */
const AIMS = { small: { mean: 0, worst: 4 }, medium: { mean: 1, worst: 4 } } as const;
/** Seconds of work; the last only where asked for, it takes long. */
const MARKS = [0.1, 1, 10];

export async function mealsBench(): Promise<void> {
  const many = Number(process.env.MEALS ?? 3);
  const seconds = Number(process.env.MEALS_SECONDS ?? 25);
  const marks = process.env.MEALS_LONG === undefined ? MARKS.slice(0, 2) : MARKS;
  say(`${many} meals a size (MEALS=…), the oracle ${seconds} s each (MEALS_SECONDS=…)`);
  for (const size of ['small', 'medium'] as const) await judged(size, { many, seconds, marks });
  unjudged('large', Math.min(many, 3), marks);
  growth();
  for (const size of ['small', 'medium'] as const) {
    sayBinding(bindingOf(size, { first: FIRST_SEED, many: Math.max(20, many) }), say);
  }
}

interface Outcome {
  readonly seed: number;
  /** Proven or not, what the oracle says. */
  readonly oracle: 'proven' | 'unproven' | 'none' | 'unknown';
  /** Until there is something to show, late perhaps; until the first search for one on time ends. */
  readonly shownMilliseconds: number;
  readonly firstMilliseconds: number;
  readonly status: Found['status'];
  /** In per cent of the best known: first plan, then each mark; infinite where late. */
  readonly gaps: readonly number[];
  /** The search itself says that it is the best, at each mark. */
  readonly isBest: readonly boolean[];
}

async function judged(
  size: 'small' | 'medium',
  wish: { readonly many: number; readonly seconds: number; readonly marks: readonly number[] },
): Promise<void> {
  warmUp(size);
  const outcomes: Outcome[] = [];
  for (let seed = FIRST_SEED; seed < FIRST_SEED + wish.many; seed += 1) {
    outcomes.push(await judgedMeal(drawMeal(seed, SCALES[size]), { ...wish, seed }));
  }
  sayJudged(size, outcomes, wish.marks);
}

async function judgedMeal(
  meal: Meal,
  wish: { readonly seed: number; readonly seconds: number; readonly marks: readonly number[] },
): Promise<Outcome> {
  const { problem } = meal;
  const shown = shownIn(problem, wish.seed);
  const first = secondsOf(() => searchPlan(problem, { seed: wish.seed, decodes: 1 }));
  const founds = [
    first.result,
    ...wish.marks.map((mark) => plannedIn(problem, { seed: wish.seed, seconds: mark })),
  ];
  for (const found of founds) assertFound(problem, found);
  const sound = founds.filter((found) => found.status === 'sound').map(({ cost }) => cost);
  const told = await oracleFor(problem, { seconds: wish.seconds, atMost: Math.min(...sound) });
  if (told.oracle === 'none') assert.deepEqual(sound, [], 'no plan where none exists');
  const best = Math.min(told.cost, ...sound);
  if (told.oracle === 'proven') assert.ok(best >= told.cost - 1e-6, 'nothing below the proven');
  for (const { gap = Number.POSITIVE_INFINITY, cost } of founds) {
    assert.ok(cost - gap <= best + 1e-6, 'nothing is so far below as is said to be impossible');
  }
  const base = best - 2 * (problem.to - meal.lastServing);
  return {
    seed: wish.seed,
    oracle: told.oracle,
    shownMilliseconds: shown,
    firstMilliseconds: 1000 * first.seconds,
    status: founds.at(-1)!.status,
    isBest: founds.map(({ gap }) => gap === 0),
    gaps: founds.map(({ status, cost }) =>
      status === 'late' ? Number.POSITIVE_INFINITY : (100 * (cost - best)) / base,
    ),
  };
}

/** Whatever is called sound passes a checker that shares nothing with the solver, prices too. */
function assertFound(problem: Problem, { status, plan, cost }: Found): void {
  if (status === 'late') return;
  assertMealKept(problem, plan);
  assert.ok(Math.abs(mealCost(problem, plan) - cost) < 1e-6, 'priced as stated');
}

async function oracleFor(
  problem: Problem,
  wish: { readonly seconds: number; readonly atMost: number },
): Promise<{ readonly oracle: Outcome['oracle']; readonly cost: number }> {
  const { atMost, seconds } = wish;
  const needed = problem.stores[0]!.uses.reduce((sum, { amount }) => sum + amount, 0);
  const batches = Math.ceil(needed / problem.stores[0]!.size) + 3;
  const bounded = Number.isFinite(atMost) ? { atMost } : {};
  const { status, plan, cost } = await askOracle(problem, { seconds, batches, ...bounded });
  if (plan !== undefined) {
    assertMealKept(problem, plan);
    assert.ok(Math.abs(mealCost(problem, plan) - costOf(problem, plan)) < 1e-6, 'priced alike');
    // Where it is not proven the model may still count more than the plan costs.
    assert.ok(mealCost(problem, plan) <= cost! + 1e-6, 'no dearer than its model says');
  }
  const oracle =
    status === 'best'
      ? 'proven'
      : status === 'some'
        ? 'unproven'
        : status === 'none'
          ? 'none'
          : 'unknown';
  return { oracle, cost: cost ?? Number.POSITIVE_INFINITY };
}

function sayJudged(
  size: 'small' | 'medium',
  outcomes: readonly Outcome[],
  marks: readonly number[],
): void {
  const count = (oracle: Outcome['oracle']) =>
    outcomes.filter((each) => each.oracle === oracle).length;
  const missed = outcomes.filter(
    ({ oracle, status }) => status === 'late' && (oracle === 'proven' || oracle === 'unproven'),
  );
  say(
    `${size}: ${outcomes.length} meals; best proven ${count('proven')}, best known only ` +
      `${count('unproven')}, proven that none is on time ${count('none')}, oracle silent ${count('unknown')}; ` +
      `a plan on time exists and was missed: ${missed.length}${listOf(missed)}`,
  );
  const shown = outcomes.map(({ shownMilliseconds }) => shownMilliseconds);
  const firsts = outcomes.map(({ firstMilliseconds }) => firstMilliseconds);
  say(
    `${size}: a plan to show in ${mean(shown).toFixed(1)} ms, worst ${Math.max(...shown).toFixed(0)} (aim 50); ` +
      `all first orders tried in ${mean(firsts).toFixed(0)} ms, worst ${Math.max(...firsts).toFixed(0)}`,
  );
  const judged = outcomes.filter(({ gaps }) => gaps.some(Number.isFinite));
  const byOracle = judged.filter(({ oracle }) => oracle === 'proven');
  // No word of the oracle's: the search's own proof is no judge of the search.
  const byItself = judged.filter(
    ({ oracle, isBest }) => oracle !== 'proven' && isBest.includes(true),
  );
  ['first plan', ...marks.map((mark) => `${mark} s`)].forEach((mark, at) => {
    const own = outcomes.filter(({ isBest }) => isBest[at] === true).length;
    const gapsOf = (of: readonly Outcome[]) =>
      of.map(({ gaps: all }) => all[at]!).filter(Number.isFinite);
    const gaps = gapsOf(byOracle);
    const aim = mark === '1 s' && gaps.length > 0 ? aimOf(size, gaps) : '';
    say(
      `${size} at ${mark}: ${gapWords(gaps, 'the best that the oracle proved')}${aim}; ` +
        `apart from that ${gapWords(gapsOf(byItself), 'the best that only our search proved')}; ` +
        `proven by itself ${own} of ${outcomes.length}`,
    );
  });
}

function gapWords(gaps: readonly number[], what: string): string {
  if (gaps.length === 0) return `no meal to hold against ${what}`;
  const atBest = gaps.filter((gap) => gap < 1e-6).length;
  return (
    `${mean(gaps).toFixed(2)} % above ${what}, worst ${Math.max(...gaps).toFixed(1)}, ` +
    `at it ${atBest} of ${gaps.length}`
  );
}

function aimOf(size: 'small' | 'medium', gaps: readonly number[]): string {
  const aim = AIMS[size];
  const isMet = mean(gaps) <= aim.mean && Math.max(...gaps) <= aim.worst;
  return ` (aim ${aim.mean} %, worst ${aim.worst}: ${isMet ? 'met' : 'MISSED'})`;
}

const listOf = (outcomes: readonly Outcome[]) =>
  outcomes.length === 0 ? '' : ` (seeds ${outcomes.map(({ seed }) => seed).join(', ')})`;

const mean = (numbers: readonly number[]) =>
  numbers.reduce((sum, each) => sum + each, 0) / Math.max(1, numbers.length);

/** No best is known here: each mark beside the longest run, which is no bound. */
function unjudged(size: Size, many: number, marks: readonly number[]): void {
  for (let seed = FIRST_SEED; seed < FIRST_SEED + many; seed += 1) {
    const { problem, lastServing } = drawMeal(seed, SCALES[size]);
    const shown = shownIn(problem, seed);
    const first = secondsOf(() => searchPlan(problem, { seed, decodes: 1 }));
    const founds = [first.result, ...marks.map((seconds) => plannedIn(problem, { seed, seconds }))];
    for (const found of founds) assertFound(problem, found);
    const base = 2 * (problem.to - lastServing);
    const told = founds.map(({ status, cost, plan }) => {
      const late = plan.lateBy.reduce((sum, each) => sum + each, 0);
      return status === 'late' ? `late by ${late} min over all` : (cost - base).toFixed(0);
    });
    say(
      `${size} ${seed}, ${problem.tasks.length} tasks: a plan to show in ${shown.toFixed(0)} ms; first plan in ` +
        `${(1000 * first.seconds).toFixed(0)} ms: ` +
        `${told[0]}; ${marks.map((mark, at) => `${mark} s: ${told[at + 1]}`).join('; ')} (no bound is known)`,
    );
  }
}

/** How the first plan and one decode grow with the dishes, hands and ovens in proportion. */
function growth(): void {
  const rows = [5, 10, 20, 40, 80].map((dishes) => {
    const { problem } = drawMeal(FIRST_SEED, scaleFor(dishes));
    const first = secondsOf(() => searchPlan(problem, { seed: 1, decodes: 1 }));
    // Too few placings for learning to begin.
    const many = Math.floor(500 / dishes);
    const more = secondsOf(() => searchPlan(problem, { seed: 1, decodes: 1 + many }));
    assertFound(problem, more.result);
    const decode = Math.max(0, more.seconds - first.seconds) / many;
    return { dishes, first: 1000 * first.seconds, decode: 1000 * decode };
  });
  const five = rows[0]!;
  for (const { dishes, first, decode } of rows) {
    say(
      `${dishes} dishes: first plan ${first.toFixed(1)} ms (${(first / five.first).toFixed(1)} times five dishes), ` +
        `a decode ${decode.toFixed(2)} ms (${(decode / five.decode).toFixed(1)} times)`,
    );
  }
}

function warmUp(size: Size): void {
  searchPlan(drawMeal(1, SCALES[size]).problem, { seed: 1, decodes: 100 });
}

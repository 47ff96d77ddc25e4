// What is the order of a recipe's steps, and which are done before, in and after the oven?

import { isBread as isBreadKind, isPot as isPotKind } from '../bake/index.ts';
import { risesInOven } from '../menu/heat-kind.ts';
import type { Recipe, RecipeStep, StepKind, StepLag } from '../menu/recipe.ts';
import type { Minutes } from '../quantity/unit.ts';
import type { DishWork } from './day-sheet.ts';

export type Phase = 'before' | 'oven' | 'after';

/** Work that the coal plan times, not the recipe. */
const OVEN_KINDS: ReadonlySet<StepKind> = new Set([
  'load',
  'brown',
  'cook',
  'stir',
  'take-out',
  'hold',
]);

export const isOvenStep = (step: RecipeStep) => OVEN_KINDS.has(step.kind);

/** Phase by step id. Without fire everything is 'before'. */
export function phasesOf(recipe: Recipe, isOnFire: boolean): ReadonlyMap<string, Phase> {
  const phases = new Map<string, Phase>();
  recipe.steps.forEach((step, index) => {
    if (!isOnFire) phases.set(step.id, 'before');
    else if (isOvenStep(step)) phases.set(step.id, 'oven');
    else {
      const isAfter = lagsInto(recipe, index).some((lag) => {
        const kind = recipe.steps.find((each) => each.id === lag.step)?.kind;
        return phases.get(lag.step) === 'after' || (kind !== undefined && endsCooking(kind));
      });
      phases.set(step.id, isAfter ? 'after' : 'before');
    }
  });
  return phases;
}

const endsCooking = (kind: StepKind) =>
  kind === 'cook' || kind === 'take-out' || kind === 'stir' || kind === 'hold';

/** Steps that start the work freely; any other without lags follows the one written above it. */
const FREE_KINDS: ReadonlySet<StepKind> = new Set(['weigh', 'prepare', 'mix']);

export function lagsInto(recipe: Recipe, index: number): readonly StepLag[] {
  const step = recipe.steps[index]!;
  const known = step.after.filter((lag) => recipe.steps.some((each) => each.id === lag.step));
  if (known.length > 0 || FREE_KINDS.has(step.kind) || index === 0) return known;
  return [{ step: recipe.steps[index - 1]!.id, least: 0 as Minutes }];
}

/** Steps of one phase that no other step of that phase waits for. */
export function lastSteps(recipe: Recipe, phases: ReadonlyMap<string, Phase>, phase: Phase) {
  const waitedFor = new Set<string>();
  recipe.steps.forEach((step, index) => {
    if (phases.get(step.id) !== phase) return;
    for (const lag of lagsInto(recipe, index)) waitedFor.add(lag.step);
  });
  return recipe.steps.filter((step) => phases.get(step.id) === phase && !waitedFor.has(step.id));
}

/** The longest rise takes what is left of the estimate: yeast works from mixing on, through soaking
 * and folding. Short rests written as rises keep their own minutes. */
export function stepMinutes(work: DishWork, step: RecipeStep): number {
  const { rise, recipe } = work;
  if (rise === undefined) return step.minutes;
  if (step.kind === 'second-rise') return rise.second;
  const main = mainRise(recipe);
  if (step.id !== main?.id) return step.minutes;
  return Math.max(LEAST_MAIN_RISE, rise.first - minutesSinceMixed(recipe, step));
}

/** However much soaking and folding went before, a dough has to come up again [min]. */
const LEAST_MAIN_RISE = 15;

export function mainRise(recipe: Recipe): RecipeStep | undefined {
  const rises = recipe.steps.filter((each) => each.kind === 'rise');
  return rises.reduce<RecipeStep | undefined>(
    (best, each) => (best === undefined || each.minutes > best.minutes ? each : best),
    undefined,
  );
}

/** Least minutes from the end of mixing to the start of this step; 0 where nothing is mixed. */
function minutesSinceMixed(recipe: Recipe, step: RecipeStep): number {
  const since = new Map<string, number>();
  recipe.steps.forEach((each, index) => {
    const waits = lagsInto(recipe, index).flatMap((lag) => {
      const before = recipe.steps.find((other) => other.id === lag.step)!;
      if (before.kind === 'mix') return [lag.least];
      const known = since.get(before.id);
      return known === undefined ? [] : [known + before.minutes + lag.least];
    });
    if (waits.length > 0 && each.kind !== 'mix') since.set(each.id, Math.max(...waits));
  });
  return since.get(step.id) ?? 0;
}

/** Ids of the steps that dishes sharing this recipe do once: all that lead up to shaping. */
export function sharedSteps(recipe: Recipe): ReadonlySet<string> {
  const own = new Set<string>();
  recipe.steps.forEach((step, index) => {
    const follows = lagsInto(recipe, index).some((lag) => own.has(lag.step));
    const isOwn = step.kind === 'shape' || step.kind === 'second-rise' || isOvenStep(step);
    if (isOwn || follows) own.add(step.id);
  });
  return new Set(recipe.steps.filter((step) => !own.has(step.id)).map((step) => step.id));
}

/**
 * One dough can't rise a second time in an oven in which its other half still bakes: what takes its
 * turn there is mixed by itself, later.
 */
const waitsForOven = (one: DishWork, other: DishWork): boolean =>
  risesInOven(other.recipe) &&
  one.loads.some(({ load }) => other.loads.some((each) => each.load.oven === load.oven));

/** Dishes that are mixed as one batch: one recipe, shared out by its pieces. */
export function mixedTogether(dishes: readonly DishWork[]): readonly (readonly DishWork[])[] {
  const batches: DishWork[][] = [];
  for (const work of dishes) {
    const isShared = work.recipe.division.length > 1 && work.dish.pieces !== undefined;
    const batch = batches.find(
      (others) =>
        isShared &&
        others[0]!.recipe.id === work.recipe.id &&
        others[0]!.dish.pieces !== undefined &&
        !others.some((other) => waitsForOven(other, work)),
    );
    if (batch) batch.push(work);
    else batches.push([work]);
  }
  return batches;
}

export const isBread = (work: DishWork) => isBreadKind(work.recipe);
export const isPot = (work: DishWork) => isPotKind(work.recipe);

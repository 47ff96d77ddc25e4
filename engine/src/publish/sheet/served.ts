// What comes out when, what is on the table when, and what waits in between.

import type { DishPlan, MealDay } from '../../meal.ts';
import { type ClockMinutes, clockMinutes } from '../../quantity/unit.ts';
import type { Serving } from '../../timetable/day-sheet.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';

/** Less than this is no waiting, it is carrying (ours, no source). */
const LEAST_WAIT = 3;

/** Minutes between oven and table, its rest taken off; between done and table without an oven. */
export function waitsWord(plan: MealDay, dish: DishPlan, say: Say): string {
  const serving = plan.daySheet.servings.find((each) => each.dish === dish.dish.id);
  if (serving === undefined) return '';
  const [first, last] = [offTheFire(plan, dish), outOf(plan, dish)];
  const waitOf = (out: number) => serving.served - out - dish.recipe.target.rest;
  if (first === undefined || last === undefined) return waitWord(serving.waits, say);
  const [longest, shortest] = [waitOf(first), waitOf(last)];
  return longest - shortest < WORTH_A_RANGE || longest < LEAST_WAIT
    ? waitWord(longest, say)
    : `${Math.max(0, Math.round(shortest))} to ${say.minutes(longest)}`;
}

const waitWord = (waits: number, say: Say) => (waits < LEAST_WAIT ? '' : say.minutes(waits));

/** Of one oven among several: a pot that came out an hour before the last waits an hour. */
export function loadWaitsWord(plan: MealDay, dish: DishPlan, load: string, say: Say): string {
  const serving = plan.daySheet.servings.find((each) => each.dish === dish.dish.id);
  const out = plan.daySheet.spans.find(
    (each) => each.load === load && each.state === 'cooking',
  )?.to;
  if (serving === undefined || out === undefined) return '';
  return waitWord(serving.served - out - dish.recipe.target.rest, say);
}

/** Ovens emptied in one round wait alike [min]. */
const WORTH_A_RANGE = 10;

/** Dishes as they come to the table, soonest first; the order of the menu among equals. */
export const servingsOf = (plan: MealDay) =>
  plan.dishes
    .map((dish) => ({
      dish,
      serving: plan.daySheet.servings.find((each) => each.dish === dish.dish.id),
    }))
    .sort((left, right) => servedAt(left) - servedAt(right));

const servedAt = ({ dish, serving }: { dish: DishPlan; serving: Serving | undefined }): number =>
  serving?.served ?? dish.dish.serveAt;

/** `18:30  rolls  17:55  25 min`. */
export function servedBlocks(plan: MealDay, say: Say): readonly Block[] {
  const isLimited = plan.dishes.some(({ safety }) => safety.isKeptDry !== true);
  const head = ['served', 'dish', 'out', 'waits', ...(isLimited ? ['second call until'] : [])];
  const rows = servingsOf(plan).map(({ dish, serving }) => {
    const out = outOf(plan, dish);
    return [
      say.clock(serving?.served ?? dish.dish.serveAt),
      dish.dish.name,
      out === undefined ? '' : say.clock(out),
      waitsWord(plan, dish, say),
      ...(isLimited ? [outUntil(plan, dish, say)] : []),
    ];
  });
  if (rows.length === 0) return [];
  return [
    { type: 'heading', text: 'On the table', half: true },
    { type: 'table', caption: '', head, numeric: [], rows },
  ];
}

/**
 * What is left may be called out for again until here, unless it is kept hot or cold: so long after the
 * first oven of it was emptied, or after it was ready without one. Plain bread has no such limit.
 */
function outUntil(plan: MealDay, dish: DishPlan, say: Say): string {
  const { safety } = dish;
  const serving = plan.daySheet.servings.find((each) => each.dish === dish.dish.id);
  if (safety.isKeptDry || serving === undefined) return '';
  const outs = plan.daySheet.spans.filter(
    ({ dish: id, state }) => id === dish.dish.id && state === 'cooking',
  );
  const from = outs.length === 0 ? serving.ready : Math.min(...outs.map(({ to }) => to));
  return say.clock(from + safety.outLimit);
}

/** When the first oven of a dish is emptied: from then on it may cool. */
export function offTheFire(plan: MealDay, dish: DishPlan): ClockMinutes | undefined {
  const ends = plan.daySheet.spans
    .filter((span) => span.dish === dish.dish.id && span.state === 'cooking')
    .map(({ to }) => to);
  return ends.length === 0 ? undefined : clockMinutes(Math.min(...ends));
}

/** When the last oven of a dish is emptied; undefined for a dish without fire. */
function outOf(plan: MealDay, dish: DishPlan): number | undefined {
  const ends = plan.daySheet.spans
    .filter((span) => span.dish === dish.dish.id && span.state === 'cooking')
    .map(({ to }) => to as number);
  return ends.length === 0 ? undefined : Math.max(...ends);
}

// What no reading of a broken camp may do, and no plan made from one.

import type { MealPlan } from '#engine';
import type { CampNotRead, CampRead } from './camp-file/read.ts';
import { fileCodes } from './codes.ts';

/** What is wrong with an answer of the reader: a complaint that leaves the cook alone. */
export function faultOfRead(read: CampRead | CampNotRead): string | undefined {
  if (read.ok) {
    const odd = notFiniteIn({ camp: read.camp, menu: read.menu });
    return odd === undefined ? undefined : `not a number at ${odd}`;
  }
  if (read.troubles.length === 0) return 'refused without a word';
  const bare = read.troubles.find(
    ({ code, found, wanted, next }) =>
      !Object.hasOwn(fileCodes, code) || [found, wanted, next].some((words) => words.trim() === ''),
  );
  return bare === undefined ? undefined : `a bare complaint: ${JSON.stringify(bare)}`;
}

/**
 * What is wrong with a plan made of a broken camp: no number, or a dish that is gone unsaid. A
 * refusal that names no dish (an oven that can't be) speaks for all of them.
 */
export function faultOfPlan(plan: MealPlan): string | undefined {
  const odd = notFiniteIn(plan);
  if (odd !== undefined) return `not a number at ${odd}`;
  const lost = plan.menu.dishes.find(
    ({ id }) =>
      !plan.dishes.some((each) => each.dish.id === id) &&
      !plan.refusals.some(({ about }) => about.dish === undefined || about.dish === id),
  );
  return lost === undefined ? undefined : `dish ${lost.id} is neither planned nor refused`;
}

const MOST_VALUES = 5_000_000;

/** Path of the first NaN or Infinity anywhere in a value; undefined where there is none. */
export function notFiniteIn(value: unknown): string | undefined {
  const waiting: { readonly value: unknown; readonly path: string }[] = [{ value, path: '' }];
  for (let seen = 0; waiting.length > 0 && seen < MOST_VALUES; seen += 1) {
    const here = waiting.pop()!;
    if (typeof here.value === 'number' && !Number.isFinite(here.value))
      return `${here.path} (${here.value})`;
    if (typeof here.value !== 'object' || here.value === null) continue;
    for (const [key, inside] of Object.entries(here.value))
      waiting.push({ value: inside, path: `${here.path}.${key}` });
  }
  return undefined;
}

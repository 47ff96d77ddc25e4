// Which two ovens may stand on each other, and what has to be said of every two that do?
// Sources: stackLike (what does not mix), stackSaving (what it brings). The limits are ours.

import type { HeatMethod } from '../menu/recipe.ts';
import { type Notice, notice, type Refusal, refusal } from '../notice/notice.ts';
import type { CoalRequest } from './coal-plan.ts';
import { coalTrouble } from './range.ts';
import { isPotMethod, WANTED_HALF_RANGE } from './split.ts';

interface Stack {
  readonly lower: CoalRequest;
  readonly upper: CoalRequest;
}

/** Wanted heats farther apart than two steps of the charts do not stack; ours. */
const UNLIKE_KELVIN = 2 * WANTED_HALF_RANGE;
const SAME_SIZE_METRES = 0.006;
/** One nominal size, 2 inch. */
const ONE_SIZE_METRES = 0.0508;

/** Dishes that have coals on both sides; others are bottom-heat or top-heat only (stackLike). */
const KINDS: Partial<Record<HeatMethod, string>> = { bake: 'dry', roast: 'dry', simmer: 'pot' };

/**
 * Why these two can not be planned as a stack, or undefined.
 *
 * @refuses  COALS_STACK_METHOD_UNFIT, COALS_STACK_UNLIKE, COALS_STACK_TOP_HEAVY,
 *           COALS_STACK_PINS_CLASH
 */
export const stackTrouble = (stack: Stack): Refusal | undefined =>
  coalTrouble(stack.lower) ?? coalTrouble(stack.upper) ?? mixTrouble(stack) ?? sizeTrouble(stack);

const conflictsOf = ({ lower, upper }: Stack) => [`loads.${lower.loadId}`, `loads.${upper.loadId}`];

const mixTrouble = (stack: Stack): Refusal | undefined => {
  const { lower, upper } = stack;
  const unfit = [lower, upper].find(
    ({ wish }) => KINDS[wish.method] === undefined || wish.brownFirst !== undefined,
  );
  if (unfit)
    return refusal('COALS_STACK_METHOD_UNFIT', conflictsOf(stack), { oven: unfit.oven.id });
  const isUnlike =
    KINDS[lower.wish.method] !== KINDS[upper.wish.method] ||
    lower.fuel.kind !== upper.fuel.kind ||
    Math.abs(lower.wish.wanted - upper.wish.wanted) > UNLIKE_KELVIN;
  const values = { lowerKelvin: lower.wish.wanted, upperKelvin: upper.wish.wanted };
  if (isUnlike)
    return refusal('COALS_STACK_UNLIKE', conflictsOf(stack), { oven: upper.oven.id }, values);
  const pins = [lower.pins.above, upper.pins.below].filter((pin) => pin !== undefined);
  if (new Set(pins).size < 2) return;
  return refusal('COALS_STACK_PINS_CLASH', conflictsOf(stack), { oven: upper.oven.id });
};

const sizeTrouble = ({ lower, upper }: Stack): Refusal | undefined => {
  if (upper.oven.diameter <= lower.oven.diameter + SAME_SIZE_METRES) return;
  const conflicts = [`ovens.${lower.oven.id}`, `ovens.${upper.oven.id}`];
  return refusal('COALS_STACK_TOP_HEAVY', conflicts, { oven: upper.oven.id });
};

/** The caution that every stack carries, and what is doubtful about this one. */
export const stackNotices = (
  { lower, upper }: Stack,
  mean: { readonly lower: number; readonly upper: number },
): readonly Notice[] => {
  const notices: Notice[] = [notice('COALS_STACK_CAUTION', 'doubt', { oven: lower.oven.id })];
  const smallerBy = lower.oven.diameter - upper.oven.diameter;
  if (smallerBy > ONE_SIZE_METRES + SAME_SIZE_METRES)
    notices.push(notice('COALS_STACK_SIZES_DIFFER', 'doubt', { oven: upper.oven.id }));
  if (lower.wish.minutes < upper.wish.minutes)
    notices.push(notice('COALS_STACK_LOWER_FIRST', 'doubt', { oven: lower.oven.id }));
  if ([lower, upper].some(({ wish }) => wish.method === 'bake'))
    notices.push(notice('COALS_STACK_EVEN_HEAT', 'doubt', { oven: upper.oven.id }));
  return [...notices, ...offNotice(lower, mean.lower), ...offNotice(upper, mean.upper)];
};

const offNotice = ({ oven, wish }: CoalRequest, meanKelvin: number): readonly Notice[] => {
  const off = meanKelvin - wish.wanted;
  // Its boil caps a pot; iron that is hotter while it comes up is no fault.
  if (Math.abs(off) <= WANTED_HALF_RANGE || (isPotMethod(wish.method) && off > 0)) return [];
  const values = { meanKelvin, wantedKelvin: wish.wanted };
  return [notice('COALS_STACK_HEAT_OFF', 'doubt', { oven: oven.id }, values)];
};

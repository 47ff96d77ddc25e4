// A household measure as a person says it: a whole number and a fraction of a cup, spoon or piece.

import { fractionText } from './fraction.ts';
import type { Grams } from './unit.ts';

export interface CookMeasure {
  /** 2.75 for "2 3/4". Always a multiple of the measure's smallest honest step. */
  readonly amount: number;
  readonly measure: 'cup' | 'tbsp' | 'tsp' | 'each';
}

export type GramsPerMeasure = Readonly<Partial<Record<CookMeasure['measure'], Grams>>>;

interface Spoon {
  readonly measure: CookMeasure['measure'];
  /** Smallest amount that is measured with it. */
  readonly least: number;
  /** Past this nobody counts spoons. */
  readonly most: number;
  readonly step: number;
}

// Common practice, no source: what a set of cups and spoons can honestly measure.
const SPOONS: readonly Spoon[] = [
  { measure: 'each', least: 1, most: Number.POSITIVE_INFINITY, step: 1 },
  { measure: 'cup', least: 0.25, most: Number.POSITIVE_INFINITY, step: 0.25 },
  { measure: 'tbsp', least: 1, most: 16, step: 0.5 },
  { measure: 'tsp', least: 0.125, most: 12, step: 0.25 },
  { measure: 'tsp', least: 0.125, most: 0.625, step: 0.125 },
];
/** A larger measure is taken while it misses by no more than this; ours. */
const GOOD_ENOUGH = 0.04;

/**
 * The nearest amount that a cook's cups and spoons can measure.
 *
 * The largest measure that comes within 4 % is taken, else the one that comes nearest.
 *
 * @param mass             what is wanted      [g]
 * @param gramsPerMeasure  of this food
 * @returns   undefined where no measure of this food comes near: it is weighed, or it is a pinch
 * @example   450 g at 120 g a cup → 3¾ cups
 */
export function cookMeasureFor(
  mass: Grams,
  gramsPerMeasure: GramsPerMeasure,
): CookMeasure | undefined {
  const candidates = SPOONS.flatMap((spoon) => candidate(spoon, mass, gramsPerMeasure));
  const good = candidates.find(({ miss }) => miss <= GOOD_ENOUGH);
  const nearest = candidates.reduce<Candidate | undefined>(
    (best, each) => (best && best.miss <= each.miss ? best : each),
    undefined,
  );
  return (good ?? nearest)?.said;
}

interface Candidate {
  readonly said: CookMeasure;
  /** Share of the wanted mass by which it is off. */
  readonly miss: number;
}

function candidate(
  { measure, least, most, step }: Spoon,
  mass: Grams,
  gramsPerMeasure: GramsPerMeasure,
): readonly Candidate[] {
  const one = gramsPerMeasure[measure];
  if (one === undefined || !(0 < one) || !(0 < mass)) return [];
  const amount = Math.round(mass / one / step) * step;
  if (!(least <= amount && amount <= most)) return [];
  return [{ said: { amount, measure }, miss: Math.abs((amount * one) / mass - 1) }];
}

/**
 * As it stands in a recipe.
 *
 * @example   { amount: 2.75, measure: 'cup' } → "2¾ cups"
 */
export function cookMeasureText(
  { amount, measure }: CookMeasure,
  style: 'sign' | 'plain' = 'sign',
): string {
  const number = fractionText(amount, style);
  if (measure === 'each') return number;
  return `${number} ${measure === 'cup' && 1 < amount ? 'cups' : measure}`;
}

// How long a dry mix keeps: as long as its weakest part.
// Sources: mixKeeping, wholeGrainKeeping, missouriStaples (grades A and B), dryMilkInMix (D).

import table from '../../../data/dry-mixes.json' with { type: 'json' };
import type { Ingredient } from '../../menu/recipe.ts';

export interface Keeping {
  /** Sealed, dry and cool; days. */
  readonly homeDays: number;
  /** In a bag in a pack or a warm car; days. */
  readonly carriedDays: number;
  readonly because: string;
  readonly source: string;
}

/** The weakest part of a bag: the fewest days when carried, then at home. */
export function keepingOf(contents: readonly Ingredient[]): Keeping {
  const keys = ['plain', ...contents.flatMap(weaknessOf)];
  return keys.map(keepingFor).reduce((worst, each) => (isWorse(each, worst) ? each : worst));
}

/** A tin of leavening, salt and sugar without flour. */
export const tinKeeping = (): Keeping => keepingFor('tin');

const isWorse = (one: Keeping, other: Keeping) =>
  one.carriedDays < other.carriedDays ||
  (one.carriedDays === other.carriedDays && one.homeDays < other.homeDays);

const WHOLE_GRAIN = /\b(whole|wholemeal|rye|oats?|oatmeal|cornmeal|bran|graham)\b/i;

function weaknessOf({ name, part }: Ingredient): readonly string[] {
  if (part === 'dry-milk') return ['dry-milk'];
  if (part === 'yeast') return ['yeast'];
  const isGrain = part === 'flour' || part === 'meal' || part === 'grain';
  return isGrain && WHOLE_GRAIN.test(name) && !/degermed/i.test(name) ? ['whole-grain'] : [];
}

function keepingFor(key: string): Keeping {
  const row = table.rows.find((each) => each.key === key);
  if (row === undefined) throw new RangeError(`no keeping for "${key}"`);
  const { homeDays, carriedDays, because, source } = row;
  return { homeDays, carriedDays, because, source };
}

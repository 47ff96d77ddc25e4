// A night in the cold in a recipe's own words: how long, how cold, and what comes behind it.
// Sources: the words are common practice, no source; 4 °C where they name no degrees, coldFerment.

import {
  fromCelsius,
  fromFahrenheit,
  type Kelvin,
  type Minutes,
  toCelsius,
} from '../quantity/unit.ts';
import type { Recipe, RecipeStep } from './recipe.ts';

const COLD =
  /\bin (?:the |a |your )?(?:cold|fridge|refrigerator|cooler|cool ?box|ice ?box|creek|larder)\b|^fridge\b|\bin fridge\b|\brefrigerate|\bretard|\bchill(?:ed)?\b/iu;
const DEGREES =
  /\b(?:at|in|to|about|of|\()\s?(?:about |around )?(\d{1,3}) ?(?:°|º|degrees?)? ?([FC])\b/iu;

/** Does this step leave the dough in the cold? */
export const waitsCold = (say: string): boolean => COLD.test(say);

/** Degrees that a step names for where the dough stands. */
export function degreesIn(say: string): Kelvin | undefined {
  const found = DEGREES.exec(say);
  if (!found) return undefined;
  const degrees = Number(found[1]);
  return /f/i.test(found[2]!) ? fromFahrenheit(degrees) : fromCelsius(degrees);
}

export interface ColdWait {
  readonly place: Kelvin;
  readonly minutes: Minutes;
  /** It is the dough's only rise before shaping: there was no warm one. */
  readonly isFirstRise: boolean;
}

/** Warmer than this is no cold: a dough rises in it, slowly. Ours. */
const MOST_CELSIUS = 12;
const LEAST_CELSIUS = -5;
/** Half an hour in a cool box only firms the fat; ours. */
const LEAST_MINUTES = 60;
const USUAL = fromCelsius(4); // coldFerment

/** The last cold wait of a yeast dough that a rise in the warm follows; undefined without one. */
export function coldWaitOf({ kind, steps }: Pick<Recipe, 'kind' | 'steps'>): ColdWait | undefined {
  const end = steps.findLastIndex((step) => step.kind === 'second-rise');
  if (kind !== 'yeast-bread' || end < 0) return undefined;
  const before = steps.slice(0, end);
  const at = before.findLastIndex(isColdWait);
  const wait = before[at];
  if (wait === undefined || before.slice(at + 1).some(({ kind: each }) => each === 'rise')) {
    return undefined;
  }
  const isFirstRise = !before.slice(0, at).some((step) => step.kind === 'rise');
  return { place: placeOf(wait), minutes: wait.minutes, isFirstRise };
}

const isColdWait = ({ kind, say, minutes }: RecipeStep) =>
  (kind === 'rest' || kind === 'rise') && LEAST_MINUTES <= minutes && waitsCold(say);

function placeOf({ say, keptAt }: RecipeStep): Kelvin {
  const said = keptAt ?? degreesIn(say);
  if (said === undefined) return USUAL;
  const celsius = toCelsius(said);
  return LEAST_CELSIUS <= celsius && celsius <= MOST_CELSIUS ? said : USUAL;
}

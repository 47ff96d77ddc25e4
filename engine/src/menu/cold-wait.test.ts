import { describe, expect, it } from 'vitest';
import { fromCelsius, fromFahrenheit } from '../quantity/unit.ts';
import { coldWaitOf } from './cold-wait.ts';
import { readRecipeText } from './read-recipe.ts';

const LIST = 'Rolls\n500 g bread flour\n320 g water\n10 g salt\n4 g instant yeast\n\n';
const END = ' Shape into 12 rolls. Let rise 1 hour. Bake at 400 F for 25 minutes.';

function waitIn(work: string) {
  const read = readRecipeText(`${LIST}${work}${END}`);
  if ('refused' in read || read.recipe === undefined) throw new Error('not read');
  return coldWaitOf(read.recipe);
}

describe('a night in the cold, as writers tell it (common practice, no source)', () => {
  it.each([
    ['Mix. Let rise 1 hour. Refrigerate overnight.', 600, fromCelsius(4), false],
    ['Mix. Let it double. Put in the fridge for 12 hours.', 720, fromCelsius(4), false],
    [
      'Mix. Let rise 1 hour. Let it stand overnight in the cooler at 45 F.',
      600,
      fromFahrenheit(45),
      false,
    ],
    ['Mix. Refrigerate overnight. Let rise 2 hours in a warm place.', 600, fromCelsius(4), true],
    ['Mix well. Let it rise in the refrigerator overnight.', 600, fromCelsius(4), true],
  ] as const)('is read in: %s', (work, minutes, place, isFirstRise) => {
    const wait = waitIn(work)!;
    expect(wait.place).toBeCloseTo(place, 6);
    expect(wait.isFirstRise).toBe(isFirstRise);
    expect(wait.minutes).toBeGreaterThan(450);
    if (!/overnight/.test(work)) expect(wait.minutes).toBe(minutes);
  });

  it.each([
    'Mix. Let rise 1 hour.',
    'Mix. Chill 30 minutes. Let rise 1 hour.',
    'Mix with cold water. Let rise 1 hour.',
  ])('is not read in: %s', (work) => expect(waitIn(work)).toBeUndefined());
});

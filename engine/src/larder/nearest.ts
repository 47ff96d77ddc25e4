// Which names of the larder come nearest to a word that it does not know?
// Source: textbook, the distance of letters left out, put in, changed or swapped.

import { allFoods } from './all-foods.ts';
import type { Food } from './food.ts';
import { wordsOf } from './name.ts';

const MOST_OFFERED = 3;
const LONGEST = 40;

/** Up to three foods with names like it, nearest first; none where nothing comes near. */
export function nearestFoods(name: string): readonly Food[] {
  const asked = wordsOf(name.slice(0, LONGEST));
  if (asked.length === 0) return [];
  const scored = allFoods
    .map((food) => ({
      food,
      score: Math.max(...namesOf(food).map((each) => likeness(asked, each))),
    }))
    .filter(({ score }) => 0.45 <= score)
    .toSorted((one, other) => other.score - one.score);
  return scored.slice(0, MOST_OFFERED).map(({ food }) => food);
}

const namesOf = (food: Food) => [food.name, ...food.alsoCalled].map(wordsOf);

/** Share of words that stand in both, a word counting by how few letters differ. */
function likeness(asked: readonly string[], name: readonly string[]): number {
  const best = (word: string, among: readonly string[]) =>
    Math.max(0, ...among.map((other) => wordLikeness(word, other)));
  const sum = asked.reduce((total, word) => total + best(word, name), 0);
  return sum / Math.max(asked.length, name.length);
}

function wordLikeness(one: string, other: string): number {
  const longest = Math.max(one.length, other.length);
  if (one[0] !== other[0] && one[1] !== other[1]) return 0;
  const alike = 1 - lettersApart(one, other) / longest;
  return alike < 0.6 ? 0 : alike;
}

/** Letters left out, put in, changed, or swapped with their neighbour. */
export function lettersApart(one: string, other: string): number {
  let [before, last] = [[] as number[], Array.from({ length: other.length + 1 }, (_, at) => at)];
  for (let row = 1; row <= one.length; row++) {
    const next = [row];
    for (let column = 1; column <= other.length; column++) {
      const change = one[row - 1] === other[column - 1] ? 0 : 1;
      const swaps = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      next[column] = Math.min(
        last[column]! + 1,
        next[column - 1]! + 1,
        last[column - 1]! + change,
        swaps && 1 < row && 1 < column ? before[column - 2]! + 1 : Number.POSITIVE_INFINITY,
      );
    }
    [before, last] = [last, next];
  }
  return last[other.length]!;
}

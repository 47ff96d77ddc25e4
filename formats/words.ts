// What is said to the cook about a camp file. Same shape as the engine's words, so that a shell can
// put both into one list.

import type { Words } from '#engine';
import type { FileTrouble } from './camp-file/trouble.ts';
import { fileCodes } from './codes.ts';

/** `ovens[2].diameter: found 12, wanted a length with its unit …. Write …` */
export function troubleSentence({ path, found, wanted, next }: FileTrouble): string {
  const where = path === '' ? 'The file' : path;
  return `${where}: found ${found}, wanted ${wanted}. ${next}`;
}

const ASSUMED: Readonly<Record<string, string>> = {
  fuel: 'what you burn',
  'piece-mass': 'what one briquette weighs',
  chimneys: 'how many chimneys you have',
  hands: 'who helps',
  air: 'how warm the air is',
  wind: 'how the wind blows',
  ground: 'what the ground is',
  elevation: 'how high the camp lies',
  depth: 'how deep each oven is',
};

const noticeWords: Words = {
  FILE_MIGRATED: () =>
    'This camp was saved by an older Emberwright. It is carried over; save it to keep it so.',
  FILE_ASSUMED: ({ what }) =>
    `The camp does not say ${ASSUMED[String(what)] ?? String(what)}: the usual is taken.`,
  FILE_DATE_NOT_SAID: () => 'The camp names no date, so dusk is not reckoned for your day.',
  FILE_DATE_FAR: ({ date, days }) =>
    `The camp is dated ${date}, more than a year ${Number(days) < 0 ? 'ago' : 'ahead'}: check the year.`,
  FILE_FOOD_UNKNOWN: (_, { ingredient = 'an ingredient' }) =>
    `Read the label of ${ingredient}: it is not in the larder, so nobody knows what is in it.`,
  FILE_WEIGHT_RECKONED: ({ massGrams }, { ingredient = 'an ingredient' }, say) =>
    `${capital(ingredient)}: ${say.mass(Number(massGrams))} reckoned from the measure. Weigh it once.`,
};

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** One sentence for every code of `fileCodes`. */
export const fileWords: Words = {
  ...Object.fromEntries(
    Object.entries(fileCodes).map(([code, { when, next }]) => [code, () => `${when} ${next}`]),
  ),
  ...noticeWords,
};

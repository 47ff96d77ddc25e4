// What no reading of a broken camp may do, and no plan made from one.

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

// How are the coals shared between lid and floor? By the method of heat.
// Source: splitByMethod (two pages agree, two differ); keep-warm and fry: common practice.

import type { HeatMethod } from '../menu/recipe.ts';

/** Share of the coals on the lid. */
export const shareAboveFor = (method: HeatMethod): number => SHARE_ABOVE[method];

const SHARE_ABOVE: Readonly<Record<HeatMethod, number>> = {
  bake: 2 / 3,
  roast: 1 / 2,
  simmer: 1 / 3,
  boil: 0,
  fry: 0,
  'keep-warm': 1, // three or four on the lid, none below: common practice, no source
  none: 0,
};

/** One step of the charts, 25 F, to each side: the range that a cook calls "at heat". */
export const WANTED_HALF_RANGE = 14; // K

/** Methods in which the food is turned against the coals. */
export const isBaked = (method: HeatMethod): boolean => method === 'bake' || method === 'roast';

export const isPotMethod = (method: HeatMethod): boolean =>
  method === 'simmer' || method === 'boil' || method === 'fry';

// How are the coals shared between lid and floor? By the method of heat.
// Source: splitByMethod (two pages agree, two differ); keep-warm: common practice, no source.

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

/** Water is brought to its boil and kept there. */
export const isPotMethod = (method: HeatMethod): boolean =>
  method === 'simmer' || method === 'boil';

/** Lid off from beginning to end; what is wanted is then the heat of the floor that fries. */
export const isOpenMethod = (method: HeatMethod): boolean => method === 'fry';

/** All coals lie below: there is no lid, or nothing that its heat would do (splitByMethod). */
export const hasBareLid = (method: HeatMethod): boolean => method === 'boil' || method === 'fry';

/** Iron is hot before the food goes in: as wished, and always under fat (common practice). */
export const isHeatedFirst = (wish: {
  readonly method: HeatMethod;
  readonly preheat: boolean;
}): boolean => wish.preheat || isOpenMethod(wish.method);

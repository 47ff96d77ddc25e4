// What stands for a dough of the cook's own until they say.

import type { OwnKind, TonightFood } from '../worker/messages.ts';

export type OwnFood = Extract<TonightFood, { kind: OwnKind }>;

export const INCH_METRES = 0.0254;
export const OUNCE_GRAMS = 28.349523125;

/** Common practice, no source: a dough that rises within a regular 12-inch oven. */
export const usualOwn = (isUs: boolean): OwnFood => ({
  kind: 'yeast-bread',
  thicknessMetres: isUs ? INCH_METRES : 0.025,
  massGrams: isUs ? 28 * OUNCE_GRAMS : 800,
});

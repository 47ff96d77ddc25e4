// What does the sun add to a black lid? Light that falls on the iron left bare between the coals.
// Source: coalsOvenModelNotes 5.4, an estimate: some 60 W on a bare 12 inch lid at the most.
// Weak spot: a low sun is left out; the cook says how much of a high, clear one there is.

import { parameter } from './parameters.ts';

const HIGH_SUN_WATTS_PER_SQUARE_METRE = 800; // on the level, clear sky; an estimate
/** Black iron takes light up as it gives heat off. */
const TAKEN_UP = parameter('emissivityOutside');

/** Heat that the sun gives bare iron seen from above [W]; 0 where no sun is said. */
export const sunWatts = (sun: number | undefined, bareSquareMetres: number): number =>
  sun === undefined ? 0 : sun * TAKEN_UP * HIGH_SUN_WATTS_PER_SQUARE_METRE * bareSquareMetres;

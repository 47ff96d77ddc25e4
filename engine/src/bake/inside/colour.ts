// From the change of colour that the kinetics count to the words that a cook uses.
// Source: zanoni1995 (kinetics; 52 is burnt); where the words lie between is tuned, see below.

import type { DoneTarget } from '../bake-plan.ts';
import { BURNT_COLOUR } from './constants.ts';

/** Change of colour by the sum of rates over time (zanoni1995). */
export const colourOf = (browning: number) => BURNT_COLOUR * (1 - Math.exp(-browning));

export type CrustColour = NonNullable<DoneTarget['top']>;

/**
 * Least change of colour of each word. Brown is tuned on half-inch biscuits at 450 F, 10 … 15 min
 * (published-bake-times), in a kitchen oven whose walls are as hot as its air: 7, reached in 14 min. The
 * kinetics are of plain dough; milk, fat and sugar brown sooner, and that is in the mark. Straw and dark
 * are judged beside it; 45 is near enough to 52 to taste of it.
 */
export const COLOUR_MARKS = { straw: 4, brown: 7, dark: 25, burnt: 45 } as const;

/** How a face looks. */
export function colourWord(colour: number): 'pale' | keyof typeof COLOUR_MARKS {
  if (colour < COLOUR_MARKS.straw) return 'pale';
  if (colour < COLOUR_MARKS.brown) return 'straw';
  if (colour < COLOUR_MARKS.dark) return 'brown';
  return colour < COLOUR_MARKS.burnt ? 'dark' : 'burnt';
}

// A dose of bleach as it is measured out: by spoon and fluid ounce, or by millilitre.

import { inUnit } from '../../quantity/convert.ts';
import type { CubicMetres } from '../../quantity/unit.ts';
import type { Say } from '../say.ts';
import { decimal, fraction, NO_BREAK } from '../speak-number.ts';

/** `1 1/4 tsp`, `2 tbsp`, `7 fl oz`; `4.6 ml`, `61 ml`. Never rounded to nothing. */
export function doseWord(volume: CubicMetres, say: Say): string {
  const millilitres = inUnit(volume, 'millilitre');
  if (say.measures === 'metric') {
    return `${decimal(millilitres, millilitres < 20 ? 1 : 0)}${NO_BREAK}ml`;
  }
  const teaspoons = millilitres / TEASPOON;
  if (teaspoons < 3) return `${fraction(Math.max(teaspoons, 0.125), 8)}${NO_BREAK}tsp`;
  if (teaspoons < 12) return `${fraction(teaspoons / 3, 4)}${NO_BREAK}tbsp`;
  return `${fraction(teaspoons / 6, 2)}${NO_BREAK}fl${NO_BREAK}oz`;
}

const TEASPOON = 4.92892159375; // ml, exact

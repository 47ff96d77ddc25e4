// Beans that are poison half cooked: phytohaemagglutinin needs a hard boil, and a slow simmer below
// it makes it worse.

import type { Formula } from '../formula/formula.ts';
import { minutes } from '../quantity/unit.ts';

/** Dry kidney and broad beans: at least this long at a rolling boil (fda-bad-bug-book). */
export const FULL_BOIL = minutes(30);

/** Raw kidney, cannellini or broad beans; a tin or a home-cooked bean has been boiled. */
export function needsFullBoil(formula: Formula): boolean {
  return formula.lines.some(({ ingredient }) => {
    const words = `${ingredient.name} ${ingredient.food ?? ''}`.toLowerCase();
    return /kidney|cannellini|broad bean|fava/.test(words) && !BOILED.test(words);
  });
}

const BOILED = /\b(canned|tinned|tin|cooked|boiled|jar|jarred)\b/;

// Is this a dough at all? Nothing is counted, and no coals are laid, for what is none.
// Sources: herr41 (a cup of sifted flour), battersAndDoughs (the nearest dough that works).

import { type Refusal, refusal } from '../notice/notice.ts';
import { flourIn, shareOf, type WeighedIngredient } from './dough.ts';

/** One cup of liquid to one of sifted flour is a pour batter: 237 to 116 g (herr41); and doubt. */
export const MOST_WATER = 2.5;
const POUR_BATTER_WATER = 237 / 116;

/**
 * Undefined for a dough or a batter.
 *
 * @refuses  FORMULA_AMOUNT_IMPOSSIBLE — an amount is negative or no number
 * @refuses  FORMULA_FLOUR_MISSING — nothing to count the rest against
 * @refuses  FORMULA_WETTER_THAN_BATTER — past any batter; names the water that would still do
 */
export function doughTrouble(lines: readonly WeighedIngredient[]): Refusal | undefined {
  const wrong = lines.find((line) => !Number.isFinite(line.grams) || line.grams < 0);
  if (wrong !== undefined) return impossible(wrong);
  const flour = flourIn(lines);
  const water = waterIn(lines);
  const batch = lines.reduce((sum, line) => sum + line.grams, 0);
  if (!(LEAST_FLOUR * batch < flour)) return withoutFlour(water);
  return MOST_WATER * flour < water ? tooWet(water / flour, flour) : undefined;
}

/** A crumb of it, as of a weight that could not be read, is none; ours. */
const LEAST_FLOUR = 0.02;

const waterIn = (lines: readonly WeighedIngredient[]) =>
  lines.reduce((sum, line) => sum + shareOf(line.ingredient).water * line.grams, 0);

const impossible = ({ ingredient, grams: mass }: WeighedIngredient) =>
  refusal(
    'FORMULA_AMOUNT_IMPOSSIBLE',
    [ingredient.name],
    { ingredient: ingredient.name },
    { massGrams: mass },
  );

/** The nearest thing that works: the flour that this much water makes into a soft dough. */
function withoutFlour(water: number) {
  const nearest = 0 < water ? water / SOFT_DOUGH_WATER : 0;
  return refusal('FORMULA_FLOUR_MISSING', ['flour'], {}, { flourGrams: Math.round(nearest) });
}

const SOFT_DOUGH_WATER = 0.63; // one of liquid to three of flour, battersAndDoughs

const tooWet = (hydration: number, flour: number) =>
  refusal(
    'FORMULA_WETTER_THAN_BATTER',
    ['water', 'flour'],
    {},
    { hydrationRatio: hydration, waterGrams: Math.round(POUR_BATTER_WATER * flour) },
  );

// What there is to say about the powder in the tin and the soda in the bread.
// Sources: fizzTest (D), sodaBreads (B) for how much soda published breads leave, sodaTaste (B).

import { type Notice, notice } from '../../notice/notice.ts';
import type { Formula } from '../formula.ts';
import { type FizzTest, insteadOfPowder, OPENED_DOUBT_MONTHS } from './fizz.ts';
import type { GasReport } from './gas-report.ts';

/** What the cook knows of the tin. */
export interface PowderKept {
  readonly fizz?: FizzTest;
  /** Months since it was opened. */
  readonly openedMonths?: number;
}

/**
 * Published soda breads leave up to 1.2 % of the flour as soda by this reckoning (sodaBreads:
 * 1.67 % of soda with 69 % of buttermilk), and are eaten: only more than that is told.
 */
export const MOST_SODA_LEFT = 0.012;

export function powderNotices(
  { dish, recipe, lines }: Formula,
  gas: GasReport,
  kept: PowderKept = {},
): readonly Notice[] {
  const about = { dish, recipe };
  const powder = lines
    .filter(({ ingredient }) => ingredient.part === 'powder')
    .reduce((sum, line) => sum + line.grams, 0);
  const { soda, tartar } = insteadOfPowder(powder as Parameters<typeof insteadOfPowder>[0]);
  const instead = { sodaGrams: soda, tartarGrams: tartar };
  const months = kept.openedMonths ?? 0;
  const isOld = kept.fizz === undefined && OPENED_DOUBT_MONTHS.least < months;
  return [
    ...(0 < powder && kept.fizz === 'none'
      ? [notice('FORMULA_POWDER_DEAD', 'stop', about, instead)]
      : []),
    ...(0 < powder && kept.fizz === 'weak'
      ? [notice('FORMULA_POWDER_WEAK', 'doubt', about, instead)]
      : []),
    ...(0 < powder && isOld ? [notice('FORMULA_POWDER_OLD', 'doubt', about, { months })] : []),
    ...(MOST_SODA_LEFT < gas.sodaLeftOfFlour
      ? [
          notice('FORMULA_SODA_LEFT', 'doubt', about, {
            sodaGrams: gas.sodaLeft,
            leftRatio: gas.sodaLeftOfFlour,
          }),
        ]
      : []),
  ];
}

// So much of it: which size of oven holds it, and which size wants more ovens?
// Source: ovenSizing for the sizes; only those that it vouches for.

import ovenTable from '../../../data/ovens.json' with { type: 'json' };
import type { CampOven } from '../../camp/camp.ts';
import { isRefusal } from '../../notice/notice.ts';
import { fromUnit } from '../../quantity/convert.ts';
import { type Grams, type Ratio, ratio } from '../../quantity/unit.ts';
import { nominalOven } from '../nominal-oven.ts';
import type { FitAsk } from './fit.ts';
import { whatFits } from './what-fits.ts';

export interface SizeFit {
  readonly oven: CampOven;
  /** Whole ovens of this size that hold it all. */
  readonly ovens: number;
  /** How full each of them is then, of what goes in; 1 is all. */
  readonly fill: Ratio;
}

/** By capacity, smallest first; sizes that hold not a piece of it are left out. */
export function sizesFor(mass: Grams, ask: FitAsk): readonly SizeFit[] {
  return usualOvens()
    .flatMap((oven) => {
      const fit = whatFits(oven, ask);
      if (isRefusal(fit) || fit.mass <= 0) return [];
      const ovens = Math.max(1, Math.ceil(mass / fit.mass - 1e-9));
      return [{ oven, ovens, fill: ratio(mass / ovens / fit.mass) }];
    })
    .sort((a, b) => a.oven.capacity - b.oven.capacity);
}

const usualOvens = (): readonly CampOven[] =>
  ovenTable.rows
    .filter((row) => row.grade !== 'D')
    .map((row) =>
      nominalOven(fromUnit(row.diameterInches, 'inch'), row.style === 'deep' ? 'deep' : 'regular'),
    );

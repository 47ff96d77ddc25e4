// With what a portion is served: which ladle, which numbered scoop, how often.
// Source: servingBasics; a scoop's number is how many level ones make a quart.

import table from '../../../data/serving-tools.json' with { type: 'json' };
import { fromUnit, inUnit } from '../../quantity/convert.ts';
import { type CubicMetres, cubicMetres } from '../../quantity/unit.ts';

export interface ServedWith {
  readonly tool: 'ladle' | 'scoop';
  /** US fluid ounces of the ladle; the number of the scoop. */
  readonly size: number;
  /** Level fills for one portion. */
  readonly times: number;
  /** What one fill holds. */
  readonly holds: CubicMetres;
}

/** What a tool holds, level. */
export const toolHolds = (tool: ServedWith['tool'], size: number): CubicMetres =>
  tool === 'ladle' ? fromUnit(size, 'us-fluid-ounce') : fromUnit(1 / size, 'us-quart');

const MOST_TIMES = 3; // more fills than this nobody counts in a line; ours

/**
 * The tool that comes nearest to one portion, with as few fills as may be.
 *
 * @returns  undefined where even three fills of the largest fall short by more than an eighth
 */
export function servedWith(portion: CubicMetres, tool: ServedWith['tool']): ServedWith | undefined {
  const sizes = tool === 'ladle' ? table.ladles : table.scoops;
  const offers = sizes.flatMap((size) =>
    Array.from({ length: MOST_TIMES }, (_, index) => {
      const holds = toolHolds(tool, size);
      return { tool, size, times: index + 1, holds, off: offBy(holds * (index + 1), portion) };
    }),
  );
  const [best] = offers
    .filter(({ off }) => off <= FAR_OFF)
    .toSorted((one, other) => cost(one) - cost(other));
  if (best === undefined) return undefined;
  const { off: _off, ...served } = best;
  return served;
}

const FAR_OFF = 0.125; // ours: an eighth of a portion more or less is not seen on a plate
const ONE_MORE_FILL = 0.06; // ours: worth so much of a portion, so that one ladle beats two exact ones

const cost = ({ off, times }: { readonly off: number; readonly times: number }) =>
  off + ONE_MORE_FILL * (times - 1);

const offBy = (served: number, wanted: number) => Math.abs(served / wanted - 1);

/** So much of a pot is one portion. */
export const portionVolume = (whole: CubicMetres, portions: number): CubicMetres =>
  cubicMetres(0 < portions ? whole / portions : 0);

export const inCups = (volume: CubicMetres) => inUnit(volume, 'us-cup');

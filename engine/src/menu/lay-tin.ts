// A dough or batter in its own tin, which stands on a rack in the oven.
// Sources: beranbaum2009 for how full; sizes of usual tins from memory.
// Weak spot: a tin's walls are taken as upright, which makes it hold about a tenth too much.

import type { CampOven } from '../camp/camp.ts';
import { cubicMetres, metres, ratio, squareMetres } from '../quantity/unit.ts';
import { floorOf, riseOf } from './geometry.ts';
import type { Tin } from './in-oven.ts';
import type { Lying } from './lay.ts';
import type { Lot } from './lots.ts';
import { heightFill, heightsIn } from './under-lid.ts';

/** A batter is poured no higher than two thirds of its tin (beranbaum2009). */
const MOST_OF_TIN = 2 / 3;

/** A finger all round, so that the air goes about a tin and it can be lifted; judged. */
const ROUND_TIN_GAP_METRES = 0.012;

// 8 1/2 × 4 1/2 × 2 3/4 inches, and a round tin two inches high; from memory, no source.
const loafTin = (): Tin => ({ length: metres(0.216), width: metres(0.114), height: metres(0.07) });
const ROUND_TIN_HEIGHT_METRES = 0.051;

/** The tin that was named, else a loaf tin for a loaf, else a round one that just goes in. */
export function tinOf(oven: CampOven, { inOven, recipe, lie }: Lot): Tin {
  if (inOven.tin !== undefined) return inOven.tin;
  if (lie === 'round' && recipe.kind === 'yeast-bread') return loafTin();
  const width = metres(Math.max(0.01, floorOf(oven) - 2 * ROUND_TIN_GAP_METRES));
  return { length: width, width, height: metres(ROUND_TIN_HEIGHT_METRES), isRound: true };
}

/** Where it needs most room: the diameter of a round tin, the diagonal of a long one. */
const acrossOf = ({ length, width, isRound }: Tin): number =>
  isRound === true ? Math.max(length, width) : Math.hypot(length, width);

const floorAreaOf = ({ length, width, isRound }: Tin): number =>
  isRound === true ? (Math.PI / 4) * length * width : length * width;

/**
 * One tin an oven: what its walls do not hold it may hold above them, if there is room under the lid.
 * `fill` above 1: the tin does not go in, is too full, or would rise against the lid.
 */
export function layTin(oven: CampOven, lot: Lot): Lying {
  const { inOven, recipe, mass, count } = lot;
  const tin = tinOf(oven, lot);
  const { rise, profile, gramsPerCubicMetre } = riseOf(recipe.kind);
  const volume = mass / gramsPerCubicMetre;
  const area = floorAreaOf(tin);
  const thickness = volume / count / area;
  const risen = (thickness * rise) / profile;
  const fills = [
    heightFill(oven, inOven, risen),
    thickness / (MOST_OF_TIN * tin.height),
    acrossOf(tin) <= floorOf(oven) ? 0 : 1 + acrossOf(tin) / floorOf(oven),
  ];
  return {
    shape: 'disc',
    ...heightsIn(oven, inOven, { thickness, risen }),
    planArea: squareMetres(area * count),
    volume: cubicMetres(volume),
    pieces: [{ x: metres(0), y: metres(0), diameter: metres(2 * Math.sqrt(area / Math.PI)) }],
    fill: ratio(Math.max(...fills, count === 1 ? 0 : count)),
    inOven,
  };
}

// A batch over the ovens at hand: how much into each, how thick then, what is left over, and what may
// be done with that. Ovens of different size share by area, so that all bake in the same minutes.
// Source: plane geometry; what goes in as menu/fit/what-fits.ts has it.

import type { CampOven } from '../../camp/camp.ts';
import { isRefusal, type OrRefusal } from '../../notice/notice.ts';
import { type Grams, grams, type Metres, metres } from '../../quantity/unit.ts';
import { discArea, floorOf, riseOf } from '../geometry.ts';
import { drawsTogether, kindOfAsk, pieceGrams, thicknessOf } from './as-recipe.ts';
import type { FitAsk, OvenFit } from './fit.ts';
import { whatFits } from './what-fits.ts';

export interface BatchPart {
  readonly oven: CampOven;
  readonly mass: Grams;
  /** Whole pieces where there are pieces; else 1. */
  readonly pieces: number;
  /** As it is rolled or poured; undefined for pieces, loaves and pots, which take their own shape. */
  readonly thickness?: Metres;
}

/** What may be done with more than goes in. */
export type LeftOver =
  | { readonly way: 'second-turn'; readonly turns: number; readonly mass: Grams }
  | { readonly way: 'thicker'; readonly thickness: Metres; readonly wanted: Metres }
  | { readonly way: 'less'; readonly mass: Grams };

export interface SpreadBatch {
  readonly parts: readonly BatchPart[];
  /** Goes in at once, in all the ovens. */
  readonly mass: Grams;
  readonly left: Grams;
  /** Empty where nothing is left over; best first. */
  readonly ways: readonly LeftOver[];
}

const MOST_TURNS = 4;

/**
 * A batch shared out.
 *
 * A flat dough or batter that does not fill the ovens is spread at the wanted thickness over as much
 * of them as it covers, each in proportion to its floor.
 *
 * @refuses  MENU_NOTHING_FITS — it goes into none of these ovens
 */
export function spreadBatch(
  mass: Grams,
  ovens: readonly CampOven[],
  ask: FitAsk,
): OrRefusal<SpreadBatch> {
  const fits = ovens.map((oven) => whatFits(oven, ask));
  const held = fits.filter((fit): fit is OvenFit => !isRefusal(fit));
  const [first] = fits;
  if (held.length === 0 && first !== undefined && isRefusal(first)) return first;
  const most = held.reduce((sum, fit) => sum + fit.mass, 0);
  const parts = partsOf(Math.min(mass, most), held, ask);
  const laid = parts.reduce((sum, part) => sum + part.mass, 0);
  const left = grams(Math.max(0, mass - laid));
  return {
    parts,
    mass: grams(laid),
    left,
    ways: WORTH_SAYING_GRAMS < left ? waysFor(left, { mass, laid, held, ask }) : [],
  };
}

const WORTH_SAYING_GRAMS = 5;

/** Each oven its share of what all hold; whole pieces where there are pieces. */
function partsOf(mass: number, held: readonly OvenFit[], ask: FitAsk): readonly BatchPart[] {
  const most = held.reduce((sum, fit) => sum + fit.mass, 0);
  const each = pieceGrams(ask);
  if (each !== undefined) return wholeParts(Math.floor(mass / each + 1e-9), held, each);
  return held.map((fit) => {
    const part = grams((mass * fit.mass) / most);
    return { oven: fit.oven, mass: part, pieces: 1, ...thicknessIn(fit.oven, part, ask) };
  });
}

/** Fewest ovens' worth of disorder: each oven its share rounded down, the rest where room is left. */
function wholeParts(count: number, held: readonly OvenFit[], each: Grams): readonly BatchPart[] {
  const most = held.reduce((sum, fit) => sum + fit.pieces, 0);
  const counts = held.map((fit) => Math.floor((count * fit.pieces) / most));
  let left = count - counts.reduce((sum, one) => sum + one, 0);
  held.forEach((fit, index) => {
    const more = Math.min(left, fit.pieces - counts[index]!);
    counts[index] = counts[index]! + Math.max(0, more);
    left -= Math.max(0, more);
  });
  return held.map((fit, index) => ({
    oven: fit.oven,
    pieces: counts[index]!,
    mass: grams(counts[index]! * each),
  }));
}

const FLAT: readonly FitAsk['what'][] = ['round', 'wedges', 'batter'];

/** How thick a flat thing lies if it runs to the wall; never thicker than was wanted. */
function thicknessIn(oven: CampOven, mass: Grams, ask: FitAsk): { readonly thickness?: Metres } {
  if (!FLAT.includes(ask.what)) return {};
  const { gramsPerCubicMetre } = riseOf(kindOfAsk(ask));
  const lies = mass / gramsPerCubicMetre / discArea(floorOf(oven));
  return { thickness: metres(lies / drawsTogether(ask)) };
}

interface TooMuch {
  readonly mass: Grams;
  readonly laid: number;
  readonly held: readonly OvenFit[];
  readonly ask: FitAsk;
}

/** Thicker if the lids allow it, else in turns, else less of it: in this order. */
function waysFor(left: Grams, { mass, laid, held, ask }: TooMuch): readonly LeftOver[] {
  const less = { way: 'less', mass: grams(laid) } as const;
  if (left < (pieceGrams(ask) ?? 0)) return [less];
  const wanted = thicknessOf(ask);
  const thickness = metres((wanted * mass) / Math.max(1e-9, laid));
  const isRoomy =
    FLAT.includes(ask.what) &&
    held.every((fit) => !isRefusal(whatFits(fit.oven, { ...ask, thickness })));
  const turns = Math.ceil(mass / laid - 1e-9);
  return [
    ...(isRoomy ? [{ way: 'thicker', thickness, wanted } as const] : []),
    ...(turns <= MOST_TURNS && ask.what !== 'pot'
      ? [{ way: 'second-turn', turns, mass: left } as const]
      : []),
    less,
  ];
}

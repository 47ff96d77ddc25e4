// One lot in one oven: how it lies, how high it rises, how full the oven is.
// Sources: floor and working fill by geometry.ts, rises by data/rise.json, packings by packing.ts.
// Weak spot: rise is the biggest unknown of all; the headroom notice stands in for certainty.

import type { CampOven } from '../camp/camp.ts';
import { type Metres, metres, ratio, squareMetres } from '../quantity/unit.ts';
import { discArea, floorOf, riseOf, volumeOf, WORKING_FILL } from './geometry.ts';
import { layTin } from './lay-tin.ts';
import type { OvenLoad, PlacedPiece } from './load.ts';
import type { Lot } from './lots.ts';
import { piecesThatFit, placePieces } from './packing.ts';
import type { RecipeKind } from './recipe.ts';
import { heightFill, heightsIn } from './under-lid.ts';

const ROLL_GAP_METRES = 0.005; // rolls are to grow together; judged
const ROLL_ASPECT = 0.6; // risen height over width of a roll that stands free; judged
const BISCUIT_GAP_METRES = 0.006; // a quarter inch, common practice, no source
const BISCUIT_THICKNESS_METRES = 0.0155; // 54 g in a 2 1/2 inch round, armedForcesRecipes D 001 00
const MOUND_ASPECT = 0.33; // risen height over width of a loaf that stands free; judged
const MOUND_PROFILE = 2 / 3; // mean over middle height of half an ellipsoid
const WIDE_MOUND = 1.2; // from here on a mound is held by the wall all round; judged

/**
 * A pot may go a little above three quarters of its capacity, up to four fifths: `fill` 1 is the
 * working fill, this is where it starts to spit. Judged.
 */
export const MOST_POT_FILL = 1.07;

/**
 * Nine tenths of the capacity: a finger below the rim of a deep oven. Never planned of our own
 * accord, but rather than a late supper, and then said. Beans foam, so they keep their room. Judged.
 */
const PRESSED_POT_FILL = 1.2;
export const pressedPotFill = (kind: RecipeKind) =>
  kind === 'beans' ? MOST_POT_FILL : PRESSED_POT_FILL;

/** Does it go in? */
export const fitsIn = (lying: Lying, mostPotFill = MOST_POT_FILL) =>
  lying.fill <= (lying.shape === 'pot' ? mostPotFill : 1 + 1e-6);

/** How a lot lies in an oven; the load without its names. */
export type Lying = Omit<OvenLoad, 'id' | 'dish' | 'oven' | 'mass' | 'portions'>;

/**
 * The lot as it lies in this oven. Always answers; `fill` above 1 means that it does not go in.
 *
 * Volume = planArea × thickness holds for every shape.
 */
export function layIn(oven: CampOven, lot: Lot): Lying {
  if (lot.inOven.contact === 'tin' && lot.lie !== 'pot') return layTin(oven, lot);
  switch (lot.lie) {
    case 'pot':
      return layPot(oven, lot);
    case 'disc':
      return layDisc(oven, lot);
    case 'round':
      return lot.count === 1 ? layRound(oven, lot) : layPieces(oven, lot);
    case 'pieces':
      return layPieces(oven, lot);
  }
}

function layPot(oven: CampOven, lot: Lot): Lying {
  const volume = volumeOf(lot.mass, lot.recipe.kind);
  const planArea = oven.capacity / oven.depth; // walls lean outwards; the mean cross-section
  const thickness = metres(volume / planArea);
  return {
    shape: 'pot',
    thickness,
    risenHeight: thickness,
    planArea: squareMetres(planArea),
    volume,
    pieces: [],
    fill: ratio(volume / (WORKING_FILL * oven.capacity)),
    headroom: metres(oven.depth - thickness),
    inOven: lot.inOven,
  };
}

function layDisc(oven: CampOven, lot: Lot): Lying {
  const floor = floorOf(oven);
  const area = discArea(floor);
  const thickness = volumeOf(lot.mass, lot.recipe.kind) / area;
  const { rise, profile } = riseOf(lot.recipe.kind);
  const risen = (thickness * rise) / profile;
  return {
    shape: 'disc',
    ...heightsIn(oven, lot.inOven, { thickness, risen }),
    profile: ratio(profile),
    planArea: squareMetres(area),
    volume: volumeOf(lot.mass, lot.recipe.kind),
    pieces: [{ x: metres(0), y: metres(0), diameter: floor }],
    fill: ratio(heightFill(oven, lot.inOven, risen)),
    inOven: lot.inOven,
  };
}

/** A loaf stands free as a mound until the wall stops it; a patted round keeps its thickness. */
function layRound(oven: CampOven, lot: Lot): Lying {
  const floor = floorOf(oven);
  const volume = volumeOf(lot.mass, lot.recipe.kind);
  const { rise } = riseOf(lot.recipe.kind);
  const patted = lot.recipe.target.thickness;
  const isMound = patted === undefined;
  const free = isMound ? moundDiameter(volume * rise, MOUND_ASPECT) : discDiameter(volume, patted);
  const diameter = Math.min(free, floor);
  const area = discArea(diameter);
  const profile = profileOf(lot, isMound, free / floor);
  const risen = (volume * rise) / (area * profile);
  return {
    shape: 'disc',
    ...heightsIn(oven, lot.inOven, { thickness: volume / area, risen }),
    profile: ratio(profile),
    ...provedOf(lot, risen),
    planArea: squareMetres(area),
    volume,
    pieces: [{ x: metres(0), y: metres(0), diameter: metres(diameter) }],
    fill: ratio(heightFill(oven, lot.inOven, risen)),
    inOven: lot.inOven,
  };
}

/** Mean height over middle height: a mound, then flatter as the wall takes hold of it. */
function profileOf(lot: Lot, isMound: boolean, freeOverFloor: number): number {
  const { profile } = riseOf(lot.recipe.kind);
  if (!isMound) return profile;
  const held = Math.min(1, Math.max(0, (freeOverFloor - 1) / (WIDE_MOUND - 1)));
  return MOUND_PROFILE + held * (profile - MOUND_PROFILE);
}

const discDiameter = (volume: number, thickness: number) =>
  Math.sqrt((4 * volume) / (Math.PI * thickness));

/** Width of half an ellipsoid of this volume whose height is `aspect` of its width. */
const moundDiameter = (volume: number, aspect: number) =>
  ((4 * volume) / (Math.PI * MOUND_PROFILE * aspect)) ** (1 / 3);

function layPieces(oven: CampOven, lot: Lot): Lying {
  const floor = floorOf(oven);
  const volume = volumeOf(lot.mass, lot.recipe.kind);
  const size = { floorMetres: floor, ...pieceSize(lot, volume / lot.count) };
  const free = lot.count * grownArea(lot, volume / lot.count, size.pieceMetres);
  const planArea = Math.min(discArea(floor), free);
  const isMound = lot.recipe.kind === 'yeast-bread';
  const profile = profileOf(lot, isMound, Math.sqrt(free / discArea(floor)));
  const risen = (volume * riseOf(lot.recipe.kind).rise) / (planArea * profile);
  const most = piecesThatFit(size);
  return {
    shape: 'pieces',
    ...heightsIn(oven, lot.inOven, { thickness: volume / planArea, risen }),
    profile: ratio(profile),
    ...provedOf(lot, risen),
    planArea: squareMetres(planArea),
    volume,
    pieces: placedOrNone(lot.count, size),
    fill: ratio(
      Math.max(heightFill(oven, lot.inOven, risen), most === 0 ? lot.count + 1 : lot.count / most),
    ),
    inOven: lot.inOven,
  };
}

const placedOrNone = (
  count: number,
  size: Parameters<typeof placePieces>[1],
): readonly PlacedPiece[] => placePieces(count, size) ?? [];

/** Width of one raw piece, a ball or a cut round, and the gap it wants; none where they touch. */
function pieceSize(lot: Lot, volume: number): { pieceMetres: number; gapMetres: number } {
  const isTouching = lot.inOven.pieces === 'touching';
  if (lot.recipe.kind === 'yeast-bread') {
    return {
      pieceMetres: ((6 * volume) / Math.PI) ** (1 / 3),
      gapMetres: isTouching ? 0 : ROLL_GAP_METRES,
    };
  }
  const thickness = lot.recipe.target.thickness ?? BISCUIT_THICKNESS_METRES;
  const gapMetres = isTouching ? 0 : BISCUIT_GAP_METRES;
  return { pieceMetres: discDiameter(volume, thickness), gapMetres };
}

/** Rolls grow to small mounds, until they meet and fill the floor; biscuits only rise. */
const grownArea = (lot: Lot, volume: number, pieceMetres: number) =>
  discArea(
    lot.recipe.kind === 'yeast-bread'
      ? moundDiameter(volume * riseOf(lot.recipe.kind).rise, ROLL_ASPECT)
      : pieceMetres,
  );

/** Proved dough has doubled before the coals: data/rise.json, common practice. */
export const PROVED = 2;

const provedOf = ({ recipe }: Lot, risen: number) =>
  recipe.kind === 'yeast-bread'
    ? { provedHeight: metres((risen * PROVED) / riseOf(recipe.kind).rise) }
    : {};

/** Thickness of raw dough that a kind is made for, where the recipe does not say. */
export const usualThickness = (kind: RecipeKind): Metres => metres(USUAL_MILLIMETRES[kind] / 1000);

// Raw, if spread over the floor: common practice, no source. A loaf of 20 mm stands 65 mm baked.
const USUAL_MILLIMETRES: Readonly<Record<RecipeKind, number>> = {
  'yeast-bread': 20,
  'quick-bread': 30,
  biscuit: 15.5,
  'corn-bread': 30,
  cobbler: 45,
  braise: 60,
  stew: 60,
  beans: 60,
  roast: 60,
  fruit: 55,
  'cold-dish': 0,
};

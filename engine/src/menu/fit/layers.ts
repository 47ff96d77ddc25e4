// Two things in one oven, one on the other: a topping on fruit, dumplings on a stew.
// Sources: rises and densities by data/rise.json; packings by birginGentil2009; the shares of the
// layers are common practice, no source.

import type { CampOven } from '../../camp/camp.ts';
import { type Grams, grams, type Metres, metres } from '../../quantity/unit.ts';
import { discArea, floorOf, LEAST_HEADROOM_METRES, riseOf, workingMass } from '../geometry.ts';
import type { PlacedPiece } from '../load.ts';
import { piecesThatFit, placePieces } from '../packing.ts';
import type { FitAsk, FitLayer } from './fit.ts';

interface Layered {
  readonly layers: readonly FitLayer[];
  readonly mass: Grams;
  readonly pieces: number;
  readonly gramsEach: Grams;
  readonly thickness: Metres;
  readonly risenHeight: Metres;
  readonly headroom: Metres;
  readonly placed: readonly PlacedPiece[];
}

/** A topping is a batter or biscuit dough half an inch thick; it doubles. Common practice. */
const TOPPING_METRES = 0.013;
/** Fruit in its juice boils up: it takes no more than half of the depth. Judged. */
const MOST_FRUIT = 0.5;

/** As much fruit as leaves the risen topping a finger below the lid, and never above half. */
export function cobblerLayers(oven: CampOven, ask: FitAsk): Layered {
  const area = discArea(floorOf(oven));
  const top = ask.thickness ?? metres(TOPPING_METRES);
  const topping = riseOf('biscuit');
  const fruit = riseOf('cobbler');
  const risenTop = (top * topping.rise) / topping.profile;
  const room = Math.max(0, oven.depth - LEAST_HEADROOM_METRES - risenTop);
  const fruitHeight = Math.min(room, MOST_FRUIT * oven.depth);
  return stacked(oven, [
    layer('fruit', area * fruitHeight * fruit.gramsPerCubicMetre, fruitHeight, fruitHeight),
    layer('topping', area * top * topping.gramsPerCubicMetre, top, risenTop),
  ]);
}

/** A heaped tablespoon of dough; common practice, no source. */
const DUMPLING_GRAMS = 35;

/** Density of the broth; a dumpling floats in it as deep as it is heavy (Archimedes). */
const BROTH_GRAMS_PER_CUBIC_METRE = 1e6;

/**
 * One layer of dumplings side by side on the stew, grown and not touching the lid. They float, a good
 * half sunk, and lift the stew by what they weigh; it stands as low as they need. Its surface is as
 * wide as the oven on the mean.
 */
export function dumplingLayers(oven: CampOven, ask: FitAsk): Layered {
  const each = ask.pieceMass ?? grams(DUMPLING_GRAMS);
  const { rise, gramsPerCubicMetre } = riseOf('biscuit');
  const raw = ((6 * each) / gramsPerCubicMetre / Math.PI) ** (1 / 3); // a ball
  const grown = raw * rise ** (1 / 3);
  const sunk = gramsPerCubicMetre / rise / BROTH_GRAMS_PER_CUBIC_METRE;
  const surface = oven.capacity / oven.depth;
  const density = riseOf('stew').gramsPerCubicMetre;
  const size = {
    floorMetres: 2 * Math.sqrt(surface / Math.PI),
    pieceMetres: grown,
    gapMetres: 0,
  };
  const count = piecesThatFit(size);
  const lifts = (count * each) / BROTH_GRAMS_PER_CUBIC_METRE / surface;
  const above = grown * (1 - sunk);
  const room = Math.max(0, oven.depth - LEAST_HEADROOM_METRES - above - lifts);
  const stew = Math.min(workingMass(oven, 'stew') - count * each, surface * room * density);
  const level = stew / density / surface + lifts;
  return {
    ...stacked(oven, [
      layer('stew', stew, level, level),
      layer('dumplings', count * each, raw * (1 - sunk), above),
    ]),
    pieces: count,
    gramsEach: each,
    placed: placePieces(count, size) ?? [],
  };
}

const layer = (
  what: FitLayer['what'],
  massGrams: number,
  heightMetres: number,
  risenMetres: number,
): FitLayer => ({
  what,
  mass: grams(massGrams),
  height: metres(heightMetres),
  risenHeight: metres(risenMetres),
});

function stacked(oven: CampOven, layers: readonly FitLayer[]): Layered {
  const sum = (of: (one: FitLayer) => number) => layers.reduce((all, one) => all + of(one), 0);
  const mass = sum((one) => one.mass);
  const risen = sum((one) => one.risenHeight);
  return {
    layers,
    mass: grams(mass),
    pieces: 1,
    gramsEach: grams(mass),
    thickness: metres(sum((one) => one.height)),
    risenHeight: metres(risen),
    headroom: metres(oven.depth - risen),
    placed: [],
  };
}

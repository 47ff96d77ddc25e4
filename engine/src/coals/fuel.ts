// How strong is one piece of this fuel, and how many of them are a shovel?
// Sources: briquetteWeighing (mass), coalsBurnNotes (law); the shovel has no source at all.
// Weak spot: brands differ up to twofold, and nobody measured wood coals against briquettes.

import type { Fuel } from '../camp/camp.ts';
import { type Grams, grams } from '../quantity/unit.ts';
import { parameter } from './parameters.ts';

/** Mass of the briquette that the charts and the fit are about. */
export const CHART_PIECE_GRAMS = 24.5; // coalsBurnNotes: weighings of 24.1 … 27.9 g, one brand
/** Briquette-equivalents in one level camp shovel. No source: a choice, see docs of the notice. */
export const SHOVEL_PIECES = 8;
/** Wood coals last about half as long (woodCoalLife). */
const WOOD_LIFE = 0.5;
/**
 * Split dry hardwood that burns down to one coal [g]. No source: a coal that lasts half as long holds
 * half a briquette's char, and an open fire keeps about a tenth of its wood as embers.
 */
const WOOD_GRAMS = 125;

/** What one piece can do beside the chart's briquette, and how long beside it. */
export interface FuelPiece {
  readonly pieceGrams: Grams;
  /** What is taken along for it: itself, or the wood that it comes from. */
  readonly takenGrams: Grams;
  /** Delivered heat beside the chart's briquette of equal age. */
  readonly strength: number;
  /** Burning time beside the chart's briquette. */
  readonly life: number;
}

/**
 * A shrinking ball burns in time ~ size² ~ mass^(2/3), so its power goes as mass^(1/3); a piece
 * twice as heavy is then 1.26 times as strong and lasts 1.59 times as long.
 *
 * @source  coalsBurnNotes (derived, not measured)  (grade D)
 */
export const fuelPiece = (fuel: Fuel): FuelPiece => {
  if (fuel.kind === 'wood-coals')
    return {
      pieceGrams: grams(CHART_PIECE_GRAMS),
      takenGrams: grams(WOOD_GRAMS),
      strength: 1,
      life: WOOD_LIFE,
    };
  const beside = fuel.pieceMass / CHART_PIECE_GRAMS;
  return {
    pieceGrams: fuel.pieceMass,
    takenGrams: fuel.pieceMass,
    strength: Math.cbrt(beside),
    life: beside ** (2 / 3),
  };
};

/**
 * Coal heat in thin air: the prior says square root of pressure. Sources contradict each other
 * about the sign, so the band is widened instead of trusting it.
 *
 * @source  coalsOvenModelNotes (prior, grade D)
 */
export const thinAirStrength = (pressurePascals: number): number =>
  Math.sqrt(pressurePascals / parameter('chartPressurePascals'));

/** Shovels, to the half, for a number of briquette-equivalents. */
export const shovelsFor = (pieces: number): number => Math.round((2 * pieces) / SHOVEL_PIECES) / 2;

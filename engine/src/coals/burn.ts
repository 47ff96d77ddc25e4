// How strong is a coal at its age, and when is it gone? The law of a shrinking piece.
// Sources: coalsBurnNotes (law fixed by "half burned at 30 minutes"), emberWind, burnWind.
// Weak spot: derived, not measured; no burn curve of one briquette was found.

import { type Minutes, minutes } from '../quantity/unit.ts';
import type { FuelPiece } from './fuel.ts';
import { thinAirStrength } from './fuel.ts';

/** Still air, chart briquette: (1 - 30/tb)^1.5 = 1/2 gives tb = 81 min (coalsBurnNotes). */
export const STILL_BURNOUT_MINUTES = 81;
/** A coal goes on when it has ashed over, a quarter of an hour after lighting. */
export const LAID_AGE_MINUTES = 15;
/** Part of the piece's burning time that is over when it is laid. */
export const LAID_BURNT = LAID_AGE_MINUTES / STILL_BURNOUT_MINUTES;
/**
 * Wind that feeds a coal as much as its own rising air does [m/s]; assumed (coalsOvenModelNotes 5.4).
 * Equating a sphere's free and forced transfer (bergman2011 eq. 9.35, 7.56) gives 0.4 at 923 K.
 */
const OWN_DRAUGHT = 0.5;

/** Share of the piece's mass left. @source coalsBurnNotes */
export const massLeft = (burnt: number): number => Math.max(0, 1 - burnt) ** 1.5;

/** Mean of sqrt(1 - t/tb) from 15 to 60 minutes: the coal that a chart counts on. */
const CHART_MEAN = meanRoot(LAID_BURNT, 60 / STILL_BURNOUT_MINUTES);

function meanRoot(from: number, to: number): number {
  const end = Math.min(1, to);
  if (end <= from) return 0;
  const left = 1 - from;
  const least = 1 - end;
  return ((2 / 3) * (left * Math.sqrt(left) - least * Math.sqrt(least))) / (to - from);
}

/** Power beside the mean of a chart's hour (15 to 60 minutes old = 1). @source coalsBurnNotes */
export const strengthAt = (burnt: number): number =>
  burnt < 1 ? Math.sqrt(1 - burnt) / CHART_MEAN : 0;

/** Where a coal has just the strength that a chart counts on. */
export const MID_LIFE_BURNT = 1 - CHART_MEAN ** 2;

/** Mean of `strengthAt` between two stages of burning. */
export const meanStrength = (fromBurnt: number, toBurnt: number): number =>
  toBurnt - fromBurnt < 1e-9
    ? strengthAt(fromBurnt)
    : meanRoot(Math.min(1, fromBurnt), toBurnt) / CHART_MEAN;

/**
 * What a coal delivers under its own ash, beside what the charts count on: 1, since their coals lay
 * under theirs. What knocking it off may bring stands in ash.ts.
 */
export const ASH_STRENGTH = 1;

interface BurnPlace {
  readonly windMetresPerSecond: number;
  readonly pressurePascals: number;
}

/**
 * Minutes from lighting to ash. Wind feeds the fire: the rate goes with the square root of the wind,
 * and adds to the coal's own draught by third powers, as free and forced convection do on the iron
 * beside it; thin air slows it as much as it weakens it.
 *
 * @source  burnWind (rate ~ U^0.5), bergman2011 9.9 (third powers), coalsOvenModelNotes 5.4
 */
export const burnoutMinutes = (piece: Pick<FuelPiece, 'life'>, place: BurnPlace): number => {
  const rate = draughtRate(place.windMetresPerSecond);
  return (STILL_BURNOUT_MINUTES * piece.life) / (rate * thinAirStrength(place.pressurePascals));
};

/** How much quicker a coal burns in this wind than in calm air. */
export const draughtRate = (windMetresPerSecond: number): number =>
  Math.cbrt(1 + Math.sqrt(windMetresPerSecond / OWN_DRAUGHT) ** 3);

/** Age at which a coal has half the power it was laid with. @source coalsBurnNotes (derived) */
const HALF_POWER_BURNT = 1 - (1 - LAID_BURNT) / 4;

/** Minutes on the oven until a coal gives half of what it gave when laid. */
export const usefulMinutes = (burnout: number): Minutes =>
  minutes((HALF_POWER_BURNT - LAID_BURNT) * burnout);

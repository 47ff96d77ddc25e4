// What hot, wet, porous dough does at one air pressure: tables, so that the inner loop only looks up.
// Sources: constants.ts; the water line (if97); Maxwell's mixture of pores in a dense body (maxwell).
//
// Two things carry the model. A pore conducts by still air and by steam that leaves its hot wall and
// settles on its cool one, more and more towards the boil; above the boil only steam is left in it and
// that ends. And no water boils before its pressure is that of the air: then water left and temperature
// hang together by sorption, so a slice's heat tells both.

import { boilingPointAt, saturationPressureAt } from '../../camp/index.ts';
import type { Kelvin, Pascals } from '../../quantity/unit.ts';
import * as constants from './constants.ts';

// Read once: the inner loops run a million times.
const {
  AIR_CONDUCTIVITY,
  AIR_CONDUCTIVITY_SLOPE,
  GAS,
  OSWIN,
  OSWIN_SHARE,
  PORE_RADIATION_METRES,
  SOLIDS_JOULES,
  STARCH_ENERGY,
  STARCH_RATE,
  STEAM_DIFFUSIVITY,
  STEAM_DIFFUSIVITY_POWER,
  STEAM_GAS,
  STEAM_JOULES,
  STEAM_JOULES_SLOPE,
  STEFAN_BOLTZMANN,
  WATER_JOULES,
  ZERO_KELVIN,
} = constants;

/** Tables over temperature start and end here [K], one row a kelvin. */
export const TABLE_FROM = 250;
const TABLE_TO = 640;
/** Rows of the boiling line. */
const LINE_ROWS = 2048;
const MOST_WATER = 7; // kg/kg dry; an apple holds 6, no dough more than 2.5

export interface InsidePhysics {
  readonly pressurePascals: number;
  readonly boilKelvin: number;
  /** What a kilogram of steam takes along, counted from liquid at 0 °C [J/kg]. */
  readonly steamJoules: number;
  /** Conductivity of a pore [W/(m K)] from `TABLE_FROM` on, one row a kelvin: its air and shine … */
  readonly stillPore: Float64Array;
  /** Sum over temperature of what steam adds [W/m] from `STEAM_FROM` on, `STEAM_STEP` apart. */
  readonly steamSum: Float64Array;
  /** Rate at which starch sets [1/s], same rows. */
  readonly starch: Float64Array;
  /** Pressure over free water [Pa], same rows. */
  readonly vapour: Float64Array;
  /**
   * Water that a boiling slice still holds [kg/kg dry], by its heat less `steamJoules` for each
   * kilogram of its water [J/kg dry], evenly spaced.
   */
  readonly line: { readonly from: number; readonly step: number; readonly water: Float64Array };
}

/** Tables for one air pressure; made once and used for every bake there. */
export function insidePhysics(pressure: Pascals): InsidePhysics {
  const boilKelvin = boilingPointAt(pressure);
  const steamJoules =
    STEAM_JOULES +
    STEAM_JOULES_SLOPE * (boilKelvin - 373.12) +
    WATER_JOULES * (boilKelvin - ZERO_KELVIN);
  const rows = TABLE_TO - TABLE_FROM + 1;
  const stillPore = new Float64Array(rows);
  const starch = new Float64Array(rows);
  const vapour = new Float64Array(rows);
  for (let row = 0; row < rows; row += 1) {
    const at = TABLE_FROM + row;
    stillPore[row] = stillConductivity(at);
    starch[row] = STARCH_RATE * Math.exp(-STARCH_ENERGY / (GAS * at)); // zanoni1995-starch
    vapour[row] = vapourPressure(at);
  }
  const steamSum = steamSumTo(pressure, boilKelvin);
  const line = boilingLine(pressure, boilKelvin, steamJoules);
  return {
    pressurePascals: pressure,
    boilKelvin,
    steamJoules,
    stillPore,
    steamSum,
    starch,
    vapour,
    line,
  };
}

/** Reads a table at a temperature; past its ends the last row holds. */
export function rowAt(table: Float64Array, kelvin: number): number {
  const place = kelvin - TABLE_FROM;
  if (!(place > 0)) return table[0]!;
  const row = Math.floor(place);
  if (row >= table.length - 1) return table[table.length - 1]!;
  const below = table[row]!;
  return below + (table[row + 1]! - below) * (place - row);
}

const vapourPressure = (kelvin: number) =>
  kelvin < ZERO_KELVIN ? 611 : saturationPressureAt(kelvin as Kelvin);

/**
 * Steam in a pore moves through the gas that is left there: this much of the pressure, however near the
 * boil. Tuned with tuning.ts; without it the last kelvins of a crumb came in one leap.
 */
const LEAST_AIR = 0.2;
/** Over so many kelvin past the boil the steam's share dies away, so that no table jumps. */
const FADE_KELVIN = 0.5;

const STEAM_FROM = 270;
const STEAM_STEP = 0.25;

function steamSumTo(pressure: number, boilKelvin: number): Float64Array {
  const rows = Math.ceil((boilKelvin + FADE_KELVIN + 1 - STEAM_FROM) / STEAM_STEP);
  const sum = new Float64Array(rows);
  for (let row = 1; row < rows; row += 1) {
    const middle = STEAM_FROM + (row - 0.5) * STEAM_STEP;
    sum[row] = sum[row - 1]! + STEAM_STEP * steamCrossing(middle, pressure, boilKelvin);
  }
  return sum;
}

/**
 * What steam adds to a pore's conductivity between two temperatures: the mean over them (kirchhoff),
 * so that a slice that begins to boil does not stand as a whole for the thin front inside it.
 */
export function steamBetween(sum: Float64Array, one: number, other: number): number {
  const apart = other - one;
  if (-0.1 < apart && apart < 0.1) {
    const middle = (one + other) / 2;
    return (summed(sum, middle + 0.05) - summed(sum, middle - 0.05)) / 0.1;
  }
  return (summed(sum, other) - summed(sum, one)) / apart;
}

function summed(sum: Float64Array, kelvin: number): number {
  const place = (kelvin - STEAM_FROM) / STEAM_STEP;
  if (!(place > 0)) return 0;
  const row = Math.floor(place);
  if (row >= sum.length - 1) return sum[sum.length - 1]!;
  const below = sum[row]!;
  return below + (sum[row + 1]! - below) * (place - row);
}

function steamCrossing(kelvin: number, pressure: number, boilKelvin: number): number {
  const left = 1 - (kelvin - boilKelvin) / FADE_KELVIN;
  if (left <= 0) return 0;
  return Math.min(1, left) * steamConductivity(Math.min(kelvin, boilKelvin), pressure);
}

const stillConductivity = (kelvin: number) =>
  AIR_CONDUCTIVITY +
  AIR_CONDUCTIVITY_SLOPE * (kelvin - 298) +
  4 * STEFAN_BOLTZMANN * kelvin ** 3 * PORE_RADIATION_METRES;

/** D L/(R T) dp/dT P/(P - p): steam that leaves one wall and settles on the other (devries1958). */
function steamConductivity(kelvin: number, pressure: number): number {
  const HALF = 0.5;
  const at = vapourPressure(kelvin);
  const slope = vapourPressure(kelvin + HALF) - vapourPressure(kelvin - HALF);
  const air = Math.max(LEAST_AIR, 1 - at / pressure);
  const diffusivity =
    STEAM_DIFFUSIVITY * (kelvin / ZERO_KELVIN) ** STEAM_DIFFUSIVITY_POWER * (101_325 / pressure);
  const latent = STEAM_JOULES + STEAM_JOULES_SLOPE * (kelvin - 373.12);
  return (diffusivity * latent * slope) / (STEAM_GAS * kelvin * air);
}

/** Water held at this temperature where its vapour has this share of free water's (lind-rask1991). */
export const waterHeld = (kelvin: number, activity: number) =>
  OSWIN_SHARE *
  0.01 *
  Math.exp(OSWIN.slope * kelvin + OSWIN.offset) *
  (activity / (1 - activity)) ** OSWIN.power;

/** Share of free water's vapour over dough that holds this much: the same law turned round. */
export function waterActivity(kelvin: number, water: number): number {
  if (!(water > 0)) return 0;
  const held = OSWIN_SHARE * 0.01 * Math.exp(OSWIN.slope * kelvin + OSWIN.offset);
  return 1 / (1 + (water / held) ** (-1 / OSWIN.power));
}

/**
 * The line on which a slice boils: water held at the activity at which its vapour has the pressure of
 * the air. Walked from wet to dry, then laid on an even grid of heat.
 */
function boilingLine(pressure: number, boilKelvin: number, steamJoules: number) {
  const heat: number[] = [];
  const held: number[] = [];
  const STEPS = 1200;
  const most = TABLE_TO - boilKelvin;
  for (let step = 0; step <= STEPS; step += 1) {
    // Powers crowd the steps to the boil, where water goes fast and temperature hardly moves.
    const kelvin = boilKelvin + 1e-4 + most * (step / STEPS) ** 4;
    const activity = Math.min(1 - 1e-12, pressure / saturationPressureAt(kelvin as Kelvin));
    const water = waterHeld(kelvin, activity);
    if (water > MOST_WATER) continue;
    const over = kelvin - ZERO_KELVIN;
    heat.push(SOLIDS_JOULES * over - (steamJoules - WATER_JOULES * over) * water);
    held.push(water);
  }
  const from = heat[0] ?? 0;
  const step = ((heat.at(-1) ?? 1) - from) / (LINE_ROWS - 1);
  const water = new Float64Array(LINE_ROWS);
  let right = 1;
  for (let row = 0; row < LINE_ROWS; row += 1) {
    const wanted = from + row * step;
    while (right < heat.length - 1 && heat[right]! < wanted) right += 1;
    const left = right - 1;
    const share = (wanted - heat[left]!) / (heat[right]! - heat[left]!);
    water[row] = held[left]! + (held[right]! - held[left]!) * Math.min(1, Math.max(0, share));
  }
  return { from, step, water };
}

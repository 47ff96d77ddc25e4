// How thin is the air, at what does water boil, and how hard does the wind blow on an oven?
// Sources: iso2533, ussa1976, if97, fao56, wmo8. Weakness: real pressure wanders a few per cent
// around the standard atmosphere with the weather, which moves the boil by up to half a kelvin.

import { type OrRefusal, refusal } from '../notice/notice.ts';
import {
  type Kelvin,
  type KelvinDifference,
  kelvin,
  kelvinDifference,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  type Pascals,
  pascals,
} from '../quantity/unit.ts';

/** Camps lie between the lowest dry shore on Earth and the highest villages. */
export const CAMP_ELEVATION = { lowest: metres(-430), highest: metres(5500) } as const;

// iso2533 table 1 and 2.1; ussa1976 table 2: the same troposphere, whose gas constant differs from
// the seventh digit on.
const SEA_LEVEL_PASCALS = 101_325;
const SEA_LEVEL_KELVIN = 288.15;
const LAPSE_KELVIN_PER_METRE = 0.0065;
const GRAVITY = 9.806_65;
const DRY_AIR_GAS_CONSTANT = 287.052_87; // iso2533 2.1 [J/(kg K)]
const EARTH_RADIUS_METRES = 6_356_766; // iso2533 2.3; ussa1976 eq. 18
const PRESSURE_POWER = GRAVITY / (DRY_AIR_GAS_CONSTANT * LAPSE_KELVIN_PER_METRE);
const GEOPOTENTIAL_LOWEST = -2000;
const GEOPOTENTIAL_HIGHEST = 11_000;

/**
 * Air pressure of the standard atmosphere at a camp's elevation.
 *
 * Stands in when the cook has no barometer. An elevation off a map is geometric height; the
 * formula wants geopotential height, 4 m less at 5000 m.
 *
 * @param elevation  height above sea level   [m]   -430 … 5500 (campTrouble refuses the rest)
 * @returns          absolute pressure [Pa]; past the troposphere that of its end
 * @throws           RangeError — not a finite number
 * @source           iso2533 2.3 and 2.7; ussa1976 eq. 18 and 33a (grade B)
 * @accuracy         worst 0.04 Pa against validation/camp/standard-atmosphere.json
 */
export function pressureAtElevation(elevation: Metres): Pascals {
  return pressureAtGeopotential(geopotentialFrom(elevation));
}

/** The same by geopotential height, as tables of the standard atmosphere are printed. */
export function pressureAtGeopotential(height: Metres): Pascals {
  if (!Number.isFinite(height)) throw new RangeError(`height must be finite, got ${height}`);
  const inRange = Math.min(GEOPOTENTIAL_HIGHEST, Math.max(GEOPOTENTIAL_LOWEST, height));
  const coldness = 1 - (LAPSE_KELVIN_PER_METRE * inRange) / SEA_LEVEL_KELVIN;
  return pascals(SEA_LEVEL_PASCALS * coldness ** PRESSURE_POWER); // ussa1976 eq. 33a
}

const geopotentialFrom = (elevation: Metres): Metres =>
  metres((EARTH_RADIUS_METRES * elevation) / (EARTH_RADIUS_METRES + elevation)); // ussa1976 eq. 18

const elevationFromGeopotential = (height: number): Metres =>
  metres((EARTH_RADIUS_METRES * height) / (EARTH_RADIUS_METRES - height)); // ussa1976 eq. 19

/** Standard elevation for a pressure; the other way round of `pressureAtElevation`. */
export function elevationAtPressure(pressure: Pascals): Metres {
  const coldness = (pressure / SEA_LEVEL_PASCALS) ** (1 / PRESSURE_POWER); // ussa1976 eq. 33a
  return elevationFromGeopotential((SEA_LEVEL_KELVIN / LAPSE_KELVIN_PER_METRE) * (1 - coldness));
}

// if97 table 34
const SATURATION = [
  0.116_705_214_527_67e4, -0.724_213_167_032_06e6, -0.170_738_469_400_92e2, 0.120_208_247_024_7e5,
  -0.323_255_503_223_33e7, 0.149_151_086_135_3e2, -0.482_326_573_615_91e4, 0.405_113_405_420_57e6,
  -0.238_555_575_678_49, 0.650_175_348_447_98e3,
] as const;
const SATURATION_PASCALS = { lowest: 611.213, highest: 22.064e6 } as const;

/**
 * Temperature at which pure water boils.
 *
 * Salt and sugar in the pot raise it a little; that is left to whoever knows the pot.
 *
 * @param pressure  absolute pressure     [Pa]  611.213 … 22.064e6
 * @returns         boiling point         [K]
 * @throws          RangeError — pressure outside the range of the formula
 * @source          if97 eq. 31 (grade B: check values as printed in its table 36)
 */
export function boilingPointAt(pressure: Pascals): Kelvin {
  const { lowest, highest } = SATURATION_PASCALS;
  if (!(lowest <= pressure && pressure <= highest)) {
    throw new RangeError(`pressure must be ${lowest} … ${highest} Pa, got ${pressure}`);
  }
  const [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = SATURATION;
  const beta = (pressure / 1e6) ** 0.25; // if97 eq. 29a
  const e = beta * beta + n3 * beta + n6; // if97 eq. 31
  const f = n1 * beta * beta + n4 * beta + n7;
  const g = n2 * beta * beta + n5 * beta + n8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  return kelvin((n10 + d - Math.sqrt((n10 + d) ** 2 - 4 * (n9 + n10 * d))) / 2);
}

/**
 * Pressure of saturated steam; the other way round of `boilingPointAt`.
 *
 * @param boiling  [K]  273.15 … 647.096
 * @throws         RangeError — temperature outside the range of the formula
 * @source         if97 eq. 30 (grade B: check values as printed in its table 35)
 */
export function saturationPressureAt(boiling: Kelvin): Pascals {
  if (!(273.15 <= boiling && boiling <= 647.096)) {
    throw new RangeError(`temperature must be 273.15 … 647.096 K, got ${boiling}`);
  }
  const [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = SATURATION;
  const theta = boiling + n9 / (boiling - n10); // if97 eq. 29b
  const a = theta * theta + n1 * theta + n2; // if97 eq. 30
  const b = n3 * theta * theta + n4 * theta + n5;
  const c = n6 * theta * theta + n7 * theta + n8;
  return pascals(1e6 * ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4);
}

export interface ElevationFromBoil {
  readonly elevation: Metres;
  readonly least: Metres;
  readonly most: Metres;
}

/** A kitchen thermometer is read to half a degree Fahrenheit at best. */
const USUAL_READING = kelvinDifference(0.5 / 1.8);

/**
 * How high a cook is who says "my water boils at 196 °F".
 *
 * @param boiling  as read                                     [K]
 * @param within   how far the reading may be off              [K]  half a degree Fahrenheit
 * @returns        elevation with its doubt                    [m]
 * @refuses        CAMP_BOILING_IMPOSSIBLE — no camp lies where water boils at that
 * @source         if97 eq. 30; iso2533 2.7
 */
export function elevationForBoiling(
  boiling: Kelvin,
  within: KelvinDifference = USUAL_READING,
): OrRefusal<ElevationFromBoil> {
  const lowest = boilingPointAt(pressureAtElevation(CAMP_ELEVATION.highest));
  const highest = boilingPointAt(pressureAtElevation(CAMP_ELEVATION.lowest));
  if (!(lowest <= boiling && boiling <= highest)) {
    const values = { boilingKelvin: boiling, lowestKelvin: lowest, highestKelvin: highest };
    return refusal('CAMP_BOILING_IMPOSSIBLE', ['place.elevation'], {}, values);
  }
  const at = (reading: number) => elevationAtPressure(saturationPressureAt(kelvin(reading)));
  return { elevation: at(boiling), least: at(boiling + within), most: at(boiling - within) };
}

const ROUGHNESS_METRES = 0.03; // wmo8 part I ch. 5 annex: open ground, grass
const FORECAST_HEIGHT_METRES = 10; // wmo8: height of a wind forecast
const OVEN_HEIGHT_METRES = 0.15; // middle of an oven on its legs
// Common practice, no source: a screen on the wind side about halves what the oven feels.
const BEHIND_SCREEN = 0.5;

/**
 * Wind that an oven feels, from the wind of a forecast.
 *
 * Neutral log law over open ground. Thermals, gusts and bushes are left out, so it is good to a
 * factor of about two; logged bakes narrow it.
 *
 * @param wind10m   as forecast                       [m/s]
 * @param screened  a wind screen stands on the wind side
 * @source          fao56 eq. 47 (log law); wmo8 (roughness); the screen: common practice, no source
 */
export function windAtOven(wind10m: MetresPerSecond, screened: boolean): MetresPerSecond {
  const open = windAtHeight(wind10m, metres(OVEN_HEIGHT_METRES));
  return metresPerSecond(screened ? open * BEHIND_SCREEN : open);
}

/** Wind at a height above open ground, 0 at and below the roughness height. */
export function windAtHeight(wind10m: MetresPerSecond, height: Metres): MetresPerSecond {
  if (height <= ROUGHNESS_METRES) return metresPerSecond(0);
  const share =
    Math.log(height / ROUGHNESS_METRES) / Math.log(FORECAST_HEIGHT_METRES / ROUGHNESS_METRES);
  return metresPerSecond(wind10m * share);
}

/**
 * Density of dry air [kg/m³]; damp air is at most 2 % lighter at 35 °C, which is neglected.
 *
 * @source   iso2533 2.4 (perfect gas)
 */
export function airDensity(pressure: Pascals, temperature: Kelvin): number {
  return pressure / (DRY_AIR_GAS_CONSTANT * temperature);
}

// What camp/ offers, in the order of the job.

// The place and its air
export {
  airDensity,
  boilingPointAt,
  CAMP_ELEVATION,
  type ElevationFromBoil,
  elevationAtPressure,
  elevationForBoiling,
  pressureAtElevation,
  pressureAtGeopotential,
  saturationPressureAt,
  windAtHeight,
  windAtOven,
} from './air.ts';
// What a camp is
export type * from './camp.ts';
export { campLight } from './camp-light.ts';
export { campCodes } from './codes.ts';
export { type Daylight, type DaylightQuestion, daylightAt } from './daylight.ts';
// Light
export { type Hours, openHours } from './open-hours.ts';
// A cook's senses and what is usual
export {
  type AirSense,
  type AirWord,
  airFromWord,
  airWords,
  beaufortOf,
  MOST_BEAUFORT,
  usualCamp,
  usualWeather,
  type WindSense,
  type WindSign,
  windFromForce,
  windFromSign,
  windSigns,
} from './senses.ts';
// What is bought, packed and carried
export * from './stores.ts';
// What is wrong with it
export { type CampTrouble, campTrouble } from './trouble.ts';
export { airAt, FORECAST_REACH_MINUTES, knowsWeatherAt, weatherAt } from './weather.ts';

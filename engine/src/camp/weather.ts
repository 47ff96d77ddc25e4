// What is the air like at one minute of the camp's clock?
// Weather is given by the hour; between hours it is taken along a straight line, the direction of
// the wind along the shorter arc (plain geometry, no source). Weakness: outside the given hours the nearest hour stands.

import {
  type ClockMinutes,
  type Degrees,
  degrees,
  kelvin,
  metresPerSecond,
  ratio,
} from '../quantity/unit.ts';
import { boilingPointAt, pressureAtElevation, windAtOven } from './air.ts';
import type { Air, Camp, WeatherHour } from './camp.ts';
import { usualWeather } from './senses.ts';

/** The given hours still tell something this long before the first and after the last. */
export const FORECAST_REACH_MINUTES = 60;

/**
 * The air that an oven stands in.
 *
 * @param at   minute on the camp's clock
 * @param screened   a wind screen stands on the wind side
 */
export function airAt(
  camp: Camp,
  at: ClockMinutes,
  { screened }: { readonly screened: boolean },
): Air {
  const { air, wind, windFrom } = weatherAt(camp, at);
  const pressure = pressureAtElevation(camp.place.elevation);
  return {
    temperature: air,
    pressure,
    wind: windAtOven(wind, screened),
    windFrom,
    boiling: boilingPointAt(pressure),
  };
}

/** Weather between the given hours; the nearest hour before the first and after the last. */
export function weatherAt(camp: Camp, at: ClockMinutes): WeatherHour {
  const hours = camp.weather.toSorted((one, other) => one.at - other.at);
  const after = hours.find((hour) => at <= hour.at);
  const before = hours.findLast((hour) => hour.at <= at);
  if (!before) return { ...(after ?? usualWeather), at };
  if (!after || after.at === before.at) return { ...before, at };
  return between(before, after, at);
}

/** False where `weatherAt` has to guess from a far hour. */
export function knowsWeatherAt(camp: Camp, at: ClockMinutes): boolean {
  const hours = camp.weather.map((hour) => hour.at);
  const first = Math.min(...hours) - FORECAST_REACH_MINUTES;
  const last = Math.max(...hours) + FORECAST_REACH_MINUTES;
  return first <= at && at <= last;
}

function between(before: WeatherHour, after: WeatherHour, at: ClockMinutes): WeatherHour {
  const share = (at - before.at) / (after.at - before.at);
  const along = (from: number, to: number) => from + share * (to - from);
  const { sky } = share < 0.5 ? before : after;
  return {
    at,
    air: kelvin(along(before.air, after.air)),
    wind: metresPerSecond(along(before.wind, after.wind)),
    gust: metresPerSecond(along(before.gust, after.gust)),
    windFrom: directionBetween(before.windFrom, after.windFrom, share),
    ...(before.humidity !== undefined && after.humidity !== undefined
      ? { humidity: ratio(along(before.humidity, after.humidity)) }
      : {}),
    ...(before.rain === undefined && after.rain === undefined
      ? {}
      : { rain: along(before.rain ?? 0, after.rain ?? 0) }),
    ...(before.sun === undefined && after.sun === undefined
      ? {}
      : { sun: ratio(along(before.sun ?? 0, after.sun ?? 0)) }),
    ...(sky === undefined ? {} : { sky }),
  };
}

/** Along the shorter arc: from 350° to 10° the wind goes through north, not through south. */
function directionBetween(from: Degrees, to: Degrees, share: number): Degrees {
  const shorter = ((((to - from) % 360) + 540) % 360) - 180;
  return degrees((((from + share * shorter) % 360) + 360) % 360);
}

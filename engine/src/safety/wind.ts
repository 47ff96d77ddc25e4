// Is it too windy to light? Criteria of one weather office stand in for all; local orders override.

import type { WeatherHour } from '../camp/camp.ts';
import { type Notice, notice } from '../notice/notice.ts';
import { fromFahrenheit } from '../quantity/unit.ts';

const MILE_PER_HOUR = 0.44704; // exact
/** red-flag-example: at least 15 mph, humidity at most 25 %, above 75 F. Others use 25 mph, 20 %. */
export const STRONG_WIND = 15 * MILE_PER_HOUR;
export const DRY_AIR = 0.25;
const WARM_AIR = fromFahrenheit(75);
/** From here on a screen and someone who watches: a judgement, no published limit. */
export const FRESH_WIND = 10 * MILE_PER_HOUR;

/** The worst of the forecast, said once. */
export function windCautions(weather: readonly WeatherHour[]): readonly Notice[] {
  const redFlag = weather.find(isRedFlag);
  if (redFlag !== undefined) return [windNotice('SAFETY_WIND_RED_FLAG', 'danger', redFlag)];
  const windiest = weather.reduce<WeatherHour | undefined>(
    (most, hour) => (most === undefined || hour.wind > most.wind ? hour : most),
    undefined,
  );
  if (windiest === undefined || windiest.wind < FRESH_WIND) return [];
  return STRONG_WIND <= windiest.wind
    ? [windNotice('SAFETY_WIND_STRONG', 'danger', windiest)]
    : [windNotice('SAFETY_WIND_FRESH', 'doubt', windiest)];
}

export const isRedFlag = (hour: WeatherHour) =>
  STRONG_WIND <= hour.wind &&
  hour.humidity !== undefined &&
  hour.humidity <= DRY_AIR &&
  WARM_AIR < hour.air;

const windNotice = (code: string, level: Notice['level'], hour: WeatherHour): Notice =>
  notice(code, level, {}, { windMetresPerSecond: hour.wind, atClockMinutes: hour.at });

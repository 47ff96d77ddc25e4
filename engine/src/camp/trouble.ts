// Is this a camp that can be cooked in? Found before any stage computes from it.

import { type Notice, type NoticeValues, notice, type Refusal, refusal } from '../notice/notice.ts';
import { fromCelsius } from '../quantity/unit.ts';
import { CAMP_ELEVATION } from './air.ts';
import type { Camp, Hand, WeatherHour } from './camp.ts';
import { knowsWeatherAt } from './weather.ts';

export interface CampTrouble {
  readonly refusals: readonly Refusal[];
  readonly notices: readonly Notice[];
}

const WIND_MOST = 30; // ours: past a violent storm nothing on legs stays put [m/s]
const AIR_LOWEST = fromCelsius(-40); // ours: past that neither dough nor hands work
const AIR_HIGHEST = fromCelsius(55);
// Common practice, no source: fire watches warn from a steady 15 mph or gusts of 25 mph.
const WIND_WARNING = 6.7;
const GUST_WARNING = 11.2;

/** Everything that makes the camp impossible, and everything that makes it doubtful. */
export function campTrouble(camp: Camp): CampTrouble {
  return {
    refusals: [...peopleRefusals(camp), ...placeRefusals(camp), ...weatherRefusals(camp)],
    notices: [...weatherNotices(camp), ...fuelNotices(camp)],
  };
}

function peopleRefusals({ hands, ovens }: Camp): readonly Refusal[] {
  const upsideDown = [
    ...hands.filter((hand) => hand.to <= hand.from).map(hoursRefusal),
    ...hands.flatMap(awayRefusals),
  ];
  return [
    ...(hands.length === 0 ? [refusal('CAMP_NO_HANDS', ['hands'])] : []),
    ...upsideDown,
    ...(ovens.length === 0 ? [refusal('CAMP_NO_OVENS', ['ovens'])] : []),
  ];
}

function hoursRefusal(hand: Hand): Refusal {
  const conflicts = [`hands.${hand.id}.from`, `hands.${hand.id}.to`];
  const values = { fromClockMinutes: hand.from, toClockMinutes: hand.to };
  return refusal('CAMP_HANDS_HOURS_UPSIDE_DOWN', conflicts, { hand: hand.id }, values);
}

/** Away from a later minute to a sooner one. */
const awayRefusals = ({ id, away = [] }: Hand): readonly Refusal[] =>
  away.flatMap(({ from, to }, index) => {
    if (from < to) return [];
    const path = `hands.${id}.away.${index}`;
    const values = { fromClockMinutes: from, toClockMinutes: to };
    const conflicts = [`${path}.from`, `${path}.to`];
    return [refusal('CAMP_HANDS_HOURS_UPSIDE_DOWN', conflicts, { hand: id }, values)];
  });

function placeRefusals({ place }: Camp): readonly Refusal[] {
  const { lowest, highest } = CAMP_ELEVATION;
  if (lowest <= place.elevation && place.elevation <= highest) return [];
  const values = {
    elevationMetres: place.elevation,
    lowestMetres: lowest,
    highestMetres: highest,
  };
  return [refusal('CAMP_ELEVATION_OUTSIDE_RANGE', ['place.elevation'], {}, values)];
}

/** One refusal a kind, for the first such hour: twenty hours in °F by mistake are one mistake. */
function weatherRefusals({ weather }: Camp): readonly Refusal[] {
  const tooWindy = weather.find((hour) => !(0 <= hour.wind && hour.wind <= WIND_MOST));
  const oddAir = weather.find((hour) => !(AIR_LOWEST <= hour.air && hour.air <= AIR_HIGHEST));
  const refusals: Refusal[] = [];
  if (tooWindy) {
    refusals.push(
      refusal(
        'CAMP_WIND_TOO_STRONG',
        ['weather.wind'],
        {},
        {
          windMetresPerSecond: tooWindy.wind,
          atClockMinutes: tooWindy.at,
        },
      ),
    );
  }
  if (oddAir) {
    const values = { airKelvin: oddAir.air, atClockMinutes: oddAir.at };
    refusals.push(refusal('CAMP_AIR_OUTSIDE_RANGE', ['weather.air'], {}, values));
  }
  return refusals;
}

function weatherNotices(camp: Camp): readonly Notice[] {
  if (camp.weather.length === 0) return [notice('CAMP_WEATHER_MISSING', 'doubt')];
  return [...forecastNotices(camp), ...gustNotices(camp)];
}

function forecastNotices(camp: Camp): readonly Notice[] {
  const unknown = camp.hands
    .flatMap((hand) => [hand.from, hand.to])
    .filter((at) => !knowsWeatherAt(camp, at));
  if (unknown.length === 0) return [];
  const values: NoticeValues = {
    firstClockMinutes: Math.min(...camp.weather.map((hour) => hour.at)),
    lastClockMinutes: Math.max(...camp.weather.map((hour) => hour.at)),
    fromClockMinutes: Math.min(...unknown),
    toClockMinutes: Math.max(...unknown),
  };
  return [notice('CAMP_WEATHER_BEYOND_FORECAST', 'doubt', {}, values)];
}

function gustNotices({ weather }: Camp): readonly Notice[] {
  const windy = weather.filter((hour) => hour.gust >= GUST_WARNING || hour.wind >= WIND_WARNING);
  const worst = highestBy(windy, (hour) => Math.max(hour.gust, hour.wind));
  if (!worst) return [];
  const values = {
    windMetresPerSecond: worst.wind,
    gustMetresPerSecond: Math.max(worst.gust, worst.wind),
    atClockMinutes: worst.at,
  };
  return [notice('CAMP_GUSTS_STRONG', 'danger', {}, values)];
}

function fuelNotices({ fuel }: Camp): readonly Notice[] {
  const isUnknown = fuel.kind === 'briquettes' && fuel.onHand === undefined;
  return isUnknown ? [notice('CAMP_FUEL_UNKNOWN', 'note')] : [];
}

function highestBy(
  hours: readonly WeatherHour[],
  measure: (hour: WeatherHour) => number,
): WeatherHour | undefined {
  return hours.reduce<WeatherHour | undefined>(
    (best, hour) => (best && measure(best) >= measure(hour) ? best : hour),
    undefined,
  );
}

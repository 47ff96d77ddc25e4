// What a cook without instruments can say of wind and air, as numbers with their doubt.
// Sources: wmo306 for the wind; the air words and what is usual are ours, no source.

import {
  clockMinutes,
  degrees,
  fromCelsius,
  grams,
  type Kelvin,
  kelvin,
  type MetresPerSecond,
  metres,
  metresPerSecond,
} from '../quantity/unit.ts';
import type { WeatherHour } from './camp.ts';

/** Signs of the wind, calmest first. */
export const windSigns = [
  'smoke-rises-straight',
  'ash-drifts',
  'leaves-rustle',
  'twigs-keep-moving',
  'ash-and-dust-fly',
  'small-trees-sway',
  'big-branches-move',
  'whole-trees-move',
] as const;
export type WindSign = (typeof windSigns)[number];

export interface WindSense {
  /** Beaufort force. */
  readonly force: number;
  /** At 10 m above open ground, like a forecast. */
  readonly wind: MetresPerSecond;
  readonly lowest: MetresPerSecond;
  readonly highest: MetresPerSecond;
}

// wmo306 code table 1100: equivalent speed at 10 m, m/s, lower and upper end of force 0 … 7
const BEAUFORT_METRES_PER_SECOND = [
  [0, 0.2],
  [0.3, 1.5],
  [1.6, 3.3],
  [3.4, 5.4],
  [5.5, 7.9],
  [8.0, 10.7],
  [10.8, 13.8],
  [13.9, 17.1],
] as const;

/** Wind from what leaves, ash and trees do. */
export function windFromSign(sign: WindSign): WindSense {
  const force = windSigns.indexOf(sign);
  const [lowest, highest] = BEAUFORT_METRES_PER_SECOND[force]!;
  return {
    force,
    wind: metresPerSecond((lowest + highest) / 2),
    lowest: metresPerSecond(lowest),
    highest: metresPerSecond(highest),
  };
}

/** The same for force 8 … 11; 12 has no upper end. */
const STORMS_METRES_PER_SECOND = [
  [17.2, 20.7],
  [20.8, 24.4],
  [24.5, 28.4],
  [28.5, 32.6],
  [32.7, 32.7],
] as const;

export const MOST_BEAUFORT = 12;

/** Wind at 10 m in the middle of a Beaufort force, 0 … 12. @source wmo306 code table 1100 */
export function windFromForce(force: number): MetresPerSecond {
  const ends = [...BEAUFORT_METRES_PER_SECOND, ...STORMS_METRES_PER_SECOND][force];
  if (ends === undefined) throw new RangeError(`no Beaufort force ${force}`);
  return metresPerSecond((ends[0] + ends[1]) / 2);
}

/** Beaufort force of a wind at 10 m, 0 … 8 (8 stands for all that is stronger). */
export function beaufortOf(wind: MetresPerSecond): number {
  const force = BEAUFORT_METRES_PER_SECOND.findIndex(([, highest]) => wind < highest + 0.05);
  return force === -1 ? BEAUFORT_METRES_PER_SECOND.length : force;
}

export const airWords = ['frost', 'cold', 'mild', 'hot'] as const;
export type AirWord = (typeof airWords)[number];

export interface AirSense {
  readonly air: Kelvin;
  readonly lowest: Kelvin;
  readonly highest: Kelvin;
}

// Ours, no source: what the words mean to someone outdoors in a jacket [°C].
const AIR_CELSIUS: Readonly<Record<AirWord, readonly [number, number]>> = {
  frost: [-12, 0],
  cold: [0, 10],
  mild: [10, 22],
  hot: [22, 38],
};

export function airFromWord(word: AirWord): AirSense {
  const [lowest, highest] = AIR_CELSIUS[word];
  return {
    air: kelvin(fromCelsius((lowest + highest) / 2)),
    lowest: fromCelsius(lowest),
    highest: fromCelsius(highest),
  };
}

/** Mild air and a light breeze, when the cook says nothing; ours, no source. */
export const usualWeather: WeatherHour = {
  at: clockMinutes(0),
  air: airFromWord('mild').air,
  wind: windFromSign('leaves-rustle').wind,
  gust: windFromSign('leaves-rustle').highest,
  windFrom: degrees(270),
};

/** What stands in for everything the cook has not said; each is told to the cook and can change. */
export const usualCamp = {
  elevation: metres(150),
  ground: 'soil',
  hearth: 'ground',
  pieceMass: grams(25),
  chimneys: 1,
  chimneyfulCoals: 100, // a usual chimney full of briquettes; from memory, no source
  hands: 1,
  gustPerWind: 1.5, // of a light breeze; from memory, no source
} as const;

// How warm the water must be for a dough of the wanted temperature.

import { type OrRefusal, refusal } from '../notice/notice.ts';
import {
  fromCelsius,
  type Grams,
  type Kelvin,
  type KelvinDifference,
  kelvin,
  kelvinDifference,
} from '../quantity/unit.ts';

const FLOUR_JOULES_PER_GRAM_KELVIN = 1.7; // from memory (1.6 … 1.8), grade D
const WATER_JOULES_PER_GRAM_KELVIN = 4.19;
const COLDEST = fromCelsius(0);
const HOTTEST = fromCelsius(54); // yeast dies at 140 °F, yeastHandout; 54 °C leaves room (judged)

export interface DoughHeat {
  readonly wanted: Kelvin;
  readonly flour: Grams;
  readonly flourTemperature: Kelvin;
  readonly water: Grams;
  /** Warming by kneading; about 3 K by hand (one baker, grade D). */
  readonly friction?: KelvinDifference;
}

/**
 * Water temperature by heat balance: the flour's heat and the water's make the dough's.
 *
 * Out of doors flour may be at 5 °C, where the bakery rule of three is far off; see ruleOfThree.
 *
 * @refuses FORMULA_WATER_OUT_OF_REACH — ice or water that kills yeast would be needed
 * @source doughTemperatures (grade B), heat of flour from memory (grade D)
 */
export function waterTemperatureFor(dough: DoughHeat): OrRefusal<Kelvin> {
  const flourHeat = dough.flour * FLOUR_JOULES_PER_GRAM_KELVIN;
  const waterHeat = dough.water * WATER_JOULES_PER_GRAM_KELVIN;
  const mixed = dough.wanted - (dough.friction ?? 0);
  const water = kelvin(
    (mixed * (flourHeat + waterHeat) - flourHeat * dough.flourTemperature) / waterHeat,
  );
  return COLDEST <= water && water <= HOTTEST
    ? water
    : refusal(
        'FORMULA_WATER_OUT_OF_REACH',
        ['dough temperature', 'flour temperature'],
        {},
        {
          wantedKelvin: dough.wanted,
          flourKelvin: dough.flourTemperature,
          ...(Number.isFinite(water) ? { waterKelvin: water } : {}),
        },
      );
}

/** Temperature of a dough from its flour and water; the same balance, read the other way. */
export function doughTemperatureFrom(
  dough: Omit<DoughHeat, 'wanted'> & { waterTemperature: Kelvin },
) {
  const flourHeat = dough.flour * FLOUR_JOULES_PER_GRAM_KELVIN;
  const waterHeat = dough.water * WATER_JOULES_PER_GRAM_KELVIN;
  const mixed = flourHeat * dough.flourTemperature + waterHeat * dough.waterTemperature;
  return kelvin(mixed / (flourHeat + waterHeat) + (dough.friction ?? 0));
}

/**
 * The bakery rule: water = 3 × wanted − flour − room − friction. A rule for rooms, not for hills.
 *
 * @source doughTemperatures (grade B)
 */
export function ruleOfThree(room: {
  wanted: Kelvin;
  flourTemperature: Kelvin;
  room: Kelvin;
  friction: KelvinDifference;
}): Kelvin {
  return kelvin(3 * room.wanted - room.flourTemperature - room.room - room.friction);
}

export const handFriction = kelvinDifference(5 / 1.8); // about 5 °F by hand, one baker (grade D)

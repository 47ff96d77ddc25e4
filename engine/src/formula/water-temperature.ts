// How warm the water must be for a dough of the wanted temperature.

import { type OrRefusal, refusal } from '../notice/notice.ts';
import {
  fromCelsius,
  type Grams,
  grams,
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
  /** Of one gram of the liquid [J/(g·K)]; water's if not said. */
  readonly liquidHeat?: number;
  /** Of all that comes as warm as the flour: eggs, fat, sugar, a starter [J/K]. */
  readonly restHeat?: number;
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
  const water = waterWanted(dough);
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
  const [flourHeat, waterHeat] = heatsOf(dough);
  const mixed = flourHeat * dough.flourTemperature + waterHeat * dough.waterTemperature;
  return kelvin(mixed / (flourHeat + waterHeat) + (dough.friction ?? 0));
}

/** Of what is as warm as the flour, and of what is warmed for it [J/K]. */
const heatsOf = (dough: Omit<DoughHeat, 'wanted'>) =>
  [
    dough.flour * FLOUR_JOULES_PER_GRAM_KELVIN + (dough.restHeat ?? 0),
    dough.water * (dough.liquidHeat ?? WATER_JOULES_PER_GRAM_KELVIN),
  ] as const;

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

export interface DoughWater {
  /** Of all the water as it goes in, ice melted; never below freezing, never what harms yeast. */
  readonly water: Kelvin;
  /** Part of the water that is weighed as ice. */
  readonly ice?: Grams;
  /** The dough that comes of it; not the wanted one where the water can't reach it. */
  readonly dough: Kelvin;
  readonly limit?: 'too hot for yeast' | 'all ice' | 'as cold as it gets' | 'nothing to warm';
  /** What is warmed, by its names in the recipe; undefined where nobody said: water. */
  readonly warmed?: readonly string[];
  /** Eggs are in it: they come as warm as the flour, never warmed by themselves. */
  readonly hasEgg?: boolean;
}

const MELTING_JOULES_PER_GRAM = 333.55; // heat of fusion of ice (from memory; 144 BTU a pound, iceTable)

/**
 * Water for a dough as it can be had: hot up to what yeast bears, cold by ice; the nearest dough
 * where that is not enough.
 *
 * @param tap      water as it comes, for the ice        [K]
 * @param hottest  of what is warmed; water if not said   [K]
 * @param iceMost  as much of it may be ice; all of it if not said
 * @source      doughTemperatures (grade B), iceTable (grade B)
 */
export function doughWater(
  dough: DoughHeat & {
    readonly tap: Kelvin;
    readonly hottest?: Kelvin;
    readonly iceMost?: Grams;
  },
): DoughWater | undefined {
  const { hottest = HOTTEST, iceMost = dough.water } = dough;
  const wanted = waterWanted(dough);
  if (!Number.isFinite(wanted)) return undefined;
  if (hottest < wanted) return withLiquidAt(dough, hottest, 'too hot for yeast');
  const fromTap = Math.min(dough.tap, hottest);
  if (COLDEST <= wanted && fromTap - wanted < WORTH_ICE_KELVIN) {
    return { water: wanted, dough: dough.wanted };
  }
  if (!(0 < iceMost)) {
    if (COLDEST <= wanted) return { water: wanted, dough: dough.wanted };
    return withLiquidAt(dough, COLDEST, 'as cold as it gets');
  }
  const ice = iceFor({ water: dough.water, tap: kelvin(fromTap), wanted });
  const isAll = iceMost <= ice;
  return {
    water: kelvin(Math.max(COLDEST, wanted)),
    ice: grams(Math.min(ice, iceMost)),
    dough: isAll ? allIceDough(dough, iceMost) : dough.wanted,
    ...(isAll ? { limit: 'all ice' as const } : {}),
  };
}

const withLiquidAt = (
  dough: DoughHeat,
  water: Kelvin,
  limit: NonNullable<DoughWater['limit']>,
): DoughWater => ({
  water,
  dough: doughTemperatureFrom({ ...dough, waterTemperature: water }),
  limit,
});

/** Less than this and colder water from the tap or the shade does it. */
const WORTH_ICE_KELVIN = 2;

/**
 * Ice that takes the place of so much water: it melts and warms as the rest cools.
 *
 * @param wanted  may lie below freezing: it is reckoned, as bakers' ice tables do
 * @source        iceTable (grade B): (tap − wanted) over (tap + 112), °F
 */
export function iceFor(of: { water: Grams; tap: Kelvin; wanted: Kelvin }): Grams {
  const melts = MELTING_JOULES_PER_GRAM / WATER_JOULES_PER_GRAM_KELVIN + (of.tap - COLDEST);
  return grams(Math.max(0, (of.water * (of.tap - of.wanted)) / melts));
}

function waterWanted(dough: DoughHeat): Kelvin {
  const [flourHeat, waterHeat] = heatsOf(dough);
  const mixed = dough.wanted - (dough.friction ?? 0);
  return kelvin((mixed * (flourHeat + waterHeat) - flourHeat * dough.flourTemperature) / waterHeat);
}

/** With all the ice that can go in, in place of water: as cold as a dough can be made. */
const allIceDough = (dough: DoughHeat, ice: Grams): Kelvin => {
  const share = 0 < dough.water ? ice / dough.water : 1;
  const liquidHeat = dough.liquidHeat ?? WATER_JOULES_PER_GRAM_KELVIN;
  const melts = kelvin(COLDEST - (share * MELTING_JOULES_PER_GRAM) / liquidHeat);
  return doughTemperatureFrom({ ...dough, waterTemperature: melts });
};

export const handFriction = kelvinDifference(5 / 1.8); // about 5 °F by hand, one baker (grade D)

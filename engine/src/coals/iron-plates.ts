// Lid and floor of an oven as round plates under their coals, at the temperatures of a bake.
// Sources: network.ts (all flows), coalsOvenModelNotes 5.6 (plate), burnWind (windward coals).
// Weak spot: one coefficient for the whole plate, the shelter under coals averaged; rim flows go
// where the plate ends, whole; the share of the wind that the lee side feels is a guess.

import type { CoalPlace } from './coal-plan.ts';
import type { OvenBody } from './geometry.ts';
import { flowsAt, freeLidArea, type IronState, type Supply, skinAt } from './network.ts';
import { cube, fourth, parameter, STEFAN_BOLTZMANN } from './parameters.ts';
import type { Plate } from './plate/chain.ts';
import { fluxOf, type Harmonics, type Shapes } from './plate/patch.ts';
import { ringArea, ringsOfPlate } from './plate/rings.ts';
import { type OvenMoment, type RunSetting, strengthsOf, supplyOf } from './run.ts';

/** How finely a plate is cut. */
export interface FoodHow {
  readonly rings: number;
  readonly highest: number;
}

/** Pan-wide patterns and the ripple of a dozen coals; held against the fine plate by a test. */
export const FOOD_HOW: FoodHow = { rings: 24, highest: 12 };
/** Enough to choose turns by: what they even out is as wide as the pan. */
export const ROUGH_HOW: FoodHow = { rings: 12, highest: 4 };

/** Mean state over a bake. */
export interface BakeMean {
  readonly iron: IronState;
  readonly supply: Supply;
}

export const bakeMean = (
  setting: RunSetting,
  moments: readonly OvenMoment[],
  stay: { readonly loadInMinute: number; readonly outMinute: number },
): BakeMean => {
  const strengths = strengthsOf(setting);
  const during = moments.filter(
    ({ minute }) => stay.loadInMinute <= minute && minute <= stay.outMinute,
  );
  const seen = during.length > 0 ? during : moments.slice(-1);
  const supplies = seen.map((moment) => supplyOf(moment.coals, strengths));
  const mean = (values: readonly number[]) =>
    values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
  return {
    iron: {
      lid: mean(seen.map(({ iron }) => iron.lid)),
      wall: mean(seen.map(({ iron }) => iron.wall)),
      floor: mean(seen.map(({ iron }) => iron.floor)),
    },
    supply: {
      above: mean(supplies.map((supply) => supply.above)),
      below: mean(supplies.map((supply) => supply.below)),
      covering: mean(supplies.map((supply) => supply.covering)),
    },
  };
};

/** One face of the oven that the food sees. */
export interface IronPlate {
  readonly plate: Plate;
  /** From all its coals. */
  readonly watts: number;
  /** Leaves over the rim: into the wall, and off a lid's flange into the air. */
  readonly rimWatts: number;
}

export interface IronPlates {
  readonly lid: IronPlate;
  readonly floor: IronPlate;
}

export const ironPlates = (setting: RunSetting, mean: BakeMean): IronPlates => {
  const { body, outside } = setting;
  const { iron, supply } = mean;
  const skin = skinAt(body, iron, outside);
  const flows = flowsAt({ body, outside, supply, skin, sinkWatts: 0 }, iron);
  const air = outside.airKelvin;
  const outwards = skin.lid + 4 * SIGMA_OUT * cube((iron.lid + air) / 2);
  const freeShare = (freeLidArea(body, supply.covering) - body.rimArea) / body.lidArea;
  const rimLoss =
    body.rimArea * (skin.lid * (iron.lid - air) + SIGMA_OUT * (fourth(iron.lid) - fourth(air)));
  return {
    lid: {
      plate: plateOf(body, body.lidDiameter, inwards(iron.lid) + freeShare * outwards),
      watts: flows.fromAbove,
      rimWatts: rimLoss + body.lidToWall * (iron.lid - iron.wall),
    },
    floor: {
      plate: plateOf(body, body.floorDiameter, inwards(iron.floor)),
      watts: flows.fromBelow,
      rimWatts: body.floorToWall * (iron.floor - iron.wall),
    },
  };
};

const SIGMA_OUT = parameter('emissivityOutside') * STEFAN_BOLTZMANN;

// Inside heat goes by radiation to the star node, as in the network; its slope at this heat.
const inwards = (ironKelvin: number) =>
  4 * parameter('emissivityInside') * STEFAN_BOLTZMANN * cube(ironKelvin);

const plateOf = (body: OvenBody, diameterMetres: number, lossCoefficient: number): Plate => ({
  radiusMetres: diameterMetres / 2,
  spreadWattsPerKelvin: parameter('ironConductivityWattsPerMetreKelvin') * body.thickness,
  joulesPerSquareMetreKelvin:
    parameter('ironGramsPerCubicMetre') * parameter('ironJoulesPerGramKelvin') * body.thickness,
  lossWattsPerSquareMetreKelvin: lossCoefficient,
});

/** Coals that are stronger to one side. */
export interface OneSided {
  /** Clockwise from north, in the frame of the places. */
  readonly fromRadians: number;
  /** Half the difference between the two sides beside their mean. */
  readonly share: number;
}

export interface LaidCoals {
  readonly places: readonly CoalPlace[];
  readonly coalWidth: number;
  /** How finely the plate is cut, and shapes met before on it. */
  readonly how: FoodHow;
  readonly shapes: Shapes;
}

/** Flux of the coals at their places, less what leaves over the rim [W/m2]. */
export const fluxUnder = (
  { plate, watts, rimWatts }: IronPlate,
  coals: LaidCoals,
  oneSided: OneSided,
): Harmonics => {
  const { how, shapes } = coals;
  const rings = ringsOfPlate(plate.radiusMetres, how.rings);
  const weights = weightsOf(coals.places, oneSided);
  const patches = coals.places.map(({ x, y }, index) => ({
    radiusMetres: Number(Math.hypot(x, y).toFixed(6)), // one shape for one ring
    angleRadians: Math.atan2(y, x),
    sideMetres: coals.coalWidth,
    watts: watts * weights[index]!,
  }));
  const flux = fluxOf(patches, rings, how.highest, shapes);
  const last = rings.count - 1;
  flux.along[0]![last]! -= rimWatts / ringArea(rings, last);
  return flux;
};

const weightsOf = (
  places: readonly CoalPlace[],
  { fromRadians, share }: OneSided,
): readonly number[] => {
  const widest = Math.max(1e-6, ...places.map(({ x, y }) => Math.hypot(x, y)));
  const weights = places.map(
    ({ x, y }) => 1 + (share * (x * Math.sin(fromRadians) + y * Math.cos(fromRadians))) / widest,
  );
  const sum = weights.reduce((whole, weight) => whole + weight, 0);
  return weights.map((weight) => weight / sum);
};

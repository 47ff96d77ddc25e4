// How much heat ice takes up, food gives off and a wall lets in.
// Sources: iceSurfaceText and fao-ice for ice, iceChest for foam, lidOpenings for lids, bergman2011
// for the corners of a box, siebel1892 for food.

import table from '../../../data/ice.json' with { type: 'json' };
import type { CoolerInside } from '../../camp/stores.ts';
import {
  fromCelsius,
  type Grams,
  grams,
  type Joules,
  joules,
  type Kelvin,
  type KelvinDifference,
  type Metres,
  type Watts,
  watts,
} from '../../quantity/unit.ts';

export const iceFigure = (key: string): number => {
  const row = table.rows.find((each) => each.key === key);
  if (row === undefined) throw new RangeError(`no figure of ice "${key}"`);
  return row.value;
};

export interface IceFigures {
  /** [kJ/kg] */
  readonly fusion: number;
  /** [kJ/(kg K)] */
  readonly ice: number;
  readonly water: number;
}

export const usualIce: IceFigures = {
  fusion: iceFigure('fusionKilojoulesPerKilogram'),
  ice: iceFigure('iceKilojoulesPerKilogramKelvin'),
  water: iceFigure('waterKilojoulesPerKilogramKelvin'),
};

const MELTING = fromCelsius(0);

/**
 * Heat that ice takes up until its water is as warm as `to`.
 *
 * @param from  the ice                    [K]  up to 273.15
 * @param to    its water in the end       [K]  from 273.15
 * @source iceSurfaceText (fusion 334 kJ/kg, 2.101 and 4.218 kJ/(kg K))
 * @example 25 lb from 5 °F to 40 °F → 4,140 Btu with the figures of the refrigeration text
 */
export function iceHeat(
  mass: Grams,
  between: { readonly from: Kelvin; readonly to: Kelvin },
  figures: IceFigures = usualIce,
): Joules {
  const cold = Math.max(0, MELTING - between.from);
  const warm = Math.max(0, between.to - MELTING);
  return joules(mass * (figures.ice * cold + figures.fusion + figures.water * warm)); // iceSurfaceText
}

/** Ice that takes up so much heat. */
export const iceFor = (
  heat: Joules,
  between: { readonly from: Kelvin; readonly to: Kelvin },
): Grams => grams(heat / iceHeat(grams(1), between));

/**
 * Heat that food gives off on its way down.
 *
 * @param water  its share of water, 0 … 1
 * @source siebel1892: c = 0.837 + 3.349 w kJ/(kg K), above freezing
 */
export const foodHeat = (mass: Grams, water: number, cooled: KelvinDifference): Joules =>
  joules(mass * (0.837 + 3.349 * water) * Math.max(0, cooled)); // siebel1892

/** Flat wall: k A / x. */
export const wallLeak = (wall: {
  readonly squareMetres: number;
  readonly thickness: Metres;
  readonly wattsPerMetreKelvin: number;
  readonly warmer: KelvinDifference;
}): Watts => watts((wall.wattsPerMetreKelvin * wall.squareMetres * wall.warmer) / wall.thickness); // iceChest

/**
 * Heat through the walls of a closed box, its edges and corners counted.
 *
 * Neither the inner nor the outer area is right for a thick wall: six flat walls, twelve edges and
 * eight corners conduct side by side.
 *
 * @source bergman2011 table 4.1, cases 8 and 9: edge 0.54 D, corner 0.15 L
 * @valid  inside measures more than a fifth of the wall
 */
export function boxLeak(
  { length, width, height }: CoolerInside,
  wall: Metres,
  warmer: KelvinDifference,
): Watts {
  const faces = (2 * (length * width + length * height + width * height)) / wall;
  const edges = 0.54 * 4 * (length + width + height); // bergman2011 table 4.1 case 8
  const corners = 0.15 * 8 * wall; // bergman2011 table 4.1 case 9
  return watts(FOAM * (faces + edges + corners) * warmer);
}

const FOAM = iceFigure('foamWattsPerMetreKelvin');

/** What one opening of the lid lets in; by the room of the box, as one test found it. */
export const openingHeat = ({ length, width, height }: CoolerInside): Joules =>
  joules(iceFigure('openingJoulesPerLitre') * length * width * height * 1000); // lidOpenings

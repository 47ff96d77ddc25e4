// What an oven of this size is like when nobody measured it.

import table from '../../data/ovens.json' with { type: 'json' };
import type { CampOven } from '../camp/camp.ts';
import { fromUnit, inUnit } from '../quantity/convert.ts';
import type { Metres } from '../quantity/unit.ts';

type OvenRow = (typeof table.rows)[number];

/** 8 and 16 inches, and what a metric cook calls them: 20 and 41 cm. */
const LEAST_METRES = 0.2;
const MOST_METRES = 0.41;
const ROUNDING = 1e-9;

export const isKnownSize = (diameterMetres: number) =>
  LEAST_METRES - ROUNDING <= diameterMetres && diameterMetres <= MOST_METRES + ROUNDING;

/**
 * An oven as usually made. Between two sizes of the table it is drawn straight; a style that the
 * table does not go up to is taken from the largest of that style, scaled by area.
 *
 * @param diameter  nominal                      [m]   0.2 … 0.41
 * @throws          RangeError — outside 0.2 … 0.41 m: ask isKnownSize first
 * @source          ovenSizing (grade B, D where the table says so)
 */
export function nominalOven(diameter: Metres, style: CampOven['style'] = 'regular'): CampOven {
  if (!isKnownSize(diameter)) throw new RangeError(`no oven of ${diameter} m`);
  const inches = inUnit(diameter, 'inch');
  const row = rowAt(inches, style);
  return {
    id: 'A',
    name: `${sizeName(diameter)} ${style}`,
    diameter,
    depth: fromUnit(row.depthInches, 'inch'),
    style,
    capacity: fromUnit(row.capacityQuarts, 'us-quart'),
    mass: fromUnit(row.massPounds, 'pound'),
    keptFreeOf: [],
  };
}

/** As it was most likely said: `12-inch`, or `30-cm` where only the centimetres are whole. */
function sizeName(diameter: Metres): string {
  const inches = inUnit(diameter, 'inch');
  const isWhole = (number: number) => Math.abs(number - Math.round(number)) < 0.01;
  return isWhole(100 * diameter) && !isWhole(4 * inches)
    ? `${Math.round(100 * diameter)}-cm`
    : `${Math.round(inches * 10) / 10}-inch`;
}

function rowAt(inches: number, style: CampOven['style']): Omit<OvenRow, 'style' | 'grade'> {
  const rows = table.rows.filter((row) => row.style === style);
  const above = rows.find((row) => inches <= row.diameterInches + 1e-6);
  const below = rows.findLast((row) => row.diameterInches <= inches + 1e-6);
  if (above === undefined) return byArea(rows.at(-1)!, inches);
  if (below === undefined) return byArea(rows[0]!, inches);
  const width = above.diameterInches - below.diameterInches;
  const part = width === 0 ? 0 : (inches - below.diameterInches) / width;
  const between = (key: 'depthInches' | 'capacityQuarts' | 'massPounds') =>
    below[key] + part * (above[key] - below[key]);
  return {
    diameterInches: inches,
    depthInches: between('depthInches'),
    capacityQuarts: between('capacityQuarts'),
    massPounds: between('massPounds'),
  };
}

function byArea(row: OvenRow, inches: number): Omit<OvenRow, 'style' | 'grade'> {
  const area = (inches / row.diameterInches) ** 2;
  return {
    diameterInches: inches,
    depthInches: row.depthInches,
    capacityQuarts: row.capacityQuarts * area,
    massPounds: row.massPounds * area,
  };
}

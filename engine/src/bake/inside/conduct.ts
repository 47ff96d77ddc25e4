// How well do the slices conduct now, and how thick are they?
// Source: maxwell1873 (pores strewn in a dense body); devries1958 (steam across a pore).

import { denseVolume, reachOf, type Slices, shellArea } from './body.ts';
import * as constants from './constants.ts';
import { rowAt, steamBetween } from './physics.ts';
import type { Inside } from './state.ts';

// Read once: the inner loops run a million times.
const { DRY_CONDUCTIVITY, WATER_CONDUCTIVITY, WATER_DENSITY } = constants;

/** Rise, edges, areas and the passage of water, from the state at the start of a step. */
export function measureSlices({ slices, tuning, work }: Inside): void {
  const { count, shape, dry, hottest } = slices;
  const { edge, area, volume, waterBetween, waterHalf } = work;
  let reached = 0;
  edge[0] = 0;
  area[0] = shellArea(shape, 0);
  for (let slice = 0; slice < count; slice += 1) {
    volume[slice] = slices.rawVolume * riseAt(slices, hottest[slice]!);
    reached += dry[slice]! * volume[slice]!;
    edge[slice + 1] = reachOf(shape, reached);
    area[slice + 1] = shellArea(shape, edge[slice + 1]!);
    const thickness = edge[slice + 1]! - edge[slice]!;
    waterHalf[slice] = (2 * tuning.waterDiffusivity) / (thickness * volume[slice]!);
  }
  for (let slice = 0; slice + 1 < count; slice += 1) {
    const [lower, upper] = [waterHalf[slice]!, waterHalf[slice + 1]!];
    waterBetween[slice] = (area[slice + 1]! * lower * upper) / (lower + upper);
  }
}

/** Dough grows from where it starts until its starch has stiffened it at 70 °C: a judgement. */
const STIFF_KELVIN = 343.15;

/** Volume over raw volume of dough that has been as hot as this. */
export function riseAt({ rise, startKelvin }: Slices, hottestKelvin: number): number {
  const way = Math.max(1, STIFF_KELVIN - startKelvin);
  return 1 + (rise - 1) * Math.min(1, Math.max(0, (hottestKelvin - startKelvin) / way));
}

/** Between middles of slices, and from the outer ones to their skins, at the temperatures in `work`. */
export function conductAt(inside: Inside): void {
  const { slices, work, bottom, top } = inside;
  const { area, between, kelvin, half } = work;
  const last = slices.count - 1;
  for (let slice = 0; slice < last; slice += 1) {
    const next = slice + 1;
    const pore = poreBetween(inside, slice, next, kelvin[slice]!, kelvin[next]!);
    const lower = passageOf(inside, slice, pore);
    const upper = passageOf(inside, next, pore);
    between[slice] = (area[next]! * lower * upper) / (lower + upper);
  }
  half[0] = passageOf(inside, 0, poreBetween(inside, 0, 0, kelvin[0]!, bottom.kelvin));
  half[1] = passageOf(inside, last, poreBetween(inside, last, last, kelvin[last]!, top.kelvin));
}

/** Through half a slice [W/(m2 K)]. */
function passageOf({ slices, work }: Inside, slice: number, pore: number): number {
  const conductivity = crumbConductivity(slices.water[slice]!, work.volume[slice]!, pore);
  return (2 * conductivity) / (work.edge[slice + 1]! - work.edge[slice]!);
}

/** Crumb drier than this has no free water to send through its pores [kg/kg]: a judgement. */
const FREE_WATER = 0.15;

function poreBetween(
  { slices, physics, tuning }: Inside,
  slice: number,
  next: number,
  one: number,
  other: number,
): number {
  const water = (slices.water[slice]! + slices.water[next]!) / 2;
  const wet = Math.min(1, water / FREE_WATER);
  const steam = tuning.steamInPores * wet * steamBetween(physics.steamSum, one, other);
  return steam + rowAt(physics.stillPore, (one + other) / 2);
}

/**
 * Conductivity of crumb [W/(m K)].
 *
 * @param water   to one of dry [kg/kg]
 * @param volume  to one of dry [m3/kg]
 * @param pore    conductivity of what fills its pores [W/(m K)]
 * @source        maxwell1873 (exact for few pores, good for many closed ones)
 */
export function crumbConductivity(water: number, volume: number, pore: number): number {
  const dense = denseVolume(water);
  const wetShare = water / (WATER_DENSITY * dense);
  const solid = DRY_CONDUCTIVITY + (WATER_CONDUCTIVITY - DRY_CONDUCTIVITY) * wetShare;
  const open = Math.max(0, 1 - dense / volume);
  const less = open * (solid - pore);
  return (solid * (2 * solid + pore - 2 * less)) / (2 * solid + pore + less);
}

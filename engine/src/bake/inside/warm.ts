// Heat through the slices over one step: implicit Euler, Newton's rounds on heat.
// Source: voller1981 (the enthalpy method); golub2013 4.3.6 (the chain).
//
// Why heat and not temperature is the unknown: a slice on its boil takes heat at one temperature, so
// temperature hardly tells its heat, while heat tells temperature and water at once. The matrices keep
// order: no new peaks and no swings, whatever the step.

import type { Slices } from './body.ts';
import * as constants from './constants.ts';
import type { InsidePhysics } from './physics.ts';
import type { Inside, Work } from './state.ts';

// Read once: the inner loops run a million times.
const { SOLIDS_JOULES, WATER_JOULES, ZERO_KELVIN } = constants;

/** Heat at the end of the step if it went on as in the last: what conducts is read there. */
export function guessHeat({ slices, physics, work }: Inside, seconds: number): void {
  work.start.set(slices.heat);
  for (let slice = 0; slice < slices.count; slice += 1) {
    slices.heat[slice] = slices.heat[slice]! + work.trend[slice]! * seconds;
    temperatureOf(slices, physics, work, slice);
  }
}

const MOST_ROUNDS = 8;
/** Rounds end when no slice's heat changes by more than this [J/kg dry]: 0.1 K of a wet one. */
const CLOSE_JOULES = 300;

/** Heat at the end of the step; false where the rounds ran out before the last change was small. */
export function warmSlices(inside: Inside, seconds: number): boolean {
  const { slices, physics, work } = inside;
  const { count, heat } = slices;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    for (let slice = 0; slice < count; slice += 1) temperatureOf(slices, physics, work, slice);
    for (let slice = 0; slice < count; slice += 1) layRow(inside, slice, seconds);
    solveInPlace(work, count);
    let largest = 0;
    for (let slice = 0; slice < count; slice += 1) {
      heat[slice] = heat[slice]! + work.right[slice]!;
      largest = Math.max(largest, Math.abs(work.right[slice]!));
    }
    if (largest < CLOSE_JOULES && round > 0) return true;
  }
  return false;
}

/** One row of Newton's chain: what the slice lacks, and how its heat and its neighbours' change that. */
function layRow({ slices, work }: Inside, slice: number, seconds: number): void {
  const { between, slope } = work;
  const last = slices.count - 1;
  const below = slice > 0 ? between[slice - 1]! : 0;
  const above = slice < last ? between[slice]! : 0;
  let own = below + above;
  if (slice === 0) own += work.bottom.slope;
  if (slice === last) own += work.top.slope;
  const mass = slices.dry[slice]! / seconds;
  work.before[slice] = slice > 0 ? -below * slope[slice - 1]! : 0;
  work.after[slice] = slice < last ? -above * slope[slice + 1]! : 0;
  work.middle[slice] = mass + own * slope[slice]!;
  work.right[slice] =
    flowInto(work, slice, last) - mass * (slices.heat[slice]! - work.start[slice]!);
}

/** Watts into a slice at the temperatures in `work`. */
function flowInto({ between, kelvin, bottom, top }: Work, slice: number, last: number): number {
  const here = kelvin[slice]!;
  const fromBelow =
    slice > 0
      ? between[slice - 1]! * (kelvin[slice - 1]! - here)
      : bottom.level - bottom.slope * here;
  const fromAbove =
    slice < last ? between[slice]! * (kelvin[slice + 1]! - here) : top.level - top.slope * here;
  return fromBelow + fromAbove;
}

/** Heat by the flows of the last temperatures: conserved to rounding, however the rounds ended. */
export function conserve({ slices, physics, work }: Inside, seconds: number): void {
  const { count, dry, heat } = slices;
  for (let slice = 0; slice < count; slice += 1) temperatureOf(slices, physics, work, slice);
  for (let slice = 0; slice < count; slice += 1) {
    work.trend[slice] = flowInto(work, slice, count - 1) / dry[slice]!;
    heat[slice] = work.start[slice]! + work.trend[slice]! * seconds;
  }
}

const LEAST_SLOPE = 1e-9; // K kg/J: a plateau that is not quite flat keeps the matrix regular

/** Temperature of a slice and its slope over heat, on the boiling line or below it. */
function temperatureOf(slices: Slices, physics: InsidePhysics, work: Work, slice: number): void {
  const heat = slices.heat[slice]!;
  const water = slices.water[slice]!;
  const capacity = SOLIDS_JOULES + WATER_JOULES * water;
  const held = heldAt(physics, heat, water);
  if (water <= held) {
    work.kelvin[slice] = ZERO_KELVIN + heat / capacity;
    work.slope[slice] = 1 / capacity;
    return;
  }
  const left = SOLIDS_JOULES + WATER_JOULES * held;
  const over = (heat - physics.steamJoules * (water - held)) / left;
  const drop = lineSlope(physics, heat - physics.steamJoules * water);
  const slope = (1 + (physics.steamJoules - WATER_JOULES * over) * drop) / left;
  work.kelvin[slice] = ZERO_KELVIN + over;
  work.slope[slice] = Math.max(LEAST_SLOPE, slope);
}

/** Water that a slice of this heat and water can hold at the pressure of the air [kg/kg dry]. */
export function heldAt(physics: InsidePhysics, heat: number, water: number): number {
  const over = heat / (SOLIDS_JOULES + WATER_JOULES * water);
  if (ZERO_KELVIN + over <= physics.boilKelvin) return water;
  const { line } = physics;
  const place = Math.max(0, (heat - physics.steamJoules * water - line.from) / line.step);
  if (place >= line.water.length - 1) return Math.min(water, line.water[line.water.length - 1]!);
  const row = Math.min(line.water.length - 2, Math.floor(place));
  const low = line.water[row]!;
  return Math.min(water, Math.max(0, low + (line.water[row + 1]! - low) * (place - row)));
}

function lineSlope({ line }: InsidePhysics, heat: number): number {
  const place = Math.max(0, (heat - line.from) / line.step);
  if (place >= line.water.length - 1) return 0; // hotter than the table: dry
  const row = Math.floor(place);
  return (line.water[row + 1]! - line.water[row]!) / line.step;
}

/** golub2013 4.3.6 without making a thing; the answer stands in `right`. */
export function solveInPlace({ before, middle, after, right, carried }: Work, count: number): void {
  let pivot = middle[0]!;
  carried[0] = after[0]! / pivot;
  right[0] = right[0]! / pivot;
  for (let row = 1; row < count; row += 1) {
    pivot = middle[row]! - before[row]! * carried[row - 1]!;
    carried[row] = after[row]! / pivot;
    right[row] = (right[row]! - before[row]! * right[row - 1]!) / pivot;
  }
  for (let row = count - 2; row >= 0; row -= 1) {
    right[row] = right[row]! - carried[row]! * right[row + 1]!;
  }
}

// One step of the inside: heat, then water, then what both have done to starch, rise and skins.
// Source: voller1981 (heat), textbook diffusion (water), zanoni1995-starch.

import { conductAt, measureSlices } from './conduct.ts';
import * as constants from './constants.ts';
import { rowAt } from './physics.ts';
import { drawFaceLaws, takeFaces } from './skin.ts';
import type { FaceLaw, Inside } from './state.ts';
import { conserve, guessHeat, heldAt, solveInPlace, warmSlices } from './warm.ts';

// Read once: the inner loops run a million times.
const { SOLIDS_JOULES, WATER_JOULES, ZERO_KELVIN } = constants;

/** A step whose rounds do not meet is cut in two, so many times at most. */
const MOST_HALVINGS = 6;

/** The inside `seconds` later, under the faces as they stand in `bottom.now` and `top.now`. */
export function stepInside(inside: Inside, seconds: number, halvings = 0): void {
  const { slices, work } = inside;
  measureSlices(inside);
  guessHeat(inside, seconds);
  conductAt(inside);
  drawFaceLaws(inside, seconds);
  if (!warmSlices(inside, seconds) && halvings < MOST_HALVINGS) {
    slices.heat.set(work.start);
    work.trend.fill(0);
    stepInside(inside, seconds / 2, halvings + 1);
    stepInside(inside, seconds / 2, halvings + 1);
    return;
  }
  conserve(inside, seconds);
  takeFaces(inside, seconds);
  for (let slice = 0; slice < slices.count; slice += 1) boilOff(inside, slice);
  spreadWater(inside, seconds);
  settle(inside, seconds);
}

/** What a slice can not hold at its heat leaves as steam. */
function boilOff(inside: Inside, slice: number): void {
  const { slices, physics } = inside;
  const water = slices.water[slice]!;
  const held = heldAt(physics, slices.heat[slice]!, water);
  if (water <= held) return;
  slices.water[slice] = held;
  slices.heat[slice] = slices.heat[slice]! - physics.steamJoules * (water - held);
  inside.steam += slices.dry[slice]! * (water - held);
}

/** Liquid water spreads, its heat with it; what dries off a skin is taken from its slice. */
function spreadWater(inside: Inside, seconds: number): void {
  const { slices, work } = inside;
  const { count, dry, water, heat } = slices;
  const { waterBetween, before, middle, after, right, kelvin, bottom, top } = work;
  for (let slice = 0; slice < count; slice += 1) {
    const below = slice > 0 ? waterBetween[slice - 1]! : 0;
    const above = slice + 1 < count ? waterBetween[slice]! : 0;
    before[slice] = -below;
    after[slice] = -above;
    middle[slice] = dry[slice]! / seconds + below + above;
    right[slice] = (dry[slice]! / seconds) * water[slice]!;
  }
  right[0] = right[0]! - bottom.drying;
  right[count - 1] = right[count - 1]! - top.drying;
  solveInPlace(work, count);
  for (let slice = 0; slice + 1 < count; slice += 1) {
    const next = slice + 1;
    const flow = waterBetween[slice]! * (right[slice]! - right[next]!) * seconds;
    const from = flow > 0 ? kelvin[slice]! : kelvin[next]!;
    const carried = flow * WATER_JOULES * (from - ZERO_KELVIN);
    heat[slice] = heat[slice]! - carried / dry[slice]!;
    heat[next] = heat[next]! + carried / dry[next]!;
  }
  dryOff(inside, 0, bottom, seconds);
  dryOff(inside, count - 1, top, seconds);
  for (let slice = 0; slice < count; slice += 1) water[slice] = Math.max(0, right[slice]!);
}

/** Its latent heat was counted at the face; here goes what its water had in the slice. */
function dryOff(inside: Inside, slice: number, law: FaceLaw, seconds: number): void {
  if (law.drying <= 0) return;
  const { slices, physics } = inside;
  const kilograms = law.drying * seconds;
  inside.steam += kilograms;
  const had = physics.steamJoules - law.latentJoules;
  slices.heat[slice] = slices.heat[slice]! - (had * kilograms) / slices.dry[slice]!;
}

/** Temperatures as they are now, starch, rise. */
function settle({ slices, physics }: Inside, seconds: number): void {
  const { count, kelvin, heat, water, hottest, set } = slices;
  for (let slice = 0; slice < count; slice += 1) {
    const now = ZERO_KELVIN + heat[slice]! / (SOLIDS_JOULES + WATER_JOULES * water[slice]!);
    set[slice] = set[slice]! + rowAt(physics.starch, (kelvin[slice]! + now) / 2) * seconds;
    kelvin[slice] = now;
    if (now > hottest[slice]!) hottest[slice] = now;
  }
}

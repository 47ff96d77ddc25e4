import { describe, expect, it } from 'vitest';
import {
  madeAir,
  madeDough,
  madeFormula,
  madeIngredient,
  madeRecipe,
} from '../../validation/bake/made.ts';
import type { CurvePoint } from '../coals/coal-plan.ts';
import type { LoadState } from '../coals/load.ts';
import { fromCelsius, type Joules, kelvin, minutes } from '../quantity/unit.ts';
import { bakeFor } from './bake-for.ts';
import { loadFor } from './load-in-oven.ts';

const formula = madeFormula([
  madeIngredient('flour', 540, { part: 'flour' }),
  madeIngredient('water', 360, { part: 'water' }),
]);
/** 0.9 kg on 0.03 m2, proofed and risen. */
const load = madeDough({ millimetres: 50, rise: 1.4, density: 600 });
const air = madeAir();
const recipe = madeRecipe();

/** Air and wall 180, lid 240, floor 170 C, all the while. */
const curve: CurvePoint[] = [0, 60, 120].map((minute) => ({
  minute: minutes(minute),
  oven: fromCelsius(180),
  low: fromCelsius(165),
  high: fromCelsius(195),
  lid: fromCelsius(240),
  floor: fromCelsius(170),
  wall: fromCelsius(170),
}));

const bake = bakeFor({
  load,
  recipe,
  formula,
  air,
  wanted: fromCelsius(200),
  curve,
  loadInMinute: minutes(0),
});
const taken = bake.taken!;
const dough = loadFor({ load, recipe, formula, air, taken });

/** Heat in the load after so many minutes in that oven [J]. */
function heatAfter(wanted: number): number {
  let state: LoadState = dough.start;
  let joules = 0;
  for (let second = 0; second < wanted * 60; second += 10) {
    const touch = dough.fromFloor!(state);
    const watts =
      dough.heatInto(state, fromCelsius(180)) +
      touch.wattsPerKelvin * (fromCelsius(170) - touch.kelvin);
    joules += watts * 10;
    state = dough.after(state, (watts * 10) as Joules);
  }
  return joules;
}

describe('a dough as its oven meets it', () => {
  it('takes about 410 kJ for each kilogram by the time it is done (2.5 x 73 + 0.1 x 2260, trial-bake-model), within a fifth', () => {
    const perKilogram = heatAfter(bake.minutes) / load.mass;
    expect(perKilogram).toBeGreaterThan(410 * 0.8);
    expect(perKilogram).toBeLessThan(410 * 1.2);
  });

  it('is warmer in its mean than in its core, and takes more in the first half than in the second', () => {
    for (const share of [0.5, 1]) {
      const at = Math.round(share * bake.minutes);
      const state = [heatAfter(at)];
      const wanted = bake.inside!.moments[at]!;
      const found = dough.temperature(state);
      expect(Math.abs(found - wanted.core)).toBeLessThan(60); // a mean is warmer than the core
      expect(found).toBeGreaterThan(wanted.core);
    }
    const half = heatAfter(bake.minutes / 2);
    expect(half).toBeGreaterThan(heatAfter(bake.minutes) / 2); // more at first, while it is cold
  });

  it('starts as cold as its air and never heats an oven that is hotter', () => {
    expect(dough.temperature(dough.start)).toBe(air.temperature);
    for (const joules of [0, 1e3, 1e5, 4e5, 1e6]) {
      expect(dough.heatInto([joules], fromCelsius(180))).toBeGreaterThan(0);
      expect(Number.isFinite(dough.fromFloor!([joules]).kelvin)).toBe(true);
    }
    expect(dough.heatInto(dough.start, kelvin(air.temperature))).toBeCloseTo(0, 9);
  });
});

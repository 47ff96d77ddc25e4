// A run as people see it: one point a minute, with its band.

import { type Kelvin, kelvin, minutes } from '../quantity/unit.ts';
import { type FactorMoments, halfBands } from './band.ts';
import type { CurvePoint } from './coal-plan.ts';
import type { Load } from './load.ts';
import type { OvenMoment } from './run.ts';

/** Points of a run; without factor runs the band has no width. */
export const curveOf = (
  load: Load,
  moments: readonly OvenMoment[],
  runs: readonly FactorMoments[],
): readonly CurvePoint[] => {
  const halves = halfBands(moments, runs);
  return moments.map((moment, index) => ({
    minute: minutes(moment.minute),
    oven: kelvin(moment.ovenKelvin),
    low: kelvin(moment.ovenKelvin - (halves[index] ?? 0)),
    high: kelvin(moment.ovenKelvin + (halves[index] ?? 0)),
    lid: kelvin(moment.iron.lid),
    floor: kelvin(moment.iron.floor),
    wall: kelvin(moment.iron.wall),
    ...loadTemperature(load, moment),
  }));
};

const loadTemperature = (load: Load, moment: OvenMoment): { readonly load?: Kelvin } =>
  moment.load === undefined ? {} : { load: load.temperature(moment.load) };

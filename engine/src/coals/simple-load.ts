// A load that needs no baker: one temperature, a cap on what it takes up, steam at the boil.
// Source: coalsOvenModelNotes 5.2 (the same law the chart fit counts on).

import { type Joules, type Kelvin, kelvin, type SquareMetres, watts } from '../quantity/unit.ts';
import type { Load, LoadState } from './load.ts';
import { parameter } from './parameters.ts';

export interface SimpleLoad {
  readonly massGrams: number;
  readonly heatCapacityJoulesPerGramKelvin: number;
  readonly startKelvin: number;
  readonly boilKelvin: number;
  readonly planAreaSquareMetres: number;
}

/** State: mean temperature [K], heat spent on steam [J]. */
export function simpleLoad(load: SimpleLoad): Load {
  const capacity = load.massGrams * load.heatCapacityJoulesPerGramKelvin;
  const most = parameter('chartLoadWattsPerSquareMetre') * load.planAreaSquareMetres;
  const perKelvin = parameter('loadWattsPerSquareMetreKelvin') * load.planAreaSquareMetres;
  return {
    planArea: load.planAreaSquareMetres as SquareMetres,
    start: [load.startKelvin, 0],
    heatInto: (state, oven) => watts(Math.min(most, perKelvin * (oven - temperatureOf(state)))),
    after: (state, heat) => warmed(state, heat, { capacity, boil: load.boilKelvin }),
    temperature: (state): Kelvin => kelvin(temperatureOf(state)),
  };
}

const temperatureOf = (state: LoadState): number => state[0] ?? Number.NaN;

const warmed = (
  state: LoadState,
  heat: Joules,
  body: { readonly capacity: number; readonly boil: number },
): LoadState => {
  const free = temperatureOf(state) + heat / body.capacity;
  const temperature = Math.min(free, body.boil);
  return [temperature, (state[1] ?? 0) + Math.max(0, free - body.boil) * body.capacity];
};

// How fast does a baking load take heat, by how much it has taken already? The bake's own history as a
// law that an oven can ask: colder coals then bake slower, and no joule is lost or made.
// Source: bake/inside. The time it took does not matter much, what is in it does: so heat is the clock.

import type { Load } from '../coals/load.ts';
import { type Kelvin, kelvin, squareMetres, watts } from '../quantity/unit.ts';
import type { BreadOutcome } from './bread-inside.ts';
import type { OvenAt, OvenCourse } from './oven-course.ts';

/** Evenly spaced in nothing: one row a minute of the bake. */
export interface HeatTaken {
  /** Heat in the load so far [J]. */
  readonly joules: readonly number[];
  /** Its mean temperature then [K]. */
  readonly meanKelvins: readonly number[];
  /** What its top then takes of an oven's inside [W/K]. */
  readonly passages: readonly number[];
  /** Its underside then [K], and what it takes of the floor's iron by touch [W/K]. */
  readonly undersides: readonly number[];
  readonly touchWattsPerKelvin: number;
}

/** A load never takes less than this of a hotter oven, nor more [W/(m2 K)]: keeps the law sane. */
const PASSAGE = { least: 3, most: 60 } as const;
/** Oven and load nearer than this say nothing about the passage between them. */
const LEAST_DIFFERENCE_KELVIN = 15;

/** The law of one bake: what went in each minute, over the oven's lead at its middle. */
export function heatTaken(
  { run, slab }: BreadOutcome,
  course: OvenCourse,
  conductance: number,
): HeatTaken {
  const joules: number[] = [];
  const meanKelvins: number[] = [];
  const passages: number[] = [];
  const undersides: number[] = [];
  const at: OvenAt = { oven: 0, lid: 0, wall: 0, floor: 0 };
  const { moments } = run;
  let before = 0;
  let passage: number | undefined;
  for (let index = 1; index < moments.length; index += 1) {
    const [then, now] = [moments[index - 1]!, moments[index]!];
    const after = slab.area * (now.bottomJoules + now.topJoules);
    const mean = (then.meanKelvin + now.meanKelvin) / 2;
    course.at(index - 0.5, at);
    const lead = at.oven - mean;
    if (lead >= LEAST_DIFFERENCE_KELVIN)
      passage = within((slab.area * (now.topJoules - then.topJoules)) / 60 / lead, slab.area);
    // A cold start gives a little back at first: heat is a clock only while it rises.
    if (after <= before || passage === undefined) continue;
    joules.push((before + after) / 2);
    meanKelvins.push(mean);
    passages.push(passage);
    undersides.push((then.bottomKelvin + now.bottomKelvin) / 2);
    before = after;
  }
  const touchWattsPerKelvin = conductance * slab.area;
  return { joules, meanKelvins, passages, undersides, touchWattsPerKelvin };
}

const within = (passage: number, area: number) =>
  Math.min(PASSAGE.most * area, Math.max(PASSAGE.least * area, passage));

/** The load that this law makes. State: heat taken so far [J]. */
export function loadTaking(
  taken: HeatTaken,
  about: { readonly startKelvin: number; readonly planArea: number },
): Load {
  const { startKelvin } = about;
  const meanAt = (joules: number) =>
    joules <= 0 ? startKelvin : readAt(taken.joules, taken.meanKelvins, joules, startKelvin);
  return {
    planArea: squareMetres(about.planArea),
    start: [0],
    heatInto: ([joules = 0], oven) =>
      watts(
        readAt(taken.joules, taken.passages, joules, taken.passages[0] ?? 0) *
          (oven - meanAt(joules)),
      ),
    fromFloor: ([joules = 0]) => ({
      wattsPerKelvin: taken.touchWattsPerKelvin,
      kelvin: readAt(taken.joules, taken.undersides, joules, startKelvin),
    }),
    after: ([joules = 0], heat) => [joules + heat],
    temperature: ([joules = 0]): Kelvin => kelvin(meanAt(joules)),
  };
}

/** Linear between rows; `first` stands at no heat, the last row holds past the end. */
function readAt(
  places: readonly number[],
  row: readonly number[],
  at: number,
  first: number,
): number {
  let low = 0;
  let high = places.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (places[middle]! <= at) low = middle + 1;
    else high = middle;
  }
  if (low === places.length) return row.at(-1) ?? first;
  const before = low > 0 ? places[low - 1]! : 0;
  const left = low > 0 ? row[low - 1]! : first;
  const share = Math.max(0, (at - before) / Math.max(1e-9, places[low]! - before));
  return left + (row[low]! - left) * share;
}

// The temperature of a dough over time: it starts as it was mixed and follows the place it stands in.
// A lump of one temperature by Newton's cooling (plain physics, no source); its surface heat transfer
// is judged. Weak spot: nobody stirs a bowl, so its rim runs ahead of its middle.

import { type Grams, type Kelvin, kelvin, type Minutes, minutes } from '../../quantity/unit.ts';

/** How warm it is round the dough, so many minutes after mixing. */
export type PlaceAt = (minute: number) => Kelvin;

/** A stretch of the rise in one place. */
export interface Stay {
  /** Minutes in it; the last stay lasts on. */
  readonly minutes: Minutes;
  readonly place: Kelvin;
}

/** One place after the other: cold morning, then a warm box. */
export function placeFrom(stays: readonly Stay[]): PlaceAt {
  return (minute) => {
    let end = 0;
    for (const stay of stays) {
      end += stay.minutes;
      if (minute < end) return stay.place;
    }
    return stays.at(-1)!.place;
  };
}

const DOUGH_JOULES_PER_GRAM_KELVIN = 2.7; // 60 % water: 0.625 × 1.7 + 0.375 × 4.19
const GRAMS_PER_CUBIC_METRE = 1.0e6; // half risen, pupLoaf 1.2 raw (judged)
const BOWL_WATTS_PER_SQUARE_METRE_KELVIN = 7; // still air round a covered bowl, judged

/** Minutes in which a dough comes 63 % nearer to the place it stands in; a ball in still air. */
export function followMinutes(dough: Grams): number {
  const volume = dough / GRAMS_PER_CUBIC_METRE;
  const surface = 4.836 * volume ** (2 / 3); // of a ball, (36 π)^(1/3)
  const heat = dough * DOUGH_JOULES_PER_GRAM_KELVIN;
  return heat / (BOWL_WATTS_PER_SQUARE_METRE_KELVIN * surface) / 60;
}

export interface DoughStart {
  readonly mixed: Kelvin;
  readonly mass: Grams;
  readonly place: PlaceAt;
}

export interface DoughAt {
  readonly minute: Minutes;
  readonly dough: Kelvin;
  readonly place: Kelvin;
}

const STEP_MINUTES = 5;

/** Dough temperature each five minutes, until asked to stop; Newton's cooling, exact in a step. */
export function* doughOver({ mixed, mass, place }: DoughStart): Generator<DoughAt> {
  const kept = Math.exp(-STEP_MINUTES / followMinutes(mass));
  let dough: number = mixed;
  for (let minute = 0; ; minute += STEP_MINUTES) {
    const around = place(minute);
    yield { minute: minutes(minute), dough: kelvin(dough), place: around };
    dough = around + (dough - around) * kept;
  }
}

/** A dough that keeps its temperature: in a box that is as warm as it. */
export const steadily =
  (dough: Kelvin): PlaceAt =>
  () =>
    dough;

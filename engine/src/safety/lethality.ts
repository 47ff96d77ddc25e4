// What a run of core readings was worth against salmonella. It explains and logs; it never lowers
// a target. Source: lethality-worksheet (log-linear, after Scott and Weddig 1998).

import { type Kelvin, type Minutes, minutes, toFahrenheit } from '../quantity/unit.ts';

export interface CoreReading {
  readonly minute: Minutes;
  /** At the coldest point. */
  readonly core: Kelvin;
}

export interface LethalityModel {
  readonly referenceFahrenheit: number;
  readonly zFahrenheit: number;
  /** Minutes for one log at the reference. */
  readonly dMinutes: number;
}

/** Salmonella in meat patties (lethality-worksheet table 1). */
export const SALMONELLA_PATTY: LethalityModel = {
  referenceFahrenheit: 150,
  zFahrenheit: 10,
  dMinutes: 0.172,
};

export interface Lethality {
  /** Minutes that would have done the same at the reference temperature, after each reading. */
  readonly equivalent: readonly Minutes[];
  readonly logReduction: number;
}

/** Lethality of a run of readings, by trapezoids between them. */
export function lethalityOf(
  readings: readonly CoreReading[],
  model: LethalityModel = SALMONELLA_PATTY,
): Lethality {
  const equivalent: Minutes[] = [];
  let sum = 0;
  let before: CoreReading | undefined;
  for (const reading of readings) {
    if (before !== undefined) {
      if (reading.minute < before.minute) {
        throw new RangeError(`reading at ${reading.minute} min comes after ${before.minute} min`);
      }
      const mean = (lethalRate(before.core, model) + lethalRate(reading.core, model)) / 2;
      sum += mean * (reading.minute - before.minute);
    }
    equivalent.push(minutes(sum));
    before = reading;
  }
  return { equivalent, logReduction: sum / model.dMinutes };
}

/** L = 10^((T - Tref)/z) (lethality-worksheet). */
export const lethalRate = (core: Kelvin, model: LethalityModel = SALMONELLA_PATTY) =>
  10 ** ((toFahrenheit(core) - model.referenceFahrenheit) / model.zFahrenheit);

/** Minutes at one core temperature for this many logs: t = LR D 10^((Tref - T)/z). */
export const holdMinutesFor = (core: Kelvin, logs: number, model = SALMONELLA_PATTY): Minutes =>
  minutes((logs * model.dMinutes) / lethalRate(core, model));

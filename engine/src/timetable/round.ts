// One walking round as a task: its length, its crews, and the job that each oven sees of it.

import type { Wave } from './waves.ts';

/** How a task goes round the ovens of its wave. */
export interface Round {
  /** The same object for every task of one wave. */
  readonly wave: Wave;
  /** At one oven [min]. */
  readonly minutes: number;
  /** Crews that take the ovens in turn, and the people in each. */
  readonly crews: number;
  readonly people: number;
}

/** So many crews that each is done with its oven when its next one is due. */
export const crewsFor = ({ loads, pace }: Wave, minutes: number) =>
  loads.length > 1 ? Math.max(1, Math.min(loads.length, Math.ceil(minutes / pace))) : 1;

/** From the first oven to the last [min]. */
export const spreadOf = ({ loads, pace }: Wave) => (loads.length - 1) * pace;

/** From the start of the round until its people are free: at the next part, if they go on to one. */
export function walkMinutes(wave: Wave, minutes: number): number {
  const whole = minutes + spreadOf(wave);
  return wave.goesOn ? Math.min(whole, wave.loads.length * wave.pace) : whole;
}

/** From the start of the round until its last oven is done. */
export const roundMinutes = ({ wave, minutes, people }: Round) =>
  people > 0 ? minutes + spreadOf(wave) : minutes;

export interface Visit<Person> {
  readonly place: number;
  readonly load: string;
  readonly oven: string;
  /** After the start of the round [min]. */
  readonly after: number;
  readonly hands: readonly Person[];
}

/** Each oven of a round with its crew. */
export function visitsOf<Person>(round: Round, crew: readonly Person[]): readonly Visit<Person>[] {
  const { wave, crews, people } = round;
  return wave.loads.map(({ load }, place) => {
    const first = (place % crews) * people;
    return {
      place,
      load: load.id,
      oven: load.oven,
      after: place * wave.pace,
      hands: crew.slice(first, first + people),
    };
  });
}

/** The job of an oven of the round; the first keeps the name of its task. */
export const visitId = (task: string, place: number) =>
  place === 0 ? task : `${task}~${place + 1}`;

export const taskOfVisit = (job: string) => job.replace(/~\d+$/, '');

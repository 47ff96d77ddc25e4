// What a cook has answered at the doors to the fire, all doors alike so that nothing is typed twice.

import type { Symptom } from '#engine';
import type { FireMethod, FireSpot, FireWish, LaidSet } from '../worker/messages.ts';
import type { DoorName } from './doors.ts';

export interface FireAnswers {
  readonly method: FireMethod;
  readonly heatKelvin: number;
  /** So long in the oven. */
  readonly minutes: number;
  readonly symptom: Symptom;
  /** Briquettes, or shovels where the fuel is wood. */
  readonly above: number;
  readonly below: number;
  readonly left: number;
  readonly litMinutes: number;
  /** Undefined: the oven is still empty. */
  readonly minutesIn?: number | undefined;
  readonly upperInches: number;
  /** Coals of other ages that lie with those above and below. */
  readonly others?: readonly LaidSet[] | undefined;
  /** The oven as a thermometer reads it now. */
  readonly ironKelvin?: number | undefined;
}

/** So many sets of another age may lie there. */
export const MOST_OTHERS = 4;

type Fuel = FireSpot['fuel'];

const HEAT_KELVIN = 450; // 350 °F: the most usual heat of the charts

/** What is usual until the cook says: common practice, no source. */
export const usualAnswers = (fuel: Fuel): FireAnswers => ({
  method: 'bake',
  heatKelvin: HEAT_KELVIN,
  minutes: 40,
  symptom: 'bottom-dark',
  ...(fuel === 'wood-coals'
    ? { above: 2.5, below: 1, left: 3, litMinutes: 20 } // wood coals live half as long
    : { above: 17, below: 8, left: 22, litMinutes: 30 }),
  minutesIn: undefined,
  upperInches: 12,
});

export function fireWish(door: DoorName, answers: FireAnswers, ovenInches: number): FireWish {
  const { method, heatKelvin, minutes, symptom, above, below, left, litMinutes } = answers;
  const minutesIn = answers.minutesIn;
  const inside = minutesIn === undefined ? {} : { minutesIn };
  const { others = [], ironKelvin } = answers;
  const iron = ironKelvin === undefined ? {} : { ironKelvin };
  const more = { ...iron, ...(others.length === 0 ? {} : { others }) };
  switch (door) {
    case 'coals':
      return { door, method, heatKelvin, minutes };
    case 'layout':
      return { door, method, heatKelvin, litMinutes, above, below, ...inside, ...more };
    case 'left':
      return { door, coals: left, litMinutes, ...iron };
    case 'what-now':
      return {
        ...{ door, symptom, method, litMinutes, minutesIn: minutesIn ?? 15, above, below },
        ...more,
      };
    case 'stack': {
      const stacked = method === 'roast' || method === 'simmer' ? method : 'bake';
      const upperInches = Math.min(answers.upperInches, ovenInches);
      return { door, method: stacked, heatKelvin, minutes, upperInches };
    }
  }
}

const KEY = 'emberwright.fire';
const SHAPE = 1;

interface Kept {
  readonly shape: number;
  readonly fuel?: Fuel;
  readonly answers: Partial<FireAnswers>;
}

/** What was answered before a reload; counts of another fuel mean nothing. */
export function rememberedAnswers(storage: Pick<Storage, 'getItem'>, fuel: Fuel): FireAnswers {
  const usual = usualAnswers(fuel);
  try {
    const kept = JSON.parse(storage.getItem(KEY) ?? '{}') as Partial<Kept>;
    const isSame = kept.shape === SHAPE && (kept.fuel ?? 'briquettes') === (fuel ?? 'briquettes');
    return isSame ? { ...usual, ...kept.answers } : usual;
  } catch {
    return usual;
  }
}

export function rememberAnswers(
  storage: Pick<Storage, 'setItem'>,
  fuel: Fuel,
  answers: FireAnswers,
): void {
  try {
    const kept: Kept = { shape: SHAPE, ...(fuel === undefined ? {} : { fuel }), answers };
    storage.setItem(KEY, JSON.stringify(kept));
  } catch {
    // A browser that keeps nothing: the answers last as long as the page.
  }
}

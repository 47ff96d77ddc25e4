// What a cook has answered at the doors to the fire, all doors alike so that nothing is typed twice.

import {
  type AgedDoor,
  type CoalLook,
  type Symptom,
  USUAL_INSIDE_MINUTES,
  usualHeat,
  usualLaid,
  usualLitMinutes,
  usualStay,
} from '#engine';
import type { FireMethod, FireSpot, FireWish, LaidSet } from '../worker/messages.ts';
import type { DoorName } from './doors.ts';

export interface FireAnswers {
  readonly method: FireMethod;
  /** Undefined: what is usual for the method; so with the minutes in the oven. */
  readonly heatKelvin?: number | undefined;
  readonly minutes?: number | undefined;
  readonly symptom: Symptom;
  /** Briquettes, or shovels where the fuel is wood. */
  readonly above: number;
  readonly below: number;
  readonly left: number;
  /** Undefined: as old as is usual at the door that asks. */
  readonly litMinutes?: number | undefined;
  /** What the coals look like, in place of an age. */
  readonly look?: CoalLook | undefined;
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

/** What is usual until the cook says: common practice, no source. */
export const usualAnswers = (fuel: Fuel): FireAnswers => ({
  method: 'bake',
  symptom: 'bottom-dark',
  ...usualLaid(fuel ?? 'briquettes'),
  minutesIn: undefined,
  upperInches: 12,
});

/** How old the coals are where the cook has not said. */
export const litFor = (
  door: AgedDoor,
  { litMinutes, minutesIn }: FireAnswers,
  fuel: Fuel,
): number =>
  litMinutes ??
  usualLitMinutes(door, fuel ?? 'briquettes', door === 'left' ? undefined : minutesIn);

export const heatFor = ({ heatKelvin, method }: FireAnswers): number =>
  heatKelvin ?? usualHeat(method);

export const stayFor = ({ minutes, method }: FireAnswers): number => minutes ?? usualStay(method);

export function fireWish(
  door: DoorName,
  answers: FireAnswers,
  { ovenInches, fuel }: Pick<FireSpot, 'ovenInches' | 'fuel'>,
): FireWish {
  const { method, symptom, above, below, left, look } = answers;
  const [heatKelvin, minutes] = [heatFor(answers), stayFor(answers)];
  const isAged = door === 'layout' || door === 'left' || door === 'what-now';
  const litMinutes = isAged ? litFor(door, answers, fuel) : 0;
  const minutesIn = answers.minutesIn;
  const inside = minutesIn === undefined ? {} : { minutesIn };
  const { others = [], ironKelvin } = answers;
  const iron = {
    ...(ironKelvin === undefined ? {} : { ironKelvin }),
    ...(look === undefined ? {} : { look }),
    ...(look === undefined && answers.litMinutes === undefined ? ASSUMED : {}),
  };
  const more = { ...iron, ...(others.length === 0 ? {} : { others }) };
  switch (door) {
    case 'coals':
      return {
        ...{ door, method, heatKelvin, minutes },
        ...(answers.minutes === undefined ? USUAL_STAY : {}),
      };
    case 'layout':
      return { door, method, heatKelvin, litMinutes, above, below, ...inside, ...more };
    case 'left':
      return { door, coals: left, litMinutes, ...iron };
    case 'what-now':
      return {
        ...{
          door,
          symptom,
          method,
          litMinutes,
          minutesIn: minutesIn ?? USUAL_INSIDE_MINUTES,
          above,
          below,
        },
        ...more,
      };
    case 'stack': {
      const stacked = method === 'roast' || method === 'simmer' ? method : 'bake';
      const upperInches = Math.min(answers.upperInches, ovenInches);
      return { door, method: stacked, heatKelvin, minutes, upperInches };
    }
  }
}

const USUAL_STAY = { isUsualStay: true } as const;
const ASSUMED = { isAgeAssumed: true } as const;

const KEY = 'emberwright.fire';
const SHAPE = 2;

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

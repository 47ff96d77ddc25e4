// Hands and dishes: what stands on the wash line, how hot and how strong.
// Sources: sf-handwash (station), river-permit (three buckets), food-code-4-501 (chlorine by heat).

import type { OrRefusal } from '../notice/notice.ts';
import { isRefusal } from '../notice/notice.ts';
import {
  type CubicMetres,
  cubicMetres,
  fromFahrenheit,
  type Kelvin,
  kelvin,
  type Minutes,
  minutes,
} from '../quantity/unit.ts';
import { bleachDose, SANITISING_PPM } from './water.ts';

const US_GALLON = 0.003785411784; // exact

/** A hand-wash line as a health office asks for it (sf-handwash). */
export const HAND_WASH = {
  water: { least: fromFahrenheit(100), most: fromFahrenheit(108) },
  can: cubicMetres(5 * US_GALLON),
  catch: cubicMetres(5 * US_GALLON),
  seconds: 20, // nc-dph
} as const;

/** Three buckets: wash, rinse, sanitise, each in its heat (river-permit). */
export const THREE_BUCKETS = {
  wash: { least: fromFahrenheit(120), most: fromFahrenheit(140) },
  /** The permit says hot and clean, no figure: as the wash. */
  rinse: { least: fromFahrenheit(120), most: fromFahrenheit(140) },
  sanitise: { least: fromFahrenheit(75), most: fromFahrenheit(120) },
  dip: minutes(1),
} as const;

/** Norovirus clean-up of a floor or table, not of dishes (cdc-norovirus). */
export const CLEAN_UP_PPM = { least: 1000, most: 5000 } as const;

/** Over this a dish is to be rinsed again (from memory: 21 CFR 178.1010). */
export const NO_RINSE_PPM = 200;

/**
 * Least heat of the last bucket by its strength; undefined where it is too weak to count.
 *
 * @param alkaline  pH above 8, as hard water with bleach in it often is; taken where nobody knows
 * @source food-code-4-501
 */
export function sanitisingHeat(partsPerMillion: number, alkaline = true): Kelvin | undefined {
  if (partsPerMillion < 25) return undefined;
  if (partsPerMillion < 50) return fromFahrenheit(120);
  if (partsPerMillion < 100) return fromFahrenheit(alkaline ? 100 : 75);
  return fromFahrenheit(55);
}

export interface Bucket {
  readonly water: CubicMetres;
  readonly bleach: CubicMetres;
  readonly partsPerMillion: number;
  readonly heat: { readonly least: Kelvin; readonly most: Kelvin };
  readonly dip: Minutes;
}

/** Stronger of the permit's 50 to 100: it works in the coolest water and fades as dishes go through. */
export const USUAL_PPM = SANITISING_PPM.most;

/**
 * The last bucket, from the label of the bleach. Its heat is the stricter of permit and code.
 *
 * @refuses SAFETY_BLEACH_UNKNOWN, SAFETY_NO_WATER
 */
export function sanitisingBucket(asked: {
  readonly water: CubicMetres;
  readonly percent: number;
  readonly partsPerMillion?: number;
}): OrRefusal<Bucket> {
  const partsPerMillion = asked.partsPerMillion ?? USUAL_PPM;
  const bleach = bleachDose({ ...asked, partsPerMillion });
  if (isRefusal(bleach)) return bleach;
  const { least, most } = THREE_BUCKETS.sanitise;
  const code = sanitisingHeat(partsPerMillion) ?? most;
  return {
    water: asked.water,
    bleach,
    partsPerMillion,
    heat: { least: kelvin(Math.max(code, least)), most },
    dip: THREE_BUCKETS.dip,
  };
}

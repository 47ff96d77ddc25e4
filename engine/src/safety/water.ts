// Water to drink and water to wash with. Sources: epa-p100sp1s, cdc-water, kdhe-bleach.

import { type OrRefusal, refusal } from '../notice/notice.ts';
import {
  type CubicMetres,
  cubicMetres,
  type Metres,
  type Minutes,
  minutes,
} from '../quantity/unit.ts';

const FIVE_THOUSAND_FEET_METRES = 1524;

/** Rolling boil: 1 min, 3 above 5,000 ft (epa-p100sp1s; cdc-water says 6,500 ft: stricter wins). */
export const boilMinutes = (elevation: Metres): Minutes =>
  minutes(elevation <= FIVE_THOUSAND_FEET_METRES ? 1 : 3);

/**
 * Bleach for a wash of this strength.
 *
 * Weight by volume, density left out: at most 8 % too strong. Check with a strip.
 *
 * @param partsPerMillion  chlorine wanted           [mg/L]
 * @param percent          sodium hypochlorite on the label
 * @refuses  SAFETY_BLEACH_UNKNOWN, SAFETY_NO_WATER
 * @source   kdhe-bleach: C1 V1 = C2 V2
 */
export function bleachDose(asked: {
  readonly water: CubicMetres;
  readonly partsPerMillion: number;
  readonly percent: number;
}): OrRefusal<CubicMetres> {
  const { water, partsPerMillion, percent } = asked;
  if (!(1 <= percent && percent <= 15)) {
    return refusal('SAFETY_BLEACH_UNKNOWN', ['gear.bleach'], {}, { percent });
  }
  if (!(water > 0 && partsPerMillion > 0)) {
    return refusal('SAFETY_NO_WATER', ['water'], {}, { waterCubicMetres: water, partsPerMillion });
  }
  return cubicMetres((water * partsPerMillion) / (percent * PPM_PER_PERCENT));
}

/** Chlorine in water that this much bleach was put into [mg/L]. */
export const bleachStrength = (mixed: {
  readonly water: CubicMetres;
  readonly bleach: CubicMetres;
  readonly percent: number;
}): number => (mixed.percent * PPM_PER_PERCENT * mixed.bleach) / mixed.water;

const PPM_PER_PERCENT = 10_000;

/** Sanitising wash: 50 to 100 mg/L, 60 s, water of 75 F or more (river-permit, food-code-4-501). */
export const SANITISING_PPM = { least: 50, most: 100 } as const;

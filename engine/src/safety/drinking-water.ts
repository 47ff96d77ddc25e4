// Bleach for drinking water, by the drop, from the per cent on its label.
// Source: epa-p100sp1s (table of drops), epa-older-leaflet (weaker bleach).

import { type Notice, notice, type OrRefusal, refusal } from '../notice/notice.ts';
import { type CubicMetres, cubicMetres, type Minutes, minutes } from '../quantity/unit.ts';

/** The table's two rows, 8.25 and 6 per cent (epa-p100sp1s). */
const STRONG_PERCENT = 8.25;
const DROPS_PER_GALLON = { strong: 6, weak: 8 } as const;
/** Under 4 per cent the older leaflet's 1 per cent row would stand alone; over 10 nothing is printed. */
const WEAKEST_PERCENT = 4;
const STRONGEST_PERCENT = 10;
const US_GALLON = 0.003785411784; // exact
/** A dropper's drop is about so big: from memory, and only for the spoon beside the drops. */
const DROP = 0.05e-6;

export interface DrinkingDose {
  /** Whole drops, rounded up; twice as many where the water is cloudy or very cold. */
  readonly drops: number;
  readonly volume: CubicMetres;
  readonly wait: Minutes;
  readonly notices: readonly Notice[];
}

/**
 * Drops of plain, unscented bleach for so much clear water.
 *
 * Between the printed strengths the row of the weaker bleach is taken, so that it never falls short.
 *
 * @param percent  sodium hypochlorite on the label  [4 to 10]
 * @refuses  SAFETY_BLEACH_UNKNOWN, SAFETY_BLEACH_NOT_FOR_DRINKING
 * @source   epa-p100sp1s: 8 drops a gallon at 6 %, 6 at 8.25 %, double if cloudy or cold, 30 min
 */
export function drinkingDose(asked: {
  readonly water: CubicMetres;
  readonly percent?: number | undefined;
  readonly isCloudyOrCold?: boolean;
}): OrRefusal<DrinkingDose> {
  const { water, percent, isCloudyOrCold = false } = asked;
  if (percent === undefined || !Number.isFinite(percent)) {
    return refusal('SAFETY_BLEACH_UNKNOWN', ['gear.bleach'], {}, { percent: String(percent) });
  }
  if (!(WEAKEST_PERCENT <= percent && percent <= STRONGEST_PERCENT)) {
    return refusal('SAFETY_BLEACH_NOT_FOR_DRINKING', ['gear.bleach'], {}, { percent });
  }
  if (!(water > 0)) return refusal('SAFETY_NO_WATER', ['water'], {}, { waterCubicMetres: water });
  const perGallon = DROPS_PER_GALLON[percent < STRONG_PERCENT ? 'weak' : 'strong'];
  const drops = Math.ceil((perGallon * water) / US_GALLON - 1e-9) * (isCloudyOrCold ? 2 : 1);
  const isPrinted = percent === 6 || percent === STRONG_PERCENT;
  return {
    drops,
    volume: cubicMetres(drops * DROP),
    wait: minutes(30),
    notices: isPrinted ? [] : [notice('SAFETY_BLEACH_BETWEEN', 'doubt', {}, { percent })],
  };
}

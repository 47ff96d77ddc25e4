// What a question about coals alone is asked with: nobody has said what goes in, so a usual dough or
// pot for this oven stands in, and the answer says so. Our own, common practice without a source.

import type { Air, CampOven } from '../camp/camp.ts';
import type { HeatMethod } from '../menu/recipe.ts';
import { type CubicMetres, cubicMetres } from '../quantity/unit.ts';
import { ovenBody } from './geometry.ts';
import type { Load } from './load.ts';
import { simpleLoad } from './simple-load.ts';
import { isPotMethod } from './split.ts';

/**
 * A round of dough that leaves a finger to the wall; for a pot, stew to half of what it holds: of a
 * usual size what is published (ovenSizing, quarts to the rim), else what its owner says.
 */
export interface UsualAmount {
  readonly massGrams: number;
  /** Of a pot. */
  readonly volume?: CubicMetres;
}

export function usualAmount(oven: CampOven, method: HeatMethod): UsualAmount {
  const { mouthArea } = ovenBody(oven);
  if (!isPotMethod(method)) return { massGrams: BREAD_GRAMS * (mouthArea / 0.073) };
  const volume = POT_FILL * oven.capacity;
  return { massGrams: volume * 1e6, volume: cubicMetres(volume) };
}

/** What `usualAmount` takes up; kept warm: hot. */
export function usualLoad(
  { oven, air }: { readonly oven: CampOven; readonly air: Air },
  method: HeatMethod,
): Load {
  const { mouthArea } = ovenBody(oven);
  const isPot = isPotMethod(method);
  return simpleLoad({
    massGrams: usualAmount(oven, method).massGrams,
    heatCapacityJoulesPerGramKelvin: isPot ? 3.76 : 2.8, // stew, dough: as in bake/
    startKelvin: method === 'keep-warm' ? HOT_FOOD_KELVIN : air.temperature,
    boilKelvin: air.boiling,
    planAreaSquareMetres: (isPot ? POT_WET_AREAS : USUAL_BREAD_SHARE) * mouthArea,
  });
}

const HOT_FOOD_KELVIN = 353.15; // a dish that has just come out and stood for a while
const POT_FILL = 0.5;
/** Wetted iron takes 100 W/m2K (bake/), the simple load 40: so much more area, and no cap felt. */
const POT_WET_AREAS = 4;
const BREAD_GRAMS = 900; // a usual dough of a 12 inch oven
/** Of the mouth, seen from above. */
export const USUAL_BREAD_SHARE = 0.5;

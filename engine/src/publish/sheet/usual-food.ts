// What a question about coals alone took for granted about the food, in words: a dough by its weight,
// a pot by its quarts.

import type { Air, CampOven } from '../../camp/camp.ts';
import { usualAmount } from '../../coals/usual-load.ts';
import type { HeatMethod } from '../../menu/recipe.ts';
import type { Say } from '../say.ts';

export function usualFood(
  spot: { readonly oven: CampOven; readonly air: Air },
  method: HeatMethod,
  say: Say,
): string {
  const amount = usualAmount(spot.oven, method);
  if (amount.volume !== undefined)
    return `a pot half full of stew, about ${say.volume(amount.volume)}, that goes in at ${say.degrees(spot.air.temperature)}`;
  const much = `about ${say.mass(10 * Math.round(amount.massGrams / 10))}`;
  if (method === 'keep-warm') return `a dish of ${much}, hot, in an oven that is hot`;
  if (method === 'fry') return `${much} to fry, the lid off`;
  return `a dough of ${much}`;
}

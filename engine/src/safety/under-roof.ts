// Coals and a roof in one sentence: somebody means to bake, or to bring an oven, where the gas stays.
// Source: cpsc-5012 (tents, vehicles, rooms; a window or a fan is not enough; coals give it until cold).

import type { Camp } from '../camp/camp.ts';
import type { Menu } from '../menu/menu.ts';
import { type Notice, notice } from '../notice/notice.ts';

const ROOF =
  /\b(?:in|into|inside|under|beneath|within)\s+(?:(?:a|an|the|our|your|my|its)\s+)?(?:[a-z-]+\s+){0,2}?(tents?|tipi|yurt|cars?|vans?|trucks?|vehicles?|campers?|caravans?|caves?|rooms?|huts?|cabins?|garages?|barns?|sheds?|shelters?|tarps?|fly|awnings?|canop(?:y|ies)|marquees?|porch|kitchens?)\b/i;
const COALS =
  /\b(coals?|charcoal|briquettes?|embers?|chimney|ash(es)?|fire|lit|oven|ovens|bake[sd]?|baking|cook(ed|ing|s)?)\b/i;

/** One caution for each place that says so: the place's own name, a title, a step of a recipe. */
export function roofCautions(camp: Camp, menu: Menu): readonly Notice[] {
  const place = ROOF.exec(camp.place.name)?.[1] ?? ROOF.exec(camp.title)?.[1];
  const said =
    place === undefined ? [] : [notice('SAFETY_UNDER_ROOF', 'danger', {}, { roof: place })];
  return [...said, ...menu.dishes.flatMap((dish) => stepCautions(dish.id, dish.recipe, menu))];
}

function stepCautions(dish: string, recipe: string, { recipes }: Menu): readonly Notice[] {
  const steps = recipes.find(({ id }) => id === recipe)?.steps ?? [];
  const roofs = steps.flatMap(({ say, kind }) =>
    clausesOf(say).flatMap((clause) => {
      const isAtFire = FIRE_STEPS.includes(kind) || COALS.test(clause);
      return isAtFire ? (ROOF.exec(clause)?.[1] ?? []) : [];
    }),
  );
  return [...new Set(roofs)].map((roof) =>
    notice('SAFETY_UNDER_ROOF', 'danger', { dish }, { roof }),
  );
}

const FIRE_STEPS: readonly string[] = ['load', 'brown', 'cook', 'stir', 'hold'];

/** "Rises in the kitchen, then bake": the roof is not over the coals. */
const clausesOf = (say: string) => say.split(/[.;]|,\s*(?:then|and)\b|\bthen\b/i);

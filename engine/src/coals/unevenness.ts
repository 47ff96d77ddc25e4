// How uneven is the heat that the food sees, how much of it do turns take away, and what does a cook
// see of it? Sources: food-sight.ts; trial-bake-model for the colour.
// Weak spot: colour by one slope for all lids; the bottom's own browning is not told in minutes.

import { kelvinDifference, minutes } from '../quantity/unit.ts';
import type { FaceUnevenness, Turn, Unevenness } from './coal-plan.ts';
import { type Faces, type FoodStay, type FoodView, facesSeen, foodSight } from './food-sight.ts';
import { FOOD_HOW } from './iron-plates.ts';

const SEEN_AS_WINDY = 0.5; // m/s at the oven

export const unevennessFor = (
  view: FoodView,
  stay: FoodStay,
  turns: readonly Turn[],
): Unevenness => {
  const sight = foodSight(view, FOOD_HOW);
  const still = facesSeen(sight, stay, []);
  const turned = turns.length > 0 ? facesSeen(sight, stay, turns) : still;
  const face = (name: keyof Faces): FaceUnevenness => ({
    unturned: kelvinDifference(still[name].round),
    turned: kelvinDifference(turned[name].round),
    edgeOverMiddle: kelvinDifference(still[name].edgeOverMiddle),
  });
  const sooner = (kelvins: number) => minutes(minutesSooner(kelvins, stay));
  return {
    unturned: kelvinDifference(worseOf(still)),
    turned: kelvinDifference(worseOf(turned)),
    windward: view.windMetresPerSecond > SEEN_AS_WINDY,
    top: face('top'),
    bottom: face('bottom'),
    sooner: { unturned: sooner(still.top.round), turned: sooner(turned.top.round) },
  };
};

/** Of the worse of top and bottom [K]. */
export const worseOf = ({ top, bottom }: Faces): number => Math.max(top.round, bottom.round);

/**
 * How much of the minutes to golden a kelvin of the lid takes away: e^-0.0116. The whole span of the
 * bake's table of colour as one slope; between its rows it is 0.009 to 0.016.
 *
 * @source  trial-bake-model, data/bake-colour.json (grade D)
 */
export const COLOUR_PER_KELVIN = 0.0116;

/** One side this much hotter than the other: minutes between their golden moments. */
export const minutesSooner = (kelvins: number, { loadInMinute, outMinute }: FoodStay): number =>
  (outMinute - loadInMinute) * Math.min(1, 2 * Math.sinh((COLOUR_PER_KELVIN * kelvins) / 2));

// How much water the day takes, use by use, so that a cook can strike what does not apply.

import { isBaked } from '../bake/kinds.ts';
import type { Camp } from '../camp/camp.ts';
import { cubicMetres } from '../quantity/unit.ts';
import type { DishToProvide } from './dish-to-provide.ts';
import type { WaterNeed } from './provisions.ts';

const LITRE = 0.001;
const GRAMS_PER_CUBIC_METRE = 1e6; // water

/** Litres, each a figure for one day at camp. */
const DRINKING_PER_MOUTH = 4; // camping-gallon: 1 US gallon a person a day
const HANDS_EACH = 5; // common practice, no source
const HANDS_LEAST = 10; // common practice; a public food stand needs 19 (sf-handwash)
const WASH_PER_MOUTH = 1; // common practice, no source
const WASH_LEAST = 12; // three tubs of 4 l, common practice, no source
const ASH = 19; // ash-water: one camp cook's account, 5 US gallons or more

/** Water by use, as it is drawn. */
export function waterNeedsFor(asked: {
  readonly camp: Camp;
  readonly dishes: readonly DishToProvide[];
}): readonly WaterNeed[] {
  const { camp, dishes } = asked;
  const mouths = camp.mouths.reduce((sum, group) => sum + group.count, 0);
  const baked = dishes.filter(({ recipe }) => isBaked(recipe));
  const others = dishes.filter(({ recipe }) => !isBaked(recipe));
  const hasFire = dishes.some((dish) => dish.loads.length > 0);
  const needs: WaterNeed[] = [
    { use: 'dough', volume: inRecipes(baked), source: 'recipes' },
    { use: 'pots', volume: inRecipes(others), source: 'recipes' },
    { use: 'drinking', volume: litres(mouths * DRINKING_PER_MOUTH), source: 'camping-gallon' },
    {
      use: 'hands',
      volume: litres(Math.max(HANDS_LEAST, camp.hands.length * HANDS_EACH)),
      source: 'camp-practice',
    },
    {
      use: 'wash',
      volume: litres(Math.max(WASH_LEAST, mouths * WASH_PER_MOUTH)),
      source: 'camp-practice',
    },
    { use: 'ash', volume: litres(hasFire ? ASH : 0), source: 'ash-water' },
  ];
  return needs.filter((need) => need.volume > 0);
}

const litres = (amount: number) => cubicMetres(amount * LITRE);

function inRecipes(dishes: readonly DishToProvide[]) {
  const mass = dishes
    .flatMap(({ formula }) => formula.lines)
    .filter((line) => line.ingredient.part === 'water')
    .reduce((sum, line) => sum + line.grams, 0);
  return cubicMetres(mass / GRAMS_PER_CUBIC_METRE);
}

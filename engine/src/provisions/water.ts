// How much water the day takes, use by use, so that a cook can strike what does not apply.

import { isBaked } from '../bake/kinds.ts';
import type { Camp } from '../camp/camp.ts';
import { cubicMetres } from '../quantity/unit.ts';
import type { DishToProvide } from './dish-to-provide.ts';
import type { WaterNeed } from './provisions.ts';

const LITRE = 0.001;
const GRAMS_PER_CUBIC_METRE = 1e6; // water

/** Litres a mouth, for one whole day at camp. */
const DRINKING_PER_DAY = 4; // camping-gallon: 1 US gallon a person a day
const DRINKING_LEAST = 1; // nobody carries less: judged, no source
const WAKING_HOURS = 16; // people drink while they are awake: judged, no source

/** Litres for one meal. */
const HANDS_EACH = 5; // common practice, no source
const HANDS_LEAST = 10; // common practice, no source
const HANDS_LEAST_PUBLIC = 19; // sf-handwash: a container of five gallons at a public food stand
const WASH_PER_MOUTH = 1; // common practice, no source
const WASH_LEAST = 12; // three tubs of 4 l, common practice, no source
const ASH = 19; // ash-water: one camp cook's account, 5 US gallons or more
const ASH_SMALL = 10; // a bucket for one or two ovens' coals: common practice, no source
const SMALL_FIRE_GRAMS = 5000;

/** Water by use, as it is drawn. */
export function waterNeedsFor(asked: {
  readonly camp: Camp;
  readonly dishes: readonly DishToProvide[];
}): readonly WaterNeed[] {
  const { camp, dishes } = asked;
  const mouths = camp.mouths.reduce((sum, group) => sum + group.count, 0);
  const baked = dishes.filter(({ recipe }) => isBaked(recipe));
  const others = dishes.filter(({ recipe }) => !isBaked(recipe));
  const needs: WaterNeed[] = [
    { use: 'dough', volume: inRecipes(baked), source: 'recipes' },
    { use: 'pots', volume: inRecipes(others), source: 'recipes' },
    {
      use: 'drinking',
      volume: litres(mouths * drinkingLitres(camp)),
      by: { per: 'mouth', each: litres(drinkingLitres(camp)), many: mouths },
      source: 'camping-gallon',
    },
    handsNeed(camp),
    {
      use: 'wash',
      volume: litres(Math.max(WASH_LEAST, mouths * WASH_PER_MOUTH)),
      by: { per: 'mouth', each: litres(WASH_PER_MOUTH), many: mouths },
      source: 'camp-practice',
    },
    ashNeed(dishes),
  ];
  return needs.filter((need) => need.volume > 0);
}

function handsNeed({ hands, event }: Pick<Camp, 'hands' | 'event'>): WaterNeed {
  const least = event === 'public' ? HANDS_LEAST_PUBLIC : HANDS_LEAST;
  const byHands = hands.length * HANDS_EACH;
  return {
    use: 'hands',
    volume: litres(Math.max(least, byHands)),
    by: { per: 'hand', each: litres(HANDS_EACH), many: hands.length },
    source: event === 'public' && byHands < least ? 'sf-handwash' : 'camp-practice',
  };
}

/**
 * Hours from the first hands to the last. Nobody says how long the mouths stay, so the hands' day
 * stands for it; undefined without hands.
 */
export function campHours({ hands }: Pick<Camp, 'hands'>): number | undefined {
  if (hands.length === 0) return undefined;
  const from = Math.min(...hands.map((hand) => hand.from));
  const to = Math.max(...hands.map((hand) => hand.to));
  return Math.max(0, to - from) / 60;
}

/** A day's water by the waking hours spent at camp; past a day by days. */
export function drinkingLitres(camp: Pick<Camp, 'hands'>): number {
  const hours = campHours(camp) ?? HOURS_IN_DAY;
  const days = Math.max(Math.min(1, hours / WAKING_HOURS), hours / HOURS_IN_DAY);
  return Math.max(DRINKING_LEAST, DRINKING_PER_DAY * days);
}

const HOURS_IN_DAY = 24;

function ashNeed(dishes: readonly DishToProvide[]): WaterNeed {
  const coals = dishes.flatMap((dish) => dish.loads.map((load) => load.coals));
  const fuel = coals.reduce((sum, each) => sum + each.fuelMass, 0);
  if (coals.length === 0) return { use: 'ash', volume: litres(0), source: 'ash-water' };
  return fuel <= SMALL_FIRE_GRAMS
    ? { use: 'ash', volume: litres(ASH_SMALL), source: 'camp-practice' }
    : { use: 'ash', volume: litres(ASH), source: 'ash-water' };
}

/** Two cans of ten litres are what one person carries: common practice, no source. */
const CARRIED_LITRES = 20;

/** Walks to the water for all of it. */
export const waterTripsFor = (needs: readonly WaterNeed[]): number =>
  Math.ceil(needs.reduce((sum, need) => sum + need.volume, 0) / LITRE / CARRIED_LITRES - 1e-9);

const litres = (amount: number) => cubicMetres(amount * LITRE);

function inRecipes(dishes: readonly DishToProvide[]) {
  const mass = dishes
    .flatMap(({ formula }) => formula.lines)
    .filter((line) => line.ingredient.part === 'water')
    .reduce((sum, line) => sum + line.grams, 0);
  return cubicMetres(mass / GRAMS_PER_CUBIC_METRE);
}

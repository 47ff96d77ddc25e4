// What has to be bought, weighed at home and carried for this meal.

import type { Camp } from '../camp/camp.ts';
import { type Notice, notice } from '../notice/notice.ts';
import { cubicMetres, grams } from '../quantity/unit.ts';
import { bagsFor, tinsFor } from './bags.ts';
import { packCamp, packingNotices } from './boxes/pack-camp.ts';
import { buyingFor } from './buying.ts';
import type { DishToProvide } from './dish-to-provide.ts';
import { fuelNeedFor } from './fuel.ts';
import { iceNotices } from './ice/ice-notices.ts';
import { icePlanFor } from './ice/ice-plan.ts';
import { kitFor } from './kit.ts';
import type { Bag, FuelNeed, Provisions, ShoppingLine } from './provisions.ts';
import { foodKeyOf } from './same-food.ts';
import { shoppingFor } from './shopping.ts';
import { campHours, drinkingLitres, waterNeedsFor, waterTripsFor } from './water.ts';

/**
 * Shopping, bags, boxes, fuel, water, ice.
 *
 * Water is not on the shopping list; the rest of it weighs what the batches weigh.
 *
 * @notice PROVISIONS_FUEL_SHORT, PROVISIONS_FUEL_NOT_ENOUGH — with and without the spare
 */
export function provisionsFor(asked: {
  readonly camp: Camp;
  readonly dishes: readonly DishToProvide[];
}): Provisions {
  const { camp, dishes } = asked;
  const buying = buyingFor(shoppingFor(dishes), camp.stores);
  const shopping = buying.lines;
  const bags = bagsFor(dishes);
  const fuel = fuelNeedFor({ camp, dishes });
  const water = waterNeedsFor({ camp, dishes });
  const kit = kitFor(dishes);
  const ice = icePlanFor({ camp, shopping, lastServing: lastServingOf(dishes) });
  const bagged = baggedFrom(dishes, bags);
  const packing = packCamp({ camp, shopping, bags, bagged, kit, fuel, ice });
  return {
    shopping,
    bill: buying.bill,
    bags,
    tins: tinsFor(dishes),
    fuel,
    water,
    waterInAll: cubicMetres(water.reduce((sum, need) => sum + need.volume, 0)),
    ...(camp.place.water === undefined ? {} : { waterTrips: waterTripsFor(water) }),
    kit,
    packing,
    ...(ice === undefined ? {} : { ice }),
    foodMass: grams(shopping.reduce((sum, line) => sum + line.grams, 0)),
    refusals: buying.refusals,
    notices: [
      ...packingNotices(packing),
      ...fuelNotices(camp, fuel),
      ...bagNotices(bags),
      ...iceNotices(ice),
      ...shoppingNotices(shopping),
      ...buying.notices,
      ...drinkingNotices(camp),
      ...tripNotices(camp, waterTripsFor(water)),
    ],
  };
}

const lastServingOf = (dishes: readonly DishToProvide[]) =>
  dishes.reduce((last, { dish }) => Math.max(last, dish.serveAt), 0);

/** What of each food has gone into a bag or the dry tin, by the key of its shopping line. */
function baggedFrom(
  dishes: readonly DishToProvide[],
  bags: readonly Bag[],
): ReadonlyMap<string, number> {
  const inBag = new Set(
    bags.flatMap(({ dish, contents, fromTin = [] }) =>
      [...contents, ...fromTin].map(({ name }) => `${dish}|${name}`),
    ),
  );
  const bagged = new Map<string, number>();
  for (const { dish, formula } of dishes) {
    for (const { ingredient, grams: mass } of formula.lines) {
      if (!inBag.has(`${dish.id}|${ingredient.name}`)) continue;
      const key = foodKeyOf(ingredient);
      bagged.set(key, (bagged.get(key) ?? 0) + mass);
    }
  }
  return bagged;
}

function fuelNotices(camp: Camp, fuel: FuelNeed): readonly Notice[] {
  if (fuel.mass <= 0) return [];
  const uncounted =
    camp.fuel.kind === 'briquettes' && !camp.fuel.isMeasured
      ? [notice('PROVISIONS_FUEL_UNCOUNTED', 'doubt', {}, { pieceGrams: camp.fuel.pieceMass })]
      : [];
  if (fuel.onHand === undefined || fuel.short <= 0) return uncounted;
  const values = {
    shortGrams: fuel.short,
    onHandGrams: fuel.onHand,
    wantedGrams: fuel.massWithSpare,
    bareGrams: fuel.mass,
  };
  return fuel.onHand < fuel.mass
    ? [notice('PROVISIONS_FUEL_NOT_ENOUGH', 'stop', {}, values), ...uncounted]
    : [notice('PROVISIONS_FUEL_SHORT', 'doubt', {}, values), ...uncounted];
}

const LITRE = 0.001;

/** Said, because it is the one figure that depends on how long people really stay. */
function drinkingNotices(camp: Camp): readonly Notice[] {
  const hours = campHours(camp);
  if (hours === undefined || camp.mouths.length === 0) return [];
  const values = { hours, eachCubicMetres: drinkingLitres(camp) * LITRE };
  return [notice('PROVISIONS_DRINKING_HOURS', 'note', {}, values)];
}

/** More than the day sheet has somebody walk for. */
function tripNotices(camp: Camp, trips: number): readonly Notice[] {
  const { water } = camp.place;
  if (water === undefined || trips <= 1) return [];
  return [notice('PROVISIONS_WATER_TRIPS', 'note', {}, { trips, water })];
}

const bagNotices = (bags: readonly Bag[]): readonly Notice[] =>
  bags
    .filter((bag) => bag.freeFrom.length > 0)
    .map((bag) =>
      notice(
        'PROVISIONS_BAG_APART',
        'danger',
        { dish: bag.dish },
        { free: bag.freeFrom.join(', ') },
      ),
    );

const WORTH_SAYING_GRAMS = 25;

function shoppingNotices(shopping: readonly ShoppingLine[]): readonly Notice[] {
  return shopping.flatMap((line) => [
    ...(line.asBought === undefined || line.asBought - line.grams < WORTH_SAYING_GRAMS
      ? []
      : [
          notice(
            'PROVISIONS_AS_BOUGHT',
            'note',
            { ingredient: line.name },
            {
              name: line.name,
              grams: line.grams,
              boughtGrams: line.asBought,
            },
          ),
        ]),
    ...(line.food === undefined
      ? [notice('PROVISIONS_FOOD_UNKNOWN', 'note', { ingredient: line.name }, { name: line.name })]
      : []),
  ]);
}

// From what the engine computes with back to the saved shape. Reading it again gives the same camp.

import {
  allergensNamed,
  type Camp,
  type CampOven,
  type Fuel,
  foodNamed,
  foodWithKey,
  type Ingredient,
  type Menu,
  type MenuDish,
  type Recipe,
  usualCamp,
  type WriterSaid,
} from '#engine';
import { writeClock, writeDirection, writeUtcOffset } from './clock-text.ts';
import { NO_DATE } from './defaults.ts';
import { foodToFile } from './foods.ts';
import { given } from './given.ts';
import { inOvenToFile } from './in-oven-text.ts';
import { type QuantityKind, writeQuantity } from './quantity-text.ts';
import { storesToFile } from './stores.ts';
import type {
  CampFile,
  FileDish,
  FileFuel,
  FileGear,
  FileIngredient,
  FileOven,
  FileRecipe,
  FileStep,
  FileWeatherHour,
} from './v1.ts';

/** A camp as a file of the newest version; every quantity in the shortest unit that is exact. */
export function fromEngine(camp: Camp, menu: Menu): CampFile {
  return {
    emberwright: 'camp',
    version: 1,
    id: camp.id,
    title: camp.title,
    place: placeToFile(camp),
    ...(camp.date === NO_DATE ? {} : { date: camp.date }),
    timeZone: camp.timeZone,
    weather: camp.weather.map(weatherToFile),
    mouths: camp.mouths.map(({ late, ...group }) => ({
      ...group,
      ...given({ late: written('duration', late) }),
    })),
    needs: camp.needs.map((need) => ({ ...need })),
    hands: camp.hands.map(({ away, ...hand }) => ({
      ...hand,
      ...hoursToFile(hand),
      ...given({ away: away?.map(hoursToFile) }),
    })),
    ovens: camp.ovens.map(ovenToFile),
    fuel: fuelToFile(camp.fuel),
    gear: gearToFile(camp.gear),
    ...(camp.pantry === undefined ? {} : { pantry: { ...camp.pantry } }),
    ...(camp.stores === undefined ? {} : { stores: storesToFile(camp.stores) }),
    ...given({ event: camp.event, inHand: written('duration', camp.inHand) }),
    menu: menu.dishes.map(dishToFile),
    recipes: menu.recipes.map(recipeToFile),
    ...(menu.foods === undefined ? {} : { foods: menu.foods.map(foodToFile) }),
  };
}

const written = (kind: QuantityKind, value: number | undefined) =>
  value === undefined ? undefined : writeQuantity(kind, value);

const hoursToFile = ({ from, to }: { readonly from: number; readonly to: number }) => ({
  from: writeClock(from),
  to: writeClock(to),
});

const clockOrNot = (value: number | undefined) =>
  value === undefined ? undefined : writeClock(value);

function placeToFile({ place, restriction }: Camp): CampFile['place'] {
  const { utcOffset, ...plain } = place;
  return {
    ...plain,
    ...(utcOffset === undefined ? {} : { utcOffset: writeUtcOffset(utcOffset) }),
    elevation: writeQuantity('length', place.elevation),
    restriction,
  };
}

function weatherToFile(hour: Camp['weather'][number]): FileWeatherHour {
  return {
    at: writeClock(hour.at),
    air: writeQuantity('temperature', hour.air),
    wind: writeQuantity('speed', hour.wind),
    gust: writeQuantity('speed', hour.gust),
    windFrom: writeDirection(hour.windFrom),
    ...given<Partial<FileWeatherHour>>({
      humidity: written('share', hour.humidity),
      rain: written('length', hour.rain === undefined ? undefined : hour.rain / 1000),
      sun: written('share', hour.sun),
      sky: hour.sky,
    }),
  };
}

function ovenToFile(oven: CampOven): FileOven {
  return {
    id: oven.id,
    name: oven.name,
    diameter: writeQuantity('length', oven.diameter),
    style: oven.style,
    depth: writeQuantity('length', oven.depth),
    capacity: writeQuantity('volume', oven.capacity),
    weight: writeQuantity('mass', oven.mass),
    keptFreeOf: [...oven.keptFreeOf],
    ...given<Partial<FileOven>>({
      floorDiameter: written('length', oven.floorDiameter),
      lidWeight: written('mass', oven.lidMass),
      lidDiameter: written('length', oven.lidDiameter),
      riser: written('length', oven.riser),
      mark: oven.mark,
    }),
  };
}

function fuelToFile(fuel: Fuel): FileFuel {
  if (fuel.kind === 'wood-coals')
    return { kind: 'wood-coals', lead: writeQuantity('duration', fuel.lead) };
  const isUsual = !fuel.isMeasured && fuel.pieceMass === usualCamp.pieceMass;
  return {
    kind: 'briquettes',
    // The usual weight, if nobody measured it, is left out: it is guessed again.
    ...given<{ pieceWeight?: string; onHand?: string }>({
      pieceWeight: isUsual ? undefined : writeQuantity('mass', fuel.pieceMass),
      onHand: written('mass', fuel.onHand),
    }),
  };
}

const gearToFile = ({ bleach, ...gear }: Camp['gear']): FileGear => ({
  ...gear,
  others: [...gear.others],
  ...given<Partial<FileGear>>({ bleach: written('share', bleach) }),
});

function dishToFile(dish: MenuDish): FileDish {
  const pins = given<NonNullable<FileDish['pins']>>({
    oven: dish.pins.oven,
    coalsAbove: dish.pins.coalsAbove,
    coalsBelow: dish.pins.coalsBelow,
    coalsOn: clockOrNot(dish.pins.coalsOnAt),
    bake: written('duration', dish.pins.bakeMinutes),
    preheat: dish.pins.preheat,
    hand: dish.pins.hand,
  });
  return {
    id: dish.id,
    name: dish.name,
    recipe: dish.recipe,
    serve: writeClock(dish.serveAt),
    freeFrom: dish.freeFrom,
    ...given<Partial<FileDish>>({
      latest: clockOrNot(dish.latestAt),
      portions: dish.portionsAssumed ? undefined : dish.portions,
      share: written('share', dish.share),
      reserve: written('share', dish.reserve),
      pieces: dish.pieces === undefined ? undefined : [...dish.pieces],
      mayWait: written('duration', dish.mayWait),
      pins: Object.keys(pins).length === 0 ? undefined : pins,
      inOven: inOvenToFile(dish.inOven),
    }),
  };
}

/** A recipe as it stands in a camp file. */
export function recipeToFile(recipe: Recipe): FileRecipe {
  return {
    id: recipe.id,
    name: recipe.name,
    kind: recipe.kind,
    method: recipe.method,
    portions: recipe.portions,
    ingredients: recipe.ingredients.map(ingredientToFile),
    steps: recipe.steps.map(stepToFile),
    target: targetToFile(recipe.target),
    division: recipe.division.map(({ gramsEach, ...piece }) => ({
      ...piece,
      each: writeQuantity('mass', gramsEach),
    })),
    contains: [...recipe.contains],
    ...given<Partial<FileRecipe>>({
      inOven: inOvenToFile(recipe.inOven),
      writtenAt: written('length', recipe.writtenAt),
    }),
  };
}

/** Allergens are written out, so that the file says them even where the larder is not at hand. */
function ingredientToFile(ingredient: Ingredient): FileIngredient {
  const named = foodNamed(ingredient.name);
  const food =
    ingredient.own ?? (ingredient.food === undefined ? named : foodWithKey(ingredient.food));
  const doubts = allergensNamed(`${ingredient.name} ${ingredient.note ?? ''}`, food).checkLabel;
  const cleared = doubts.filter(
    (allergen) =>
      !ingredient.checkLabel.includes(allergen) && !ingredient.allergens.includes(allergen),
  );
  return {
    name: ingredient.name,
    measure: ingredient.asWritten,
    ...(ingredient.isUnweighed
      ? { unweighed: true as const }
      : { weight: writeQuantity('mass', ingredient.grams) }),
    part: ingredient.part,
    contains: [...ingredient.allergens],
    checkLabel: [...ingredient.checkLabel],
    ...given<Partial<FileIngredient>>({
      food: ingredient.food === named?.key ? undefined : ingredient.food,
      labelSaysFree: cleared.length === 0 ? undefined : [...cleared],
      note: ingredient.note,
    }),
  };
}

function stepToFile(step: Recipe['steps'][number]): FileStep {
  return {
    id: step.id,
    kind: step.kind,
    say: step.say,
    takes: writeQuantity('duration', step.minutes),
    hands: step.hands,
    skill: step.skill,
    table: step.needsTable,
    ...given<Partial<FileStep>>({ keptAt: written('temperature', step.keptAt) }),
    after: step.after.map((lag) => ({
      step: lag.step,
      least: writeQuantity('duration', lag.least),
      ...given<{ most?: string }>({ most: written('duration', lag.most) }),
    })),
  };
}

function targetToFile(target: Recipe['target']): NonNullable<FileRecipe['target']> {
  const [short, long] = target.minutesHint ?? [];
  return {
    canWait: writeQuantity('duration', target.canWait),
    rest: writeQuantity('duration', target.rest),
    cookedBefore: target.isCold,
    ...given<Partial<NonNullable<FileRecipe['target']>>>({
      oven: written('temperature', target.oven),
      core: written('temperature', target.core),
      coldOven: target.coldOven,
      took:
        short === undefined || long === undefined
          ? undefined
          : [writeQuantity('duration', short), writeQuantity('duration', long)],
      thickness: written('length', target.thickness),
      writer: target.writer === undefined ? undefined : writerToFile(target.writer),
    }),
  };
}

type FileWriter = NonNullable<NonNullable<FileRecipe['target']>['writer']>;

function writerToFile({ oven, minutes, core, coals, ...rises }: WriterSaid): FileWriter {
  const pair = (kind: QuantityKind, range: readonly [number, number] | undefined) =>
    range && ([writeQuantity(kind, range[0]), writeQuantity(kind, range[1])] as [string, string]);
  return given<FileWriter>({
    oven: pair('temperature', oven),
    took: pair('duration', minutes),
    core: written('temperature', core),
    firstRise: pair('duration', rises.firstRise),
    secondRise: pair('duration', rises.secondRise),
    coalsAbove: coals?.above,
    coalsBelow: coals?.below,
    coals: coals?.total,
    coalsAboveShare: coals?.aboveShare,
  });
}

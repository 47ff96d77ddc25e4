// The cook's own foods of a camp file: labels to foods and back.

import {
  type Food,
  type FoodLabel,
  foodFromLabel,
  grams,
  isRefusal,
  type Measure,
  type Notice,
} from '#engine';
import { given } from './given.ts';
import { readQuantity, writeQuantity } from './quantity-text.ts';
import { type FileTrouble, trouble } from './trouble.ts';
import type { FileFood } from './v1.ts';

export interface ReadFoods {
  readonly labels: readonly FoodLabel[];
  readonly foods: readonly Food[];
  readonly notices: readonly Notice[];
  readonly troubles: readonly FileTrouble[];
}

/** Foods as their labels say; a label that can not be is a trouble of its line. */
export function foodsFromFile(written: readonly FileFood[]): ReadFoods {
  const labels = written.map(labelFromFile);
  const made = labels.map((label) => foodFromLabel(label));
  return {
    labels,
    foods: made.flatMap((each) => (isRefusal(each) ? [] : [each.food])),
    notices: made.flatMap((each) => (isRefusal(each) ? [] : each.notices)),
    troubles: made.flatMap((each, index) =>
      isRefusal(each)
        ? [
            trouble('FILE_FOOD_IMPOSSIBLE', ['foods', index], {
              found:
                each.code === 'LARDER_OWN_SUM'
                  ? `${Math.round(Number(each.values.sumGrams))} g of parts in 100 g`
                  : `${each.values.field} of ${each.values.found}`,
              wanted: 'numbers that fit the amount they are of',
            }),
          ]
        : [],
    ),
  };
}

function labelFromFile(food: FileFood): FoodLabel {
  const mass = (text: string | undefined) =>
    text === undefined ? undefined : grams(readQuantity('mass', text)!);
  return {
    key: food.id,
    name: food.name,
    part: food.part,
    of: mass(food.of) ?? grams(100),
    manner: food.label,
    energyKilocalories: food.kilocalories,
    fatGrams: food.fat,
    carbohydrateGrams: food.carbohydrate,
    proteinGrams: food.protein,
    ...given<Partial<FoodLabel>>({
      alsoCalled: food.alsoCalled,
      sugarGrams: food.sugar,
      fibreGrams: food.fibre,
      sodiumMilligrams: food.sodiumMilligrams,
      saltGrams: food.salt,
      waterGrams: food.water,
      contains: food.contains,
      mayContain: food.mayContain,
      labelSaysFree: food.labelSaysFree,
      measures:
        food.measures === undefined
          ? undefined
          : Object.fromEntries(
              Object.entries(food.measures).map(([measure, text]) => [measure, mass(text)]),
            ),
    }),
  };
}

/** A label in the shape of the file. */
export function foodToFile(label: FoodLabel): FileFood {
  const measures = Object.entries(label.measures ?? {}) as (readonly [Measure, number])[];
  return {
    id: label.key,
    name: label.name,
    part: label.part,
    label: label.manner,
    of: writeQuantity('mass', label.of),
    kilocalories: label.energyKilocalories,
    fat: label.fatGrams,
    carbohydrate: label.carbohydrateGrams,
    protein: label.proteinGrams,
    ...given<Partial<FileFood>>({
      alsoCalled: label.alsoCalled === undefined ? undefined : [...label.alsoCalled],
      sugar: label.sugarGrams,
      fibre: label.fibreGrams,
      sodiumMilligrams: label.sodiumMilligrams,
      salt: label.saltGrams,
      water: label.waterGrams,
      measures:
        measures.length === 0
          ? undefined
          : Object.fromEntries(measures.map(([name, mass]) => [name, writeQuantity('mass', mass)])),
      contains: label.contains === undefined ? undefined : [...label.contains],
      mayContain: label.mayContain === undefined ? undefined : [...label.mayContain],
      labelSaysFree: label.labelSaysFree === undefined ? undefined : [...label.labelSaysFree],
    }),
  };
}

// Which food does a cook's word mean, and what is in it?
// Sources: sr28 rows in data/larder.json; rows without an NDB number are from memory and say so.
// Weak spot: names are matched by words, so an unusual name may find a near neighbour or nothing.

import table from '../../data/larder.json' with { type: 'json' };
import type { Allergen } from '../camp/camp.ts';
import { fromUnit } from '../quantity/convert.ts';
import { type Grams, grams, ratio } from '../quantity/unit.ts';
import type { Food, FoodPart, Measure } from './food.ts';

const SODIUM_IN_TABLE_SALT = 38758; // mg in 100 g, sr28 NDB 02047

export interface LarderRow {
  readonly key: string;
  readonly name: string;
  readonly ndb?: string;
  readonly alsoCalled: readonly string[];
  readonly isSeveral?: boolean;
  readonly part: string;
  readonly measures: { readonly [measure: string]: number | undefined };
  readonly measuredAs?: string;
  readonly water: number;
  readonly fat: number;
  readonly sugar: number | null;
  readonly protein: number;
  readonly sodiumMilligrams: number;
  readonly kilocalories: number;
  readonly allergens: readonly string[];
  readonly checkLabel: readonly string[];
  readonly source: string;
}

/** Every food we know, in the order of the table. */
export const foods: readonly Food[] = (table.rows as readonly LarderRow[]).map(foodFromRow);

const byKey: ReadonlyMap<string, Food> = new Map(foods.map((food) => [food.key, food]));

/** The food with this key, if we know it. */
export const foodWithKey = (key: string): Food | undefined => byKey.get(key);

/**
 * Salt is given as table salt: the sodium of the food over the sodium of SR28 table salt, so that
 * a spoon of salt counts as all salt. Sodium in powder and soda counts here as well; a formula
 * leaves those two out.
 */
export function foodFromRow(row: LarderRow): Food {
  return {
    key: row.key,
    name: row.name,
    ...(row.isSeveral === true ? { isSeveral: true as const } : {}),
    ...(row.ndb === undefined ? {} : { ndb: row.ndb }),
    alsoCalled: row.alsoCalled,
    part: row.part as FoodPart,
    measures: measuresFromRow(row.measures),
    ...sizeFromRow(row),
    water: ratio(row.water / 100),
    fat: ratio(row.fat / 100),
    salt: ratio(row.sodiumMilligrams / SODIUM_IN_TABLE_SALT),
    sugar: ratio((row.sugar ?? 0) / 100),
    protein: ratio(row.protein / 100),
    energyJoules: fromUnit(row.kilocalories / 100, 'kilocalorie'),
    allergens: row.allergens as readonly Allergen[],
    checkLabel: row.checkLabel as readonly Allergen[],
    source: row.source === 'sr28' ? 'sr28, grade A' : `${row.source}, grade D`,
  };
}

function sizeFromRow({ measuredAs }: LarderRow): Pick<Food, 'eachSize'> {
  const eachSize = /\b(?:small|medium|large)(?: stalk| head)?|\bcloves?\b/.exec(
    measuredAs ?? '',
  )?.[0];
  return eachSize === undefined ? {} : { eachSize };
}

function measuresFromRow(row: LarderRow['measures']): Food['measures'] {
  const measures: Partial<Record<Measure, Grams>> = {};
  for (const measure of ['cup', 'tbsp', 'tsp', 'each'] as const) {
    const mass = row[measure];
    if (mass !== undefined) measures[measure] = grams(mass);
  }
  return measures;
}

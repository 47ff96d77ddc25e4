// Loaves and rolls as menu/ lays them, in an oven that stands at one heat: ours beside common practice.

import { bakeFor } from '../../src/bake/bake-for.ts';
import type { BakeRequest } from '../../src/bake/bake-request.ts';
import { layIn } from '../../src/menu/lay.ts';
import type { OvenLoad } from '../../src/menu/load.ts';
import { nominalOven } from '../../src/menu/nominal-oven.ts';
import { fromUnit } from '../../src/quantity/convert.ts';
import { fromFahrenheit, grams } from '../../src/quantity/unit.ts';
import { madeAir, madeDish, madeFormula, madeRecipe } from './made.ts';
import practice from './practice-times.json' with { type: 'json' };

export interface PracticeRow {
  readonly name: string;
  readonly inches: number;
  readonly massGrams: number;
  readonly count: number;
  readonly fahrenheit: number;
  readonly least: number;
  readonly most: number;
}

type Row = readonly [string, number, number, number, number, number, number];

export const practiceRows: readonly PracticeRow[] = (practice.rows as unknown as Row[]).map(
  ([name, inches, massGrams, count, fahrenheit, least, most]) => ({
    name,
    inches,
    massGrams,
    count,
    fahrenheit,
    least,
    most,
  }),
);

/** The round of 900 g at 450 and at 400 F. */
export const hotLoaf = practiceRows[1]!;
export const usualLoaf = practiceRows[2]!;

export function practiceAsked(row: PracticeRow): BakeRequest {
  const oven = nominalOven(fromUnit(row.inches, 'inch'));
  const recipe = madeRecipe();
  const lying = layIn(oven, {
    dish: madeDish(),
    recipe,
    lie: row.count === 1 ? 'round' : 'pieces',
    mass: grams(row.massGrams),
    portions: 8,
    count: row.count,
    inOven: { contact: row.count === 1 ? 'paper' : 'iron', lid: 'cold', pieces: 'touching' },
  });
  const load: OvenLoad = {
    ...lying,
    id: 'bread-1',
    dish: 'bread',
    oven: 'A',
    mass: grams(row.massGrams),
    portions: 8,
  };
  return {
    load,
    recipe,
    formula: madeFormula(),
    air: madeAir(),
    wanted: fromFahrenheit(row.fahrenheit),
    ovenDiameter: oven.diameter,
  };
}

export const practiceMinutes = (row: PracticeRow) => bakeFor(practiceAsked(row)).minutes;

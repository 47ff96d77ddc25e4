// Which layout of the lid heats the food's top most evenly? Each is settled on the lid's plate, its
// coals alike, the air still, and read where the food lies. Sources: iron-plates.ts, through-gap.ts.

import type { CoalSet } from './coal-plan.ts';
import { type FoodView, gapSharesOf } from './food-sight.ts';
import { FOOD_HOW, fluxUnder } from './iron-plates.ts';
import type { Harmonics } from './plate/patch.ts';
import { plateSolver, settledPlate } from './plate/plate.ts';
import { circleKelvins, spreadOf } from './plate/reading.ts';
import type { Rings } from './plate/rings.ts';
import { throughGap } from './through-gap.ts';

export type LidView = Pick<FoodView, 'plates' | 'coalWidth' | 'foodRadius' | 'gapMetres'>;

/** Where two are about as good, the earlier. */
export const evenest = (layouts: readonly CoalSet[], view: LidView): CoalSet | undefined => {
  const spreads = spreadsUnder(layouts, view);
  const least = Math.min(...spreads);
  return layouts[spreads.findIndex((spread) => spread < least + ALIKE_KELVIN)];
};

const ALIKE_KELVIN = 1; // not worth another habit

/** Warmest less coolest place on the food's top, layout by layout [K]. */
export const spreadsUnder = (layouts: readonly CoalSet[], view: LidView): readonly number[] => {
  const { lid } = view.plates;
  const solver = plateSolver(lid.plate, { stepSeconds: 60, ...FOOD_HOW });
  const shares = gapSharesOf(view, FOOD_HOW);
  const shapes = new Map();
  return layouts.map(({ places }) => {
    const coals = { places, coalWidth: view.coalWidth, how: FOOD_HOW, shapes };
    const flux = fluxUnder(lid, coals, { fromRadians: 0, share: 0 });
    const seen = throughGap(settledPlate(solver, flux), solver.rings, shares);
    return spreadOf(readingsOf(seen, solver.rings, view.foodRadius));
  });
};

const PLACES_ROUND = 24;

const readingsOf = (kelvins: Harmonics, rings: Rings, foodRadius: number): readonly number[] =>
  [0, 1 / 3, 2 / 3, 1].flatMap((share) =>
    circleKelvins(kelvins, rings, {
      radiusMetres: share * foodRadius,
      places: share === 0 ? 1 : PLACES_ROUND,
    }),
  );

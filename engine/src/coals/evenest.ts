// Which layout heats the food most evenly? Each is settled on its plate and read where the food lies;
// on the lid with coals alike in still air, since turns see to the rest, under the floor with the wind:
// the third that has a coal less is better to windward. Sources: iron-plates.ts, through-gap.ts.

import type { CoalSet } from './coal-plan.ts';
import { type FoodView, gapSharesOf, windExcess } from './food-sight.ts';
import { FOOD_HOW, fluxUnder, ROUGH_HOW } from './iron-plates.ts';
import type { Harmonics } from './plate/patch.ts';
import { plateSolver, settledPlate } from './plate/plate.ts';
import { circleKelvins, spreadOf } from './plate/reading.ts';
import type { Rings } from './plate/rings.ts';
import { throughGap } from './through-gap.ts';

export type LidView = Pick<FoodView, 'plates' | 'coalWidth' | 'foodRadius' | 'gapMetres'>;

/** Of the lid's. Where two are about as good, the earlier. */
export const evenest = (layouts: readonly CoalSet[], view: LidView): CoalSet | undefined =>
  bestOf(layouts, spreadsUnder(layouts, view));

/** Of the floor's, round the food's edge. */
export const evenestBelow = (
  layouts: readonly CoalSet[],
  view: LidView & Pick<FoodView, 'windMetresPerSecond' | 'windFromRadians'>,
): CoalSet | undefined => {
  const { floor } = view.plates;
  const solver = plateSolver(floor.plate, { stepSeconds: 60, ...ROUGH_HOW });
  const shapes = new Map();
  const spreads = layouts.map((set) => {
    const coals = { places: set.places, coalWidth: view.coalWidth, how: ROUGH_HOW, shapes };
    const flux = fluxUnder(floor, coals, {
      fromRadians: view.windFromRadians,
      share: windExcess(view.windMetresPerSecond), // scatter lies anywhere: no layout meets it
    });
    const settled = settledPlate(solver, flux);
    const round = { radiusMetres: view.foodRadius, places: PLACES_ROUND };
    return spreadOf(circleKelvins(settled, solver.rings, round));
  });
  return bestOf(layouts, spreads);
};

const bestOf = (layouts: readonly CoalSet[], spreads: readonly number[]): CoalSet | undefined => {
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

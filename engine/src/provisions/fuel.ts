// How much fuel to take: what the coal plans burn, and a spare that grows with the wind.

import type { Camp } from '../camp/camp.ts';
import type { CoalPlan } from '../coals/coal-plan.ts';
import { grams, ratio } from '../quantity/unit.ts';
import type { FuelNeed } from './provisions.ts';

/**
 * Spare beside what the plans burn, which count on the forecast wind already: a quarter in calm
 * air, half from 8 m/s on. Cooks say that wind can double the use (wind-doubles); a judgement.
 */
const SPARE = { calm: 0.25, windy: 0.5, calmWind: 2, windyWind: 8 };

/**
 * Of each chimneyful a few coals break, stay black or roll away: one in twenty more are lit than are
 * laid. Common practice, no source.
 */
const SPARE_IN_CHIMNEY = 0.05;

/** Fuel for all dishes, with what is short. */
export function fuelNeedFor(asked: {
  readonly camp: Camp;
  readonly dishes: readonly { readonly loads: readonly { readonly coals: CoalPlan }[] }[];
}): FuelNeed {
  const { camp } = asked;
  const plans = asked.dishes.flatMap((dish) => dish.loads.map((load) => load.coals));
  const mass = plans.reduce((sum, plan) => sum + plan.fuelMass, 0);
  const lit = camp.fuel.kind === 'briquettes' ? SPARE_IN_CHIMNEY : 0;
  const weather = spareFor(camp);
  const spare = weather + lit;
  const withSpare = mass * (1 + spare);
  const added = plans.reduce((sum, plan) => sum + addedMass(plan), 0);
  const onHand = camp.fuel.kind === 'briquettes' ? camp.fuel.onHand : undefined;
  return {
    kind: camp.fuel.kind,
    mass: grams(mass),
    spare: ratio(spare),
    massWithSpare: grams(withSpare),
    parts: {
      sets: grams(mass - added),
      additions: grams(added),
      lighting: grams(mass * lit),
      weather: grams(mass * weather),
      ...chimneyfulsOf(camp, plans),
    },
    ...(onHand === undefined ? {} : { onHand }),
    short: grams(onHand === undefined ? 0 : Math.max(0, withSpare - onHand)),
    ...(camp.fuel.kind === 'briquettes'
      ? { pieces: plans.reduce((sum, plan) => sum + plan.coalsInAll, 0) }
      : { shovels: plans.reduce((sum, plan) => sum + shovelsOf(plan), 0) }),
  };
}

/** Of what a plan burns, what is laid after the first set; a lid laid after browning counts to the set. */
function addedMass(plan: CoalPlan): number {
  const { above, below, browning, coalsInAll, fuelMass } = plan;
  const first = (above.pieces ?? 0) + (below.pieces ?? 0) + (browning?.thenAbove.pieces ?? 0);
  return 0 < coalsInAll ? fuelMass * Math.min(1, Math.max(0, 1 - first / coalsInAll)) : 0;
}

function chimneyfulsOf({ fuel, gear }: Camp, plans: readonly CoalPlan[]) {
  if (fuel.kind === 'wood-coals' || gear.chimneyfulCoals <= 0) return {};
  const pieces = plans.reduce((sum, plan) => sum + plan.coalsInAll, 0);
  return { chimneyfuls: Math.ceil((pieces * (1 + SPARE_IN_CHIMNEY)) / gear.chimneyfulCoals) };
}

/** Spare for the windiest forecast hour. */
export function spareFor(camp: Camp): number {
  const wind = Math.max(0, ...camp.weather.map((hour) => hour.wind));
  const share = (wind - SPARE.calmWind) / (SPARE.windyWind - SPARE.calmWind);
  return SPARE.calm + (SPARE.windy - SPARE.calm) * Math.min(1, Math.max(0, share));
}

const shovelsOf = (plan: CoalPlan) =>
  (plan.above.shovels ?? 0) +
  (plan.below.shovels ?? 0) +
  plan.additions.reduce(
    (sum, each) => sum + (each.shovelsAbove ?? 0) + (each.shovelsBelow ?? 0),
    0,
  );

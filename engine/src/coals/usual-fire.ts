// What stands in at the fire where a cook says nothing: one list for the app and the command line.
// Source: chimneyMinutes (ashed over in 15 to 25 min), chartReprinted (350 F, the most asked heat);
// minutes by method and what lies there are common practice, no source; so is it that coals which a
// cook still counts are not ash (looks.ts for their width).

import type { Air, Fuel } from '../camp/camp.ts';
import type { HeatMethod } from '../menu/recipe.ts';
import {
  fromCelsius,
  fromFahrenheit,
  type Kelvin,
  kelvin,
  type Minutes,
  minutes,
} from '../quantity/unit.ts';
import { type BurnSpot, litMinutesOfBurnt } from './looks.ts';
import { isBaked, isPotMethod } from './split.ts';

/** The methods that a question at the fire knows. */
export const fireMethods = ['bake', 'roast', 'simmer', 'boil', 'fry', 'keep-warm'] as const;
export type FireMethod = (typeof fireMethods)[number];

export type AgedDoor = 'layout' | 'left' | 'what-now';

const STAY_MINUTES: Readonly<Record<FireMethod, number>> = {
  bake: 40,
  roast: 75,
  simmer: 120, // a stew from cold: half of it to come up
  boil: 60,
  fry: 20,
  'keep-warm': 60,
};

/** Oven heat by method; a pot has its own boil. */
const HEAT: Readonly<Record<FireMethod, Kelvin>> = {
  bake: fromFahrenheit(350),
  roast: fromFahrenheit(350),
  simmer: fromFahrenheit(350),
  boil: fromFahrenheit(350),
  fry: fromFahrenheit(375), // of the floor under the fat
  'keep-warm': fromCelsius(90), // as bake/ has it
};

/** Just above its boil a pot is kept; bake/ counts on the same. */
const ABOVE_BOIL_KELVIN = 4;

export const usualHeat = (method: FireMethod): Kelvin => HEAT[method];

/** The heat wanted in the oven: a pot's own boil, else what was said, else the method's usual one. */
export const wantedAtFire = (
  method: HeatMethod,
  air: Pick<Air, 'boiling'>,
  said?: Kelvin,
): Kelvin => {
  if (isPotMethod(method)) return said ?? kelvin(air.boiling + ABOVE_BOIL_KELVIN);
  return said ?? HEAT[method === 'none' ? 'bake' : method];
};

export const usualStay = (method: FireMethod): Minutes => minutes(STAY_MINUTES[method]);

/** Minutes that food is in when something goes wrong. */
export const USUAL_INSIDE_MINUTES = 15;
/** An empty oven is hot after so long. */
export const PREHEAT_MINUTES = 15;
const ASHED_MINUTES = 20;

/** Wood coals are raked out ready, and live half as long (woodCoalLife). */
const WOOD_LIT = { empty: 20, full: 25 } as const;
/** Used on one dish already. */
const LEFT_MINUTES = 30;

/** Since the coals were lit: ashed over; then an oven heated; then the food so long in. */
export const usualLitMinutes = (
  door: AgedDoor,
  fuel: Fuel['kind'],
  minutesIn?: number,
): Minutes => {
  const inside = door === 'what-now' ? (minutesIn ?? USUAL_INSIDE_MINUTES) : minutesIn;
  if (fuel === 'wood-coals') return minutes(inside === undefined ? WOOD_LIT.empty : WOOD_LIT.full);
  if (door === 'left') return minutes(LEFT_MINUTES);
  return minutes(inside === undefined ? ASHED_MINUTES : ASHED_MINUTES + PREHEAT_MINUTES + inside);
};

/** Coals that are counted still burn: no more than this of their time is over, ours. */
const MOST_ASSUMED_BURNT = 0.65; // a little over half as wide as new

export interface AssumedAge {
  readonly minutes: Minutes;
  /** 'made-up': the usual age were ash in this wind, so these lie where others lay before. */
  readonly how: 'laid' | 'made-up';
}

/** The age of live coals of which nobody said how old they are, nor how they look. */
export const assumedAge = (door: AgedDoor, spot: BurnSpot, minutesIn?: number): AssumedAge => {
  const usual = usualLitMinutes(door, spot.fuel.kind, minutesIn);
  const most = litMinutesOfBurnt(MOST_ASSUMED_BURNT, spot);
  return usual <= most ? { minutes: usual, how: 'laid' } : { minutes: most, how: 'made-up' };
};

/** When food goes into an empty oven, and how far a layout is looked at. A pot starts cold. */
export const usualLook = (
  method: FireMethod,
): { readonly wait: number; readonly minutes: number } =>
  isBaked(method) || method === 'fry'
    ? { wait: PREHEAT_MINUTES, minutes: 45 } // half an hour's bake after its wait
    : { wait: 0, minutes: isPotMethod(method) ? 75 : 45 };

/** Coals as they lie in a form that nobody has filled in: briquettes, or shovels. */
export const usualLaid = (fuel: Fuel['kind']) =>
  fuel === 'wood-coals'
    ? ({ above: 2.5, below: 1, left: 3 } as const)
    : ({ above: 17, below: 8, left: 22 } as const); // chartReprinted: 350 F in 12 inch

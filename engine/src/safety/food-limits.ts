// Hot, cold, cooling, reheating: what two authorities ask, and the stricter of the two.
// Sources: foodsafety-chart and fsis-two-hours (consumers); food-code-3-501, food-code-3-501-14 and
// food-code-3-403 (professional code); cooking-for-crowds (consumers' cooling).

import type { EventKind } from '../camp/camp.ts';
import { fromFahrenheit, type Kelvin, type Minutes, minutes } from '../quantity/unit.ts';

export interface FoodLimits {
  /** Hot food waits at this or above, cold food at this or below. */
  readonly hotHold: Kelvin;
  readonly coldHold: Kelvin;
  /** What is kept is to pass from `hotHold` to `between` and on to `coldHold` in so long. */
  readonly cooling: {
    readonly between: Kelvin;
    readonly toBetween: Minutes;
    /** From `hotHold` to `coldHold`, both stages together. */
    readonly inAll: Minutes;
  };
  readonly reheat: { readonly core: Kelvin; readonly seconds: number; readonly within: Minutes };
  readonly source: string;
}

const COOLING = {
  between: fromFahrenheit(70),
  toBetween: minutes(120),
  inAll: minutes(360),
} as const;
const REHEAT = { core: fromFahrenheit(165), seconds: 15, within: minutes(120) } as const;

/** Friends round a fire: 140 and 40 F (foodsafety-chart), cooled as a crowd's pots are. */
const CONSUMERS: FoodLimits = {
  hotHold: fromFahrenheit(140),
  coldHold: fromFahrenheit(40),
  cooling: COOLING, // cooking-for-crowds: 140 to 70 F in 2 h, on to 40 F in 4 more
  reheat: REHEAT, // foodsafety-chart: leftovers 165 F; time and seconds from the code
  source: 'foodsafety-chart',
};

/** Strangers at a stall: 135 and 41 F (food-code-3-501). */
const CODE: FoodLimits = {
  hotHold: fromFahrenheit(135),
  coldHold: fromFahrenheit(41),
  cooling: COOLING, // food-code-3-501-14
  reheat: REHEAT, // food-code-3-403
  source: 'food-code-3-501',
};

/**
 * Limits of an event: by its own authority alone, or, as plans do, the stricter of both.
 *
 * @source foodsafety-chart, food-code-3-501, food-code-3-501-14, food-code-3-403
 */
export function foodLimits(event: EventKind, by: 'stricter' | 'own' = 'stricter'): FoodLimits {
  const own = event === 'public' ? CODE : CONSUMERS;
  if (by === 'own') return own;
  const hotHold = hotter(CONSUMERS.hotHold, CODE.hotHold);
  const coldHold = colder(CONSUMERS.coldHold, CODE.coldHold);
  return { ...own, hotHold, coldHold, source: 'foodsafety-chart, food-code-3-501' };
}

const hotter = (one: Kelvin, other: Kelvin) => (one > other ? one : other);
const colder = (one: Kelvin, other: Kelvin) => (one < other ? one : other);

/** Out of hot and cold no longer than this, one hour where the air is above 90 F (fsis-two-hours). */
export const outLimitIn = (air: Kelvin): Minutes => minutes(air <= fromFahrenheit(90) ? 120 : 60);

// What menu/ answers: how much of each dish, in which oven, lying how.

import type { Notice } from '../notice/notice.ts';
import type { CubicMetres, Grams, Metres, Minutes, Ratio, SquareMetres } from '../quantity/unit.ts';
import type { InOven } from './in-oven.ts';

/** How much of a dish to make. */
export interface DishPortions {
  readonly dish: string;
  /** People who take it. */
  readonly eaters: number;
  /** Ordinary portions, appetites and reserve counted. */
  readonly portions: number;
  /** Part of `portions` that is held back. */
  readonly reserve: number;
  /** Part of `portions` that is kept for those who come late; the reserve is not in it. */
  readonly late?: number;
  /** Recipe amounts are multiplied by this. */
  readonly factor: Ratio;
  readonly notices: readonly Notice[];
}

/** A round piece lying on the oven floor; origin at the floor's centre. */
export interface PlacedPiece {
  readonly x: Metres;
  readonly y: Metres;
  readonly diameter: Metres;
}

/** What goes into one oven at one time. */
export interface OvenLoad {
  /** Unique in the meal: `rolls-1`. */
  readonly id: string;
  readonly dish: string;
  readonly oven: string;
  readonly mass: Grams;
  readonly portions: number;
  readonly shape: 'disc' | 'pieces' | 'pot';
  /** Raw, as it goes in; for a pot the depth of the food. */
  readonly thickness: Metres;
  /** A dough that proves in its oven, as the coals go on; left out where it goes in raw. */
  readonly provedHeight?: Metres;
  /** After rising; equal to thickness for a pot. */
  readonly risenHeight: Metres;
  /** Risen, its mean height over the height of its middle: a mound 2/3, a slab 1. Not for a pot. */
  readonly profile?: Ratio;
  /** Area seen from above that takes heat. */
  readonly planArea: SquareMetres;
  readonly volume: CubicMetres;
  readonly pieces: readonly PlacedPiece[];
  /** 1 = as full as good practice allows. */
  readonly fill: Ratio;
  /** Room between the risen top and the lid. */
  readonly headroom: Metres;
  /** What it rests on; left out only where a load was made by hand, as in a test. */
  readonly inOven?: InOven;
}

export interface DishFit {
  readonly dish: string;
  /** One for most dishes; more where the batch is split over ovens or baked in turns. */
  readonly loads: readonly OvenLoad[];
  readonly notices: readonly Notice[];
}

/** How long one oven is busy with a dish, as far as menu/ must know to share ovens out. */
export interface OvenNeed {
  readonly dish: string;
  readonly minutes: Minutes;
}

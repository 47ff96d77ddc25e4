// The menu: which dish is served when, from which recipe, and what the cook has pinned.

import type { FoodLabel } from '../larder/own-food.ts';
import type { ClockMinutes, Minutes } from '../quantity/unit.ts';
import type { InOvenWish } from './in-oven.ts';
import type { Recipe } from './recipe.ts';

export interface Menu {
  readonly dishes: readonly MenuDish[];
  readonly recipes: readonly Recipe[];
  /** The cook's own foods, as their labels say; ingredients carry the food itself. */
  readonly foods?: readonly FoodLabel[];
}

export interface MenuDish {
  readonly id: string;
  readonly name: string;
  readonly recipe: string;
  readonly serveAt: ClockMinutes;
  /** Latest that the cook can bear; undefined where not said. */
  readonly latestAt?: ClockMinutes;
  /** Ordinary portions wanted, where the cook says so instead of counting mouths. */
  readonly portions?: number;
  /** Nobody said them: a camp file leaves them out, so that the dish follows the mouths. */
  readonly portionsAssumed?: boolean;
  /** Share of the mouths who take it, 1 if not said. */
  readonly share?: number;
  /** Held back on top of what is eaten; by the number of eaters if not said. */
  readonly reserve?: number;
  /** Use only these pieces of the recipe's division (rolls in one oven, the round in another). */
  readonly pieces?: readonly ('roll' | 'round' | 'biscuit' | 'loaf')[];
  readonly mayWait?: Minutes;
  /** It must be kept free of what these say; it is made first, with its own tools. */
  readonly freeFrom: boolean;
  readonly pins: DishPins;
  /** What it rests on, and how hot its oven is then: before what the recipe says of it. */
  readonly inOven?: InOvenWish;
}

/** What the cook has decided. The engine keeps it and says what it costs; it never rewrites it. */
export interface DishPins {
  readonly oven?: string;
  readonly coalsAbove?: number;
  readonly coalsBelow?: number;
  /** Coals are laid at this minute of the camp's clock. */
  readonly coalsOnAt?: ClockMinutes;
  readonly bakeMinutes?: Minutes;
  /** True: into an oven that is hot; false: into a cold one, the coals come after it. */
  readonly preheat?: boolean;
  /** A hand's id: this person does the oven work of the dish. */
  readonly hand?: string;
}

// What a cook answers for tonight, and what comes of it.

import type { Camp, CampOven, Fuel, Ground, Place } from '../camp/camp.ts';
import type { Notice } from '../notice/notice.ts';
import type { ClockMinutes, CubicMetres, Grams, Metres } from '../quantity/unit.ts';
import type { InOvenWish } from './in-oven.ts';
import type { DishPins, Menu } from './menu.ts';
import type { Recipe } from './recipe.ts';

export interface TonightAnswers {
  /** Id of a ready recipe, or the cook's own. */
  readonly what: string | Recipe;
  /** Default: what fills the oven at the recipe's thickness. The first that is given counts. */
  readonly amount?: {
    readonly massGrams?: number;
    readonly flourGrams?: number;
    readonly portions?: number;
    readonly thicknessMetres?: number;
  };
  readonly oven: {
    readonly diameterMetres: number;
    readonly style?: CampOven['style'];
    /** The owner's own measurements win. */
    readonly depth?: Metres;
    readonly floorDiameter?: Metres;
    readonly capacity?: CubicMetres;
    readonly mass?: Grams;
    readonly lidMass?: Grams;
    readonly riser?: Metres;
    /** Hot before the bread goes in, or cold; left out, as the recipe wants it. */
    readonly startsHot?: boolean;
  };
  /** What the bread rests on, in a tin or not, pieces touching; left out, as the recipe wants it. */
  readonly inOven?: InOvenWish;
  /** Leave `serveAt` out for "as soon as it can be". */
  readonly when: { readonly serveAt?: ClockMinutes };
  readonly date: string;
  readonly timeZone: string;
  readonly now: ClockMinutes;
  readonly weather?: {
    readonly airKelvin?: number;
    readonly windMetresPerSecond?: number;
    readonly windFromDegrees?: number;
    /** [mm/h] */
    readonly rain?: number;
    /** Share of a high, clear sun on the oven, 0 … 1. */
    readonly sun?: number;
  };
  readonly elevation?: Metres;
  readonly fuel?: Fuel;
  readonly hands?: number;
  readonly chimneys?: number;
  readonly windScreens?: number;
  readonly thermometer?: boolean;
  readonly ground?: Ground;
  readonly groundIs?: Place['groundIs'];
  readonly hearth?: Place['hearth'];
  readonly mouths?: number;
  readonly pins?: DishPins;
}

/** What was assumed because the cook did not say. */
export interface Assumption {
  readonly what:
    | 'fuel'
    | 'piece-mass'
    | 'chimneys'
    | 'hands'
    | 'air'
    | 'wind'
    | 'wind-from'
    | 'ground'
    | 'elevation'
    | 'depth'
    | 'greased'
    | 'cold-oven'
    | 'screen'
    | 'mouths';
  readonly value: number | string;
}

export interface Tonight {
  readonly camp: Camp;
  readonly menu: Menu;
  readonly assumed: readonly Assumption[];
  readonly notices: readonly Notice[];
}

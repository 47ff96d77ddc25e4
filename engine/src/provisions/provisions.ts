// What has to be bought, weighed at home and carried.

import type { Tool } from '../bake/index.ts';
import type { Allergen } from '../camp/camp.ts';
import type { Keeping, LeaveningTin, Scoop } from '../formula/index.ts';
import type { Notice } from '../notice/notice.ts';
import type { CookMeasure } from '../quantity/cook-measure.ts';
import type { CubicMetres, Grams, Ratio } from '../quantity/unit.ts';

export interface Provisions {
  /** By shelf, then by name. */
  readonly shopping: readonly ShoppingLine[];
  readonly bags: readonly Bag[];
  /** Instead of bags, where a bread is raised by powder or soda. */
  readonly tins?: readonly TinForDish[];
  readonly fuel: FuelNeed;
  readonly water: readonly WaterNeed[];
  readonly waterInAll: CubicMetres;
  /** Walks to the water with two cans of ten litres; undefined where the camp names no water. */
  readonly waterTrips?: number;
  readonly foodMass: Grams;
  /** What the work at the ovens wants; left out only where a plan was made by hand. */
  readonly kit?: readonly KitLine[];
  readonly notices: readonly Notice[];
}

export interface ShoppingLine {
  readonly name: string;
  readonly food?: string;
  /** As it goes into the dishes. */
  readonly grams: Grams;
  /** To buy, where the recipe weighs it peeled or cut and a yield is known. */
  readonly asBought?: Grams;
  readonly measure?: CookMeasure;
  /** Amounts in the recipes' own words that no weight is known of; they come on top of `grams`. */
  readonly unweighed?: readonly string[];
  readonly shelf: 'dry' | 'produce' | 'meat' | 'cold' | 'tins' | 'spice' | 'other';
  readonly keep: 'dry' | 'cool' | 'cold' | 'frozen';
  readonly dishes: readonly string[];
  readonly checkLabel: readonly Allergen[];
}

/** A tool or a thing to use up, and for which dishes. */
export interface KitLine {
  readonly tool: Tool;
  readonly count: number;
  readonly dishes: readonly string[];
}

/** A dry mix weighed at home. */
export interface Bag {
  readonly id: string;
  readonly dish: string;
  readonly contents: readonly {
    readonly name: string;
    readonly grams: Grams;
    readonly measure?: CookMeasure;
  }[];
  readonly total: Grams;
  /** What is added at camp. */
  readonly add: readonly {
    readonly name: string;
    readonly grams: Grams;
    readonly measure?: CookMeasure;
  }[];
  readonly contains: readonly Allergen[];
  readonly freeFrom: readonly Allergen[];
  readonly keeps?: Keeping;
  /** By the cup, for a cook without scales; undefined where a part is only weighed. */
  readonly scoop?: Scoop;
}

/** Leavening, salt and sugar of a bread in a tin, for cooks who carry their flour plain. */
export interface TinForDish {
  readonly dish: string;
  readonly tin: LeaveningTin;
}

export interface FuelNeed {
  readonly kind: 'briquettes' | 'wood-coals';
  /** Whole briquettes, spare not counted; undefined for wood. */
  readonly pieces?: number;
  readonly mass: Grams;
  readonly spare: Ratio;
  readonly massWithSpare: Grams;
  readonly onHand?: Grams;
  /** What is missing with the spare counted; 0 if enough or not known. */
  readonly short: Grams;
  readonly shovels?: number;
}

export interface WaterNeed {
  readonly use: 'dough' | 'pots' | 'drinking' | 'hands' | 'wash' | 'ash';
  readonly volume: CubicMetres;
  readonly source: string;
}

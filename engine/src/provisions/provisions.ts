// What has to be bought, weighed at home and carried.

import type { Tool } from '../bake/index.ts';
import type { Allergen } from '../camp/camp.ts';
import type { Keeping, LeaveningTin, Scoop } from '../formula/index.ts';
import type { Notice, Refusal } from '../notice/notice.ts';
import type { CookMeasure } from '../quantity/cook-measure.ts';
import type { CubicMetres, Grams, Ratio } from '../quantity/unit.ts';
import type { Packing } from './boxes/packing.ts';
import type { Bill } from './buying.ts';
import type { IcePlan } from './ice/ice-plan.ts';
import type { PackCount } from './packs.ts';

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
  /** From here on left out only where a plan was made by hand. */
  readonly bill?: Bill;
  readonly packing?: Packing;
  /** Undefined where nothing has to be kept cold. */
  readonly ice?: IcePlan;
  /** What the stores say that can't be. */
  readonly refusals?: readonly Refusal[];
  readonly notices: readonly Notice[];
}

export interface ShoppingLine {
  readonly name: string;
  /** What is the same in a shop has the same key; left out only where a plan was made by hand. */
  readonly key?: string;
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
  readonly shop?: string;
  /** Taken from the larder; never more than is needed. */
  readonly have?: Grams;
  /** Missing once the larder is taken off. */
  readonly toBuy?: Grams;
  /** Largest first; undefined where it is weighed out. */
  readonly packs?: readonly PackCount[];
  /** What is carried home: whole packs, or what is missing. */
  readonly bought?: Grams;
  /** In the camp's money; undefined where a price is not known. */
  readonly cost?: number;
}

/** A tool or a thing to use up, and for which dishes. */
export interface KitLine {
  readonly tool: Tool;
  readonly count: number;
  readonly dishes: readonly string[];
}

export interface BagLine {
  readonly name: string;
  readonly grams: Grams;
  readonly measure?: CookMeasure;
}

/** A dry mix weighed at home. */
export interface Bag {
  readonly id: string;
  readonly dish: string;
  readonly contents: readonly BagLine[];
  readonly total: Grams;
  /** Powder, soda and yeast, weighed at home too: in packets of their own in the dry tin. */
  readonly fromTin?: readonly BagLine[];
  /** What is added at camp. */
  readonly add: readonly BagLine[];
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
  /** What makes up `massWithSpare`; left out only where a plan was made by hand. */
  readonly parts?: FuelParts;
  /** What is missing with the spare counted; 0 if enough or not known. */
  readonly short: Grams;
  readonly shovels?: number;
}

/** Whole amounts, spare and all: their sum is what is taken. */
export interface FuelParts {
  /** Laid when coals go on. */
  readonly sets: Grams;
  /** Added while it bakes. */
  readonly additions: Grams;
  /** Broken, unlit and lost ones in the chimneys. */
  readonly lighting: Grams;
  /** More wind than the forecast, and a colder day. */
  readonly weather: Grams;
  /** Chimneys to fill, one after the other; undefined for wood. */
  readonly chimneyfuls?: number;
}

export interface WaterNeed {
  readonly use: 'dough' | 'pots' | 'drinking' | 'hands' | 'wash' | 'ash';
  readonly volume: CubicMetres;
  /** What it was reckoned by; undefined where the recipes say it. */
  readonly by?: WaterBasis;
  readonly source: string;
}

export interface WaterBasis {
  readonly per: 'mouth' | 'hand' | 'camp';
  /** Of one of them. */
  readonly each: CubicMetres;
  readonly many: number;
}

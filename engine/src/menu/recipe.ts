// A recipe as a cook wrote it down, with grams beside every measure and the work as steps.

import type { Allergen, Skill } from '../camp/camp.ts';
import type { Food, FoodPart } from '../larder/food.ts';
import type { Grams, Kelvin, Metres, Minutes } from '../quantity/unit.ts';
import type { InOvenWish } from './in-oven.ts';

export type RecipeKind =
  | 'yeast-bread'
  | 'quick-bread'
  | 'biscuit'
  | 'corn-bread'
  | 'cobbler'
  | 'braise'
  | 'stew'
  | 'beans'
  | 'roast'
  | 'fruit'
  | 'cold-dish';

/** How heat is brought to it. 'none' needs no oven and no coals. */
export type HeatMethod = 'bake' | 'roast' | 'simmer' | 'boil' | 'fry' | 'keep-warm' | 'none';

export interface Recipe {
  readonly id: string;
  readonly name: string;
  readonly kind: RecipeKind;
  readonly method: HeatMethod;
  /** Ordinary portions that the amounts below make. */
  readonly portions: number;
  readonly ingredients: readonly Ingredient[];
  readonly steps: readonly RecipeStep[];
  readonly target: RecipeTarget;
  /** How the batch is divided; empty means it goes into an oven as one. */
  readonly division: readonly Piece[];
  /** Allergens that the cook says are in it, beside those found from the larder. */
  readonly contains: readonly Allergen[];
  /** What it rests on in its oven, and how hot that oven is; left out, its kind decides. */
  readonly inOven?: InOvenWish;
  /** Height that its leavening was measured out for; undefined means low ground. */
  readonly writtenAt?: Metres;
}

export interface Ingredient {
  readonly name: string;
  readonly grams: Grams;
  /** Nobody knows what it weighs: `grams` is 0, and whatever is reckoned leaves it out and says so. */
  readonly isUnweighed?: true;
  /** The measure as the cook wrote it, `3 3/4 cups`. */
  readonly asWritten: string;
  /** Key in the larder; undefined where it was not found. */
  readonly food?: string;
  /** The food itself, where it is not one of the first door's: the cook's own, or a rarer one. */
  readonly own?: Food;
  readonly part: FoodPart;
  readonly allergens: readonly Allergen[];
  /** Labels still to be read; filled in from the larder, empty once they are read. */
  readonly checkLabel: readonly Allergen[];
  readonly note?: string;
}

export interface Piece {
  readonly shape: 'roll' | 'round' | 'biscuit' | 'loaf';
  readonly count: number;
  readonly gramsEach: Grams;
  /** Ordinary portions in one piece: 1 for a roll, 8 for a round that is cut in 8. */
  readonly portionsEach: number;
}

export type StepKind =
  | 'weigh'
  | 'prepare'
  | 'mix'
  | 'fold'
  | 'rise'
  | 'shape'
  | 'second-rise'
  | 'load'
  | 'brown'
  | 'cook'
  | 'stir'
  | 'take-out'
  | 'rest'
  | 'cut'
  | 'dress'
  | 'hold';

export interface RecipeStep {
  readonly id: string;
  readonly kind: StepKind;
  /** What is done, as the cook says it. */
  readonly say: string;
  /** For 'cook' it is only a hint: the engine computes its own. */
  readonly minutes: Minutes;
  /** Hands that are busy all the while; 0 for a rise, a rest, a simmer. */
  readonly hands: number;
  readonly skill: Skill;
  readonly needsTable: boolean;
  /** A rise in a box, or in a towel beside the fire: as warm as this, whatever the air. */
  readonly keptAt?: Kelvin;
  /** Steps that come first; `least` … `most` minutes lie between their end and this start. */
  readonly after: readonly StepLag[];
}

export interface StepLag {
  readonly step: string;
  readonly least: Minutes;
  readonly most?: Minutes;
}

export interface RecipeTarget {
  /** Temperature inside the oven that the cook wants while it bakes. */
  readonly oven?: Kelvin;
  /** Core temperature when done, before the local boiling point caps it. */
  readonly core?: Kelvin;
  /** What the writer's kitchen took; a hint that is shown, never used as truth. */
  readonly minutesHint?: readonly [Minutes, Minutes];
  /** How long it may wait hot (or cold) once done without harm. */
  readonly canWait: Minutes;
  /** Bread and meat: minutes of rest before cutting. */
  readonly rest: Minutes;
  /** Thickness of raw dough or batter as it goes in, if the cook says so. */
  readonly thickness?: Metres;
  /** It goes into an oven without coals; the coals come after it. */
  readonly coldOven?: boolean;
  /** Has it been cooked before it comes to camp (cooked beans, tinned fruit)? */
  readonly isCold: boolean;
  /** How whoever wrote it down baked it; shown beside ours, never used as truth. */
  readonly writer?: WriterSaid;
}

export interface WriterSaid {
  readonly oven?: readonly [Kelvin, Kelvin];
  readonly minutes?: readonly [Minutes, Minutes];
  readonly core?: Kelvin;
  readonly coals?: WriterCoals;
  /** Minutes of a rise by the writer's word; how long it takes in this air is reckoned. */
  readonly firstRise?: readonly [Minutes, Minutes];
  readonly secondRise?: readonly [Minutes, Minutes];
}

/** Coals as they were written, or what share of them lies on the lid. */
export interface WriterCoals {
  readonly above?: number;
  readonly below?: number;
  readonly total?: number;
  readonly aboveShare?: number;
}

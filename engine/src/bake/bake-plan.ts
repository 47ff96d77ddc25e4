// What bake/ answers: how long, how hot inside, and what shows that it is done.

import type { Notice } from '../notice/notice.ts';
import type { Kelvin, KelvinDifference, Metres, Minutes, Ratio } from '../quantity/unit.ts';
import type { HeatTaken } from './heat-taken.ts';

export interface BakePlan {
  readonly load: string;
  /** From load in (or from the boil, for a simmer) to done. */
  readonly minutes: Minutes;
  /** 80 % band. */
  readonly least: Minutes;
  readonly most: Minutes;
  /**
   * A pot that may wait so long: begun this much sooner it is tender in time even if it is slow.
   * Left out where nothing is to be gained, or it can't wait.
   */
  readonly aimEarly?: Minutes;
  readonly done: DoneTarget;
  /** Share of the raw mass that leaves as steam. */
  readonly loss: Ratio;
  readonly notices: readonly Notice[];
  /** What happens inside a bread; left out for what is reckoned otherwise. */
  readonly inside?: InsidePlan;
  /** A roast's middle minute by minute, until it is done: what safety/ weighs germs with. */
  readonly coreReadings?: readonly { readonly minute: Minutes; readonly core: Kelvin }[];
  /** How it takes heat, by how much it has taken: what its oven is asked with. */
  readonly taken?: HeatTaken;
}

/** Minutes count from load in. */
export interface InsidePlan {
  /** The middle is baked from here on, whether or not anybody can read it. */
  readonly core: Kelvin;
  /** One a minute, some minutes past done. */
  readonly moments: readonly InsidePoint[];
  /** The whole of it at a few minutes, the last when it is done. */
  readonly cuts: readonly InsideCutPlan[];
  /** Core hot and starch set. */
  readonly through?: Minutes;
  /** Top as brown as its kind wants; bottom brown. */
  readonly topBrown?: Minutes;
  readonly bottomBrown?: Minutes;
  /** Of the two faces the one that burns sooner, where either does while it is looked at. */
  readonly firstToBurn?: { readonly face: 'top' | 'bottom'; readonly minute: Minutes };
  /** Share of the raw mass that has left as steam when it is done, by the model: on the low side. */
  readonly loss: Ratio;
}

export interface InsidePoint {
  readonly minute: Minutes;
  readonly core: Kelvin;
  readonly top: Kelvin;
  readonly bottom: Kelvin;
  /** Change of colour, 0 raw … 52 burnt (zanoni1995). */
  readonly topColour: number;
  readonly bottomColour: number;
  readonly topCrust: Metres;
  readonly bottomCrust: Metres;
  readonly height: Metres;
}

/** Slices from the bottom up: one edge more than temperatures. */
export interface InsideCutPlan {
  readonly minute: Minutes;
  readonly edges: readonly Metres[];
  readonly kelvins: readonly Kelvin[];
}

export interface DoneTarget {
  /** Core to reach here; undefined where there is no core to probe (a simmered pot has one). */
  readonly core?: Kelvin;
  /** What the recipe asked for at sea level. */
  readonly wantedCore?: Kelvin;
  /** True where the local boiling point lowered it. */
  readonly cappedByBoil: boolean;
  readonly margin: KelvinDifference;
  readonly top?: 'straw' | 'brown' | 'dark';
  readonly bottom?: 'straw' | 'brown' | 'dark';
  readonly signs: readonly DoneSign[];
}

export type DoneSign =
  | 'core'
  | 'hollow-tap'
  | 'springs-back'
  | 'clean-probe'
  | 'fork-tender'
  | 'bottom-crust'
  | 'knife-slides';

// What bake/ answers: how long, how hot inside, and what shows that it is done.

import type { Notice } from '../notice/notice.ts';
import type { Kelvin, KelvinDifference, Minutes, Ratio } from '../quantity/unit.ts';

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

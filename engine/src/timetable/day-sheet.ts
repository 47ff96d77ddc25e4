// The timetable of a meal: who does what when, which oven holds what, how many coals are lit.

import type { BakePlan } from '../bake/bake-plan.ts';
import type { Camp } from '../camp/camp.ts';
import type { CoalPlan } from '../coals/coal-plan.ts';
import type { RiseEstimate } from '../formula/formula.ts';
import type { OvenLoad } from '../menu/load.ts';
import type { MenuDish } from '../menu/menu.ts';
import type { Recipe, StepKind } from '../menu/recipe.ts';
import type { Notice, Refusal } from '../notice/notice.ts';
import type { ClockMinutes, Minutes } from '../quantity/unit.ts';
import type { DayDoubt } from './doubt/doubt.ts';

export interface TimetableRequest {
  readonly camp: Camp;
  readonly dishes: readonly DishWork[];
  /** From lighting a chimneyful to ashed over. */
  readonly ashOver: Minutes;
  /** Lit coals are past use this long after ashing over. */
  readonly coalLife: Minutes;
  /** What comes from an oven is done so long before its time, where it may wait; none if not said. */
  readonly inHand?: Minutes;
  /** Nothing may start before this, if the cook plans on the day itself. */
  readonly notBefore?: ClockMinutes;
}

export interface DishWork {
  readonly dish: MenuDish;
  readonly recipe: Recipe;
  /** Empty for a dish without fire. */
  readonly loads: readonly LoadWork[];
  readonly rise?: RiseEstimate;
  /** How long it may wait once done, by recipe, dish and safety, whichever is least. */
  readonly canWait: Minutes;
}

export interface LoadWork {
  readonly load: OvenLoad;
  readonly coals: CoalPlan;
  readonly bake: BakePlan;
}

export interface DaySheet {
  /** 'planned': every constraint holds. 'late': the least-late plan found. 'impossible': proven. */
  readonly status: 'planned' | 'late' | 'impossible';
  /** By start, then by id. */
  readonly jobs: readonly Job[];
  readonly spans: readonly OvenSpan[];
  readonly lightings: readonly Lighting[];
  readonly lit: readonly LitCoals[];
  readonly servings: readonly Serving[];
  readonly firstFire?: ClockMinutes;
  /** What is short: sound advice only, each item carries a checked plan's result. */
  readonly advice: readonly Advice[];
  /** Plans with time in hand that are clearly surer than this one. */
  readonly surer?: readonly SurerDay[];
  /** Advice was not looked for yet: `adviseDay` goes on from here. */
  readonly isAdvicePending?: boolean;
  /** What no order of the work can mend, with the wishes that stand against each other. */
  readonly proven?: readonly Refusal[];
  /** How sure the times are; left out where there is nothing to serve. */
  readonly doubt?: DayDoubt;
  readonly notices: readonly Notice[];
}

export type JobKind =
  | StepKind
  | 'wash-hands'
  | 'fetch-water'
  | 'light-chimney'
  | 'light-feeder'
  | 'tend-fire'
  | 'grease'
  | 'lay-coals'
  | 'check'
  | 'turn'
  | 'add-coals'
  | 'wipe-oven'
  | 'probe'
  | 'call'
  | 'wash-up'
  | 'ash-out';

export interface Job {
  readonly id: string;
  readonly kind: JobKind;
  readonly dish?: string;
  readonly load?: string;
  readonly oven?: string;
  readonly start: ClockMinutes;
  readonly end: ClockMinutes;
  /** Hands' ids; empty for a rise, a rest, a simmer. */
  readonly hands: readonly string[];
  readonly needsTable: boolean;
  /** The recipe's own words, where the job is a step of one. */
  readonly say?: string;
  /** Quantities for the words: coals, angle, minute since coals on. */
  readonly values: Readonly<Record<string, number | string>>;
  /** May start this late before a serving is late. */
  readonly latestStart: ClockMinutes;
  /** What holds it where it is. */
  readonly because: Binding;
  /** Never done by a whole-screen tap: probe, allergen, hand-wash, ash. */
  readonly needsCare: boolean;
  /** One walking round over the ovens of a wave: its jobs share this id and follow each other. */
  readonly round?: string;
}

export interface Binding {
  readonly kind:
    | 'serving'
    /** Its minute after coals on. */
    | 'minute'
    /** As soon as what is named is done. */
    | 'since'
    | 'before'
    | 'after'
    | 'hand'
    | 'oven'
    | 'coals'
    | 'chimney'
    | 'table'
    | 'pin'
    | 'now'
    | 'arrival';
  /** Id of the job, hand or oven that binds. */
  readonly by?: string;
}

export interface OvenSpan {
  readonly oven: string;
  readonly dish: string;
  readonly load: string;
  readonly state: 'second-rise' | 'heating' | 'cooking' | 'holding';
  readonly from: ClockMinutes;
  readonly to: ClockMinutes;
}

export interface Lighting {
  readonly id: string;
  /** 1-based; undefined for a feeder fire, and for a heap lit without a chimney. */
  readonly chimney?: number;
  readonly at: ClockMinutes;
  /** Ashed over and ready to lay. */
  readonly readyAt: ClockMinutes;
  readonly coals: number;
  /** What they are for. */
  readonly uses: readonly { readonly job: string; readonly coals: number }[];
}

/** Lit coals waiting in chimney or feeder pile, and coals lying on ovens, at one minute. */
export interface LitCoals {
  readonly at: ClockMinutes;
  readonly waiting: number;
  readonly onOvens: number;
}

export interface Serving {
  readonly dish: string;
  readonly wanted: ClockMinutes;
  /** Cooked and rested. */
  readonly ready: ClockMinutes;
  readonly served: ClockMinutes;
  readonly lateBy: Minutes;
  /** Waits this long between done and served; cutting and dressing are not waiting. */
  readonly waits: Minutes;
}

export interface Advice {
  readonly change:
    | 'one-more-hand'
    | 'one-more-oven'
    | 'one-more-chimney'
    | 'serve-later'
    | 'start-earlier'
    | 'longer-hold'
    | 'without-pin';
  readonly amount: number;
  /** The dish whose coals would not be pinned to their minute. */
  readonly dish?: string;
  /** The oven that one more like it would help. */
  readonly oven?: string;
  /** With it, the worst lateness becomes this. */
  readonly lateBy: Minutes;
  /** Dishes that find no place even so. */
  readonly aside?: readonly string[];
}

/** A plan that was made and checked, with its share of runs in time. */
export interface SurerDay {
  /** What comes from an oven is done so long before its time, where it may wait. */
  readonly inHand: Minutes;
  /** Everybody is there so much sooner; 0 where as they are. */
  readonly startEarlier: Minutes;
  readonly inTime: number;
}

/** A constraint that a sheet breaks; the checker's word, in its own restatement. */
export interface Violation {
  readonly rule: string;
  readonly jobs: readonly string[];
  readonly found: number | string;
  readonly wanted: number | string;
}

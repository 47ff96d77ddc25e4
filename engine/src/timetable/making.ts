// What every part of the day's work needs at hand while it is being written down.

import type { Notice } from '../notice/notice.ts';
import type { StoreUse } from '../solver/problem.ts';
import type { Builder } from './builder.ts';
import type { Crews } from './crews.ts';
import type { DishWork, LoadWork, TimetableRequest } from './day-sheet.ts';
import type { InHand } from './in-hand.ts';
import type { Phase } from './recipe-shape.ts';

export interface Making {
  readonly request: TimetableRequest;
  readonly builder: Builder;
  readonly crews: Crews;
  /** Draws on lit coals, load by load. */
  readonly uses: StoreUse[];
  readonly notices: Notice[];
  /** Jobs may slip further from their minutes, and pots come out later: supper is late otherwise. */
  readonly isLoose: boolean;
  /** What comes from an oven is done so long before its time, where it may wait [min]. */
  readonly inHand: InHand;
  /** Every oven goes by itself. */
  readonly isByOven: boolean;
  /** Loads before which a wave is cut in two. */
  readonly cutBefore: ReadonlySet<string>;
}

/** Tasks of one oven load, by index in the problem. */
export interface LoadTasks {
  readonly work: LoadWork;
  readonly dish: string;
  /** In a wave: so much later than the first of its round, whose tasks these are [min]. */
  readonly after: number;
  readonly grease: number;
  readonly lay: number;
  readonly load: number;
  readonly cook: number;
  readonly takeOut: number;
  /** What keeps the oven until it is empty: taking out, or serving for a pot. */
  readonly emptied: number;
  /** In the oven before the coals are on: a second rise. */
  readonly risesInside: boolean;
  /** That rise, where there is one. */
  readonly rise?: number;
  readonly servedFromOven: boolean;
  readonly heats: readonly number[];
}

/** Tasks of one dish. */
export interface DishTasks {
  readonly work: DishWork;
  readonly group: number;
  /** Milestone: on the table. */
  readonly served: number;
  /** Work in which it is made: weighing, preparing, mixing, shaping. */
  readonly makes: readonly number[];
  /** The last tasks before it is served. */
  readonly lasts: readonly number[];
  /** It waits from the end of the last of these on. */
  readonly dones: readonly number[];
  readonly loads: readonly LoadTasks[];
}

/** First and last tasks of each step, by step id. */
export type StepTasks = Map<
  string,
  { readonly first: readonly number[]; readonly last: readonly number[] }
>;

export interface DishMaking {
  readonly making: Making;
  readonly group: number;
  readonly work: DishWork;
  readonly phases: ReadonlyMap<string, Phase>;
  /** Share of the whole batch that is this dish's, for work on pieces. */
  readonly share: number;
  readonly steps: StepTasks;
  readonly makes: number[];
  /** Tasks of loads whose oven is used again for the same serving: they can't be fresh. */
  readonly earlyTurns: Set<number>;
}

/** Anything that takes part in the rule that keeps free-from work apart. */
export const APART_ROOM = 16;
export const apartPool = (making: Making) => making.builder.pool('apart', APART_ROOM);
export const tablePool = (making: Making) =>
  making.builder.pool('table', Math.max(1, making.request.camp.gear.tables));
/** An oven's lid: one action on one oven at a time, be it one pair of hands or a lift by two. */
export const lidPool = (making: Making, oven: string) => making.builder.pool(`lid ${oven}`, 1);
export const ovenPool = (making: Making, oven: string) => making.builder.pool(`oven ${oven}`, 1);

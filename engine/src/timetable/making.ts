// What every part of the day's work needs at hand while it is being written down.

import type { Notice } from '../notice/notice.ts';
import type { StoreUse } from '../solver/problem.ts';
import type { Builder } from './builder.ts';
import type { Crews } from './crews.ts';
import type { DishWork, LoadWork, TimetableRequest } from './day-sheet.ts';

export interface Making {
  readonly request: TimetableRequest;
  readonly builder: Builder;
  readonly crews: Crews;
  /** Draws on lit coals, load by load. */
  readonly uses: StoreUse[];
  readonly notices: Notice[];
}

/** Tasks of one oven load, by index in the problem. */
export interface LoadTasks {
  readonly work: LoadWork;
  readonly dish: string;
  readonly grease: number;
  readonly lay: number;
  readonly load: number;
  readonly cook: number;
  readonly takeOut: number;
  /** What keeps the oven until it is empty: taking out, or serving for a pot. */
  readonly emptied: number;
  /** In the oven before the coals are on: a second rise. */
  readonly risesInside: boolean;
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
  readonly loads: readonly LoadTasks[];
}

/** Anything that takes part in the rule that keeps free-from work apart. */
export const APART_ROOM = 16;
export const apartPool = (making: Making) => making.builder.pool('apart', APART_ROOM);
export const tablePool = (making: Making) =>
  making.builder.pool('table', Math.max(1, making.request.camp.gear.tables));
export const ovenPool = (making: Making, oven: string) => making.builder.pool(`oven ${oven}`, 1);

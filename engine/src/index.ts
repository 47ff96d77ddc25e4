// The public surface, in the order of the job. Shells import from here and nowhere deeper.
// biome-ignore-all assist/source/organizeImports: the order is the order of the job

import { bakeCodes } from './bake/index.ts';
import { campCodes } from './camp/index.ts';
import { coalsCodes } from './coals/index.ts';
import { formulaCodes } from './formula/index.ts';
import { larderCodes } from './larder/index.ts';
import { menuCodes } from './menu/index.ts';
import { provisionsCodes } from './provisions/index.ts';
import { safetyCodes } from './safety/index.ts';
import { timetableCodes } from './timetable/index.ts';

// Which number is this, and how trouble is told
export * from './quantity/index.ts';
export * from './notice/notice.ts';
// The stages, left to right
export * from './camp/index.ts';
export * from './larder/index.ts';
export * from './menu/index.ts';
export * from './formula/index.ts';
export * from './coals/index.ts';
export * from './bake/index.ts';
export * from './safety/index.ts';
export * from './timetable/index.ts';
export * from './provisions/index.ts';
// A finished plan, and how it is made
export type * from './meal.ts';
export { type DayOptions, planDay, type Stage, timetableRequestOf } from './plan.ts';
export { planTonightDay, type TonightDay } from './plan-tonight.ts';
export {
  advisedPlan,
  type PlannedTonight,
  type PlanOptions,
  planMeal,
  planTonight,
} from './plan-meal.ts';
// How it is said and drawn
export * from './publish/index.ts';

/** Every code that the engine can say, by stage. */
export const codeLists = {
  camp: campCodes,
  larder: larderCodes,
  menu: menuCodes,
  formula: formulaCodes,
  coals: coalsCodes,
  bake: bakeCodes,
  safety: safetyCodes,
  timetable: timetableCodes,
  provisions: provisionsCodes,
};

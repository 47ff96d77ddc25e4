// What a finished plan is: one field a stage, in the order of the job. plan.ts fills it,
// publish/ draws it, fireside/ runs it.

import type { BakePlan } from './bake/bake-plan.ts';
import type { Air, Camp } from './camp/camp.ts';
import type { CoalPlan } from './coals/coal-plan.ts';
import type { Formula } from './formula/formula.ts';
import type { DishLeavening } from './formula/leaven/dish-leavening.ts';
import type { DishPortions, OvenLoad } from './menu/load.ts';
import type { Menu, MenuDish } from './menu/menu.ts';
import type { Recipe } from './menu/recipe.ts';
import type { Assumption } from './menu/tonight-answers.ts';
import type { Notice, Refusal } from './notice/notice.ts';
import type { Provisions } from './provisions/provisions.ts';
import type { CampSafety, DishSafety } from './safety/care.ts';
import type { DaySheet } from './timetable/day-sheet.ts';

export type { Assumption } from './menu/tonight-answers.ts';

/** A meal as it is cooked: all that a dish card is drawn from. */
export interface MealDay {
  readonly camp: Camp;
  readonly menu: Menu;
  /** In the order of the menu; a refused dish is missing here and stands in `refusals`. */
  readonly dishes: readonly DishPlan[];
  readonly daySheet: DaySheet;
  readonly safety: CampSafety;
  readonly notices: readonly Notice[];
  readonly refusals: readonly Refusal[];
  /** What was assumed because the cook did not say; keys are paths in the camp. */
  readonly assumed: readonly Assumption[];
}

/** The whole: also what is bought, weighed out and carried. */
export interface MealPlan extends MealDay {
  readonly provisions: Provisions;
}

export interface DishPlan {
  readonly dish: MenuDish;
  readonly recipe: Recipe;
  readonly portions: DishPortions;
  readonly formula: Formula;
  /** Gas, height tables, rise along the day; undefined for a dish without flour. */
  readonly leavening?: DishLeavening;
  readonly loads: readonly LoadPlan[];
  readonly safety: DishSafety;
  readonly notices: readonly Notice[];
}

/** One oven load: empty for a dish without fire (`loads` is then empty). */
export interface LoadPlan {
  readonly load: OvenLoad;
  /** The air that its coals were reckoned for. */
  readonly air: Air;
  readonly coals: CoalPlan;
  readonly bake: BakePlan;
}
